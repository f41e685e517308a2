import type { Evening } from "#engine/index.ts";
import { moneyText } from "#words/money-text.ts";
import { countText, percentText } from "#words/number-text.ts";
import { SeverityMark } from "../parts/marks.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import { useNarrow } from "../state/narrow.ts";

/** What the food costs, dish by dish, and the price that meets the target. */
export const CostScreen = ({ evening }: { evening: Evening }) => {
  const { cost, menu } = evening;
  const narrow = useNarrow();
  const money = (minor: number) => moneyText(minor, cost.currency);
  const titles = new Map(evening.dishes.map((d) => [d.source, d.title]));
  const most = Math.max(1, ...cost.dishes.map((d) => d.used));
  const unpriced = cost.dishes.filter((d) => d.unpriced.length > 0);
  const atLeast = unpriced.length === 0 ? "" : ", at least";
  return (
    <div class="screen cost">
      <ScreenHead
        title="Cost"
        lead={`For ${countText(menu.sitting.covers, "cover", "covers")}${unpriced.length === 0 ? "." : "; it will be more, for some foods have no price."}`}
      />
      {unpriced.length > 0 && (
        <div class="remark remark-warn">
          <SeverityMark of="warn" />
          <div>
            <h2>Without a price</h2>
            <p>
              The figures leave these out: food and price will come to more. A price list with them settles
              it.
            </p>
            <ul>
              {unpriced.map((d) => (
                <li key={d.dish}>
                  {titles.get(d.dish) ?? d.dish}: {d.unpriced.join(", ")}
                </li>
              ))}
            </ul>
          </div>
        </div>
      )}
      <dl class="big-figures">
        <div>
          <dt>Food, a cover{atLeast}</dt>
          <dd>{money(cost.perCover)}</dd>
        </div>
        <div>
          <dt>
            Price before tax at {percentText(cost.foodCostTarget)} food cost{atLeast}
          </dt>
          <dd>{money(cost.priceNet)}</dd>
        </div>
        <div>
          <dt>Tax</dt>
          <dd>{money(cost.tax)}</dd>
        </div>
        <div>
          <dt>Price with tax, a cover{atLeast}</dt>
          <dd>{money(cost.priceGross)}</dd>
        </div>
      </dl>
      <table class="cost-table">
        <caption>By dish</caption>
        <thead>
          <tr>
            <th scope="col">Dish</th>
            <th scope="col" class="num">
              Portions
            </th>
            <th scope="col" class="num">
              A portion
            </th>
            <th scope="col" class="num">
              In all
            </th>
            <th scope="col" class="bar-cell">
              Share
            </th>
          </tr>
        </thead>
        <tbody>
          {cost.dishes.map((d) => (
            <tr key={d.dish}>
              <th scope="row">{titles.get(d.dish) ?? d.dish}</th>
              <td class="num">{d.portions}</td>
              <td class="num">{money(d.perPortion)}</td>
              <td class="num">{money(d.used)}</td>
              <td class="bar-cell">
                <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
                  <rect class="cost-bar" width={(d.used / most) * 100} height="10" />
                </svg>
                <span class="num">{percentText(cost.used === 0 ? 0 : d.used / cost.used, 0)}</span>
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colSpan={narrow ? 2 : 3}>
              Used in the dishes
            </th>
            <td class="num">{money(cost.used)}</td>
            <td />
          </tr>
          <tr>
            <th scope="row" colSpan={narrow ? 2 : 3}>
              Left in the packs
            </th>
            <td class="num">{money(cost.leftOver)}</td>
            <td />
          </tr>
          <tr>
            <th scope="row" colSpan={narrow ? 2 : 3}>
              Bought in full
            </th>
            <td class="num">{money(cost.bought)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
    </div>
  );
};

import { useState } from "preact/hooks";
import type { Evening, PurchaseLine, Shelf } from "#engine/index.ts";
import { shelfLabels } from "#words/labels.ts";
import { moneyText } from "#words/money-text.ts";
import { capital, countText, numberText } from "#words/number-text.ts";
import { massText } from "#words/quantity-text.ts";
import { SeverityMark } from "../parts/marks.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import { keepTicks, keptTicks } from "../state/ticks.ts";

const nameOf = (line: PurchaseLine): string => `${line.food ?? ""}|${line.name}`;

/** One list for the whole menu, by supplier and shelf, with boxes to tick. */
export const BuyingScreen = ({ evening, book }: { evening: Evening; book: string }) => {
  const { purchase, cost } = evening;
  const [ticks, setTicks] = useState(() => keptTicks(book));
  const toggle = (name: string) => {
    const next = new Set(ticks);
    if (!next.delete(name)) next.add(name);
    setTicks(next);
    keepTicks(book, next);
  };
  const bought = purchase.lines.filter((l) => l.packs.length > 0);
  const free = purchase.lines.filter((l) => l.free);
  const nowhere = purchase.lines.filter((l) => l.packs.length === 0 && !l.free);
  const left = bought.filter((l) => !ticks.has(nameOf(l))).length;
  return (
    <div class="screen buying">
      <ScreenHead
        title="Buying"
        lead={`${moneyText(purchase.total, cost.currency)} in all${nowhere.length === 0 ? "" : `, without ${countText(nowhere.length, "food that is", "foods that are")} on no price list`}; ${countText(left, "line", "lines")} left to buy.`}
      >
        <button type="button" onClick={() => print()}>
          Print
        </button>
      </ScreenHead>
      {nowhere.length > 0 && <Nowhere lines={nowhere} />}
      {purchase.suppliers.map((s) => (
        <section key={s.name} class="supplier" aria-label={s.name}>
          <h2>
            {s.name} <span class="total">{moneyText(s.total, cost.currency)}</span>
          </h2>
          {shelvesOf(bought.filter((l) => l.supplier === s.name)).map(([shelf, lines]) => (
            <table key={shelf} class="buying-table">
              <caption>{shelfLabels[shelf]}</caption>
              <thead class={shelf === firstShelf(bought, s.name) ? "" : "hidden-head"}>
                <tr>
                  <th scope="col">Got</th>
                  <th scope="col">What</th>
                  <th scope="col">Packs</th>
                  <th scope="col" class="num">
                    Needed
                  </th>
                  <th scope="col" class="num">
                    Left over
                  </th>
                  <th scope="col" class="num">
                    Price
                  </th>
                </tr>
              </thead>
              <tbody>
                {lines.map((line) => (
                  <Line
                    key={nameOf(line)}
                    line={line}
                    currency={cost.currency}
                    ticked={ticks.has(nameOf(line))}
                    toggle={() => toggle(nameOf(line))}
                  />
                ))}
              </tbody>
            </table>
          ))}
        </section>
      ))}
      {free.length > 0 && (
        <section>
          <h2>Not bought</h2>
          <ul class="columns">
            {free.map((l) => (
              <li key={nameOf(l)}>
                {capital(l.name)}{" "}
                <span class="soft">{l.needed > 0 ? massText(l.needed) : "amount not known"}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
};

const shelfOrder = Object.keys(shelfLabels) as readonly Shelf[];

const shelvesOf = (lines: readonly PurchaseLine[]): readonly (readonly [Shelf, readonly PurchaseLine[]])[] =>
  shelfOrder
    .map((shelf) => [shelf, lines.filter((l) => l.shelf === shelf)] as const)
    .filter(([, own]) => own.length > 0);

const firstShelf = (lines: readonly PurchaseLine[], supplier: string): Shelf | undefined =>
  shelvesOf(lines.filter((l) => l.supplier === supplier))[0]?.[0];

const Line = ({
  line,
  currency,
  ticked,
  toggle,
}: {
  line: PurchaseLine;
  currency: string;
  ticked: boolean;
  toggle: () => void;
}) => (
  <tr data-ticked={ticked}>
    <td class="tick">
      <label>
        <input type="checkbox" checked={ticked} onChange={toggle} />
        <span class="hidden">{line.name} is got</span>
      </label>
    </td>
    <th scope="row">{capital(line.name)}</th>
    <td>
      {line.packs.map((p) => (
        <span key={p.pack.line} class="pack">
          <b>{numberText(p.count)} ×</b> {p.pack.item}
        </span>
      ))}
    </td>
    <td class="num">{massText(line.needed)}</td>
    <td class="num">{massText(line.leftOver)}</td>
    <td class="num">{moneyText(line.cost, currency)}</td>
  </tr>
);

const Nowhere = ({ lines }: { lines: readonly PurchaseLine[] }) => (
  <section class="remark remark-warn">
    <SeverityMark of="warn" />
    <div>
      <h2>On no price list</h2>
      <ul class="columns">
        {lines.map((l) => (
          <li key={nameOf(l)}>
            {capital(l.name)}{" "}
            <span class="soft">{l.needed > 0 ? massText(l.needed) : "amount not known"}</span>
          </li>
        ))}
      </ul>
    </div>
  </section>
);

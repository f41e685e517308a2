import type { Dish, Region } from "#engine/index.ts";
import { durationText, rangeText } from "#words/quantity-text.ts";
import { needsText } from "#words/version-text.ts";
import { IngredientsTable } from "./ingredients-table.tsx";
import { FromWords, isAt, type Linking } from "./link.tsx";
import { StepsList } from "./steps-list.tsx";

const places = {
  fridge: "in the fridge",
  freezer: "in the freezer",
  room: "at room heat",
  hot: "hot",
} as const;

const Yield = ({ dish, linking }: { dish: Dish; linking: Linking }) => (
  <p class="yield">
    {dish.yield === null ? (
      <span class="unknown">How many it feeds is not stated.</span>
    ) : (
      <FromWords span={dish.yield.words.span} linking={linking}>
        {dish.yield.words.text}
      </FromWords>
    )}
    {dish.portions !== null && dish.yield?.kind !== "portions" && (
      <span class="soft"> taken as {rangeText(dish.portions.low, dish.portions.high, "portions")}</span>
    )}
  </p>
);

/** "What was understood": the dish as the engine reads it, each item tied to its words. */
export const Understood = ({ dish, region, linking }: { dish: Dish; region: Region; linking: Linking }) => (
  <>
    <Yield dish={dish} linking={linking} />
    <h3>Ingredients</h3>
    {dish.ingredients.length === 0 ? (
      <p class="soft">None yet.</p>
    ) : (
      <IngredientsTable dish={dish} linking={linking} />
    )}
    <h3>Method</h3>
    {dish.steps.length === 0 ? (
      <p class="soft">No step yet.</p>
    ) : (
      <StepsList dish={dish} region={region} linking={linking} />
    )}
    {dish.keeping.length > 0 && (
      <>
        <h3>Keeping</h3>
        <ul class="plain">
          {dish.keeping.map((k) => (
            <li key={k.span.start} data-here={isAt(linking.at, k.span)}>
              <FromWords span={k.span} linking={linking}>
                {durationText(k.minutes.likely)} {places[k.where]}
              </FromWords>
              <span class="soft">
                {k.part === null ? "" : ` (${k.part})`}
                {k.afterStep === null ? "" : ` after step ${k.afterStep + 1}`}
              </span>
            </li>
          ))}
        </ul>
      </>
    )}
    {dish.swaps.length > 0 && (
      <>
        <h3>Swaps</h3>
        <ul class="plain">
          {dish.swaps.map((s) => (
            <li key={s.span.start} data-here={isAt(linking.at, s.span)}>
              <FromWords span={s.span} linking={linking}>
                {s.needs.length === 0 ? "For no need that was understood" : needsText(s.needs)}
              </FromWords>
              <span>
                : {s.out.map((i) => dish.ingredients[i]?.name ?? "").join(", ") || "nothing"} goes,{" "}
                {s.comes.map((c) => c.name).join(", ") || "nothing"} comes
              </span>
            </li>
          ))}
        </ul>
      </>
    )}
  </>
);

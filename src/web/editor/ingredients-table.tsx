import type { Dish, Ingredient } from "#engine/index.ts";
import { capital } from "#words/number-text.ts";
import { massText } from "#words/quantity-text.ts";
import { spaced } from "#words/version-text.ts";
import { FromWords, isAt, type Linking } from "./link.tsx";

const basisWords: { readonly [B in Ingredient["gramsBasis"]]: string | null } = {
  weighed: null,
  volume: "by volume",
  pieces: "by the piece",
  pack: "by the pack",
  vague: "a guess",
  none: null,
};

const weight = ({ grams, gramsBasis, equipment }: Ingredient) => {
  if (equipment) return <span class="soft">not food</span>;
  if (grams === null) return <span class="unknown">not known</span>;
  const { low, likely, high } = grams;
  const spread = high - low > likely * 0.02;
  return (
    <>
      <span class="figure">
        {gramsBasis === "weighed" ? "" : "≈ "}
        {massText(likely)}
      </span>
      {(spread || basisWords[gramsBasis] !== null) && (
        <span class="assumed">
          {[spread ? `${massText(low)} to ${massText(high)}` : null, basisWords[gramsBasis]]
            .filter((w) => w !== null)
            .join(", ")}
        </span>
      )}
    </>
  );
};

const extras = (ingredient: Ingredient): string =>
  [
    ingredient.size,
    ingredient.portion,
    ...ingredient.state,
    ...ingredient.preparation,
    ingredient.purpose,
    ingredient.optional ? "optional" : null,
    ingredient.alternatives.length > 0
      ? `or ${ingredient.alternatives.map((a) => a.name).join(" or ")}`
      : null,
  ]
    .filter((words) => words !== null && words !== "")
    .join(", ");

/** True when the cook's own words are the food's name, or its plural: then the name need not be shown again. */
const saysSame = (name: string, food: string): boolean => {
  const one = spaced(food);
  return [one, `${one}s`, `${one}es`, one.replace(/y$/, "ies"), one.replace(/(f|fe)$/, "ves")].includes(
    name.toLowerCase().replaceAll("-", " "),
  );
};

const Row = ({ ingredient, dish, linking }: { ingredient: Ingredient; dish: Dish; linking: Linking }) => (
  <tr data-here={isAt(linking.at, ingredient.span)}>
    <th scope="row">
      <FromWords span={ingredient.span} linking={linking}>
        {ingredient.name || ingredient.text}
      </FromWords>
      {ingredient.card !== null && <span class="tag">another card</span>}
      {ingredient.food === null && ingredient.card === null && !ingredient.equipment && (
        <span class="unknown small">not understood</span>
      )}
      {ingredient.food !== null && !saysSame(ingredient.name, ingredient.food) && (
        <span class="soft small">as {spaced(ingredient.food)}</span>
      )}
    </th>
    <td>{ingredient.amounts.map((a) => dish.text.slice(a.span.start, a.span.end)).join(", ") || "–"}</td>
    <td>{weight(ingredient)}</td>
    <td>{extras(ingredient)}</td>
  </tr>
);

/** What goes in, as it was understood, part by part. */
export const IngredientsTable = ({ dish, linking }: { dish: Dish; linking: Linking }) => {
  const parts = [...new Set(dish.ingredients.map((i) => i.part))];
  return (
    <table class="ingredients">
      <thead>
        <tr>
          <th scope="col">Food</th>
          <th scope="col">Amount</th>
          <th scope="col">Weighs</th>
          <th scope="col">Prepared</th>
        </tr>
      </thead>
      {parts.map((part) => (
        <tbody key={part ?? ""}>
          {part !== null && (
            <tr class="part">
              <th colSpan={4} scope="rowgroup">
                {capital(part)}
              </th>
            </tr>
          )}
          {dish.ingredients
            .filter((i) => i.part === part)
            .map((i) => (
              <Row key={i.index} ingredient={i} dish={dish} linking={linking} />
            ))}
        </tbody>
      ))}
    </table>
  );
};

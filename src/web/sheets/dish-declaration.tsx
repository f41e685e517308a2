import type { DishDeclaration, KnownSum, NutritionFacts } from "#engine/index.ts";
import { allergenLabels, gradeLabels } from "#words/labels.ts";
import { capital, listText, numberText } from "#words/number-text.ts";
import { massText } from "#words/quantity-text.ts";
import { versionText } from "../plan/names.ts";

/** What is stated about one version of one dish. */
export const DishSheet = ({ of: d }: { of: DishDeclaration }) => (
  <article class="dish-sheet" aria-label={`${d.title} ${versionText(d.version)}`}>
    <h3>
      {d.title}
      {versionText(d.version) !== "" && <span class="tag">{versionText(d.version)}</span>}
    </h3>
    {d.unknown.length > 0 && (
      <p class="unknown">Not understood, could hold anything: {listText(d.unknown)}.</p>
    )}
    <h4>Allergens found</h4>
    {d.allergens.length === 0 ? (
      <p>None was found in the words.</p>
    ) : (
      <ul class="plain allergens">
        {d.allergens.map((a) => (
          <li key={a.group}>
            <b>{capital(allergenLabels[a.group])}</b>{" "}
            <span class="soft">
              {[
                ...new Set(
                  a.paths.map(
                    (p) =>
                      `${p.name}${p.kind === null ? "" : ` (${p.kind})`}${p.grade === "certain" ? "" : `, ${gradeLabels[p.grade]}`}`,
                  ),
                ),
              ].join("; ")}
            </span>
          </li>
        ))}
      </ul>
    )}
    {d.allergensUs.length > 0 && (
      <p class="small">
        By the US list of nine:{" "}
        {d.allergensUs
          .map((a) => `${a.name}${a.grade === "certain" ? "" : ` (${gradeLabels[a.grade]})`}`)
          .join(", ")}
        .
      </p>
    )}
    <h4>Ingredients</h4>
    <p class="ingredient-list">
      {d.ingredients.map((i, n) => (
        <span key={`${i.name}${n}`}>
          {n > 0 ? ", " : ""}
          {i.allergens.length > 0 ? <b class="has-allergen">{i.name}</b> : i.name}
          {i.madeOf.length > 0 ? ` (${i.madeOf.join(", ")})` : ""}
        </span>
      ))}
      .
    </p>
    <details>
      <summary>Nutrition, about {massText(d.portionGrams)} a portion</summary>
      <Nutrition of={d} />
    </details>
  </article>
);

const rows: readonly { readonly key: keyof NutritionFacts; readonly name: string; readonly unit: string }[] =
  [
    { key: "kilojoules", name: "Energy", unit: "kJ" },
    { key: "kilocalories", name: "Energy", unit: "kcal" },
    { key: "fat", name: "Fat", unit: "g" },
    { key: "saturates", name: "of which saturates", unit: "g" },
    { key: "carbohydrate", name: "Carbohydrate", unit: "g" },
    { key: "sugars", name: "of which sugars", unit: "g" },
    { key: "fibre", name: "Fibre", unit: "g" },
    { key: "protein", name: "Protein", unit: "g" },
    { key: "salt", name: "Salt", unit: "g" },
  ];

/** A sum that leaves something out is at least what it says. */
const figure = (sum: KnownSum, unit: string): string =>
  `${sum.complete ? "" : "at least "}${numberText(sum.value, unit === "g" ? 1 : 0)} ${unit}`;

const Nutrition = ({ of: d }: { of: DishDeclaration }) => {
  const missing = [...new Set(rows.flatMap(({ key }) => d.perPortion[key].missing))];
  return (
    <>
      <table class="nutrition">
        <thead>
          <tr>
            <th scope="col">
              <span class="hidden">Nutrient</span>
            </th>
            <th scope="col" class="num">
              100 g
            </th>
            <th scope="col" class="num">
              A portion
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, unit }) => (
            <tr key={key}>
              <th scope="row">{name}</th>
              <td class="num">{figure(d.per100g[key], unit)}</td>
              <td class="num">{figure(d.perPortion[key], unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {missing.length > 0 && <p class="small">Not known, and left out: {listText(missing)}.</p>}
    </>
  );
};

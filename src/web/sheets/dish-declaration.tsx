import { type DishDeclaration, type KnownSum, type LabelRow, labelRows, type Region } from "#engine/index.ts";
import { allergenLabels, gradeLabels } from "#words/labels.ts";
import { capital, listText } from "#words/number-text.ts";
import { massText } from "#words/quantity-text.ts";
import { versionText } from "#words/version-text.ts";
import { labelFigureText, nutrientLabels } from "#words/write-up-text.ts";

/** What is stated about one version of one dish. */
export const DishSheet = ({ of: d, region }: { of: DishDeclaration; region: Region }) => (
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
      <Nutrition of={d} region={region} />
    </details>
  </article>
);

const figure = (row: LabelRow | undefined): string =>
  row === undefined ? "" : `${labelFigureText(row.figure, row.complete)} ${row.unit}`;

const Nutrition = ({ of: d, region }: { of: DishDeclaration; region: Region }) => {
  const per100g = labelRows(d.per100g, region);
  const missing = [...new Set(Object.values(d.perPortion).flatMap((sum: KnownSum) => sum.missing))];
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
          {labelRows(d.perPortion, region).map((row, n) => (
            <tr key={`${row.nutrient}${row.unit}`}>
              <th scope="row">{nutrientLabels[row.nutrient]}</th>
              <td class="num">{figure(per100g[n])}</td>
              <td class="num">{figure(row)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {missing.length > 0 && <p class="small">Not known, and left out: {listText(missing)}.</p>}
    </>
  );
};

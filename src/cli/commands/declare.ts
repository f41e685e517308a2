import {
  type DishDeclaration,
  type Evening,
  type GuestVerdict,
  type KnownSum,
  type LabelRow,
  labelRows,
  type Region,
} from "#engine/index.ts";
import { againstLabels, allergenLabels, answerLabels, gradeLabels, nothingFoundIn } from "#words/labels.ts";
import { capital, listText } from "#words/number-text.ts";
import { massText } from "#words/quantity-text.ts";
import { allergenDeferral } from "#words/safety-text.ts";
import { versionTitle } from "#words/version-text.ts";
import { labelFigureText, nutrientLabels } from "#words/write-up-text.ts";
import { heading, titlesOf } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { tableText, wrap } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";

/** Shows allergens, nutrition, and what each guest may be offered. */
export const declareCommand = sittingCommand({
  name: "declare",
  topics: ["guests"],
  summary: "show allergens with where they come from, nutrition, and what each guest may be offered",
  about:
    'A grid of guests and dishes, then each dish. "Nothing found" means that the words hold nothing against it;\n' +
    "it promises nothing.",
  examples: ["tamis declare demo/lantern-supper/sitting.yaml", "tamis declare --json sitting.yaml"],
  text: (evening, paint) => declareText(evening, paint),
  json: (evening) => ({ declaration: evening.declaration, deferral: allergenDeferral }),
});

const declareText = (evening: Evening, paint: Paint): string => {
  const dishes = evening.declaration.dishes.map((dish) => dishText(dish, evening.menu.sitting.region, paint));
  return `${heading(evening, paint)}${gridText(evening, paint)}${dishes.join("")}\n${wrap(allergenDeferral, "")}`;
};

/** Each guest with a need: what answers other than "nothing found", then the dishes with that answer. */
const gridText = (evening: Evening, paint: Paint): string => {
  const { grid } = evening.declaration;
  const title = titlesOf(evening);
  return [...new Set(grid.map((verdict) => verdict.guest))]
    .map((guest) => {
      const needs = evening.menu.sitting.guests.find((g) => g.name === guest)?.needs ?? [];
      const own = grid.filter((verdict) => verdict.guest === guest);
      const rows = own
        .filter((verdict) => verdict.answer !== "yes")
        .map((verdict) => [
          title(verdict.dish),
          verdict.answer === "swap" ? `swap: ${verdict.version ?? ""}` : answerLabels[verdict.answer],
          listText([...new Set(verdict.because.map(againstText))]),
        ]);
      const clear = own.filter((verdict) => verdict.answer === "yes").map((verdict) => title(verdict.dish));
      return (
        `\n${paint.bold(guest)} (${listText(needs)})\n` +
        tableText(rows, ["left", "left", "left"], "  ") +
        (clear.length === 0 ? "" : wrap(`${capital(nothingFoundIn)} ${listText(clear)}.`, "  "))
      );
    })
    .join("");
};

const againstText = ({ name, grade }: GuestVerdict["because"][number]): string =>
  againstLabels[grade] === "" ? name : `${name} (${againstLabels[grade]})`;

const dishText = (dish: DishDeclaration, region: Region, paint: Paint): string => {
  const allergens = dish.allergens.map((statement) => {
    const from = statement.paths.map((path) => {
      const kind = path.kind === null ? "" : ` (${path.kind})`;
      return `${[...path.through, path.name].join(" › ")}${kind}${path.grade === "certain" ? "" : `, ${gradeLabels[path.grade]}`}`;
    });
    const group = `${capital(allergenLabels[statement.group])} (${gradeLabels[statement.grade]})`;
    return wrap(`${group}: ${[...new Set(from)].join("; ")}`, "  ", "      ");
  });
  const unknown =
    dish.unknown.length === 0
      ? ""
      : wrap(`Not understood, so they could hold anything: ${listText(dish.unknown)}.`, "  ");
  const ingredients = listText(
    dish.ingredients.map((i) => (i.madeOf.length === 0 ? i.name : `${i.name} (${i.madeOf.join(", ")})`)),
  );
  return (
    `\n${paint.bold(versionTitle(dish.title, dish.version))} (portion ${massText(dish.portionGrams)})\n` +
    (allergens.length === 0 ? "  No listed allergen was found in the words.\n" : allergens.join("")) +
    unknown +
    (ingredients === "" ? "" : wrap(`Ingredients, most first: ${ingredients}.`, "  ")) +
    nutritionText(dish, region)
  );
};

const nutritionText = (dish: DishDeclaration, region: Region): string => {
  const per100 = labelRows(dish.per100g, region);
  const cell = (row: LabelRow | undefined): string =>
    row === undefined ? "" : `${labelFigureText(row.figure, row.complete)} ${row.unit}`;
  const missing = [...new Set(Object.values(dish.perPortion).flatMap((sum: KnownSum) => sum.missing))];
  return (
    tableText(
      [
        ["", "portion", "100 g"],
        ...labelRows(dish.perPortion, region).map((row, i) => [
          nutrientLabels[row.nutrient],
          cell(row),
          cell(per100[i]),
        ]),
      ],
      ["left", "right", "right"],
      "  ",
    ) +
    (missing.length === 0
      ? ""
      : wrap(`Left out of "at least", for want of figures: ${listText(missing)}.`, "  "))
  );
};

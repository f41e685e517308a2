import { type Action, type Dish, type Ingredient, type Region, readCard, regions } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { printJson } from "#wire/print-json.ts";
import { readJson } from "#wire/read-json.ts";
import { stationLabels } from "#words/labels.ts";
import { listText, numberText, percentText } from "#words/number-text.ts";
import { celsiusText, massText, rangeText } from "#words/quantity-text.ts";
import { writeUpHeadings } from "#words/write-up-text.ts";
import { type Command, commonOptions } from "../command.ts";
import { readInput, troubleText } from "../load-sitting.ts";
import { foodsFrom, foodsOption, showListed } from "../own-foods.ts";
import type { Paint } from "../show/paint.ts";
import { type Remark, remarksOfText, showRemarks } from "../show/remarks.ts";
import { tableText, wrap } from "../show/table.ts";
import { exitCodes } from "../world.ts";

/** Shows how cards are understood. */
export const readCommand: Command = {
  name: "read",
  summary: "show how a card is understood, and what is missing in it",
  takes: "CARD…",
  least: 1,
  most: Number.POSITIVE_INFINITY,
  options: {
    ...commonOptions,
    region: {
      type: "string",
      value: regions.join("|"),
      help: "whose cups, tins and words (uk when left out)",
    },
    foods: foodsOption,
  },
  about:
    "Reads plain text and prints the ingredients with their weights, and the steps with what goes in,\n" +
    "how long and where. A card of - is read from the standard input. With --json, one card gives one\n" +
    "object and several give a list.",
  examples: [
    "tamis read cards/soup.txt",
    "tamis read --foods foods.yaml cards/*.txt",
    "tamis read --json cards/soup.txt",
    "pbpaste | tamis read -",
  ],
  run: async ({ args, flag, value, world, paint, errPaint }) => {
    const region = value("region") ?? "uk";
    if (!regions.some((name) => name === region))
      return {
        stdout: "",
        stderr: `tamis read: --region is "${region}"; ${listText(regions, "or")} was looked for\n`,
        code: exitCodes.unusable,
      };
    const listed = foodsFrom(value("foods"), world);
    if (listed.foods === null)
      return { stdout: "", stderr: showListed(listed, flag("notes"), errPaint), code: exitCodes.unusable };
    const shapes: unknown[] = [];
    const texts = new Map<string, string>();
    const remarks: Remark[] = [];
    let stdout = "";
    let stderr = showListed(listed, flag("notes"), errPaint);
    let unusable = false;
    for (const path of args) {
      const found = await readInput(path, world);
      if (typeof found === "string") {
        stderr += `tamis: ${troubleText(path, found)}\n`;
        unusable = true;
        continue;
      }
      const file = path === "-" ? "<stdin>" : path;
      if (found.encoding === "windows-1252")
        stderr += `${file}: this is not UTF-8; it was read as Windows-1252\n`;
      if (isOtherKind(file)) {
        stderr += `${file}: this is no plain card; tamis import makes cards of it\n`;
        unusable = true;
        continue;
      }
      const name = cardNameOf(file);
      const { value: dish, findings } = readCard(found.text, name, region as Region, listed.foods);
      // Places are in the text as it was read, which is shorter than the file when that was too long.
      texts.set(file, found.text);
      remarks.push(...remarksOfText(findings, file, found.text));
      if (flag("json")) shapes.push(readJson(dish, findings, file));
      else if (
        dish.ingredients.length > 0 ||
        dish.steps.length > 0 ||
        !findings.some((f) => f.severity === "stop")
      )
        stdout += `${stdout === "" ? "" : "\n"}${dishText(dish, region, paint)}`;
    }
    if (flag("json") && shapes.length > 0) stdout = printJson(args.length === 1 ? shapes[0] : shapes);
    stderr += showRemarks(remarks, (file) => texts.get(file) ?? null, flag("notes"), errPaint);
    const stopped = remarks.some((remark) => remark.severity === "stop");
    return {
      stdout,
      stderr,
      code: unusable ? exitCodes.unusable : stopped ? exitCodes.stopped : exitCodes.fine,
    };
  },
};

/** Pages and data are taken apart by another command; their marks are no words of a cook. */
const isOtherKind = (file: string): boolean => /\.(?:x?html?|json|jsonld)$/i.test(file);

/** A dish as it was read, for a cook. */
const dishText = (dish: Dish, region: string, paint: Paint): string => {
  const parts = [...new Set(dish.ingredients.map((ingredient) => ingredient.part))];
  const yields = dish.yield?.words.text ?? "no yield found";
  const list = parts
    .map((part) => {
      const rows = dish.ingredients.filter((i) => i.part === part).map(ingredientRow);
      return (
        (part === null ? "" : `  ${paint.bold(part)}\n`) + tableText(rows, ["right", "left", "left"], "  ")
      );
    })
    .join("");
  const steps = dish.steps
    .map((step, i) => {
      const opensService = step.phase === "to-serve" && dish.steps[i - 1]?.phase !== "to-serve";
      return (
        (opensService ? `  ${paint.bold(writeUpHeadings.toServe)}\n` : "") +
        wrap(`${step.index + 1}. ${step.text}`, "  ", "     ") +
        tableText(
          step.actions.map((action) => actionRow(action, dish, region)),
          ["left", "left", "left", "left"],
          "       ",
        )
      );
    })
    .join("");
  const tail = [...dish.keeping.map((k) => k.text), ...dish.swaps.map((s) => s.text)];
  return (
    `${paint.bold(dish.title)} (${yields})\n` +
    (list === "" ? "" : `\n${list}`) +
    (steps === "" ? "" : `\n${steps}`) +
    (tail.length === 0 ? "" : `\n${tail.map((line) => wrap(line, "  ")).join("")}`)
  );
};

const ingredientRow = (i: Ingredient): readonly string[] => {
  const weight =
    i.grams === null ? "?" : `${i.gramsBasis === "weighed" ? "" : "~"}${massText(i.grams.likely)}`;
  const more = [
    ...i.state,
    ...i.preparation,
    i.purpose,
    i.optional ? "optional" : null,
    i.card === null ? null : "another card",
  ].filter((words) => words !== null);
  const food = i.equipment ? "" : i.card !== null ? "" : i.food === null ? "food not known" : `= ${i.food}`;
  return [i.equipment ? "" : weight, [i.name, ...more].join(", "), food];
};

const actionRow = (action: Action, dish: Dish, region: string): readonly string[] => {
  const uses = action.uses
    .filter((use) => !use.implied)
    .map((use) => {
      const name =
        use.ingredient === null
          ? (dish.steps.flatMap((s) => s.actions).find((a) => a.id === use.product)?.makes ?? "what was made")
          : (dish.ingredients[use.ingredient]?.name ?? "");
      return use.share < 0.995 ? `${percentText(use.share, 0)} of ${name}` : name;
    });
  const time =
    action.minutes === null
      ? ""
      : `${action.minutes.assumed ? "~" : ""}${rangeText(tidyMinutes(action.minutes.low), tidyMinutes(action.minutes.high), "min")}`;
  const heat = action.celsius === null ? (action.heat ?? "") : celsiusText(action.celsius, region);
  const core = action.core === null ? "" : `core ${celsiusText(action.core, region)}`;
  const batches = action.batches === null ? "" : `in ${numberText(action.batches)} batches`;
  const where = [stationLabels[action.station], heat, core, batches].filter((w) => w !== "").join(", ");
  return [action.verb, time, where, listText(uses)];
};

/** Whole minutes from five up, half ones below: a cook's clock shows no more. */
const tidyMinutes = (minutes: number): number =>
  minutes >= 5 ? Math.round(minutes) : Math.ceil(minutes * 2) / 2;

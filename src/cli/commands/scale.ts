import { type Kitchen, type Region, regions, type Sheet, type SheetStep, scaleCard } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { printJson } from "#wire/print-json.ts";
import { findingJson } from "#wire/read-json.ts";
import { readKitchen } from "#wire/read-kitchen.ts";
import { listText } from "#words/number-text.ts";
import {
  amountText,
  equipmentText,
  lineName,
  piecesText,
  sheetHeadings,
  sheetSize,
  stepCountsText,
  stepTimeText,
  usMeasureText,
  vesselText,
  whyText,
} from "#words/sheet-text.ts";
import { partHeading } from "#words/write-up-text.ts";
import { type Command, commonOptions } from "../command.ts";
import { readInput, troubleText } from "../load-sitting.ts";
import { foodsFrom, foodsOption, showListed } from "../own-foods.ts";
import type { Paint } from "../show/paint.ts";
import { remarkOfProblem, remarksOfText, showRemarks } from "../show/remarks.ts";
import { tableText, wrap } from "../show/table.ts";
import { exitCodes } from "../world.ts";

/** Prints a card at another size, as a cook's sheet. */
export const scaleCommand: Command = {
  name: "scale",
  summary: "print a card for so many covers: amounts, vessels, batches, times",
  takes: "CARD",
  least: 1,
  most: 1,
  options: {
    ...commonOptions,
    covers: { type: "string", value: "N", help: "for how many; the card's own number when left out" },
    kitchen: { type: "string", value: "FILE", help: "a kitchen file, for its pans, trays and ovens" },
    region: {
      type: "string",
      value: regions.join("|"),
      help: "whose cups, tins and words (uk when left out)",
    },
    foods: foodsOption,
    why: { type: "boolean", help: "say of each amount what it is made of, and how it was rounded" },
  },
  about:
    "Weights are rounded as scales show them, never more than 3 % off a ratio; eggs and tins come whole where\n" +
    "that is near. What is not card × factor is marked with *.",
  examples: [
    "tamis scale cards/soup.txt --covers 120",
    "tamis scale cards/soup.txt --covers 120 --kitchen kitchen.yaml --why",
  ],
  run: async ({ args, flag, value, world, paint, errPaint }) => {
    const wrong = (message: string) => ({
      stdout: "",
      stderr: `tamis scale: ${message}\n`,
      code: exitCodes.unusable,
    });
    const region = value("region") ?? "uk";
    if (!regions.some((name) => name === region))
      return wrong(`--region is "${region}"; ${listText(regions, "or")} was looked for`);
    const wanted = value("covers");
    const covers = wanted === null ? null : Number(wanted);
    if (covers !== null && !(Number.isInteger(covers) && covers >= 1 && covers <= 100_000))
      return wrong(`--covers is "${wanted}"; a whole number from 1 to 100000 was looked for`);
    let kitchen: Kitchen | null = null;
    const listed = foodsFrom(value("foods"), world);
    let stderr = showListed(listed, flag("notes"), errPaint);
    if (listed.foods === null) return { stdout: "", stderr, code: exitCodes.unusable };
    const kitchenPath = value("kitchen");
    if (kitchenPath !== null) {
      const found = await readInput(kitchenPath, world);
      if (typeof found === "string") return wrong(troubleText(kitchenPath, found));
      const read = readKitchen(kitchenPath, found.text);
      const remarks = read.problems.map(remarkOfProblem);
      if (read.problems.some((p) => p.severity !== "note"))
        stderr += showRemarks(remarks, () => found.text, flag("notes"), errPaint);
      if (read.kitchen === null) return { stdout: "", stderr, code: exitCodes.stopped };
      kitchen = read.kitchen;
    }
    const path = args[0] ?? "";
    const found = await readInput(path, world);
    if (typeof found === "string") return wrong(troubleText(path, found));
    const file = path === "-" ? "<stdin>" : path;
    const {
      value: { sheet },
      findings,
    } = scaleCard(found.text, cardNameOf(file), covers, kitchen, region as Region, listed.foods);
    stderr += showRemarks(
      remarksOfText(findings, file, found.text),
      () => found.text,
      flag("notes"),
      errPaint,
    );
    const stopped = findings.some((finding) => finding.severity === "stop");
    const stdout = flag("json")
      ? printJson({ sheet, findings: findings.map(findingJson) })
      : sheet === null || stopped
        ? ""
        : sheetText(sheet, paint, flag("why"), region as Region, kitchen !== null);
    return { stdout, stderr, code: stopped ? exitCodes.stopped : exitCodes.fine };
  },
};

/** A sheet for a cook: what to weigh, then the method with what each step is done in. */
export const sheetText = (
  sheet: Sheet,
  paint: Paint,
  why: boolean,
  region: Region,
  kitchenKnown: boolean,
): string => {
  const parts = [...new Set(sheet.lines.map((line) => line.part))];
  const list = parts.map((part) => {
    const own = sheet.lines.filter((line) => line.part === part);
    const rows = tableText(
      own.map((line) => [
        `${amountText(line)}${usMeasureText(line, region)}${line.adjusted.length > 0 ? " *" : ""}`,
        lineName(line),
        piecesText(line),
      ]),
      ["right", "left", "left"],
      "  ",
    ).split("\n");
    const lines = own.map(
      (line, i) =>
        `${rows[i] ?? ""}\n${
          why
            ? whyText(line, sheet.factor)
                .map((text) => `      ${paint.faint(text)}\n`)
                .join("")
            : ""
        }`,
    );
    return `${part === null ? "" : `  ${paint.bold(partHeading(part))}\n`}${lines.join("")}`;
  });
  const steps = (phase: SheetStep["phase"]): string =>
    sheet.steps
      .filter((step) => step.phase === phase)
      .map((step) => {
        const below = [
          ...stepCountsText(step),
          stepTimeText(step),
          ...step.vessels.map((vessel) => `${vessel.verb}: ${vesselText(vessel)}`),
        ].filter((text) => text !== "");
        return (
          wrap(`${step.index + 1}. ${step.text}`, "  ", "     ") +
          below.map((text) => `     ${paint.faint(text)}\n`).join("")
        );
      })
      .join("");
  const toServe = steps("to-serve");
  return (
    `${paint.bold(sheet.title)}\n${sheetSize(sheet)}\n\n${paint.bold(sheetHeadings.ingredients)}\n${list.join("")}` +
    `\n${paint.bold(sheetHeadings.method)}\n${steps("method")}` +
    (toServe === "" ? "" : `\n${paint.bold(sheetHeadings.toServe)}\n${toServe}`) +
    (sheet.equipment.length === 0
      ? ""
      : `\n${paint.bold(sheetHeadings.equipment)}\n${sheet.equipment.map((e) => `  ${equipmentText(e, kitchenKnown)}\n`).join("")}`)
  );
};

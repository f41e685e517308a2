import { type CardWriteUp, type Region, regions, type WriteUp, writeUpCard } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { jsonLdOfCard, pageOfCard } from "#wire/page-of-card.ts";
import { allergenLabels, gradeLabels, hazardCautions } from "#words/labels.ts";
import { capital, listText } from "#words/number-text.ts";
import { durationText } from "#words/quantity-text.ts";
import { allergenDeferral, deferral } from "#words/safety-text.ts";
import {
  couldHoldLabel,
  energyLine,
  noneFound,
  optionalMark,
  partHeading,
  timeLine,
  writeUpHeadings,
  yieldLine,
} from "#words/write-up-text.ts";
import type { Command } from "../command.ts";
import { readInput, troubleText } from "../load-sitting.ts";
import { foodsFrom, foodsOption, showListed } from "../own-foods.ts";
import type { Paint } from "../show/paint.ts";
import { remarksOfText, showRemarks } from "../show/remarks.ts";
import { wrap } from "../show/table.ts";
import { exitCodes } from "../world.ts";

const formats = ["text", "html", "json-ld"] as const;

/** Prints a card as a document to publish. */
export const writeUpCommand: Command = {
  name: "write-up",
  summary: "print a card as a document: plain text, HTML, or schema.org JSON-LD",
  takes: "CARD",
  least: 1,
  most: 1,
  options: {
    format: { type: "string", value: formats.join("|"), help: "text when left out" },
    region: {
      type: "string",
      value: regions.join("|"),
      help: "whose measures and labels (uk when left out)",
    },
    foods: foodsOption,
    notes: { type: "boolean", help: "show notes too: what was assumed" },
  },
  about:
    "The words are the cook's own. HTML is one file that needs nothing else and carries the JSON-LD;\n" +
    "nothing that is not known is printed as known.",
  examples: [
    "tamis write-up cards/soup.txt",
    "tamis write-up --format html cards/soup.txt > soup.html",
    "tamis write-up --format json-ld cards/soup.txt",
  ],
  run: async ({ args, flag, value, world, paint, errPaint }) => {
    const wrong = (name: string, given: string, known: readonly string[]) => ({
      stdout: "",
      stderr: `tamis write-up: --${name} is "${given}"; ${listText(known, "or")} was looked for\n`,
      code: exitCodes.unusable,
    });
    const format = value("format") ?? "text";
    const region = value("region") ?? "uk";
    if (!formats.some((name) => name === format)) return wrong("format", format, formats);
    if (!regions.some((name) => name === region)) return wrong("region", region, regions);
    const listed = foodsFrom(value("foods"), world);
    const aboutFoods = showListed(listed, flag("notes"), errPaint);
    if (listed.foods === null) return { stdout: "", stderr: aboutFoods, code: exitCodes.unusable };
    const path = args[0] ?? "";
    const found = await readInput(path, world);
    if (typeof found === "string")
      return { stdout: "", stderr: `tamis: ${troubleText(path, found)}\n`, code: exitCodes.unusable };
    const file = path === "-" ? "<stdin>" : path;
    const name = cardNameOf(file);
    const { value: card, findings } = writeUpCard(found.text, name, region as Region, listed.foods);
    const stderr =
      aboutFoods +
      showRemarks(remarksOfText(findings, file, found.text), () => found.text, flag("notes"), errPaint);
    const stopped = findings.some((finding) => finding.severity === "stop");
    return {
      stdout: stopped ? "" : documentOf(card, format, region as Region, paint),
      stderr,
      code: stopped ? exitCodes.stopped : exitCodes.fine,
    };
  },
};

const documentOf = (card: CardWriteUp, format: string, region: Region, paint: Paint): string => {
  if (format === "json-ld") return `${jsonLdOfCard(card, region)}\n`;
  return format === "text" ? textOf(card.writeUp, paint) : pageOfCard(card, region);
};

/** The document as plain text, in the order of the printed page. */
const textOf = (writeUp: WriteUp, paint: Paint): string => {
  const section = (heading: string, body: string): string =>
    body === "" ? "" : `\n${paint.bold(heading)}\n${body}`;
  const facts = [yieldLine(writeUp), timeLine(writeUp)].filter((line) => line !== null).join(" · ");
  const parts = writeUp.parts.map(({ name, ingredients }) => {
    const lines = ingredients.map(({ text, optional }) =>
      wrap(`${text}${optional && !/optional/i.test(text) ? ` ${optionalMark}` : ""}`, "  "),
    );
    return `${name === null ? "" : `  ${paint.bold(partHeading(name))}\n`}${lines.join("")}`;
  });
  const steps = (phase: WriteUp["steps"][number]["phase"]): string =>
    writeUp.steps
      .filter((step) => step.phase === phase)
      .map((step, i) => {
        const time = step.minutes === null ? "" : ` (${durationText(step.minutes)})`;
        return wrap(`${i + 1}. ${step.text}${time}`, "  ", "     ");
      })
      .join("");
  const allergens = writeUp.allergens.map(({ group, grade, names }) =>
    wrap(`${capital(allergenLabels[group])} (${gradeLabels[grade]}): ${listText(names)}.`, "  "),
  );
  const unknown =
    writeUp.unknown.length === 0 ? "" : wrap(`${couldHoldLabel}: ${listText(writeUp.unknown)}.`, "  ");
  const lines = (texts: readonly string[]): string => texts.map((text) => wrap(text, "  ")).join("");
  const cautions = [...new Set(writeUp.cautions.map((hazard) => hazardCautions[hazard]))];
  return (
    `${paint.bold(writeUp.title)}\n${facts === "" ? "" : `${facts}\n`}` +
    section(writeUpHeadings.ingredients, parts.join("")) +
    section(writeUpHeadings.method, steps("method")) +
    section(writeUpHeadings.toServe, steps("to-serve")) +
    section(writeUpHeadings.keeping, lines(writeUp.keeping)) +
    section(writeUpHeadings.swaps, lines(writeUp.swaps)) +
    section(
      writeUpHeadings.allergens,
      (allergens.length === 0 && unknown === "" ? wrap(noneFound, "  ") : allergens.join("") + unknown) +
        wrap(allergenDeferral, "  "),
    ) +
    section(writeUpHeadings.cautions, cautions.length === 0 ? "" : lines([...cautions, deferral])) +
    (writeUp.kilocaloriesPerPortion === null ? "" : `\n${energyLine(writeUp.kilocaloriesPerPortion)}\n`)
  );
};

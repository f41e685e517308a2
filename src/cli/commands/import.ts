import { basename, join } from "node:path";
import { type Region, readCard, regions } from "#engine/index.ts";
import { type BringTrouble, type BroughtCard, canBring, cardsFromFile } from "#wire/bring/cards-from-file.ts";
import { type Missed, tallyMissed } from "#wire/bring/missed.ts";
import { placesIn } from "#wire/place.ts";
import { printJson } from "#wire/print-json.ts";
import { bringTroubleText, missedHeadings } from "#words/brought-text.ts";
import { countText, listText, quoted } from "#words/number-text.ts";
import { type Command, commonOptions } from "../command.ts";
import { readInput, troubleText } from "../load-sitting.ts";
import type { Paint } from "../show/paint.ts";
import { tableText } from "../show/table.ts";
import { exitCodes, type World } from "../world.ts";

/** What became of one card. */
type CardReport = {
  readonly file: string;
  readonly card: string;
  /** Where it was written; null when it was only read. */
  readonly written: string | null;
  readonly title: string;
  readonly ingredients: number;
  readonly steps: number;
  readonly stops: number;
  readonly warnings: number;
};

/** Brings cards in from files and folders of other kinds. */
export const importCommand: Command = {
  name: "import",
  summary: "bring cards in from web pages, schema.org JSON-LD, Markdown or text, one file or a folder",
  takes: "PATH…",
  least: 1,
  most: Number.POSITIVE_INFINITY,
  options: {
    into: { type: "string", value: "FOLDER", help: "write the cards there; without it they are only read" },
    region: {
      type: "string",
      value: regions.join("|"),
      help: "whose cups, tins and words (uk when left out)",
    },
    json: commonOptions.json,
  },
  about:
    "Finds the dishes in each file, turns them into plain cards, and says what was not understood in them\n" +
    "all together, the most frequent first. A folder is taken with all below it. A card that is there is\n" +
    "never written over: the new one gets a number. It can be stopped at any time; what is written stays.",
  examples: [
    "tamis import page.html",
    "tamis import old-recipes --into cards",
    "tamis import export.json --into cards --region us",
  ],
  run: async ({ args, flag, value, world, paint }) => {
    const region = value("region") ?? "uk";
    if (!regions.some((name) => name === region))
      return {
        stdout: "",
        stderr: `tamis import: --region is "${region}"; ${listText(regions, "or")} was looked for\n`,
        code: exitCodes.unusable,
      };
    const files = args.flatMap((path) => filesOf(path, world));
    const reports: CardReport[] = [];
    const passedOver: string[] = [];
    const missed = tallyMissed();
    let stderr = "";
    let unusable = false;
    for (const [k, path] of files.entries()) {
      world.tell(`\r${k + 1} of ${files.length}  `);
      const found = await readInput(path, world);
      if (typeof found === "string") {
        stderr += `tamis: ${troubleText(path, found)}\n`;
        unusable = true;
        continue;
      }
      if (found.encoding === "windows-1252")
        stderr += `${path}: this is not UTF-8; it was read as Windows-1252\n`;
      const { cards, trouble } = cardsFromFile(path === "-" ? "stdin" : path, found.text);
      stderr += trouble.map((one) => lineOf(one, path)).join("");
      if (cards.length === 0) passedOver.push(path);
      for (const card of cards) {
        const { value: dish, findings } = readCard(card.text, card.name, region as Region);
        const written = writeCard(card, value("into"), world);
        if (written.trouble !== null) {
          stderr += written.trouble;
          unusable = true;
        }
        missed.add(findings, placesIn(written.path ?? `${path} (${card.name})`, card.text));
        const count = (severity: string): number => findings.filter((f) => f.severity === severity).length;
        reports.push({
          file: path,
          card: card.name,
          written: written.path,
          title: dish.title,
          ingredients: dish.ingredients.length,
          steps: dish.steps.length,
          stops: count("stop"),
          warnings: count("warn"),
        });
      }
    }
    world.tell("\r\u001b[K");
    const notUnderstood = missed.all();
    return {
      stdout: flag("json")
        ? printJson({ files: files.length, cards: reports, passedOver, notUnderstood })
        : summary(files.length, reports, notUnderstood, paint),
      stderr,
      code: unusable ? exitCodes.unusable : reports.length === 0 ? exitCodes.stopped : exitCodes.fine,
    };
  },
};

/** The files of an operand: itself, or of a folder all that may hold cards. */
const filesOf = (path: string, world: World): readonly string[] => {
  const inside = path === "-" ? null : world.walk(path);
  return inside === null ? [path] : inside.filter(canBring);
};

const lineOf = ({ code, place }: BringTrouble, path: string): string =>
  `${path}:${place.line}:${place.column}: ${bringTroubleText[code]} [${code}]\n`;

type Written = { readonly path: string | null; readonly trouble: string | null };

/** Writes a card under its name, or its name with a number where another card has it; the same card twice is one. */
const writeCard = (card: BroughtCard, into: string | null, world: World): Written => {
  if (into === null) return { path: null, trouble: null };
  for (let k = 1; k < 1000; k += 1) {
    const path = join(into, `${basename(card.name)}${k === 1 ? "" : `-${k}`}.txt`);
    const result = world.write(path, card.text);
    if (result === "written") return { path, trouble: null };
    if (result === "denied") return { path: null, trouble: `tamis: ${path}: this cannot be written\n` };
    const there = world.read(path);
    if (typeof there !== "string" && there.text === card.text) return { path, trouble: null };
  }
  return { path: null, trouble: `tamis: ${card.name}: too many cards of this name\n` };
};

/** Most rows of a kind that a person reads. */
const mostShown = 12;

const summary = (
  files: number,
  reports: readonly CardReport[],
  missed: Readonly<Record<string, readonly Missed[]>>,
  paint: Paint,
): string => {
  const rows = reports.map((r) => [
    r.written ?? r.card,
    r.title,
    countText(r.ingredients, "ingredient", "ingredients"),
    countText(r.steps, "step", "steps"),
    [
      r.stops > 0 ? countText(r.stops, "stop", "stops") : "",
      r.warnings > 0 ? countText(r.warnings, "warning", "warnings") : "",
    ]
      .filter((text) => text !== "")
      .join(", "),
  ]);
  const kinds = Object.entries(missedHeadings).flatMap(([code, heading]) => {
    const all = missed[code] ?? [];
    if (all.length === 0) return [];
    const shown = all
      .slice(0, mostShown)
      .map(({ words, times, first }) => [
        quoted(words),
        times === 1 ? "once" : `${times} times`,
        `${first.file}:${first.line}:${first.column}`,
      ]);
    const more =
      all.length > shown.length ? `  and ${all.length - shown.length} more (--json has all)\n` : "";
    return [`\n${paint.bold(heading)}\n${tableText(shown, ["left", "left", "left"], "  ")}${more}`];
  });
  return (
    `${paint.bold(`${countText(reports.length, "card", "cards")} from ${countText(files, "file", "files")}`)}\n` +
    tableText(rows, ["left", "left", "right", "right", "left"], "  ") +
    kinds.join("")
  );
};

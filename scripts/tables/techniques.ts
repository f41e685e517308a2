import { cell, list, number, readTable } from "./csv.ts";

const stations = "hands bench burner oven grill fryer fridge freezer ice-bath machine".split(" ");
const attentions = ["hands", "mind", "none"];
const heats = ["low", "medium", "high", "oven", "none"];
const laws = ["fixed", "per-kilo", "per-piece", "per-batch", "heating"];
const effects = ["none", "evaporates", "absorbs", "trims", "drains"];

/** Text of src/engine/larder/tables/techniques.ts: one record a technique, in the order of data/techniques.csv. Throws when a verb stands in two rows or a cell holds an unknown word. */
export const buildTechniques = (): string => {
  const ownerOf = new Map<string, string>();
  const lines = readTable("techniques.csv").map((row) => {
    const id = cell(row, "id");
    const oneOf = (column: string, words: readonly string[]): string => {
      const word = cell(row, column);
      if (!words.includes(word)) throw new Error(`${id}: "${word}" is no ${column}`);
      return word;
    };
    const known = (column: string): number => {
      const value = number(row, column);
      if (value === null) throw new Error(`${id}: ${column} is empty`);
      return value;
    };
    const verbs = list(row, "verbs");
    for (const verb of verbs) {
      const other = ownerOf.get(verb);
      if (other !== undefined) throw new Error(`"${verb}" stands under both ${other} and ${id}`);
      ownerOf.set(verb, id);
    }
    const minutes = { low: known("low"), likely: known("likely"), high: known("high") };
    if (minutes.low > minutes.likely || minutes.likely > minutes.high)
      throw new Error(`${id}: minutes are not in order`);
    const low = number(row, "celsiusLow");
    const high = number(row, "celsiusHigh");
    return JSON.stringify({
      id,
      verbs,
      station: oneOf("station", stations),
      attention: oneOf("attention", attentions),
      heat: oneOf("heat", heats),
      law: oneOf("law", laws),
      minutes,
      setUp: known("setUp"),
      handling: known("handling"),
      mass: oneOf("mass", effects),
      massShare: known("massShare"),
      kills: oneOf("kills", ["yes", "no"]) === "yes",
      celsius: low === null || high === null ? null : { low, high },
      miseEnPlace: oneOf("mise", ["yes", "no"]) === "yes",
      source: cell(row, "source"),
    });
  });
  return [
    "// generated from data/techniques.csv by scripts/build-tables.ts",
    'import type { TechniqueRow } from "../technique-row.ts";',
    "",
    "/** One record a technique; its numbers take their units in ../techniques.ts. */",
    "export const techniqueRows: readonly TechniqueRow[] = [",
    ...lines.map((line) => `  ${line},`),
    "];",
    "",
  ].join("\n");
};

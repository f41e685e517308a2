import { attentions, growths, heats, massEffects, stations, timeLaws } from "../../src/engine/model/food.ts";
import { type CsvRow, cell, list, number, oneOf } from "./csv.ts";

/** Text of src/engine/larder/tables/techniques.ts: one record a technique, in the order of data/techniques.csv. Throws when a verb stands in two rows or a cell holds an unknown word. */
export const buildTechniques = (rows: readonly CsvRow[]): string => {
  const ownerOf = new Map<string, string>();
  const lines = rows.map((row) => {
    const id = cell(row, "id");
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
      station: oneOf(row, "station", stations),
      attention: oneOf(row, "attention", attentions),
      heat: oneOf(row, "heat", heats),
      law: oneOf(row, "law", timeLaws),
      grows: oneOf(row, "grows", growths),
      minutes,
      setUp: known("setUp"),
      handling: known("handling"),
      mass: oneOf(row, "mass", massEffects),
      massShare: known("massShare"),
      kills: oneOf(row, "kills", ["yes", "no"]) === "yes",
      celsius: low === null || high === null ? null : { low, high },
      miseEnPlace: oneOf(row, "mise", ["yes", "no"]) === "yes",
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

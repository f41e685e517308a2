import { measureKinds, measurePers } from "../../src/engine/larder/measures.ts";
import { regions } from "../../src/engine/model/sitting.ts";
import { among, type CsvRow, cell, list, number, oneOf } from "./csv.ts";

/** Text of src/engine/larder/tables/measures.ts: one tab-separated row for each row of data/measures.csv, in its order. */
export const buildMeasures = (rows: readonly CsvRow[]): string => {
  const owner = new Map<string, string>();
  const lines = rows.map((row) => {
    const id = cell(row, "id");
    const kind = oneOf(row, "kind", measureKinds);
    const values = [number(row, "low"), number(row, "likely"), number(row, "high")];
    const [low, likely, high] = values;
    if (low != null && likely != null && high != null && !(low <= likely && likely <= high))
      throw new Error(`${id}: ${low}, ${likely}, ${high} are out of order`);
    for (const form of [...list(row, "forms"), ...list(row, "cased")]) {
      const other = owner.get(`${kind === "size" || kind === "level" ? kind : "unit"} ${form}`);
      if (other !== undefined) throw new Error(`"${form}" means both ${other} and ${id}`);
      owner.set(`${kind === "size" || kind === "level" ? kind : "unit"} ${form}`, id);
    }
    return [
      id,
      kind,
      list(row, "forms").join(";"),
      list(row, "cased").join(";"),
      among(row, "region", regions).join(" "),
      oneOf(row, "per", ["", ...measurePers]),
      values.map((value) => value ?? "").join(" "),
      list(row, "foods").join(" "),
      list(row, "source").join(" "),
    ].join("\t");
  });
  return [
    "// generated from data/measures.csv by scripts/build-tables.ts",
    "/** Tab-separated rows; the columns are read in ../measures.ts. */",
    "export const measureRows: readonly string[] = [",
    ...lines.map((line) => `  ${JSON.stringify(line)},`),
    "];",
    "",
  ].join("\n");
};

import { cell, list, number, readTable } from "./csv.ts";

const kinds = new Set([
  "mass",
  "volume",
  "piece",
  "container",
  "vague",
  "length",
  "level",
  "size",
  "bulk",
  "drained",
  "each",
]);

/** Text of src/engine/larder/tables/measures.ts: one tab-separated row for each row of data/measures.csv, in its order. */
export const buildMeasures = (): string => {
  const owner = new Map<string, string>();
  const lines = readTable("measures.csv").map((row) => {
    const id = cell(row, "id");
    const kind = cell(row, "kind");
    if (!kinds.has(kind)) throw new Error(`${id}: kind "${kind}" is not one of ${[...kinds].join(", ")}`);
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
      cell(row, "region"),
      cell(row, "per"),
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

import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";

/** A row of a table in data/, by column name. Every value is text; an empty cell is "". */
export type CsvRow = Readonly<Record<string, string>>;

/** The root of the project, with a slash at its end. */
export const projectRoot = fileURLToPath(new URL("../../", import.meta.url));

/** Reads data/<name> (RFC 4180, first line names the columns, `#` starts a comment line). Throws when malformed. */
export const readTable = (name: string): readonly CsvRow[] =>
  parse(readFileSync(`${projectRoot}data/${name}`, "utf8"), {
    columns: true,
    comment: "#",
    comment_no_infix: true,
    skip_empty_lines: true,
    trim: true,
  }) as CsvRow[];

/** The cell of a column; throws when the table has no such column, so that a misspelt name cannot pass for a blank. */
export const cell = (row: CsvRow, column: string): string => {
  const value = row[column];
  if (value === undefined) throw new Error(`no column "${column}"`);
  return value;
};

/** A cell that lists several things, split at semicolons. */
export const list = (row: CsvRow, column: string): string[] =>
  cell(row, column)
    .split(";")
    .map((item) => item.trim())
    .filter((item) => item !== "");

/** A number, or null for an empty cell. Throws for anything else. */
export const number = (row: CsvRow, column: string): number | null => {
  const text = cell(row, column);
  if (text === "") return null;
  const value = Number(text);
  if (!Number.isFinite(value)) throw new Error(`"${text}" in column ${column} is not a number`);
  return value;
};

const inList = <T extends string>(row: CsvRow, column: string, word: string, known: readonly T[]): T => {
  const found = known.find((k) => k === word);
  if (found === undefined)
    throw new Error(`row ${cell(row, "id")}, column ${column}: "${word}" is not one of ${known.join(", ")}`);
  return found;
};

/** The one word of a cell, out of a closed list. Throws with row and column for any other. */
export const oneOf = <T extends string>(row: CsvRow, column: string, known: readonly T[]): T =>
  inList(row, column, cell(row, column), known);

/** The space-separated words of a cell, out of a closed list. Throws with row and column for any other. */
export const among = <T extends string>(row: CsvRow, column: string, known: readonly T[]): readonly T[] =>
  cell(row, column)
    .split(" ")
    .filter((word) => word !== "")
    .map((word) => inList(row, column, word, known));

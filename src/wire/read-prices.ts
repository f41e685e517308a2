import { parse } from "csv-parse/browser/esm/sync";
import { minor, type Pack } from "#engine/index.ts";
import { currencyDecimals } from "#words/money-text.ts";
import { nearestName } from "./nearest-name.ts";
import { type Place, placesIn } from "./place.ts";
import { makeProblem, type Problem, type Wanted } from "./problem.ts";
import { notText } from "./yaml-file.ts";

/** The columns of a price list; they may stand in any order. */
const priceColumns = ["supplier", "item", "food", "size", "unit", "price"] as const;
type Column = (typeof priceColumns)[number];

/** A price list with the place of each pack's row. A row that cannot be used is left out, and said so. */
type ReadPrices = {
  readonly packs: readonly Pack[];
  readonly places: readonly Place[];
  readonly problems: readonly Problem[];
};

type Row = { readonly record: readonly string[]; readonly info: { readonly lines: number } };

/** Reads a price list: CSV by RFC 4180 with a header line, prices in the currency's main unit. */
export const readPrices = (file: string, text: string, currency: string): ReadPrices => {
  const place = placesIn(file, text);
  const refused = (problem: Problem): ReadPrices => ({ packs: [], places: [], problems: [problem] });
  const trouble = notText(text);
  if (trouble !== null)
    return refused(makeProblem("file-not-text", place(0, 0), { name: file, reason: trouble }));
  if (text.trim() === "") return refused(makeProblem("file-empty", place(0, 0), { name: file }));
  const lines = text.split("\n");
  const starts: number[] = [];
  for (let i = 0, at = 0; i < lines.length; i++) {
    starts.push(at);
    at += (lines[i] ?? "").length + 1;
  }
  const placeOfLine = (line: number): Place => {
    const start = starts[line - 1] ?? 0;
    return place(start, start + (lines[line - 1] ?? "").replace(/\r$/, "").length);
  };
  const rows = rowsOf(text);
  if ("line" in rows)
    return refused(makeProblem("marks-broken", placeOfLine(rows.line), { kind: "csv", why: rows.why }));
  const [header, ...body] = rows.rows;
  const names = (header?.record ?? []).map((name) => name.trim().toLowerCase());
  const headerProblems = columnProblems(names, placeOfLine(header?.info.lines ?? 1));
  if (headerProblems.length > 0) return { packs: [], places: [], problems: headerProblems };
  const packs: Pack[] = [];
  const places: Place[] = [];
  const problems: Problem[] = [];
  for (const { record, info } of body) {
    const line = placeOfLine(info.lines);
    const cell = (column: Column): string => (record[names.indexOf(column)] ?? "").trim();
    const bad = badCell(record.length === names.length, cell, currency);
    if (bad !== null) {
      const at = fieldPlace(line, lines[info.lines - 1] ?? "", names.indexOf(bad.key), place);
      const facts = { ...bad, found: bad.found === "" ? "nothing" : bad.found };
      problems.push(makeProblem("value-bad", at, facts, "warn"));
      continue;
    }
    packs.push({
      supplier: cell("supplier"),
      item: cell("item"),
      food: cell("food"),
      size: Number(cell("size")),
      unit: cell("unit"),
      price: minor(Math.round(Number(cell("price")) * 10 ** currencyDecimals(currency))),
      line: info.lines,
    });
    places.push(line);
  }
  return { packs, places, problems };
};

/** The rows with the line each ends on, or the line on which the marks break. */
const rowsOf = (
  text: string,
): { readonly rows: readonly Row[] } | { readonly line: number; readonly why: string } => {
  try {
    const rows = parse(text, {
      bom: true,
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
    }) as unknown as readonly Row[];
    return { rows };
  } catch (error) {
    const line = (error as { lines?: unknown }).lines;
    return {
      line: typeof line === "number" ? line : 1,
      why: "a quotation mark is out of place or not closed",
    };
  }
};

const columnProblems = (names: readonly string[], at: Place): readonly Problem[] => {
  const known: readonly string[] = priceColumns;
  const missing = priceColumns.filter((column) => !names.includes(column));
  if (missing.length === priceColumns.length)
    return [makeProblem("value-bad", at, { key: "first line", found: names.join(","), wanted: "columns" })];
  return [
    ...names
      .filter((name) => !known.includes(name))
      .map((key) => makeProblem("key-unknown", at, { key, near: nearestName(key, missing), known })),
    ...names
      .filter((name, i) => names.indexOf(name) < i)
      .map((name) => makeProblem("name-twice", at, { name })),
    ...missing.map((key) => makeProblem("key-missing", at, { key, wanted: "columns" })),
  ];
};

type BadCell = { readonly key: Column; readonly found: string; readonly wanted: Wanted };

/** The first cell of a row that cannot be used; null when all can. */
const badCell = (whole: boolean, cell: (column: Column) => string, currency: string): BadCell | null => {
  if (!whole) return { key: "supplier", found: "more or fewer cells than the first line", wanted: "columns" };
  for (const key of ["supplier", "item", "food", "unit"] as const)
    if (cell(key) === "") return { key, found: "", wanted: "text" };
  const size = cell("size");
  if (!/^\d+(\.\d+)?$/.test(size) || Number(size) <= 0 || Number(size) > 1e6)
    return { key: "size", found: size, wanted: "size" };
  const price = cell("price");
  const decimals = currencyDecimals(currency);
  const form = decimals === 0 ? /^\d+$/ : new RegExp(`^\\d+(\\.\\d{1,${decimals}})?$`);
  if (!form.test(price) || Number(price) > 1e6) return { key: "price", found: price, wanted: "price" };
  return null;
};

/** The place of the nth cell of a line; the whole line when its quotation marks hide it. */
const fieldPlace = (
  line: Place,
  text: string,
  index: number,
  place: (start: number, end: number) => Place,
): Place => {
  if (text.includes('"')) return line;
  const cells = text.replace(/\r$/, "").split(",");
  const before = cells.slice(0, index).reduce((sum, cell) => sum + cell.length + 1, 0);
  return index < cells.length
    ? place(line.start + before, line.start + before + (cells[index] ?? "").length)
    : line;
};

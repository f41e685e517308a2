import type { Estimate } from "../measure/estimate.ts";
import { keptByText } from "../measure/kept-by-text.ts";
import type { Food } from "../model/food.ts";
import type { Region } from "../model/sitting.ts";
import { measureRows } from "./tables/measures.ts";

/** What a word of the measure table counts. "each" rows weigh one of a food; "bulk" rows are grams a millilitre. */
export const measureKinds = [
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
] as const;
type MeasureKind = (typeof measureKinds)[number];

/** What low, likely and high count: grams, millilitres, centimetres, or a factor. */
export const measurePers = ["g", "ml", "cm", "x"] as const;
type MeasurePer = (typeof measurePers)[number];

/** One row of the measure table: how much a word means, where and for which foods. */
export type Measure = {
  readonly id: string;
  readonly kind: MeasureKind;
  readonly regions: readonly string[];
  readonly per: MeasurePer | null;
  /** null when the row only names a word and says no size (a box). */
  readonly size: Estimate<number> | null;
  /** Food ids, or "shelf:<name>"; empty for any food. */
  readonly foods: readonly string[];
  readonly sources: readonly string[];
};

type Row = {
  readonly measure: Measure;
  readonly forms: readonly string[];
  readonly cased: readonly string[];
};

const split = (text: string, mark: string): readonly string[] => (text === "" ? [] : text.split(mark));

const rowFrom = (line: string): Row => {
  const cells = line.split("\t");
  const at = (column: number): string => cells[column] ?? "";
  const [low, likely, high] = at(6).split(" ");
  return {
    measure: {
      id: at(0),
      // The builder of the table writes these words and no others.
      kind: at(1) as MeasureKind,
      regions: split(at(4), " "),
      per: at(5) === "" ? null : (at(5) as MeasurePer),
      size:
        likely === undefined || likely === ""
          ? null
          : { low: Number(low), likely: Number(likely), high: Number(high) },
      foods: split(at(7), " "),
      sources: split(at(8), " "),
    },
    forms: split(at(2), ";"),
    cased: split(at(3), ";"),
  };
};

const rows = measureRows.map(rowFrom);

/** Every row of the measure table, in its order. */
export const measures: readonly Measure[] = rows.map((row) => row.measure);

const byId = new Map<string, Measure[]>();
for (const measure of measures) {
  const same = byId.get(measure.id);
  if (same === undefined) byId.set(measure.id, [measure]);
  else same.push(measure);
}

const plainForm = (form: string): string => form.replaceAll(".", "");

const mapOf = (
  kinds: (kind: MeasureKind) => boolean,
  formsOf: (row: Row) => readonly string[],
): ReadonlyMap<string, string> =>
  new Map(
    rows
      .filter((row) => kinds(row.measure.kind))
      .flatMap((row) => formsOf(row).map((form): [string, string] => [plainForm(form), row.measure.id])),
  );

const isUnit = (kind: MeasureKind): boolean => kind !== "size" && kind !== "level";
const unitByForm = mapOf(isUnit, (row) => row.forms);
const unitByCasedForm = mapOf(isUnit, (row) => row.cased);
const levelByForm = mapOf(
  (kind) => kind === "level",
  (row) => row.forms,
);
const sizeByForm = mapOf(
  (kind) => kind === "size",
  (row) => row.forms,
);

/** Longest form of a unit in words ("three finger pinch"). */
export const mostUnitWords = Math.max(...[...unitByForm.keys()].map((form) => form.split(" ").length));

const mostKept = 5000;

/** The unit that these words write, as an id of the measure table; capitals count in "t", "T", "c", "D". Null for none. */
export const findUnit = keptByText((words): string | null => {
  const plain = plainForm(words);
  return unitByCasedForm.get(plain) ?? unitByForm.get(plain.toLowerCase().replaceAll("-", " ")) ?? null;
}, mostKept);

// "three" and "three finger" of "three finger pinch".
const unitBeginnings: ReadonlySet<string> = new Set(
  [...unitByForm.keys(), ...unitByCasedForm.keys()].flatMap((form) =>
    form
      .split(" ")
      .slice(0, -1)
      .map((_, k, all) =>
        all
          .slice(0, k + 1)
          .join(" ")
          .toLowerCase(),
      ),
  ),
);

/** True when a unit of more words may begin with these. */
export const beginsUnit = keptByText(
  (words): boolean => unitBeginnings.has(plainForm(words).toLowerCase().replaceAll("-", " ")),
  mostKept,
);

/** "heaped", "scant": the row of how a spoon is filled; null for another word. */
export const findLevel = (word: string): string | null => levelByForm.get(word.toLowerCase()) ?? null;

/** "large", "baby": the row of how big a piece is; null for another word. */
export const findSize = (word: string): string | null =>
  sizeByForm.get(word.toLowerCase().replaceAll("-", " ")) ?? null;

const fits = (measure: Measure, region: Region, food: Food | null): number => {
  if (measure.regions.length > 0 && !measure.regions.includes(region)) return -1;
  const here = measure.regions.length > 0 ? 1 : 0;
  if (measure.foods.length === 0) return here;
  if (food === null) return -1;
  if (measure.foods.includes(food.id)) return here + 4;
  return measure.foods.includes(`shelf:${food.shelf}`) ? here + 2 : -1;
};

/** The row of an id that fits a region and a food best: the food's own before its shelf's before any. Null when none fits. */
export const measureFor = (id: string, region: Region, food: Food | null): Measure | null => {
  let best: Measure | null = null;
  let most = -1;
  for (const measure of byId.get(id) ?? []) {
    const fit = fits(measure, region, food);
    if (fit > most) {
      most = fit;
      best = measure;
    }
  }
  return best;
};

/** What an id counts; null when the table has no such id. */
export const measureKind = (id: string): MeasureKind | null => byId.get(id)?.[0]?.kind ?? null;

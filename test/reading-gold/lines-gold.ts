import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { z } from "zod";
import { regions } from "#engine/index.ts";

const amountObject = z.strictObject({
  low: z.number().optional(),
  likely: z.number().optional(),
  high: z.number().optional(),
  unit: z.string().nullable().default("piece"),
  approximate: z.boolean().optional(),
  vague: z.boolean().optional(),
});

/** An amount as the gold states it; what is left out is not scored. */
export type GoldAmount = {
  readonly low: number;
  readonly high: number;
  readonly likely: number | null;
  readonly unit: string | null;
  readonly approximate: boolean | null;
  readonly vague: boolean | null;
};

const numberOf = (words: string): number => {
  const parts = words.trim().split(/\s+/);
  const values = parts.map((p) => {
    const [over = "", under] = p.split("/");
    return under === undefined ? Number(over) : Number(over) / Number(under);
  });
  const sum = values.reduce((a, b) => a + b, 0);
  if (parts.length > 2 || !Number.isFinite(sum)) throw new Error(`no number: "${words}"`);
  return sum;
};

const shorthand = /^(\?)?(~)?(\d+(?: \d+\/\d+|[./]\d+)?)(?:([-~])([\d./]+)(?:~([\d./]+))?)?(?:\s+(.+))?$/;

/** "2", "1/2 cup", "~600 g" (about), "2-3 tbsp", "?1 pinch" (a vague word), "?2~3~5 sprig" (low, likely, high). */
const amountOf = (value: string | number | z.infer<typeof amountObject>): GoldAmount => {
  if (typeof value === "object") {
    const some = value.likely ?? value.low ?? value.high ?? 1;
    return {
      low: value.low ?? some,
      high: value.high ?? some,
      likely: value.likely ?? null,
      unit: value.unit,
      approximate: value.approximate ?? null,
      vague: value.vague ?? null,
    };
  }
  const found = shorthand.exec(String(value).trim());
  if (found === null) throw new Error(`no amount: "${value}"`);
  const [, vague, about, first = "", joint, second, third, unit] = found;
  const low = numberOf(first);
  const three = joint === "~" && third !== undefined;
  const high = three ? numberOf(third) : second === undefined ? low : numberOf(second);
  return {
    low,
    high,
    likely: three && second !== undefined ? numberOf(second) : null,
    unit: unit ?? "piece",
    approximate: about !== undefined,
    vague: vague !== undefined,
  };
};

const words = z.array(z.string());
const amounts = z.array(z.union([z.string(), z.number(), amountObject]).transform(amountOf));
const foodNames = z.union([z.string(), words]).nullable();
const alternative = z.strictObject({
  food: foodNames.optional(),
  name: z.string().optional(),
  amounts: amounts.optional(),
});

const reading = {
  amounts: amounts.optional(),
  /** A name of the food table, or several of which any will do; null for words that the table has not. */
  food: foodNames.optional(),
  name: z.string().optional(),
  state: words.optional(),
  preparation: words.optional(),
  purpose: z.string().nullable().optional(),
  optional: z.boolean().optional(),
  alternatives: z.array(alternative).optional(),
  size: z.string().nullable().optional(),
  container: z.string().nullable().optional(),
  portion: z.string().nullable().optional(),
  card: z.string().nullable().optional(),
  equipment: z.boolean().optional(),
};

const fields = z.strictObject(reading);
const line = z.strictObject({
  text: z.string(),
  region: z.enum(regions).optional(),
  /** For a line of several foods: the reading of each, in order. An empty list is a line that is no food. */
  foods: z.array(fields).optional(),
  /** Codes of findings that must stand on the line. */
  findings: words.optional(),
  ...reading,
});
const file = z.strictObject({
  "unless said": fields.optional(),
  lines: z.array(line),
});

/** What the gold says of one food of a line; a field left out is not scored. */
export type GoldReading = z.infer<typeof fields>;

export type GoldLine = {
  readonly text: string;
  readonly region: (typeof regions)[number];
  readonly foods: readonly GoldReading[];
  readonly findings: readonly string[];
};

/** The lines of a YAML or JSON text of gold. Throws on a key or a value that the format has not. */
export const goldLinesOf = (text: string): readonly GoldLine[] => {
  const read = file.parse(parse(text));
  const usual = read["unless said"] ?? {};
  return read.lines.map(({ text: words, region, foods, findings, ...own }) => {
    const single =
      own.equipment === true ? { ...usual, food: undefined, name: undefined, ...own } : { ...usual, ...own };
    return {
      text: words,
      region: region ?? "uk",
      findings: findings ?? [],
      foods: foods === undefined ? [single] : foods.map((f) => ({ ...usual, ...own, ...f })),
    };
  });
};

/** The lines of a file of gold, YAML or JSON. */
export const goldLines = (path: string): readonly GoldLine[] => goldLinesOf(readFileSync(path, "utf8"));

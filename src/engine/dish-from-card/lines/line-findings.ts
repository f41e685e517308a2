import type { Finding, Fix } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { nearFoods } from "../../larder/foods.ts";
import { measureFor, measureKind } from "../../larder/measures.ts";
import { allergensUnstated, statedOf } from "../../larder/own-foods.ts";
import { roundForScales } from "../../measure/rounding.ts";
import type { Amount } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import type { SourceId, Span } from "../../model/span.ts";
import type { Reading } from "./reading.ts";
import { shifted } from "./shift.ts";
import { isBareGrams, type Weight } from "./weigh.ts";

/** Where a reading stands: the source, the line's start in it, the line's words. */
export type Place = {
  readonly source: SourceId;
  readonly start: number;
  readonly line: string;
  readonly region: Region;
};

const gramsText = (grams: number): string => `${roundForScales(grams)} g`;

const write = (kind: Fix["kind"], span: Span, text: string): Fix => ({ kind, edits: [{ span, text }] });

const words = (place: Place, span: Span): string => place.line.slice(span.start, span.end);

const nameless = (reading: Reading): string => (reading.name === "" ? "this" : reading.name);

/** Two weights of one food that are too far apart to mean the same: how far is forgiven depends on how they were found. */
const agree = (a: Weight, b: Weight, { food, name }: Reading): boolean => {
  const [low, high] = a.grams.likely < b.grams.likely ? [a.grams, b.grams] : [b.grams, a.grams];
  if (low.likely <= 0) return true;
  const both = new Set([a.basis, b.basis]);
  // Kitchen roundings of pounds and grams differ by up to a fifth ("25 g (1 oz)"); pieces and packs are anyone's guess.
  const forgiven =
    both.has("pieces") &&
    (food?.shelf === "meat" || food?.shelf === "fish" || food?.shelf === "poultry" || cut.test(name))
      ? anySize
      : both.has("vague") || both.has("pack")
        ? 6
        : both.has("pieces")
          ? 2.5
          : both.has("volume")
            ? 1.6
            : 1.2;
  return high.likely / low.likely <= forgiven || low.high >= high.low;
};

// A trout is one of 80 g or of three kilos, and so is a piece that is cut from something: the weight beside it says which.
const anySize = 60;
const cut =
  /^(side|joint|piece|slab|block|half|quarter|whole|wheel|chunk|hunk|rack|saddle|loin|shoulder|leg) /;

const disagreements = (
  reading: Reading,
  best: Weight,
  others: readonly Weight[],
  place: Place,
): readonly Finding[] => {
  const other = others.find((o) => !agree(best, o, reading));
  if (other === undefined || best.amount === null || other.amount === null) return [];
  const [first, second] = best.amount.span.start <= other.amount.span.start ? [best, other] : [other, best];
  const at = (w: Weight): Span => shifted(w.amount?.span ?? { start: 0, end: 0 }, place.start);
  const text = (w: Weight): string => words(place, w.amount?.span ?? { start: 0, end: 0 });
  return [
    makeFinding(
      "amounts-disagree",
      place.source,
      at(second),
      {
        name: nameless(reading),
        first: `${text(first)} (${gramsText(first.grams.likely)})`,
        second: `${text(second)} (${gramsText(second.grams.likely)})`,
      },
      {
        related: [{ source: place.source, span: at(first) }],
        fixes: [write("correct-amount", at(second), gramsText(first.grams.likely))],
      },
    ),
  ];
};

const unknownFood = (reading: Reading, place: Place): readonly Finding[] => {
  if (reading.food !== null || reading.equipment || reading.card !== null) return [];
  const span = shifted(reading.nameSpan, place.start);
  const letters = /\p{L}/u.test(reading.name);
  if (!letters || reading.name.split(/\s+/).length > 7)
    return [
      makeFinding(
        "line-not-understood",
        place.source,
        { start: place.start, end: place.start + place.line.length },
        { words: place.line.slice(0, 80) },
      ),
    ];
  const near = nearFoods(reading.name, 3).map((food) => food.name);
  return [
    makeFinding(
      "food-unknown",
      place.source,
      span,
      { name: reading.name, near: near[0] ?? "" },
      { fixes: near.map((name) => write("rename-food", span, name)) },
    ),
  ];
};

/** What is known of a food of the cook's own rests on what somebody stated, and that is told. */
const ownFood = (reading: Reading, place: Place): readonly Finding[] => {
  const { food, name } = reading;
  if (food === null) return [];
  const span = shifted(reading.nameSpan, place.start);
  if (allergensUnstated(food)) return [makeFinding("allergens-unstated", place.source, span, { name })];
  const stated = statedOf(food);
  if (stated === null) return [];
  const groups = [...new Set(stated.allergens.map((a) => a.group))].join(", ");
  return [makeFinding("own-food-stated", place.source, span, { name, groups, by: stated.by })];
};

const millilitresOf = (
  amount: Amount,
  place: Place,
  reading: Reading,
): { likely: number; unit: string } | null => {
  const row = measureFor(amount.unit ?? "", place.region, reading.food);
  return row?.size != null && row.per === "ml"
    ? { likely: amount.likely * row.size.likely, unit: "ml" }
    : null;
};

const vagueFinding = (reading: Reading, weight: Weight, place: Place): Finding => {
  const { amount } = weight;
  const poured = amount === null ? null : millilitresOf(amount, place, reading);
  const likely = roundForScales(poured?.likely ?? weight.grams.likely);
  const unit = poured?.unit ?? "g";
  const span = amount?.span ?? reading.nameSpan;
  const at = shifted(span, place.start);
  const name = shifted(reading.nameSpan, place.start);
  const fix =
    amount === null
      ? write("write-amount", { start: name.start, end: name.start }, `${likely} ${unit} `)
      : write("write-amount", at, `${likely} ${unit}`);
  return makeFinding(
    "amount-vague",
    place.source,
    at,
    { words: words(place, span), likely, unit },
    { fixes: [fix] },
  );
};

const weightFinding = (reading: Reading, weight: Weight, place: Place): Finding => {
  const span = shifted(reading.nameSpan, place.start);
  const text = ` (about ${gramsText(weight.grams.likely)})`;
  return makeFinding(
    "weight-assumed",
    place.source,
    span,
    { name: nameless(reading), grams: weight.grams.likely, basis: weight.basis },
    { fixes: [write("write-amount", { start: span.end, end: span.end }, text)] },
  );
};

const letters = /^(?:t|T|D|c|C|ts|Tb|tb)$/;

// Nobody puts two tablespoons of baking powder or six teaspoons of one thing that has a larger spoon.
const strong =
  /\b(?:salt|baking powder|baking soda|bicarbonate|yeast|extract|essence|cayenne|nutmeg|cloves?|saffron)\b/;

/** True when a spoon or cup of shorthand can hardly mean another: kitchens differ by a few millilitres only. */
const isLikely = (reading: Reading, amount: Amount, letter: string): boolean => {
  if (amount.unit === "spoon") return false;
  if (letter === "T") return !(amount.likely >= 2 && strong.test(reading.food?.name ?? reading.name));
  return letter !== "t" || amount.likely < 4;
};

/** Units that can be read in more than one way, with what they were taken for. */
export const doubtfulUnit = (
  reading: Reading,
  place: Place,
): { readonly key: string; readonly finding: Finding } | null => {
  for (const amount of reading.amounts) {
    const written = words(place, amount.span);
    const last =
      written
        .replace(/[.\s]+$/, "")
        .split(/[\s\d\u00bc-\u00be/\u2044-]+/)
        .at(-1) ?? "";
    const metricCup = amount.unit === "cup" && (place.region === "uk" || place.region === "eu");
    const doubtful = /^[A-Za-z]b?s?$/.test(last) ? letters.test(last) : amount.unit === "spoon";
    if (!(doubtful || metricCup) || amount.unit === null || measureKind(amount.unit) !== "volume") continue;
    const size = measureFor(amount.unit, place.region, null)?.size;
    if (size == null) continue;
    const end = shifted(amount.span, place.start);
    const at = {
      start: end.start + Math.max(0, written.lastIndexOf(last)),
      end: end.start + written.lastIndexOf(last) + last.length,
    };
    const taken = `${amount.unit} (${roundForScales(size.likely)} ml)`;
    const fixes = doubtful && amount.unit !== "spoon" ? [write("write-unit", at, amount.unit)] : [];
    return {
      key: metricCup ? "cup" : last,
      finding: {
        ...makeFinding("unit-doubtful", place.source, end, { words: written, taken }, { fixes }),
        ...(isLikely(reading, amount, last) ? { severity: "note" as const } : {}),
      },
    };
  }
  return null;
};

/** What there is to say about the weight and the food of one reading. */
export const findingsOf = (
  reading: Reading,
  best: Weight | null,
  others: readonly Weight[],
  place: Place,
): readonly Finding[] => {
  const found: Finding[] = [...unknownFood(reading, place), ...ownFood(reading, place)];
  if (reading.equipment || reading.card !== null) return found;
  const name = nameless(reading);
  const span = shifted(reading.nameSpan, place.start);
  if (best === null) {
    if (reading.amounts.length === 0) {
      if (reading.name !== "") found.push(makeFinding("amount-missing", place.source, span, { name }));
    } else if (reading.food !== null) found.push(makeFinding("weight-unknown", place.source, span, { name }));
    return found;
  }
  found.push(...disagreements(reading, best, others, place));
  if (best.amount !== null && isBareGrams(reading, best.amount)) {
    const at = shifted(best.amount.span, place.start);
    const fixes = [write("write-unit", { start: at.end, end: at.end }, " g")];
    found.push(
      makeFinding(
        "unit-doubtful",
        place.source,
        at,
        { words: words(place, best.amount.span), taken: "g" },
        { fixes },
      ),
    );
  } else if (best.basis === "vague") found.push(vagueFinding(reading, best, place));
  else if (best.assumed) found.push(weightFinding(reading, best, place));
  return found;
};

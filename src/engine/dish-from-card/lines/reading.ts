import { findFood } from "../../larder/foods.ts";
import { tokensOf } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import type { Span } from "../../model/span.ts";
import { formWords } from "./line-words.ts";
import { isOnlyModifiers } from "./modifiers.ts";
import type { Phrase } from "./read-phrase.ts";
import type { Remark } from "./read-tail.ts";

/** One food of a line, read but not yet weighed. Spans count from the line's start. */
export type Reading = {
  readonly amounts: readonly Amount[];
  readonly food: Food | null;
  readonly name: string;
  readonly nameSpan: Span;
  readonly portion: string | null;
  readonly card: string | null;
  readonly state: readonly string[];
  readonly preparation: readonly string[];
  readonly purpose: string | null;
  readonly optional: boolean;
  readonly alternatives: readonly Phrase[];
  readonly size: string | null;
  readonly container: string | null;
  readonly pack: Amount | null;
  readonly level: string | null;
  /** Something was done to the food before it is weighed ("500 g peeled potatoes"). */
  readonly prepared: boolean;
  readonly equipment: boolean;
  /** "plus extra for dusting": null when nothing more is asked for. */
  readonly extra: string | null;
  /** How many foods share the amounts of this line; 1 when each has its own. */
  readonly shared: number;
};

const unique = (words: readonly string[]): readonly string[] => [...new Set(words.filter((w) => w !== ""))];

/** A phrase as the reading of a food with nothing said beside it. */
export const fromPhrase = (phrase: Phrase): Reading => ({
  amounts: phrase.amounts,
  food: phrase.food,
  name: phrase.name,
  nameSpan: phrase.nameSpan,
  portion: phrase.portion,
  card: phrase.card,
  state: phrase.state,
  preparation: phrase.preparation,
  purpose: null,
  optional: false,
  alternatives: [],
  size: phrase.size,
  container: phrase.container,
  pack: phrase.pack,
  level: phrase.level,
  prepared: phrase.prepared,
  equipment: phrase.equipment,
  extra: null,
  shared: 1,
});

/** A bracketed weight beside a container is what one holds; elsewhere it is a second measure of the whole. */
const withAmounts = (reading: Reading, remark: Remark): Reading => {
  if (remark.amounts.length === 0) return reading;
  const count = reading.amounts[0];
  // "a bit of butter the size of an egg": the likeness tells how much the bit is.
  if (remark.amounts.some((a) => / size$/.test(a.unit ?? ""))) return { ...reading, amounts: remark.amounts };
  const packed =
    reading.container !== null &&
    reading.pack === null &&
    count !== undefined &&
    count.unit === reading.container;
  const each = remark.each && count !== undefined;
  // "half a tin (200 g)" tells what half of it holds.
  const whole = count !== undefined && count.likely >= 1;
  const factor = (packed || each) && whole ? count : { low: 1, likely: 1, high: 1 };
  const more = remark.amounts.map((a) => ({
    ...a,
    low: a.low * factor.low,
    likely: a.likely * factor.likely,
    high: a.high * factor.high,
  }));
  // A vague word gives way to the figure that explains it, and stays as what was written.
  return {
    ...reading,
    amounts: [...reading.amounts, ...more],
    pack: (packed && whole) || remark.packed ? (remark.amounts[0] ?? null) : reading.pack,
  };
};

/** "10 g fresh yeast (or 5 g dried)": a choice without a noun is of the same food. */
const named = (other: Phrase, reading: Reading): Phrase => {
  if (other.food !== null || other.name === "" || !isOnlyModifiers(tokensOf(other.name), 0)) return other;
  const last = reading.name.split(/\s+/).at(-1) ?? "";
  return { ...other, food: findFood(`${other.name} ${last}`) ?? reading.food };
};

/** A reading with what a remark adds to it. */
export const withRemark = (reading: Reading, remark: Remark): Reading => {
  const more = withAmounts(reading, remark);
  return {
    ...more,
    state: unique([...more.state, ...remark.state]),
    preparation: unique([...more.preparation, ...remark.preparation]),
    purpose: more.purpose ?? remark.purpose,
    optional: more.optional || remark.optional,
    alternatives: [...more.alternatives, ...remark.alternatives.map((a) => named(a, more))],
    size: more.size ?? remark.size,
    extra: more.extra ?? remark.extra,
  };
};

const lastWords = (name: string): readonly string[] => {
  const words = name.split(/\s+/);
  return words.slice(1).map((_, i) => words.slice(i + 1).join(" "));
};

/** "chicken or vegetable stock": the first food ends with the words of the second. */
export const withSharedHead = (reading: Reading, other: Phrase): Reading => {
  if (reading.name === "" && other.food !== null)
    return { ...reading, food: other.food, name: other.name, nameSpan: other.nameSpan };
  if (reading.name === "" || reading.name.split(/\s+/).length > 3) return reading;
  for (const end of lastWords(other.name)) {
    // "sausage or chicken meat": a word of form is no head to share.
    if (formWords.has(end.toLowerCase())) continue;
    const whole = `${reading.name} ${end}`;
    const food = findFood(whole);
    if (food !== null && food.id !== reading.food?.id && food.name !== "ghee")
      return { ...reading, food, name: whole };
  }
  // "fresh or dried thyme", "2 long or 4 short cucumbers": nothing but a modifier stands first.
  if (reading.food === null && other.food !== null && isOnlyModifiers(tokensOf(reading.name), 0))
    return {
      ...reading,
      food: other.food,
      state: unique([...reading.state, reading.name.toLowerCase()]),
      name: other.name,
      nameSpan: other.nameSpan,
    };
  return reading;
};

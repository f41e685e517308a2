import { type VerbReading, verbReadings } from "../../larder/techniques.ts";
import { isTool } from "./find-details.ts";
import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";
import { determiners, joints, openers, subordinators } from "./word-sets.ts";

/** The word at a place; empty beyond the ends. */
export const word = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

/** "gently", "then": says nothing about who does what. */
export const isAdverb = (text: string): boolean =>
  openers.has(text) || (text.length > 4 && /(?:ly|wise|ways)$/.test(text) && text !== "jelly");

/** Words that turn an order round. */
export const negations: ReadonlySet<string> = new Set([
  "not",
  "don't",
  "dont",
  "never",
  "without",
  "avoid",
  "doesn't",
  "won't",
  "isn't",
  "shouldn't",
  "can't",
  "cannot",
  "no",
]);

/** The place of the nearest earlier token that is no adverb; -1 at the start. */
export const before = (tokens: readonly Token[], i: number): number => {
  let at = i - 1;
  while (at >= 0 && isAdverb(word(tokens, at))) at -= 1;
  return at;
};

const reach = 7;

const stands = (tokens: readonly Token[], text: string, from: number, to: number): boolean => {
  for (let at = from; at < to; at += 1) if (tokens[at]?.text === text) return true;
  return false;
};

/** The reading whose tail follows the verb, an object between them perhaps; the longest tail first. */
export const readingAt = (
  tokens: readonly Token[],
  i: number,
  form: (r: VerbReading) => boolean,
): { reading: VerbReading; to: number } | null => {
  for (const reading of verbReadings(word(tokens, i))) {
    if (!form(reading)) continue;
    const [first] = reading.tail;
    if (first === undefined) return { reading, to: i + 1 };
    const particle = reading.tail.length === 1;
    // A long tail ("to the boil") is found behind a whole list of foods, a lone particle only behind a short object.
    const end = Math.min(tokens.length, i + (particle ? reach : reach * 2));
    if (!stands(tokens, first, i + 1, end)) continue;
    for (let at = i + 1; at < end; at += 1) {
      const here = word(tokens, at);
      // "cool it down and stick it in the fridge": the place belongs to the next order.
      if (joints.has(here) && nextOrder(tokens, at + 1)) break;
      if (joints.has(here) && (particle || first === "in" || !/^(,|and|&|or)$/.test(here))) break;
      // "Let that down": here the word stands for what is in hand.
      if (subordinators.has(here) && !(here === "that" && at === i + 1)) break;
      if (here === "then") break;
      // "Heat in the oven" is not "heat the oven": an article follows its verb at once.
      if (/^(the|your)$/.test(first) && at > i + 1) break;
      if (here !== first || !reading.tail.every((w, k) => word(tokens, at + k) === w)) continue;
      // "put the lamb in the oven" is not "put in": a lone particle before a place belongs to the place.
      if (
        particle &&
        at > i + 1 &&
        /^(the|a|an|your|to|it|its|their|his|both|one|each|all|medium|high|low|order)$/.test(
          word(tokens, at + 1),
        )
      )
        break;
      if (
        particle &&
        first === "in" &&
        (placeFollows(tokens, at + 1) ||
          (at > i + 1 && numberAt(tokens, at + 1) !== null) ||
          (word(tokens, i) === "cut" && isShape(tokens, at + 1)))
      )
        break;
      return { reading, to: at + reading.tail.length };
    }
  }
  return null;
};

/** "cut in 1 cm squares", "cut in shape": how, and nothing that is cut in. */
const isShape = (tokens: readonly Token[], i: number): boolean => {
  const figure = numberAt(tokens, i);
  if (figure !== null)
    return !/^(g|kg|oz|lb|tbsp|tsp|cups?|tablespoons?|teaspoons?)$/.test(word(tokens, figure.next));
  return tokens.slice(i, i + 4).some((t) => /^(shapes?|diamonds|triangles|dice|half-moons)$/.test(t.text));
};

const nextOrder = (tokens: readonly Token[], i: number): boolean =>
  /^(it|them|this|these|everything|the)$/.test(word(tokens, i + 1)) &&
  verbReadings(word(tokens, i)).some((r) => r.form === "base");

const places =
  /^(oven|fridge|refrigerator|freezer|microwave|grill|broiler|pan|pot|bowl|saucepan|skillet|tin|dish|tray|batches|half|two|quarters|pieces|water|processor|blender|mixer|wok|centre|middle|stages|rounds|layers|cubes|strips|chunks|slices|wedges|thirds|squares|fingers|lengths|rings|matchsticks|baskets?|bannetons?|moulds?|tins|glasses|jars|ramekins|terrine|tubs?|box|container|trays|bowls|dishes|pans|pots)$/;

/** "in the oven", "into a large bowl": a vessel or a place stands within a few words. */
export const placeFollows = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i; at < i + 4; at += 1) {
    if (joints.has(word(tokens, at))) return false;
    if (places.test(word(tokens, at))) return true;
  }
  return false;
};

/** Whether an object of a verb starts at a place: a determiner, a number, a food. */
export const takesObject = (tokens: readonly Token[], i: number, isFood: (i: number) => boolean): boolean => {
  let at = i;
  while (isAdverb(word(tokens, at))) at += 1;
  const next = word(tokens, at);
  if (determiners.has(next) || /^(dry|wet|everything|oven)$/.test(next)) return true;
  // "Butter a dish" without its article; "casserole dish" is no order.
  if (
    isTool(next) &&
    /^(butter|oil|flour|grease|line|heat|shake|cover|warm|wipe|preheat)$/.test(word(tokens, i - 1))
  )
    return true;
  if (numberAt(tokens, at) !== null) return true;
  return isFood(at);
};

/** The form of an order. */
export const isBase = (r: VerbReading): boolean => r.form === "base";

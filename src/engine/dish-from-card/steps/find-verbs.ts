import { techniqueById, type VerbReading, verbReadings } from "../../larder/techniques.ts";
import type { Technique } from "../../model/food.ts";
import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";
import {
  beings,
  determiners,
  joints,
  modals,
  nounVerbs,
  openers,
  planners,
  prepositions,
  subordinators,
  usuallyVerbs,
  weakVerbs,
} from "./word-sets.ts";

/** A kitchen verb found in a sentence. */
export type VerbHit = {
  /** Place of the verb in the sentence. */
  readonly at: number;
  /** Place behind the verb and, for "let it cool", behind the second verb. */
  readonly to: number;
  readonly technique: Technique;
  readonly verb: string;
  /** "let it bubble", "leave to cool": it goes on without hands. */
  readonly letting: boolean;
  readonly passive: boolean;
};

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

const isAdverb = (text: string): boolean =>
  openers.has(text) || (text.length > 4 && text.endsWith("ly") && text !== "jelly");

const negations = new Set([
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

const lettingVerbs = new Set(["let", "leave", "allow"]);

/** The place of the nearest earlier token that is no adverb; -1 at the start. */
const before = (tokens: readonly Token[], i: number): number => {
  let at = i - 1;
  while (at >= 0 && isAdverb(word(tokens, at))) at -= 1;
  return at;
};

const reach = 7;

/** The reading whose tail follows the verb, an object between them perhaps; the longest tail first. */
const readingAt = (
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
    for (let at = i + 1; at < Math.min(tokens.length, i + (particle ? reach : reach * 2)); at += 1) {
      const here = word(tokens, at);
      if (joints.has(here) && (particle || !/^(,|and|&|or)$/.test(here))) break;
      if (subordinators.has(here)) break;
      if (here === "then") break;
      if (here !== first || !reading.tail.every((w, k) => word(tokens, at + k) === w)) continue;
      // "put the lamb in the oven" is not "put in": a lone particle before a place belongs to the place.
      if (particle && at > i + 1 && /^(the|a|an|your|to|it)$/.test(word(tokens, at + 1))) break;
      if (particle && first === "in" && at === i + 1 && placeFollows(tokens, at + 1)) break;
      return { reading, to: at + reading.tail.length };
    }
  }
  return null;
};

const places =
  /^(oven|fridge|refrigerator|freezer|microwave|grill|broiler|pan|pot|bowl|saucepan|skillet|tin|dish|tray|batches|half|two|quarters|pieces|water|processor|blender|mixer|skillet|wok|butter|oil|centre|middle|stages|rounds|layers|cubes|strips|chunks)$/;

const placeFollows = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i; at < i + 4; at += 1) {
    if (joints.has(word(tokens, at))) return false;
    if (places.test(word(tokens, at))) return true;
  }
  return false;
};

const takesObject = (tokens: readonly Token[], i: number, isFood: (i: number) => boolean): boolean => {
  let at = i;
  while (isAdverb(word(tokens, at))) at += 1;
  const next = word(tokens, at);
  if (determiners.has(next)) return true;
  if (numberAt(tokens, at) !== null) return true;
  return isFood(at);
};

const isBase = (r: VerbReading): boolean => r.form === "base";

/** Whether a base form at this place is an order. */
const isOrder = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  cueFrom: number,
  isFood: (i: number) => boolean,
): boolean => {
  const at = before(tokens, i);
  const prev = word(tokens, at);
  const here = word(tokens, i);
  const noun = nounVerbs.has(here);
  const next = word(tokens, i + 1);
  if (negations.has(word(tokens, i - 1)) || negations.has(prev)) return false;
  if (prev === "do" && word(tokens, at - 1) === "") return true;
  if (at < 0 || (/^[:•)]$/.test(prev) && !noun)) {
    if (!noun || usuallyVerbs.has(here))
      return !(noun && /^(is|are|should|will|with a lid|mixture)$/.test(next));
    return takesObject(tokens, i + 1, isFood) || next === "and" || prepositions.has(next);
  }
  if (joints.has(prev) || (at >= 0 && at < i - 1 && prev === "")) {
    if (!noun) return true;
    // "butter, oil and salt": a noun in a list. "wash, peel and slice": verbs in a row.
    const last = hits.at(-1);
    const inRow = last !== undefined && last.to >= before(tokens, at) + 1 && usuallyVerbs.has(here);
    if (inRow && cueFrom < 0) return true;
    const food = isFood(i);
    if (food && !determiners.has(next)) return false;
    const object = takesObject(tokens, i + 1, isFood);
    if (object && !(cueFrom >= 0 && !determiners.has(next))) return true;
    if (!usuallyVerbs.has(here) || cueFrom >= 0) return false;
    return (
      next === "" ||
      joints.has(next) ||
      prepositions.has(next) ||
      next === "until" ||
      next === "till" ||
      isAdverb(next)
    );
  }
  if (modals.has(prev) && (cueFrom < 0 || hits.length === 0)) {
    if (cueFrom >= 0) return false;
    if (/^(we|you|i)$/.test(prev) && noun && !usuallyVerbs.has(here))
      return takesObject(tokens, i + 1, isFood);
    return true;
  }
  if (prev === "to") {
    const b = before(tokens, at);
    const planner = word(tokens, b);
    return planners.has(planner) || planner === "is" || /^(it's|best|time|possible|able)$/.test(planner);
  }
  if (/^(start|go|help|come|let's)$/.test(prev) && at === 0) return true;
  // "In a large bowl combine …", "Once soft add …": the clause opened with something else.
  const start = clauseStart(tokens, i);
  const opening = word(tokens, start);
  if (prepositions.has(opening) || subordinators.has(opening)) {
    if (hits.some((h) => h.at >= start)) return false;
    if (
      determiners.has(prev) ||
      prepositions.has(prev) ||
      subordinators.has(prev) ||
      numberAt(tokens, at) !== null
    )
      return false;
    if (
      noun &&
      !/^(bowl|pan|pot|saucepan|skillet|minutes|mins|hours|heat|dish|processor|mixer|blender|fork|whisk|tin|oven)$/.test(
        prev,
      )
    )
      return false;
    if (noun && !takesObject(tokens, i + 1, isFood)) return false;
    return (
      takesObject(tokens, i + 1, isFood) ||
      joints.has(next) ||
      prepositions.has(next) ||
      next === "until" ||
      next === "together"
    );
  }
  return false;
};

const clauseStart = (tokens: readonly Token[], i: number): number => {
  let at = i;
  while (at > 0 && !/^[,:()]$/.test(word(tokens, at - 1)) && !/^(and|then|but)$/.test(word(tokens, at - 1)))
    at -= 1;
  while (at < i && isAdverb(word(tokens, at))) at += 1;
  return at;
};

/** "let it bubble": the second verb and the place behind it; null when there is none. */
const letWhat = (tokens: readonly Token[], i: number): { reading: VerbReading; to: number } | null => {
  for (let at = i + 1; at < Math.min(tokens.length, i + 9); at += 1) {
    const here = word(tokens, at);
    if (subordinators.has(here) || /^[,:()]$/.test(here) || here === "for") return null;
    const prev = word(tokens, at - 1);
    if (prev === "the" || prev === "a" || prev === "your" || prepositions.has(prev)) {
      if (prev !== "to") continue;
    }
    const hit = readingAt(tokens, at, isBase);
    if (hit === null) continue;
    if (hit.reading.technique.id === "use" || here === "it" || here === "all") continue;
    if (
      at === i + 1 ||
      prev === "to" ||
      prev === "it" ||
      prev === "them" ||
      !nounVerbs.has(here) ||
      /^(rest|cool|stand|sit|boil|simmer|rise|cook|set|bubble|prove|steam|proof)$/.test(here)
    )
      return hit;
  }
  return null;
};

const letMeaning: Readonly<Record<string, string>> = {
  put: "stand",
  set: "set-gel",
  reduce: "reduce",
  go: "stand",
  take: "stand",
  stir: "stand",
  do: "stand",
};

/** Every order of a sentence, in order. `isFood` says whether a listed or known food starts at a place. */
export const findVerbs = (tokens: readonly Token[], isFood: (i: number) => boolean): readonly VerbHit[] => {
  const hits: VerbHit[] = [];
  let cueFrom = -1;
  for (let i = 0; i < tokens.length; i += 1) {
    const here = word(tokens, i);
    if (subordinators.has(here)) {
      cueFrom = i;
      continue;
    }
    if (here === "," || here === "(" || here === ")") {
      // "until soft, then …" ends the cue; "until soft, golden and crisp" does not, and holds no orders anyway.
      if (cueFrom >= 0 && word(tokens, cueFrom) !== "until" && word(tokens, cueFrom) !== "till") cueFrom = -1;
    }
    if (here === "then" && cueFrom >= 0) cueFrom = -1;
    if (tokens[i]?.kind !== "word") continue;
    const hit = hitAt(tokens, i, hits, cueFrom, isFood);
    if (hit === null) continue;
    hits.push(hit);
    cueFrom = -1;
    i = hit.to - 1;
  }
  const strong = hits.filter((h) => !weakVerbs.has(h.verb));
  return strong.length > 0 ? strong : hits.slice(0, 1);
};

const hitAt = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  cueFrom: number,
  isFood: (i: number) => boolean,
): VerbHit | null => {
  const here = word(tokens, i);
  const readings = verbReadings(here);
  const letting = /^(let|leave|allow|leaves|left)$/.test(here);
  if (readings.length === 0 && !letting) return null;

  if (readings.some(isBase) && isOrder(tokens, i, hits, cueFrom, isFood)) {
    if (lettingVerbs.has(here)) {
      const full = readingAt(tokens, i, (r) => r.form === "base" && r.tail.length > 0);
      const second = full === null ? letWhat(tokens, i) : null;
      if (second !== null) {
        const id = letMeaning[second.reading.technique.id];
        const technique = (id === undefined ? null : techniqueById(id)) ?? second.reading.technique;
        return { at: i, to: second.to, technique, verb: second.reading.verb, letting: true, passive: false };
      }
      const stand = full?.reading.technique ?? techniqueById("stand");
      return stand === null
        ? null
        : {
            at: i,
            to: full?.to ?? i + 1,
            technique: stand,
            verb: full?.reading.verb ?? here,
            letting: true,
            passive: false,
          };
    }
    const found = readingAt(tokens, i, isBase);
    if (found === null || (here === "take" && takesTime(tokens, i))) return null;
    return {
      at: i,
      to: found.to,
      technique: found.reading.technique,
      verb: found.reading.verb,
      letting: false,
      passive: false,
    };
  }

  const prevAt = before(tokens, i);
  const prev = word(tokens, prevAt);
  // "start frying", "keep stirring", "by simmering"
  if (
    readings.some((r) => r.form === "ing") &&
    /^(keep|start|begin|continue|by|started|starting|on|finish|of)$/.test(prev) &&
    cueFrom < 0 &&
    (prev !== "of" || word(tokens, prevAt - 1) === "instead") &&
    prev !== "of" &&
    (prev !== "on" || /^(keep|carry|go)$/.test(word(tokens, prevAt - 1)))
  ) {
    const found = readingAt(tokens, i, (r) => r.form === "ing");
    if (found !== null && !negations.has(word(tokens, prevAt - 1)))
      return {
        at: i,
        to: found.to,
        technique: found.reading.technique,
        verb: found.reading.verb,
        letting: false,
        passive: false,
      };
  }
  // "the onions are then fried"
  if (
    readings.some((r) => r.form === "past") &&
    beings.has(prev) &&
    cueFrom < 0 &&
    !negations.has(word(tokens, i - 1))
  ) {
    if (/^(it's|they're|that's|is|are|was|were)$/.test(prev) && !passiveIsWork(tokens, i)) return null;
    const found = readingAt(tokens, i, (r) => r.form === "past");
    if (found !== null)
      return {
        at: i,
        to: found.to,
        technique: found.reading.technique,
        verb: found.reading.verb,
        letting: false,
        passive: true,
      };
  }
  // "this goes in the oven", "it simmers for an hour"
  if (
    readings.some((r) => r.form === "third") &&
    cueFrom < 0 &&
    hits.length === 0 &&
    prevAt >= 0 &&
    spokenSubject(tokens, i)
  ) {
    const found = readingAt(tokens, i, (r) => r.form === "third");
    if (found !== null)
      return {
        at: i,
        to: found.to,
        technique: found.reading.technique,
        verb: found.reading.verb,
        letting: false,
        passive: true,
      };
  }
  return null;
};

// "This should take about 20 minutes" says how long and orders nothing.
const takesTime = (tokens: readonly Token[], i: number): boolean => {
  const next = word(tokens, i + 1);
  return /^(about|around|longer|some|up|between|a|an|at|approximately|roughly|from|only|quite|time|care)$/.test(
    next,
  )
    ? tokens
        .slice(i + 1, i + 7)
        .some((t) => /^(min|mins|minutes?|hours?|hrs?|seconds?|time|longer|while|days?|care)$/.test(t.text))
    : numberAt(tokens, i + 1) !== null &&
        tokens
          .slice(i + 1, i + 6)
          .some((t) => /^(min|mins|minutes?|hours?|hrs?|seconds?|days?)$/.test(t.text));
};

// "The onions are fried for 10 minutes" is work; "the cake is cooked" is a state.
const passiveIsWork = (tokens: readonly Token[], i: number): boolean =>
  word(tokens, i - 1) === "then" ||
  word(tokens, i - 1) === "now" ||
  tokens
    .slice(i + 1, i + 5)
    .some((t) => prepositions.has(t.text) || t.text === "together" || t.text === "and") ||
  /^(being|be|get|gets)$/.test(word(tokens, i - 1));

const spokenSubject = (tokens: readonly Token[], i: number): boolean => {
  const next = word(tokens, i + 1);
  const goes = /^(goes|comes)$/.test(word(tokens, i));
  if (goes) return /^(in|into|on|under|back|to|over)$/.test(next);
  const first = word(tokens, 0) === "and" || word(tokens, 0) === "then" ? word(tokens, 1) : word(tokens, 0);
  return (
    (determiners.has(first) || /^(it|they|that|this|everything)$/.test(first)) &&
    i <= 6 &&
    (next === "for" ||
      next === "in" ||
      next === "until" ||
      next === "till" ||
      next === "at" ||
      next === "overnight" ||
      numberAt(tokens, i + 1) !== null)
  );
};

import { type Celsius, type Minutes, minutes } from "../../measure/units.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span } from "../../model/span.ts";
import {
  findBatches,
  findCue,
  findHeat,
  findMinding,
  findStation,
  findVessel,
  heardIn,
  isOnHeat,
} from "./find-details.ts";
import { findMentions, type Mention, nameAt } from "./find-mentions.ts";
import { findTemperatures, type TemperaturePhrase } from "./find-temperatures.ts";
import { findTimes, type TimePhrase } from "./find-times.ts";
import { findVerbs } from "./find-verbs.ts";
import type { NameIndex } from "./name-index.ts";
import { isTimeWord } from "./read-length.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { joints, openers } from "./word-sets.ts";

/** One order of a sentence with all that its words say; offsets are those of the step's own text. */
export type Clause = {
  readonly hit: VerbHit | null;
  /** The clause's own tokens, the opening before the verb included. */
  readonly tokens: readonly Token[];
  readonly span: Span;
  readonly verbSpan: Span;
  /** Place of the verb in `tokens`, and behind it. */
  readonly verbAt: number;
  readonly verbTo: number;
  readonly mentions: readonly Mention[];
  /** Ingredients named in the cue ("until the onions are soft"): they say which pan is meant. */
  readonly hints: readonly Mention[];
  readonly times: readonly TimePhrase[];
  readonly settings: readonly TemperaturePhrase[];
  readonly core: Celsius | null;
  readonly station: ReturnType<typeof findStation>;
  readonly heat: "low" | "medium" | "high" | null;
  readonly vessel: string | null;
  readonly cue: string | null;
  /** Where the cue stands in `tokens`. */
  readonly cueAt: { readonly from: number; readonly to: number } | null;
  readonly batches: number | null;
  readonly every: Minutes | null;
  readonly minding: "hands" | "mind" | null;
  readonly meanwhile: boolean;
  /** What an order before it announced: "make the white sauce: melt the butter …". */
  readonly aim: string | null;
  /** The clause whose foods this one works on too; null when it names its own. */
  readonly lent: Clause | null;
  /** A further stretch of the work of the clause before: it names nothing anew. */
  readonly again: boolean;
  /** The part of the dish that the words around suggest ("for the sauce, …"); null when they do not. */
  readonly partHint: string | null;
  /** Its words begin another part of the dish ("Filling: …"): what was in hand stands by. */
  readonly beginsPart: boolean;
  /** The first of its sentence, and the sentence's place in the step. */
  readonly opens: boolean;
  readonly sentence: number;
};

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

/** Where a clause begins: behind the last joint before its verb. */
const startOf = (tokens: readonly Token[], hit: VerbHit, floor: number): number => {
  if (floor === 0 && !tokens.slice(0, hit.at).some((t) => /^(and|then)$/.test(t.text))) return 0;
  let at = hit.at;
  while (at > floor && !/^([,:(&/]|and|then|but)$/.test(word(tokens, at - 1))) at -= 1;
  if (at === floor && floor > 0) {
    at = hit.at;
    while (at > floor && openers.has(word(tokens, at - 1))) at -= 1;
  }
  return at;
};

/** Cuts a sentence into clauses, one an order. A sentence without an order gives one clause without a verb when it states a time or a temperature. */
export const clausesOf = (
  text: string,
  sentence: readonly Token[],
  place: number,
  names: NameIndex,
  isFood: (tokens: readonly Token[], i: number) => boolean,
  region: Region,
): readonly Clause[] => {
  const hits = findVerbs(sentence, (i) => nameAt(sentence, i, names) !== null || isFood(sentence, i));
  if (hits.length === 0) {
    const told = (from: number, to: number): Clause | null => {
      const clause = clauseFrom(text, sentence.slice(from, to), null, from, place, from === 0, names, region);
      return clause.times.length > 0 ||
        clause.settings.length > 0 ||
        clause.core !== null ||
        clause.station !== null ||
        clause.cue !== null
        ? clause
        : null;
    };
    // "Half an hour of that, then down to 160 for two hours": two stretches.
    const then = sentence.findIndex((t, i) => i > 0 && t.text === "then");
    const [first, second] = then < 0 ? [null, null] : [told(0, then), told(then, sentence.length)];
    if (first !== null && second !== null && first.times.length > 0 && second.times.length > 0)
      return [first, second];
    return [told(0, sentence.length) ?? []].flat();
  }
  // "More oil, peppers and onion 3 min, keep them crunchy": foods and a length before the first order.
  const comma = sentence.findLastIndex((t, i) => t.text === "," && i < (hits[0]?.at ?? 0));
  const timed = comma > 0 && isTimeWord(word(sentence, comma - 1)) && !openWords.test(word(sentence, 0));
  const led = timed ? clauseFrom(text, sentence.slice(0, comma), null, 0, place, true, names, region) : null;
  const before =
    led !== null &&
    // "Ten minutes, then drop it to 200": that long it went on as it was.
    (led.mentions.length > 0 || word(sentence, comma + 1) === "then") &&
    led.times.length === 1 &&
    led.times[0]?.kind === "length"
      ? led
      : null;
  const starts: number[] = [];
  hits.forEach((hit, k) => {
    const earlier = hits[k - 1];
    const floor = earlier === undefined ? 0 : Math.max(earlier.to, earlier.at + 1);
    starts.push(k === 0 ? (before === null ? 0 : comma + 1) : startOf(sentence, hit, floor));
  });
  const orders = hits.map((hit, k) => {
    const from = starts[k] ?? 0;
    const to = starts[k + 1] ?? sentence.length;
    const clause = clauseFrom(text, sentence.slice(from, to), hit, from, place, k === 0, names, region);
    const between = sentence.slice(hits[k - 1]?.to ?? 0, hit.at + 1);
    const beside =
      k > 0 &&
      between.some(
        (t, n) => (t.text === "while" || t.text === "whilst") && /^(you|we|i)$/.test(word(between, n + 1)),
      );
    return beside ? { ...clause, meanwhile: true } : clause;
  });
  return before === null ? orders : [before, ...orders];
};

const openWords = /^(after|before|for|with|in|at|when|while|once|if|until|till|about|another|over|as|every)$/;

const clauseFrom = (
  text: string,
  tokens: readonly Token[],
  hit: VerbHit | null,
  offset: number,
  sentence: number,
  opens: boolean,
  names: NameIndex,
  region: Region,
): Clause => {
  const verbAt = hit === null ? -1 : hit.at - offset;
  const verbTo = hit === null ? 0 : Math.min(tokens.length, hit.to - offset);
  const temperatures = findTemperatures(tokens, region);
  const inTemperature = (i: number): boolean => temperatures.some((t) => i >= t.from && i < t.to);
  const times = findTimes(tokens).filter((t) => !inTemperature(t.from) || t.to > t.from + 2);
  const cue = findCue(tokens, times);
  const opening = openingTo(tokens, verbAt);
  const inCue = (i: number): boolean =>
    i < opening ||
    (cue !== null && i >= cue.from && i < cue.to) ||
    (verbAt > 0 && i < verbAt && isCondition(tokens, i));
  const isVerb = (i: number): boolean =>
    hit !== null &&
    hit.unsaid !== true &&
    (i === verbAt || (hit.letting && i === verbTo - 1)) &&
    !/^(butter|oil|flour|salt|spice|bread)$/.test(word(tokens, i));
  const mentions = findMentions(tokens, 0, tokens.length, names, isVerb);
  const heard = heardIn(tokens);
  const vessel = heard.vessel ? findVessel(tokens) : null;
  const end = trimmedEnd(tokens);
  const first = tokens[trimmedStart(tokens, verbAt)];
  const last = tokens[end - 1];
  const verbToken = tokens[Math.max(0, verbAt)];
  const core = temperatures.find((t) => t.kind === "core");
  const every = times.find((t) => t.kind === "interval");
  return {
    hit,
    tokens,
    span: { start: first?.at ?? 0, end: Math.max(first?.at ?? 0, last?.end ?? 0) },
    verbSpan: { start: verbToken?.at ?? 0, end: verbToken?.end ?? 0 },
    verbAt,
    verbTo,
    mentions: mentions.filter(
      (m) =>
        !inCue(m.from) &&
        !isAim(tokens, m.from, verbAt) &&
        !isPurpose(tokens, m.from, verbAt) &&
        !isBath(tokens, m.from) &&
        !(steeps.test(hit?.technique.id ?? "") && isColdWater(tokens, m.from)),
    ),
    hints: mentions.filter((m) => inCue(m.from)),
    // "Bake for 20 minutes, turning after 10": a wait within the work itself.
    times: times.filter(
      (t, k) =>
        t.kind !== "interval" &&
        !(t.kind === "wait" && !t.long && t.from > verbAt && times[k - 1]?.kind === "length"),
    ),
    settings: temperatures.filter((t) => t.kind === "setting"),
    core: core?.celsius ?? null,
    station: placeOf(tokens, times, verbAt),
    heat: heard.heat ? findHeat(tokens) : null,
    vessel: vessel?.words ?? null,
    cueAt: cue,
    cue: cue === null ? null : cueText(text, tokens, cue.from, cue.to),
    aim: null,
    lent: null,
    again: false,
    partHint: null,
    beginsPart: false,
    batches: heard.batches ? findBatches(tokens) : null,
    every: every === undefined ? null : minutes(every.minutes.likely),
    minding: heard.minding ? findMinding(tokens) : null,
    meanwhile:
      opens &&
      (/^(meanwhile|meantime|while|whilst)$/.test(word(tokens, 0)) ||
        tokens.slice(0, 4).some((t) => /^(meanwhile|meantime)$/.test(t.text)) ||
        /^(at the same time|in the meantime|as the|as it)/.test(
          tokens
            .slice(0, 4)
            .map((t) => t.text)
            .join(" "),
        )),
    opens,
    sentence,
  };
};

/** The place that a clause names for its work. */
const placeOf = (
  tokens: readonly Token[],
  times: readonly TimePhrase[],
  verbAt: number,
): ReturnType<typeof findStation> => {
  // "After 10 minutes in the oven, cover it": the place is that of the wait.
  const waited = times.some((t) => t.kind === "wait" && t.to <= verbAt);
  const found = findStation(waited ? tokens.slice(verbAt) : tokens);
  // "In a cast-iron oven, melt the butter over a medium heat."
  return found?.station === "oven" && isOnHeat(tokens) ? null : found;
};

/** "For the crumbs, heat the oil": what is made, not what is used. */
export const isAim = (tokens: readonly Token[], i: number, verbAt: number): boolean => {
  if (i > verbAt) return false;
  const lead = tokens
    .slice(Math.max(0, i - 4), i)
    .map((t) => t.text)
    .join(" ");
  return /^(?:\W*)(?:(?:meanwhile|then|next|now|finally)\W* ?)?(?:for|to make|to prepare) (?:the|your|a) ?(?:\w+ ?){0,2}$/.test(
    lead,
  );
};

/** "in a sink of iced water", "a tin of hot water": a bath for the pot, not a food in it. */
const isBath = (tokens: readonly Token[], i: number): boolean => {
  if (!/^(water|ice)$/.test(word(tokens, i))) return false;
  const lead = tokens.slice(Math.max(0, i - 4), i).map((t) => t.text);
  return (
    lead.some((w) => /^(iced|ice|running|simmering)$/.test(w)) ||
    (lead.includes("of") &&
      lead.some((w) => /^(sink|tin|bath|bowl|tray|bain-marie|pan|pot)$/.test(w)) &&
      !/^(cups?|ml|litres?|liters?|pints?|l)$/.test(lead.at(-2) ?? ""))
  );
};

/** "Stirring to dissolve the sugar": it lies in the pot already. */
const isPurpose = (tokens: readonly Token[], i: number, verbAt: number): boolean => {
  for (let at = i - 1; at >= Math.max(verbAt + 1, i - 3); at -= 1)
    if (/^(dissolve|melt|disperse|distribute)$/.test(word(tokens, at))) return word(tokens, at - 1) === "to";
  return false;
};

// Work that is done in water that nobody weighs.
const steeps = /^(soak|sweat|wash|cool-quickly|peel|boil|put|cover|parboil|hard-boil|bring-to-boil)$/;

/** "in cold water", "under cold running water": no water of the list, unless the words point at it. */
const isColdWater = (tokens: readonly Token[], i: number): boolean =>
  word(tokens, i) === "water" &&
  /^(cold|iced|fresh|salted|tepid)$/.test(word(tokens, i - 1)) &&
  /^(in|under|with|of|into)$/.test(word(tokens, i - 2));

/** "While the beef, the onions and the leeks fry, cut …": behind the last comma of what a sentence opens with. */
const openingTo = (tokens: readonly Token[], verbAt: number): number => {
  if (!/^(while|whilst|when|once|as|after|before|if|until)$/.test(word(tokens, 0))) return 0;
  for (let at = verbAt - 1; at > 1; at -= 1) if (word(tokens, at) === ",") return at;
  return 0;
};

const isCondition = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i; at >= 0; at -= 1) {
    const here = word(tokens, at);
    if (here === ",") return false;
    if (/^(when|once|while|whilst|as|if|until|till|after|before|where)$/.test(here)) return true;
  }
  return false;
};

const trimmedEnd = (tokens: readonly Token[]): number => {
  let end = tokens.length;
  while (end > 1 && joints.has(word(tokens, end - 1))) end -= 1;
  return end;
};

const trimmedStart = (tokens: readonly Token[], verbAt: number): number => {
  let at = 0;
  while (at < verbAt && (joints.has(word(tokens, at)) || tokens[at]?.kind === "mark")) at += 1;
  return at;
};

const cueText = (text: string, tokens: readonly Token[], from: number, to: number): string =>
  text
    .slice(tokens[from]?.at ?? 0, tokens[to - 1]?.end ?? 0)
    .replace(/\s+/g, " ")
    .trim();

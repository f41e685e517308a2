import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { minutes } from "../../measure/units.ts";
import type { Card } from "../../model/card.ts";
import type { Keeping, Step } from "../../model/dish.ts";
import type { Words } from "../../model/span.ts";
import { findTimes, type TimePhrase } from "../steps/find-times.ts";
import { isMakeAhead } from "../steps/make-ahead.ts";
import { numberAt } from "../steps/number-at.ts";
import { stem } from "../steps/stem.ts";
import { sentencesOf, type Token, tokenise } from "../steps/tokens.ts";

type Where = Keeping["where"];

/**
 * Reads the "keeping" lines of a card: how long the dish, or a part of it, holds and where, and from which step on.
 * A place that is not named is the fridge. Never throws.
 */
export const readKeeping = (
  card: Card,
  steps: readonly Step[],
): { readonly keeping: readonly Keeping[]; readonly findings: readonly Finding[] } => {
  const keeping: Keeping[] = [];
  const findings: Finding[] = [];
  const parts = [...new Set(card.blocks.flatMap((b) => b.part ?? []))];
  let step = -1;
  for (const block of card.blocks) {
    if (block.role === "method" || block.role === "to-serve") {
      // "Can be made to this point a day ahead" in the middle of the method.
      for (const line of block.lines) {
        step += 1;
        if (!maySpeakOfKeeping.test(line.text)) continue;
        for (const tokens of sentencesOf(line.text, tokenise(line.text)))
          if (isMakeAhead(tokens))
            keeping.push(
              ...keepingFrom(wordsOf(line, tokens), tokens, steps, parts).map((k) => ({
                ...k,
                afterStep: k.afterStep ?? step,
              })),
            );
      }
      continue;
    }
    if (block.role !== "keeping" && block.role !== "notes") continue;
    for (const line of block.lines)
      for (const tokens of sentencesOf(line.text, tokenise(line.text))) {
        if (block.role === "notes" && !speaksOfKeeping(tokens)) continue;
        const words = wordsOf(line, tokens);
        const found = keepingFrom(words, tokens, steps, parts);
        if (found.length > 0) keeping.push(...found);
        else if (block.role === "keeping" && !refuses(tokens) && tokens.some((t) => t.kind === "word"))
          findings.push(
            makeFinding("keeping-not-understood", card.source, words.span, { words: words.text }),
          );
      }
  }
  return { keeping, findings };
};

// Without one of these words no sentence of a method speaks of keeping.
const maySpeakOfKeeping =
  /\b(?:can|may|could|will|keeps?|lasts?|freezes?|stores?|better|best|fine|good|happy|ok)\b|['\u2019]ll\b/i;

const keepingWords = /^(keeps?|holds?|lasts?|stores?|freezes?|ahead|refrigerate[ds]?|frozen)$/;

const speaksOfKeeping = (tokens: readonly Token[]): boolean =>
  tokens.some((t) => keepingWords.test(t.text)) &&
  tokens.some((t) => /^(days?|hours?|weeks?|months?|overnight|minutes?)$/.test(t.text));

const refuses = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (t, i) =>
      /^(not|don't|doesn't|never|no|cannot|can't)$/.test(t.text) &&
      // "Three days in the fridge, no trouble."
      !(t.text === "no" && /^(trouble|problem|bother|worries)$/.test(tokens[i + 1]?.text ?? "")),
  ) ||
  // "Best eaten on the day" keeps nothing; "reheat until piping hot" says what is done later.
  /^(best (eaten|served|enjoyed) (on the|the same|that|straight|at|immediately|fresh)|(eat|serve) (at once|straight|immediately|on the)|(re-?heat|defrost|thaw|cover|wrap|cool|warm|refresh|bring)\b)/.test(
    tokens.map((t) => t.text).join(" "),
  );

const wordsOf = (line: Words, tokens: readonly Token[]): Words => {
  const start = tokens[0]?.at ?? 0;
  const end = Math.max(start, tokens.at(-1)?.end ?? 0);
  return {
    text: line.text.slice(start, end),
    span: { start: line.span.start + start, end: line.span.start + end },
  };
};

const keepingFrom = (
  words: Words,
  tokens: readonly Token[],
  steps: readonly Step[],
  parts: readonly string[],
): readonly Keeping[] => {
  const times = [
    ...dayBefore(tokens),
    ...findTimes(tokens).filter(
      (t) => t.kind !== "interval" && !isNextDay(tokens, t) && !coolsWithin(tokens, t),
    ),
  ];
  if (times.length === 0 || (refuses(tokens) && !tokens.some((t) => keepingWords.test(t.text)))) return [];
  const afterStep = stepNamed(tokens, steps);
  const part = partNamed(tokens, steps, parts);
  return times.map((time, k) => ({
    text: words.text,
    span: words.span,
    where: placeOf(tokens, time, times[k + 1]?.from ?? tokens.length, times[k - 1]?.to ?? 0),
    minutes: time.minutes,
    afterStep,
    part,
  }));
};

/** "Better the next day": when it is eaten, not how long it keeps. */
const isNextDay = (tokens: readonly Token[], time: TimePhrase): boolean =>
  tokens[time.from]?.text === "next" && tokens[time.from + 1]?.text === "day";

/** "Chill within 90 minutes": how fast it must be cold, not how long it keeps. */
const coolsWithin = (tokens: readonly Token[], time: TimePhrase): boolean =>
  tokens[time.from - 1]?.text === "within" &&
  tokens.slice(0, time.from).some((t) => /^(chill|cool|chilled|cooled|refrigerate|cold)$/.test(t.text));

/** "Make the pastry the day before", "the night before": a day, or a night. */
const dayBefore = (tokens: readonly Token[]): readonly TimePhrase[] => {
  const at = tokens.findIndex(
    (t, i) =>
      /^(day|night|evening)$/.test(t.text) &&
      /^(before|ahead)$/.test(tokens[i + 1]?.text ?? "") &&
      /^(the|a)$/.test(tokens[i - 1]?.text ?? ""),
  );
  if (at < 0 || (tokens[at - 1]?.text === "a" && tokens[at]?.text === "day")) return [];
  const span = minutes(tokens[at]?.text === "day" ? 1440 : 720);
  return [
    {
      kind: "length",
      minutes: { low: span, likely: span, high: span },
      long: true,
      from: at - 1,
      to: at + 2,
    },
  ];
};

const places: readonly (readonly [RegExp, Where])[] = [
  [/^(freezer|freezes?|frozen|freezing)$/, "freezer"],
  [/^(fridge|refrigerator|refrigerated?|chilled|cold|chill|larder)$/, "fridge"],
  [/^(hot|warm|bain-marie|oven|hotplate)$/, "hot"],
  [/^(room|cupboard|tin|airtight|pantry|worktop|counter|bench|ambient|jar|cool)$/, "room"],
];

/** "don't freeze it": the place is named to be left out. */
const isDenied = (tokens: readonly Token[], i: number): boolean =>
  tokens
    .slice(Math.max(0, i - 3), i)
    .some((t) => /^(not|don't|never|cannot|can't|without|doesn't)$/.test(t.text));

/** The place that is named first in a stretch of words. */
const firstPlace = (tokens: readonly Token[], from: number, to: number): Where | null => {
  for (let i = from; i < to; i += 1) {
    const found = places.find(([pattern]) => pattern.test(tokens[i]?.text ?? ""));
    if (found !== undefined && !isDenied(tokens, i)) return found[1];
  }
  return null;
};

const placeIn = (tokens: readonly Token[], from: number, to: number): Where | null => {
  for (const [pattern, where] of places)
    for (let i = from; i < to; i += 1)
      if (pattern.test(tokens[i]?.text ?? "") && !isDenied(tokens, i)) return where;
  return null;
};

/** The place that goes with a time: named behind it, else before it, else the fridge. */
const placeOf = (tokens: readonly Token[], time: TimePhrase, next: number, last: number): Where => {
  const stop = tokens.findIndex((t, i) => i >= time.to && i < next && /^(and|or|but)$/.test(t.text));
  return (
    placeIn(tokens, time.to, stop < 0 ? next : stop) ??
    placeIn(tokens, last, time.from) ??
    firstPlace(tokens, time.to, next) ??
    "fridge"
  );
};

/** "after step 2", "up to the end of step 3"; "before step 3" is after step 2. */
const stepNamed = (tokens: readonly Token[], steps: readonly Step[]): number | null => {
  const at = tokens.findIndex((t) => t.text === "step" || t.text === "stage");
  const n = at < 0 ? null : numberAt(tokens, at + 1);
  if (n === null) return null;
  const before = tokens.slice(Math.max(0, at - 3), at).some((t) => t.text === "before");
  const place = Math.round(n.value) - 1 - (before ? 1 : 0);
  return place >= 0 && place < Math.max(steps.length, 1) ? place : null;
};

/** The part of the dish that the sentence opens with, when the method knows it by that name. */
const partNamed = (
  tokens: readonly Token[],
  steps: readonly Step[],
  parts: readonly string[],
): string | null => {
  const verb = tokens.findIndex((t) => keepingWords.test(t.text) || /^(can|will|may|is|are)$/.test(t.text));
  // "Make the pastry the day before": the part stands behind the verb.
  const made = /^(make|prepare|cook|bake|do)$/.test(tokens[0]?.text ?? "") ? tokens.slice(1, 5) : [];
  const subject = new Set([...tokens.slice(0, Math.max(0, verb)), ...made].map((t) => stem(t.text)));
  for (const part of parts) if (wordsShared(part, subject)) return part;
  for (const step of steps) {
    if (step.part !== null && wordsShared(step.part, subject)) return step.part;
    for (const action of step.actions)
      if (action.makes !== null && wordsShared(action.makes, subject)) return action.makes;
  }
  return null;
};

const wordsShared = (name: string, subject: ReadonlySet<string>): boolean =>
  name
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .some((w) => w.length > 2 && subject.has(stem(w)));

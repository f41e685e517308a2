import { findFood } from "../../larder/foods.ts";
import { findUnit } from "../../larder/measures.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import type { Span } from "../../model/span.ts";
import { isDoneWord, preparationWords, purposeVerbs, qualityWords, stateWords } from "./line-words.ts";
import { isAdverb, isModifier, lowerAt, slice } from "./modifiers.ts";
import { readAmounts } from "./read-amounts.ts";
import { type Phrase, readPhrase } from "./read-phrase.ts";

/** What a stretch beside the food says; each kind is added to the line it stands on. */
export type Remark = {
  readonly amounts: readonly Amount[];
  readonly each: boolean;
  /** It stands between the count and the food: what one piece weighs ("3 (150 g) duck breasts"). */
  readonly packed: boolean;
  readonly purpose: string | null;
  readonly optional: boolean;
  readonly preparation: readonly string[];
  readonly state: readonly string[];
  readonly size: string | null;
  readonly alternatives: readonly Phrase[];
  /** "plus extra for dusting": more than the amount is wanted. */
  readonly extra: string | null;
  /** A phrase that could be a food of its own ("salt, pepper"). */
  readonly food: Phrase | null;
  /** What is left after the stretch that was understood. */
  readonly next: number;
};

const nothing: Remark = {
  amounts: [],
  each: false,
  packed: false,
  purpose: null,
  optional: false,
  preparation: [],
  state: [],
  size: null,
  alternatives: [],
  extra: null,
  food: null,
  next: 0,
};

const statePhrases =
  /^(?:at |to |brought to )?room temp(?:erature)?\b|^at (?:room|kitchen) temp|^straight from the fridge|^from the fridge|^from frozen/;
const preparationStart =
  /^(?:\w+ only$|cut|mixed with|mixed to|with|without|in (?:chunks|pieces|slices|wedges|half|halves|quarters|cubes|strips|rings|batons|dice|thin|\d)|into|bone|skin|stalks?|stems?|seeds?|leaves|tops|ends|excess|tough|outer|separated|left|kept|removed|stuck|studded|tied|white|green|shell|shells|heads?|tails?|fat|rind|on the bone|off the bone|not|no|from|then|and then|keep|reserve|juice|pitted|plus|thinly|as)\b/;

const talkStart =
  /^(?:avoid|if|when|use|see|note|can|could|you|either|i|it|this|that|they|these|those|available|adjust|depending|do|don|whichever|originally|traditionally|usually)\b/;
const talkWords =
  /\b(?:recommended|preferred|suggested|advised|available|needed|required|works?|is|are|you|your)\b/;

/** What is said to the reader about a food, not done to it: "if not available", "whole milk recommended". */
const isTalk = (lower: string): boolean => talkStart.test(lower) || talkWords.test(lower);

const one = { low: 1, likely: 1, high: 1, approximate: true, vague: true } as const;

const spanOf = (tokens: readonly Token[], from: number, to: number): Span => ({
  start: tokens[from]?.start ?? 0,
  end: tokens[to - 1]?.end ?? 0,
});

// Of the words of state, those that no work of the cook's hands is told by ("cold and cubed", but "cooked and chopped").
const warmth = new Set(
  "cold warm hot lukewarm chilled cooled frozen thawed defrosted boiling ripe soft softened melted".split(
    " ",
  ),
);

const endsSentence = (tokens: readonly Token[], at: number, end: number): number => {
  for (let i = at; i < end; i += 1) if (tokens[i]?.text === "." && i + 1 < end) return i;
  return end;
};

/** Cuts "trimmed and thickly sliced" in two when both halves say something done. */
const preparations = (words: string): readonly string[] => {
  const halves = words.toLowerCase().split(/\s+(?:and then|and|then|&)\s+/);
  const done = (half: string): boolean =>
    half
      .split(/\s+/)
      .some((w) => isDoneWord(w) || stateWords.has(w) || preparationWords.has(w.split("-")[0] ?? "")) &&
    !/\bof\b/.test(half);
  return halves.length > 1 && halves.every(done) ? halves : [words.toLowerCase()];
};

const statesOnly = (tokens: readonly Token[], at: number, end: number): boolean =>
  end > at &&
  tokens
    .slice(at, end)
    .every(
      (t) =>
        stateWords.has(t.lower) ||
        qualityWords.has(t.lower) ||
        /ly$/.test(t.lower) ||
        ["and", "but", "slightly", "still"].includes(t.lower),
    ) &&
  tokens.slice(at, end).some((t) => stateWords.has(t.lower));

/** "Onions, chopped 1 kg": an amount at the end of what was done. */
const amountAtEnd = (
  tokens: readonly Token[],
  start: number,
  end: number,
  region: Region,
): { at: number; amounts: readonly Amount[] } | null => {
  for (let at = Math.max(start + 1, end - 4); at < end; at += 1) {
    if (tokens[at]?.kind !== "number" || tokens[at - 1]?.kind === "number") continue;
    const before = tokens[at - 1];
    if (
      !isDoneWord(before?.lower ?? "") &&
      !(isModifier(before) && !isAdverb(before)) &&
      before?.lower !== "weight"
    )
      return null;
    const read = readAmounts(tokens.slice(0, end), at, region);
    const measured = read?.amounts.some((a) => a.unit !== "piece") === true && read.size === null;
    return read !== null && measured && read.next >= end ? { at, amounts: read.amounts } : null;
  }
  return null;
};

/** Reads a stretch of tokens that stands beside the food: after it, after a comma or in brackets. */
export const readRemark = (
  line: string,
  tokens: readonly Token[],
  start: number,
  end: number,
  region: Region,
  standsAlone: boolean,
): Remark => {
  const cut = standsAlone ? amountAtEnd(tokens, start, end, region) : null;
  if (cut === null) return readWords(line, tokens, start, end, region, standsAlone);
  const before = readWords(line, tokens, start, cut.at, region, standsAlone);
  return { ...before, amounts: [...before.amounts, ...cut.amounts], next: end };
};

const readWords = (
  line: string,
  tokens: readonly Token[],
  start: number,
  end: number,
  region: Region,
  standsAlone: boolean,
): Remark => {
  let at = start;
  while (at < end && tokens[at]?.kind === "mark" && !["~", "\u2248"].includes(tokens[at]?.text ?? ""))
    at += 1;
  if (lowerAt(tokens, at) === "weighing") at += 1;
  if (at >= end) return { ...nothing, next: end };
  const word = lowerAt(tokens, at);
  const second = lowerAt(tokens, at + 1);
  const words = slice(line, tokens, at, endsSentence(tokens, at, end));
  const lower = words.toLowerCase().replace(/\s+/g, " ");
  const all = (more: Partial<Remark>): Remark => ({ ...nothing, next: end, ...more });
  if (
    /^(?:(?:all |both )?optional|opt|if (?:you like|liked|desired|wanted|using|available|you have)|or omit|can be omitted|not essential)\b/.test(
      lower,
    )
  )
    return all({ optional: true });
  const optional = /\b(?:optional|if you like|if desired|if liked)\b/.test(lower);
  if (word === "or" || (word === "and" && second === "/")) {
    let from = second === "/" ? at + 3 : at + 1;
    while (/^(?:alternatively|else|even|instead|simply|just|possibly)$/.test(lowerAt(tokens, from)))
      from += 1;
    if (
      /^(?:more|so|less|to taste|as (?:needed|required|desired)|enough|whatever|any|other|similar|equivalent|as|thereabouts|if)\b/.test(
        slice(line, tokens, from, end).toLowerCase(),
      ) &&
      !findFood(slice(line, tokens, from, end))
    )
      return all({ optional });
    const phrase = readPhrase(line, tokens, from, end, region);
    if (phrase === null) return all({});
    if (phrase.name === "") return all({ amounts: phrase.amounts });
    const rest = phrase.next < end ? readRemark(line, tokens, phrase.next, end, region, false) : nothing;
    return all({ ...rest, next: end, optional, alternatives: [phrase, ...rest.alternatives] });
  }
  if (
    /^(?:plus|and|with)? ?(?:a (?:little|bit|few|handful) )?(?:extra|more|some extra|some more)\b/.test(
      lower,
    ) &&
    (word !== "more" || second === "for" || second === "to" || second === "as" || second === "if")
  )
    return all({ extra: lower, optional });
  if (word === "plus" || word === "+") {
    const phrase = readPhrase(line, tokens, at + 1, end, region);
    if (phrase !== null && /\b(?:for|to)\b/.test(lower)) return all({ extra: lower });
    if (phrase?.food) return all({ food: phrase });
    return all({ extra: lower });
  }
  if (word === "for" && !/^for (?:example|instance)\b/.test(lower))
    return all({ purpose: lower.replace(/[.]$/, ""), optional });
  if (word === "to" && purposeVerbs.has(second)) return all({ purpose: lower.replace(/[.]$/, ""), optional });
  if (
    word === "as" &&
    /^as (?:needed|required|desired|necessary|garnish|a garnish|you like|accompaniment)/.test(lower)
  )
    return all({ purpose: lower, optional });
  if (/^(?:garnish|topping|decoration)$/.test(lower)) return all({ purpose: lower });
  if (/^(?:such as|like|e\.? ?g\.?|i\.? ?e\.?|preferably|ideally|including)\b/.test(lower)) {
    const skip = /^(?:such as)/.test(lower) ? 2 : /^(?:e\.|i\.)/.test(lower) ? 4 : 1;
    const phrase = readPhrase(line, tokens, Math.min(at + skip, end), end, region);
    return all({ food: phrase?.food ? { ...phrase, name: "" } : null });
  }
  if (/^(?:each|apiece)$/.test(lower)) return all({ each: true });
  const state = statePhrases.exec(lower);
  if (state !== null) return all({ state: [lower.replace(/[.]$/, "")] });
  if (
    /^(?:medium|large|small|big|extra[- ]large|medium[- ]sized?|large[- ]sized?|small[- ]sized?)(?: size| sized| ones?)?$/.test(
      lower,
    )
  )
    return all({ size: lower });
  const likeness = findUnit(lower.replace(/[.]$/, ""));
  if (likeness !== null && ["egg size", "walnut size", "thumb"].includes(likeness))
    return all({ amounts: [{ ...one, unit: likeness, span: spanOf(tokens, at, end) }] });
  const read = readAmounts(tokens.slice(0, end), at, region);
  if (
    read?.size != null &&
    /\d/.test(read.size) &&
    read.amounts.every((a) => a.unit === "piece") &&
    read.next >= end
  )
    return all({ size: read.size });
  const measured = read?.amounts.some((a) => a.unit !== "piece") === true;
  if (read !== null && measured) {
    let next = read.next;
    while (
      next < end &&
      (tokens[next]?.kind === "mark" ||
        /^(?:in )?(?:total|altogether|weight|prepared|in|of|net|drained|each)$/.test(lowerAt(tokens, next)))
    ) {
      if (lowerAt(tokens, next) === "of") break;
      next += 1;
    }
    // "400 g flour (500 g if using yogurt)": another case, not another measure.
    if (/^(?:if|when|for|per|or)$/.test(lowerAt(tokens, next)) && !standsAlone) return all({});
    if (/^(?:if|when)$/.test(lowerAt(tokens, next))) return all({});
    if (next >= end) {
      const drained = /\bdrained\b/.test(lower);
      return all({
        amounts: read.amounts,
        each: read.each || /\beach\b/.test(lower),
        preparation: drained ? ["drained"] : [],
        size: read.size,
      });
    }
    const rest = slice(line, tokens, read.next, end).toLowerCase();
    if (/^(?:when |once |after |before )?\w*\s*(?:\w+ly )?\w+ed\b/.test(rest) && !standsAlone)
      return all({ amounts: read.amounts, preparation: [rest] });
    const phrase = readPhrase(line, tokens, at, end, region);
    if (phrase?.food) return all({ food: phrase });
    return all({ amounts: read.amounts, each: read.each });
  }
  if (read !== null && read.next >= end && standsAlone && tokens[at]?.kind === "number")
    return all({ amounts: read.amounts });
  if (statesOnly(tokens, at, end)) return all({ state: [lower], optional });
  const stop = endsSentence(tokens, at, end);
  if (isTalk(lower)) {
    const talked = standsAlone ? null : readPhrase(line, tokens, at, end, region);
    return all({ optional, food: talked?.food == null ? null : { ...talked, name: "" } });
  }
  const done = tokens.slice(at, stop).some((t) => isDoneWord(t.lower));
  const phrase = readPhrase(line, tokens, at, end, region);
  const plainFood = phrase?.food != null && phrase.preparation.length === 0;
  if (preparationStart.test(lower) || (done && !(plainFood && standsAlone))) {
    const purpose = /\s+((?:for|to) (?:the |a )?\w+(?:ing|ish|e|er|y)?(?: .*)?)$/.exec(lower);
    const isPurpose =
      purpose !== null &&
      (/^for \w+ing\b|^for the\b|^for serving/.test(purpose[1] ?? "") ||
        purposeVerbs.has((purpose[1] ?? "").split(" ")[1] ?? ""));
    const core = isPurpose ? words.slice(0, purpose.index) : words;
    const halves = preparations(core.replace(/[.!\s]+$/, ""));
    const isState = (half: string): boolean => halves.length > 1 && warmth.has(half.split(" ").at(-1) ?? "");
    return all({
      preparation: halves.filter((half) => !isState(half)),
      state: halves.filter(isState),
      purpose: isPurpose ? (purpose[1] ?? null) : null,
      optional,
    });
  }
  if (phrase?.food != null || (phrase !== null && read !== null)) return all({ food: phrase, optional });
  return all({ optional, food: standsAlone && phrase !== null && end - at <= 3 ? phrase : null });
};

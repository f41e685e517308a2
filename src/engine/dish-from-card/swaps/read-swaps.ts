import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { substanceAgainstNeed } from "../../larder/against-need.ts";
import { foodById } from "../../larder/foods.ts";
import { needByWords } from "../../larder/needs.ts";
import type { Card } from "../../model/card.ts";
import type { Ingredient, Swap } from "../../model/dish.ts";
import type { FoodId } from "../../model/food.ts";
import type { Need } from "../../model/need.ts";
import type { Region } from "../../model/sitting.ts";
import type { Words } from "../../model/span.ts";
import { readChange } from "./read-change.ts";
import { bareChange, splitChanges } from "./split-changes.ts";
import { type SwapList, swapListOf } from "./swap-list.ts";

/**
 * Reads the "swaps" lines of a card, and lines of its notes that name a need and a change. A line may hold several
 * swaps, a sentence each; a sentence without a need of its own keeps that of the one before. Never throws.
 */
export const readSwaps = (
  card: Card,
  ingredients: readonly Ingredient[],
  region: Region,
): { readonly swaps: readonly Swap[]; readonly findings: readonly Finding[] } => {
  const swaps: Swap[] = [];
  const findings: Finding[] = [];
  const list = swapListOf(ingredients, region);
  for (const block of card.blocks) {
    if (block.role !== "swaps" && block.role !== "notes") continue;
    for (const line of block.lines) {
      let needs: readonly Need[] = [];
      let lacking: string | null = null;
      let verb: string | null = null;
      for (const sentence of sentencesOf(line)) {
        // "No chicken?" asks what comes in its place.
        const gone = /^(?:no|out of|can'?t (?:find|get)|don'?t (?:like|have|want|fancy))\s+(.+)\?$/i.exec(
          sentence.text,
        )?.[1];
        if (gone !== undefined && needsOf(sentence.text.slice(0, -1)).length === 0) {
          lacking = gone;
          continue;
        }
        // "No nuts?" opens what follows.
        const asked = sentence.text.endsWith("?") ? needsOf(sentence.text.slice(0, -1)) : [];
        if (asked.length > 0) {
          needs = asked;
          continue;
        }
        const { label, rest } = cutLabel(sentence);
        const found = label === null ? [] : needsOf(label.text);
        if (found.length > 0) needs = found;
        const tail = tailNeeds(rest);
        if (tail.needs.length > 0) needs = tail.needs;
        const instead = lacking === null ? null : insteadOf(rest, lacking, needs, list);
        lacking = null;
        if (instead !== null && (block.role === "swaps" || needs.length > 0)) {
          swaps.push(instead);
          continue;
        }
        const said = found.length > 0 ? rest : sentence;
        const read = changesIn(tail.needs.length > 0 ? tail.rest : said, needs, list, verb);
        verb = read.verb ?? verb;
        if (block.role === "swaps" || needs.length > 0)
          for (const { words, change } of read.known)
            swaps.push({
              text: read.known.length === 1 && read.missed.length === 0 ? sentence.text : words.text,
              span: read.known.length === 1 && read.missed.length === 0 ? sentence.span : words.span,
              needs: needs.map((n) => n.id),
              out: change.out,
              comes: change.comes,
            });
        if (block.role !== "swaps") continue;
        const missed =
          read.known.length === 0 ? (sentence.text.trim() === "" ? [] : [sentence]) : read.missed;
        for (const words of missed)
          findings.push(makeFinding("swap-not-understood", card.source, words.span, { words: words.text }));
      }
    }
  }
  return { swaps, findings };
};

/** "No chicken? Use 500 g cooked turkey": the food asked about goes. */
const insteadOf = (said: Words, lacking: string, needs: readonly Need[], list: SwapList): Swap | null => {
  const use = /^(?:use|try|add|take|go for)\s+/i.exec(said.text);
  if (use === null) return null;
  const from = use[0].length;
  const words = said.text
    .slice(from)
    .replace(/[.;!?\s]+$/, "")
    .replace(/,?\s+and\s+(?:skip|reduce|cook|bake|cut|start)\s.+$/i, "");
  const change = readChange(
    { text: `${words} instead of ${lacking}`, span: { start: said.span.start + from, end: said.span.end } },
    needs,
    list,
  );
  return change === null
    ? null
    : {
        text: said.text,
        span: said.span,
        needs: needs.map((n) => n.id),
        out: change.out,
        comes: change.comes,
      };
};

const standsAgainst = (id: FoodId | null, needs: readonly Need[]): boolean => {
  const food = id === null ? null : foodById(id);
  return (
    food !== null && needs.some((need) => /^(certain|typical)$/.test(substanceAgainstNeed(food, need) ?? ""))
  );
};

type Changes = {
  readonly known: readonly {
    readonly words: Words;
    readonly change: NonNullable<ReturnType<typeof readChange>>;
  }[];
  readonly missed: readonly Words[];
  /** The verb of the last change, for a sentence that leaves it out ("the soy sauce for tamari"). */
  readonly verb: string | null;
};

/** The changes of a sentence, each by itself, and those of its orders that were not understood. */
const changesIn = (said: Words, needs: readonly Need[], list: SwapList, before: string | null): Changes => {
  const known: { words: Words; change: NonNullable<ReturnType<typeof readChange>> }[] = [];
  const missed: Words[] = [];
  let verb: string | null = null;
  for (const words of splitChanges(bareChange(said))) {
    const bare = bareChange(words);
    verb = /^(replace|swap|exchange|change|switch|trade|substitute)\b/i.exec(bare.text)?.[1] ?? verb;
    const whole = readChange(bare, needs, list);
    const elliptic =
      before !== null && whole === null && /^(?:and\s+)?(?:the\s+)?\S.*\s(?:for|with|by)\s/i.test(bare.text);
    const change =
      whole ??
      (elliptic
        ? readChange(
            {
              text: `${before} ${bare.text}`,
              span: { ...bare.span, start: Math.max(0, bare.span.start - before.length - 1) },
            },
            needs,
            list,
          )
        : null);
    // What comes must itself be fit for the guest: "beef bacon" that is only known as bacon is not.
    const fit = change?.comes.every((c) => !standsAgainst(c.food, needs)) === true;
    if (change === null || !fit) missed.push(words);
    else known.push({ words, change });
  }
  return { known, missed, verb };
};

/** "Cheddar can be left out for dairy-free guests", "… if nuts are a problem": the need stands at the end. */
const tailNeeds = (words: Words): { readonly needs: readonly Need[]; readonly rest: Words } => {
  const found =
    /,?\s+(?:for|if)\s+((?:[\p{L}-]+\s+){0,3}?[\p{L}-]+?)(?:\s+(?:is|are)\s+(?:a problem|an issue|out|not (?:allowed|wanted)|coming))?[.!]?$/iu.exec(
      words.text,
    );
  const needs = found?.[1] === undefined ? [] : needsOf(found[1]);
  if (found === null || needs.length === 0) return { needs: [], rest: words };
  // "Swap the butter for oil" ends in a food, and oil is nobody's need.
  if (/^(?:swap|exchange|trade|switch|sub|substitute)\b/i.test(words.text) && /\bfor\b/.test(found[0]))
    return { needs: [], rest: words };
  return {
    needs,
    rest: {
      text: words.text.slice(0, found.index),
      span: { start: words.span.start, end: words.span.start + found.index },
    },
  };
};

/** The sentences of a line; a full stop inside a figure does not end one. */
const sentencesOf = (line: Words): readonly Words[] => {
  const sentences: Words[] = [];
  for (const found of line.text.matchAll(/(?:[^.;!?\n]|[.](?=\d))+[.;!?]*/g)) {
    const lead = found[0].length - found[0].trimStart().length;
    const text = found[0].trim();
    const start = line.span.start + found.index + lead;
    if (text !== "") sentences.push({ text, span: { start, end: start + text.length } });
  }
  return sentences;
};

const openings = [
  // "Without nuts: …", "Vegan or dairy-free - …"
  /^([^:]{2,60}?)\s*(?::|\s[-\u2010-\u2015]\s)\s*/,
  // "For coeliacs, use …", "To make it vegan, swap …", "If vegetarian, …", "Without nuts, …"
  /^((?:for|to make (?:it|this|them)|if|without|no)\s[^,:]{2,50}?)[,:]\s*/i,
  // "For coeliacs use …", "To make it vegan swap …"
  /^((?:for|to make (?:it|this|them)|if|without)\s.{2,40}?)\s(?=(?:use|swap|replace|substitute|leave|omit|skip|exchange|change|do)\b)/i,
  // "Vegetarians can swap …"
  /^(\S+(?:\s\S+)?)\s(?:can|could|should|may)\s(?!be\b)/i,
];

const cutLabel = (sentence: Words): { readonly label: Words | null; readonly rest: Words } => {
  for (const pattern of openings) {
    const found = pattern.exec(sentence.text);
    const text = found?.[1];
    if (found === null || text === undefined || needsOf(text).length === 0) continue;
    const start = sentence.span.start + found[0].length;
    return {
      label: { text, span: { start: sentence.span.start, end: sentence.span.start + text.length } },
      rest: { text: sentence.text.slice(found[0].length), span: { start, end: sentence.span.end } },
    };
  }
  return { label: null, rest: sentence };
};

/** Every need that a label names: "vegan or dairy-free", "coeliacs and vegetarians". */
const needsOf = (label: string): readonly Need[] => {
  const plain = label
    .replace(
      /^(?:for|to make (?:it|this|them)|if (?:you(?:'re| are)|they(?:'re| are)|someone is|cooking for|(?:you|someone|anyone|they|a guest) (?:can't|cannot|can not|won't|doesn't|does not|don't|do not) (?:eat|have|like|want))?)\s+/i,
      "",
    )
    .trim();
  const whole = needByWords(plain) ?? needByWords(label);
  if (whole !== null) return [whole];
  const without = /^(?:without|no|free from)\s/i.test(plain) ? "without " : "";
  const parts = plain.split(/\s*(?:,|\/|&|\band\b|\bor\b)\s*/i).filter((p) => p !== "");
  const found = parts.map(
    (part, k) => needByWords(k === 0 ? part : `${without}${part}`) ?? needByWords(part),
  );
  return parts.length > 1 ? [...new Set(found.filter((n): n is Need => n !== null))] : [];
};

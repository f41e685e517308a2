import { findFood } from "../larder/foods.ts";
import { tokensOf } from "../measure/tokens.ts";
import type { BlockRole } from "../model/card.ts";
import type { Words } from "../model/span.ts";
import { isFramed, isTalk } from "./framed-list.ts";
import type { HeadingRead } from "./headings.ts";
import { isKeepingLine, isSwapLine, startsWithVerb } from "./likeness.ts";
import { type Line, wordsAt } from "./lines-of-text.ts";
import { sentences } from "./sentences.ts";
import { factsBehind, titleFrom, unmarkedTitle } from "./title-facts.ts";
import { isBareMade, isYield, yieldInside } from "./yield-words.ts";

/** A block while it grows. */
export type OpenBlock = {
  readonly role: BlockRole;
  readonly heading: Words | null;
  readonly part: string | null;
  readonly lines: Line[];
  /** Begun by a heading that had its words on the same line, or by no heading at all. */
  readonly loose: boolean;
};

export type Layout = {
  readonly title: Words | null;
  readonly yields: readonly Words[];
  readonly times: readonly Words[];
  readonly blocks: readonly OpenBlock[];
};

const looksListed = (line: Line): boolean => line.ingredient > line.step && line.ingredient >= 3;
const looksDone = (line: Line): boolean => line.step > line.ingredient && line.step >= 3;

/** What most of the lines under a heading look like, up to the next heading. */
const roleBelow = (lines: readonly Line[], from: number, now: BlockRole | null): BlockRole => {
  let listed = 0;
  let done = 0;
  for (let i = from; i < lines.length && i < from + 12; i += 1) {
    const line = lines[i];
    if (line === undefined || line.heading !== null) break;
    // A blank line ends the group: the method may follow the last part of the list without a heading.
    if (line.afterBlank && i > from && listed + done > 0) break;
    if (line.ingredient > line.step) listed += 1;
    else if (looksDone(line)) done += 1;
  }
  if (listed === 0 && done === 0) return now ?? "notes";
  return listed >= done ? "ingredients" : "method";
};

const usualParts =
  /^(?:the )?(?:dough|levain|leaven|starter|sponge|filling|sauce|topping|pastry|icing|frosting|base|dressing|marinade|batter|glaze|syrup|crumble|stuffing|garnish|custard|ganache|brine|cure)$/i;

/**
 * A short line that names a part with no mark at all: it opens a group of lines that begin with amounts. In a list that is
 * `parted` already the name may be that of a food ("Ice cream").
 */
const namesPart = (lines: readonly Line[], at: number, parted = false): boolean => {
  const line = lines[at];
  if (line === undefined || line.bullet || line.number !== null) return false;
  const { text } = line.words;
  const usual = usualParts.test(text);
  if (!line.afterBlank && !usual) return false;
  if (!/^\p{Lu}[^.,;:!?\d]{2,40}$/u.test(text) || text.split(/\s+/).length > 4) return false;
  if (line.step >= 3 || (!usual && !parted && (line.ingredient >= 4 || findFood(text) !== null)))
    return false;
  let counted = 0;
  let seen = 0;
  for (let i = at + 1; i < lines.length && seen < 6; i += 1) {
    const below = lines[i];
    if (below === undefined || below.heading !== null || (below.afterBlank && i > at + 1)) break;
    seen += 1;
    if (/^[\d\u00bc-\u00be\u2150-\u215e]/.test(below.words.text)) counted += 1;
  }
  return seen >= 2 && counted * 2 > seen;
};

/** The name of a dish that opens a paragraph: a short sentence that orders nothing. Null when the line has none. */
const firstSentence = (line: Line): Words | null => {
  if (line.heading !== null || line.number !== null || line.bullet || line.words.text.length < 80)
    return null;
  const found = /^(\p{Lu}[^.!?:;]{2,45})[.!]\s+(?=\p{Lu})/u.exec(line.words.text)?.[1];
  if (found === undefined || found.split(/\s+/).length > 7 || /\d/.test(found) || line.verb) return null;
  if (/\b(?:is|are|was|i|you|we|this|it|my)\b/i.test(found)) return null;
  return wordsAt(line.words, { start: 0, end: found.length });
};

const mostInTitle = 14;

const canBeTitle = (line: Line): boolean => {
  const { heading, words, facts } = line;
  if (facts !== null || line.number !== null) return false;
  if (heading !== null && heading.role !== null) return false;
  if (/^(?:\d|[\u00bc-\u00be\u2150-\u215e])/.test(words.text) && line.ingredient >= 4) return false;
  if (line.bullet && line.ingredient >= 3) return false;
  const capitals = words.text === words.text.toUpperCase() && /\p{Lu}{3}/u.test(words.text);
  const name = factsBehind(words)?.title.text ?? words.text;
  if (words.text.length > 120 || titleFrom(words).title.text.split(/\s+/).length > mostInTitle) return false;
  return (capitals || !(line.step >= 4 && /[.!?]$/.test(words.text))) && !/[.!?]\s+\p{Lu}/u.test(name);
};

/** After a list without bullets, a bullet with an order is the first step ("- trim, season, sear hard"). */
const turnsToWork = (line: Line, list: OpenBlock): boolean =>
  line.bullet && line.verb && line.ingredient <= 3 && list.loose && list.lines.every((l) => !l.bullet);

/** "1 Whisk the whites." and "2 Fold in …" on the next line: numbers without a mark count steps, not foods. */
const countsSteps = (lines: readonly Line[], at: number): boolean =>
  /^1\s+\p{Lu}.*[.!]$/u.test(lines[at]?.words.text ?? "") &&
  /^2\s+\p{Lu}.*[.!]$/u.test(lines[at + 1]?.words.text ?? "");

/** A sentence of talk between the lines of a list ("It's three of milk to one of cream."). */
const isRemark = (line: Line): boolean =>
  !line.bullet &&
  /[.!]$/.test(line.words.text) &&
  line.words.text.split(/\s+/).length > 8 &&
  line.ingredient <= 1;

/** The role that a line asks for by its words alone, whatever block it stands in; null for none. */
const ownRole = (line: Line): "keeping" | "swaps" | null => {
  if (line.number !== null) return null;
  if (isSwapLine(line.words.text)) return "swaps";
  return isKeepingLine(line.words.text) ? "keeping" : null;
};

/** Talk before the list that sounds like a step ("Bake these the day before") is a note, when the method comes after. */
const withIntroduction = (blocks: readonly OpenBlock[]): readonly OpenBlock[] => {
  const first = blocks.findIndex((b) => b.role === "ingredients");
  const later = blocks.some((b, i) => i > first && b.role === "method" && b.lines.length > 0);
  if (first <= 0 || !later) return blocks;
  return blocks.map((b, i) => {
    const spoken = b.heading === null && b.lines.every((line) => line.number === null);
    return i < first && b.role === "method" && spoken ? { ...b, role: "notes" } : b;
  });
};

/** "Does 6.", "Twelve slices.": the last sentence of the work. */
const endsWithYield = (sentence: string): boolean => isYield(sentence) || isBareMade(sentence);

/** Yields said in the middle of talk ("it serves 4 with rice"): the first one of the card. */
const spokenYields = (blocks: readonly OpenBlock[]): readonly Words[] => {
  for (const block of blocks)
    for (const line of block.lines) {
      const found = yieldInside(line.words.text);
      if (found !== null) return [wordsAt(line.words, found)];
      const last = sentences(line.words.text).at(-1);
      if (
        block.role === "method" &&
        last !== undefined &&
        endsWithYield(line.words.text.slice(last.start, last.end))
      )
        return [wordsAt(line.words, last)];
    }
  return [];
};

/** "Pastry" over a few lines of work, when a part of the list has that name: the part; null for any other line. */
const partAgain = (lines: readonly Line[], at: number, blocks: readonly OpenBlock[]): string | null => {
  const [line, below] = [lines[at], lines[at + 1]];
  if (line === undefined || below === undefined || below.afterBlank || !(below.verb || looksDone(below)))
    return null;
  const name = line.words.text.toLowerCase();
  return blocks.some((b) => b.role === "ingredients" && b.part === name) ? name : null;
};

/** "Boil for 1 hour." below a list and a blank line: an order that is a whole sentence, however short. */
const opensWork = (line: Line): boolean =>
  line.afterBlank && line.verb && !line.bullet && /[.!]$/.test(line.words.text) && line.ingredient <= 3;

/** The part that the list was in before talk broke it off. */
const partOfList = (blocks: readonly OpenBlock[]): string | null =>
  blocks.findLast((b) => b.role === "ingredients")?.part ?? null;

const isFoodLine = ({ text }: Words): boolean =>
  !/[.!]$/.test(text) &&
  text.split(/\s+/).length <= 8 &&
  (findFood(text) !== null || !startsWithVerb(tokensOf(text)));

/** Sorts the lines of a text into title, yields, times and blocks. */
export const layOut = (lines: readonly Line[]): Layout => {
  const yields: Words[] = [];
  const times: Words[] = [];
  const blocks: OpenBlock[] = [];
  let title: Words | null = null;

  const begin = (role: BlockRole, heading: Words | null, part: string | null, loose: boolean): OpenBlock => {
    const block: OpenBlock = { role, heading, part, lines: [], loose };
    blocks.push(block);
    return block;
  };
  const beginWith = (role: BlockRole, line: Line): void => {
    put(begin(role, null, null, true), line);
  };
  const filled = new Set<BlockRole>();
  const put = (block: OpenBlock, line: Line): void => {
    block.lines.push(line);
    filled.add(block.role);
  };
  const has = (role: BlockRole): boolean => filled.has(role);
  // Within a list that has its heading, and the method has its own below it.
  let framed = false;
  const lastList = lines.findLastIndex((l) => l.heading?.role === "ingredients");

  const takeFacts = (words: Words, facts: NonNullable<Line["facts"]>): void => {
    yields.push(...facts.yields.map((s) => wordsAt(words, s)));
    times.push(...facts.times.map((s) => wordsAt(words, s)));
  };

  const takeHeading = (line: Line, heading: HeadingRead, at: number, now: OpenBlock | null): void => {
    const words = wordsAt(line.words, heading);
    const rest =
      heading.rest === null
        ? null
        : wordsAt(line.words, { start: heading.rest, end: line.words.text.length });
    const below = roleBelow(lines, at + 1, now?.role ?? null);
    // "To serve" over a list of foods is a part of the list.
    const listed = heading.role === "to-serve" && rest === null && below === "ingredients" && !has("method");
    // "To serve: lemon wedges" inside the list is one of its lines.
    if (heading.role === "to-serve" && rest !== null && now?.role === "ingredients" && isFoodLine(rest)) {
      put(now, line);
      return;
    }
    if (heading.role !== null && heading.role !== "to-serve")
      framed = heading.role === "ingredients" && isFramed(lines, at);
    const role = listed ? "ingredients" : (heading.role ?? (framed ? "ingredients" : below));
    const block = begin(role, words, listed ? "to serve" : heading.part, rest !== null);
    if (rest !== null) put(block, { ...line, words: rest, number: null });
  };

  /** Lines before the list and the method, and after a block that no heading closed. */
  const takeLoose = (line: Line, at: number, now: OpenBlock | null): void => {
    const own = ownRole(line);
    const closed = now !== null && now.role === "notes" && now.heading !== null && !now.loose;
    const listLater = at < lastList;
    if (own !== null && (own === "swaps" || has("method"))) beginWith(own, line);
    else if (closed && (listLater || !looksListed(line) || has("ingredients"))) put(now, line);
    else if (!has("method") && namesPart(lines, at))
      begin("ingredients", line.words, line.words.text.toLowerCase(), false);
    else if (!has("method") && looksListed(line)) beginWith("ingredients", line);
    else if (looksDone(line) && (now === null || now.role === "notes" || !has("method")))
      beginWith("method", line);
    else if (now !== null && now.role !== "notes" && (!line.afterBlank || line.bullet)) put(now, line);
    else {
      if (now?.role === "notes") put(now, line);
      else beginWith("notes", line);
    }
  };

  const takeListed = (line: Line, at: number, now: OpenBlock): void => {
    const own = ownRole(line);
    // A bullet under a heading keeps its line in the list, however much is said on it.
    const kept = line.bullet && !now.loose;
    const done = !kept && looksDone(line) && (line.step - line.ingredient >= 2 || line.number !== null);
    const parted = line.afterBlank && blocks.some((b) => b.role === "ingredients" && b.part !== null);
    const again = line.afterBlank ? partAgain(lines, at, blocks) : null;
    if (again !== null) begin("method", line.words, again, false);
    else if (namesPart(lines, at, parted))
      begin("ingredients", line.words, line.words.text.toLowerCase(), false);
    else if (opensWork(line)) beginWith("method", line);
    else if (countsSteps(lines, at)) beginWith("method", line);
    else if (own !== null && !kept) beginWith(own, line);
    else if ((done || turnsToWork(line, now)) && now.lines.length > 0) beginWith("method", line);
    else if (isRemark(line)) beginWith("notes", line);
    else put(now, line);
  };

  /** A line of a list between two headings: it is listed, unless it is talk, or the work plainly begins without its heading. */
  const takeFramed = (line: Line, at: number, now: OpenBlock | null): void => {
    const work = line.number !== null || (line.afterBlank && line.verb);
    if (now === null || (work && looksDone(line)) || countsSteps(lines, at)) {
      framed = false;
      if (now?.role === "ingredients") takeListed(line, at, now);
      else takeLoose(line, at, now);
    } else if (namesPart(lines, at)) begin("ingredients", line.words, line.words.text.toLowerCase(), false);
    else if (isTalk(line)) {
      if (now.role === "notes") put(now, line);
      else beginWith("notes", line);
    } else if (now.role === "ingredients") put(now, line);
    else put(begin("ingredients", null, partOfList(blocks), false), line);
  };

  const takeDone = (line: Line, at: number, now: OpenBlock): void => {
    const own = line.afterBlank || at === lines.length - 1 ? ownRole(line) : null;
    if (own !== null && (now.role === "method" || now.role === "to-serve")) {
      beginWith(own, line);
      return;
    }
    const next = lines[at + 1];
    const another =
      now.role === "method" &&
      line.afterBlank &&
      line.number === null &&
      line.ingredient >= 5 &&
      looksListed(line) &&
      next !== undefined &&
      next.heading === null &&
      next.number === null &&
      looksListed(next);
    const again = line.afterBlank && now.role === "method" ? partAgain(lines, at, blocks) : null;
    if (again !== null) begin("method", line.words, again, false);
    else if (another) beginWith("ingredients", line);
    else put(now, line);
  };

  lines.forEach((line, at) => {
    const now = blocks.at(-1) ?? null;
    const opening = blocks.length === 0 && title === null && (at === 0 || (at <= 3 && yields.length > 0));
    if (opening && canBeTitle(line)) {
      const read = titleFrom(unmarkedTitle(line));
      title = read.title;
      yields.push(...read.yields);
      times.push(...read.times);
    } else if (opening && at === 0 && firstSentence(line) !== null) {
      // "Nan's cheese scones. Makes a dozen. Rub …": the whole card in one breath.
      const named = firstSentence(line);
      const end = named?.text.length ?? 0;
      const rest = line.words.text.slice(end).replace(/^[.\s]+/, "");
      title = named;
      const start = line.words.text.length - rest.length;
      beginWith("method", { ...line, words: wordsAt(line.words, { start, end: line.words.text.length }) });
    } else if (
      line.facts !== null &&
      (line.heading?.role ?? null) === null &&
      // "Chill at least 6 hours." within a method is a step of it.
      !(now?.role === "method" && (line.number !== null || (line.verb && /[.!]$/.test(line.words.text))))
    )
      takeFacts(line.words, line.facts);
    else if (
      line.heading !== null &&
      !(now?.role === "method" && line.heading.role === null && !line.heading.marked && !line.afterBlank)
    )
      takeHeading(line, line.heading, at, now);
    else if (framed) takeFramed(line, at, now);
    else if (
      now === null ||
      now.role === "notes" ||
      (now.loose && now.role !== "method" && now.role !== "ingredients")
    )
      takeLoose(line, at, now);
    else if (now.role === "ingredients") takeListed(line, at, now);
    else takeDone(line, at, now);
  });
  const settled = withIntroduction(blocks);
  if (yields.length === 0) yields.push(...spokenYields(settled));
  return { title, yields, times, blocks: settled };
};

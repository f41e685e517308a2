import type { Words } from "../model/span.ts";
import type { OpenBlock } from "./lay-out.ts";
import { type Line, wordsAt } from "./lines-of-text.ts";
import { numberedInline, sentences } from "./sentences.ts";

const joined = (text: string, first: Words, last: Words): Words => ({
  text: text.slice(first.span.start, last.span.end),
  span: { start: first.span.start, end: last.span.end },
});

const continues = (block: OpenBlock, first: Line, before: Line, line: Line): boolean => {
  if (line.afterBlank || line.number !== null || line.bullet) return false;
  const open = !/[.!?:;]["'\u201d)]*$/.test(before.words.text);
  const lower = /^[\p{Ll}(&,]/u.test(line.words.text);
  if (block.role === "ingredients") {
    if (/(?:,|\bor|\band|\bplus|&|\+)$/i.test(before.words.text) && !/^\d/.test(line.words.text))
      return lower;
    return lower && line.indent > first.indent;
  }
  // A new sentence behind a full one is a line of its own, unless it goes on with the work.
  if (first.number !== null || first.bullet)
    return block.role !== "method" || open || lower || line.step >= 3;
  // "fry the onion" / "add the stock": lines that each begin with an order and end in nothing.
  if (
    block.role === "method" &&
    open &&
    line.verb &&
    line.indent <= first.indent &&
    !/(?:,|\b(?:and|then|or|to|the|a|with|in|of|until|for))$/i.test(before.words.text) &&
    /^\p{Ll}/u.test(first.words.text)
  )
    return false;
  // Hard-wrapped text: the line before was full and its sentence is not ended, or this one begins within a sentence.
  return (open && before.words.text.length >= 45) || (lower && open);
};

/** Lines that were broken in the middle are one again; the words are the text from first to last. */
const mended = (text: string, block: OpenBlock): readonly Line[] => {
  const runs: { readonly first: Line; last: Line }[] = [];
  for (const line of block.lines) {
    const run = runs.at(-1);
    if (run !== undefined && continues(block, run.first, run.last, line)) run.last = line;
    else runs.push({ first: line, last: line });
  }
  return runs.map(({ first, last }) =>
    first === last ? first : { ...first, words: joined(text, first.words, last.words) },
  );
};

/** "1 Grill the corn", "2 Roll in the butter": numbers without a mark, told by their counting up from one. */
const withoutCount = (lines: readonly Line[]): readonly Line[] => {
  const counted = lines.length > 1 && lines.every((l, i) => l.words.text.startsWith(`${i + 1} `));
  if (!counted) return lines;
  return lines.map((line, i) => {
    const start = `${i + 1} `.length;
    const gap = line.words.text.slice(start).length - line.words.text.slice(start).trimStart().length;
    return {
      ...line,
      number: i + 1,
      words: wordsAt(line.words, { start: start + gap, end: line.words.text.length }),
    };
  });
};

const amountAhead =
  /^(?:\d|[\u00bc-\u00be\u2150-\u215e]|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|half|some|juice|zest|salt|pepper)\b)/i;

/** "2 onions, chopped, 1 carrot, salt": cut where an amount begins; a comma inside brackets cuts nothing. */
const cutList = (words: Words): readonly Words[] => {
  const cuts: { at: number; after: number }[] = [];
  let depth = 0;
  for (let i = 0; i < words.text.length; i += 1) {
    const mark = words.text[i];
    if (mark === "(" || mark === "[") depth += 1;
    else if (mark === ")" || mark === "]") depth = Math.max(0, depth - 1);
    else if (depth === 0 && (mark === "," || mark === ";" || mark === "\n" || mark === "\u2022")) {
      if (mark === "," && /\d/.test(words.text[i - 1] ?? "") && /\d/.test(words.text[i + 1] ?? "")) continue;
      const rest = words.text.slice(i + 1, i + 40);
      const gap = rest.length - rest.trimStart().length;
      if (mark !== "," || amountAhead.test(rest.trimStart())) cuts.push({ at: i, after: i + 1 + gap });
    }
  }
  // "Shallots, 4 large, finely diced": the amount of what stands before it.
  if (cuts.length === 0 || (cuts.length === 1 && !amountAhead.test(words.text))) return [words];
  const starts = [0, ...cuts.map((c) => c.after)];
  const ends = [...cuts.map((c) => c.at), words.text.length];
  return starts.flatMap((start, i) => {
    const end = start + words.text.slice(start, ends[i]).trimEnd().replace(/\.$/, "").length;
    return end > start ? [wordsAt(words, { start, end })] : [];
  });
};

const longParagraph = 300;
const longMethod = 160;

const cutSteps = (line: Line, alone: boolean): readonly Words[] => {
  const { words } = line;
  const inline = numberedInline(words.text);
  if (inline.length > 0)
    return inline.map((s) => {
      const end = s.start + words.text.slice(s.start, s.end).trimEnd().length;
      return wordsAt(words, { start: s.start, end });
    });
  const least = alone ? longMethod : longParagraph;
  if (line.number !== null || words.text.length < least) return [words];
  return sentences(words.text).map((s) => wordsAt(words, s));
};

/** The lines of a block as the card keeps them: broken lines mended, lists on one line and long paragraphs cut. */
export const cutLines = (text: string, block: OpenBlock, onlyMethodLine: boolean): readonly Words[] => {
  const lines = mended(text, block);
  if (block.role === "ingredients")
    return lines.flatMap((line) =>
      lines.length <= 2 && line.words.text.length > 30 ? cutList(line.words) : [line.words],
    );
  if (block.role === "method" || block.role === "to-serve")
    return withoutCount(lines).flatMap((line) => cutSteps(line, onlyMethodLine && lines.length === 1));
  return lines.map((line) => line.words);
};

import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Block, Card } from "../model/card.ts";
import type { Outcome } from "../model/outcome.ts";
import type { SourceId } from "../model/span.ts";
import { cutLines } from "./cut-lines.ts";
import { layOut, type OpenBlock } from "./lay-out.ts";
import { isKeepingLine } from "./likeness.ts";
import { linesOfText } from "./lines-of-text.ts";
import { withoutToldList } from "./told-list.ts";

/** Characters of a text that are read; the longest card anyone cooks from is a tenth of this. */
export const mostCharacters = 60_000;

// No text holds these: control characters other than tabs and line ends, and the sign that a byte could not be read.
const isOdd = (code: number): boolean => code < 0x09 || (code > 0x0d && code < 0x20) || code === 0xfffd;

/** More than one odd character in fifty, and the bytes were never text. */
const isBinary = (text: string): boolean => {
  const most = Math.min(text.length, mostCharacters);
  let odd = 0;
  for (let at = 0; at < most; at += 1) if (isOdd(text.charCodeAt(at))) odd += 1;
  return odd > 3 && odd * 50 > most;
};

const longEnough = 2_000;

const parts = /[\s\u2000-\u206f\u3000-\u303f\uff00-\uff20]/;

/** The longest run of a text without anything that parts words. */
const longest = (text: string): number => {
  let [run, most] = [0, 0];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    const inWord = code < 0x80 ? code > 0x20 : !parts.test(text.charAt(at));
    run = inWord ? run + 1 : 0;
    if (run > most) most = run;
  }
  return most;
};

/** Marks in every fourth place, or thousands of signs without a space: noise that happens to be printable. */
const isNoise = (text: string): boolean => {
  const read = text.slice(0, mostCharacters);
  if (read.length < longEnough) return false;
  if (longest(read) >= longEnough) return true;
  return (read.match(/[!-/:-@[-`{-~]/g)?.length ?? 0) * 4 > read.length;
};

const isEmpty = (text: string): boolean => !/[\p{L}\p{N}]/u.test(text.slice(0, mostCharacters));

/** Talk that was neither listed nor ordered is the method, when the card has nothing else to cook from. */
const withMethod = (blocks: readonly OpenBlock[]): readonly OpenBlock[] => {
  if (blocks.some((b) => b.role === "method" && b.lines.length > 0)) return blocks;
  const listed = blocks.some((b) => b.role === "ingredients" && b.lines.length > 0);
  return blocks.map((b) => {
    const words = b.lines.reduce((sum, line) => sum + line.words.text.split(/\s+/).length, 0);
    return b.role === "notes" && b.heading === null && (!listed || words > 25) ? { ...b, role: "method" } : b;
  });
};

/** "They keep for 2 weeks in the fridge" at the end of a method told in one breath is no step of it. */
const withoutKeeping = (block: Block): readonly Block[] => {
  const last = block.lines.at(-1);
  if (block.role !== "method" || block.lines.length < 2 || last === undefined || !isKeepingLine(last.text))
    return [block];
  return [
    { ...block, lines: block.lines.slice(0, -1) },
    { role: "keeping", heading: null, part: block.part, lines: [last] },
  ];
};

/** Lays a text out as a card. Never throws; any text gives a card. Time grows in line with the text's length. */
export const cardFromText = (text: string, source: SourceId): Outcome<Card, Finding> => {
  const whole = { start: 0, end: text.length };
  const empty: Card = { source, text, title: null, yields: [], times: [], blocks: [] };
  if (isEmpty(text)) return { value: empty, findings: [makeFinding("text-empty", source, whole, {})] };
  if (isBinary(text) || isNoise(text)) {
    const finding = makeFinding("text-not-readable", source, whole, { reason: "binary", kept: 0 });
    return { value: empty, findings: [finding] };
  }
  const findings: Finding[] = [];
  if (text.length > mostCharacters)
    findings.push(
      makeFinding(
        "text-not-readable",
        source,
        { start: mostCharacters, end: text.length },
        { reason: "too-long", kept: mostCharacters },
      ),
    );
  const lines = linesOfText(text, mostCharacters);
  const layout = layOut(lines.flatMap((line, at) => (at === 0 ? [line] : withoutToldList(line))));
  const blocks = withMethod(layout.blocks);
  const methodLines = blocks.reduce((sum, b) => sum + (b.role === "method" ? b.lines.length : 0), 0);
  const kept = blocks
    .map(
      (block): Block => ({
        role: block.role,
        heading: block.heading,
        part: block.part,
        lines: cutLines(text, block, methodLines === 1),
      }),
    )
    .flatMap((block) => (methodLines === 1 ? withoutKeeping(block) : [block]))
    .filter((block) => block.lines.length > 0 || block.heading !== null);
  if (layout.title === null)
    findings.push(makeFinding("title-missing", source, { start: 0, end: 0 }, { assumed: source }));
  const has = (role: Block["role"]): boolean => kept.some((b) => b.role === role && b.lines.length > 0);
  if (!has("method")) findings.push(makeFinding("method-missing", source, whole, {}));
  if (layout.yields.length === 0)
    findings.push(makeFinding("yield-missing", source, layout.title?.span ?? { start: 0, end: 0 }, {}));
  return {
    value: { source, text, title: layout.title, yields: layout.yields, times: layout.times, blocks: kept },
    findings,
  };
};

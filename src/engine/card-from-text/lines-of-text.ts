import { remembered } from "../larder/remembered.ts";
import { tokensOf } from "../measure/tokens.ts";
import type { Words } from "../model/span.ts";
import { type HeadingRead, isRule, readHeading } from "./headings.ts";
import { ingredientLikeness, isClutter, opensAfterwards, startsWithVerb, stepLikeness } from "./likeness.ts";
import { isNumberAlone, unmark } from "./list-marks.ts";
import { type RawLine, rawLines } from "./raw-lines.ts";
import { isBareMade, readFacts, type Stretch } from "./yield-words.ts";

/** A line with what it looks like. The words are without list marks and space; offsets count from the text's start. */
export type Line = {
  readonly words: Words;
  /** Its offsets count from the start of the words. */
  readonly heading: HeadingRead | null;
  readonly facts: { readonly yields: readonly Stretch[]; readonly times: readonly Stretch[] } | null;
  readonly bullet: boolean;
  readonly number: number | null;
  readonly indent: number;
  readonly afterBlank: boolean;
  /** How much it looks like an ingredient, and like a step; their difference decides. */
  readonly ingredient: number;
  readonly step: number;
  /** Its first word orders something to be done. */
  readonly verb: boolean;
};

/** A stretch of a line as words of the whole text. */
export const wordsAt = (line: Words, stretch: Stretch): Words => ({
  text: line.text.slice(stretch.start, stretch.end),
  span: { start: line.span.start + stretch.start, end: line.span.start + stretch.end },
});

/** Characters of a line by which it is judged. */
const mostSaid = 400;

const emphasised = /^(\*\*|__|\*|_)(.+)\1[.:]?$/;

const readLine = (raw: RawLine, underlined: boolean, number: number | null): Line => {
  const whole: Words = { text: raw.text, span: { start: raw.start, end: raw.end } };
  const mark = unmark(raw.text);
  // A heading keeps its marks of emphasis until it is read, and a picture before it is no bullet.
  const inner = emphasised.exec(mark.text)?.[2] ?? null;
  // "Prep: 10 mins" is a time and no heading over a method.
  const told = readFacts(mark.text);
  const stated =
    (inner !== null && readFacts(inner) !== null) ||
    (told !== null && told.times.length > 0 && told.yields.length === 0);
  const heading = mark.number === null && !stated ? readHeading(mark.text, underlined) : null;
  let words = wordsAt(whole, { start: mark.skip, end: raw.text.length });
  const strong = heading === null ? emphasised.exec(words.text) : null;
  if (strong !== null) {
    const lead = (strong[1] ?? "").length;
    words = wordsAt(words, { start: lead, end: lead + (strong[2] ?? "").length });
  }
  if (/\|\s*$/.test(words.text) && raw.text.startsWith("|"))
    words = wordsAt(words, { start: 0, end: words.text.replace(/\s*\|\s*$/, "").length });
  const facts = words.text === mark.text ? told : readFacts(words.text);
  const tokens = tokensOf(words.text.slice(0, mostSaid));
  const numbered = mark.number ?? number;
  const verb = startsWithVerb(tokens);
  return {
    words,
    heading,
    facts,
    bullet: mark.bullet,
    number: numbered,
    indent: raw.indent,
    afterBlank: raw.afterBlank,
    ingredient: ingredientLikeness(words.text, tokens, mark.bullet),
    step: stepLikeness(words.text, tokens, numbered !== null, verb),
    verb,
  };
};

/** What a line looks like wherever it stands: its number before, whether it is underlined, and its words. */
const looks = remembered((key) => {
  const [number = "", underlined = "", ...text] = key.split("|");
  const words = text.join("|");
  const raw: RawLine = { text: words, start: 0, end: words.length, indent: 0, afterBlank: false };
  return readLine(raw, underlined === "1", number === "" ? null : Number(number));
});

const lineAt = (raw: RawLine, underlined: boolean, number: number | null): Line => {
  const line = looks(`${number ?? ""}|${underlined ? 1 : 0}|${raw.text}`);
  const { start, end } = line.words.span;
  return {
    ...line,
    words: { text: line.words.text, span: { start: raw.start + start, end: raw.start + end } },
    indent: raw.indent,
    afterBlank: raw.afterBlank,
  };
};

/** A heading of the dish itself behind what readers say: the page goes on. */
const backAgain = (line: string): boolean => {
  const role = readHeading(line, false)?.role ?? null;
  return role === "ingredients" || role === "method";
};

/** The lines of a text that say something about a dish, with what each looks like. */
export const linesOfText = (text: string, limit: number): readonly Line[] => {
  const raw = rawLines(text, limit);
  const lines: Line[] = [];
  let number: number | null = null;
  let over = false;
  raw.forEach((line, i) => {
    if (isRule(line.text)) return;
    if (isNumberAlone(line.text) && raw[i + 1] !== undefined) {
      number = Number(/\d+/.exec(line.text)?.[0] ?? 0);
      return;
    }
    const below = raw[i + 1];
    // The head of a table names its columns.
    const columns = line.text.startsWith("|") && below !== undefined && /^\|[\s|:-]+$/.test(below.text);
    if (columns || isClutter(line.text)) return;
    if (over && !backAgain(line.text)) return;
    over = opensAfterwards(line.text) && lines.some((l) => l.step >= 3 || l.heading?.role === "method");
    if (over) return;
    const underlined = below !== undefined && !below.afterBlank && /^(?:-{3,}|={3,})$/.test(below.text);
    const read = lineAt(line, underlined, number);
    // Alone below the title, what is made needs no verb.
    const alone = lines.length === 1 && below?.afterBlank === true && read.facts === null && !read.bullet;
    lines.push(
      alone && isBareMade(read.words.text)
        ? { ...read, facts: { yields: [{ start: 0, end: read.words.text.length }], times: [] } }
        : read,
    );
    number = null;
  });
  return lines;
};

import { keptByText } from "../../measure/kept-by-text.ts";
import { stem } from "./stem.ts";

/** A word, a number or a mark of a text; `at` and `end` are offsets in that text. */
export type Token = {
  readonly kind: "word" | "number" | "mark";
  /** Lower case, without accents, with plain apostrophes. */
  readonly text: string;
  /** The text without its plural ending. */
  readonly stem: string;
  readonly at: number;
  readonly end: number;
};

// Runs are bounded: a word of sixty thousand letters would be more than a pattern can walk back through.
const pattern =
  /(\d{1,40}(?:[.,]\d{1,40})?|[½¼¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚])|((?!º)\p{L}[\p{L}\p{M}]{0,60}(?:['’-]\p{L}[\p{L}\p{M}]{0,60}){0,8})|([^\s\p{L}\p{N}]|º)/uy;

const plain = (word: string): string =>
  /^[\x20-\x7e]*$/.test(word)
    ? word.toLowerCase()
    : word
        .normalize("NFKD")
        .replace(/[\u0300-\u036f]/g, "")
        .replace(/[\u2018\u2019\u02bc]/g, "'")
        .toLowerCase();

const isPlainLetter = (code: number): boolean =>
  (code >= 0x61 && code <= 0x7a) || (code >= 0x41 && code <= 0x5a);

/** The end of a word of plain letters alone; -1 when a mark or another letter may belong to it, which the pattern decides. */
const plainWordEnd = (text: string, from: number): number => {
  let at = from;
  while (at < text.length && isPlainLetter(text.charCodeAt(at))) at += 1;
  const code = at < text.length ? text.charCodeAt(at) : 0x20;
  return at === from || at - from > 60 || code >= 0x80 || code === 0x27 || code === 0x2d ? -1 : at;
};

const cut = (text: string): readonly Token[] => {
  const tokens: Token[] = [];
  let next = 0;
  while (next < text.length) {
    const at = next;
    if (text.charCodeAt(at) === 0x20) {
      next += 1;
      continue;
    }
    // Plain words are most of any text, and need no pattern to be told apart.
    const end = plainWordEnd(text, at);
    if (end > 0) {
      const said = text.slice(at, end).toLowerCase();
      tokens.push({ kind: "word", text: said, stem: stem(said), at, end });
      next = end;
      continue;
    }
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found === null) {
      next += (text.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
      continue;
    }
    const written = found[0];
    next = at + written.length;
    const last = tokens.at(-1);
    // "w/ salt", "w/o salt": kitchen shorthand for "with", "without".
    if (written === "/" && last?.text === "w" && last.end === at) {
      tokens[tokens.length - 1] = { ...last, text: "with", stem: "with", end: at + 1 };
      continue;
    }
    const kind = found[1] !== undefined ? "number" : found[2] !== undefined ? "word" : "mark";
    const said = kind === "word" ? plain(written) : written;
    tokens.push({
      kind,
      text: said,
      stem: kind === "word" ? stem(said) : said,
      at,
      end: at + written.length,
    });
  }
  return tokens;
};

// The reading of steps, the keeping and several rules cut the same lines; a card of a thousand lines is kept whole.
const mostKept = 2000;

/** Cuts a text into tokens. "500g" gives a number and a word, "stir-fry" one word. */
export const tokenise: (text: string) => readonly Token[] = keptByText(cut, mostKept);

const abbreviations = new Set([
  ..."approx min mins hr hrs sec secs tbsp tsp tbs oz lb lbs pt qt deg temp c f no vs eg e.g i.e ie g kg ml cm in".split(
    " ",
  ),
]);

/** Cuts a list of tokens into sentences: at full stops, question and exclamation marks, semicolons and new lines. */
export const sentencesOf = (text: string, tokens: readonly Token[]): readonly (readonly Token[])[] => {
  const sentences: Token[][] = [];
  let current: Token[] = [];
  const close = (): void => {
    if (current.length > 0) sentences.push(current);
    current = [];
  };
  tokens.forEach((token, i) => {
    const before = tokens[i - 1];
    const next = tokens[i + 1];
    if (before !== undefined && text.slice(before.end, token.at).includes("\n")) close();
    const ends =
      token.kind === "mark" &&
      (token.text === "!" ||
        token.text === "?" ||
        token.text === ";" ||
        (token.text === "." &&
          (next === undefined || next.at > token.end || next.text === "*" || next.text === "_") &&
          !(
            before !== undefined &&
            abbreviations.has(before.text) &&
            next !== undefined &&
            /^[a-z\d(,]/.test(text.slice(next.at, next.at + 1))
          )));
    if (ends) close();
    else current.push(token);
  });
  close();
  return sentences;
};

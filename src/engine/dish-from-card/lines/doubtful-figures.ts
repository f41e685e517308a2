import type { Span } from "../../model/span.ts";

/** Figures that no amount can have, and the line with spaces in their place, so that all other words keep theirs. */
export type Doubtful = { readonly span: Span; readonly line: string };

const zero = /(?<![\d.,/\u2044])0+(?:[.,]0+)?(?![\d.,%])/;
const patterns: readonly RegExp[] = [
  // "1/0 g"
  /\d+\s*[/\u2044\u2215]\s*0+(?![\d.,])(?:\s*\p{L}+\b)?/u,
  // "1e309 kg"
  /(?<![\p{L}\d])\d+(?:\.\d+)?e[+-]?\d+(?:\s*\p{L}+\b)?/iu,
  // More digits than anybody weighs.
  /(?<!\d)\d{10,}(?:[.,]\d+)?(?:\s*\p{L}+\b)?/u,
  // "0 g", and a bare 0 that begins the line; not "0 % fat", "00 flour" or "size 0".
  new RegExp(`^\\s*${zero.source}\\s*(?:\\p{L}+\\b)?`, "u"),
];

// Nearly every line fails this at once, and need not be searched again.
const suspect = /(?:^|[^\d.,])0|\de[+-]?\d|\d{10}/i;

/** Finds a figure that cannot be meant ("1/0 g", "1e309 kg", "0 g"). Null when all can. */
export const doubtfulFigure = (line: string, isUnit: (word: string) => boolean): Doubtful | null => {
  if (!suspect.test(line)) return null;
  for (const pattern of patterns) {
    const found = pattern.exec(line);
    if (found === null || /^\s*00/.test(found[0])) continue;
    const unit = /\p{L}+$/u.exec(found[0])?.[0] ?? "";
    const long = isUnit(unit) ? found[0] : found[0].slice(0, found[0].length - unit.length);
    const words = long.trimEnd();
    const start = found.index + (words.length - words.trimStart().length);
    const end = found.index + words.length;
    return {
      span: { start, end },
      line: line.slice(0, start) + " ".repeat(end - start) + line.slice(end),
    };
  }
  return null;
};

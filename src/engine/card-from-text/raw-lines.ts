/** A line of the text without the space around it. Offsets count from the text's start. */
export type RawLine = {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Columns of space before it; a tab counts for four. */
  readonly indent: number;
  /** True when the line before is blank, or there is none. */
  readonly afterBlank: boolean;
};

const isSpace = (code: number): boolean =>
  code <= 0x20 ||
  code === 0xa0 ||
  code === 0xfeff ||
  code === 0x3000 ||
  code === 0x202f ||
  code === 0x2060 ||
  code === 0x7f ||
  (code >= 0x2000 && code <= 0x200f) ||
  (code >= 0x202a && code <= 0x202e) ||
  (code >= 0x80 && code <= 0x9f);

const isBreak = (code: number): boolean =>
  code === 0x0a || code === 0x0d || code === 0x0b || code === 0x0c || code === 0x2028 || code === 0x2029;

/** The stretch without space at its ends. */
export const trimmed = (text: string, from: number, to: number): { start: number; end: number } => {
  let [start, end] = [from, to];
  while (start < end && isSpace(text.charCodeAt(start))) start += 1;
  while (end > start && isSpace(text.charCodeAt(end - 1))) end -= 1;
  return { start, end };
};

/** The lines that hold something, in order, up to `limit` characters of the text. */
export const rawLines = (text: string, limit: number): readonly RawLine[] => {
  const lines: RawLine[] = [];
  const most = Math.min(text.length, limit);
  let from = 0;
  let afterBlank = true;
  for (let at = 0; at <= most; at += 1) {
    if (at < most && !isBreak(text.charCodeAt(at))) continue;
    const { start, end } = trimmed(text, from, at);
    if (start < end) {
      let indent = 0;
      for (let i = from; i < start; i += 1) indent += text[i] === "\t" ? 4 : 1;
      lines.push({ text: text.slice(start, end), start, end, indent, afterBlank });
      afterBlank = false;
      // A return and a line feed are one break.
    } else if (!(text[at] === "\n" && text[at - 1] === "\r")) afterBlank = true;
    from = at + 1;
  }
  return lines;
};

/** A line without its list mark, and what the mark was. `skip` counts the characters left out at the start. */
export type Unmarked = {
  readonly text: string;
  readonly skip: number;
  readonly bullet: boolean;
  /** The number of a numbered item; null for none. */
  readonly number: number | null;
};

const bullet =
  /^(?:[*+\u2022\u00b7\u25e6\u25aa\u25ab\u25cf\u25cb\u2023\u2043\u2219\u2027\u25a0-\u25a2\u25fb\u25fc\u2b1c\u2610-\u2612\u2713\u2714\u27a4\u25b6>|-]|[\u2013\u2014](?=\s)|o(?=\s))[\ufe0e\ufe0f]?\s*(?:\[[ xX]?\]\s*)?/;
const checkbox = /^\[[ xX]?\]\s+/;
const numbered =
  /^(?:step\s*)?\(?(\d{1,4})(?:[.):\u3002]+\s+(?=\S)|\s?[-\u2013\u2014]\s+(?!inch|in\b|cm\b|mm\b)(?=\p{L}))/iu;
const stepWord =
  /^step\s+(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten)(?:\s*[.):\u2013\u2014-]+\s+(?=\S)|\s+(?!can\b|may\b|could\b|will\b|is\b|and\b|or\b|to\b)(?=\S))/i;
const alone = /^(?:step\s*)?\(?\d{1,2}[.):]*$/i;
const pictures = /^(?:\p{Extended_Pictographic}|\u20e3|\ufe0f|\u200d|\p{Emoji_Modifier})+\s*/u;

/** Takes a bullet, a check box, a number or a picture off the front of a line. */
export const unmark = (line: string): Unmarked => {
  let text = line;
  let hasBullet = false;
  let number: number | null = null;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(text);
    if (found !== null) text = text.slice(found[0].length);
    return found;
  };
  const emphasis = /^(\*\*|__|---|\*\s*\*)/.test(text) || /^\*[^\s*][^*]*\*$/.test(text);
  if (!emphasis && (take(bullet) ?? take(checkbox)) !== null) hasBullet = true;
  const isPicture = !/^[\d#*]/.test(text) && take(pictures) !== null;
  if (isPicture) hasBullet = true;
  const item = take(numbered) ?? take(stepWord);
  if (item !== null) number = Number(item[1]) || 0;
  // A line of marks alone keeps them, so that no words are lost.
  if (text.trim() === "") return { text: line, skip: 0, bullet: false, number: null };
  return { text, skip: line.length - text.length, bullet: hasBullet, number };
};

/** True for a number that stands alone on its line: the text of the step is on the next. */
export const isNumberAlone = (line: string): boolean => alone.test(line);

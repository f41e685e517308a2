/** A stretch of a file, with where it begins as people count: from 1, columns in UTF-16 code units. */
export type Place = {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly column: number;
};

/** Answers where an offset of a text stands; the line starts are found once. */
export const placesIn = (file: string, text: string): ((start: number, end: number) => Place) => {
  const lineStarts = [0];
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lineStarts.push(at + 1);
  return (start, end) => {
    let low = 0;
    let high = lineStarts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((lineStarts[middle] ?? 0) <= start) low = middle;
      else high = middle - 1;
    }
    return { file, start, end, line: low + 1, column: start - (lineStarts[low] ?? 0) + 1 };
  };
};

import type { Stretch } from "./yield-words.ts";

const short =
  /(?:^|[\s(])(?:approx|min|mins|hr|hrs|tsp|tbsp|tbs|oz|lb|lbs|pt|qt|fl|e\.g|i\.e|eg|ie|no|ca|vs|etc|temp|deg|in|cm|mm|ml|st|dr|mr|mrs|[a-z])\.$/i;

/** Cuts a paragraph into its sentences. Abbreviations and decimals end none. */
export const sentences = (text: string): readonly Stretch[] => {
  const found: Stretch[] = [];
  let from = 0;
  for (const stop of text.matchAll(
    /[.!?]+["'\u201d\u2019)]*\s+(?=["'\u201c\u2018(]?[\p{Lu}\d\u00bc-\u00be])/gu,
  )) {
    const end = stop.index + stop[0].trimEnd().length;
    const before = text.slice(Math.max(from, end - 12), end);
    if (
      short.test(before) &&
      !/^[\p{Lu}]/u.test(text.slice(stop.index + stop[0].length, stop.index + stop[0].length + 1))
    )
      continue;
    if (/(?:^|\s)(?:approx|e\.g|i\.e|eg|ie|dr|mr|mrs|no)\.$/i.test(before)) continue;
    found.push({ start: from, end });
    from = stop.index + stop[0].length;
  }
  if (from < text.length) found.push({ start: from, end: text.length });
  return found;
};

/** Steps that are numbered within one paragraph ("1. Chop. 2. Fry."): one stretch each, without the numbers; empty when not so. */
export const numberedInline = (text: string): readonly Stretch[] => {
  const marks: { at: number; after: number }[] = [];
  let next = 1;
  for (const mark of text.matchAll(/(?:^|\s)\(?(\d{1,2})[.)]\s+(?=[\p{L}"'\u201c])/gu)) {
    if (Number(mark[1]) !== next) continue;
    marks.push({ at: mark.index, after: mark.index + mark[0].length });
    next += 1;
  }
  const first = marks[0];
  if (marks.length < 2 || first === undefined || first.at > 3) return [];
  return marks.map((mark, i) => ({ start: mark.after, end: marks[i + 1]?.at ?? text.length }));
};

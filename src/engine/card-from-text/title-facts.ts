import type { Words } from "../model/span.ts";
import { type Line, wordsAt } from "./lines-of-text.ts";
import { isBareMade, readFacts, sizesIn, yieldInside } from "./yield-words.ts";

const titleEnd = /\s*[([,\u2013\u2014-]\s*$/;

type TitleRead = {
  readonly title: Words;
  readonly yields: readonly Words[];
  readonly times: readonly Words[];
};

/** "Lemon curd, about 3 jars". */
const madeIn = (words: string): ReturnType<typeof readFacts> =>
  isBareMade(words) ? { yields: [{ start: 0, end: words.length }], times: [] } : null;

/** "Pea soup (4 people, 50 min)": where all that stands behind a mark is a yield or a time. Null otherwise. */
export const factsBehind = (words: Words): TitleRead | null => {
  for (const mark of words.text.matchAll(/\s*[([|:,]\s*|\s+[-\u2013\u2014\u00b7]\s+|\.\s+/g)) {
    const from = mark.index + mark[0].length;
    const behind = words.text.slice(from).replace(/[)\]]\s*$/, "");
    const bracket = /[([]/.test(mark[0]);
    const facts =
      mark.index < 3 ? null : (readFacts(behind) ?? (bracket ? sizesIn(behind) : null) ?? madeIn(behind));
    if (facts === null) continue;
    const inner = wordsAt(words, { start: from, end: from + behind.length });
    return {
      title: wordsAt(words, { start: 0, end: mark.index }),
      yields: facts.yields.map((s) => wordsAt(inner, s)),
      times: facts.times.map((s) => wordsAt(inner, s)),
    };
  }
  return null;
};

/** The title without the yield and the time that stand behind it. */
export const titleFrom = (words: Words): TitleRead => {
  const behind = factsBehind(words);
  if (behind !== null) return behind;
  const found =
    yieldInside(words.text) ??
    (() => {
      const people =
        /\bfor \w+ (?:people|persons|guests)\b|(?<=\()for \d+(?=\))|\bfor \d+(?=, \p{L})|\bfor (?:\d+|two|three|four|five|six|eight|ten|twelve)$|(?<=\()[1-9]\d?(?=\)$)/iu.exec(
          words.text,
        );
      return people === null ? null : { start: people.index, end: people.index + people[0].length };
    })();
  if (found === null || found.start < 3) return { title: words, yields: [], times: [] };
  const end = words.text.slice(0, found.start).replace(titleEnd, "").trimEnd().length;
  return { title: wordsAt(words, { start: 0, end }), yields: [wordsAt(words, found)], times: [] };
};

/** The words of a title without the marks and the label that stand around it. */
export const unmarkedTitle = (line: Line): Words => {
  const { heading, words } = line;
  const text = words.text;
  const label = /^(?:title|recipe|name|dish)\s*:\s*(?=\S)/i.exec(text);
  if (label !== null) return wordsAt(words, { start: label[0].length, end: text.length });
  if (heading === null || heading.rest !== null)
    return wordsAt(words, { start: 0, end: text.replace(/(?<=\p{L})\.$/u, "").length });
  const before = words.span.start;
  const lead = /^(?:#{1,6}\s*|\*{1,3}|_{1,3})+/.exec(text)?.[0].length ?? 0;
  const tail = /(?:\s*#{1,6}|\*{1,3}|_{1,3}|\s*:|(?<=\p{L})\.)+$/u.exec(text.slice(lead))?.[0].length ?? 0;
  return {
    text: text.slice(lead, text.length - tail),
    span: { start: before + lead, end: before + text.length - tail },
  };
};

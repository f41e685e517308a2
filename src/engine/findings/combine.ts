import { compareText } from "../measure/compare-text.ts";
import { gather } from "../measure/gather.ts";
import type { Finding } from "./finding.ts";

const rank = { stop: 0, warn: 1, note: 2 } as const;

const isSame = (a: Finding, b: Finding): boolean =>
  a === b ||
  (a.source === b.source &&
    (a.path ?? "") === (b.path ?? "") &&
    JSON.stringify(a.facts) === JSON.stringify(b.facts));

/** One list out of many: by source, then place, then severity, then code; the same finding twice is kept once. */
export const combineFindings = (...lists: readonly (readonly Finding[])[]): readonly Finding[] => {
  const seen = new Map<string, Finding[]>();
  return gather(lists, (list) => list)
    .filter((f) => {
      const key = `${f.code}|${f.span.start}|${f.span.end}`;
      const alike = seen.get(key);
      if (alike === undefined) seen.set(key, [f]);
      else if (alike.some((other) => isSame(f, other))) return false;
      else alike.push(f);
      return true;
    })
    .sort(
      (a, b) =>
        compareText(a.source, b.source) ||
        a.span.start - b.span.start ||
        rank[a.severity] - rank[b.severity] ||
        compareText(a.code, b.code),
    );
};

import { compareText } from "../measure/compare-text.ts";
import type { Finding } from "./finding.ts";

const rank = { stop: 0, warn: 1, note: 2 } as const;

/** One list out of many: by source, then place, then severity, then code; the same finding twice is kept once. */
export const combineFindings = (...lists: readonly (readonly Finding[])[]): readonly Finding[] => {
  const seen = new Set<string>();
  return lists
    .flat()
    .filter((f) => {
      const key = `${f.code}|${f.source}|${f.path ?? ""}|${f.span.start}|${f.span.end}|${JSON.stringify(f.facts)}`;
      if (seen.has(key)) return false;
      seen.add(key);
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

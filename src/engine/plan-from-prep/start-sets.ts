import type { Shifts, Starts, Stretch } from "./model.ts";

/** Starts at which every stretch lies inside one of the spans (each may lie in a different one). */
export const startsInside = (stretches: readonly Stretch[], spans: Shifts, all: Starts): Starts => {
  let starts = all;
  for (const stretch of stretches) {
    const own = spans.flatMap((span) => {
      const from = span.from - stretch.offset;
      const to = span.to - stretch.offset - stretch.length;
      return from <= to ? [{ from, to }] : [];
    });
    starts = both(starts, own);
  }
  return starts;
};

/** Starts in both sets. */
export const both = (a: Starts, b: Starts): Starts =>
  a
    .flatMap((x) =>
      b.flatMap((y) => {
        const from = Math.max(x.from, y.from);
        const to = Math.min(x.to, y.to);
        return from <= to ? [{ from, to }] : [];
      }),
    )
    .sort((x, y) => x.from - y.from);

/** Spans joined where they touch or overlap. */
export const joinSpans = (spans: Shifts): Shifts => {
  const joined: { from: number; to: number }[] = [];
  for (const span of [...spans].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const last = joined.at(-1);
    if (last && span.from <= last.to) last.to = Math.max(last.to, span.to);
    else joined.push({ ...span });
  }
  return joined;
};

import { gather } from "../../measure/gather.ts";
import type { Clause } from "./clauses.ts";
import { findMakes } from "./find-products.ts";

/**
 * "Meanwhile, make the sauce: melt the butter …": the first order only announces the others, which say how. It is
 * left out, and what it says of time and of what is made goes to the order behind it.
 */
export const withoutAnnouncement = (clauses: readonly Clause[]): readonly Clause[] => {
  const [first, second, ...others] = clauses;
  if (first?.hit == null || second?.hit == null) return clauses;
  if (first.hit.technique.id !== "make" || first.mentions.length > 0 || first.times.length > 0)
    return clauses;
  if (!/[:,]|\bby$/.test(lastMark(first))) return clauses;
  return [
    { ...second, opens: true, meanwhile: first.meanwhile || second.meanwhile, aim: findMakes(first) },
    ...others,
  ];
};

/** "Add the garlic and give it a minute": so short a time is that of the adding, on the fire. */
export const withoutGiving = (clauses: readonly Clause[]): readonly Clause[] =>
  gather(clauses, (clause, k) => {
    const next = clauses[k + 1];
    const short = (c: Clause): boolean =>
      c.hit?.verb === "give" &&
      c.times.length === 1 &&
      c.times[0]?.kind !== "more" &&
      (c.times[0]?.minutes.likely ?? 9) <= 3;
    const adds = (c: Clause): boolean => c.hit?.technique.id === "add" && c.times.length === 0;
    if (next !== undefined && adds(clause) && short(next)) return [{ ...clause, times: next.times }];
    const before = clauses[k - 1];
    return before !== undefined && adds(before) && short(clause) ? [] : [clause];
  });

const lastMark = (clause: Clause): string => clause.tokens.at(-1)?.text ?? "";

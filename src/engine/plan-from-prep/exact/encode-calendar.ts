import type { LearningSolver, Literal, Unknown } from "../../search/learn/solver.ts";
import type { Model, Node, Starts } from "../model.ts";
import { joinSpans, startsInside } from "../start-sets.ts";
import type { Group, Switches } from "./encode-groups.ts";

/** A cook of a task, and the literal that says so; null when there is no other. */
export type Choice = { readonly index: number; readonly chosen: Literal | null };

/** Hours of a task's cook, and hours in which the kitchen is manned, for heat. */
export const encodeCalendar = (
  solver: LearningSolver,
  on: Switches,
  model: Model,
  node: Node,
  start: Unknown,
  cooks: readonly Choice[],
): void => {
  const all: Starts = [{ from: 0, to: Math.max(0, model.horizon - node.length) }];
  for (const { index, chosen } of cooks) {
    const own = startsInside(node.attended, model.shifts[index] ?? [], all);
    within(solver, on, { kind: "shift", cook: index }, start, own, all, chosen);
  }
  if (node.attended.length > 0 && cooks.length === 0) on.clause({ kind: "open" }, []);
  if (node.hot.length > 0) {
    const open = joinSpans(model.shifts.flat());
    within(solver, on, { kind: "open" }, start, startsInside(node.hot, open, all), all, null);
  }
};

/** The start lies in one of the intervals, while the group is on and the choice is made. */
const within = (
  solver: LearningSolver,
  on: Switches,
  group: Group,
  start: Unknown,
  starts: Starts,
  all: Starts,
  chosen: Literal | null,
): void => {
  const when = chosen === null ? [] : [solver.negate(chosen)];
  const first = starts[0];
  const last = starts.at(-1);
  if (!first || !last) {
    on.clause(group, when);
    return;
  }
  if (first.from > (all[0]?.from ?? 0)) on.clause(group, [...when, solver.atLeast(start, first.from)]);
  if (last.to < (all[0]?.to ?? 0)) {
    on.clause(group, [...when, solver.negate(solver.atLeast(start, last.to + 1))]);
  }
  starts.forEach((interval, i) => {
    const next = starts[i + 1];
    if (!next) return;
    on.clause(group, [
      ...when,
      solver.negate(solver.atLeast(start, interval.to + 1)),
      solver.atLeast(start, next.from),
    ]);
  });
};

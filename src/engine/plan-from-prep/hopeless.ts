import { without } from "./clashing-lags.ts";
import { longestPaths, type Paths } from "./longest-paths.ts";
import type { Arc, Model, Starts } from "./model.ts";

/** Tasks given up at most before the rest is planned as it is. */
const mostGivenUp = 60;

/**
 * Gives up what cannot be done in the shifts there are, however late its course may be: a night in the fridge
 * with nobody there the day before. Of a chain that does not fit, its longest task goes, so that the rest stands.
 */
export const withoutHopeless = (
  given: Model,
  mostSlip: number,
): { readonly model: Model; readonly paths: Paths } => {
  let model = given;
  for (let i = 0; i < mostGivenUp; i++) {
    const out = firstHopeless(model, mostSlip);
    if (out === null) break;
    model = without(model, new Set([out]));
  }
  return { model, paths: longestPaths(model.nodes.length, model.arcs) };
};

/** The task to give up first; null when every task has a start. Earliest starts only rise, so this ends. */
const firstHopeless = (model: Model, mostSlip: number): number | null => {
  const { nodes, arcs } = model;
  const lone = nodes.findIndex(
    (node, n) => n < model.taskCount && node.anyStarts.length === 0 && !given(model, n),
  );
  if (lone >= 0) return lone;
  const earliest = nodes.map((node) => node.anyStarts[0]?.from ?? 0);
  const by: (Arc | null)[] = nodes.map(() => null);
  for (let round = 0; round <= nodes.length; round++) {
    let moved = false;
    for (const arc of arcs) {
      const reach = (earliest[arc.from] ?? 0) + arc.weight;
      if (reach <= (earliest[arc.to] ?? 0)) continue;
      const goal = arc.to - model.taskCount;
      const to = nodes[arc.to]?.anyStarts ?? [];
      const open = goal >= 0 ? reach : earliestIn(to, reach);
      by[arc.to] = arc;
      if (open === null || (goal >= 0 && reach > (model.due[goal] ?? 0) + mostSlip)) {
        return longestOnWay(model, by, arc.to);
      }
      earliest[arc.to] = open;
      moved = true;
    }
    if (!moved) return null;
  }
  return null;
};

/** True for a task that has been given up already. */
const given = (model: Model, node: number): boolean =>
  (model.out[node]?.length ?? 0) + (model.into[node]?.length ?? 0) === 0;

const earliestIn = (starts: Starts, from: number): number | null => {
  const interval = starts.find((s) => s.to >= from);
  return interval ? Math.max(interval.from, from) : null;
};

const longestOnWay = (model: Model, by: readonly (Arc | null)[], last: number): number => {
  let best = last;
  let at = last;
  const seen = new Set<number>();
  const length = (node: number): number => (node < model.taskCount ? (model.nodes[node]?.length ?? 0) : -1);
  while (!seen.has(at)) {
    seen.add(at);
    if (length(at) > length(best)) best = at;
    const arc = by[at];
    if (!arc) break;
    at = arc.from;
  }
  return best < model.taskCount ? best : at;
};

import { longestPaths, type Paths } from "./longest-paths.ts";
import type { Model } from "./model.ts";

/** Tasks whose lags no plan can keep, and the minutes missing. */
export type Ring = { readonly tasks: readonly string[]; readonly excess: number };

/** Rings looked for before the rest is planned as it is. */
const mostRings = 20;

/**
 * Finds rings of lags that cannot all hold whatever the hour, and leaves their tasks without a start,
 * so that the rest can be planned and nothing that is planned breaks a limit.
 */
export const clashingLags = (
  compiled: Model,
): { readonly model: Model; readonly paths: Paths; readonly rings: readonly Ring[] } => {
  const rings: Ring[] = [];
  let model = compiled;
  for (;;) {
    const paths = longestPaths(model.nodes.length, model.arcs);
    if (paths.ring === null || rings.length >= mostRings) return { model, paths, rings };
    const out = new Set(paths.ring.nodes.filter((node) => node < model.taskCount));
    rings.push({
      tasks: [...out].map((node) => model.nodes[node]?.id ?? ""),
      excess: paths.ring.excess,
    });
    model = without(model, out);
  }
};

/** The model with some tasks given up: they have no start, and nothing waits for them. */
export const without = (model: Model, out: ReadonlySet<number>): Model => {
  const stays = (arc: { readonly from: number; readonly to: number }): boolean =>
    !out.has(arc.from) && !out.has(arc.to);
  return {
    ...model,
    nodes: model.nodes.map((node, n) =>
      out.has(n) ? { ...node, starts: node.starts.map(() => []), anyStarts: [] } : node,
    ),
    arcs: model.arcs.filter(stays),
    out: model.out.map((arcs) => arcs.filter(stays)),
    into: model.into.map((arcs) => arcs.filter(stays)),
  };
};

import { longestPaths, type Paths } from "./longest-paths.ts";
import { type Arc, type Model, passed } from "./model.ts";

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

/**
 * The model with some tasks given up: they have no start, and take no time. What follows one of them still follows what it
 * follows, so that nothing is served before it is cooked.
 */
export const without = (model: Model, out: ReadonlySet<number>): Model => {
  let arcs = model.arcs;
  for (const node of out) arcs = passing(arcs, node, model.nodes[node]?.length ?? 0);
  const ends = (side: "from" | "to"): Arc[][] => {
    const lists: Arc[][] = model.nodes.map(() => []);
    for (const arc of arcs) lists[arc[side]]?.push(arc);
    return lists;
  };
  return {
    ...model,
    nodes: model.nodes.map((node, n) =>
      out.has(n) ? { ...node, starts: node.starts.map(() => []), anyStarts: [] } : node,
    ),
    arcs,
    out: ends("from"),
    into: ends("to"),
  };
};

/** The arcs that leave a node alone, and one from each node before it to each node after it. */
const passing = (arcs: readonly Arc[], node: number, length: number): readonly Arc[] => {
  const before = arcs.filter((arc) => arc.to === node && !arc.most);
  const after = arcs.filter((arc) => arc.from === node && !arc.most);
  return [
    ...arcs.filter((arc) => arc.from !== node && arc.to !== node),
    ...before.flatMap((one) =>
      after.flatMap((other): readonly Arc[] =>
        one.from === other.to
          ? []
          : [
              {
                from: one.from,
                to: other.to,
                weight: one.weight + other.weight - length,
                lag: passed,
                most: false,
              },
            ],
      ),
    ),
  ];
};

import { byEdge, type Core, choice, grown } from "./core.ts";
import { clashExplained, explain, explained, raise, startReason } from "./trail.ts";

/** Adds `to` ≥ `from` + weight when the atom holds (whenSide −1: always), seen from both ends. */
export const addDifference = (
  core: Core,
  x: number,
  y: number,
  weight: number,
  whenSide: number,
  whenBound: number,
): void => {
  addEdge(core, x * 2, y * 2, weight, whenSide, whenBound);
  addEdge(core, y * 2 + 1, x * 2 + 1, weight, whenSide, whenBound);
  const e = core.edges.count - 2;
  if (!followEdge(core, e) || !followEdge(core, e + 1)) core.possible = false;
};

const addEdge = (
  core: Core,
  from: number,
  to: number,
  weight: number,
  whenSide: number,
  whenBound: number,
): void => {
  const { edges } = core;
  const e = edges.count++;
  if (e === edges.from.length) {
    const more = e * 2;
    edges.from = grown(edges.from, more);
    edges.to = grown(edges.to, more);
    edges.weight = grown(edges.weight, more);
    edges.whenSide = grown(edges.whenSide, more);
    edges.whenBound = grown(edges.whenBound, more);
    edges.nextWhen = grown(edges.nextWhen, more);
  }
  edges.from[e] = from;
  edges.to[e] = to;
  edges.weight[e] = weight;
  edges.whenSide[e] = whenSide;
  edges.whenBound[e] = whenBound;
  const used = edges.outLength[from] as number;
  if (used === edges.out[from]?.length) edges.out[from] = grown(edges.out[from] as Int32Array, used + 10);
  edges.out[from]?.set([to, weight, whenSide, whenBound, e], used);
  edges.outLength[from] = used + 5;
  if (whenSide >= 0) {
    edges.nextWhen[e] = edges.firstWhen[whenSide] as number;
    edges.firstWhen[whenSide] = e;
  }
};

/** What one edge says now; false at a conflict. */
const followEdge = (core: Core, e: number): boolean => {
  const { edges, val } = core;
  const bound = (val[edges.from[e] as number] as number) + (edges.weight[e] as number);
  const to = edges.to[e] as number;
  const whenSide = edges.whenSide[e] as number;
  const why = core.level === 0 ? choice : (e << 2) | byEdge;
  if (whenSide < 0) return raise(core, to, bound, why);
  const whenBound = edges.whenBound[e] as number;
  if ((val[whenSide] as number) >= whenBound) return raise(core, to, bound, why);
  if (bound <= -(val[to ^ 1] as number)) return true;
  // Following it would break the other side, so its condition does not hold.
  if ((val[whenSide ^ 1] as number) >= 1 - whenBound) return true;
  startReason(core);
  explain(core, edges.from[e] as number, val[edges.from[e] as number] as number);
  explain(core, to ^ 1, 1 - bound);
  return raise(core, whenSide ^ 1, 1 - whenBound, explained(core));
};

/** What follows by differences when a side has risen. */
export const propagateDifferences = (core: Core, side: number, old: number, now: number): boolean => {
  const { edges, val } = core;
  // When the side has risen further since, that later rise will say all of this and more.
  if (now === val[side]) {
    const out = edges.out[side] as Int32Array;
    const length = edges.outLength[side] as number;
    for (let k = 0; k < length; k += 5) {
      const to = out[k] as number;
      const bound = now + (out[k + 1] as number);
      if (bound <= (val[to] as number)) continue;
      const whenSide = out[k + 2] as number;
      // Neither settled as true, nor about to be settled as false.
      if (
        whenSide >= 0 &&
        (val[whenSide] as number) < (out[k + 3] as number) &&
        (bound <= -(val[to ^ 1] as number) || (val[whenSide ^ 1] as number) >= 1 - (out[k + 3] as number))
      )
        continue;
      if (!followEdge(core, out[k + 4] as number)) return false;
    }
  }
  for (let e = edges.firstWhen[side] as number; e >= 0; e = edges.nextWhen[e] as number) {
    const needed = edges.whenBound[e] as number;
    if (needed > old && needed <= now && !followEdge(core, e)) return false;
  }
  return true;
};

/** A difference of an unknown to itself: a condition that holds or not. */
export const refuse = (core: Core, whenSide: number, whenBound: number): void => {
  if (whenSide < 0) core.possible = false;
  else {
    startReason(core);
    if (!raise(core, whenSide ^ 1, 1 - whenBound, choice)) {
      clashExplained(core);
      core.possible = false;
    }
  }
};

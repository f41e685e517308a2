import type { Arc } from "../model.ts";

/**
 * A ring of arcs whose least minutes cannot fit, in order; null when there is none
 * (Bellman and Ford's longest paths; from memory). Each of its arcs is needed for the clash.
 */
export const clashingRing = (count: number, arcs: readonly Arc[]): readonly Arc[] | null => {
  const far = new Float64Array(count);
  const by: (Arc | null)[] = new Array<Arc | null>(count).fill(null);
  let touched = -1;
  for (let round = 0; round <= count; round++) {
    touched = -1;
    for (const arc of arcs) {
      const reach = (far[arc.from] as number) + arc.weight;
      if (reach <= (far[arc.to] as number)) continue;
      far[arc.to] = reach;
      by[arc.to] = arc;
      touched = arc.to;
    }
    if (touched < 0) return null;
  }
  let at = touched;
  for (let i = 0; i < count; i++) at = by[at]?.from ?? at;
  const ring: Arc[] = [];
  let walk = at;
  do {
    const arc = by[walk];
    if (!arc) return null;
    ring.push(arc);
    walk = arc.from;
  } while (walk !== at && ring.length <= count);
  return ring.reverse();
};

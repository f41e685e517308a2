/** From one point to another, at least so much later. */
type WeightedArc = { readonly from: number; readonly to: number; readonly weight: number };

/**
 * A ring of arcs whose weights sum to more than nothing, in order, so that no times can keep them all; null when there
 * is none (Bellman and Ford's longest paths; from memory). Each of its arcs is needed for the clash.
 * Points are numbered from 0 to `count` - 1.
 */
export const ringAboveNothing = <A extends WeightedArc>(
  count: number,
  arcs: readonly A[],
): readonly A[] | null => {
  const far = new Float64Array(count);
  const by: (A | null)[] = new Array<A | null>(count).fill(null);
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
  const ring: A[] = [];
  let walk = at;
  do {
    const arc = by[walk];
    if (!arc) return null;
    ring.push(arc);
    walk = arc.from;
  } while (walk !== at && ring.length <= count);
  return ring.reverse();
};

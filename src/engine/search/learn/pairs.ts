import type { Core } from "./core.ts";
import { addUnknown } from "./core.ts";
import { addDifference } from "./differences.ts";
import type { Use } from "./use.ts";

/** Pairs of uses that never overlap; each gets one yes-or-no for which comes first. */
export type Pairs = {
  readonly gather: (uses: readonly Use[], capacity: number) => void;
  /** Posts what was gathered, save for pairs whose order other differences settle. */
  readonly post: () => void;
};

const mostPairs = 12_000;
const mostForPaths = 300;

export const pairsFor = (core: Core): Pairs => {
  const known = new Set<string>();
  let open: (readonly [x: number, y: number, xFirst: number, yFirst: number])[] = [];

  const gather = (uses: readonly Use[], capacity: number): void => {
    uses.forEach((a, i) => {
      for (const b of uses.slice(i + 1)) {
        if (a.amount + b.amount <= capacity || a.x === b.x || a.presentSide >= 0 || b.presentSide >= 0)
          continue;
        const [p, q] = a.x < b.x ? [a, b] : [b, a];
        const first = p.offset + p.length - q.offset;
        const second = q.offset + q.length - p.offset;
        const key = `${p.x} ${q.x} ${first} ${second}`;
        if (known.has(key) || known.size >= mostPairs) continue;
        known.add(key);
        open.push([p.x, q.x, first, second]);
      }
    });
  };

  const post = (): void => {
    if (open.length === 0) return;
    const far = longestPaths(core, new Set(open.flatMap((pair) => pair.slice(0, 2))));
    for (const [x, y, xFirst, yFirst] of open) {
      if (far(x, y) >= xFirst || far(y, x) >= yFirst) continue;
      // Some way round is already longer than the other order allows: the order is settled, but must be said.
      if (far(x, y) > -yFirst) addDifference(core, x, y, xFirst, -1, 0);
      else if (far(y, x) > -xFirst) addDifference(core, y, x, yFirst, -1, 0);
      else {
        const order = addUnknown(core, 0, 1);
        addDifference(core, x, y, xFirst, order * 2, 1);
        addDifference(core, y, x, yFirst, order * 2 + 1, 0);
      }
    }
    open = [];
  };

  return { gather, post };
};

/** Longest ways over the differences that always hold, between a few unknowns and through all of them. */
const longestPaths = (core: Core, members: ReadonlySet<number>): ((x: number, y: number) => number) => {
  const { edges } = core;
  const named = new Set(members);
  for (let e = 0; e < edges.count; e += 2)
    if ((edges.whenSide[e] as number) < 0) {
      named.add((edges.from[e] as number) >> 1);
      named.add((edges.to[e] as number) >> 1);
    }
  if (named.size > mostForPaths) return () => Number.NEGATIVE_INFINITY;
  const place = new Map([...named].map((x, i) => [x, i]));
  const n = named.size;
  const far = new Float64Array(n * n).fill(Number.NEGATIVE_INFINITY);
  for (let i = 0; i < n; i++) far[i * n + i] = 0;
  for (let e = 0; e < edges.count; e += 2) {
    if ((edges.whenSide[e] as number) >= 0) continue;
    // The even edge of the two stands for the unknowns themselves.
    const k =
      (place.get((edges.from[e] as number) >> 1) ?? 0) * n + (place.get((edges.to[e] as number) >> 1) ?? 0);
    far[k] = Math.max(far[k] as number, edges.weight[e] as number);
  }
  for (let k = 0; k < n; k++)
    for (let i = 0; i < n; i++) {
      const first = far[i * n + k] as number;
      if (first === Number.NEGATIVE_INFINITY) continue;
      for (let j = 0; j < n; j++) {
        const way = first + (far[k * n + j] as number);
        if (way > (far[i * n + j] as number)) far[i * n + j] = way;
      }
    }
  return (x, y) => far[(place.get(x) ?? 0) * n + (place.get(y) ?? 0)] as number;
};

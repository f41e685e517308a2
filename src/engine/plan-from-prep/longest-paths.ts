import type { Arc } from "./model.ts";

/** No path. Low enough that sums of two stay below every real path. */
export const noPath = -1_000_000;

/** Longest paths between all nodes that hang together, and the rings of lags that no plan can satisfy. */
export type Paths = {
  /** Least minutes from the start of `from` to the start of `to`; `noPath` when nothing binds them so. */
  readonly least: (from: number, to: number) => number;
  /** Nodes that lags bind to this one, itself included. */
  readonly kin: (node: number) => readonly number[];
  /** One ring of arcs whose least minutes cannot fit their most, and the minutes missing; null when all is well. */
  readonly ring: { readonly nodes: readonly number[]; readonly excess: number } | null;
};

/** Floyd and Warshall's longest paths, one connected group at a time (Floyd, Algorithm 97, CACM 5(6), 1962; from memory). */
export const longestPaths = (count: number, arcs: readonly Arc[]): Paths => {
  const groups = groupsOf(count, arcs);
  const place = new Int32Array(count);
  const groupOf: number[] = new Array<number>(count).fill(0);
  const tables: Int32Array[] = [];
  let ring: Paths["ring"] = null;
  groups.forEach((group, g) => {
    group.forEach((node, i) => {
      place[node] = i;
      groupOf[node] = g;
    });
  });
  const arcsOf: Arc[][] = groups.map(() => []);
  for (const arc of arcs) arcsOf[groupOf[arc.from] ?? 0]?.push(arc);

  groups.forEach((group, g) => {
    const k = group.length;
    const table = new Int32Array(k * k).fill(noPath);
    const via = new Int32Array(k * k).fill(-1);
    for (let i = 0; i < k; i++) table[i * k + i] = 0;
    for (const arc of arcsOf[g] ?? []) {
      const cell = (place[arc.from] ?? 0) * k + (place[arc.to] ?? 0);
      if (arc.weight > (table[cell] ?? 0)) table[cell] = arc.weight;
    }
    for (let m = 0; m < k; m++) {
      for (let i = 0; i < k; i++) {
        const head = table[i * k + m] ?? noPath;
        if (head <= noPath / 2) continue;
        for (let j = 0; j < k; j++) {
          const tail = table[m * k + j] ?? noPath;
          if (tail <= noPath / 2) continue;
          if (head + tail > (table[i * k + j] ?? noPath)) {
            table[i * k + j] = head + tail;
            via[i * k + j] = m;
          }
        }
      }
      for (let i = 0; i < k && ring === null; i++) {
        const excess = table[i * k + i] ?? 0;
        if (excess > 0) {
          const walked = [i, ...between(via, k, i, i)];
          ring = { nodes: walked.map((p) => group[p] ?? 0), excess };
        }
      }
      if (ring !== null) break;
    }
    tables.push(table);
  });

  return {
    ring,
    kin: (node) => groups[groupOf[node] ?? 0] ?? [],
    least: (from, to) => {
      const g = groupOf[from];
      if (g === undefined || g !== groupOf[to]) return noPath;
      const k = groups[g]?.length ?? 0;
      return tables[g]?.[(place[from] ?? 0) * k + (place[to] ?? 0)] ?? noPath;
    },
  };
};

/** Nodes strictly between two on the path found. */
const between = (via: Int32Array, k: number, from: number, to: number): number[] => {
  const mid = via[from * k + to] ?? -1;
  if (mid < 0 || mid === from || mid === to) return [];
  return [...between(via, k, from, mid), mid, ...between(via, k, mid, to)];
};

const groupsOf = (count: number, arcs: readonly Arc[]): number[][] => {
  const parent = Array.from({ length: count }, (_, i) => i);
  const root = (node: number): number => {
    let at = node;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at] ?? at] ?? at;
      at = parent[at] ?? at;
    }
    return at;
  };
  for (const arc of arcs) parent[root(arc.from)] = root(arc.to);
  const groups = new Map<number, number[]>();
  for (let i = 0; i < count; i++) {
    const r = root(i);
    groups.set(r, [...(groups.get(r) ?? []), i]);
  }
  return [...groups.values()];
};

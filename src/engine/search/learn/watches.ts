import { grown, type Watches } from "./core.ts";

/** Watches the atom (s, b) for a clause; the spare atom, while it holds, spares the look at the clause. */
export const addWatch = (
  watches: Watches,
  s: number,
  b: number,
  clause: number,
  spareSide: number,
  spareBound: number,
): void => {
  const id = listAt(watches, s ^ 1, 1 - b);
  let list = watches.lists[id] as Int32Array;
  const n = watches.lengths[id] as number;
  if (n + 3 > list.length) {
    list = grown(list, n + 3);
    watches.lists[id] = list;
  }
  list[n] = clause;
  list[n + 1] = spareSide;
  list[n + 2] = spareBound;
  watches.lengths[id] = n + 3;
};

/** The list of a side at a value; made when there is none. */
const listAt = (watches: Watches, side: number, value: number): number => {
  const count = watches.count[side] as number;
  let at = watches.at[side] as Int32Array;
  let list = watches.list[side] as Int32Array;
  const k = firstAbove(at, count, value - 1);
  if (k < count && at[k] === value) return list[k] as number;
  if (count === at.length) {
    at = grown(at, count + 1);
    list = grown(list, count + 1);
    watches.at[side] = at;
    watches.list[side] = list;
  }
  at.copyWithin(k + 1, k, count);
  list.copyWithin(k + 1, k, count);
  const id = watches.used++;
  if (id === watches.lists.length) {
    watches.lists.push(new Int32Array(6));
    if (id === watches.lengths.length) watches.lengths = grown(watches.lengths, id + 1);
  }
  watches.lengths[id] = 0;
  at[k] = value;
  list[k] = id;
  watches.count[side] = count + 1;
  return id;
};

/** The first of the rising values that is above one. */
export const firstAbove = (at: Int32Array, count: number, value: number): number => {
  let low = 0;
  let high = count;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((at[middle] as number) > value) high = middle;
    else low = middle + 1;
  }
  return low;
};

/** Forgets every watch; the lists are used again. */
export const clearWatches = (watches: Watches): void => {
  watches.count.fill(0);
  watches.used = 0;
};

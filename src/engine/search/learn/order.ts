import type { Core } from "./core.ts";

/**
 * Atoms [x ≥ v] by number, and how lively each was in recent conflicts (VSIDS, Moskewicz et al. 2001). The same
 * numbers are the literals of the solver's face: 2k for the atom k, 2k + 1 for its opposite.
 */
export type Order = {
  /** Number of the atom x ≥ v; made when new. */
  readonly atom: (x: number, v: number) => number;
  readonly unknownOf: (atom: number) => number;
  readonly valueOf: (atom: number) => number;
  readonly bump: (side: number, bound: number) => void;
  readonly decay: () => void;
  /** The liveliest atom that is open, or −1. */
  readonly next: () => number;
  /** Puts back what was passed over above a level. */
  readonly undone: (level: number) => void;
};

const mostAtoms = 4_000_000;

export const orderFor = (core: Core, seed: number): Order => {
  let xs = new Int32Array(1024);
  let vs = new Int32Array(1024);
  let activity = new Float64Array(1024);
  let heapAt = new Int32Array(1024);
  let heap = new Int32Array(1024);
  let heapLength = 0;
  let count = 0;
  let table = new Int32Array(4096).fill(-1);
  let passed = new Int32Array(1024);
  let passedLevel = new Int32Array(1024);
  let passedLength = 0;
  let step = 1;
  let chance = (seed | 0) ^ 0x2545f491;

  const slotOf = (x: number, v: number): number => {
    const mask = table.length - 1;
    let h = Math.imul(x, 0x9e3779b1) ^ Math.imul(v, 0x85ebca6b);
    h ^= h >>> 15;
    let slot = h & mask;
    for (;;) {
      const k = table[slot] as number;
      if (k < 0 || (xs[k] === x && vs[k] === v)) return slot;
      slot = (slot + 1) & mask;
    }
  };

  const more = (array: Int32Array): Int32Array<ArrayBuffer> => {
    const longer = new Int32Array(array.length * 2);
    longer.set(array);
    return longer;
  };

  const rise = (start: number): void => {
    let i = start;
    const k = heap[i] as number;
    const a = activity[k] as number;
    while (i > 0) {
      const up = (i - 1) >> 1;
      const other = heap[up] as number;
      if ((activity[other] as number) >= a) break;
      heap[i] = other;
      heapAt[other] = i;
      i = up;
    }
    heap[i] = k;
    heapAt[k] = i;
  };

  const sink = (start: number): void => {
    let i = start;
    const k = heap[i] as number;
    const a = activity[k] as number;
    for (;;) {
      let down = i * 2 + 1;
      if (down >= heapLength) break;
      if (
        down + 1 < heapLength &&
        (activity[heap[down + 1] as number] as number) > (activity[heap[down] as number] as number)
      )
        down++;
      const other = heap[down] as number;
      if ((activity[other] as number) <= a) break;
      heap[i] = other;
      heapAt[other] = i;
      i = down;
    }
    heap[i] = k;
    heapAt[k] = i;
  };

  const insert = (k: number): void => {
    if ((heapAt[k] as number) >= 0) return;
    heap[heapLength] = k;
    heapAt[k] = heapLength;
    rise(heapLength++);
  };

  const atom = (x: number, v: number): number => {
    const slot = slotOf(x, v);
    const known = table[slot] as number;
    if (known >= 0) return known;
    const k = count++;
    if (k === xs.length) {
      xs = more(xs);
      vs = more(vs);
      heapAt = more(heapAt);
      heap = more(heap);
      const longer = new Float64Array(activity.length * 2);
      longer.set(activity);
      activity = longer;
    }
    xs[k] = x;
    vs[k] = v;
    chance = (Math.imul(chance, 1664525) + 1013904223) | 0;
    activity[k] = ((chance >>> 8) / 0x1000000) * 1e-6 * step;
    heapAt[k] = -1;
    table[slot] = k;
    if (count * 2 > table.length) {
      table = new Int32Array(table.length * 2).fill(-1);
      for (let j = 0; j < count; j++) table[slotOf(xs[j] as number, vs[j] as number)] = j;
    }
    insert(k);
    return k;
  };

  return {
    atom,
    unknownOf: (k) => xs[k] as number,
    valueOf: (k) => vs[k] as number,
    bump: (side, bound) => {
      if (count >= mostAtoms) return;
      const k = atom(side >> 1, (side & 1) === 0 ? bound : 1 - bound);
      const a = (activity[k] as number) + step;
      activity[k] = a;
      if (a > 1e100) {
        for (let j = 0; j < count; j++) activity[j] = (activity[j] as number) * 1e-100;
        step *= 1e-100;
      }
      if ((heapAt[k] as number) >= 0) rise(heapAt[k] as number);
    },
    decay: () => {
      step /= 0.95;
    },
    next: () => {
      while (heapLength > 0) {
        const k = heap[0] as number;
        const x = xs[k] as number;
        const v = vs[k] as number;
        heapLength--;
        heapAt[k] = -1;
        if (heapLength > 0) {
          heap[0] = heap[heapLength] as number;
          heapAt[heap[0] as number] = 0;
          sink(0);
        }
        if (passedLength === passed.length) {
          passed = more(passed);
          passedLevel = more(passedLevel);
        }
        passed[passedLength] = k;
        const open = (core.val[x * 2] as number) < v && -(core.val[x * 2 + 1] as number) >= v;
        // An open one is about to be chosen, one level up.
        passedLevel[passedLength++] = core.level + (open ? 1 : 0);
        if (open) return k;
      }
      return -1;
    },
    undone: (level) => {
      while (passedLength > 0 && (passedLevel[passedLength - 1] as number) > level)
        insert(passed[--passedLength] as number);
    },
  };
};

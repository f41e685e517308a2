import type { Layout } from "./layout.ts";

/** A profile of free units over time that activities are put on one after the other, each as early as it fits. */
export type Profile = {
  /** Takes everything off. */
  readonly clear: () => void;
  /** Puts an activity down at the first moment from `earliest` on at which it fits, and gives that moment. */
  readonly place: (activity: number, earliest: number) => number;
};

/**
 * The free units of several resources share one 32-bit word, each in a field with a guard bit above it:
 * a demand fits when no guard bit is borrowed from. A project whose fields need more words gets more of them.
 */
export const profileFor = (layout: Layout): Profile => {
  const packed = pack(layout);
  return packed.words === 1 ? oneWord(layout, packed) : manyWords(layout, packed);
};

type Packed = {
  readonly words: number;
  readonly full: Int32Array;
  readonly guard: Int32Array;
  /** demand[activity * words + word]. */
  readonly demand: Int32Array;
};

const pack = ({ count, resources, capacities, demands }: Layout): Packed => {
  const word = new Int32Array(resources);
  const shift = new Int32Array(resources);
  let words = 1;
  let used = 0;
  for (let r = 0; r < resources; r++) {
    const bits = 33 - Math.clz32(capacities[r] as number);
    if (used + bits > 32) {
      words += 1;
      used = 0;
    }
    word[r] = words - 1;
    shift[r] = used;
    used += bits;
  }
  const full = new Int32Array(words);
  const guard = new Int32Array(words);
  const demand = new Int32Array(count * words);
  for (let r = 0; r < resources; r++) {
    const w = word[r] as number;
    const s = shift[r] as number;
    const top = 1 << (s + 32 - Math.clz32(capacities[r] as number));
    guard[w] = (guard[w] as number) | top;
    full[w] = (full[w] as number) | top | ((capacities[r] as number) << s);
    for (let a = 0; a < count; a++) {
      const at = a * words + w;
      demand[at] = (demand[at] as number) | ((demands[a * resources + r] as number) << s);
    }
  }
  return { words, full, guard, demand };
};

const oneWord = ({ lengths, horizon }: Layout, packed: Packed): Profile => {
  const full = packed.full[0] as number;
  const guard = packed.guard[0] as number;
  const demand = packed.demand;
  const free = new Int32Array(horizon * 2 + 2).fill(full);
  let last = 0;
  return {
    clear: () => {
      free.fill(full, 0, last);
      last = 0;
    },
    place: (activity, earliest) => {
      const length = lengths[activity] as number;
      const need = demand[activity] as number;
      if (length === 0 || need === 0) return earliest;
      let start = earliest;
      // From the end of the window back to what is known to fit: a clash moves the window past itself at once.
      let known = start - 1;
      let at = start + length - 1;
      while (at > known) {
        if ((((free[at] as number) - need) & guard) === guard) at--;
        else {
          known = start + length - 1;
          start = at + 1;
          at = start + length - 1;
        }
      }
      const end = start + length;
      for (let t = start; t < end; t++) free[t] = (free[t] as number) - need;
      if (end > last) last = end;
      return start;
    },
  };
};

const manyWords = ({ lengths, horizon }: Layout, { words, full, guard, demand }: Packed): Profile => {
  const free = new Int32Array((horizon * 2 + 2) * words);
  let last = horizon * 2 + 2;
  const clear = (): void => {
    for (let t = 0; t < last; t++) for (let w = 0; w < words; w++) free[t * words + w] = full[w] as number;
    last = 0;
  };
  clear();
  const fits = (activity: number, t: number): boolean => {
    for (let w = 0; w < words; w++) {
      const g = guard[w] as number;
      if ((((free[t * words + w] as number) - (demand[activity * words + w] as number)) & g) !== g)
        return false;
    }
    return true;
  };
  return {
    clear,
    place: (activity, earliest) => {
      const length = lengths[activity] as number;
      if (length === 0) return earliest;
      let start = earliest;
      let known = start - 1;
      let at = start + length - 1;
      while (at > known) {
        if (fits(activity, at)) at--;
        else {
          known = start + length - 1;
          start = at + 1;
          at = start + length - 1;
        }
      }
      const end = start + length;
      for (let t = start; t < end; t++)
        for (let w = 0; w < words; w++) {
          const i = t * words + w;
          free[i] = (free[i] as number) - (demand[activity * words + w] as number);
        }
      if (end > last) last = end;
      return start;
    },
  };
};

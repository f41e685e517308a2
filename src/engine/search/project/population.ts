import type { Chance } from "../chance.ts";
import type { Builder } from "./build-schedule.ts";
import type { CriticalPath } from "./critical-path.ts";
import type { Arcs, Layout } from "./layout.ts";

/** Lists kept at once: more where there are more ways to go. Tried on projects of 30, 60 and 120 activities. */
const sizeFor = (count: number): number => (count > 90 ? 300 : count > 45 ? 100 : 40);
/** Chance that two neighbours of a new list change places. */
const mutation = 0.05;
/** New lists without a gain, for each list kept, after which all begin anew. */
const patience = 30;
/** The part of the first parent that is kept as it stands, at the least and at the most. */
const leastKept = 0.25;
const mostKept = 0.75;

/** A pool of activity lists that breeds; it goes on where it stopped. */
export type Population = {
  /**
   * Breeds until so many schedules have been built, or `found` says false. It is handed each schedule that is built and
   * its makespan; the array is used again.
   */
  readonly breed: (schedules: number, found: (starts: Int32Array, makespan: number) => boolean) => void;
};

/**
 * A genetic search over activity lists in the manner of Hartmann (1998) and Valls, Ballestín and Quintanilla (2008): two-point
 * crossover, every child justified to both sides (forward-backward improvement), the worst replaced, twins kept out, and a
 * fresh start when nothing is gained any more. The first lists are sampled with a bias to late tails (Kolisch 1996).
 */
export const populationOf = (
  layout: Layout,
  path: CriticalPath,
  builder: Builder,
  chance: Chance,
): Population => {
  const { count } = layout;
  const size = sizeFor(count);
  const joined = joinedPairs(count, layout.forward);
  const sample = samplerOf(count, layout.backward, path, chance);
  const lists = Array.from({ length: size }, () => new Int32Array(count));
  const spans = new Int32Array(size);
  const marks = new Float64Array(size);
  const list = new Int32Array(count);
  const other = new Int32Array(count);
  const starts = new Int32Array(count);
  const mirrored = new Int32Array(count);
  const group = new Uint8Array(count);
  let filled = 0;
  let idle = 0;

  /** Justifies `list`, which names the last activity first, to the right and then to the left; it is rewritten. */
  const justify = (): number => {
    builder.backward(list, mirrored);
    builder.byFallingEnd(mirrored, other, true);
    const span = builder.forward(other, starts);
    builder.byFallingEnd(starts, list, false);
    return span;
  };

  /** Equal schedules have equal marks. */
  const markOf = (): number => {
    let sum = 0;
    for (let a = 0; a < count; a++) sum += (starts[a] as number) * (a + 1);
    return sum;
  };

  const cross = (father: Int32Array, mother: Int32Array): void => {
    const share = leastKept + chance.share() * (mostKept - leastKept);
    const kept = Math.max(1, Math.floor(count * share));
    const from = chance.below(count - kept + 1);
    const to = from + kept;
    for (let i = 0; i < count; i++) group[father[i] as number] = i < from ? 0 : i < to ? 1 : 2;
    let front = 0;
    let back = to;
    for (let i = 0; i < count; i++) {
      const a = mother[i] as number;
      if (group[a] === 0) list[front++] = a;
      else if (group[a] === 2) list[back++] = a;
    }
    for (let i = from; i < to; i++) list[i] = father[i] as number;
  };

  const mutate = (): void => {
    for (let i = 0; i + 1 < count; i++) {
      if (chance.share() >= mutation) continue;
      const a = list[i] as number;
      const b = list[i + 1] as number;
      if (joined[a * count + b]) continue;
      list[i] = b;
      list[i + 1] = a;
    }
  };

  const better = (): number => {
    const a = chance.below(size);
    const b = chance.below(size);
    return (spans[b] as number) < (spans[a] as number) ? b : a;
  };

  const keep = (place: number, span: number, mark: number): void => {
    (lists[place] as Int32Array).set(list);
    spans[place] = span;
    marks[place] = mark;
  };

  const replaceWorst = (span: number): void => {
    const mark = markOf();
    let worst = 0;
    for (let p = 0; p < size; p++) {
      if (spans[p] === span && marks[p] === mark) return;
      if ((spans[p] as number) > (spans[worst] as number)) worst = p;
    }
    if (span > (spans[worst] as number)) return;
    if (span < (spans[worst] as number)) idle = 0;
    keep(worst, span, mark);
  };

  return {
    breed: (schedules, found) => {
      const until = builder.built() + schedules;
      let go = true;
      while (go && builder.built() < until) {
        if (filled < size) {
          sample(list);
          const span = justify();
          keep(filled, span, markOf());
          filled += 1;
          go = found(starts, span);
          continue;
        }
        const father = better();
        let mother = better();
        if (mother === father) mother = (father + 1 + chance.below(size - 1)) % size;
        cross(lists[father] as Int32Array, lists[mother] as Int32Array);
        mutate();
        const span = justify();
        idle += 1;
        go = found(starts, span);
        replaceWorst(span);
        if (idle > patience * size) {
          filled = 0;
          idle = 0;
        }
      }
    },
  };
};

/** joined[a * count + b]: a waits for b directly. */
const joinedPairs = (count: number, { first, from }: Arcs): Uint8Array => {
  const joined = new Uint8Array(count * count);
  for (let a = 0; a < count; a++)
    for (let k = first[a] as number; k < (first[a + 1] as number); k++)
      joined[a * count + (from[k] as number)] = 1;
  return joined;
};

/** Samples a list from the last activity to the first: what ends a long way is more likely to come first. */
const samplerOf = (
  count: number,
  { first, from }: Arcs,
  path: CriticalPath,
  chance: Chance,
): ((list: Int32Array) => void) => {
  const waitsAtFirst = new Int32Array(count);
  const after: number[][] = Array.from({ length: count }, () => []);
  for (let a = 0; a < count; a++)
    for (let k = first[a] as number; k < (first[a + 1] as number); k++) {
      waitsAtFirst[a] = (waitsAtFirst[a] as number) + 1;
      after[from[k] as number]?.push(a);
    }
  const waits = new Int32Array(count);
  const ready = new Int32Array(count);
  return (list) => {
    waits.set(waitsAtFirst);
    let open = 0;
    for (let a = 0; a < count; a++) if (waits[a] === 0) ready[open++] = a;
    for (let i = 0; i < count; i++) {
      let most = 0;
      for (let r = 0; r < open; r++) most = Math.max(most, path.heads[ready[r] as number] as number);
      const weight = (r: number): number => 1 / (1 + most - (path.heads[ready[r] as number] as number));
      let total = 0;
      for (let r = 0; r < open; r++) total += weight(r);
      let drawn = chance.share() * total;
      let pick = 0;
      for (; pick < open - 1; pick++) {
        drawn -= weight(pick);
        if (drawn < 0) break;
      }
      const a = ready[pick] as number;
      open -= 1;
      ready[pick] = ready[open] as number;
      list[i] = a;
      for (const b of after[a] ?? []) {
        waits[b] = (waits[b] as number) - 1;
        if (waits[b] === 0) ready[open++] = b;
      }
    }
  };
};

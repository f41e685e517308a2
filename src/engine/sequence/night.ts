import type { Prep } from "../model/prep.ts";
import { chanceFrom } from "../search/chance.ts";
import type { Network } from "./network.ts";
import { drawLength, drawPace } from "./spread.ts";

/** One night, by stage. */
export type Night = {
  readonly start: Float64Array;
  readonly length: Float64Array;
  /** The stage whose end or start made it wait; -1: none. */
  readonly heldBy: Int32Array;
  /** Place in `prep.crew` of whoever does it; -1: nobody is needed. */
  readonly cook: Int32Array;
};

/** Room for a night of so many stages. */
export const emptyNight = (stages: number): Night => ({
  start: new Float64Array(stages),
  length: new Float64Array(stages),
  heldBy: new Int32Array(stages),
  cook: new Int32Array(stages),
});

/** What a night is run by, laid out for speed. */
export type Evenings = {
  readonly count: number;
  /** What waits for stage k: at first[k] to first[k + 1] - 1. */
  readonly first: Int32Array;
  readonly to: Int32Array;
  readonly ofEnd: Uint8Array;
  readonly lag: Float64Array;
  /** 1 when it waits with the end of its whole task. */
  readonly untilEnd: Uint8Array;
  /** How many stages each waits for. */
  readonly waitsFor: Int32Array;
  /** Units of a cook that a stage takes, and the cook of the plan; 0 and -1 when nobody is needed. */
  readonly units: Int32Array;
  readonly planned: Int32Array;
  /** Minutes for which hands are bound from a stage on without a break, as planned. */
  readonly bound: Float64Array;
  /** Cooks who know how to do it; bit by bit. */
  readonly knows: Int32Array;
  /** The stage before it in its task, and the one after; -1: none. */
  readonly before: Int32Array;
  readonly after: Int32Array;
  /** The first stage of its task, and how many minutes after that it begins, as planned. */
  readonly head: Int32Array;
  readonly offset: Float64Array;
  /** Each cook's own stages, in the order of the plan. */
  readonly own: readonly Int32Array[];
  readonly capacity: number;
  readonly shifts: readonly (readonly { readonly from: number; readonly to: number }[])[];
};

/** Lays out a network. Who waits for whose hands is left out: on the night that is settled as it comes. */
export const eveningsOf = (prep: Prep, network: Network): Evenings => {
  const { stages, into, span } = network;
  const count = stages.length;
  const out: {
    readonly to: number;
    readonly ofEnd: boolean;
    readonly lag: number;
    readonly untilEnd: boolean;
  }[][] = stages.map(() => []);
  const waitsFor = new Int32Array(count);
  into.forEach((waits, k) => {
    for (const wait of waits) {
      if (wait.hands) continue;
      out[wait.from]?.push(wait);
      waitsFor[k] = (waitsFor[k] as number) + 1;
    }
  });
  const all = out.flat();
  const first = new Int32Array(count + 1);
  out.forEach((waits, k) => {
    first[k + 1] = (first[k] as number) + waits.length;
  });
  const before = new Int32Array(count).fill(-1);
  const after = new Int32Array(count).fill(-1);
  for (const { first: from, last } of span.values()) {
    let known = -1;
    for (let k = from; k <= last; k += 1) {
      if (stages[k]?.task !== stages[from]?.task) continue;
      before[k] = known;
      if (known >= 0) after[known] = k;
      known = k;
    }
  }
  const head = Int32Array.from(stages, ({ task }) => span.get(task.id)?.first ?? 0);
  const index = new Map(prep.crew.map((cook, c) => [cook.name, c]));
  const { hands, mind, capacity } = prep.attention;
  const everyone = prep.crew.reduce((bits, _, c) => bits | (1 << c), 0);
  return {
    count,
    first,
    to: Int32Array.from(all, (wait) => wait.to),
    ofEnd: Uint8Array.from(all, (wait) => (wait.ofEnd ? 1 : 0)),
    lag: Float64Array.from(all, (wait) => wait.lag),
    untilEnd: Uint8Array.from(all, (wait) => (wait.untilEnd ? 1 : 0)),
    waitsFor,
    units: Int32Array.from(stages, ({ segment: { attention }, cook }) =>
      cook === null || attention === "none" ? 0 : attention === "hands" ? hands : mind,
    ),
    planned: Int32Array.from(stages, ({ segment, cook }) =>
      cook === null || segment.attention === "none" ? -1 : (index.get(cook) ?? -1),
    ),
    bound: Float64Array.from(stages, ({ task, place }) => {
      let to = place;
      while (to < task.segments.length && task.segments[to]?.attention !== "none") to += 1;
      const minutes = task.segments
        .slice(place, to)
        .reduce((sum, { minutes: m }) => sum + Math.ceil(m.likely), 0);
      return minutes;
    }),
    knows: Int32Array.from(stages, ({ task }) =>
      task.cooks === undefined
        ? everyone
        : task.cooks.reduce((bits, name) => bits | (index.has(name) ? 1 << (index.get(name) ?? 0) : 0), 0),
    ),
    before,
    after,
    head,
    offset: Float64Array.from(
      stages,
      ({ planned }, k) => planned - (stages[head[k] as number]?.planned ?? planned),
    ),
    own: prep.crew.map(({ name }) =>
      Int32Array.from(
        stages.flatMap(({ cook, segment }, k) => (cook === name && segment.attention !== "none" ? [k] : [])),
      ),
    ),
    capacity,
    shifts: prep.crew.map((cook) => cook.shifts),
  };
};

/**
 * Draws how long everything takes on one night. The same seed and run draw the same lengths; each stage has a stream of
 * its own, so that plans can be compared draw by draw. A length goes with the cook of the plan, whoever does it then.
 */
export const drawLengths = (
  { stages }: Network,
  cooks: readonly string[],
  seed: number,
  run: number,
  length: Float64Array,
): void => {
  const ofTonight = Math.imul(seed, 0x2545f491) + Math.imul(run + 1, 0x5bd1e995);
  const paces = chanceFrom(ofTonight);
  const pace = new Map(cooks.map((cook) => [cook, drawPace(paces)]));
  for (const [k, { segment, cook, task, place }] of stages.entries()) {
    const chance = chanceFrom(ofTonight ^ streamOf(task.id, place));
    length[k] = drawLength(segment, cook === null ? 1 : (pace.get(cook) ?? 1), chance);
  }
};

const close = 1e-9;

/**
 * Runs one night whose lengths are drawn. The policy: nothing begins before the minute that `soonest` gives its first
 * stage, nor before what it waits for; ovens and equipment go round in the order of the plan; of what is ready, the
 * next in the plan goes first, by its own cook, or by whoever is free and knows how when that one has their hands full.
 * What has begun goes on before anything new begins.
 */
export const runNight = (evenings: Evenings, soonest: Float64Array, night: Night): void => {
  const {
    count,
    first,
    to,
    ofEnd,
    lag,
    untilEnd,
    waitsFor,
    units,
    planned,
    bound,
    knows,
    before,
    after,
    own,
  } = evenings;
  const { start, length, heldBy, cook } = night;
  const ready = Float64Array.from(soonest);
  const pending = Int32Array.from(waitsFor);
  const room = new Float64Array(evenings.shifts.length).fill(evenings.capacity);
  const freedBy = new Int32Array(evenings.shifts.length).fill(-1);
  const done = new Uint8Array(count);
  const passed = new Int32Array(evenings.shifts.length);
  // The hour of a stage that follows another is its own distance after that of the first.
  const hour = Float64Array.from(
    evenings.offset,
    (from, k) => from + (soonest[evenings.head[k] as number] as number),
  );
  heldBy.fill(-1);
  cook.fill(-1);
  start.fill(Number.NaN);
  let left = count;
  /** Stages that wait for no other, in the order of the plan; running ones that hold hands. */
  const open: number[] = [];
  const running: number[] = [];
  for (let k = 0; k < count; k += 1) if (pending[k] === 0) open.push(k);
  const begin = (k: number, now: number): void => {
    start[k] = now;
    done[k] = 1;
    left -= 1;
    for (let w = first[k] as number; w < (first[k + 1] as number); w += 1) {
      const other = to[w] as number;
      let at = now + (ofEnd[w] === 1 ? (length[k] as number) : 0) + (lag[w] as number);
      if (untilEnd[w] === 1) for (let j = other; j >= 0; j = after[j] as number) at -= length[j] as number;
      if (at > (ready[other] as number) + close || (heldBy[other] === -1 && at >= (ready[other] as number))) {
        ready[other] = at;
        heldBy[other] = k;
      }
      pending[other] = (pending[other] as number) - 1;
      if (pending[other] === 0 && done[other] === 0) {
        let place = open.length;
        while (place > 0 && (open[place - 1] as number) > other) place -= 1;
        open.splice(place, 0, other);
      }
    }
  };
  const isThere = (c: number, now: number, minutes: number): boolean =>
    (evenings.shifts[c] ?? []).some((shift) => shift.from <= now && now + minutes <= shift.to);
  /** True when a cook has work of their own that comes first in the plan, and its hour is before this would be done. */
  const isAwaited = (c: number, k: number, until: number, now: number): boolean => {
    const end = now + (bound[k] as number);
    const list = own[c] as Int32Array;
    let from = passed[c] as number;
    while (from < list.length && done[list[from] as number] === 1) from += 1;
    passed[c] = from;
    for (let i = from; i < list.length; i += 1) {
      const other = list[i] as number;
      if (other >= until || (hour[other] as number) >= end) return false;
      if (done[other] === 1 || other === k) continue;
      if (pending[other] !== 0 || (ready[other] as number) < end) return true;
    }
    return false;
  };
  const handsFor = (k: number, now: number): number => {
    const need = units[k] as number;
    // Whoever began it goes on with it.
    let mine = planned[k] as number;
    for (let j = before[k] as number; j >= 0; j = before[j] as number) {
      if ((cook[j] as number) < 0) continue;
      mine = cook[j] as number;
      break;
    }
    if (mine < 0) return mine;
    if ((room[mine] as number) >= need && !isAwaited(mine, k, k, now)) return mine;
    for (let c = 0; c < room.length; c += 1) {
      if (c === mine || ((knows[k] as number) & (1 << c)) === 0 || (room[c] as number) < need) continue;
      if (isThere(c, now, bound[k] as number) && !isAwaited(c, k, count, now)) return c;
    }
    return -2;
  };
  let now = Number.NEGATIVE_INFINITY;
  while (left > 0) {
    let next = Number.POSITIVE_INFINITY;
    for (const k of open) if ((ready[k] as number) > now + close) next = Math.min(next, ready[k] as number);
    for (const k of running) next = Math.min(next, (start[k] as number) + (length[k] as number));
    if (next === Number.POSITIVE_INFINITY) {
      // Waits that close a ring: whatever is left begins when its hour has come.
      const k = done.indexOf(0);
      next = Math.max(now, ready[k] as number);
      pending[k] = 0;
      if (!open.includes(k)) open.push(k);
      ready[k] = next;
    }
    now = Math.max(now, next);
    for (let r = running.length - 1; r >= 0; r -= 1) {
      const k = running[r] as number;
      if ((start[k] as number) + (length[k] as number) > now + close) continue;
      running.splice(r, 1);
      const c = cook[k] as number;
      room[c] = (room[c] as number) + (units[k] as number);
      freedBy[c] = k;
    }
    for (let going = 1; going >= 0; going -= 1)
      for (let o = 0; o < open.length; o += 1) {
        const k = open[o] as number;
        if ((ready[k] as number) > now + close || ((before[k] as number) >= 0 ? 1 : 0) !== going) continue;
        if ((units[k] as number) > 0) {
          const c = handsFor(k, now);
          if (c === -2) continue;
          if (c >= 0) {
            if ((ready[k] as number) < now - close) heldBy[k] = freedBy[c] as number;
            cook[k] = c;
            room[c] = (room[c] as number) - (units[k] as number);
            running.push(k);
          }
        }
        open.splice(o, 1);
        begin(k, now);
        o = -1;
        if (going === 0) going = 1;
      }
  }
};

/** A number for each segment of each task, the same in every plan (FNV-1a of its name). */
const streamOf = (task: string, place: number): number => {
  const name = `${task}#${place}`;
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i += 1) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return hash;
};

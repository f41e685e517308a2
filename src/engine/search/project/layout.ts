import type { Project } from "./project.ts";

/** Arcs into each activity: those of `a` are at first[a] to first[a + 1] - 1; start[a] ≥ start[from] + weight. */
export type Arcs = { readonly first: Int32Array; readonly from: Int32Array; readonly weight: Int32Array };

/**
 * A project laid out for speed: its activities in an order in which every lag goes up, times divided by their
 * greatest common divisor, and only the resources that can ever be short.
 */
export type Layout = {
  readonly count: number;
  /** The activity of the project at each place. */
  readonly activity: Int32Array;
  /** Length of one period of the layout in periods of the project. */
  readonly period: number;
  readonly lengths: Int32Array;
  readonly resources: number;
  readonly capacities: Int32Array;
  /** demands[place * resources + resource]. */
  readonly demands: Int32Array;
  readonly forward: Arcs;
  /** The same lags seen from the end: there an activity starts when, seen from the front, it ends. */
  readonly backward: Arcs;
  /** A makespan within which every project can be done, one activity after the other. */
  readonly horizon: number;
};

/** Longest makespan in periods for which profiles are kept. */
export const longestHorizon = 4_000_000;

/** True when each lag waits at least for the end of the activity before it, and no lags go round. */
export const isPlain = (project: Project): boolean =>
  project.lags.every(({ from, weight }) => weight >= (project.lengths[from] ?? 0)) &&
  orderOf(project) !== null;

/** The layout of a plain project; null when its lags go round, or its numbers are too large for it. */
export const layOut = (project: Project): Layout | null => {
  const order = orderOf(project);
  if (order === null) return null;
  const count = project.lengths.length;
  const activity = Int32Array.from(order);
  const place = new Int32Array(count);
  for (let i = 0; i < count; i++) place[activity[i] as number] = i;
  const period = [...project.lengths, ...project.lags.map((lag) => lag.weight)].reduce(divisor, 0) || 1;
  const horizon = [...project.lengths, ...project.lags.map((lag) => lag.weight)].reduce((a, b) => a + b, 0);
  const short = project.capacities
    .map((_, r) => r)
    .filter((r) => sum(project.demands.map((row) => row[r] ?? 0)) > (project.capacities[r] ?? 0));
  const capacities = Int32Array.from(short, (r) => project.capacities[r] ?? 0);
  if (horizon / period > longestHorizon || short.some((r) => (project.capacities[r] ?? 0) >= 2 ** 30))
    return null;
  const lengths = Int32Array.from(activity, (a) => (project.lengths[a] ?? 0) / period);
  const demands = new Int32Array(count * short.length);
  for (let i = 0; i < count; i++)
    short.forEach((r, k) => {
      demands[i * short.length + k] = project.demands[activity[i] as number]?.[r] ?? 0;
    });
  const lags = project.lags.map((lag) => ({
    from: place[lag.from] as number,
    to: place[lag.to] as number,
    weight: lag.weight / period,
  }));
  const mirrored = lags.map(({ from, to, weight }) => ({
    from: to,
    to: from,
    weight: (lengths[to] as number) + weight - (lengths[from] as number),
  }));
  return {
    count,
    activity,
    period,
    lengths,
    resources: short.length,
    capacities,
    demands,
    forward: arcsOf(count, lags),
    backward: arcsOf(count, mirrored),
    horizon: Math.max(1, horizon / period),
  };
};

type Lag = { readonly from: number; readonly to: number; readonly weight: number };

/** Activities in an order in which every lag goes up, lower numbers first; null when lags go round. */
const orderOf = ({ lengths, lags }: Project): readonly number[] | null => {
  const waits = lengths.map(() => 0);
  const after: number[][] = lengths.map(() => []);
  for (const { from, to } of lags) {
    after[from]?.push(to);
    waits[to] = (waits[to] ?? 0) + 1;
  }
  const order = lengths.flatMap((_, i) => (waits[i] === 0 ? [i] : []));
  for (let i = 0; i < order.length; i++)
    for (const to of after[order[i] ?? 0] ?? []) {
      waits[to] = (waits[to] ?? 0) - 1;
      if (waits[to] === 0) order.push(to);
    }
  return order.length === lengths.length ? order : null;
};

const arcsOf = (count: number, lags: readonly Lag[]): Arcs => {
  // Of several lags between the same two only the longest counts.
  const longest = new Map<number, Lag>();
  for (const lag of lags) {
    const key = lag.to * count + lag.from;
    if ((longest.get(key)?.weight ?? -1) < lag.weight) longest.set(key, lag);
  }
  const sorted = [...longest.values()].sort((a, b) => a.to - b.to || a.from - b.from);
  const first = new Int32Array(count + 1);
  for (const { to } of sorted) first[to + 1] = (first[to + 1] as number) + 1;
  for (let i = 0; i < count; i++) first[i + 1] = (first[i + 1] as number) + (first[i] as number);
  return {
    first,
    from: Int32Array.from(sorted, (lag) => lag.from),
    weight: Int32Array.from(sorted, (lag) => lag.weight),
  };
};

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

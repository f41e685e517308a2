import type { Minutes } from "../measure/units.ts";
import { minutes } from "../measure/units.ts";
import type { Lag, Task } from "../model/prep.ts";
import { ringAboveNothing } from "../search/ring-above-nothing.ts";
import type { DraftLag } from "./draft-lag.ts";

/** Rounds of letting out before what is left is handed on as it is. */
const mostRounds = 400;

type Arc = {
  readonly from: number;
  readonly to: number;
  readonly weight: number;
  readonly lag: number;
  readonly most: boolean;
};

/**
 * Lets out limits that are only habits where the method itself takes longer: a ring of lags that no plan could keep
 * (Bellman and Ford's longest paths find it) is opened at its habit by the minutes missing.
 * Limits that the card states are left as they are.
 */
export const loosen = (tasks: readonly Task[], lags: readonly DraftLag[]): readonly Lag[] => {
  const index = new Map(tasks.map((task, i) => [task.id, i]));
  const length = tasks.map((task) =>
    task.segments.reduce((sum, s) => sum + Math.max(0, Math.ceil(s.minutes.likely)), 0),
  );
  const most: (Minutes | null)[] = lags.map((lag) => lag.most);
  for (let round = 0; round < mostRounds; round++) {
    const ring = ringAboveNothing(tasks.length, arcsOf(lags, most, index, length));
    if (!ring) break;
    const soft = ring.findLast((arc) => arc.most && lags[arc.lag]?.soft);
    if (!soft) break;
    const excess = ring.reduce((sum, arc) => sum + arc.weight, 0);
    most[soft.lag] = minutes((most[soft.lag] ?? 0) + Math.max(1, excess));
  }
  return lags.map(({ soft: _soft, ...lag }, l) => ({ ...lag, most: most[l] ?? null }));
};

const arcsOf = (
  lags: readonly DraftLag[],
  most: readonly (Minutes | null)[],
  index: ReadonlyMap<string, number>,
  length: readonly number[],
): readonly Arc[] =>
  lags.flatMap((lag, l): Arc[] => {
    const from = index.get(lag.before);
    const to = index.get(lag.after);
    if (from === undefined || to === undefined) return [];
    const edge = (node: number, side: "start" | "end"): number => (side === "end" ? (length[node] ?? 0) : 0);
    const shift = edge(from, lag.beforeEdge) - edge(to, lag.afterEdge);
    const least = { from, to, weight: Math.ceil(lag.least) + shift, lag: l, most: false };
    const limit = most[l];
    if (limit === null || limit === undefined) return [least];
    return [least, { from: to, to: from, weight: -(Math.floor(limit) + shift), lag: l, most: true }];
  });

import { takeOut } from "./insert.ts";
import { compareCosts, costOf, emptyCost } from "./objective.ts";
import { latestSpot, putAt } from "./place.ts";
import { nowhere, put, type Schedule, type Spot, spotOf } from "./schedule.ts";

/** Rounds over the pairs that stand in the wrong order; one exchange may make room for the next. */
const rounds = 3;

/**
 * Exchanges the same work on two versions of a dish where the guest's own comes after the one that holds what they may
 * not have, as long as nothing weightier gets worse by it.
 */
export const guestsFirst = (schedule: Schedule): void => {
  const { model, start } = schedule;
  const cost = costOf(schedule);
  const moved = emptyCost(model);
  const lengthOf = (n: number): number => model.nodes[n]?.length ?? 0;
  const isWrong = (own: number, other: number): boolean => {
    const a = start[own] as number;
    const b = start[other] as number;
    return a !== nowhere && b !== nowhere && a + lengthOf(own) > b;
  };
  for (let round = 0; round < rounds; round++) {
    let changed = false;
    for (const { before: own, after: other } of model.freeFrom) {
      if (!isWrong(own, other)) continue;
      const spots = [own, other].map((n) => ({ node: n, spot: spotOf(schedule, n) as Spot }));
      // The other as late as it may and the guest's before it; or the guest's in the place of the other.
      const tries = [
        () =>
          standsAt(schedule, other, null) &&
          standsAt(schedule, own, (start[other] as number) - lengthOf(own)),
        () =>
          standsAt(schedule, own, (spots[1]?.spot.start ?? 0) as number) && standsAt(schedule, other, null),
      ];
      for (const attempt of tries) {
        takeOut(schedule, [own, other]);
        if (attempt() && compareCosts(costOf(schedule, moved), cost) < 0) {
          cost.set(moved);
          changed = true;
          break;
        }
        takeOut(schedule, [own, other]);
        for (const { node, spot } of spots) put(schedule, node, spot.start, spot.cook, spot.oven);
      }
    }
    if (!changed) return;
  }
};

/** Puts a task as late as it may stand, at the latest at a given start; false when it has no place. */
const standsAt = (schedule: Schedule, node: number, latest: number | null): boolean => {
  const spot = latestSpot(schedule, node, null, latest);
  return spot !== null && putAt(schedule, node, spot);
};

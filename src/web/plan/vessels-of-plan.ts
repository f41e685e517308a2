import type { Plan, Prep, TaskId, VesselStay } from "#engine/index.ts";

/** Vessels with food in them: how many of what, and from when to when. */
export type InUse = {
  readonly resource: string;
  readonly amount: number;
  /** The task that fills them. */
  readonly task: TaskId;
  readonly from: number;
  /** When they are washed up and free; null when that is after service. */
  readonly to: number | null;
};

/** Which pans, trays and containers are in use when, in order of time; each once, at the size that it must be. */
export const vesselsInUse = ({ stays = [], resources }: Prep, plan: Plan): readonly InUse[] => {
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const smaller = new Map(resources.map((r) => [r.id, r.alsoIn ?? []]));
  // A stay in a large pan is counted among the smaller ones too, for a large one may stand in for them.
  const countedAbove = (stay: VesselStay): boolean =>
    stays.some(
      (other) =>
        other.from === stay.from &&
        other.to === stay.to &&
        (smaller.get(other.resource) ?? []).includes(stay.resource),
    );
  return stays
    .flatMap((stay): InUse[] => {
      const first = stay.from === null ? undefined : placed.get(stay.from);
      if (first === undefined || countedAbove(stay)) return [];
      const last = stay.to === null ? undefined : placed.get(stay.to);
      return [
        {
          resource: stay.resource,
          amount: stay.amount,
          task: first.task,
          from: first.start,
          to: last?.end ?? null,
        },
      ];
    })
    .sort((a, b) => a.from - b.from);
};

import type {
  Clash,
  ClashDemand,
  GoalLevel,
  LevelValue,
  Placed,
  Plan,
  Prep,
  Segment,
  Task,
} from "#engine/index.ts";

/** When, in seconds since the work began, the first whole plan and the best one were there, and how long it all took. */
export type Timing = {
  readonly firstAt: number | null;
  readonly bestAt: number | null;
  readonly seconds: number;
};

/** Each level under the name it bears in kitchen-bench/1, or, where it is not of that format, one made after them. */
const partNames: { readonly [L in GoalLevel]: string } = {
  late: "courseLatenessMinutes",
  hold: "hotHoldWeightedMinutes",
  "free-from": "freeFromPairs",
  calm: "calmHandsOnMinutes",
  service: "serviceHandsOnMinutes",
  freshness: "freshnessWeightedMinutes",
};

/**
 * The shape of `solve --json` for a kitchen. Starts and ovens stand for each segment, the tasks in the order of the file;
 * cooks and ovens are places in its lists. optimal: proved that nothing is better; feasible: a whole plan; infeasible:
 * proved that there is none; unknown: none was found.
 */
export const solutionJson = (prep: Prep, plan: Plan, timing: Timing) => {
  const levels = plan.objective.levels;
  const several = prep.tasks.some((task) => (task.ways ?? []).length > 0);
  const whole = plan.unplaced.length === 0 && plan.violations.length === 0;
  // What only lateness would cure proves nothing: the format sets lateness no limit.
  const [conflict, ...others] = whole
    ? []
    : (plan.clashes ?? []).filter(
        (clash) =>
          clash.lateCourse === null && !clash.demands.some((d) => d.kind === "due" && d.side === "most"),
      );
  const placed = new Map(plan.placed.map((p) => [p.task, p]));
  const status = !whole
    ? conflict === undefined && plan.impossible !== true
      ? "unknown"
      : "infeasible"
    : levels.every((level) => level.proved)
      ? "optimal"
      : "feasible";
  const ovenIds = new Set(["oven", ...prep.ovens.map((oven) => oven.id)]);
  const place = (index: number): number | null => (index < 0 ? null : index);
  return {
    status,
    parts: whole ? byName(levels, (level) => level.value) : null,
    bounds: whole ? byName(levels, (level) => level.bound) : null,
    start: prep.tasks.flatMap((task): readonly (number | null)[] => {
      const segments = placed.get(task.id)?.segments;
      return whole && segments !== undefined ? segments : task.segments.map(() => null);
    }),
    cookOfTask: prep.tasks.map((task) =>
      place(prep.crew.findIndex((cook) => cook.name === placed.get(task.id)?.cook)),
    ),
    ovenOfSegment: prep.tasks.flatMap((task) =>
      segmentsDone(task, placed.get(task.id)).map((segment) =>
        segment.uses.some((use) => ovenIds.has(use.resource))
          ? place(prep.ovens.findIndex((oven) => oven.id === placed.get(task.id)?.oven))
          : null,
      ),
    ),
    ...(several ? { wayOfTask: prep.tasks.map((task) => placed.get(task.id)?.way ?? 0) } : {}),
    ...(conflict === undefined
      ? {}
      : {
          conflict: demandNames(prep, conflict),
          conflictSmallest: conflict.smallest,
          ...(others.length === 0 ? {} : { otherConflicts: others.map((clash) => demandNames(prep, clash)) }),
          relaxations: conflict.demands.flatMap((d, i) => {
            const leastChange = conflict.leastChange[i] ?? null;
            // Where other demands clash besides, no lag of these frees all of the work by itself.
            if (others.length > 0 || d.kind !== "lag" || leastChange === null) return [];
            const newValue = d.side === "most" ? d.minutes + leastChange : d.minutes - leastChange;
            return [{ group: demandName(prep, d), leastChange, newValue }];
          }),
          waysOut: plan.waysOut ?? [],
        }),
    ...timing,
  };
};

/** The segments of the way in which a task is done; of one without a place, those it has of itself. */
const segmentsDone = (task: Task, placed: Placed | undefined): readonly Segment[] =>
  task.ways?.[(placed?.way ?? 0) - 1] ?? task.segments;

const demandNames = (prep: Prep, clash: Clash): readonly string[] =>
  clash.demands.toSorted(byPlace).map((d) => demandName(prep, d));

/** Lags first, in the order of the file, the least side before the most; the rest as they come. */
const byPlace = (a: ClashDemand, b: ClashDemand): number => {
  const place = (d: ClashDemand): number =>
    d.kind === "lag" ? d.lag * 2 + (d.side === "most" ? 1 : 0) : Number.MAX_SAFE_INTEGER;
  return place(a) - place(b);
};

const byName = (levels: readonly LevelValue[], pick: (level: LevelValue) => number) =>
  Object.fromEntries(levels.map((level) => [partNames[level.level], pick(level)]));

/** A demand by its kind and the thing it is about: lags go by their place in the file, from 0. */
const demandName = (prep: Prep, demand: ClashDemand): string => {
  switch (demand.kind) {
    case "lag":
      return `lag${demand.lag}.${demand.side === "least" ? "min" : "max"}`;
    case "shift":
      return `shift.${demand.cook}`;
    case "hands":
      return `attention.${demand.cook}`;
    case "open":
      return "someoneInKitchen";
    case "resource":
      return `equipment.${demand.resource}`;
    case "shelves":
      return `shelves.${demand.oven}`;
    case "oven-heat":
      return "ovenSetUp";
    case "due":
      return `due.${prep.courses[demand.course]?.name ?? demand.course}.${demand.side === "least" ? "min" : "max"}`;
  }
};

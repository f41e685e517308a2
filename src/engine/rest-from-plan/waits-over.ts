import { type Moment, minutes } from "../measure/units.ts";
import { hotStations, type Station } from "../model/food.ts";
import type { Placed } from "../model/plan.ts";
import type { Lag, Prep, Task, TaskId } from "../model/prep.ts";
import type { Overrun, OverrunKind, Progress } from "../model/rest.ts";
import { kitchenNow } from "./kitchen-now.ts";
import { lengthOf } from "./taken.ts";
import { madeAnew, without } from "./work-left.ts";

/** Hot food below 63 °C is served within two hours in England (SI 2013/2996, Schedule 4; from memory); other places have other rules. */
const longestOffHeat = 120;

const colds: ReadonlySet<Station> = new Set<Station>(["fridge", "freezer", "ice-bath"]);

type Times = { readonly start: Moment; readonly end: Moment };

/** Every limit on a wait that the rest of a night goes beyond, of the work that has not begun. */
export const waitsOver = (prep: Prep, progress: Progress, placed: readonly Placed[]): readonly Overrun[] => {
  const present = without(kitchenNow(prep, progress), new Set(progress.skipped ?? []));
  const anew = madeAnew(prep, progress);
  const tasks = new Map(present.tasks.map((task) => [task.id, task]));
  const times = new Map<TaskId, Times>(placed.map((p) => [p.task, p]));
  const begun = new Set<TaskId>();
  for (const { task, start, end } of progress.done) {
    if (anew.has(task)) continue;
    begun.add(task);
    times.set(task, { start, end });
  }
  for (const { task, start } of progress.running) {
    const goesOn = times.get(task);
    if (anew.has(task) || begun.has(task) || goesOn === undefined) continue;
    begun.add(task);
    times.set(task, { start, end: goesOn.end });
  }
  return present.lags.flatMap((lag): Overrun[] => {
    const before = times.get(lag.before);
    const after = times.get(lag.after);
    if (before === undefined || after === undefined) return [];
    const gap = after[lag.afterEdge] - before[lag.beforeEdge];
    const over = (first: TaskId, then: TaskId, limit: number, waits: number): Overrun[] =>
      waits <= limit
        ? []
        : [
            {
              before: first,
              after: then,
              reason: lag.reason,
              kind: kindOf(lag, tasks.get(lag.before), tasks.get(lag.after), waits),
              limit: minutes(limit),
              waits: minutes(waits),
              by: minutes(Math.ceil(waits - limit)),
            },
          ];
    // Plates are bound both ways: the one that was meant to come after may stand there first.
    if (lag.reason === "plate-together" && begun.has(lag.after) && !begun.has(lag.before))
      return over(lag.after, lag.before, -lag.least, -gap);
    if (lag.most === null || begun.has(lag.after)) return [];
    return over(lag.before, lag.after, lag.most, gap);
  });
};

const kindOf = (lag: Lag, before: Task | undefined, after: Task | undefined, waits: number): OverrunKind => {
  if (lag.reason === "plate-together") return "together";
  if (lag.reason === "fridge-limit") return "cold-keeping";
  const hot = (before?.segments ?? []).some((s) => hotStations.has(s.station) && lengthOf(s) > 0);
  if (hot && (after?.segments ?? []).some((s) => colds.has(s.station))) return "cooling";
  // Raw meat, fish or egg was in hand, and it is cooked on later.
  const cookedOn = after?.kind !== "plate" && (after?.segments ?? []).some((s) => hotStations.has(s.station));
  if (hot && cookedOn && before?.thenClean === true) return "part-cooked";
  return hot && waits > longestOffHeat ? "hot-holding" : "quality";
};

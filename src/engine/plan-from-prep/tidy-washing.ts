import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Placed } from "../model/plan.ts";
import type { Prep, Task, TaskId, VesselStay } from "../model/prep.ts";

/** The work with the washing-up that a plan needs, and where everything then stands. */
export type Tidied = {
  readonly prep: Prep;
  readonly placed: readonly Placed[];
  /** Washing-up that nothing waits for in this plan: it is left for after the service. */
  readonly left: readonly Task[];
};

/**
 * Once it is known what stands where, washing-up of vessels that nothing needs again goes out of the plan, and what one
 * cook washes up in a row is one task. What else is planned stays where it is.
 */
export const tidyWashing = (prep: Prep, placed: readonly Placed[]): Tidied => {
  const at = new Map(placed.map((p) => [p.task, p]));
  const inSegments = new Set(
    prep.tasks.flatMap((t) => t.segments.flatMap((s) => s.uses.map((u) => u.resource))),
  );
  const washes = prep.tasks
    .filter((task) => task.kind === "wash" && at.has(task.id))
    .toSorted((a, b) => startOf(at, b.id) - startOf(at, a.id) || (a.id < b.id ? 1 : -1));
  let stays = prep.stays ?? [];
  const left: Task[] = [];
  // The last first: what is washed up at the end is needed least, and what it leaves dirty counts for those before it.
  for (const wash of washes) {
    const own = stays.filter((stay) => stay.to === wash.id);
    if (own.length === 0 || own.some((stay) => inSegments.has(stay.resource))) continue;
    const without = stays.map((stay) => (stay.to === wash.id ? { ...stay, to: null } : stay));
    if (!fits(prep, at, without, own)) continue;
    stays = without;
    left.push(wash);
  }
  const gone = new Set(left.map((task) => task.id));
  const bare: Prep = {
    ...prep,
    tasks: prep.tasks.filter((task) => !gone.has(task.id)),
    lags: prep.lags.filter((lag) => !gone.has(lag.before) && !gone.has(lag.after)),
    stays,
  };
  return joined({ prep: bare, placed: placed.filter((p) => !gone.has(p.task)), left });
};

type At = ReadonlyMap<TaskId, Placed>;

const startOf = (at: At, id: TaskId): number => at.get(id)?.start ?? 0;

/** True when no more vessels than there are would be in use, of those that these stays are of. */
const fits = (prep: Prep, at: At, stays: readonly VesselStay[], of: readonly VesselStay[]): boolean =>
  [...new Set(of.map((stay) => stay.resource))].every((resource) => {
    const capacity = prep.resources.find(({ id }) => id === resource)?.capacity ?? 0;
    const uses = stays
      .filter((stay) => stay.resource === resource)
      .map((stay) => ({
        amount: stay.amount,
        from:
          stay.from === null
            ? Number.NEGATIVE_INFINITY
            : (at.get(stay.from)?.start ?? Number.POSITIVE_INFINITY),
        to: stay.to === null ? Number.POSITIVE_INFINITY : (at.get(stay.to)?.end ?? Number.POSITIVE_INFINITY),
      }));
    return uses.every(({ from }) => {
      const sum = uses.reduce((all, o) => all + (o.from <= from && from < o.to ? o.amount : 0), 0);
      return sum <= capacity + 1e-6;
    });
  });

/** Washing-up in a row becomes one task, where the vessels washed first are not wanted before the last of them is clean. */
const joined = (given: Tidied): Tidied => {
  let { prep, placed } = given;
  const kinds = new Map(prep.tasks.map((task) => [task.id, task.kind]));
  const inHand = (p: Placed): boolean => kinds.get(p.task) === "wash" && p.cook !== null;
  for (const cook of prep.crew) {
    const row = placed
      .filter((p) => p.cook === cook.name)
      .toSorted((a, b) => a.start - b.start || a.end - b.end);
    let first: Placed | null = null;
    for (const next of row) {
      if (!inHand(next)) {
        if (next.start < next.end) first = null;
        continue;
      }
      const both: Tidied | null =
        first === null || next.start > first.end ? null : asOne({ ...given, prep, placed }, first, next);
      if (both === null) first = next;
      else {
        ({ prep, placed } = both);
        first = placed.find((p) => p.task === first?.task) ?? null;
      }
    }
  }
  return { ...given, prep, placed };
};

/** The second of two washings done together with the first, at the hour of the one or of the other; null where neither goes. */
const asOne = ({ prep, placed, left }: Tidied, first: Placed, second: Placed): Tidied | null => {
  const one = prep.tasks.find((task) => task.id === first.task);
  const other = prep.tasks.find((task) => task.id === second.task);
  const head = one?.segments[0];
  if (one === undefined || other === undefined || head === undefined) return null;
  const long = second.end - second.start + (first.end - first.start);
  const task: Task = {
    ...one,
    objects: [...new Set([...one.objects, ...other.objects])],
    amount: { value: (one.amount?.value ?? 1) + (other.amount?.value ?? 1), unit: "piece" },
    segments: [{ ...head, minutes: exactly(minutes(long)) }],
  };
  const start = second.end - long;
  const now: Placed = {
    ...first,
    start: start as Placed["start"],
    end: second.end,
    segments: [start as Placed["start"]],
  };
  const stays = (prep.stays ?? []).map((stay) => (stay.to === other.id ? { ...stay, to: one.id } : stay));
  const at = new Map(placed.flatMap((p) => (p === second ? [] : [[p.task, p === first ? now : p] as const])));
  const lags = prep.lags.flatMap((lag) => {
    if (lag.before === other.id) return [{ ...lag, before: one.id }];
    return [lag.after === other.id ? { ...lag, after: one.id } : lag];
  });
  const waits = lags.every((lag) => {
    const before = at.get(lag.before);
    if (lag.after !== one.id || before === undefined) return true;
    return before[lag.beforeEdge] + lag.least <= now[lag.afterEdge];
  });
  const next: Prep = {
    ...prep,
    tasks: prep.tasks.flatMap((t) => (t === other ? [] : [t === one ? task : t])),
    lags,
    stays,
  };
  const own = stays.filter((stay) => stay.to === one.id);
  return waits && fits(next, at, stays, own) ? { prep: next, placed: [...at.values()], left } : null;
};

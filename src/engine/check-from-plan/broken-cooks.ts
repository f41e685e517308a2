import type { Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import type { Laid } from "./lay-out.ts";
import { violation } from "./violation.ts";

/** Stations that are never left on in an empty kitchen. */
const heat = new Set(["burner", "oven", "grill", "fryer"]);

/** Attended segments have a cook, inside one of that cook's shifts, within a pair of hands; heat has somebody there. */
export const brokenCooks = (prep: Prep, laid: readonly Laid[]): readonly Violation[] => {
  const found: Violation[] = [];
  const { capacity, hands, mind } = prep.attention;
  const crew = new Map(prep.crew.map((cook) => [cook.name, cook]));
  const units = (l: Laid): number =>
    l.segment.attention === "hands" ? hands : l.segment.attention === "mind" ? mind : 0;
  const attended = laid.filter((l) => l.segment.attention !== "none" && l.to > l.from);

  for (const l of attended) {
    const cook = l.placed.cook === null ? undefined : crew.get(l.placed.cook);
    if (!cook) {
      found.push(violation("no-cook", [l.task.id], l.from, `${l.placed.cook}`));
    } else if (l.task.cooks && !l.task.cooks.includes(cook.name)) {
      found.push(violation("unskilled", [l.task.id], l.from, cook.name));
    } else if (!cook.shifts.some((shift) => shift.from <= l.from && l.to <= shift.to)) {
      found.push(violation("outside-shift", [l.task.id], l.from, `${cook.name} ${l.from}-${l.to}`));
    }
  }
  // Load only rises where a segment starts, so looking at each start looks at every minute.
  for (const l of attended) {
    const there = attended.filter(
      (o) => o.placed.cook === l.placed.cook && o.from <= l.from && l.from < o.to,
    );
    const load = there.reduce((sum, o) => sum + units(o), 0);
    if (load > capacity) {
      const ids = there.map((o) => o.task.id);
      found.push(violation("cook-overloaded", ids, l.from, `${l.placed.cook} ${load} > ${capacity}`));
    }
  }

  for (const group of prep.sameCook ?? []) {
    const members = attended.filter((l) => group.includes(l.task.id));
    const other = members.find((l) => l.placed.cook !== members[0]?.placed.cook);
    if (other) found.push(violation("two-cooks", group, other.from, `${other.placed.cook}`));
  }

  const shifts = prep.crew.flatMap((cook) => cook.shifts);
  for (const l of laid) {
    const manned =
      l.segment.manned ?? l.segment.uses.some((use) => heat.has(use.resource) || isOven(prep, use.resource));
    if (!manned) continue;
    const empty = firstEmptyMinute(shifts, l.from, l.to);
    if (empty !== null) found.push(violation("outside-shift", [l.task.id], empty, "heat, nobody there"));
  }
  return found;
};

const isOven = (prep: Prep, id: string): boolean => prep.ovens.some((oven) => oven.id === id);

const firstEmptyMinute = (
  shifts: readonly { readonly from: number; readonly to: number }[],
  from: number,
  to: number,
): number | null => {
  for (let minute = from; minute < to; minute++) {
    if (!shifts.some((shift) => shift.from <= minute && minute < shift.to)) return minute;
  }
  return null;
};

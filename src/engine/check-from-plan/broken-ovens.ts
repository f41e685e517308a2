import type { Violation } from "../model/plan.ts";
import type { Prep } from "../model/prep.ts";
import type { Laid } from "./lay-out.ts";
import { violation } from "./violation.ts";

/** What an oven that is switched on starts from, °C. */
const cold = 20;

type Baking = Laid & { readonly amount: number; readonly celsius: number; readonly oven: string };

/**
 * Ovens: shelves, one temperature at a time within the kitchen's tolerance, and time to change between settings.
 * An oven is cold when the kitchen opens, and is heated while somebody is there.
 */
export const brokenOvens = (prep: Prep, laid: readonly Laid[]): readonly Violation[] => {
  const found: Violation[] = [];
  const { ovenMinutesPer10C, ovenTolerance } = prep.kitchen;
  const { heat, cool } = prep.ramp ?? { heat: ovenMinutesPer10C, cool: ovenMinutesPer10C };
  const change = (from: number, to: number): number =>
    Math.ceil((Math.abs(to - from) * (to > from ? heat : cool)) / 10 - 1e-6);
  const baking: Baking[] = [];
  for (const l of laid) {
    for (const use of l.segment.uses) {
      const named = prep.ovens.some((oven) => oven.id === use.resource);
      if (use.resource !== "oven" && !named) continue;
      const oven = l.placed.oven;
      const known = prep.ovens.some((o) => o.id === oven);
      if (oven === null || !known || (named && oven !== use.resource)) {
        found.push(violation("oven-over", [l.task.id], l.from, `oven ${oven}`));
      } else {
        baking.push({ ...l, amount: use.amount, celsius: use.celsius ?? cold, oven });
      }
    }
  }

  for (const b of baking) {
    const shelves = prep.ovens.find((oven) => oven.id === b.oven)?.shelves ?? 0;
    const there = baking.filter((o) => o.oven === b.oven && o.from <= b.from && (b.from < o.to || o === b));
    const sum = there.reduce((total, o) => total + o.amount, 0);
    if (sum > shelves) {
      const ids = there.map((o) => o.task.id);
      found.push(violation("oven-over", ids, b.from, `${b.oven} ${sum} > ${shelves}`));
    }
    const opened = prep.ovensCold === "once" ? (prep.span?.from ?? -Infinity) : openedAt(prep, b.from);
    const from = prep.ovens.find((oven) => oven.id === b.oven)?.cold ?? cold;
    if (b.from - opened < change(from, b.celsius)) {
      found.push(violation("oven-clash", [b.task.id], b.from, `${b.oven} cold, ${b.celsius} °C wanted`));
    }
  }

  for (const a of baking) {
    for (const b of baking) {
      if (a === b || a.task === b.task || a.oven !== b.oven || a.from > b.from) continue;
      if (a.from === b.from && baking.indexOf(a) > baking.indexOf(b)) continue;
      if (Math.abs(a.celsius - b.celsius) <= ovenTolerance) continue;
      if (b.from - a.to < change(a.celsius, b.celsius)) {
        const detail = `${a.oven} ${a.celsius} °C, ${b.celsius} °C`;
        found.push(violation("oven-clash", [a.task.id, b.task.id], b.from, detail));
      }
    }
  }
  return found;
};

/** Since when somebody has been in the kitchen without a break, at this minute; the minute itself when nobody is. */
const openedAt = (prep: Prep, minute: number): number => {
  const shifts = prep.crew.flatMap((cook) => cook.shifts);
  let at = minute;
  for (;;) {
    const earlier = shifts.filter((shift) => shift.from < at && at <= shift.to).map((shift) => shift.from);
    if (earlier.length === 0) return at;
    at = Math.min(...(earlier as number[]));
  }
};

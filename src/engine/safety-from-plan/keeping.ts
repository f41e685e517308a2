import { makeFinding } from "../findings/make-finding.ts";
import { isOver, limitsFor } from "../larder/limits.ts";
import type { Dish } from "../model/dish.ts";
import type { LimitCase } from "../model/limit.ts";
import { criticalLimit, type Note, overLimit, type Pointed } from "./pointed.ts";
import { between, isCold, nextUse, type Stretch, type Timed, type Timeline } from "./timeline.ts";

/** What stands in the fridge: how cold, and for how long by the region's limits and by the card. */
export const keepingPoints = (timeline: Timeline, note: Note): readonly Pointed[] =>
  [...timeline.values()].flatMap((timed) => {
    const cold = timed.stretches.find((s) => isCold(s) && s.station === "fridge");
    return cold === undefined ? [] : keepingPoint(timed, cold, timeline, note);
  });

const keepingPoint = (timed: Timed, cold: Stretch, timeline: Timeline, note: Note): readonly Pointed[] => {
  const dish = note.dish(timed.task.dish);
  if (dish === null) return [];
  const kept = between(cold.start, nextUse(timeline, timed) ?? cold.end);
  const cases: readonly LimitCase[] = note.hazards(dish.source).has("cooked-rice") ? ["cooked-rice"] : [];
  const keep = limitsFor(note.region, "keep", cases);
  const broken = keep.filter((limit) => isOver(limit, kept)).slice(0, 1);
  const most = statedKeeping(dish);
  const tooLong = most !== null && kept > most;
  return [
    {
      point: {
        hazard: "cold-holding",
        dish: dish.source,
        ingredient: null,
        task: timed.task.id,
        span: timed.task.span,
        names: [dish.title],
        limits: [
          ...limitsFor(note.region, "hold-cold"),
          ...limitsFor(note.region, "out-of-cold"),
          ...keep,
        ].map(criticalLimit),
        guests: [],
        broken: broken.length > 0,
      },
      findings: [
        ...broken.map((limit) => overLimit(dish, timed.task.span, limit, kept)),
        ...(tooLong
          ? [
              makeFinding("held-too-long", dish.source, timed.task.span ?? dish.titleSpan, {
                title: dish.title,
                minutes: Math.round(kept),
                most,
              }),
            ]
          : []),
      ],
    },
  ];
};

// A card may state several keepings, for parts and steps; the longest is what none of it may go over.
const statedKeeping = (dish: Dish): number | null => {
  const stated = dish.keeping.filter((k) => k.where === "fridge").map((k) => k.minutes.high);
  return stated.length === 0 ? null : Math.max(...stated);
};

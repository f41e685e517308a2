import { makeFinding } from "../findings/make-finding.ts";
import { isOver, limitsFor } from "../larder/limits.ts";
import type { Dish } from "../model/dish.ts";
import type { Hold, Prep } from "../model/prep.ts";
import { criticalLimit, type Note, overLimit, type Pointed } from "./pointed.ts";
import { between, type Timeline } from "./timeline.ts";

/** What waits hot between its last heat and its plate: kept hot, or counted as time under the limit. */
export const hotWaitPoints = (timeline: Timeline, prep: Prep, note: Note): readonly Pointed[] =>
  prep.holds.filter((hold) => hold.hot).flatMap((hold) => hotWaitPoint(hold, timeline, note));

const hotWaitPoint = (hold: Hold, timeline: Timeline, note: Note): readonly Pointed[] => {
  const made = timeline.get(hold.task);
  const plate = timeline.get(hold.plate);
  const dish = made === undefined ? null : note.dish(made.task.dish);
  if (made === undefined || plate === undefined || dish === null) return [];
  const wait = between(made.end, plate.end);
  if (wait === 0) return [];
  const limits = [...limitsFor(note.region, "hold-hot"), ...limitsFor(note.region, "off-heat")];
  const broken = limits.filter((limit) => isOver(limit, wait)).slice(0, 1);
  const most = statedHold(dish);
  const tooLong = most !== null && wait > most;
  return [
    {
      point: {
        hazard: "hot-holding",
        dish: dish.source,
        ingredient: null,
        task: made.task.id,
        span: made.task.span,
        names: [dish.title],
        limits: limits.map(criticalLimit),
        guests: [],
        broken: broken.length > 0,
      },
      findings: [
        ...broken.map((limit) => overLimit(dish, made.task.span, limit, wait)),
        ...(tooLong
          ? [
              makeFinding("held-too-long", dish.source, made.task.span ?? dish.titleSpan, {
                title: dish.title,
                minutes: Math.round(wait),
                most,
              }),
            ]
          : []),
      ],
    },
  ];
};

/** The longest the card says it holds hot; null when it says nothing. */
const statedHold = (dish: Dish): number | null => {
  const stated = dish.keeping.filter((k) => k.where === "hot").map((k) => k.minutes.high);
  return stated.length === 0 ? null : Math.max(...stated);
};

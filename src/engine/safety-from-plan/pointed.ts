import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { foodById } from "../larder/foods.ts";
import { isOver } from "../larder/limits.ts";
import type { Minutes } from "../measure/units.ts";
import type { Dish, Keeping } from "../model/dish.ts";
import type { HazardKind } from "../model/food.ts";
import type { Limit } from "../model/limit.ts";
import type { Measured, Menu } from "../model/menu.ts";
import type { Task } from "../model/prep.ts";
import type { CriticalLimit, SafetyPoint } from "../model/safety.ts";
import type { Region } from "../model/sitting.ts";
import type { SourceId, Span } from "../model/span.ts";

/** A point of the sheet with what there is to say about it. */
export type Pointed = { readonly point: SafetyPoint; readonly findings: readonly Finding[] };

/** What the looks at the plan need to know of the menu. */
export type Note = {
  readonly region: Region;
  /** A dish or component by its card. */
  readonly dish: (source: SourceId) => Dish | null;
  /** Hazards of the foods of a dish or component, in any version. */
  readonly hazards: (source: SourceId) => ReadonlySet<HazardKind>;
};

/** What the points of a menu need to know of its dishes. */
export const noteOf = (menu: Menu): Note => {
  const makings = [
    ...menu.components.map((c) => ({ dish: c.dish, foods: c.ingredients })),
    ...menu.dishes.map((d) => ({ dish: d.dish, foods: d.versions.flatMap((v) => v.ingredients) })),
  ];
  const dishes = new Map(makings.map((m) => [m.dish.source, m.dish]));
  const hazards = new Map(makings.map((m) => [m.dish.source, new Set(m.foods.flatMap(hazardsOf))]));
  return {
    region: menu.sitting.region,
    dish: (source) => dishes.get(source) ?? null,
    hazards: (source) => hazards.get(source) ?? new Set(),
  };
};

/** Hazards of a food of the menu, as it is bought; none for words that were not understood. */
export const hazardsOf = (measured: Measured): readonly HazardKind[] => {
  const food = measured.food === null ? null : foodById(measured.food);
  if (food === null) return [];
  const found = new Set(food.hazards);
  // Minced meat has limits of its own.
  return [...found].filter((hazard) => hazard !== "raw-meat" || !found.has("raw-mince"));
};

/** A row of the limit table as the sheet shows it. */
export const criticalLimit = ({ quantity, comparator, celsius, minutes, source }: Limit): CriticalLimit => ({
  quantity,
  comparator,
  celsius,
  minutes,
  source,
});

/** Says that a length of time is over a limit. */
const overLimit = (dish: Dish, span: Span | null, limit: Limit, length: Minutes): Finding =>
  makeFinding("limit-broken", dish.source, span ?? dish.titleSpan, {
    title: dish.title,
    quantity: limit.quantity,
    celsius: limit.celsius,
    most: limit.minutes,
    minutes: Math.round(length),
  });

/** What is looked at in the plan: a task, the limits that are shown, and how long it takes against those that count. */
type Look = {
  readonly hazard: SafetyPoint["hazard"];
  readonly dish: Dish;
  readonly task: Task;
  readonly shown: readonly Limit[];
  readonly counted: readonly Limit[];
  readonly length: Minutes;
};

/** A point at a task of the plan. Of the limits that its length is over, the first is said. */
export const pointAt = ({ hazard, dish, task, shown, counted, length }: Look): Pointed => {
  const broken = counted.filter((limit) => isOver(limit, length)).slice(0, 1);
  return {
    point: {
      hazard,
      dish: dish.source,
      ingredient: null,
      task: task.id,
      span: task.span,
      names: [dish.title],
      limits: shown.map(criticalLimit),
      guests: [],
      broken: broken.length > 0,
    },
    findings: broken.map((limit) => overLimit(dish, task.span, limit, length)),
  };
};

/** Says that a dish is held longer than its card lets it, hot or in the fridge; nothing when the card says nothing. */
export const overKeeping = (
  dish: Dish,
  span: Span | null,
  where: Keeping["where"],
  length: Minutes,
): readonly Finding[] => {
  // A card may state several keepings, for parts and steps; the longest is what none of it may go over.
  const stated = dish.keeping.filter((k) => k.where === where).map((k) => k.minutes.high);
  const most = stated.length === 0 ? null : Math.max(...stated);
  if (most === null || length <= most) return [];
  return [
    makeFinding("held-too-long", dish.source, span ?? dish.titleSpan, {
      title: dish.title,
      minutes: Math.round(length),
      most,
    }),
  ];
};

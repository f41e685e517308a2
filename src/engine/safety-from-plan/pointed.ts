import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { foodById } from "../larder/foods.ts";
import type { Minutes } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { HazardKind } from "../model/food.ts";
import type { Limit } from "../model/limit.ts";
import type { Measured, Menu } from "../model/menu.ts";
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
export const overLimit = (dish: Dish, span: Span | null, limit: Limit, length: Minutes): Finding =>
  makeFinding("limit-broken", dish.source, span ?? dish.titleSpan, {
    title: dish.title,
    quantity: limit.quantity,
    celsius: limit.celsius,
    most: limit.minutes,
    minutes: Math.round(length),
  });

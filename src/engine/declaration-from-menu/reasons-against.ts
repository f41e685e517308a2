import { broughtTogether, substanceAgainstNeed } from "../larder/against-need.ts";
import { isFoodCookedThrough } from "../larder/cooked-through.ts";
import { foodById } from "../larder/foods.ts";
import { withMadeOf } from "../larder/made-of.ts";
import { needById } from "../larder/needs.ts";
import { strongest } from "../larder/strongest.ts";
import type { GuestVerdict } from "../model/declaration.ts";
import type { Dish } from "../model/dish.ts";
import type { AllergenGrade, DietFact, Food, HazardKind } from "../model/food.ts";
import type { Version } from "../model/menu.ts";
import type { Need } from "../model/need.ts";
import type { Guest } from "../model/sitting.ts";
import { alternativesOf, type Cards, type Entry, entriesOf, unlistedIn } from "./entries.ts";

type Where = { readonly dish: Dish; readonly swaps: readonly number[]; readonly cards: Cards };

type Reason = GuestVerdict["because"][number];

/**
 * Everything in a version that stands against a guest's needs, and everything that is not known about it. Empty means
 * that nothing was found in the words, not that nothing is there.
 */
export const reasonsAgainst = (
  guest: Guest,
  dish: Dish,
  version: Version,
  cards: Cards,
): readonly Reason[] => {
  if (guest.needs.length === 0) return [];
  const entries = entriesOf(dish, version, cards);
  const unlisted = unlistedIn(dish, entries, cards);
  const where: Where = { dish, swaps: version.swaps, cards };
  return guest.needs.flatMap((id): readonly Reason[] => {
    const need = needById(id);
    // A need that is not understood can stand against anything.
    if (need === null) return [{ need: id, ingredient: null, name: id, grade: "unknown" }];
    return [
      ...entries.flatMap((entry) => againstEntry(need, entry, where)),
      ...unlisted.flatMap(({ food, name }): readonly Reason[] =>
        substanceAgainstNeed(food, need) === null
          ? []
          : [{ need: id, ingredient: null, name, grade: "check" }],
      ),
      ...(broughtTogether(factsOf(entries), need)
        ? [{ need: id, ingredient: null, name: need.apart.join(", "), grade: "certain" as const }]
        : []),
    ];
  });
};

const againstEntry = (need: Need, entry: Entry, where: Where): readonly Reason[] => {
  const reason = (name: string, grade: Reason["grade"]): Reason => ({
    need: need.id,
    ingredient: entry.measured.ingredient,
    name,
    grade,
  });
  const { name } = entry.measured;
  const grade = entry.food === null ? "unknown" : againstFood(need, entry.food, entry, where);
  const others = alternativesOf(where.dish, entry, where.cards).flatMap((other) => {
    const food = other.food === null ? null : foodById(other.food);
    if (food === null) return [reason(other.name, "unknown")];
    // The line only allows it: the kitchen must say which was taken.
    return againstFood(need, food, entry, where) === null ? [] : [reason(other.name, "check")];
  });
  return [...(grade === null ? [] : [reason(name, grade)]), ...others];
};

const againstFood = (
  need: Need,
  food: Food,
  entry: Entry,
  { dish, swaps, cards }: Where,
): AllergenGrade | null => {
  const { measured } = entry;
  const card = measured.card === null ? null : (cards.get(measured.card) ?? null);
  const cooked = isFoodCookedThrough(dish, swaps, measured, card);
  return strongest([
    ...[substanceAgainstNeed(food, need)].flatMap((grade) => grade ?? []),
    ...food.hazards.flatMap((hazard) => againstHazard(need, hazard, cooked)),
  ]);
};

// What cooking does not take away.
const stays: readonly HazardKind[] = ["liver", "high-mercury-fish", "choking"];

const againstHazard = (need: Need, hazard: HazardKind, cooked: boolean): readonly AllergenGrade[] => {
  const helped = cooked && !stays.includes(hazard);
  if (need.cautions.includes(hazard)) return [helped ? "check" : "typical"];
  return need.asks.cautions.includes(hazard) && !helped ? ["check"] : [];
};

const factsOf = (entries: readonly Entry[]): ReadonlySet<DietFact> =>
  new Set(
    entries.flatMap((entry) =>
      entry.food === null ? [] : withMadeOf(entry.food).flatMap((held) => held.food.diet),
    ),
  );

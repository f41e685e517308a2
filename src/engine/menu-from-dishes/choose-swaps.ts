import { againstNeed } from "../larder/against-need.ts";
import { foodById } from "../larder/foods.ts";
import type { Dish } from "../model/dish.ts";
import type { Need } from "../model/need.ts";
import type { Line } from "./dish-lines.ts";
import { clash } from "./swap-lines.ts";

/** What stands against a need in a version: the line, and whether it rules the dish out or must only be asked. */
type Objection = { readonly need: Need; readonly line: Line; readonly rulesOut: boolean };

/** Everything in these lines that the tables hold against these needs. */
const objections = (lines: readonly Line[], needs: readonly Need[]): readonly Objection[] =>
  needs.flatMap((need) =>
    lines.flatMap((line) => {
      const grades = line.foods.flatMap((m) => {
        const food = m.food === null ? null : foodById(m.food);
        return (food === null ? null : againstNeed(food, need)) ?? [];
      });
      if (grades.length === 0) return [];
      return [{ need, line, rulesOut: grades.some((g) => g !== "check") }];
    }),
  );

/** The swaps chosen for a guest, and what still rules the dish out with them. */
export type Choice = { readonly swaps: readonly number[]; readonly against: readonly Objection[] };

// Every set of swaps is tried; a card with more than this many that matter is cut to the first ones.
const mostSwaps = 10;

const subsets = (places: readonly number[]): readonly (readonly number[])[] => {
  const sets: (readonly number[])[] = [[]];
  for (const place of places) sets.push(...sets.map((set) => [...set, place]));
  return sets;
};

/**
 * The card's swaps that clear a dish for a guest's needs. Of all sets of swaps that can be made together: the one that
 * leaves least that rules the dish out, then least to be asked about, then fewest swaps that were written for other
 * needs, then fewest swaps, then the card's order. Nothing is swapped that does not help.
 */
export const chooseSwaps = (
  dish: Dish,
  needs: readonly Need[],
  linesWith: (swaps: readonly number[]) => readonly Line[],
): Choice => {
  const asWritten = objections(linesWith([]), needs);
  if (asWritten.length === 0) return { swaps: [], against: [] };
  const places = new Set(asWritten.map((o) => o.line.ingredient));
  const ids = new Set(needs.map((n) => n.id));
  const helpful = dish.swaps
    .flatMap((swap, i) => (swap.out.some((place) => places.has(place)) ? [i] : []))
    .slice(0, mostSwaps);
  const ranked = subsets(helpful)
    .filter((set) => !clash(dish, set))
    .map((swaps, order) => {
      const all = objections(linesWith(swaps), needs);
      const against = all.filter((o) => o.rulesOut);
      const foreign = swaps.filter((s) => !(dish.swaps[s]?.needs ?? []).some((need) => ids.has(need)));
      return { swaps, against, rank: [against.length, all.length, foreign.length, swaps.length, order] };
    })
    .sort((a, b) => compareRanks(a.rank, b.rank));
  const best = ranked[0];
  return { swaps: best?.swaps ?? [], against: best?.against ?? [] };
};

const compareRanks = (a: readonly number[], b: readonly number[]): number => {
  for (let i = 0; i < a.length; i += 1) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
};

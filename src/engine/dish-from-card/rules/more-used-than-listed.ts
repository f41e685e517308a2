import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish, Ingredient, Use } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";

// Shares read from words ("a third", "two thirds") may add up to a little over one.
const tolerance = 1.05;

/** Ingredients of which the method takes more than the list holds. */
export const moreUsedThanListed: Rule = {
  code: "more-used-than-listed",
  check: (dish) => {
    const usesOf = new Map<number, Use[]>();
    for (const { action } of placedActions(dish))
      for (const use of action.uses) {
        if (use.ingredient === null) continue;
        const uses = usesOf.get(use.ingredient) ?? [];
        uses.push(use);
        usesOf.set(use.ingredient, uses);
      }
    const parted = toldIn(dish);
    return dish.ingredients.flatMap((i) => {
      const uses = usesOf.get(i.index) ?? [];
      const share = uses.reduce((sum, u) => sum + u.share, 0);
      const last = uses.at(-1);
      const told = toldShares(dish, i, parted);
      if (last !== undefined && (share <= tolerance || uses.every((u) => u.share === 1))) {
        // Words that take all of it twice name it twice; only parts that are told make a sum.
        const sum = told.reduce((all, t) => all + t.share, 0);
        const end = told.at(-1);
        return sum <= tolerance || end === undefined ? [] : [say(dish, i, sum, end.span, told)];
      }
      // A fruit's juice, zest and wedges are told by shares that nobody measures.
      if (share <= 2 && /^(?:lemon|lime|orange|grapefruit)$/.test(i.food ?? "")) return [];
      if (share <= tolerance || last === undefined) return [];
      return [say(dish, i, share, last.span, [i, ...uses.slice(0, -1)])];
    });
  },
};

const say = (
  dish: Dish,
  i: Ingredient,
  share: number,
  span: Span,
  related: readonly { readonly span: Span }[],
): Finding =>
  makeFinding(
    "more-used-than-listed",
    dish.source,
    span,
    { name: i.name, share: Math.round(share * 100) / 100 },
    { related: related.map((r) => ({ source: dish.source, span: r.span })) },
  );

const shareOf: ReadonlyMap<string, number> = new Map([
  ["three quarters", 3 / 4],
  ["two thirds", 2 / 3],
  ["half", 1 / 2],
  ["a third", 1 / 3],
  ["a quarter", 1 / 4],
]);

const partOf =
  /(?<!other |second )\b(three[- ]quarters|two[- ]thirds|half|a third|a quarter)(?: of)? the (\p{L}+)/giu;
const partWords = /\b(?:half|thirds?|quarters?)\b/i;

type Told = { readonly share: number; readonly span: Span };

/** Every part that the method tells in so many words ("half the butter"), by the word behind it. */
const toldIn = (dish: Dish): ReadonlyMap<string, readonly Told[]> => {
  const byWord = new Map<string, Told[]>();
  for (const step of dish.steps) {
    if (!partWords.test(step.text)) continue;
    for (const found of step.text.matchAll(partOf)) {
      const start = step.span.start + found.index;
      const share = shareOf.get((found[1] ?? "").toLowerCase().replace("-", " ")) ?? 0;
      const word = (found[2] ?? "").toLowerCase();
      byWord.set(word, [
        ...(byWord.get(word) ?? []),
        { share, span: { start, end: start + found[0].length } },
      ]);
    }
  }
  return byWord;
};

/** Parts of a line that the method takes in so many words, each time it says so. */
const toldShares = (
  dish: Dish,
  i: Ingredient,
  told: ReadonlyMap<string, readonly Told[]>,
): readonly Told[] => {
  const head = i.name.toLowerCase().split(" ").at(-1) ?? "";
  if (told.size === 0) return [];
  if (head.length < 3 || /[^\p{L}]/u.test(head)) return [];
  const found = told.get(head) ?? [];
  const alike =
    found.length > 0 && dish.ingredients.some((o) => o !== i && o.name.toLowerCase().endsWith(head));
  return alike ? [] : found;
};

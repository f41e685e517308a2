import type { Edit } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";
import { gramsWhere, isFood } from "./whole-weights.ts";

/** Days that garlic or herbs in oil are kept in the fridge at most. Source: USDA FSIS and CDC on botulism: four days. */
const mostDays = 4;
const long =
  /\b(?:(\d+|two|three|four|five|six|several|a few)\s+(weeks?|months?)|a (?:week|month)|(\d+)\s+days?|indefinitely)\b/i;

const warm =
  /\b(?:at room temperature|at an ambient temperature|in (?:a|the) (?:cupboard|pantry|larder)|on the shelf)\b/i;
const kept = /\b(?:keep|keeps|kept|store|stores|stored)\b/i;

/**
 * Garlic or herbs under oil that are to be kept for longer than a few days, or not in the fridge: without air and acid,
 * Clostridium botulinum can grow. Source: CDC, "Home-canned foods"; USDA FSIS. Vinegar or lemon in it is taken as acid;
 * what is frozen is left alone.
 */
export const garlicInOilKept: Rule = {
  code: "garlic-in-oil-kept",
  check: (dish) => {
    const oil = gramsWhere(dish, isFood(/\boil\b/i));
    const all = gramsWhere(dish, () => true);
    const risky = dish.ingredients.some(isFood(/\bgarlic\b|\bbasil\b|\bchilli\b|\brosemary\b|\bthyme\b/i));
    const acid = dish.ingredients.some(isFood(/vinegar|lemon|lime|citric/i));
    if (!risky || acid || all <= 0 || oil / all < 0.5) return [];
    return clausesOnKeeping(dish).flatMap((clause) => {
      const days = long.exec(clause.text);
      const isLong = days !== null && (days[3] === undefined || Number(days[3]) > mostDays);
      // Some minutes or hours out of the fridge are work, not keeping.
      const place = /\b(?:min|hour|hr)/i.test(clause.text) ? null : warm.exec(clause.text);
      const edits: Edit[] = [];
      if (place !== null) edits.push(replaceWords(spanOf(clause, place), "in the fridge"));
      if (days !== null && isLong) edits.push(replaceWords(spanOf(clause, days), `${mostDays} days`));
      const span = edits.at(-1)?.span;
      if (span === undefined) return [];
      return [
        makeFinding(
          "garlic-in-oil-kept",
          dish.source,
          span,
          { days: mostDays },
          { fixes: [{ kind: "add-caution", edits }] },
        ),
      ];
    });
  },
};

type Clause = { readonly text: string; readonly start: number };

const spanOf = (clause: Clause, found: RegExpExecArray): Span => {
  const start = clause.start + found.index;
  return { start, end: start + found[0].length };
};

/** What the card says of keeping, in its own place or in the middle of a method, a clause at a time, each once. */
const clausesOnKeeping = (dish: Dish): readonly Clause[] => {
  const clauses = new Map<number, Clause>();
  const add = (text: string, start: number, wanted: (clause: string) => boolean): void => {
    for (const found of text.matchAll(/\S(?:[^.!?;,]|[.,](?=\d)|,(?!\s*or\b))*/g)) {
      const at = start + found.index;
      if (wanted(found[0]) && !/\bfreez|\bfrozen/i.test(found[0]))
        clauses.set(at, { text: found[0], start: at });
    }
  };
  for (const keeping of dish.keeping) add(keeping.text, keeping.span.start, () => true);
  for (const { text, span } of dish.steps) add(text, span.start, (clause) => kept.test(clause));
  return [...clauses.values()];
};

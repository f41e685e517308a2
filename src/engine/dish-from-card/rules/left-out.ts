import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";
import { placedActions, worksOn } from "./dish-graph.ts";
import { isPreserved, keepsBadly } from "./keeps-badly.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

const place =
  "(?:at (?:a )?(?:cool )?room temperature|on the (?:side|worktop|counter|bench|table|stove|hob)|in the pan|out of the fridge|in (?:a|the) (?:warm|cool) (?:place|room)|unrefrigerated|(?:leave|left|keep|stand|sit|stood|sat)s? (?:\\w+ ){0,3}out\\b(?! of the (?:wind|sun|way|heat))|in the kitchen|under a (?:cloth|tea towel|lid))";
const long =
  "(?:overnight|all (?:day|night|morning|afternoon|evening)|(?:un)?til(?:l)? (?:tomorrow|the next (?:day|morning)|the (?:morning|evening|afternoon|night)|(?:evening|morning|tonight))|(?:for )?(?:(?:at least |about |up to )?(?:[3-9]|\\d\\d)(?: (?:or|to) \\d+)? hours|(?:three|four|five|six|eight|ten|several) hours|(?:a|two|\\d+) days?))";
const aside = /\b(?:onions?|beans|soak\w*)\b/i;
const out = new RegExp(`\\b(?:${place}[^.;]{0,30}\\b${long}|${long}[^.;]{0,20}\\b${place})`, "i");

const ofWhole = /^(?:it|they|this|these|keep|keeps|holds?|leave|stands?)\b/i;

/** Mayonnaise, fresh cream and cooked egg in a dish that goes into no oven. */
const spoilsCold = (dish: Dish): Ingredient | null =>
  placedActions(dish).some(({ action }) => action.station === "oven")
    ? null
    : (dish.ingredients.find((i) =>
        /\b(?:mayonnaise|(?:double|whipping|single|heavy|fresh) cream|hard-boiled|mascarpone|custard)\b/i.test(
          i.text,
        ),
      ) ?? null);

/**
 * Meat, fish, rice or stock that stands out of the cold for hours. Source: FSA (within one to two hours); 2013 Food
 * Hygiene Regulations, Schedule 4 (four hours once above 8 °C); FDA Food Code 3-501.19 (four hours).
 */
export const leftOut: Rule = {
  code: "left-out",
  check: (dish) => {
    const risky = keepsBadly(dish) ?? spoilsCold(dish);
    if (risky === null || isPreserved(dish) || placedActions(dish).length === 0) return [];
    const say = (span: Span): Finding =>
      makeFinding(
        "left-out",
        dish.source,
        span,
        { name: risky.name },
        {
          related: [{ source: dish.source, span: risky.span }],
          fixes: [{ kind: "add-caution", edits: [replaceWords(span, "for no longer than 90 minutes")] }],
        },
      );
    const kept = dish.keeping.flatMap((k) => {
      // "The crumbs hold a day at room temperature" speaks of a part that may.
      const found = ofWhole.test(k.text.trim()) && k.part === null ? out.exec(k.text) : null;
      if (found === null || dish.steps.some((s) => s.span.start <= k.span.start && s.span.end >= k.span.end))
        return [];
      const start = k.span.start + found.index;
      return [say({ start, end: start + found[0].length })];
    });
    const stood = dish.steps.flatMap((step) => {
      const span = findIn(step, out);
      if (span === null || /\b(?:prove|rise|dough|starter|ferment|dry|defrost|thaw)\b/i.test(step.text))
        return [];
      // Onions that draw, beans that soak: what stands is another food than the one that spoils.
      const stands = placedActions(dish).filter(
        ({ action }) => action.span.start <= span.end && action.span.end >= span.start,
      );
      if (stands.length > 0 && !stands.some((p) => worksOn(dish, p, risky.index)) && aside.test(step.text))
        return [];
      return [say(span)];
    });
    return [...stood, ...kept];
  },
};

import type { Finding, Fix } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Span } from "../../model/span.ts";
import { actionsOn, placedActions } from "./dish-graph.ts";
import { keepsBadly } from "./keeps-badly.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

const again =
  /\b(?:re-?heat(?:ed|ing)?(?: it| them)? (?:again|twice|more than once|a second time|as often as)|re-?heat(?:ed)? and re-?heat(?:ed)?)\b[^.,;]*/i;

/** Cooked food that is heated up again more than once. Source: FSA, "reheat food only once"; once only in data/limits.csv. */
export const reheatedTwice: Rule = {
  code: "reheated-twice",
  check: (dish) => {
    const say = (span: Span, fixes: readonly Fix[]): readonly Finding[] => [
      makeFinding("reheated-twice", dish.source, span, {}, { fixes }),
    ];
    const onceOnly = (span: Span): readonly Fix[] => [
      { kind: "add-caution", edits: [replaceWords(span, "reheat once only")] },
    ];
    for (const step of dish.steps) {
      const told = findIn(step, again);
      if (told !== null) return say(told, onceOnly(told));
    }
    for (const keeping of dish.keeping) {
      const told = again.exec(keeping.text);
      if (told !== null) {
        const start = keeping.span.start + told.index;
        const span = { start, end: start + told[0].length };
        return say(span, onceOnly(span));
      }
    }
    const risky = keepsBadly(dish);
    if (risky === null) return [];
    const own = new Set(actionsOn(dish, risky.index));
    const reheats = placedActions(dish).filter(
      (p) =>
        p.action.technique === "reheat" &&
        own.has(p) &&
        !/\bor\b|microwave|alternativ|leftover/i.test(p.step.text),
    );
    const last = reheats.at(-1);
    if (last === undefined || last.step === reheats[0]?.step) return [];
    return say(last.action.span, []);
  },
};

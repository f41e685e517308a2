import { makeFinding } from "../../findings/make-finding.ts";
import { techniqueById } from "../../larder/techniques.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

/** What ovens can be set to, °C; stone ovens are hotter and are called so. Common practice, no source. */
const anyOven = { low: 40, high: 300 };

/** A setting that is not usual for what is done: a scale mixed up, a figure mistyped. */
export const temperatureDoubtful: Rule = {
  code: "temperature-doubtful",
  check: (dish) =>
    placedActions(dish).flatMap(({ action, step }) => {
      const usual = action.technique === null ? null : (techniqueById(action.technique)?.celsius ?? null);
      const range = usual ?? (action.technique === "preheat" ? anyOven : null);
      const celsius = action.celsius;
      if (range === null || celsius === null || (celsius >= range.low && celsius <= range.high)) return [];
      const nearest = celsius > range.high ? range.high : range.low;
      const figure = findIn(step, new RegExp(`\\b${Math.round(celsius)}(?=\\s*(?:°|º|˚|degrees?)?\\s*C\\b)`));
      return [
        makeFinding(
          "temperature-doubtful",
          dish.source,
          action.span,
          {
            verb: action.verb,
            celsius,
            low: range.low,
            high: range.high,
          },
          figure === null
            ? {}
            : { fixes: [{ kind: "write-temperature", edits: [replaceWords(figure, String(nearest))] }] },
        ),
      ];
    }),
};

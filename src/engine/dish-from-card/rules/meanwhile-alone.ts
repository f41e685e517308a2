import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";

/** "Meanwhile" at the very beginning, where nothing goes on yet. */
export const meanwhileAlone: Rule = {
  code: "meanwhile-alone",
  check: (dish) => {
    const first = dish.steps[0];
    const words =
      first === undefined ? null : findIn(first, /^\s*(?:meanwhile|in the meantime)\s*,?\s*\p{L}?/iu);
    if (words === null) return [];
    const next = dish.text.slice(words.end - 1, words.end).toUpperCase();
    return [
      makeFinding(
        "meanwhile-alone",
        dish.source,
        words,
        {},
        { fixes: [{ kind: "add-step", edits: [replaceWords(words, next)] }] },
      ),
    ];
  },
};

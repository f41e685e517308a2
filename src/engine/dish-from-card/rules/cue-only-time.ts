import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { untimedActions, writeTime } from "./times.ts";

/** Cooking or waiting that goes on until a cue, with no time beside it. */
export const cueOnlyTime: Rule = {
  code: "cue-only-time",
  check: (dish) =>
    untimedActions(dish, true).map(({ action, assumed }) =>
      makeFinding(
        "cue-only-time",
        dish.source,
        action.span,
        { verb: action.verb, cue: action.cue ?? "", assumed },
        {
          fixes: [
            {
              kind: "write-time",
              edits: [writeTime(action, `, about ${Math.max(1, Math.round(assumed))} minutes`)],
            },
          ],
        },
      ),
    ),
};

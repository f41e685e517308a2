import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { untimedActions, writeTime } from "./times.ts";

/** Cooking or waiting with neither a time nor a cue. */
export const timeMissing: Rule = {
  code: "time-missing",
  check: (dish) =>
    untimedActions(dish, false).map(({ action, assumed }) =>
      makeFinding(
        "time-missing",
        dish.source,
        action.span,
        { verb: action.verb, assumed },
        {
          fixes: [
            {
              kind: "write-time",
              edits: [writeTime(action, ` for ${Math.max(1, Math.round(assumed))} minutes`)],
            },
          ],
        },
      ),
    ),
};

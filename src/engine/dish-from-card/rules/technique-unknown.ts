import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { stepTokens } from "./step-tokens.ts";

// Steps that open with one of these remark on the dish and order nothing.
const remarks =
  /^(it|it's|its|this|that|these|those|they|they're|there|the|a|an|i|i've|i'm|if|you|you'll|we|when|once|note|tip|tips|for|my|some|no|not|don't|do|as|or|and|but|so|in|at|on|variation|variations|optional|optionally|nb|ps|all|most|each|be|is|are|while|after|before|because|what|how|why)$/;

const fewest = 2;

/** A step from which no action could be read. */
export const techniqueUnknown: Rule = {
  code: "technique-unknown",
  check: (dish) =>
    dish.steps.flatMap((step) => {
      if (step.actions.length > 0 || step.phase === "to-serve" || /[:?]\s*$/.test(step.text)) return [];
      const words = stepTokens(step).filter((t) => t.kind === "word");
      const first = words[0];
      if (first === undefined || words.length < fewest || remarks.test(first.text)) return [];
      const span = { start: step.span.start + first.at, end: step.span.start + first.end };
      return [makeFinding("technique-unknown", dish.source, span, { verb: first.text })];
    }),
};

import type { Step } from "../../model/dish.ts";
import { type Token, tokenise } from "../steps/tokens.ts";

const kept = new WeakMap<Step, readonly Token[]>();

/** The tokens of a step's text; several rules ask for the same ones. */
export const stepTokens = (step: Step): readonly Token[] => {
  const known = kept.get(step);
  if (known !== undefined) return known;
  const tokens = tokenise(step.text);
  kept.set(step, tokens);
  return tokens;
};

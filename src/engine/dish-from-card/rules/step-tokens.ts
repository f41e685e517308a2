import type { Step } from "../../model/dish.ts";
import { type Token, tokenise } from "../steps/tokens.ts";

/** The tokens of a step's text, as the reading of steps cut them. */
export const stepTokens = (step: Step): readonly Token[] => tokenise(step.text);

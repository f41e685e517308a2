import type { Edit } from "../../findings/finding.ts";
import type { Step } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";

/** Writes a sentence behind a step. */
export const sayAfter = (step: Step, sentence: string): Edit => ({
  span: { start: step.span.end, end: step.span.end },
  text: `${/[.!?]\s*$/.test(step.text) ? "" : "."} ${sentence}`,
});

/** Writes a sentence before a step. */
export const sayBefore = (step: Step, sentence: string): Edit => ({
  span: { start: step.span.start, end: step.span.start },
  text: `${sentence} `,
});

/** Puts other words in the place of some. */
export const replaceWords = (span: Span, text: string): Edit => ({ span, text });

/** Where a pattern stands in a step, as a span of the card; null when it does not. */
export const findIn = (step: Step, pattern: RegExp): Span | null => {
  const found = pattern.exec(step.text);
  return found === null
    ? null
    : { start: step.span.start + found.index, end: step.span.start + found.index + found[0].length };
};

import type { ComponentChildren } from "preact";
import type { Span } from "#engine/index.ts";

/** How items beside the editor and the words in it point at each other. */
export type Linking = {
  /** The place of the cursor or pointer in the words. */
  readonly at: number | null;
  readonly show: (span: Span | null) => void;
  readonly goTo: (span: Span) => void;
};

/** True when the place lies in the span. */
export const isAt = (at: number | null, span: Span): boolean =>
  at !== null && at >= span.start && at <= span.end;

/** Words that were read from a stretch of the card: pointing at them marks the stretch, pressing goes there. */
export const FromWords = ({
  span,
  linking,
  children,
}: {
  span: Span;
  linking: Linking;
  children: ComponentChildren;
}) => (
  <button
    type="button"
    class="from-words"
    onMouseEnter={() => linking.show(span)}
    onMouseLeave={() => linking.show(null)}
    onFocus={() => linking.show(span)}
    onBlur={() => linking.show(null)}
    onClick={() => linking.goTo(span)}
  >
    {children}
  </button>
);

import type { SourceId, Span } from "../model/span.ts";
import type { Code, FactsOf } from "./codes.ts";
import type { Severity } from "./severity.ts";

/** Replaces a stretch of the source with other words; an empty span inserts. */
export type Edit = { readonly span: Span; readonly text: string };

/** What a fix does; the words for it live in src/words. */
export type FixKind =
  | "write-amount"
  | "write-unit"
  | "write-time"
  | "write-temperature"
  | "write-yield"
  | "rename-food"
  | "add-ingredient"
  | "remove-ingredient"
  | "add-step"
  | "use-ingredient"
  | "correct-amount"
  | "add-caution";

/** One way out: edits of the source, applied together. Edits never overlap. */
export type Fix = { readonly kind: FixKind; readonly edits: readonly Edit[] };

/** A second place that has to do with the finding: the other amount, the line that was meant. */
export type Related = { readonly source: SourceId; readonly span: Span };

/** What the tool has to say about a place in the words. Data, never a sentence. */
export type Finding = {
  readonly [C in Code]: {
    readonly code: C;
    readonly severity: Severity;
    readonly source: SourceId;
    readonly span: Span;
    /** Where in a sitting, kitchen or price file, as a path ("courses/1/dishes/0"); null when the span says it. */
    readonly path: string | null;
    readonly facts: FactsOf[C];
    readonly related: readonly Related[];
    readonly fixes: readonly Fix[];
  };
}[Code];

import type { Diagnostic } from "@codemirror/lint";
import type { EditorView } from "@codemirror/view";
import type { Severity } from "#engine/index.ts";

/** Something said about a stretch of a text, with the ways out that can be applied. */
export type Remark = {
  readonly start: number;
  readonly end: number;
  readonly severity: Severity;
  readonly says: string;
  readonly write: string | null;
  readonly fixes: readonly { readonly title: string; readonly apply: () => void }[];
  /** The food that is not known, which the cook may say is their own; null for any other remark. */
  readonly unknownFood: string | null;
};

const severities = { stop: "error", warn: "warning", note: "info" } as const;

/** Remarks as the editor underlines them. */
export const diagnosticsOf = (remarks: readonly Remark[], length: number): Diagnostic[] =>
  remarks.map(({ start, end, severity, says, write, fixes }) => ({
    from: Math.min(start, length),
    to: Math.min(end, length),
    severity: severities[severity],
    markClass: `cm-${severity}`,
    message: write === null ? says : `${says} ${write}`,
    actions: fixes.map(({ title, apply }) => ({
      name: title,
      apply: (view: EditorView) => {
        apply();
        view.focus();
      },
    })),
  }));

import { StateEffect, StateField } from "@codemirror/state";
import { Decoration, type DecorationSet, EditorView } from "@codemirror/view";
import type { Span } from "#engine/index.ts";

/** Marks the words that an item beside the editor was read from; null marks none. */
export const markLinked = StateEffect.define<Span | null>();

const linked = Decoration.mark({ class: "cm-linked" });

/** Keeps the marked stretch through edits. */
export const linkedSpan = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update: (marks, transaction) => {
    let now = marks.map(transaction.changes);
    for (const effect of transaction.effects) {
      if (!effect.is(markLinked)) continue;
      const length = transaction.newDoc.length;
      const span = effect.value;
      const from = Math.min(span?.start ?? 0, length);
      const to = Math.min(span?.end ?? 0, length);
      now = span === null || to <= from ? Decoration.none : Decoration.set([linked.range(from, to)]);
    }
    return now;
  },
  provide: (field) => EditorView.decorations.from(field),
});

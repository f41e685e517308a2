import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { lintKeymap, setDiagnostics } from "@codemirror/lint";
import { highlightSelectionMatches, searchKeymap } from "@codemirror/search";
import { Annotation, EditorState } from "@codemirror/state";
import { drawSelection, EditorView, keymap } from "@codemirror/view";
import { useEffect, useRef } from "preact/hooks";
import type { Span } from "#engine/index.ts";
import { linkedSpan, markLinked } from "./linked-span.ts";
import { diagnosticsOf, type Remark } from "./remarks.ts";
import { shortestChange } from "./shortest-change.ts";

/** Changes that come from the desk are not typed words. */
const fromDesk = Annotation.define<boolean>();

/** A place to go to; a new object goes there again. */
export type GoTo = { readonly span: Span };

type Props = {
  readonly label: string;
  readonly text: string;
  /** Remarks, and the text they speak of: they are drawn only while it is the one on the screen. */
  readonly remarks: { readonly of: string; readonly list: readonly Remark[] };
  readonly linked: Span | null;
  readonly goTo: GoTo | null;
  readonly onType: (text: string) => void;
  /** The place of the cursor, or of the pointer over the words. */
  readonly onPlace: (offset: number | null) => void;
};

/** The editor of plain words. */
export const WordsView = (props: Props) => {
  const host = useRef<HTMLDivElement>(null);
  const view = useRef<EditorView | null>(null);
  const latest = useRef(props);
  latest.current = props;
  const { text, remarks, linked, goTo, label } = props;

  useEffect(() => {
    if (host.current === null) return undefined;
    const made = new EditorView({
      parent: host.current,
      state: EditorState.create({ doc: latest.current.text, extensions: extensions(label, latest) }),
    });
    view.current = made;
    return () => {
      made.destroy();
      view.current = null;
    };
  }, [label]);

  useEffect(() => {
    const now = view.current;
    if (now === null) return;
    const before = now.state.doc.toString();
    if (before !== text)
      now.dispatch({ changes: shortestChange(before, text), annotations: fromDesk.of(true) });
  }, [text, label]);

  useEffect(() => {
    const now = view.current;
    if (now === null || now.state.doc.toString() !== remarks.of) return;
    now.dispatch(setDiagnostics(now.state, diagnosticsOf(remarks.list, now.state.doc.length)));
  }, [remarks, label]);

  useEffect(() => {
    const now = view.current;
    if (now === null) return;
    // Beside the items the editor scrolls by itself; on a narrow page it is not shown with them.
    const reveal =
      linked !== null && matchMedia("(min-width: 901px)").matches
        ? [
            EditorView.scrollIntoView(Math.min(linked.start, now.state.doc.length), {
              y: "nearest",
              yMargin: 40,
            }),
          ]
        : [];
    now.dispatch({ effects: [markLinked.of(linked), ...reveal] });
  }, [linked]);

  useEffect(() => {
    const now = view.current;
    if (now === null || goTo === null) return;
    const length = now.state.doc.length;
    const anchor = Math.min(goTo.span.start, length);
    now.dispatch({
      selection: { anchor, head: Math.min(goTo.span.end, length) },
      effects: EditorView.scrollIntoView(anchor, { y: "center" }),
    });
    now.focus();
  }, [goTo]);

  return <div class="words-view" ref={host} />;
};

const extensions = (label: string, latest: { readonly current: Props }) => [
  history(),
  drawSelection(),
  EditorView.lineWrapping,
  highlightSelectionMatches(),
  keymap.of([...lintKeymap, ...searchKeymap, ...historyKeymap, ...defaultKeymap]),
  linkedSpan,
  EditorView.contentAttributes.of({ "aria-label": label, spellcheck: "true", autocapitalize: "sentences" }),
  EditorView.updateListener.of((update) => {
    if (update.docChanged && !update.transactions.some((t) => t.annotation(fromDesk) === true))
      latest.current.onType(update.state.doc.toString());
    if (update.selectionSet || update.docChanged) latest.current.onPlace(update.state.selection.main.head);
  }),
  EditorView.domEventHandlers({
    mousemove: (event, view) => {
      latest.current.onPlace(view.posAtCoords({ x: event.clientX, y: event.clientY }));
      return false;
    },
    mouseleave: (_event, view) => {
      latest.current.onPlace(view.hasFocus ? view.state.selection.main.head : null);
      return false;
    },
  }),
];

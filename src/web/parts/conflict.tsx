import type { DeskDocument } from "../state/desk.ts";

/** Two hands wrote the same document: both versions, and what to do with them. Nothing is lost until the cook says so. */
export const Conflict = ({
  document,
  settle,
  keepBoth,
}: {
  document: DeskDocument;
  settle: (text: string) => void;
  keepBoth: (() => void) | null;
}) => {
  const { theirs } = document;
  if (theirs === null) return null;
  return (
    <section class="conflict" aria-labelledby="conflict-head" role="alert">
      <h2 id="conflict-head">These words were changed elsewhere too</h2>
      <p>Yours are in the editor and are kept in this browser. The other version reads:</p>
      <textarea readOnly rows={8} aria-label="The other version" value={theirs.text} />
      <p class="buttons">
        <button type="button" onClick={() => settle(document.text)}>
          Keep mine
        </button>
        <button type="button" onClick={() => settle(theirs.text)}>
          Take the other
        </button>
        {keepBoth !== null && (
          <button type="button" onClick={keepBoth}>
            Keep both
          </button>
        )}
      </p>
    </section>
  );
};

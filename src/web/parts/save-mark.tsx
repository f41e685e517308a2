import type { SaveState } from "../state/desk.ts";

const words: { readonly [S in SaveState]: string } = {
  saved: "Saved",
  waiting: "Saving…",
  saving: "Saving…",
  "kept-here": "Not saved: kept in this browser",
  refused: "Not saved: the server refused it; kept in this browser",
  conflict: "Not saved: changed elsewhere too",
};

/** How the words stand to the server, told also to those who do not see it. */
export const SaveMark = ({ state }: { state: SaveState }) => (
  <span class="save-mark" data-state={state} role="status" aria-live="polite">
    {words[state]}
  </span>
);

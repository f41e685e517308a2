import type { DeskDocument, Draft } from "./desk.ts";
import { keyOf } from "./desk.ts";

const prefix = "tamis:draft:";

/** Keeps the words of a document in the browser, or lets them go once the server has them. */
export const keepDraft = (document: DeskDocument): void => {
  const name = prefix + keyOf(document.book, document.path);
  try {
    if (document.state === "saved") localStorage.removeItem(name);
    else {
      const draft: Draft = { text: document.text, basedOn: document.basedOn, kind: document.kind };
      localStorage.setItem(name, JSON.stringify(draft));
    }
  } catch {
    // A browser without storage still has the words on the page, and says that they are not saved.
  }
};

/** The drafts left from before, by document key. */
export const keptDrafts = (): ReadonlyMap<string, Draft> => {
  const drafts = new Map<string, Draft>();
  try {
    for (let i = 0; i < localStorage.length; i += 1) {
      const name = localStorage.key(i);
      if (name === null || !name.startsWith(prefix)) continue;
      const text = localStorage.getItem(name);
      if (text !== null) drafts.set(name.slice(prefix.length), JSON.parse(text) as Draft);
    }
  } catch {
    // Nothing can be kept here, so nothing was.
  }
  return drafts;
};

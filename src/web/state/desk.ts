import type { DocumentKind, StoredDocument } from "#wire/documents.ts";
import type { SaveAnswer, Version } from "./api.ts";

/** How the words on the screen stand to those on the server. */
export type SaveState = "saved" | "waiting" | "saving" | "kept-here" | "refused" | "conflict";

/** A document on the desk: the words being written, and what the server is known to have. */
export type DeskDocument = {
  readonly book: string;
  readonly path: string;
  readonly kind: DocumentKind;
  readonly text: string;
  /** The server's words when `basedOn` was read; null for a document that it has not yet. */
  readonly base: string | null;
  /** The revision that `base` is; 0 for a document that the server has not yet. */
  readonly basedOn: number;
  readonly state: SaveState;
  /** The words that another hand saved meanwhile; only while in conflict. */
  readonly theirs: Version | null;
};

/** Everything open, by key. */
export type Desk = {
  readonly loading: "loading" | "ready" | "failed";
  readonly online: boolean;
  readonly documents: ReadonlyMap<string, DeskDocument>;
};

/** Words kept in the browser that the server may not have. */
export type Draft = { readonly text: string; readonly basedOn: number; readonly kind: DocumentKind };

/** The desk before anything was fetched. */
export const emptyDesk: Desk = { loading: "loading", online: true, documents: new Map() };

/** The key of a document on the desk. */
export const keyOf = (book: string, path: string): string => `${book}/${path}`;

const put = (desk: Desk, document: DeskDocument): Desk => ({
  ...desk,
  documents: new Map(desk.documents).set(keyOf(document.book, document.path), document),
});

/** A stored document as it is laid on the desk, with the draft that was kept of it, if any. */
const laid = (stored: StoredDocument, draft: Draft | null): DeskDocument => {
  const { book, path, kind, text, revision } = stored;
  const fresh: DeskDocument = {
    book,
    path,
    kind,
    text,
    base: text,
    basedOn: revision,
    state: "saved",
    theirs: null,
  };
  if (draft === null || draft.text === text) return fresh;
  if (draft.basedOn === revision) return { ...fresh, text: draft.text, state: "waiting" };
  return { ...fresh, text: draft.text, state: "conflict", theirs: { text, revision } };
};

/** Lays all documents on the desk. Drafts of documents that the server does not have become documents. */
export const laidOut = (
  stored: readonly StoredDocument[],
  drafts: ReadonlyMap<string, Draft>,
  online: boolean,
): Desk => {
  const documents = new Map<string, DeskDocument>();
  for (const s of stored)
    documents.set(keyOf(s.book, s.path), laid(s, drafts.get(keyOf(s.book, s.path)) ?? null));
  for (const [key, draft] of drafts) {
    const [book = "", ...rest] = key.split("/");
    if (!documents.has(key))
      documents.set(key, {
        book,
        path: rest.join("/"),
        kind: draft.kind,
        text: draft.text,
        base: null,
        basedOn: 0,
        state: "waiting",
        theirs: null,
      });
  }
  return { loading: "ready", online, documents };
};

/** Words were typed. While in conflict they are kept, and wait until it is settled. */
export const typed = (desk: Desk, key: string, text: string): Desk => {
  const document = desk.documents.get(key);
  if (document === undefined || document.text === text) return desk;
  return put(desk, { ...document, text, state: document.state === "conflict" ? "conflict" : "waiting" });
};

/** A new document, not yet on the server. */
export const added = (desk: Desk, book: string, path: string, kind: DocumentKind, text: string): Desk =>
  desk.documents.has(keyOf(book, path))
    ? desk
    : put(desk, { book, path, kind, text, base: null, basedOn: 0, state: "waiting", theirs: null });

/** The save of a document has begun. */
export const saveBegun = (desk: Desk, key: string): Desk => {
  const document = desk.documents.get(key);
  return document === undefined ? desk : put(desk, { ...document, state: "saving" });
};

/** The save of `text` has been answered; more may have been typed since. */
export const saveAnswered = (desk: Desk, key: string, text: string, answer: SaveAnswer): Desk => {
  const document = desk.documents.get(key);
  if (document === undefined) return desk;
  switch (answer.kind) {
    case "saved":
      // Someone wrote on top of this save before its answer came: their words still wait to be looked at.
      if (document.theirs !== null && document.theirs.revision > answer.revision)
        return put(desk, { ...document, base: text, basedOn: answer.revision });
      return put(
        { ...desk, online: true },
        {
          ...document,
          base: text,
          basedOn: answer.revision,
          state: document.text === text ? "saved" : "waiting",
          theirs: null,
        },
      );
    case "conflict":
      if (answer.current.text === document.text)
        return put(desk, {
          ...document,
          base: answer.current.text,
          basedOn: answer.current.revision,
          state: "saved",
          theirs: null,
        });
      return put(desk, { ...document, state: "conflict", theirs: answer.current });
    case "unreached":
      return put({ ...desk, online: false }, { ...document, state: "kept-here" });
    case "refused":
      return put(desk, { ...document, state: "refused" });
  }
};

/** Another hand saved a document. Untouched words follow it; words in writing are kept and the two stand side by side. */
export const arrived = (desk: Desk, stored: StoredDocument): Desk => {
  const key = keyOf(stored.book, stored.path);
  const document = desk.documents.get(key);
  if (document === undefined || document.state === "saved" || document.text === stored.text)
    return document?.basedOn === stored.revision ? desk : put(desk, laid(stored, null));
  if (document.basedOn >= stored.revision) return desk;
  return put(desk, {
    ...document,
    state: "conflict",
    theirs: { text: stored.text, revision: stored.revision },
  });
};

/** Settles a conflict: the words given are saved on top of the other version. */
export const settled = (desk: Desk, key: string, text: string): Desk => {
  const document = desk.documents.get(key);
  if (document === undefined || document.theirs === null) return desk;
  const { theirs } = document;
  return put(desk, {
    ...document,
    text,
    base: theirs.text,
    basedOn: theirs.revision,
    state: text === theirs.text ? "saved" : "waiting",
    theirs: null,
  });
};

/** Another hand took a document away. Untouched words go with it; words in writing stay, to be saved as a new document. */
export const takenAway = (desk: Desk, key: string): Desk => {
  const document = desk.documents.get(key);
  if (document === undefined) return desk;
  if (document.state !== "saved") return put(desk, { ...document, base: null, basedOn: 0, theirs: null });
  const documents = new Map(desk.documents);
  documents.delete(key);
  return { ...desk, documents };
};

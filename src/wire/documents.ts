import { isCardFile } from "./card-file.ts";

/** What a document is for, by the ending and the name of its file. */
export type DocumentKind = "card" | "sitting" | "kitchen" | "prices" | "foods";

/** A document as the list shows it. */
export type DocumentSummary = {
  /** The folder of one sitting. */
  readonly book: string;
  /** The file's way within the book: "sitting.yaml", "cards/soup.txt". */
  readonly path: string;
  readonly kind: DocumentKind;
  readonly title: string;
  /** Counts up with each kept text of the document, from 1. */
  readonly revision: number;
  /** ISO 8601, UTC. */
  readonly savedAt: string;
};

/** A document with its text. */
export type StoredDocument = DocumentSummary & { readonly text: string };

/**
 * How a kept text came about: saved in the app; read from a folder; kept aside because another save came first;
 * kept aside because the app's text had been edited since the folder was read; or the mark of a deletion.
 */
export type RevisionOrigin = "saved" | "file" | "aside" | "file-aside" | "deleted";

/** One kept text of a document. */
export type Revision = {
  readonly revision: number;
  readonly savedAt: string;
  readonly origin: RevisionOrigin;
  readonly text: string;
};

/** The body of a save. `basedOn` is the revision that was edited; 0 for a new document. */
export type SaveRequest = { readonly text: string; readonly basedOn: number };

/** The answer to a save that another one came before: what stands now, and the number the rejected text is kept under. */
export type SaveConflict = {
  readonly current: { readonly text: string; readonly revision: number };
  readonly kept: number;
};

/** What is told to every open page when a document changes. */
export type DocumentChange = {
  readonly book: string;
  readonly path: string;
  readonly revision: number;
  /** The page that saved it, so that it need not fetch its own words; null for others. */
  readonly tab: string | null;
  readonly deleted: boolean;
};

/** The header by which a page names itself. */
export const tabHeader = "X-Tamis-Tab";

/** The kind of a document by its path; null for files that are none. */
export const kindOfPath = (path: string): DocumentKind | null => {
  const name = (path.split("/").at(-1) ?? "").toLowerCase();
  if (isCardFile(name)) return "card";
  if (/\.csv$/.test(name)) return "prices";
  if (/\.ya?ml$/.test(name)) {
    // What the commands compare with and replan from is no part of the book.
    if (/what-?if|variants?|night/.test(name)) return null;
    if (name.includes("kitchen")) return "kitchen";
    return name.includes("foods") ? "foods" : "sitting";
  }
  return null;
};

/** A book's name: one plain folder name. */
export const isBookName = (book: string): boolean => /^[\p{L}\p{N}][\p{L}\p{N} ._-]{0,99}$/u.test(book);

/** A document's path: plain names, none of them hidden or leading upwards, and of a known kind. */
export const isDocumentPath = (path: string): boolean =>
  path.length <= 200 &&
  path.split("/").every((name) => /^[\p{L}\p{N}][\p{L}\p{N} .,&'()_-]*$/u.test(name)) &&
  kindOfPath(path) !== null;

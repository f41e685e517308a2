import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { isBookName, isDocumentPath } from "#wire/documents.ts";
import { decode } from "#wire/read-text.ts";
import type { Store } from "./store/store.ts";

/** What reading a folder into the store came to, by path. */
export type FolderLoad = {
  readonly book: string;
  readonly loaded: readonly string[];
  /** Files whose new text was kept beside a text that was edited in the app. */
  readonly aside: readonly string[];
  /** Files that may not be read, or are gone since they were listed. */
  readonly unread: readonly string[];
};

/** Reads the files of a sitting's folder into a book of its own that goes by the folder's name. Files that did not change since are left. */
export const loadFolder = (store: Store, folder: string): FolderLoad => {
  const way = resolve(folder);
  const name = basename(way);
  const book = store.bookOf(way, isBookName(name) ? name : "sitting");
  const outcomes = filesOf(folder, "").map((path) => {
    const text = textOf(join(folder, path));
    if (text === null) return { path, outcome: "unread" as const };
    const digest = createHash("sha256").update(text).digest("hex");
    return { path, outcome: store.load(book, path, text, digest) };
  });
  const of = (outcome: string): readonly string[] =>
    outcomes.filter((o) => o.outcome === outcome).map((o) => o.path);
  return { book, loaded: of("loaded"), aside: of("aside"), unread: of("unread") };
};

const textOf = (file: string): string | null => {
  try {
    return decode(readFileSync(file)).text;
  } catch {
    return null;
  }
};

/** Documents in the folder and in its folders, one level down; other files are left alone. */
const filesOf = (folder: string, below: string): readonly string[] =>
  readdirSync(join(folder, below), { withFileTypes: true })
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const path = below === "" ? entry.name : `${below}/${entry.name}`;
      if (entry.isDirectory())
        return below === "" && !entry.name.startsWith(".") ? filesOf(folder, path) : [];
      return entry.isFile() && isDocumentPath(path) ? [path] : [];
    });

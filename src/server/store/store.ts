import Database from "better-sqlite3";
import {
  type DocumentChange,
  type DocumentSummary,
  kindOfPath,
  type Revision,
  type RevisionOrigin,
  type StoredDocument,
} from "#wire/documents.ts";
import { migrations } from "./migrations.ts";

/** What came of a save. */
export type Saved =
  | { readonly outcome: "saved" | "unchanged"; readonly revision: number }
  | {
      readonly outcome: "conflict";
      readonly current: { readonly text: string; readonly revision: number };
      readonly kept: number;
    };

/** A save as the store takes it. */
export type Save = {
  readonly book: string;
  readonly path: string;
  readonly text: string;
  readonly basedOn: number;
  readonly tab: string | null;
};

/** A change with its place in the order of all changes, for pages that come back. */
type NumberedChange = DocumentChange & { readonly id: number };

/** What a store is made with: its clock, and how a document finds its title. */
type StoreOptions = {
  readonly now: () => string;
  readonly titleOf: (path: string, text: string) => string;
};

/** The documents with every text they ever had. Nothing is overwritten. */
export type Store = {
  readonly list: () => readonly DocumentSummary[];
  readonly get: (book: string, path: string) => StoredDocument | null;
  readonly save: (save: Save) => Saved;
  readonly remove: (book: string, path: string, tab: string | null) => number | null;
  readonly revisions: (book: string, path: string) => readonly Revision[];
  /** The book that a folder is read into: the name wanted, or with a number where another folder has that. */
  readonly bookOf: (folder: string, wanted: string) => string;
  readonly load: (book: string, path: string, text: string, digest: string) => "loaded" | "same" | "aside";
  readonly changesAfter: (id: number) => readonly NumberedChange[];
  readonly lastChange: () => number;
  readonly close: () => void;
};

type Row = {
  readonly id: number;
  readonly book: string;
  readonly path: string;
  readonly kind: DocumentSummary["kind"];
  readonly current: number;
  readonly deleted: number;
  /** The row of the revision that stands. */
  readonly kept: number;
  readonly text: string;
  readonly saved_at: string;
  readonly origin: RevisionOrigin;
};

/** Opens the store in a file, or in memory for ":memory:". */
export const openStore = (file: string, { now, titleOf }: StoreOptions): Store => {
  const db = new Database(file);
  db.pragma("journal_mode = WAL");
  db.pragma("foreign_keys = ON");
  db.pragma("busy_timeout = 5000");
  migrate(db);

  const joined = `SELECT d.id, d.book, d.path, d.kind, d.current, d.deleted, r.id AS kept, r.text, r.saved_at, r.origin
    FROM documents d JOIN revisions r ON r.document = d.id AND r.number = d.current`;
  const selectOne = db.prepare<[string, string], Row>(`${joined} WHERE d.book = ? AND d.path = ?`);
  const selectAll = db.prepare<[], Row>(`${joined} WHERE d.deleted = 0 ORDER BY d.book, d.path`);
  const lastNumber = db.prepare<[number], { n: number | null }>(
    "SELECT MAX(number) AS n FROM revisions WHERE document = ?",
  );
  const addRevision = db.prepare(
    "INSERT INTO revisions (document, number, text, saved_at, origin, tab) VALUES (?, ?, ?, ?, ?, ?)",
  );
  const addDocument = db.prepare("INSERT INTO documents (book, path, kind, current) VALUES (?, ?, ?, 1)");
  const setCurrent = db.prepare("UPDATE documents SET current = ?, deleted = ? WHERE id = ?");
  const getDigest = db.prepare<[string, string], { digest: string }>(
    "SELECT digest FROM loads WHERE book = ? AND path = ?",
  );
  const setDigest = db.prepare(
    "INSERT INTO loads (book, path, digest) VALUES (?, ?, ?) ON CONFLICT (book, path) DO UPDATE SET digest = excluded.digest",
  );

  // A title follows from the text alone, so it is found once for each kept text and never stored.
  const titles = new Map<number, string>();
  const summaryOf = (row: Row): DocumentSummary => {
    const title = titles.get(row.kept) ?? titleOf(row.path, row.text);
    titles.set(row.kept, title);
    const { book, path, kind, current, saved_at } = row;
    return { book, path, kind, title, revision: current, savedAt: saved_at };
  };

  const keep = (document: number, text: string, origin: RevisionOrigin, tab: string | null): number => {
    const number = (lastNumber.get(document)?.n ?? 0) + 1;
    addRevision.run(document, number, text, now(), origin, tab);
    return number;
  };
  const put = (row: Row | undefined, save: Omit<Save, "basedOn">, origin: RevisionOrigin): number => {
    if (row === undefined) {
      const kind = kindOfPath(save.path) ?? "card";
      const { lastInsertRowid } = addDocument.run(save.book, save.path, kind);
      return keep(Number(lastInsertRowid), save.text, origin, save.tab);
    }
    const number = keep(row.id, save.text, origin, save.tab);
    setCurrent.run(number, 0, row.id);
    return number;
  };

  const save = db.transaction((request: Save): Saved => {
    const row = selectOne.get(request.book, request.path);
    const standing = row !== undefined && row.deleted === 0 ? row : null;
    if (standing !== null && standing.text === request.text)
      return { outcome: "unchanged", revision: standing.current };
    if (standing !== null && standing.current !== request.basedOn) {
      const kept = keep(standing.id, request.text, "aside", request.tab);
      return { outcome: "conflict", current: { text: standing.text, revision: standing.current }, kept };
    }
    return { outcome: "saved", revision: put(row, request, "saved") };
  });

  const remove = db.transaction((book: string, path: string, tab: string | null): number | null => {
    const row = selectOne.get(book, path);
    if (row === undefined || row.deleted === 1) return null;
    const number = keep(row.id, "", "deleted", tab);
    setCurrent.run(number, 1, row.id);
    return number;
  });

  const load = db.transaction((book: string, path: string, text: string, digest: string) => {
    if (getDigest.get(book, path)?.digest === digest) return "same" as const;
    setDigest.run(book, path, digest);
    const row = selectOne.get(book, path);
    if (row !== undefined && row.deleted === 0 && row.text === text) return "same" as const;
    // What was edited or deleted in the app stays so; the file's new text is kept beside it.
    if (row !== undefined && row.origin !== "file") {
      keep(row.id, text, "file-aside", null);
      return "aside" as const;
    }
    put(row, { book, path, text, tab: null }, "file");
    return "loaded" as const;
  });

  const folderBook = db.prepare<[string], { book: string }>("SELECT book FROM folders WHERE folder = ?");
  const bookFolder = db.prepare<[string], { folder: string }>("SELECT folder FROM folders WHERE book = ?");
  const setFolder = db.prepare("INSERT INTO folders (folder, book) VALUES (?, ?)");
  const bookOf = db.transaction((folder: string, wanted: string): string => {
    const known = folderBook.get(folder)?.book;
    if (known !== undefined) return known;
    let book = wanted;
    for (let n = 2; bookFolder.get(book) !== undefined; n++) book = `${wanted}-${n}`;
    setFolder.run(folder, book);
    return book;
  });

  return {
    list: () => selectAll.all().map(summaryOf),
    get: (book, path) => {
      const row = selectOne.get(book, path);
      return row === undefined || row.deleted === 1 ? null : { ...summaryOf(row), text: row.text };
    },
    save: (request) => save.immediate(request),
    remove: (book, path, tab) => remove.immediate(book, path, tab),
    revisions: (book, path) =>
      db
        .prepare<[string, string], Revision>(
          `SELECT r.number AS revision, r.saved_at AS savedAt, r.origin, r.text FROM revisions r
           JOIN documents d ON d.id = r.document WHERE d.book = ? AND d.path = ? ORDER BY r.number`,
        )
        .all(book, path),
    bookOf: (folder, wanted) => bookOf.immediate(folder, wanted),
    load: (book, path, text, digest) => load.immediate(book, path, text, digest),
    changesAfter: (id) =>
      db
        .prepare<[number], Omit<NumberedChange, "deleted"> & { origin: string }>(
          `SELECT r.id, d.book, d.path, r.number AS revision, r.tab, r.origin FROM revisions r
           JOIN documents d ON d.id = r.document
           WHERE r.id > ? AND r.origin NOT IN ('aside', 'file-aside') ORDER BY r.id LIMIT 1000`,
        )
        .all(id)
        .map(({ origin, ...change }) => ({ ...change, deleted: origin === "deleted" })),
    lastChange: () =>
      db.prepare<[], { id: number | null }>("SELECT MAX(id) AS id FROM revisions").get()?.id ?? 0,
    close: () => {
      db.close();
    },
  };
};

/** Brings the tables up to date, each step in a transaction of its own. */
const migrate = (db: Database.Database): void => {
  const from = Number(db.pragma("user_version", { simple: true }));
  if (from > migrations.length)
    throw new Error(`The store was written by a newer version of Tamis (its tables are at step ${from}).`);
  migrations.slice(from).forEach((sql, i) => {
    db.transaction(() => {
      db.exec(sql);
      db.pragma(`user_version = ${from + i + 1}`);
    })();
  });
};

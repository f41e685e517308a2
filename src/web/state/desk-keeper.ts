import type { DocumentKind } from "#wire/documents.ts";
import { fetchDocument, fetchDocuments, listenForChanges, saveDocument } from "./api.ts";
import {
  added,
  arrived,
  type Desk,
  type DeskDocument,
  emptyDesk,
  keyOf,
  laidOut,
  saveAnswered,
  saveBegun,
  settled,
  takenAway,
  typed,
} from "./desk.ts";
import { keepDraft, keptDrafts } from "./drafts.ts";
import { makeStore, type Store } from "./store.ts";

/** Milliseconds without typing after which a document is saved. */
const quiet = 500;
/** Milliseconds after which the server is tried again. */
const again = 4000;

/** The desk, and what can be done on it. */
type DeskKeeper = {
  readonly store: Store<Desk>;
  readonly open: () => void;
  readonly type: (key: string, text: string) => void;
  readonly add: (book: string, path: string, kind: DocumentKind, text: string) => void;
  readonly settle: (key: string, text: string) => void;
};

/** Keeps the desk in step with the server: loads, saves after a pause, listens for others, and never drops words. */
export const makeDeskKeeper = (): DeskKeeper => {
  const store = makeStore<Desk>(emptyDesk);
  const timers = new Map<string, ReturnType<typeof setTimeout>>();

  const change = (key: string, next: (desk: Desk) => Desk): void => {
    store.update(next);
    const document = store.get().documents.get(key);
    if (document !== undefined) keepDraft(document);
  };

  const saveSoon = (key: string, wait: number): void => {
    clearTimeout(timers.get(key));
    timers.set(
      key,
      setTimeout(() => void save(key), wait),
    );
  };

  const save = async (key: string): Promise<void> => {
    const document = store.get().documents.get(key);
    if (document === undefined || document.state === "conflict" || document.state === "saved") return;
    if (document.state === "saving") return saveSoon(key, quiet);
    const { book, path, text, basedOn } = document;
    change(key, (desk) => saveBegun(desk, key));
    const answer = await saveDocument(book, path, text, basedOn);
    change(key, (desk) => saveAnswered(desk, key, text, answer));
    const now = store.get().documents.get(key);
    if (now?.state === "waiting") saveSoon(key, quiet);
    if (now?.state === "kept-here") saveSoon(key, again);
  };

  const unsaved = (): readonly (readonly [string, DeskDocument])[] =>
    [...store.get().documents].filter(([, d]) => d.state === "waiting" || d.state === "kept-here");

  const load = async (): Promise<void> => {
    const stored = await fetchDocuments();
    if (stored === null) {
      store.update((desk) =>
        desk.loading === "ready"
          ? { ...desk, online: false }
          : { ...laidOut([], keptDrafts(), false), loading: "failed" },
      );
      setTimeout(() => void load(), again);
      return;
    }
    store.update(() => laidOut(stored, keptDrafts(), true));
    for (const [key] of unsaved()) saveSoon(key, 0);
  };

  return {
    store,
    open: () => {
      void load();
      listenForChanges(
        async ({ book, path, revision, deleted }) => {
          if (deleted) return change(keyOf(book, path), (desk) => takenAway(desk, keyOf(book, path)));
          if ((store.get().documents.get(keyOf(book, path))?.basedOn ?? -1) >= revision) return;
          const stored = await fetchDocument(book, path);
          if (stored !== null) change(keyOf(book, path), (desk) => arrived(desk, stored));
        },
        (online) => {
          const before = store.get();
          store.update((desk) => (desk.online === online ? desk : { ...desk, online }));
          if (online && !before.online && before.loading === "ready") void catchUp();
        },
      );
      addEventListener("online", () => void catchUp());
    },
    type: (key, text) => {
      change(key, (desk) => typed(desk, key, text));
      saveSoon(key, quiet);
    },
    add: (book, path, kind, text) => {
      const key = keyOf(book, path);
      change(key, (desk) => added(desk, book, path, kind, text));
      saveSoon(key, 0);
    },
    settle: (key, text) => {
      change(key, (desk) => settled(desk, key, text));
      saveSoon(key, 0);
    },
  };

  /** After a gap: takes in what others wrote meanwhile, and saves what waited. */
  async function catchUp(): Promise<void> {
    for (const stored of (await fetchDocuments()) ?? [])
      change(keyOf(stored.book, stored.path), (desk) => arrived(desk, stored));
    for (const [key] of unsaved()) saveSoon(key, 0);
  }
};

import { useEffect } from "preact/hooks";
import type { Desk, DeskDocument } from "./desk.ts";
import { eveningLine } from "./engine-client.ts";
import type { EveningAnswer } from "./engine-talk.ts";
import { makeStore, type Store } from "./store.ts";

/** What is known of a book's evening, and whether a newer answer is on its way. */
export type EveningView = {
  readonly book: string | null;
  readonly answer: EveningAnswer | null;
  readonly working: boolean;
  readonly failure: string | null;
};

/** The evening of the open book, as it was worked out last. */
export const eveningStore: Store<EveningView> = makeStore<EveningView>({
  book: null,
  answer: null,
  working: false,
  failure: null,
});

/** The documents of a book, by path. */
export const bookDocuments = (desk: Desk, book: string): readonly DeskDocument[] =>
  [...desk.documents.values()]
    .filter((d) => d.book === book)
    .sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0));

/** The books on the desk, in order. */
export const booksOf = (desk: Desk): readonly string[] =>
  [...new Set([...desk.documents.values()].map((d) => d.book))].sort();

/** The texts that were asked about last, and whether their answer is still awaited. */
let onItsWay = false;
let asked: readonly (readonly [string, string])[] = [];

const sameFiles = (a: typeof asked, b: typeof asked): boolean =>
  a.length === b.length && a.every(([path, text], i) => path === b[i]?.[0] && text === b[i]?.[1]);

/** Keeps the evening of a book up to date while a screen that shows it is open. */
export const useEvening = (desk: Desk, book: string, wanted: boolean): void => {
  const documents = bookDocuments(desk, book);
  const sitting = documents.find((d) => d.kind === "sitting");
  useEffect(() => {
    if (!wanted || sitting === undefined) return undefined;
    const files = documents.map((d) => [`${book}/${d.path}`, d.text] as const);
    if (sameFiles(asked, files)) {
      // The words are back at what was asked last: the answer is there, or still on its way.
      eveningStore.update((now) => (now.working === onItsWay ? now : { ...now, working: onItsWay }));
      return undefined;
    }
    // From here on the answer that is shown is an old one.
    eveningStore.update((now) => ({
      ...now,
      book,
      answer: now.book === book ? now.answer : null,
      working: true,
    }));
    const timer = setTimeout(() => {
      asked = files;
      onItsWay = true;
      const ask = (quick: boolean): void =>
        eveningLine.ask(
          {
            ask: "evening",
            sitting: sitting.path,
            files: documents.map(({ path, text }) => ({ path, text })),
            quick,
          },
          (answer) => {
            onItsWay = quick;
            eveningStore.update(() => ({ book, answer, working: quick, failure: null }));
            if (quick) ask(false);
          },
          (failure) => {
            onItsWay = false;
            eveningStore.update((now) => ({ ...now, working: false, failure }));
          },
        );
      // A plan at once, and a better one when it is there.
      ask(true);
    }, 300);
    return () => clearTimeout(timer);
  }, [desk, book, wanted]);
};

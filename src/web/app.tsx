import { useEffect, useRef } from "preact/hooks";
import { type Region, regions } from "#engine/index.ts";
import { CardsScreen } from "./editor/cards-screen.tsx";
import { EveningScreen } from "./evening-screen.tsx";
import { Guarded } from "./parts/guarded.tsx";
import { Menu, screenNames } from "./parts/menu.tsx";
import { NewBook } from "./parts/new-book.tsx";
import { SheetScreen } from "./sheets/sheet-screen.tsx";
import { WriteUpScreen } from "./sheets/write-up-screen.tsx";
import { valueAt } from "./sitting/edit-yaml.ts";
import type { DeskDocument } from "./state/desk.ts";
import { bookDocuments, booksOf, eveningStore, useEvening } from "./state/evening.ts";
import { routeStore } from "./state/route.ts";
import { useStore } from "./state/store.ts";
import { desk } from "./state/the-desk.ts";

/** The region that the sitting of a book names; the United Kingdom's words and rules where it names none. */
const regionOf = (documents: readonly DeskDocument[]): Region => {
  const sitting = documents.find((d) => d.kind === "sitting");
  const named = sitting === undefined ? null : valueAt(sitting.text, ["region"]);
  return regions.find((r) => r === named?.text) ?? "uk";
};

/** The whole page: the menu, and the screen that the address names. */
export const App = () => {
  const route = useStore(routeStore);
  const now = useStore(desk.store);
  const evening = useStore(eveningStore);
  const books = booksOf(now);
  const book = route.book !== null && books.includes(route.book) ? route.book : (books[0] ?? null);
  const documents = book === null ? [] : bookDocuments(now, book);
  useEvening(
    now,
    book ?? "",
    book !== null &&
      route.screen !== "write-up" &&
      route.screen !== "sheet" &&
      !(route.screen === "cards" && route.path !== null),
  );
  const main = useRef<HTMLElement>(null);
  const first = useRef(true);

  useEffect(() => {
    document.title = `${screenNames[route.screen]} – Tamis`;
    // A reader who cannot see the page change is put at the head of the new screen.
    if (!first.current) main.current?.querySelector<HTMLElement>("h1")?.focus({ preventScroll: true });
    if (!first.current) scrollTo(0, 0);
    first.current = false;
  }, [route.screen, route.path, book]);

  const known = evening.book === book ? evening : { ...evening, answer: null };
  return (
    <>
      <button type="button" class="skip" onClick={() => main.current?.focus()}>
        To the content
      </button>
      <Menu book={book} books={books} screen={route.screen} online={now.online} />
      <main id="main" ref={main} tabIndex={-1} data-screen={route.screen}>
        <Guarded key={`${book} ${route.screen} ${route.path}`}>
          {book === null ? (
            <Empty loading={now.loading} />
          ) : route.screen === "cards" ? (
            <CardsScreen
              book={book}
              books={books}
              path={route.path}
              documents={documents}
              region={regionOf(documents)}
              findings={known.answer?.findings ?? null}
            />
          ) : route.screen === "sheet" ? (
            <SheetScreen book={book} path={route.path} documents={documents} region={regionOf(documents)} />
          ) : route.screen === "write-up" ? (
            <WriteUpScreen book={book} path={route.path} documents={documents} region={regionOf(documents)} />
          ) : (
            <EveningScreen
              book={book}
              screen={route.screen}
              path={route.path}
              documents={documents}
              evening={known}
            />
          )}
        </Guarded>
      </main>
    </>
  );
};

const Empty = ({ loading }: { loading: "loading" | "ready" | "failed" }) => (
  <div class="screen narrow">
    <h1 tabIndex={-1}>Tamis</h1>
    <p role="status">
      {loading === "loading"
        ? "Fetching the books…"
        : loading === "failed"
          ? "The server is not reached. It is being tried again; what you wrote here before is kept."
          : "There is no book yet. Begin one here, or start the server with a folder that holds a sitting and its cards."}
    </p>
    {loading === "ready" && <NewBook books={[]} />}
  </div>
);

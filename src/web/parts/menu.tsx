import { useState } from "preact/hooks";
import { capital } from "#words/number-text.ts";
import { spaced } from "#words/version-text.ts";
import { hashOf, type Screen, screens } from "../state/route.ts";
import { HouseMark } from "./marks.tsx";

/** What the screens are called. */
export const screenNames: { readonly [S in Screen]: string } = {
  cards: "Cards",
  sitting: "Sitting",
  plan: "Plan",
  board: "Board",
  buying: "Buying",
  cost: "Cost",
  guests: "Guests and allergens",
  safety: "Safety",
  sheet: "Sheets",
  "write-up": "Write-ups",
};

const bookName = (book: string): string => capital(spaced(book));

/** The way round the house. On a narrow page it folds behind one button. */
export const Menu = ({
  book,
  books,
  screen,
  online,
}: {
  book: string | null;
  books: readonly string[];
  screen: Screen;
  online: boolean;
}) => {
  const [open, setOpen] = useState(false);
  return (
    <header class="menu" data-open={open}>
      <p class="house">
        <HouseMark />
        <span>Tamis</span>
      </p>
      <p class="where" aria-hidden="true">
        {screenNames[screen]}
      </p>
      <button
        type="button"
        class="menu-button"
        aria-expanded={open}
        aria-controls="ways"
        onClick={() => setOpen(!open)}
      >
        Menu
      </button>
      <div id="ways" class="ways">
        {books.length > 1 ? (
          <label class="book">
            <span>Book</span>
            <select
              value={book ?? ""}
              onChange={(e) => {
                location.hash = hashOf({ book: e.currentTarget.value, screen, path: null });
              }}
            >
              {books.map((b) => (
                <option key={b} value={b}>
                  {bookName(b)}
                </option>
              ))}
            </select>
          </label>
        ) : (
          <p class="book">{book === null ? "" : bookName(book)}</p>
        )}
        <nav aria-label="Screens">
          <ul>
            {screens.map((s) => (
              <li key={s}>
                <a
                  href={hashOf({ book, screen: s, path: null })}
                  aria-current={s === screen ? "page" : undefined}
                  onClick={() => setOpen(false)}
                >
                  {screenNames[s]}
                </a>
              </li>
            ))}
          </ul>
        </nav>
        <p class="reach" role="status">
          {online ? "" : "Server not reached. Your words are kept in this browser."}
        </p>
      </div>
    </header>
  );
};

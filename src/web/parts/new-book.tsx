import { useState } from "preact/hooks";
import { isBookName } from "#wire/documents.ts";
import { newCardPath } from "../editor/card-names.ts";
import { hashOf } from "../state/route.ts";
import { desk } from "../state/the-desk.ts";

/** A book begins with its name and the first of its dishes. */
export const NewBook = ({ books }: { books: readonly string[] }) => {
  const [name, setName] = useState("");
  const [dish, setDish] = useState("");
  // As a folder would be named, so that the book can be kept as one.
  const book = name.trim().replace(/\s+/g, "-").toLowerCase();
  const taken = books.includes(book);
  const wrong = book !== "" && !isBookName(book);
  const ready = isBookName(book) && !taken && dish.trim() !== "";
  const make = (event: Event): void => {
    event.preventDefault();
    if (!ready) return;
    const path = newCardPath("cards/", dish.trim(), new Set());
    desk.add(book, path, "card", `${dish.trim()}\n\n`);
    location.hash = hashOf({ book, screen: "cards", path });
  };
  return (
    <form class="new-book" onSubmit={make}>
      <label class="field">
        <span>New book</span>
        <input
          type="text"
          value={name}
          placeholder="Name of the occasion"
          aria-invalid={taken || wrong}
          onInput={(e) => setName(e.currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>Its first dish</span>
        <input
          type="text"
          value={dish}
          placeholder="Name of the dish"
          onInput={(e) => setDish(e.currentTarget.value)}
        />
      </label>
      <button type="submit" disabled={!ready}>
        Begin the book
      </button>
      <p role="status" class="small">
        {taken
          ? "There is a book by that name."
          : wrong
            ? "A book's name begins with a letter or a digit, and holds letters, digits, spaces, dots and dashes."
            : ""}
      </p>
    </form>
  );
};

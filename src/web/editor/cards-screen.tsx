import { useState } from "preact/hooks";
import type { Finding, Region, Severity } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { countText } from "#words/number-text.ts";
import { SeverityMark } from "../parts/marks.tsx";
import { NewBook } from "../parts/new-book.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import type { DeskDocument } from "../state/desk.ts";
import { hashOf } from "../state/route.ts";
import { desk } from "../state/the-desk.ts";
import { BringCards } from "./bring-cards.tsx";
import { CardEditor } from "./card-editor.tsx";
import { cardTitleOf, newCardPath } from "./card-names.ts";

type Props = {
  readonly book: string;
  readonly books: readonly string[];
  readonly path: string | null;
  readonly documents: readonly DeskDocument[];
  readonly region: Region;
  readonly findings: readonly Finding[] | null;
};

const cardFolder = (cards: readonly DeskDocument[]): string => {
  const first = cards[0]?.path ?? "cards/";
  return first.slice(0, first.lastIndexOf("/") + 1);
};

/** A new card begins with its title; the rest is the cook's. */
const NewCard = ({ book, cards }: { book: string; cards: readonly DeskDocument[] }) => {
  const [title, setTitle] = useState("");
  const make = (event: Event) => {
    event.preventDefault();
    const name = title.trim();
    if (name === "") return;
    const path = newCardPath(cardFolder(cards), name, new Set(cards.map((c) => c.path)));
    desk.add(book, path, "card", `${name}\n\n`);
    setTitle("");
    location.hash = hashOf({ book, screen: "cards", path });
  };
  return (
    <form class="new-card" onSubmit={make}>
      <label>
        <span>New card</span>
        <input
          type="text"
          value={title}
          placeholder="Name of the dish"
          onInput={(e) => setTitle(e.currentTarget.value)}
        />
      </label>
      <button type="submit" disabled={title.trim() === ""}>
        Begin
      </button>
    </form>
  );
};

const worst = (findings: readonly Finding[]): Severity | null =>
  findings.some((f) => f.severity === "stop")
    ? "stop"
    : findings.some((f) => f.severity === "warn")
      ? "warn"
      : null;

const Settle = ({ findings }: { findings: readonly Finding[] }) => {
  const grade = worst(findings);
  if (grade === null) return <span class="soft small">nothing to settle</span>;
  const n = findings.filter((f) => f.severity !== "note").length;
  return (
    <span class={`settle-count remark-${grade}`}>
      <SeverityMark of={grade} />
      {countText(n, "thing to settle", "things to settle")}
    </span>
  );
};

const CardList = ({ book, path, documents, findings }: Omit<Props, "books" | "region">) => (
  <ul class="card-list">
    {documents.map((c) => (
      <li key={c.path}>
        <a
          href={hashOf({ book, screen: "cards", path: c.path })}
          aria-current={c.path === path ? "page" : undefined}
        >
          <span class="card-name">{cardTitleOf(c.text, c.path)}</span>
          {findings !== null && <Settle findings={findings.filter((f) => f.source === cardNameOf(c.path))} />}
        </a>
      </li>
    ))}
  </ul>
);

/** The cards of the book, and the one that is open. */
export const CardsScreen = ({ book, books, path, documents, region, findings }: Props) => {
  const cards = documents.filter((d) => d.kind === "card");
  const open = cards.find((c) => c.path === path);
  if (open === undefined)
    return (
      <div class="screen narrow">
        <ScreenHead title="Cards" lead="One dish a card, in your own words." />
        {path !== null && <p role="alert">There is no card by that name.</p>}
        <NewCard book={book} cards={cards} />
        <BringCards book={book} folder={cardFolder(cards)} cards={cards} />
        <CardList book={book} path={null} documents={cards} findings={findings} />
        <details class="another-book">
          <summary>Another book</summary>
          <NewBook books={books} />
        </details>
      </div>
    );
  return (
    <div class="desk">
      <nav class="side-list" aria-label="Cards">
        <h2>Cards</h2>
        <CardList book={book} path={path} documents={cards} findings={null} />
        <NewCard book={book} cards={cards} />
      </nav>
      <CardEditor
        key={`${book}/${open.path}`}
        document={open}
        documents={documents}
        region={region}
        taken={new Set(cards.map((c) => c.path))}
      />
    </div>
  );
};

import { useMemo, useRef, useState } from "preact/hooks";
import type { Region, Span } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { spaced } from "#words/version-text.ts";
import { Conflict } from "../parts/conflict.tsx";
import { SaveMark } from "../parts/save-mark.tsx";
import type { DeskDocument } from "../state/desk.ts";
import { hashOf } from "../state/route.ts";
import { desk } from "../state/the-desk.ts";
import { addOwnFood } from "./add-own-food.ts";
import { cardTitleOf, newCardPath } from "./card-names.ts";
import { remarksOfCard } from "./card-remarks.ts";
import type { Linking } from "./link.tsx";
import { foodListsOf } from "./own-foods.ts";
import { useReading } from "./reading.ts";
import { type AddFood, SettleList } from "./settle-list.tsx";
import { Understood } from "./understood.tsx";
import { type GoTo, WordsView } from "./words-view.tsx";

const panes = [
  ["words", "Words"],
  ["understood", "Understood"],
  ["settle", "To settle"],
] as const;
type Pane = (typeof panes)[number][0];

/** The card being written, what was understood of it, and what is left to settle. */
export const CardEditor = ({
  document: card,
  documents,
  region,
  taken,
}: {
  document: DeskDocument;
  documents: readonly DeskDocument[];
  region: Region;
  taken: ReadonlySet<string>;
}) => {
  const { book, path, text } = card;
  const key = `${book}/${path}`;
  const answer = useReading(text, cardNameOf(path), region, foodListsOf(documents));
  const [pane, setPane] = useState<Pane>("words");
  const [linked, setLinked] = useState<Span | null>(null);
  const [goTo, setGoTo] = useState<GoTo | null>(null);
  const [at, setAt] = useState<number | null>(null);
  const current = useRef(text);
  current.current = text;
  const remarks = useMemo(
    () => ({
      of: answer?.dish.text ?? "",
      list:
        answer === null
          ? []
          : remarksOfCard(
              answer,
              () => current.current,
              (words) => desk.type(key, words),
            ),
    }),
    [answer, key],
  );
  const linking: Linking = {
    at,
    show: setLinked,
    goTo: (span) => {
      setPane("words");
      setGoTo({ span });
    },
  };
  const folder = path.slice(0, path.lastIndexOf("/") + 1);
  const addFood: AddFood = (entry) => addOwnFood(book, documents, entry);
  const keepBoth = () => {
    const other = newCardPath(folder, `${cardNameOf(path)}-mine`, taken);
    desk.add(book, other, "card", text);
    if (card.theirs !== null) desk.settle(key, card.theirs.text);
    location.hash = hashOf({ book, screen: "cards", path: other });
  };
  const settleCount = remarks.list.filter((r) => r.severity !== "note").length;
  return (
    <div class="card-editor" data-pane={pane}>
      <header class="card-head">
        <h1 tabIndex={-1}>{cardTitleOf(text, path)}</h1>
        <p class="card-tools">
          <SaveMark state={card.state} />
          <a class="button" href={hashOf({ book, screen: "sheet", path })}>
            Sheet
          </a>
          <a class="button" href={hashOf({ book, screen: "write-up", path })}>
            Write-up
          </a>
        </p>
      </header>
      <Conflict document={card} settle={(words) => desk.settle(key, words)} keepBoth={keepBoth} />
      <fieldset class="panes">
        <legend class="hidden">Show</legend>
        {panes.map(([id, name]) => (
          <button key={id} type="button" aria-pressed={pane === id} onClick={() => setPane(id)}>
            {name}
            {id === "settle" && settleCount > 0 && <span class="count"> {settleCount}</span>}
          </button>
        ))}
      </fieldset>
      <section class="pane words-pane" aria-label="Words of the card">
        <WordsView
          key={key}
          label={`Words of ${spaced(cardNameOf(path))}`}
          text={text}
          remarks={remarks}
          linked={linked}
          goTo={goTo}
          onType={(words) => desk.type(key, words)}
          onPlace={setAt}
        />
      </section>
      <section class="pane settle-pane" aria-labelledby="settle-head">
        <h2 id="settle-head">To settle</h2>
        <SettleList remarks={remarks.list} text={remarks.of} linking={linking} addFood={addFood} />
      </section>
      <section class="pane understood-pane" aria-labelledby="understood-head">
        <h2 id="understood-head">What was understood</h2>
        {answer === null ? (
          <p class="soft">Reading…</p>
        ) : (
          <Understood dish={answer.dish} region={region} linking={linking} />
        )}
      </section>
    </div>
  );
};

import { useState } from "preact/hooks";
import { cardNameOf } from "#wire/card-file.ts";
import type { Remark } from "../editor/remarks.ts";
import { SettleList } from "../editor/settle-list.tsx";
import { type GoTo, WordsView } from "../editor/words-view.tsx";
import { Conflict } from "../parts/conflict.tsx";
import { SaveMark } from "../parts/save-mark.tsx";
import { ScreenHead } from "../parts/screen-head.tsx";
import type { DeskDocument } from "../state/desk.ts";
import type { EveningView } from "../state/evening.ts";
import { hashOf } from "../state/route.ts";
import { desk } from "../state/the-desk.ts";
import { withItem } from "./edit-yaml.ts";
import { SittingPage } from "./sitting-page.tsx";
import { useSittingReading } from "./sitting-reading.ts";

type Props = {
  readonly book: string;
  readonly path: string | null;
  readonly documents: readonly DeskDocument[];
  readonly evening: EveningView;
};

/** The order in which the files of a sitting are offered. */
const kinds = ["sitting", "kitchen", "prices", "foods"] as const;

/** The sitting as a page, and the words it is read from beside it. */
export const SittingScreen = ({ book, path, documents, evening }: Props) => {
  const files = kinds.flatMap((kind) => documents.filter((d) => d.kind === kind));
  const sitting = documents.find((d) => d.kind === "sitting");
  const shown = files.find((d) => d.path === path) ?? sitting ?? files[0];
  const [goTo, setGoTo] = useState<GoTo | null>(null);
  const reading = useSittingReading(documents, sitting?.path ?? null);
  if (shown === undefined || sitting === undefined)
    return (
      <div class="screen narrow">
        <ScreenHead title="Sitting" lead="This book has no sitting.yaml yet." />
        <NewSitting book={book} documents={documents} />
      </div>
    );
  const key = `${book}/${shown.path}`;
  // What the evening says of the sitting takes longer, and is shown once it speaks of the words on the screen.
  const all = evening.working
    ? (reading?.answer.remarks ?? [])
    : (evening.answer?.remarks ?? reading?.answer.remarks ?? []);
  const remarks: readonly Remark[] = all
    .filter((r) => r.path === shown.path)
    .map((r) => ({ ...r, fixes: [], unknownFood: null }));
  const elsewhere = all.filter((r) => r.path !== shown.path && r.severity !== "note");
  return (
    <div class="screen sitting">
      <div class="sitting-page">
        <SittingPage
          book={book}
          text={sitting.text}
          value={reading?.answer.sitting ?? null}
          waiting={reading === null}
          cardPaths={new Map(reading?.answer.cardPaths ?? [])}
          cards={documents.filter((d) => d.kind === "card")}
          write={(text) => desk.type(`${book}/${sitting.path}`, text)}
        />
      </div>
      <section class="sitting-words" aria-labelledby="words-head">
        <header>
          <h2 id="words-head">The words it is read from</h2>
          <SaveMark state={shown.state} />
        </header>
        <nav aria-label="Files of the sitting" class="files">
          <ul>
            {files.map((f) => (
              <li key={f.path}>
                <a
                  href={hashOf({ book, screen: "sitting", path: f.path })}
                  aria-current={f.path === shown.path ? "page" : undefined}
                >
                  {f.path}
                </a>
              </li>
            ))}
          </ul>
          {!files.some((f) => f.kind === "prices") && <NewPrices book={book} sitting={sitting} />}
        </nav>
        <Conflict document={shown} settle={(words) => desk.settle(key, words)} keepBoth={null} />
        <WordsView
          key={key}
          label={`Words of ${shown.path}`}
          text={shown.text}
          remarks={{ of: reading?.of.get(shown.path) ?? "", list: remarks }}
          linked={null}
          goTo={goTo}
          onType={(text) => desk.type(key, text)}
          onPlace={() => undefined}
        />
        <h3>To settle here</h3>
        <SettleList
          remarks={remarks}
          text={shown.text}
          linking={{ at: null, show: () => undefined, goTo: (span) => setGoTo({ span }) }}
          addFood={null}
        />
        {elsewhere.length > 0 && (
          <p>
            {[...new Set(elsewhere.map((r) => r.path))].map((p) => (
              <a key={p} class="button" href={hashOf({ book, screen: "sitting", path: p })}>
                More to settle in {p}
              </a>
            ))}
          </p>
        )}
      </section>
    </div>
  );
};

/** A price list to begin from, named by the sitting. */
const NewPrices = ({ book, sitting }: { book: string; sitting: DeskDocument }) => {
  const begin = () => {
    const path = `${sitting.path.replace(/[^/]*$/, "")}prices.csv`;
    const named = withItem(sitting.text, "prices", "prices.csv");
    if (named === null) return;
    desk.add(book, path, "prices", "supplier,item,food,size,unit,price\n");
    desk.type(`${book}/${sitting.path}`, named);
    location.hash = hashOf({ book, screen: "sitting", path });
  };
  return (
    <button type="button" onClick={begin}>
      Begin a price list
    </button>
  );
};

/** A sitting to begin from, with the cards of the book in one course. */
const NewSitting = ({ book, documents }: { book: string; documents: readonly DeskDocument[] }) => {
  const names = documents.filter((d) => d.kind === "card").map((d) => cardNameOf(d.path));
  const begin = () => {
    if (!documents.some((d) => d.path === "kitchen.yaml"))
      desk.add(book, "kitchen.yaml", "kitchen", kitchenToBeginWith);
    desk.add(book, "sitting.yaml", "sitting", sittingToBeginWith(names));
  };
  return (
    <button type="button" onClick={begin}>
      Begin a sitting
    </button>
  );
};

const sittingToBeginWith = (cards: readonly string[]): string => `title: A sitting
date: ${new Date().toISOString().slice(0, 10)}
covers: 8
kitchen: kitchen.yaml
cards: cards
courses:
  - name: Main
    at: "19:30"
    dishes: [${cards.join(", ")}]
crew:
  - name: Me
    shifts:
      - ${new Date().toISOString().slice(0, 10)} 14:00-22:00
`;

const kitchenToBeginWith = `name: Kitchen
burners:
  count: 4
  kilowatts: 2
ovens:
  - name: oven
    shelves: 2
    fan: true
    kilowatts: 3
fridge litres: 200
freezer litres: 60
pans:
  - name: big pot
    litres: 8
    count: 1
  - name: saucepan
    litres: 3
    count: 2
  - name: frying pan
    litres: 2.5
    count: 1
trays: 3
`;

import type { Dish, Region } from "#engine/index.ts";
import { capital } from "#words/number-text.ts";
import { cardNameOf, cardTitleOf } from "../editor/card-names.ts";
import { useReading } from "../editor/reading.ts";
import { ScreenHead } from "../parts/screen-head.tsx";
import type { DeskDocument } from "../state/desk.ts";
import { hashOf } from "../state/route.ts";

type Props = {
  readonly book: string;
  readonly path: string | null;
  readonly documents: readonly DeskDocument[];
  readonly region: Region;
};

/** A card as a page to print and hand on. */
export const WriteUpScreen = ({ book, path, documents, region }: Props) => {
  const cards = documents.filter((d) => d.kind === "card");
  const card = cards.find((c) => c.path === path) ?? cards[0];
  if (card === undefined)
    return (
      <div class="screen narrow">
        <ScreenHead title="Write-ups" lead="There is no card yet." />
      </div>
    );
  return (
    <div class="screen write-ups">
      <div class="no-print">
        <ScreenHead title="Write-ups" lead="A card as a page to hand on.">
          <label class="choose">
            <span>Card</span>
            <select
              value={card.path}
              onChange={(e) => {
                location.hash = hashOf({ book, screen: "write-up", path: e.currentTarget.value });
              }}
            >
              {cards.map((c) => (
                <option key={c.path} value={c.path}>
                  {cardTitleOf(c.text, c.path)}
                </option>
              ))}
            </select>
          </label>
          <a class="button" href={hashOf({ book, screen: "cards", path: card.path })}>
            Edit the card
          </a>
          <button type="button" onClick={() => print()}>
            Print
          </button>
        </ScreenHead>
      </div>
      <Page card={card} region={region} />
    </div>
  );
};

const Page = ({ card, region }: { card: DeskDocument; region: Region }) => {
  const answer = useReading(card.text, cardNameOf(card.path), region);
  if (answer === null) return <p role="status">Reading…</p>;
  return <Sheet dish={answer.dish} />;
};

const Sheet = ({ dish }: { dish: Dish }) => {
  const parts = [...new Set(dish.ingredients.map((i) => i.part))];
  const method = dish.steps.filter((s) => s.phase === "method");
  const pass = dish.steps.filter((s) => s.phase === "to-serve");
  return (
    <article class="write-up">
      <h2>{dish.title}</h2>
      {dish.yield !== null && <p class="yield">{dish.yield.words.text}</p>}
      {parts.map((part) => (
        <section key={part ?? ""}>
          {part !== null && <h3>{capital(part)}</h3>}
          <ul class="write-up-list">
            {dish.ingredients
              .filter((i) => i.part === part)
              .map((i) => (
                <li key={i.index}>{i.text}</li>
              ))}
          </ul>
        </section>
      ))}
      <ol class="write-up-steps">
        {method.map((s) => (
          <li key={s.index}>{s.text}</li>
        ))}
      </ol>
      {pass.length > 0 && (
        <>
          <h3>To serve</h3>
          {pass.map((s) => (
            <p key={s.index}>{s.text}</p>
          ))}
        </>
      )}
      {dish.keeping.length > 0 && (
        <>
          <h3>Keeping</h3>
          {[...new Set(dish.keeping.map((k) => k.text))].map((text) => (
            <p key={text}>{text}</p>
          ))}
        </>
      )}
      {dish.swaps.length > 0 && (
        <>
          <h3>Swaps</h3>
          {dish.swaps.map((s) => (
            <p key={s.span.start}>{s.text}</p>
          ))}
        </>
      )}
    </article>
  );
};

import { cardTitleOf } from "../editor/card-names.ts";
import type { DeskDocument } from "../state/desk.ts";

/** Which of the book's cards a page shows. */
export const CardChoice = ({
  cards,
  card,
  choose,
}: {
  cards: readonly DeskDocument[];
  card: DeskDocument;
  choose: (path: string) => void;
}) => (
  <label class="choose">
    <span>Card</span>
    <select value={card.path} onChange={(e) => choose(e.currentTarget.value)}>
      {cards.map((c) => (
        <option key={c.path} value={c.path}>
          {cardTitleOf(c.text, c.path)}
        </option>
      ))}
    </select>
  </label>
);

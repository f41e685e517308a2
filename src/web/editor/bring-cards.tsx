import { useState } from "preact/hooks";
import { decode } from "#wire/read-text.ts";
import { bringTroubleText } from "#words/brought-text.ts";
import { countText } from "#words/number-text.ts";
import type { DeskDocument } from "../state/desk.ts";
import { hashOf } from "../state/route.ts";
import { desk } from "../state/the-desk.ts";
import { newCardPath } from "./card-names.ts";

type Props = { readonly book: string; readonly folder: string; readonly cards: readonly DeskDocument[] };

/** Cards from files of other kinds: web pages, schema.org JSON-LD, Markdown, plain text; several at once. */
export const BringCards = ({ book, folder, cards }: Props) => {
  const [report, setReport] = useState<readonly string[]>([]);
  const bring = async (files: readonly File[]): Promise<void> => {
    // The parts that take pages apart are heavy and seldom wanted; they come when they are.
    const { cardsFromFile } = await import("#wire/bring/cards-from-file.ts");
    const taken = new Set(cards.map((card) => card.path));
    const said: string[] = [];
    let first: string | null = null;
    let count = 0;
    for (const [k, file] of files.entries()) {
      setReport([`${k + 1} of ${files.length}`]);
      const { text } = decode(new Uint8Array(await file.arrayBuffer()));
      const brought = cardsFromFile(file.name, text);
      for (const { code, place } of brought.trouble)
        said.push(`${file.name}, line ${place.line}: ${bringTroubleText[code]}`);
      for (const card of brought.cards) {
        const path = newCardPath(folder, card.name, taken);
        taken.add(path);
        desk.add(book, path, "card", card.text);
        first ??= path;
        count += 1;
      }
    }
    setReport([`${countText(count, "card", "cards")} brought in.`, ...said]);
    if (count === 1 && first !== null) location.hash = hashOf({ book, screen: "cards", path: first });
  };
  return (
    <div class="bring-cards">
      <label>
        <span>Bring in from files</span>
        <input
          type="file"
          multiple
          accept=".txt,.md,.markdown,.html,.htm,.json,.jsonld"
          onChange={(event) => {
            const input = event.currentTarget;
            void bring([...(input.files ?? [])]).finally(() => {
              input.value = "";
            });
          }}
        />
      </label>
      <div role="status">
        {report.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </div>
  );
};

import { useEffect, useRef, useState } from "preact/hooks";
import type { Region } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { foodListsOf } from "../editor/own-foods.ts";
import { ScreenHead } from "../parts/screen-head.tsx";
import type { DeskDocument } from "../state/desk.ts";
import { writeUpLine } from "../state/engine-client.ts";
import type { BookFile } from "../state/engine-talk.ts";
import { hashOf } from "../state/route.ts";
import { CardChoice } from "./card-choice.tsx";

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
  const { html, failure } = useWriteUp(
    card?.text ?? "",
    cardNameOf(card?.path ?? ""),
    region,
    foodListsOf(documents),
  );
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (html === null) return;
    const article = new DOMParser().parseFromString(html, "text/html").querySelector("article");
    host.current?.replaceChildren(...(article === null ? [] : [article]));
  }, [html]);
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
          <CardChoice
            cards={cards}
            card={card}
            choose={(next) => {
              location.hash = hashOf({ book, screen: "write-up", path: next });
            }}
          />
          <a class="button" href={hashOf({ book, screen: "cards", path: card.path })}>
            Edit the card
          </a>
          <button
            type="button"
            disabled={html === null}
            onClick={() => saveAsFile(`${cardNameOf(card.path)}.html`, html ?? "")}
          >
            Save as a file
          </button>
          <button type="button" onClick={() => print()}>
            Print
          </button>
        </ScreenHead>
      </div>
      {failure !== null && <p role="alert">The card could not be written up ({failure}).</p>}
      {html === null && failure === null && <p role="status">Reading…</p>}
      <div class="write-up" ref={host} />
    </div>
  );
};

/** The card as a document, following its words. */
const useWriteUp = (text: string, source: string, region: Region, foods: readonly BookFile[]) => {
  const [html, setHtml] = useState<string | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    writeUpLine.ask(
      { ask: "write-up", text, source, region, foods },
      (answer) => {
        setHtml(answer.html);
        setFailure(null);
      },
      setFailure,
    );
  }, [text, source, region, foods.map((list) => list.text).join("\u0000")]);
  return { html, failure };
};

/** Hands a document to the reader as a file. */
const saveAsFile = (name: string, html: string): void => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([html], { type: "text/html" }));
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
};

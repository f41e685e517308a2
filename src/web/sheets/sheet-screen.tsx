import { useEffect, useState } from "preact/hooks";
import type { Region } from "#engine/index.ts";
import { cardNameOf } from "#wire/card-file.ts";
import { sentenceOf } from "#words/en.ts";
import { ScreenHead } from "../parts/screen-head.tsx";
import { valueAt } from "../sitting/edit-yaml.ts";
import type { DeskDocument } from "../state/desk.ts";
import { sheetLine } from "../state/engine-client.ts";
import type { SheetAnswer } from "../state/engine-talk.ts";
import { hashOf } from "../state/route.ts";
import { CardChoice } from "./card-choice.tsx";
import { SheetPage } from "./sheet-page.tsx";

type Props = {
  readonly book: string;
  readonly path: string | null;
  readonly documents: readonly DeskDocument[];
  readonly region: Region;
};

/** Most covers that a sheet is worked out for. */
const mostCovers = 100_000;

/** A card at another size, in the kitchen of the sitting: what to weigh, in which vessels, how long. */
export const SheetScreen = ({ book, path, documents, region }: Props) => {
  const cards = documents.filter((d) => d.kind === "card");
  const card = cards.find((c) => c.path === path) ?? cards[0];
  const sitting = documents.find((d) => d.kind === "sitting");
  const usual = sitting === undefined ? null : valueAt(sitting.text, ["covers"]);
  const [typed, setTyped] = useState<string | null>(null);
  const wanted = typed ?? usual?.text ?? "";
  const covers = wanted.trim() === "" ? null : Number(wanted);
  const fits = covers === null || (Number.isInteger(covers) && covers >= 1 && covers <= mostCovers);
  const { answer, failure } = useSheet(card, documents, sitting?.path ?? null, fits ? covers : null, region);
  if (card === undefined)
    return (
      <div class="screen narrow">
        <ScreenHead title="Sheets" lead="There is no card yet." />
      </div>
    );
  return (
    <div class="screen sheet-screen">
      <div class="no-print">
        <ScreenHead
          title="Sheets"
          lead={
            answer?.inKitchen === false
              ? "A card at another size, in no kitchen yet: the sitting cannot be read."
              : "A card at another size, in the pans of this kitchen."
          }
        >
          <CardChoice
            cards={cards}
            card={card}
            choose={(next) => {
              location.hash = hashOf({ book, screen: "sheet", path: next });
            }}
          />
          <label class="field">
            <span>Covers</span>
            <input
              type="number"
              min={1}
              max={mostCovers}
              placeholder="as written"
              value={wanted}
              aria-invalid={!fits}
              onInput={(e) => setTyped(e.currentTarget.value)}
            />
          </label>
          <button type="button" onClick={() => setTyped("")}>
            As the card has it
          </button>
          <a class="button" href={hashOf({ book, screen: "cards", path: card.path })}>
            Edit the card
          </a>
          <button type="button" disabled={answer === null} onClick={() => print()}>
            Print
          </button>
        </ScreenHead>
      </div>
      {!fits && <p role="alert">Covers is a whole number from 1 to {mostCovers}.</p>}
      {failure !== null && <p role="alert">The sheet could not be worked out ({failure}).</p>}
      {answer === null && failure === null && <p role="status">Reading…</p>}
      {answer !== null && fits && <Answered answer={answer} region={region} />}
    </div>
  );
};

const Answered = ({ answer, region }: { answer: SheetAnswer; region: Region }) => {
  const stops = answer.findings.filter((f) => f.severity === "stop");
  return (
    <>
      {stops.map((f) => {
        const { says, write } = sentenceOf(f);
        return (
          <p key={`${f.code}${f.span.start}`} role="alert" class="remark remark-stop">
            {says} {write}
          </p>
        );
      })}
      {answer.sheet === null ? (
        stops.length === 0 && <p>Nothing is to be made of these words yet.</p>
      ) : (
        <SheetPage sheet={answer.sheet} region={region} kitchenKnown={answer.inKitchen} />
      )}
    </>
  );
};

/** The sheet of a card, following its words, the kitchen and the covers; the one from before while it is worked out. */
const useSheet = (
  card: DeskDocument | undefined,
  documents: readonly DeskDocument[],
  sitting: string | null,
  covers: number | null,
  region: Region,
) => {
  const [answer, setAnswer] = useState<SheetAnswer | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const source = cardNameOf(card?.path ?? "");
  const text = card?.text ?? "";
  const others = documents.filter((d) => d.kind !== "card").map((d) => d.text);
  useEffect(() => {
    const files = documents.map((d) => ({ path: d.path, text: d.text }));
    sheetLine.ask(
      { ask: "sheet", text, source, covers, region, sitting, files },
      (found) => {
        setAnswer(found);
        setFailure(null);
      },
      setFailure,
    );
  }, [text, source, covers, region, sitting, others.join("\u0000")]);
  return { answer: answer?.dish.source === source ? answer : null, failure };
};

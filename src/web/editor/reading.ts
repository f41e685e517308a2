import { useEffect, useState } from "preact/hooks";
import type { Region } from "#engine/index.ts";
import { cardLine } from "../state/engine-client.ts";
import type { BookFile, CardAnswer } from "../state/engine-talk.ts";

/** Milliseconds without a key before the card is read. */
const pause = 12;

/** What the engine understands of a card, following it as it is typed; null until the first answer. */
export const useReading = (
  text: string,
  source: string,
  region: Region,
  foods: readonly BookFile[],
): CardAnswer | null => {
  const [answer, setAnswer] = useState<CardAnswer | null>(null);
  useEffect(() => {
    const timer = setTimeout(
      () => cardLine.ask({ ask: "card", text, source, region, foods }, setAnswer, () => undefined),
      answer === null ? 0 : pause,
    );
    return () => clearTimeout(timer);
  }, [text, source, region, foods.map((list) => list.text).join("\u0000")]);
  return answer?.dish.source === source ? answer : null;
};

import { type DeskDocument, keyOf } from "../state/desk.ts";
import { foodsLine } from "../state/engine-client.ts";
import type { BookFile } from "../state/engine-talk.ts";
import { desk } from "../state/the-desk.ts";
import { type OwnFoodEntry, withOwnFood } from "./own-foods.ts";

/** What stands against a list of foods, in a sentence; null when it can be used. */
const faultIn = (list: BookFile): Promise<string | null> =>
  new Promise((settle) =>
    foodsLine.ask(
      { ask: "foods", list },
      ({ remarks }) => {
        const stop = remarks.find((r) => r.severity === "stop");
        settle(stop === undefined ? null : `${stop.says} ${stop.write ?? ""}`.trim());
      },
      settle,
    ),
  );

/**
 * Writes a food of the cook's own into the list that the sitting names, and names a list in a sitting that had none. Nothing
 * is written when the list could then not be read; what keeps it from that is handed back, else null.
 */
export const addOwnFood = async (
  book: string,
  documents: readonly DeskDocument[],
  entry: OwnFoodEntry,
): Promise<string | null> => {
  const change = withOwnFood(documents, entry);
  if (change === null) return "This book's sitting or its list of foods cannot be read; mend that first.";
  const fault = await faultIn(change.list);
  if (fault !== null) return fault;
  const { list, sitting } = change;
  if (documents.some((d) => d.path === list.path)) desk.type(keyOf(book, list.path), list.text);
  else desk.add(book, list.path, "foods", list.text);
  if (sitting !== null) desk.type(keyOf(book, sitting.path), sitting.text);
  return null;
};

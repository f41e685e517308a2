import { valueAt, withItem } from "../sitting/edit-yaml.ts";
import type { DeskDocument } from "../state/desk.ts";
import type { BookFile } from "../state/engine-talk.ts";

const sittingOf = (documents: readonly DeskDocument[]): DeskDocument | undefined =>
  documents.find((d) => d.kind === "sitting");

const folderOf = (path: string): string => path.slice(0, path.lastIndexOf("/") + 1);

/** The paths of the lists that the sitting of a book names under `foods`. */
const listPaths = (sitting: DeskDocument): readonly string[] => {
  const one = valueAt(sitting.text, ["foods"]);
  const names: string[] = one === null ? [] : [one.text];
  for (let i = 0; one === null; i += 1) {
    const name = valueAt(sitting.text, ["foods", i]);
    if (name === null) break;
    names.push(name.text);
  }
  return names.map((name) => folderOf(sitting.path) + name);
};

/** The lists of the cook's own foods that the sitting of a book names. */
export const foodListsOf = (documents: readonly DeskDocument[]): readonly BookFile[] => {
  const sitting = sittingOf(documents);
  if (sitting === undefined) return [];
  return listPaths(sitting).flatMap((path) => documents.find((d) => d.path === path) ?? []);
};

/** What a cook says of a food of their own; what is null is not told. */
export type OwnFoodEntry = {
  readonly name: string;
  readonly like: string | null;
  readonly density: number | null;
  readonly allergens: readonly string[] | null;
  readonly diet: readonly string[] | null;
  readonly by: string | null;
};

const listOrNone = (list: readonly string[]): readonly string[] | "none" =>
  list.length === 0 ? "none" : list;

/** The entry as the list of foods has it: only what was told. */
const itemOf = (entry: OwnFoodEntry): Readonly<Record<string, unknown>> => ({
  name: entry.name,
  ...(entry.like === null ? {} : { "made of": [entry.like] }),
  ...(entry.density === null ? {} : { density: entry.density }),
  ...(entry.allergens === null ? {} : { allergens: listOrNone(entry.allergens) }),
  ...(entry.diet === null ? {} : { diet: listOrNone(entry.diet) }),
  ...(entry.by === null ? {} : { "told by": entry.by }),
});

/** The texts that change when a food is added: the list, and the sitting when it named none. */
type Addition = { readonly list: BookFile; readonly sitting: BookFile | null };

/** A food more in the first list that the sitting names; null when there is no sitting, or a text cannot be read. */
export const withOwnFood = (documents: readonly DeskDocument[], entry: OwnFoodEntry): Addition | null => {
  const sitting = sittingOf(documents);
  if (sitting === undefined) return null;
  const named = listPaths(sitting)[0] ?? null;
  const path = named ?? `${folderOf(sitting.path)}foods.yaml`;
  const text = withItem(documents.find((d) => d.path === path)?.text ?? "", "foods", itemOf(entry));
  if (text === null) return null;
  const gap = sitting.text.endsWith("\n") ? "" : "\n";
  return {
    list: { path, text },
    sitting: named === null ? { path: sitting.path, text: `${sitting.text}${gap}foods: foods.yaml\n` } : null,
  };
};

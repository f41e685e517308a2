import { partsOf } from "../../larder/food-parts.ts";
import { findFood } from "../../larder/foods.ts";
import type { Phrase } from "./read-phrase.ts";
import type { Reading } from "./reading.ts";

const sharedNouns = /^(?:peel|zest|juice|powder|stock|broth|seeds?|oil|flour|vinegar|extract)$/;

/** "2 tsp onion and garlic powder": both are powders. Null where the first is a food by itself or was counted. */
export const sharedNoun = (last: Reading, phrase: Phrase, own: boolean): Reading | null => {
  const head = phrase.name.split(/\s+/).at(-1) ?? "";
  if (own || !sharedNouns.test(head.toLowerCase()) || /\s/.test(last.name)) return null;
  if (last.amounts.some((a) => a.unit === "piece")) return null;
  const food = findFood(`${last.name} ${head}`);
  const same = food === null || food.id === last.food?.id || food.id === "ghee";
  return same ? null : { ...last, food, name: `${last.name} ${head}` };
};

/** "lemon juice from half a lemon": the part of the source that the food is; null when it is none. */
export const partOfSource = (last: Reading, source: Phrase | null): string | null => {
  if (source?.food == null || source.amounts.length === 0) return null;
  const { id } = source.food;
  const found = ["juice", "zest"].find((p) => partsOf(id, p).some((part) => part.food === last.food?.id));
  return found ?? null;
};

import type { Need } from "../model/need.ts";
import type { NeedId } from "../model/sitting.ts";
import { normaliseName } from "./normalise-name.ts";
import { needRows } from "./tables/needs.ts";

/** Every need of the table, in its order. */
export const needs: readonly Need[] = needRows;

const byId: ReadonlyMap<NeedId, Need> = new Map(needs.map((need) => [need.id, need]));

const byWords: ReadonlyMap<string, Need> = new Map(
  needs.flatMap((need) =>
    [need.id, need.name, ...need.words].map((words): [string, Need] => [normaliseName(words), need]),
  ),
);

/** The need of an id; null when the table has none. */
export const needById = (id: NeedId): Need | null => byId.get(id) ?? null;

// Words around what is avoided or who avoids it: "without nuts", "nut allergy", "for coeliacs", "vegan version".
const before =
  /^(?:for|if|when|the|a|an|any|all|no|non|without|free from|free of|allergic to|allergy to|allergies to|intolerant to|intolerance to|intolerance of|sensitive to|avoids|avoiding|avoid|cannot eat|can't eat|can't have|cannot have|does not eat|doesn't eat|don't eat|hates|is|are|has|you are|you're|someone who is|severe|mild|serious) (?=\S)/;
const after =
  /(?<=\S) (?:free|allergy|allergies|allergic|intolerance|intolerant|sufferers?|version|option|diet|guests?|people|eaters?|disease|please|ones?)$/;

/**
 * The need that words name, however they are put: "coeliac", "nut allergy", "without nuts", "dairy-free",
 * "for vegetarians"; null when none is understood. It never guesses from a likeness of spelling.
 */
export const needByWords = (words: string): Need | null => {
  let key = normaliseName(words.replace(/[.,;:!?()"]/g, " "));
  for (;;) {
    const found = byWords.get(key);
    if (found !== undefined) return found;
    const shorter = before.test(key) ? key.replace(before, "") : key.replace(after, "");
    if (shorter === key) return null;
    key = shorter;
  }
};

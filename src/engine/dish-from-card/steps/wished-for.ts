import { techniqueById, verbReadings } from "../../larder/techniques.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { readingAt, word } from "./verb-reading.ts";
import { beings, determiners } from "./word-sets.ts";

/**
 * Work that is told as what the cook wants to have: "you want the beans soaked overnight, then drained and simmered",
 * "the beef has to come out of the fridge two hours before". Null where the words at this place are none.
 */
export const wishedAt = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  isFood: (i: number) => boolean,
): VerbHit | null => {
  const here = word(tokens, i);
  if (/^comes?$/.test(here) && word(tokens, i + 1) === "out" && word(tokens, i + 2) === "of") {
    const takeOut = techniqueById("take-out");
    const cold = tokens.slice(i + 3, i + 6).some((t) => /^(fridge|freezer|refrigerator)$/.test(t.text));
    return takeOut === null || !cold
      ? null
      : { at: i, to: i + 3, technique: takeOut, verb: "take out of", letting: false, passive: true };
  }
  const last = hits.at(-1);
  if (last !== undefined && last.wished !== true) return null;
  if (!verbReadings(here).some((r) => r.form === "past")) return null;
  const goesOn = last?.wished === true && /^(and|then|,)$/.test(word(tokens, i - 1));
  // "Salt, sugar, half the dill, all mixed up and packed over the fish."
  const all =
    hits.length === 0 && word(tokens, i - 1) === "all" && tokens.slice(0, i).some((_, k) => isFood(k));
  if (!goesOn && !all && !(hits.length === 0 && isWish(tokens, i, isFood))) return null;
  const found = readingAt(tokens, i, (r) => r.form === "past");
  return found === null
    ? null
    : {
        at: i,
        to: found.to,
        technique: found.reading.technique,
        verb: found.reading.verb,
        letting: false,
        passive: true,
        wished: true,
      };
};

/** "You want the chickpeas …", "get the oven door shut and the fish …": a wish, and the food right before the participle. */
const isWish = (tokens: readonly Token[], i: number, isFood: (i: number) => boolean): boolean => {
  const start = /^(you|we|i|you'll|we'll|i'll)$/.test(word(tokens, 0)) ? 1 : 0;
  if (!/^(want|need|like|wants|needs)$/.test(word(tokens, start))) return false;
  if (!determiners.has(word(tokens, start + 1)) && !isFood(start + 1)) return false;
  const between = tokens.slice(start + 1, i);
  return (
    between.length > 0 &&
    between.length <= 5 &&
    between.every((t) => t.kind === "word" && !beings.has(t.text)) &&
    between.some((t, k) => isFood(start + 1 + k) || /^(it|them|this|that)$/.test(t.text))
  );
};

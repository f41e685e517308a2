import { foodById } from "../../larder/foods.ts";
import type { Clause } from "./clauses.ts";
import { livePools, type Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";
import { seasoning } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

const roasts = /^(roast|braise|grill|barbecue|sear|brown)$/;
const fats = /\b(oil|fat|lard|dripping|ghee|tallow)\b/;

/** Lines of the list that an action takes though no word names them: the one joint that is rubbed and roasted, the fat that is fried in. */
export const notSaid = (
  reader: StepReader,
  clause: Clause,
  id: string,
  fresh: readonly Fresh[],
  named: number,
): readonly number[] => {
  const { current } = reader.kitchen;
  const isFat = (i: number): boolean => fats.test(reader.ingredients[i]?.name.toLowerCase() ?? "");
  // "Fry the chips in the oil", of potatoes.
  if (fresh.length > 0 && named === 0 && namesDish(reader, clause) && livePools(reader.kitchen).length === 0)
    return fresh.every((f) => isFat(f.ingredient)) ? mainLine(reader) : [];
  if (/^(fry|deep-fry)$/.test(id))
    return fresh.length > 0 || current !== null ? deepFat(reader, clause, current) : [];
  // "Colour hard in the oil": the one piece of meat, though only its fat is named.
  if (
    fresh.length > 0 &&
    named === 0 &&
    /^(sear|brown|fry)$/.test(id) &&
    fresh.every((f) => isFat(f.ingredient)) &&
    (current === null || onlySeasons(reader, current))
  )
    return untouchedMain(reader);
  if (fresh.length > 0) return [];
  // "Pound the garlic and rub it all over": over the one piece of meat or fish of the list, when it lies there untouched.
  if (id === "rub" && coversAll(clause)) return untouchedMain(reader);
  if (named > 0) return [];
  // "Dry the skin off", "score the fat": its own.
  if (
    current === null &&
    /^(pat-dry|wipe|score|salt|rub|season|prick)$/.test(id) &&
    clause.tokens.some(
      (t, i) =>
        i > clause.verbAt &&
        i < clause.verbAt + 4 &&
        /^(skin|fat|rind|flesh)$/.test(t.text) &&
        /^(the|its)$/.test(word(clause, i - 1)),
    )
  )
    return untouchedMain(reader);
  // "Work the salt into the cuts. Roast at 240": the one piece of meat of the list, though no word names it.
  if (roasts.test(id) && (current === null || onlySeasons(reader, current))) return untouchedMain(reader);
  // "Simmer the chips", of potatoes: the dish by its title, before anything was done.
  return namesDish(reader, clause) && livePools(reader.kitchen).length === 0 ? mainLine(reader) : [];
};

/** "Second fry at 180": in the fat that is listed and never named. */
const deepFat = (reader: StepReader, clause: Clause, current: Pool | null): readonly number[] => {
  if (!clause.settings.some((t) => t.celsius >= 120)) return [];
  const holds = [...(current?.contents ?? [])].some((i) =>
    fats.test(reader.ingredients[i]?.name.toLowerCase() ?? ""),
  );
  if (holds) return [];
  const listed = reader.ingredients.filter(
    (i) =>
      fats.test(i.name.toLowerCase()) &&
      (reader.namedAlone[i.index] ?? 0) === 0 &&
      (reader.remaining[i.index] ?? 0) > 0.99,
  );
  return listed.length === 1 ? listed.map((i) => i.index) : [];
};

/** Behind the verb stands a word of the card's title: "simmer the chips". */
const namesDish = (reader: StepReader, clause: Clause): boolean =>
  /^(the|your)$/.test(word(clause, clause.verbTo)) &&
  reader.titleWords.has(clause.tokens[clause.verbTo + 1]?.stem ?? "");

/** The one line that is neither fat nor seasoning; none where there are several. */
const mainLine = (reader: StepReader): readonly number[] => {
  const main = reader.ingredients.filter(
    (i) =>
      !i.equipment &&
      i.purpose === null &&
      !seasoning.test(i.name.toLowerCase()) &&
      !fats.test(i.name.toLowerCase()),
  );
  return main.length === 1 ? main.map((i) => i.index) : [];
};

/** "All over", and no word says what: "rub it all over, then …". */
const coversAll = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      t.text === "all" && word(clause, i + 1) === "over" && /^(|[,;.]|and|then)$/.test(word(clause, i + 2)),
  );

/** The one line of meat or fish, if nothing was done with it yet; none where there are several. */
const untouchedMain = (reader: StepReader): readonly number[] => {
  const main = [...reader.classes.membersOf("meat"), ...reader.classes.membersOf("fish")];
  return main.length === 1 && main.every((i) => (reader.remaining[i] ?? 0) > 0.99) ? main : [];
};

/** Nothing but what seasons lies in it. */
const onlySeasons = (reader: StepReader, pool: Pool): boolean =>
  pool.contents.size > 0 &&
  [...pool.contents].every((i) => {
    const line = reader.ingredients[i];
    return seasoning.test(line?.name.toLowerCase() ?? "") || foodById(line?.food ?? "")?.shelf === "spices";
  });

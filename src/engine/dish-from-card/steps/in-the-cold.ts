import { foodById } from "../../larder/foods.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import type { Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";

// From so long on, what spoils stands cold: the cautions of the trade allow four hours at most without.
const longMinutes = 240;

const stands =
  /^(stand|press|infuse|soak|steep|marinate|rest|cover|set-aside|put|salt|cool|set-gel|drain|wrap)$/;

/** Words that put it elsewhere: then it stands where they say. */
const elsewhere =
  /^(side|bench|counter|worktop|out|room|warm|cool|larder|pantry|cellar|dark|cupboard|shelf|shade|oven|heat|temperature|outside|airing|kitchen)$/;

const spoils =
  /\b(?:raw-meat|raw-mince|raw-fish|raw-poultry|raw-shellfish|raw-egg|liver|soft-cheese|cooked-rice|smoked-fish|raw-milk)\b/;

/** True of meat, fish, dairy and egg: what may not stand out for hours. */
const isPerishable = (reader: StepReader, index: number): boolean => {
  const food = foodById(reader.ingredients[index]?.food ?? "");
  if (food === null) return false;
  if (food.hazards.some((hazard) => spoils.test(hazard))) return true;
  return food.diet.some((kind) => /^(meat|fish|poultry|dairy|egg)$/.test(kind)) && !dry.test(food.name);
};

const dry = /\b(?:powder|sauce|butter|ghee|lard|dripping|suet|parmesan|stock|gelatine|chocolate)\b/;

const pulses = /\b(?:beans?|peas|chickpeas?|lentils?|dal|barley)\b/i;

const leaven = /\b(?:yeast|starter|levain|leaven)\b/i;

const baking = /\b(?:flour|oats|ground almonds)\b/i;
const sweet = /\b(?:sugar|honey|syrup|treacle)\b/i;

/** Cakes and biscuits, jam and what lies in sugar: flour or sugar is a quarter of it, and no meat or fish is in it. */
const keepsDry = (reader: StepReader, contents: readonly number[]): boolean => {
  let [dryGrams, all] = [0, 0];
  for (const i of contents) {
    const line = reader.ingredients[i];
    const food = foodById(line?.food ?? "");
    if (food?.diet.some((kind) => /^(meat|fish|poultry|shellfish)$/.test(kind)) === true) return false;
    const grams = line?.grams?.likely ?? 0;
    all += grams;
    if (baking.test(line?.name ?? "") || sweet.test(line?.name ?? "")) dryGrams += grams;
  }
  return all > 0 && dryGrams * 4 >= all;
};

const cooks = /^(boil|simmer|bake|roast|fry|braise|stew|steam|poach|cook|sweat|grill|reheat)$/;

/** What was heated through lies in it. */
const wasCooked = (pool: Pool): boolean => [...pool.did].some((id) => cooks.test(id));

/**
 * "Leave the cheeks overnight in the wine": raw meat and fish, dairy, egg and what was cooked stand in the fridge when no
 * word says where; dough and dry pulses stand as they are left. Null when that is not so.
 */
export const inTheCold = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  fresh: readonly Fresh[],
  joined: readonly Pool[],
): Chosen | null => {
  if (chosen.station !== "bench" || !stands.test(chosen.technique.id) || clause.station !== null) return null;
  const length = clause.times.find((t) => t.kind !== "wait" && t.kind !== "interval");
  if (length === undefined || !(length.long || length.minutes.likely >= longMinutes)) return null;
  if (clause.tokens.some((t) => elsewhere.test(t.text))) return null;
  const contents = [...fresh.map((f) => f.ingredient), ...joined.flatMap((p) => [...p.contents])];
  if (contents.some((i) => leaven.test(reader.ingredients[i]?.name ?? ""))) return null;
  // "Soak the ham and the split peas": water takes the salt of the one and swells the other, each by itself.
  if (chosen.technique.id === "soak" && contents.some((i) => pulses.test(reader.ingredients[i]?.name ?? "")))
    return null;
  if (keepsDry(reader, contents)) return null;
  if (!joined.some(wasCooked) && !contents.some((i) => isPerishable(reader, i))) return null;
  return { ...chosen, station: "fridge", attention: "none" };
};

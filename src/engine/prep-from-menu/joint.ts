import { jointOf } from "../heat/bodies.ts";
import type { Content } from "../heat/composition.ts";
import { mixtureOf } from "../heat/composition.ts";
import { minutesToMiddle } from "../heat/conduction.ts";
import { transferOf } from "../heat/media.ts";
import { thermalProperties } from "../heat/thermal-properties.ts";
import { foodById } from "../larder/foods.ts";
import { techniqueById } from "../larder/techniques.ts";
import type { Transfer } from "../measure/heat-units.ts";
import { type Celsius, celsius, type Grams, grams, type Minutes } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";

/** Meat of this weight on a line that counts no pieces and is not cut up is one joint. Grams; common practice, no source. */
const leastJoint = 700;
/** Out of the fridge, and not yet warm, °C. */
const fromTheFridge = celsius(7);
/** The middle when it is done, where the card gives no core temperature, °C. Common practice, no source. */
const usualCore = celsius(65);

/** Pieces that a joint is carved into. */
const cutOff: ReadonlySet<string> = new Set(["slice", "steak", "rasher", "portion"]);

const isCut = (words: readonly string[]): boolean =>
  words.some((word) =>
    /dice|cube|chunk|slice|strip|mince|chop|piece|\bcut\b|bite|stew|steak|ground|portions/.test(word),
  );

/** Grams on the card of the heaviest joint among these lines; null when none is one. */
export const jointAmong = (
  dish: Dish,
  lines: readonly number[],
  actions: readonly Action[],
): Grams | null => {
  let heaviest = 0;
  for (const place of lines) {
    const line = dish.ingredients[place];
    const food = line?.food == null ? null : foodById(line.food);
    if (line === undefined || food === null || (food.shelf !== "meat" && food.shelf !== "poultry")) continue;
    const weight = line.grams?.likely ?? 0;
    const [piece] = food.pieces;
    // A thigh or a chop is a piece by itself; a slice is cut off a joint.
    const each = piece === undefined || cutOff.has(piece.name) ? Number.POSITIVE_INFINITY : piece.grams;
    const counted = line.gramsBasis === "pieces" || line.amounts.some((a) => a.unit === "piece");
    if (weight < leastJoint || each < leastJoint || counted || food.hazards.includes("raw-mince")) continue;
    const worked = actions.some(
      (a) =>
        a.uses.some((use) => use.ingredient === place) &&
        techniqueById(a.technique ?? "")?.miseEnPlace === true &&
        isCut([a.technique ?? "", a.verb]),
    );
    if (!worked && !isCut([...line.preparation, line.text.toLowerCase()]))
      heaviest = Math.max(heaviest, weight);
  }
  return heaviest > 0 ? grams(heaviest) : null;
};

/** What a joint is cooked in. */
export type JointHeat = {
  readonly contents: readonly Content[];
  readonly medium: Celsius;
  readonly transfer: Transfer;
  readonly core: Celsius | null;
};

/** Minutes until a joint is done in its middle, and how thick it is; null when its medium never gets it there. */
export const jointMinutes = (
  weight: Grams,
  heat: JointHeat,
): { readonly minutes: Minutes; readonly millimetres: number } | null => {
  const properties = thermalProperties(mixtureOf(heat.contents).composition, celsius(40));
  const body = jointOf(weight, properties.density);
  const minutes = minutesToMiddle(
    { body, ...properties, transfer: heat.transfer, start: fromTheFridge, medium: heat.medium },
    heat.core ?? usualCore,
  );
  if (minutes === null || body.kind !== "cylinder") return null;
  return { minutes, millimetres: body.diameter * 1000 };
};

/**
 * The weight of one joint at another size. Below the card's size it is a smaller one; above, as many as the card's size
 * goes into it, each a little heavier, as a butcher would cut them.
 */
export const jointAtSize = (onCard: Grams, factor: number): Grams =>
  grams((onCard * factor) / Math.max(1, Math.floor(factor + 1e-9)));

/** The coefficient around a joint by where it is cooked. */
export const aroundJoint = (station: Action["station"], fan: boolean): Transfer =>
  station === "oven"
    ? transferOf(fan ? "fan-oven" : "static-oven").likely
    : station === "burner"
      ? transferOf("boiling-water").likely
      : transferOf("still-air").likely;

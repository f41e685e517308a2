import { jointOf } from "../heat/bodies.ts";
import type { Content } from "../heat/composition.ts";
import { mixtureOf } from "../heat/composition.ts";
import { minutesToMiddle } from "../heat/conduction.ts";
import { transferOf } from "../heat/media.ts";
import { thermalProperties } from "../heat/thermal-properties.ts";
import type { Transfer } from "../measure/heat-units.ts";
import { type Celsius, celsius, type Grams, type Minutes } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";

/** Out of the fridge, and not yet warm, °C. */
const fromTheFridge = celsius(7);
/** The middle when it is done, where the card gives no core temperature, °C. Common practice, no source. */
const usualCore = celsius(65);

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

/** The coefficient around a joint by where it is cooked. */
export const aroundJoint = (station: Action["station"], fan: boolean): Transfer =>
  station === "oven"
    ? transferOf(fan ? "fan-oven" : "static-oven").likely
    : station === "burner"
      ? transferOf("boiling-water").likely
      : transferOf("still-air").likely;

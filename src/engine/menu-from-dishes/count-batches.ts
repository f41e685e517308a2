import { panHolds, pansFor } from "../larder/pans.ts";
import { count } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Batches } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";
import { gramsATray, namedPan } from "./choose-vessel.ts";
import { type Load, loadsOf, timesLoad } from "./vessel-loads.ts";

/** Litres that the pan holds which the words name, or the largest. Zero when the kitchen has none. */
const litresAtOnce = (action: Action, kitchen: Kitchen): number => {
  const named = namedPan(kitchen, action.vessel);
  return named !== null
    ? panHolds(named, action)
    : pansFor(kitchen, action).reduce((most, pan) => Math.max(most, panHolds(pan, action)), 0);
};

const trayPlaces = (kitchen: Kitchen): number =>
  Math.min(
    kitchen.trays,
    kitchen.ovens.reduce((sum, oven) => sum + oven.shelves, 0),
  );

const batchesOf = (action: Action, load: Load, kitchen: Kitchen): Pick<Batches, "batches" | "because"> => {
  const inPan = action.station === "burner" || action.station === "fryer";
  const litres = inPan ? litresAtOnce(action, kitchen) : 0;
  if (inPan && litres > 0) return { batches: count(Math.ceil(load.litres / litres)), because: "pan-volume" };
  const places = trayPlaces(kitchen);
  if (action.station === "oven" && places > 0)
    return { batches: count(Math.ceil(load.grams / gramsATray / places)), because: "oven-shelves" };
  return { batches: count(1), because: "pan-volume" };
};

/**
 * How often each action must be done because the vessel holds no more at once; actions that are done once are left
 * out. Where the card states its own batches, a batch is taken to stay as large as the card's.
 */
export const countBatches = (
  dish: Dish,
  version: string,
  factor: number,
  kitchen: Kitchen,
): readonly Batches[] => {
  const loads = loadsOf(dish);
  return dish.steps.flatMap((step) =>
    step.actions.flatMap((action): readonly Batches[] => {
      const load = timesLoad(loads.get(action.id) ?? { grams: 0, litres: 0 }, factor);
      const found =
        action.batches === null
          ? batchesOf(action, load, kitchen)
          : { batches: count(Math.ceil(action.batches * factor - 1e-9)), because: "card-says" as const };
      return found.batches > 1 ? [{ action: action.id, version, ...found }] : [];
    }),
  );
};

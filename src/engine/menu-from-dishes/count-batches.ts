import { count } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import type { Batches } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";
import { namedPan, trayHolds } from "./choose-vessel.ts";
import { fryingBatches, isDeepFry } from "./frying-fat.ts";
import type { Work } from "./kitchen-work.ts";
import { holdsOf, pansToUse } from "./pan-fit.ts";

/** Litres that the pan holds which the words name, or the largest. Zero when the kitchen has none. */
const litresAtOnce = ({ dish, kitchen, loads }: Work, action: Action): number => {
  const named = namedPan(kitchen, action.vessel);
  return named !== null
    ? holdsOf(dish, action, loads, named)
    : pansToUse(dish, action, loads, kitchen).reduce(
        (most, pan) => Math.max(most, holdsOf(dish, action, loads, pan)),
        0,
      );
};

const trayPlaces = (kitchen: Kitchen): number =>
  Math.min(
    kitchen.trays,
    kitchen.ovens.reduce((sum, oven) => sum + oven.shelves, 0),
  );

const batchesOf = (work: Work, action: Action): Pick<Batches, "batches" | "because"> => {
  const { factor, frying, kitchen, loads, litresIn } = work;
  if (frying !== null && isDeepFry(action))
    return { batches: count(fryingBatches(frying, factor, kitchen)), because: "frying-fat" };
  if (action.batches !== null)
    return { batches: count(Math.ceil(action.batches * factor - 1e-9)), because: "card-says" };
  const inPan = action.station === "burner" || action.station === "fryer";
  const litres = inPan ? litresAtOnce(work, action) : 0;
  if (inPan && litres > 0)
    return { batches: count(Math.ceil(litresIn(action) / litres - 1e-9)), because: "pan-volume" };
  const places = trayPlaces(kitchen);
  const load = loads.get(action.id)?.grams ?? 0;
  if (action.station === "oven" && places > 0)
    return {
      batches: count(Math.ceil(load / trayHolds(work, action) / places - 1e-9)),
      because: "oven-shelves",
    };
  return { batches: count(1), because: "pan-volume" };
};

/**
 * How often each action must be done because the vessel holds no more at once; actions that are done once are left
 * out. Where the card states its own batches, a batch is taken to stay as large as the card's, but in deep fat, of which
 * a larger pan holds more.
 */
export const countBatches = (work: Work, version: string): readonly Batches[] =>
  work.dish.steps.flatMap((step) =>
    step.actions.flatMap((action): readonly Batches[] => {
      const found = batchesOf(work, action);
      return found.batches > 1 ? [{ action: action.id, version, ...found }] : [];
    }),
  );

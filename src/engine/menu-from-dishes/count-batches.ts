import { foodById } from "../larder/foods.ts";
import { normaliseName } from "../larder/normalise-name.ts";
import { techniqueById } from "../larder/techniques.ts";
import { count } from "../measure/units.ts";
import type { Action, Dish, Ingredient } from "../model/dish.ts";
import type { Batches } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";

// How full a pan is worked: a single layer to fry or sear in, nearly to the brim to boil in. Common practice, no source.
const fillInOneLayer = 1 / 3;
const fillOfLiquid = 0.85;
// What one oven tray takes in a layer; common practice, no source.
const gramsATray = 2500;

/** What stands in the vessel, in litres and grams, for the card's own yield. */
type Load = { readonly grams: number; readonly litres: number };

const empty: Load = { grams: 0, litres: 0 };

const part = (load: Load, share: number): Load => ({
  grams: load.grams * share,
  litres: load.litres * share,
});

const loadOf = (ingredient: Ingredient | undefined): Load => {
  const grams = ingredient?.grams?.likely ?? 0;
  const density = ingredient?.food == null ? null : (foodById(ingredient.food)?.density ?? null);
  return { grams, litres: grams / (density !== null && density > 0 ? density : 1) / 1000 };
};

/** What each action handles: its ingredients and what earlier actions made. Uses of later actions count nothing. */
const loadsOf = (dish: Dish): ReadonlyMap<string, Load> => {
  const byPlace = new Map(dish.ingredients.map((i) => [i.index, i]));
  const loads = new Map<string, Load>();
  for (const step of dish.steps)
    for (const action of step.actions) {
      const parts = action.uses.map((use) =>
        part(
          use.product === null
            ? loadOf(use.ingredient === null ? undefined : byPlace.get(use.ingredient))
            : (loads.get(use.product) ?? empty),
          use.share,
        ),
      );
      loads.set(
        action.id,
        parts.reduce((a, b) => ({ grams: a.grams + b.grams, litres: a.litres + b.litres }), empty),
      );
    }
  return loads;
};

/** The pan that the words name, if the kitchen has one by that name; otherwise its largest. Zero when it has none. */
const panLitres = (kitchen: Kitchen, vessel: string | null): number => {
  const words = vessel === null ? "" : normaliseName(vessel);
  const named = kitchen.pans.find((pan) => words !== "" && normaliseName(pan.name) === words);
  return named?.litres ?? kitchen.pans.reduce((most, pan) => Math.max(most, pan.litres), 0);
};

const trayPlaces = (kitchen: Kitchen): number =>
  Math.min(
    kitchen.trays,
    kitchen.ovens.reduce((sum, oven) => sum + oven.shelves, 0),
  );

const batchesOf = (action: Action, load: Load, kitchen: Kitchen): Pick<Batches, "batches" | "because"> => {
  const inPan = action.station === "burner" || action.station === "fryer";
  const oneLayer = action.technique !== null && techniqueById(action.technique)?.law === "per-batch";
  const litres = panLitres(kitchen, action.vessel) * (oneLayer ? fillInOneLayer : fillOfLiquid);
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
      const found =
        action.batches === null
          ? batchesOf(action, part(loads.get(action.id) ?? empty, factor), kitchen)
          : { batches: count(Math.ceil(action.batches * factor - 1e-9)), because: "card-says" as const };
      return found.batches > 1 ? [{ action: action.id, version, ...found }] : [];
    }),
  );
};

import { normaliseName } from "../larder/normalise-name.ts";
import { panHolds, pansFor } from "../larder/pans.ts";
import { count, grams, share } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { VesselUse } from "../model/menu.ts";
import type { Kitchen } from "../model/sitting.ts";
import { type Load, loadsOf, timesLoad } from "./vessel-loads.ts";

// How full what is carried to an oven is worked. Common practice, no source.
const fillOfContainer = 0.8;
/** What one oven tray takes in a layer, grams. Common practice, no source. */
export const gramsATray = 2500;

type Candidate = { readonly name: string; readonly holds: number };

/** The pan of the kitchen that the words name, by its whole name; null when they name none. */
export const namedPan = (kitchen: Kitchen, vessel: string | null): Kitchen["pans"][number] | null => {
  const words = vessel === null ? "" : normaliseName(vessel);
  return (words === "" ? undefined : kitchen.pans.find((pan) => normaliseName(pan.name) === words)) ?? null;
};

/** True when food lies deep in its dish in the oven, and so is measured by volume and not spread on a tray. */
const liesDeep = (action: Action): boolean =>
  action.technique === "braise" || /dish|casserole|pot\b|gratin|container/.test(action.vessel ?? "");

/**
 * The vessel of each action of a dish: of the pans, containers and trays of the kitchen the smallest that holds it at a
 * working fill; where none does, the largest as often as it takes. A pan that the card names by the kitchen's own name is
 * taken when it holds it, else a larger one. Actions without a vessel of that kind, and kitchens without any, give none.
 */
export const chooseVessels = (
  dish: Dish,
  version: string,
  factor: number,
  kitchen: Kitchen,
): readonly VesselUse[] => {
  const loads = loadsOf(dish);
  return dish.steps.flatMap((step) =>
    step.actions.flatMap((action): readonly VesselUse[] => {
      const load = timesLoad(loads.get(action.id) ?? { grams: 0, litres: 0 }, factor);
      if (load.grams <= 0) return [];
      const { kind, sizes, amount } = sizesFor(action, load, kitchen);
      const chosen = smallest(sizes, amount);
      if (chosen === null) return [];
      const fillings = Math.max(1, Math.ceil(amount / chosen.holds - 1e-9));
      return [
        {
          action: action.id,
          version,
          kind,
          name: chosen.name,
          grams: grams(load.grams),
          litres: load.litres,
          holds: chosen.holds,
          fillings: count(fillings),
          fill: share(amount / fillings / chosen.holds),
        },
      ];
    }),
  );
};

type Sizes = {
  readonly kind: VesselUse["kind"];
  readonly sizes: readonly Candidate[];
  /** Litres or grams, as `holds` counts. */
  readonly amount: number;
};

const sizesFor = (action: Action, load: Load, kitchen: Kitchen): Sizes => {
  const none: Sizes = { kind: "pan", sizes: [], amount: 0 };
  if (action.station === "burner" || action.station === "fryer") {
    const named = namedPan(kitchen, action.vessel);
    const least = named === null ? 0 : panHolds(named, action);
    const pans = pansFor(kitchen, action).filter((pan) => panHolds(pan, action) >= least);
    const sizes = [...pans, ...(named === null ? [] : [named])].map((pan) => ({
      name: pan.name,
      holds: panHolds(pan, action),
    }));
    return { kind: "pan", sizes, amount: load.litres };
  }
  if (action.station !== "oven") return none;
  if (liesDeep(action) && kitchen.containers.length > 0)
    return {
      kind: "container",
      sizes: kitchen.containers.map(({ size, litres }) => ({ name: size, holds: litres * fillOfContainer })),
      amount: load.litres,
    };
  return kitchen.trays > 0
    ? { kind: "tray", sizes: [{ name: "", holds: gramsATray }], amount: load.grams }
    : none;
};

const smallest = (sizes: readonly Candidate[], amount: number): Candidate | null => {
  const rising = sizes.filter(({ holds }) => holds > 0).toSorted((a, b) => a.holds - b.holds);
  return rising.find(({ holds }) => holds >= amount - 1e-9) ?? rising.at(-1) ?? null;
};

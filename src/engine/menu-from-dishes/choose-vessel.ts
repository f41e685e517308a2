import { traysOfPieces } from "../heat/trays.ts";
import { bigPiecesAmong, bigPiecesAtSize } from "../larder/big-pieces.ts";
import { foodById } from "../larder/foods.ts";
import { isLiquid } from "../larder/liquids.ts";
import { normaliseName } from "../larder/normalise-name.ts";
import { ownVessels } from "../larder/own-vessels.ts";
import { isFryingPan } from "../larder/pans.ts";
import { count, grams, share } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { VesselUse } from "../model/menu.ts";
import type { Kitchen, Pan } from "../model/sitting.ts";
import type { Work } from "./kitchen-work.ts";
import { holdsOf, isFat, isOneLayer, pansToUse } from "./pan-fit.ts";
import { potGroups } from "./pot-groups.ts";
import type { Load, Loads } from "./vessel-loads.ts";

// How full what is carried to an oven is worked. Common practice, no source.
const fillOfContainer = 0.8;
/** What one oven tray takes in a layer, grams. Common practice, no source. */
const gramsATray = 2500;
/** What goes into the oven with more liquid than this share lies deep. Common practice, no source. */
const wetShare = 0.2;

/** And what has more flour than this is a dough or a batter. */
const doughShare = 0.1;

type Candidate = { readonly name: string; readonly holds: number };

/** The pan of the kitchen that the words name, by its whole name; null when they name none. */
export const namedPan = (kitchen: Kitchen, vessel: string | null): Kitchen["pans"][number] | null => {
  const words = vessel === null ? "" : normaliseName(vessel);
  return (words === "" ? undefined : kitchen.pans.find((pan) => normaliseName(pan.name) === words)) ?? null;
};

/** True when food lies deep in its dish in the oven, and so is measured by volume and not spread on a tray. */
const liesDeep = (dish: Dish, action: Action, loads: Loads): boolean => {
  if (action.technique === "braise" || /dish|casserole|pot\b|gratin|container/.test(action.vessel ?? ""))
    return true;
  let all = 0;
  let liquid = 0;
  let flour = 0;
  for (const { ingredient, share: part } of loads.get(action.id)?.contents.values() ?? []) {
    const line = dish.ingredients[ingredient];
    const weight = (line?.grams?.likely ?? 0) * part;
    const food = line?.food == null ? null : foodById(line.food);
    all += weight;
    if (food !== null && isLiquid(food)) liquid += weight;
    if (food !== null && /(^|-)flour(-|$)/.test(food.id)) flour += weight;
  }
  return all > 0 && liquid / all > wetShare && flour / all < doughShare;
};

/** What one tray takes of an action: what the card lays on each of its own, as many joints as lie on it, or what it takes in a layer. */
export const trayHolds = ({ dish, factor, loads, onCard }: Work, action: Action): number => {
  const step = dish.steps.findIndex(({ actions }) => actions.some((a) => a.id === action.id));
  const own = ownVessels(dish).findLast((v) => v.noun === "tray" && v.step <= step && v.step >= step - 1);
  const load = onCard.get(action.id)?.grams ?? 0;
  if (own !== undefined && load > 0) return Math.min(gramsATray, load / own.count);
  const here = loads.get(action.id);
  const lines = [...(here?.contents.values() ?? [])].map((c) => c.ingredient);
  const pieces = bigPiecesAmong(
    dish,
    lines,
    dish.steps.flatMap(({ actions }) => actions),
  );
  if (pieces === null || here === undefined) return gramsATray;
  const { grams: each, count: many } = bigPiecesAtSize(pieces, factor);
  return here.grams / traysOfPieces(each, many, grams(here.grams), grams(gramsATray));
};

const bakedIn: ReadonlySet<string> = new Set(["tin", "mould", "mold", "ramekin", "pot", "basin", "jar"]);

/** True where the card tells the tins, moulds or dishes that it is baked in, which are not the kitchen's trays. */
const inOwnVessel = (dish: Dish, action: Action): boolean =>
  action.technique === "bake" || action.technique === "blind-bake"
    ? ownVessels(dish).some((v) => bakedIn.has(v.noun))
    : false;

/**
 * The vessel of each action of a version: of the pans, containers and trays of the kitchen the smallest that holds it at
 * a working fill; where none does, the largest as often as it takes. What goes on in one pan is given one that holds all
 * of it, where there is one. A pan that the card names by the kitchen's own name is taken when it holds it, else a larger
 * one. Actions without a vessel of that kind, and kitchens without any, give none.
 */
export const chooseVessels = (work: Work, version: string): readonly VesselUse[] => {
  const { dish, loads, litresIn } = work;
  const together = panOfGroups(work);
  const groups = potGroups(dish);
  const chosen = dish.steps.flatMap((step) =>
    step.actions.flatMap((action): readonly VesselUse[] => {
      const load = loads.get(action.id);
      if (load === undefined || load.grams <= 0) return [];
      const pot = together.get(groups.get(action.id) ?? -1);
      const common = pot?.actions.has(action.id) === true ? pot : undefined;
      const inPot = action.station === "oven" && common !== undefined;
      const { kind, sizes, amount } = inPot
        ? { kind: "pan" as const, sizes: [], amount: litresIn(action) }
        : sizesFor(work, action, load);
      const pan = common?.pan;
      const taken =
        kind === "pan" && pan !== undefined
          ? { name: pan.name, holds: holdsOf(dish, action, loads, pan) }
          : smallest(sizes, amount);
      if (taken === null) return [];
      const fillings = Math.max(1, Math.ceil(amount / taken.holds - 1e-9));
      return [
        {
          action: action.id,
          version,
          kind,
          name: taken.name,
          grams: grams(load.grams),
          litres: kind === "pan" ? amount : load.litres,
          holds: taken.holds,
          fillings: count(fillings),
          fill: share(amount / fillings / taken.holds),
        },
      ];
    }),
  );
  return inPanOfNext(work, chosen);
};

const warmsFat: ReadonlySet<string> = new Set(["heat", "melt", "warm"]);

/** Fat is heated in the pan in which the next thing is done with it. */
const inPanOfNext = ({ dish, kitchen, loads }: Work, uses: readonly VesselUse[]): readonly VesselUse[] => {
  const actions = dish.steps.flatMap((step) => step.actions);
  const byAction = new Map(uses.map((use) => [use.action, use]));
  return uses.map((use) => {
    const action = actions.find(({ id }) => id === use.action);
    if (action?.station !== "burner" || !warmsFat.has(action.technique ?? "")) return use;
    const inside = [...(loads.get(action.id)?.contents.values() ?? [])];
    if (!inside.every((c) => isFat(dish, c.ingredient))) return use;
    const next = actions.find((a) => a.uses.some((u) => u.product === action.id));
    const taken = next?.station === "burner" ? byAction.get(next.id) : undefined;
    const pan = kitchen.pans.find(({ name }) => taken?.kind === "pan" && name === taken.name);
    const holds = pan === undefined ? 0 : holdsOf(dish, action, loads, pan);
    if (pan === undefined || use.litres > holds) return use;
    return { ...use, name: pan.name, holds, fillings: count(1), fill: share(use.litres / holds) };
  });
};

/** The pan that holds all that goes on in it, by the place of the group; none where it goes in turns. */
const panOfGroups = ({ dish, kitchen, loads, litresIn }: Work): ReadonlyMap<number, Common> => {
  const groups = potGroups(dish);
  const members = new Map<number, Action[]>();
  for (const action of dish.steps.flatMap((step) => step.actions)) {
    const group = groups.get(action.id);
    if (group === undefined || (loads.get(action.id)?.grams ?? 0) <= 0) continue;
    members.set(group, [...(members.get(group) ?? []), action]);
  }
  const found = new Map<number, Common>();
  // A kitchen without containers has nothing else for what cooks deep in the oven.
  const goesIn = (pan: Pan): boolean =>
    !isFryingPan(pan.name) && (pan.litres <= potInOven || kitchen.containers.length === 0);
  const fitting = (actions: readonly Action[]): Pan | undefined => {
    const named = actions.flatMap((a) => namedPan(kitchen, a.vessel)?.litres ?? []);
    const pans = actions
      .map((a) => pansToUse(dish, a, loads, kitchen))
      .reduce((a, b) => a.filter((pan) => b.includes(pan)));
    return pans
      .filter((pan) => pan.litres >= Math.max(0, ...named))
      .filter((pan) => actions.every((a) => a.station === "burner" || goesIn(pan)))
      .filter((pan) => actions.every((a) => holdsOf(dish, a, loads, pan) >= litresIn(a) - 1e-9))
      .toSorted((a, b) => a.litres - b.litres)[0];
  };
  for (const [group, actions] of members) {
    const onStove = actions.filter((a) => a.station === "burner");
    const wet = actions.filter((a) => !isOneLayer(dish, a, loads));
    for (const some of [actions, wet, onStove]) {
      const pan = some.length < 2 ? undefined : fitting(some);
      if (pan === undefined) continue;
      found.set(group, { pan, actions: new Set(some.map(({ id }) => id)) });
      break;
    }
  }
  return found;
};

type Common = { readonly pan: Pan; readonly actions: ReadonlySet<string> };

/** A larger pot than this is too high for an oven with its shelves in, litres. Common practice, no source. */
const potInOven = 10;

type Sizes = {
  readonly kind: VesselUse["kind"];
  readonly sizes: readonly Candidate[];
  /** Litres or grams, as `holds` counts. */
  readonly amount: number;
};

const none: Sizes = { kind: "pan", sizes: [], amount: 0 };

const sizesFor = (work: Work, action: Action, load: Load): Sizes => {
  const { dish, kitchen, loads, litresIn } = work;
  if (action.station === "burner" || action.station === "fryer") {
    const named = namedPan(kitchen, action.vessel);
    const holds = (pan: Kitchen["pans"][number]): number => holdsOf(dish, action, loads, pan);
    const least = named === null ? 0 : holds(named);
    const pans = pansToUse(dish, action, loads, kitchen).filter((pan) => holds(pan) >= least);
    const sizes = [...pans, ...(named === null ? [] : [named])].map((pan) => ({
      name: pan.name,
      holds: holds(pan),
    }));
    return { kind: "pan", sizes, amount: litresIn(action) };
  }
  if (action.station !== "oven" || inOwnVessel(dish, action)) return none;
  if (liesDeep(dish, action, loads) && kitchen.containers.length > 0)
    return {
      kind: "container",
      sizes: kitchen.containers.map(({ size, litres }) => ({ name: size, holds: litres * fillOfContainer })),
      amount: load.litres,
    };
  return kitchen.trays > 0
    ? { kind: "tray", sizes: [{ name: "", holds: trayHolds(work, action) }], amount: load.grams }
    : none;
};

const smallest = (sizes: readonly Candidate[], amount: number): Candidate | null => {
  const rising = sizes.filter(({ holds }) => holds > 0).toSorted((a, b) => a.holds - b.holds);
  return rising.find(({ holds }) => holds >= amount - 1e-9) ?? rising.at(-1) ?? null;
};

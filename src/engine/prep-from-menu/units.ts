import { tinsOf } from "../heat/card-tins.ts";
import type { Content } from "../heat/composition.ts";
import { tinsTaken } from "../heat/tins-taken.ts";
import { bigPiecesAmong } from "../larder/big-pieces.ts";
import { type Contents, contentsOf } from "../larder/contents.ts";
import { foodById } from "../larder/foods.ts";
import { afterDraining } from "../larder/left-behind.ts";
import { techniqueById } from "../larder/techniques.ts";
import { unlistedWater } from "../larder/unlisted-water.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { Technique } from "../model/food.ts";
import type { Kitchen } from "../model/sitting.ts";
import { contentsFoods, contentsGrams } from "./amounts.ts";
import { type Flat, joinLoose } from "./join-loose.ts";
import { carving, longestSoftening, stillHot, wringing } from "./kitchen-rates.ts";
import type { Lot } from "./lot.ts";
import { type Laid, layAction } from "./segments.ts";
import type { Portioned, Unit, Warmth, Work } from "./work.ts";

/** Units of a dish in the order of its method, and stations that are missing, with the words that ask for them. */
export type Units = {
  readonly units: readonly Unit[];
  readonly missing: readonly { readonly station: string; readonly unit: Unit }[];
};

/** Each action once for all the versions that do it alike: those in which no swap touches it or what goes into it. */
export const unitsOf = (work: Work, kitchen: Kitchen): Units => {
  const { dish, versions } = work;
  const flat = joinLoose(dish.steps.flatMap((step) => step.actions.map((action) => ({ step, action }))));
  const touched = dish.swaps.map((swap) => touchedBy(swap.out, flat));
  const keyOf = (version: Portioned, action: string): string =>
    version.swaps.filter((s) => touched[s]?.has(action)).join("+");
  const made = madeBy(dish, flat);
  const grams = gramsByVersion(work, made);
  const outOf = new Map(versions.map((version) => [version, swappedOut(version, work)] as const));
  const tins = tinsOf(dish);
  const actions = flat.map(({ action }) => action);
  const units: Unit[] = [];
  const missing: Units["missing"][number][] = [];
  const placeOf = new Map<string, number[]>();
  for (const { step, action } of flat) {
    const named = action.technique === null ? null : techniqueById(action.technique);
    // A wait in the cold is one for all: their trays stand side by side. On the bench each begins when it is put down.
    const together = action.station !== "bench" && waitsAlone(action, kitchen);
    for (const alike of groupVersions(versions, (v) => (together ? "" : keyOf(v, action.id)))) {
      const kilos = alike.reduce((sum, v) => sum + (grams.get(v)?.get(action.id) ?? 0), 0) / 1000;
      const factor = alike.reduce((sum, v) => sum + v.factor, 0);
      const portions = alike.reduce((sum, v) => sum + v.portions, 0);
      const shares = (id: string): number[] =>
        (placeOf.get(id) ?? []).filter((place) => units[place]?.versions.some((v) => alike.includes(v)));
      const takes = action.uses.flatMap((use) => (use.product === null ? [] : shares(use.product)));
      const wet = takes.some((t) => units[t]?.action.station === "burner");
      const batches = batchesOf(work, action.id, alike, portions);
      const hot = (id: string): boolean =>
        shares(id).some((place) => units[place]?.warmth === "hot" || units[place]?.warmth === "fried");
      const hotGrams = action.uses.reduce((sum, use) => {
        if (use.product === null || !hot(use.product)) return sum;
        const id = use.product;
        return sum + use.share * alike.reduce((g, v) => g + (grams.get(v)?.get(id) ?? 0), 0);
      }, 0);
      const coldKilos = kilos - ((1 - stillHot) * hotGrams) / 1000;
      const inside = made.get(action.id) ?? new Map();
      const contents = alike.flatMap((v) => contentsFoods(inside, v, outOf.get(v) ?? new Set()));
      const technique = atScale(named, action, kilos / factor, hotGrams > 0, contents);
      const lines = [...inside.values()].map(({ ingredient }) => ingredient);
      const inTins = named !== null && baked.has(named.id) ? tins : null;
      const lot: Lot = {
        factor,
        portions,
        kilos,
        coldKilos,
        wet,
        batches,
        contents,
        water: unlistedWater(action, step, contents),
        pieces: bigPiecesAmong(dish, lines, actions),
        ovenInAll: action.station === "oven" ? ovenInAll(dish, made, actions, inside) : 0,
        tins: inTins,
        taken: inTins === null ? null : tinsTaken(inTins, factor, kitchen),
      };
      // "Stand each one on a plate" is no wait: only what states its minutes waits at the pass.
      const plated = step.phase === "to-serve" && action.attention === "none" && action.station === "bench";
      const laid =
        plated && action.minutes?.assumed !== false ? nothing : layAction(action, technique, lot, kitchen);
      const unit: Unit = {
        action,
        step,
        technique,
        key: alike.map((v) => v.id).join(" "),
        versions: alike,
        factor,
        portions,
        kilos,
        lot,
        segments: laid.segments,
        wait: laid.wait,
        loads: laid.loads,
        timed: laid.timed ?? null,
        warmth: warmthOf(
          action,
          laid.segments.length > 0,
          takes.flatMap((t) => units[t]?.warmth ?? []),
          technique?.id,
        ),
        before: [...new Set([...action.after.flatMap(shares), ...takes])],
        takes: [...new Set(takes)],
      };
      placeOf.set(action.id, [...(placeOf.get(action.id) ?? []), units.length]);
      units.push(unit);
      for (const station of laid.missing) missing.push({ station, unit });
    }
  }
  return { units, missing };
};

/** What is done in the tins of the card. */
const baked: ReadonlySet<string> = new Set(["bake", "blind-bake"]);

const nothing: Laid = { segments: [], wait: false, loads: [1], missing: [] };

/** A card that crushes more than this does it with a masher, and not garlic by garlic, kilos. */
const pounded = 0.3;

/** The technique as it is worked on as much of this food as the card has, where the usual rate would mislead. */
const atScale = (
  technique: Technique | null,
  action: Action,
  onCard: number,
  hot: boolean,
  contents: readonly Content[],
): Technique | null => {
  if (technique?.id === "crush" && onCard > pounded) return techniqueById("mash");
  if (technique?.id === "slice" && hot) return { ...technique, minutes: carving };
  // A dough or a stuffing that is bound is mixed; only meat is bound with string, piece by piece.
  if (technique?.id === "truss" && action.verb.startsWith("bind") && !contents.some(isMeat)) {
    return techniqueById("mix");
  }
  // What was soaked or salted is wrung out by the handful; only fruit is squeezed one by one.
  if (technique?.id === "squeeze" && action.uses.every((use) => use.ingredient === null)) {
    return { ...technique, law: "per-kilo", minutes: wringing };
  }
  return technique;
};

/** What most of a vessel is. */
const mostOf = (dish: Dish, inside: Contents): number | null => {
  const grams = (c: { readonly ingredient: number; readonly share: number }): number =>
    (dish.ingredients[c.ingredient]?.grams?.likely ?? 0) * c.share;
  const all = [...inside.values()];
  return all.length === 0 ? null : all.reduce((a, b) => (grams(b) > grams(a) ? b : a)).ingredient;
};

/** Minutes that what is mostly the same food is in the oven, by the words of the card. */
const ovenInAll = (
  dish: Dish,
  made: ReadonlyMap<string, Contents>,
  actions: readonly Action[],
  inside: Contents,
): number => {
  const food = mostOf(dish, inside);
  return actions.reduce((sum, { id, station, minutes }) => {
    const same = station === "oven" && food !== null && mostOf(dish, made.get(id) ?? new Map()) === food;
    return sum + (same && minutes?.assumed === false ? minutes.likely : 0);
  }, 0);
};

const isMeat = ({ food }: Content): boolean => {
  const shelf = food === null ? null : (foodById(food)?.shelf ?? null);
  return shelf === "meat" || shelf === "poultry" || shelf === "fish";
};

/** Actions that take one of these lines, or anything made from them, or go on from there. */
const touchedBy = (out: readonly number[], flat: Flat): ReadonlySet<string> => {
  const touched = new Set<string>();
  for (const { action } of flat) {
    const takes = action.uses.some(
      (use) =>
        (use.ingredient !== null && out.includes(use.ingredient)) ||
        (use.product !== null && touched.has(use.product)),
    );
    // Words that go on with a pot do not always name what is in it, so what follows a touched action is touched.
    if (takes || action.after.some((id) => touched.has(id))) touched.add(action.id);
  }
  return touched;
};

const groupVersions = (
  versions: readonly Portioned[],
  keyOf: (version: Portioned) => string,
): readonly (readonly Portioned[])[] => {
  const groups = new Map<string, Portioned[]>();
  for (const version of versions) {
    const key = keyOf(version);
    groups.set(key, [...(groups.get(key) ?? []), version]);
  }
  return [...groups.values()];
};

/** True when an action is a wait whatever the amount. */
const waitsAlone = (action: Action, kitchen: Kitchen): boolean => {
  const technique = action.technique === null ? null : techniqueById(action.technique);
  return layAction(action, technique, smallest, kitchen).wait;
};

const smallest: Lot = {
  factor: 1,
  portions: 1,
  kilos: 0,
  coldKilos: 0,
  wet: false,
  batches: null,
  contents: [],
  water: 0,
  pieces: null,
  ovenInAll: 0,
  tins: null,
  taken: null,
};

/** What stands in the vessel at each action; water that was drained off goes no further. */
const madeBy = (dish: Dish, flat: Flat): ReadonlyMap<string, Contents> => {
  const inside = new Map<string, Contents>();
  const goesOn = new Map<string, Contents>();
  for (const { action } of flat) {
    const contents = contentsOf(action, (id) => goesOn.get(id));
    inside.set(action.id, contents);
    goesOn.set(action.id, afterDraining(dish, action, contents));
  }
  return inside;
};

const swappedOut = (version: Portioned, work: Work): ReadonlySet<number> =>
  new Set(version.swaps.flatMap((s) => work.dish.swaps[s]?.out ?? []));

const gramsByVersion = (
  work: Work,
  made: ReadonlyMap<string, Contents>,
): ReadonlyMap<Portioned, ReadonlyMap<string, number>> =>
  new Map(
    work.versions.map((version) => {
      const out = swappedOut(version, work);
      const grams = [...made].map(([id, contents]) => [id, contentsGrams(contents, version, out)] as const);
      return [version, new Map(grams)] as const;
    }),
  );

/** Batches for all who share an action, from the version that the menu has them for, in step with the portions. */
const batchesOf = (
  work: Work,
  action: string,
  alike: readonly Portioned[],
  portions: number,
): number | null => {
  let most: number | null = null;
  for (const batch of work.batches) {
    const version = alike.find((v) => v.id === batch.version);
    if (batch.action !== action || !version) continue;
    const needed = Math.ceil((batch.batches * portions) / Math.max(1, version.portions));
    most = Math.max(most ?? 0, needed);
  }
  return most;
};

const crisp = new Set(["fry", "deep-fry", "stir-fry", "grill", "griddle", "sear", "barbecue", "char-skin"]);

/** What is frozen and is taken out for minutes before it is served ("into the fridge a quarter of an hour before"). */
const softens = (action: Action, from: readonly Warmth[]): boolean =>
  from.includes("frozen") &&
  (action.station === "fridge" || action.station === "bench") &&
  (action.minutes?.likely ?? longestSoftening + 1) <= longestSoftening;

const warmthOf = (
  action: Action,
  works: boolean,
  from: readonly Warmth[],
  technique: string | undefined,
): Warmth => {
  const carried: Warmth = from.includes("fried")
    ? "fried"
    : from.includes("hot")
      ? "hot"
      : (from.find((w) => w !== "raw") ?? "raw");
  if (!works) return carried;
  if (softens(action, from)) return "softening";
  switch (action.station) {
    case "burner":
    case "oven":
    case "grill":
    case "fryer":
      return technique !== undefined && crisp.has(technique) ? "fried" : "hot";
    case "freezer":
      return "frozen";
    case "fridge":
    case "ice-bath":
      return "cold";
    case "bench":
      if (technique === "prove") return "dough";
      return technique === "cool" ? "room" : carried;
    case "hands":
    case "machine":
      // What is stirred into a fried base is no longer crisp.
      return carried === "fried" && from.length > 1 ? "hot" : carried;
  }
};

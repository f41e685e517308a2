import { techniqueById } from "../larder/techniques.ts";
import type { Action } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { actionGrams } from "./amounts.ts";
import { type Flat, joinLoose } from "./join-loose.ts";
import { stillHot } from "./kitchen-rates.ts";
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
  const grams = gramsByVersion(work, flat);
  const units: Unit[] = [];
  const missing: Units["missing"][number][] = [];
  const placeOf = new Map<string, number[]>();
  for (const { step, action } of flat) {
    const named = action.technique === null ? null : techniqueById(action.technique);
    // A wait is one for all: their trays stand side by side in the same fridge.
    const together = waitsAlone(action, kitchen);
    for (const alike of groupVersions(versions, (v) => (together ? "" : keyOf(v, action.id)))) {
      const kilos = alike.reduce((sum, v) => sum + (grams.get(v)?.get(action.id) ?? 0), 0) / 1000;
      const technique = named?.id === "crush" && kilos > pounded ? techniqueById("mash") : named;
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
      const lot = { factor, portions, kilos, coldKilos, wet, batches };
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
        segments: laid.segments,
        wait: laid.wait,
        loads: laid.loads,
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

const nothing: Laid = { segments: [], wait: false, loads: [1], missing: [] };

/** More than this is crushed with a masher and not garlic by garlic, kilos. */
const pounded = 0.5;

/** Actions that take one of these lines, or anything made from them. */
const touchedBy = (out: readonly number[], flat: Flat): ReadonlySet<string> => {
  const touched = new Set<string>();
  for (const { action } of flat) {
    const takes = action.uses.some(
      (use) =>
        (use.ingredient !== null && out.includes(use.ingredient)) ||
        (use.product !== null && touched.has(use.product)),
    );
    if (takes) touched.add(action.id);
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

const smallest = { factor: 1, portions: 1, kilos: 0, coldKilos: 0, wet: false, batches: null };

const gramsByVersion = (work: Work, flat: Flat): ReadonlyMap<Portioned, ReadonlyMap<string, number>> =>
  new Map(
    work.versions.map((version) => {
      const out = new Set(version.swaps.flatMap((s) => work.dish.swaps[s]?.out ?? []));
      const made = new Map<string, number>();
      for (const { action } of flat) {
        made.set(
          action.id,
          actionGrams(action, version, out, (id) => made.get(id) ?? 0),
        );
      }
      return [version, made] as const;
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
  switch (action.station) {
    case "burner":
    case "oven":
    case "grill":
    case "fryer":
      return technique !== undefined && crisp.has(technique) ? "fried" : "hot";
    case "fridge":
    case "freezer":
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

import type { Action } from "../../model/dish.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Again, Fresh } from "./choose-uses.ts";
import type { Clause } from "./clauses.ts";
import type { Product } from "./find-products.ts";
import { newPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import { burners, type Place } from "./which-pools.ts";
import { pans } from "./word-sets.ts";

const primers = new Set("heat melt bring-to-boil bring-to-simmer warm boil".split(" "));
const leavesMachine = new Set(
  "take-out unmould roll-out shape prove pour chill bake divide layer spread fill rest".split(" "),
);
const lifting = new Set("take-out set-aside remove-from-heat drain discard skim sieve".split(" "));

/** Moves food between vessels after an action. */
export const settle = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  action: Action,
  place: Place,
  fresh: readonly Fresh[],
  joined: readonly Pool[],
  again: readonly Again[],
  products: readonly Product[],
): void => {
  const { kitchen } = reader;
  const { technique } = chosen;
  const named = again.filter((a) => joined.includes(a.pool)).map((a) => a.ingredient);
  // "Lift out the chicken": what is named leaves, the rest stays in the pan.
  const [only] = joined;
  if (
    lifting.has(technique.id) &&
    fresh.length === 0 &&
    only !== undefined &&
    joined.length === 1 &&
    named.length > 0 &&
    only.contents.size > named.length &&
    !products.some((p) => p.pool === only)
  ) {
    const out = addPool(reader, place.part);
    for (const i of named) {
      out.contents.add(i);
      only.contents.delete(i);
    }
    out.last = action.id;
    only.last = action.id;
    if (technique.id === "discard" || technique.id === "skim") out.left = 0;
    kitchen.current = only;
    kitchen.emptied = null;
    return;
  }
  // "Set aside", "lift them out of the pan": all leaves, and the pan can be used again.
  const leaves =
    (technique.id === "set-aside" ||
      (technique.id === "take-out" && !/^(oven|fridge|freezer)$/.test(place.before?.station ?? "oven"))) &&
    fresh.length === 0;
  if (leaves && only !== undefined && joined.length === 1 && only.vessel !== null && pans.has(only.vessel)) {
    const emptied = addPool(reader, place.part);
    emptied.vessel = only.vessel;
    emptied.last = action.id;
    emptied.primed = true;
    emptied.left = 1;
    only.last = action.id;
    only.vessel = null;
    kitchen.emptied = emptied;
    kitchen.current = only;
    return;
  }
  let main = only ?? addPool(reader, place.part);
  const partly = products.find((p) => p.pool === main && p.share < main.left - 0.001);
  if (partly !== undefined && joined.length === 1) {
    main.left -= partly.share;
    const piece = addPool(reader, place.part);
    for (const i of main.contents) piece.contents.add(i);
    main = piece;
  }
  for (const other of joined.slice(1)) {
    const taken = products.find((p) => p.pool === other)?.share ?? other.left;
    for (const i of other.contents) main.contents.add(i);
    if (other.names.size > 0 && main.names.size === 0 && other.contents.size > 1)
      for (const n of other.names) main.names.add(n);
    other.left = Math.max(0, other.left - taken);
    if (other.left <= 0.001) other.left = 0;
    if (other.vessel !== null && main.vessel === null) main.vessel = other.vessel;
  }
  for (const f of fresh) main.contents.add(f.ingredient);
  main.last = action.id;
  main.part ??= place.part;
  if (action.makes !== null) main.names.add(stem(action.makes));
  if (place.part !== null && joined.length === 0)
    for (const w of place.part.toLowerCase().split(/[^\p{L}]+/u)) if (w.length > 2) main.names.add(stem(w));
  if (clause.station?.station === "machine") main.machine = clause.station.mixer ? "mixer" : "processor";
  else if (clause.vessel !== null || clause.station !== null || leavesMachine.has(technique.id))
    main.machine = null;
  const vessel = clause.vessel?.split(" ").at(-1);
  if (vessel !== undefined) main.vessel = stem(vessel);
  else if (main.vessel === null && burners.has(chosen.station)) main.vessel = "pan";
  if (!technique.miseEnPlace) main.raw = false;
  const wasPrimed = main.primed;
  main.primed =
    (primers.has(technique.id) ||
      technique.id === "preheat" ||
      (wasPrimed && /^(add|put|pour)$/.test(technique.id))) &&
    [...main.contents].every((i) => isFatOrWater(reader, i));
  if (kitchen.emptied === main || burners.has(chosen.station)) kitchen.emptied = null;
  kitchen.current = main;
};

const isFatOrWater = (reader: StepReader, index: number): boolean =>
  /\b(oil|butter|lard|dripping|ghee|fat|water|margarine|salt|suet|duck fat|stock)\b/.test(
    reader.ingredients[index]?.name.toLowerCase() ?? "",
  );

const addPool = (reader: StepReader, part: string | null): Pool => {
  const pool = newPool(part);
  reader.kitchen.pools.push(pool);
  return pool;
};

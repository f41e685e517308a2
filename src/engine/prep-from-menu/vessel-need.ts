import { tinsAShelf } from "../heat/tins.ts";
import type { TinsTaken } from "../heat/tins-taken.ts";
import { panHolds } from "../larder/pans.ts";
import type { VesselUse } from "../model/menu.ts";
import type { VesselKind, VesselPool, Vessels } from "./vessels.ts";
import type { Unit, Work } from "./work.ts";

/** The vessels that an action is done in. */
export type VesselNeed = {
  readonly kind: VesselKind;
  /** Place in the kind's sizes; a larger one does as well. */
  readonly size: number;
  /** How many at once, for each load of the oven; one figure for what is done on the stove. */
  readonly amounts: readonly number[];
};

/** Vessels of an action on the stove or in the oven, by the menu's choice and by how many stand there at once; null for none. */
export const needOf = (unit: Unit, work: Work, vessels: Vessels): VesselNeed | null => {
  const uses = work.vessels.filter(
    (use) => use.action === unit.action.id && unit.versions.some((version) => version.id === use.version),
  );
  if (unit.action.station === "burner") return onStove(unit, uses, vessels);
  if (unit.action.station === "oven") return inOven(unit, uses, vessels);
  return null;
};

const atOnce = (unit: Unit, resource: string): number =>
  Math.max(
    0,
    ...unit.segments.flatMap((s) => s.uses.filter((u) => u.resource === resource).map((u) => u.amount)),
  );

const onStove = (unit: Unit, uses: readonly VesselUse[], vessels: Vessels): VesselNeed | null => {
  const many = atOnce(unit, "burner");
  const litres = uses.reduce((sum, use) => sum + use.litres, 0) + unit.lot.water;
  if (many < 1 || litres <= 0) return null;
  const oneLayer = unit.technique?.law === "per-batch";
  const kind: VesselKind = oneLayer && vessels.frying.length > 0 ? "frying" : "pots";
  const pool = vessels[kind];
  if (pool.length === 0) return null;
  const chosen = uses.map((use) => pool.findIndex((size) => size.pans.some((pan) => pan.name === use.name)));
  // What is fried lies in rounds, in the pan that the menu chose; what boils is shared out between the pots.
  const size =
    oneLayer && !chosen.includes(-1) && chosen.length > 0
      ? Math.max(...chosen)
      : smallestFor(pool, litres / many, unit);
  return { kind, size, amounts: [many] };
};

/** The smallest size of which one holds so much, or the largest, that is then filled again. */
const smallestFor = (pool: VesselPool, litres: number, unit: Unit): number => {
  const fits = pool.findIndex(({ pans }) => pans.some((pan) => panHolds(pan, unit.action) >= litres - 1e-9));
  return fits < 0 ? pool.length - 1 : fits;
};

const inOven = (unit: Unit, uses: readonly VesselUse[], vessels: Vessels): VesselNeed | null => {
  if (atOnce(unit, "oven") < 1) return null;
  if (unit.lot.taken !== null && vessels.tins.length > 0) return inTins(unit, unit.lot.taken, vessels);
  const kinds = new Set(uses.map((use) => use.kind));
  if (kinds.has("container")) {
    const size = Math.max(...uses.map((use) => vessels.containers.findIndex(({ id }) => id === use.name)));
    const fillings = uses.reduce((sum, use) => sum + use.fillings, 0);
    const each = Math.ceil(fillings / unit.loads.length);
    return size < 0 ? null : { kind: "containers", size, amounts: unit.loads.map(() => each) };
  }
  // A braise stands in the oven in its own pot.
  const pot = uses.find((use) => use.kind === "pan");
  if (pot !== undefined) {
    const size = vessels.pots.findIndex(({ pans }) => pans.some((pan) => pan.name === pot.name));
    return size < 0 ? null : { kind: "pots", size, amounts: unit.loads.map(() => 1) };
  }
  return kinds.has("tray") && vessels.trays.length > 0
    ? { kind: "trays", size: 0, amounts: unit.loads }
    : null;
};

/** The tins of each load, which are no more than stand on its shelves. */
const inTins = (unit: Unit, taken: TinsTaken, vessels: Vessels): VesselNeed | null => {
  const size = vessels.tins.findIndex(({ id }) => id === taken.here?.name);
  if (size < 0) return null;
  const aShelf = tinsAShelf(taken.tin);
  let left = taken.tins;
  const amounts = unit.loads.map((shelves) => {
    const here = Math.max(1, Math.min(left, shelves * aShelf, taken.here?.count ?? left));
    left -= here;
    return here;
  });
  return { kind: "tins", size, amounts };
};

/** The place of the smallest size of a kind that is as large as one of another kind. */
export const asLarge = (pool: VesselPool, litres: number): number => {
  const fits = pool.findIndex((size) => size.litres >= litres - 1e-9);
  return fits < 0 ? pool.length - 1 : fits;
};

import { isFryingPan } from "../larder/pans.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Resource } from "../model/prep.ts";
import type { Kitchen, Pan } from "../model/sitting.ts";

/** Vessels of one size, and all that may stand in for one: the larger ones of its kind. */
export type VesselSize = {
  /** The name of the resource. */
  readonly id: string;
  readonly litres: number;
  /** How many there are of this size or larger. */
  readonly orLarger: number;
  /** Minutes of one pair of hands to wash one up. */
  readonly wash: Minutes;
  /** Pans of this size, for what they hold; none for trays and containers. */
  readonly pans: readonly Pan[];
};

/** Vessels of one kind, the smallest first. */
export type VesselPool = readonly VesselSize[];

/** The vessels of a kitchen that work is told apart by. */
export type Vessels = {
  /** To boil, stew and keep in. */
  readonly pots: VesselPool;
  /** For one layer; empty where the kitchen has none, and pots do for it. */
  readonly frying: VesselPool;
  readonly trays: VesselPool;
  readonly containers: VesselPool;
  /** Baking tins, each size for itself: none stands in for another. Empty where the kitchen lists none. */
  readonly tins: VesselPool;
};

/** One kind of vessel. */
export type VesselKind = keyof Vessels;

/**
 * Minutes to wash up one vessel by hand, scraping and drying with it: up to so many litres. Common practice, no source.
 */
const washing: readonly { readonly upTo: number; readonly minutes: number }[] = [
  { upTo: 4, minutes: 2 },
  { upTo: 10, minutes: 3 },
  { upTo: 20, minutes: 5 },
  { upTo: Number.POSITIVE_INFINITY, minutes: 8 },
];
const washingTray = 2;

const washingOf = (litres: number): Minutes =>
  minutes(washing.find((row) => litres <= row.upTo)?.minutes ?? 0);

/** What a kitchen has to cook in, by kind and size. */
export const vesselsOf = (kitchen: Kitchen): Vessels => {
  const pans = kitchen.pans.filter((pan) => pan.count > 0 && pan.litres > 0);
  const deep = pans.filter((pan) => !isFryingPan(pan.name));
  const shallow = pans.filter((pan) => isFryingPan(pan.name));
  const containers = kitchen.containers.map(({ size, litres, count, washMinutes }) => ({
    id: size,
    litres,
    count,
    wash: washMinutes,
    pan: null,
  }));
  return {
    pots: poolOf((deep.length > 0 ? deep : shallow).map((pan) => sized(pan, "pan"))),
    frying: deep.length > 0 ? poolOf(shallow.map((pan) => sized(pan, "frying pan"))) : [],
    trays:
      kitchen.trays > 0
        ? [
            {
              id: "tray",
              litres: 0,
              orLarger: kitchen.trays,
              wash: kitchen.trayWashMinutes ?? minutes(washingTray),
              pans: [],
            },
          ]
        : [],
    containers: poolOf(containers),
    tins: (kitchen.tins ?? []).map(({ name, count, washMinutes }) => ({
      id: name,
      litres: 0,
      orLarger: count,
      wash: washMinutes ?? minutes(washingTray),
      pans: [],
    })),
  };
};

type Sized = {
  readonly id: string;
  readonly litres: number;
  readonly count: number;
  readonly wash: Minutes | undefined;
  readonly pan: Pan | null;
};

const sized = (pan: Pan, noun: string): Sized => ({
  id: `${pan.litres} l ${noun}`,
  litres: pan.litres,
  count: pan.count,
  wash: pan.washMinutes,
  pan,
});

const poolOf = (all: readonly Sized[]): VesselPool => {
  const sizes = [...new Set(all.map((one) => one.litres))].sort((a, b) => a - b);
  return sizes.map((litres): VesselSize => {
    const same = all.filter((one) => one.litres === litres);
    const washes = same.flatMap((one) => one.wash ?? []);
    return {
      id: same[0]?.id ?? "",
      litres,
      orLarger: all.reduce((sum, one) => sum + (one.litres >= litres ? one.count : 0), 0),
      wash: washes.length > 0 ? minutes(Math.max(...washes)) : washingOf(litres),
      pans: same.flatMap((one) => one.pan ?? []),
    };
  });
};

/** Sizes of a kind as resources: one of a larger size counts for each smaller one too. */
export const vesselResource = (pool: VesselPool, size: number): Resource => {
  const smaller = pool.slice(0, size).map((other) => other.id);
  return {
    id: pool[size]?.id ?? "",
    capacity: pool[size]?.orLarger ?? 0,
    ...(smaller.length > 0 ? { alsoIn: smaller } : {}),
  };
};

import { celsius, count, type Kitchen, minutes } from "#engine/index.ts";

/** What a problem says of its kitchen: heat, and how ovens change theirs. Minutes for 10 °C, °C within which uses share an oven. */
export type KitchenFacts = {
  readonly name: string;
  readonly burners: number;
  readonly ovens: readonly { readonly id: string; readonly shelves: number }[];
  readonly heat: number;
  readonly tolerance: number;
};

/** The kitchen of a problem: work is timed already, so that of pans, machines and litres nothing more is asked. */
export const problemKitchen = ({ name, burners, ovens, heat, tolerance }: KitchenFacts): Kitchen => ({
  name,
  burners: count(burners),
  burnerKilowatts: 0,
  ovens: ovens.map((oven) => ({ name: oven.id, shelves: count(oven.shelves), fan: false, kilowatts: 0 })),
  grills: count(0),
  fryers: count(0),
  fridgeLitres: 0,
  freezerLitres: 0,
  pans: [],
  containers: [],
  trays: count(0),
  machines: [],
  ovenMinutesPer10C: minutes(heat),
  ovenTolerance: celsius(tolerance),
});

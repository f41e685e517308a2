import type { Action } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { techniqueById } from "./techniques.ts";

// A pan to boil in is filled nearly to the brim. Common practice, no source.
const fillOfLiquid = 0.85;

// What is fried or seared lies in one layer: of this depth over the floor of the pan, gaps taken out, cm. A frying pan is
// about 4 cm deep, a stockpot nearly as deep as it is wide, other pans half as deep. Common practice, no source.
const layerDepth = 2;
const fryingDepth = 4;
const stockpotShape = 0.9;
const panShape = 0.5;

/** A pan that is wide and low, by its name. */
export const isFryingPan = (name: string): boolean => /fry|saut[eé]|skillet|wok|griddle|paella/i.test(name);

/** Litres of a pan in use: in one layer for what is done batch by batch, else nearly to the brim. */
export const panHolds = (pan: Kitchen["pans"][number], action: Action): number => {
  const oneLayer = action.technique !== null && techniqueById(action.technique)?.law === "per-batch";
  if (!oneLayer || action.station === "fryer") return pan.litres * fillOfLiquid;
  const cm3 = pan.litres * 1000;
  const shape = /stock|deep|tall/i.test(pan.name) ? stockpotShape : panShape;
  const wide = ((4 * cm3) / (Math.PI * shape)) ** (1 / 3);
  const floor = isFryingPan(pan.name) ? cm3 / fryingDepth : (Math.PI / 4) * wide * wide;
  return (floor * layerDepth) / 1000;
};

/** The pans that an action may be done in: frying pans for one layer where there are any, else all. */
export const pansFor = (kitchen: Kitchen, action: Action): Kitchen["pans"] => {
  const pans = kitchen.pans.filter((pan) => pan.count > 0 && pan.litres > 0);
  const oneLayer = action.technique !== null && techniqueById(action.technique)?.law === "per-batch";
  const frying = oneLayer && action.station === "burner" ? pans.filter((pan) => isFryingPan(pan.name)) : [];
  return frying.length > 0 ? frying : pans;
};

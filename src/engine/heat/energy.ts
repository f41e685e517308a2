import type { Estimate } from "../measure/estimate.ts";
import { type Kilojoules, type Kilowatts, kilojoules, type SpecificHeat } from "../measure/heat-units.ts";
import {
  type Celsius,
  celsius,
  type Grams,
  grams,
  type Minutes,
  minutes,
  type Share,
  share,
} from "../measure/units.ts";

/** Heat to bring a mass from one temperature to another; negative when it is cooled. Nothing melts or boils on the way. */
export const heatToWarm = (mass: Grams, heat: SpecificHeat, from: Celsius, to: Celsius): Kilojoules =>
  kilojoules((mass / 1000) * (heat / 1000) * (to - from));

/** Minutes that a source of so many kilowatts, of which a share arrives, takes to give so much heat. */
export const minutesToGive = (heat: Kilojoules, power: Kilowatts, efficiency: Share): Minutes =>
  minutes(Math.max(0, heat) / (power * efficiency) / 60);

/** Heat that melts a kilogram of ice, kJ. */
export const heatOfMelting = 333.6;

// Steam tables, kJ/kg at 0, 20, … 100 °C, from memory.
const vaporisation = [2501, 2454, 2406, 2358, 2308, 2257] as const;

/** Heat that turns a kilogram of water to steam at a temperature, kJ; 0 to 100 °C, the ends beyond. */
export const heatOfVaporisation = (at: Celsius): Kilojoules => {
  const place = Math.min(5, Math.max(0, at / 20));
  const below = Math.min(4, Math.floor(place));
  const low = vaporisation[below] ?? 2257;
  const high = vaporisation[below + 1] ?? 2257;
  return kilojoules(low + (high - low) * (place - below));
};

/** Water at the boil that a net power drives off, grams a minute. */
export const boilOff = (net: Kilowatts): number => ((net * 60) / heatOfVaporisation(celsius(100))) * 1000;

/** Minutes to drive off so much water at the boil. */
export const minutesToDriveOff = (mass: Grams, power: Kilowatts, efficiency: Share): Minutes =>
  minutesToGive(kilojoules((mass / 1000) * heatOfVaporisation(celsius(100))), power, efficiency);

/** Ice that brings a mass down when all of it melts and the melt warms to the end temperature as well. */
export const iceToCool = (mass: Grams, heat: SpecificHeat, from: Celsius, to: Celsius): Grams =>
  grams((-heatToWarm(mass, heat, from, to) / (heatOfMelting + 4.19 * to)) * 1000);

/** Where water boils at a height above the sea: 1 °C lower for each 305 m (McGee). Good to 0.5 °C up to 3000 m. */
export const boilingPointAt = (metresAboveSea: number): Celsius => celsius(100 - metresAboveSea / 305);

/** Kinds of burner, as far as the heat that reaches the pot goes. */
export const burnerKinds = ["gas", "electric", "induction", "unknown"] as const;
/** One of the kinds of burner. */
export type BurnerKind = (typeof burnerKinds)[number];

/**
 * Share of a burner's power that reaches the pot. Gas 40 %, smooth electric 74 %, induction 84 %: US DOE test figures;
 * catering gas ranges about 30 %, the best 45 % (FSTC, in the trade press). Of an unknown burner the gas is planned.
 */
export const burnerEfficiency: { readonly [K in BurnerKind]: Estimate<Share> } = {
  gas: { low: share(0.3), likely: share(0.4), high: share(0.45) },
  electric: { low: share(0.7), likely: share(0.74), high: share(0.8) },
  induction: { low: share(0.74), likely: share(0.84), high: share(0.9) },
  unknown: { low: share(0.3), likely: share(0.4), high: share(0.84) },
};

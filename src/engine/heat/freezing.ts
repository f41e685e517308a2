import type { Conductivity, Density, Transfer } from "../measure/heat-units.ts";
import { type Celsius, celsius, type Minutes, minutes } from "../measure/units.ts";
import { type Body, flowsOf } from "./bodies.ts";
import type { Composition } from "./composition.ts";
import { heatOfMelting } from "./energy.ts";
import type { Shape } from "./series.ts";
import { freezingPoint, partFrozen, thermalProperties } from "./thermal-properties.ts";

/** Plank's factors of the surface and of the inside. */
const plankFactors: { readonly [S in Shape]: readonly [p: number, r: number] } = {
  slab: [1 / 2, 1 / 8],
  cylinder: [1 / 4, 1 / 16],
  sphere: [1 / 6, 1 / 24],
};

/** What Plank's equation takes. */
export type Plank = {
  readonly body: Body;
  readonly density: Density;
  /** Heat that must leave or enter a kilogram, kJ. */
  readonly heat: number;
  /** Of the part that the heat goes through: frozen when it freezes, thawed when it thaws. */
  readonly conductivity: Conductivity;
  readonly transfer: Transfer;
  readonly freezes: Celsius;
  readonly medium: Celsius;
};

/**
 * Minutes of a change of state by Plank: ρ·λ/ΔT · (P·a/h + R·a²/k), a the whole thickness; null when the medium lies on
 * the wrong side or at the freezing point. The thinnest way through a body counts, which is long for blocks. ±30 %.
 */
export const plankMinutes = (of: Plank): Minutes | null => {
  const difference = Math.abs(of.freezes - of.medium);
  const flows = flowsOf(of.body);
  const first = flows.reduce((a, b) => (b.half < a.half ? b : a));
  if (!(difference > 0)) return null;
  const [p, r] = plankFactors[first.shape];
  const a = first.half * 2;
  return minutes(
    (((of.density * of.heat * 1000) / difference) * ((p * a) / of.transfer + (r * a * a) / of.conductivity)) /
      60,
  );
};

/**
 * Minutes until a body is frozen from a start to an end temperature: Plank with all the heat that leaves it, and
 * Nagaoka's 0.445 % for each degree it starts above freezing (1955, from memory). Null when the medium is not colder.
 */
export const freezingMinutes = (
  body: Body,
  composition: Composition,
  transfer: Transfer,
  start: Celsius,
  medium: Celsius,
  end: Celsius = celsius(-18),
): Minutes | null => {
  if (!(medium < end && start >= freezingPoint)) return null;
  const raw = thermalProperties(composition, celsius(Math.max(0, start / 2)));
  const frozen = partFrozen(composition, end);
  const hard = thermalProperties(frozen, end);
  const heat =
    ((start - freezingPoint) * raw.specificHeat) / 1000 +
    frozen.ice * heatOfMelting +
    ((freezingPoint - end) * hard.specificHeat) / 1000;
  const time = plankMinutes({
    body,
    density: hard.density,
    heat,
    conductivity: hard.conductivity,
    transfer,
    freezes: freezingPoint,
    medium,
  });
  return time === null ? null : minutes(time * (1 + 0.00445 * (start - freezingPoint)));
};

/** Minutes until a body frozen at a start temperature is thawed through; null when the medium is not warmer than −1 °C. ±40 %. */
export const thawingMinutes = (
  body: Body,
  composition: Composition,
  transfer: Transfer,
  start: Celsius,
  medium: Celsius,
): Minutes | null => {
  if (!(medium > freezingPoint && start < freezingPoint)) return null;
  const frozen = partFrozen(composition, start);
  const hard = thermalProperties(frozen, start);
  const soft = thermalProperties(composition, celsius(Math.max(0, medium / 2)));
  const heat = frozen.ice * heatOfMelting + ((freezingPoint - start) * hard.specificHeat) / 1000;
  return plankMinutes({
    body,
    density: soft.density,
    heat,
    conductivity: soft.conductivity,
    transfer,
    freezes: freezingPoint,
    medium,
  });
};

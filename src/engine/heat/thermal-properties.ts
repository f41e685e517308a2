import {
  type Conductivity,
  conductivity,
  type Density,
  type Diffusivity,
  density,
  diffusivity,
  type SpecificHeat,
  specificHeat,
} from "../measure/heat-units.ts";
import { type Celsius, celsius } from "../measure/units.ts";
import { componentProperty, components, curvesHold } from "./component-properties.ts";
import type { Composition } from "./composition.ts";

/** How a food takes and passes on heat at one temperature. */
export type ThermalProperties = {
  readonly density: Density;
  readonly specificHeat: SpecificHeat;
  /** With the components side by side (the parallel model): the upper bound, and the usual choice for moist foods. */
  readonly conductivity: Conductivity;
  /** With the components one behind the other: the lower bound. */
  readonly conductivitySeries: Conductivity;
  readonly diffusivity: Diffusivity;
  /** False outside −40 to 150 °C, where the curves are not measured. */
  readonly holds: boolean;
};

/**
 * Properties of a mixture by Choi and Okos (1986): heat by mass, conductivity by volume. Air is not counted, so foams
 * and loose pieces are lighter and conduct less. Below its freezing point pass the composition through `partFrozen`.
 */
export const thermalProperties = (composition: Composition, at: Celsius): ThermalProperties => {
  let heat = 0;
  let volume = 0;
  let along = 0;
  let across = 0;
  for (const component of components) {
    const fraction = composition[component];
    if (fraction === 0) continue;
    const room = fraction / componentProperty(component, "density", at);
    const passes = componentProperty(component, "conductivity", at);
    heat += fraction * componentProperty(component, "specificHeat", at);
    volume += room;
    along += room * passes;
    across += room / passes;
  }
  const heavy = 1 / volume;
  const conducts = along / volume;
  return {
    density: density(heavy),
    specificHeat: specificHeat(heat),
    conductivity: conductivity(conducts),
    conductivitySeries: conductivity(volume / across),
    diffusivity: diffusivity(conducts / (heavy * heat)),
    holds: at >= curvesHold.low && at <= curvesHold.high,
  };
};

/** Where most fresh foods begin to freeze, °C; ASHRAE gives −0.5 to −1.4 for them. */
export const freezingPoint = celsius(-1);

/** Water that proteins hold and that never freezes, a gram of protein. Source: ASHRAE Refrigeration, after Schwartzberg. */
const boundToProtein = 0.4;

/**
 * The composition with the water that is ice at this temperature: (water − bound) · (1 − Tf/T), ASHRAE Refrigeration,
 * "Thermal properties of foods". Unchanged above the freezing point.
 */
export const partFrozen = (
  composition: Composition,
  at: Celsius,
  freezes: Celsius = freezingPoint,
): Composition => {
  if (at >= freezes) return composition;
  const water = composition.water + composition.ice;
  const ice = Math.max(0, water - boundToProtein * composition.protein) * (1 - freezes / at);
  return { ...composition, ice, water: water - ice };
};

import type { Celsius } from "../measure/units.ts";

/** What a food is made of, as far as heat goes. */
export const components = [
  "water",
  "ice",
  "protein",
  "fat",
  "carbohydrate",
  "fibre",
  "ash",
  "alcohol",
] as const;
/** One of the components. */
export type Component = (typeof components)[number];

/** The three properties that Choi and Okos give of each component. */
export type Property = "conductivity" | "density" | "specificHeat";

/** Value at t °C is a + b·t + c·t². */
type Curve = readonly [a: number, b: number, c: number];

/**
 * Choi and Okos (1986), as in Singh and Heldman, Table A.2.9, and ASHRAE Refrigeration, "Thermal properties of foods".
 * The fat's conductivity has the authors' correction of 1995 (−2.7604e-4; the first printing has e-3).
 * Alcohol is not theirs: ethanol at 20 °C, from memory.
 */
const curves: { readonly [C in Component]: { readonly [P in Property]: Curve } } = {
  water: {
    conductivity: [0.57109, 1.7625e-3, -6.7036e-6],
    density: [997.18, 3.1439e-3, -3.7574e-3],
    specificHeat: [4176.2, -9.0864e-2, 5.4731e-3],
  },
  ice: {
    conductivity: [2.2196, -6.2489e-3, 1.0154e-4],
    density: [916.89, -0.13071, 0],
    specificHeat: [2062.3, 6.0769, 0],
  },
  protein: {
    conductivity: [0.17881, 1.1958e-3, -2.7178e-6],
    density: [1329.9, -0.5184, 0],
    specificHeat: [2008.2, 1.2089, -1.3129e-3],
  },
  fat: {
    conductivity: [0.18071, -2.7604e-4, -1.7749e-7],
    density: [925.59, -0.41757, 0],
    specificHeat: [1984.2, 1.4733, -4.8008e-3],
  },
  carbohydrate: {
    conductivity: [0.20141, 1.3874e-3, -4.3312e-6],
    density: [1599.1, -0.31046, 0],
    specificHeat: [1548.8, 1.9625, -5.9399e-3],
  },
  fibre: {
    conductivity: [0.18331, 1.2497e-3, -3.1683e-6],
    density: [1311.5, -0.36589, 0],
    specificHeat: [1845.9, 1.8306, -4.6509e-3],
  },
  ash: {
    conductivity: [0.32962, 1.4011e-3, -2.9069e-6],
    density: [2423.8, -0.28063, 0],
    specificHeat: [1092.6, 1.8896, -3.6817e-3],
  },
  alcohol: { conductivity: [0.169, 0, 0], density: [789.3, 0, 0], specificHeat: [2440, 0, 0] },
};

/** Where the curves hold, °C. */
export const curvesHold = { low: -40, high: 150 } as const;

/** A property of a pure component at a temperature: W/(m·K), kg/m³ or J/(kg·K). Holds from −40 to 150 °C. */
export const componentProperty = (component: Component, property: Property, at: Celsius): number => {
  const [a, b, c] = curves[component][property];
  return a + b * at + c * at * at;
};

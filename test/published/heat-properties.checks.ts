import {
  type Component,
  componentProperty,
  type Property,
} from "../../src/engine/heat/component-properties.ts";
import type { Composition } from "../../src/engine/heat/composition.ts";
import { partFrozen, thermalProperties } from "../../src/engine/heat/thermal-properties.ts";
import { celsius } from "../../src/engine/measure/units.ts";
import type { Check } from "./check.ts";
import { beef, mixed } from "./heat-cases.ts";

const choiOkos = "Choi and Okos 1986, in Singh and Heldman, Table A.2.9";

const ofComponent = (component: Component, property: Property, at: number, value: number): Check => ({
  what: `${property} of ${component} at ${at} °C`,
  source: choiOkos,
  run: () => [componentProperty(component, property, celsius(at)), value, value * 1e-4],
});

const potato = mixed({
  water: 0.79,
  protein: 0.02,
  fat: 0.001,
  carbohydrate: 0.16,
  fibre: 0.018,
  ash: 0.011,
});
const cream = mixed({ water: 0.575, fat: 0.36, protein: 0.022, carbohydrate: 0.038, ash: 0.005 });

const mixtures: readonly (readonly [
  name: string,
  of: Composition,
  at: number,
  cp: number,
  rho: number,
  k: number,
  alpha: number,
])[] = [
  ["lean beef", beef, 20, 3552.86, 1052.75, 0.50447, 1.3488e-7],
  ["lean beef", beef, 60, 3575.61, 1039.09, 0.54729, 1.473e-7],
  ["lean beef", beef, 4, 3546.7, 1055.51, 0.48259, 1.2891e-7],
  ["potato", potato, 20, 3642.12, 1077.09, 0.54878, 1.3989e-7],
  ["potato", potato, 90, 3689.41, 1048.06, 0.61993, 1.6033e-7],
  ["cream of 36 %", cream, 5, 3227.1, 991.16, 0.40928, 1.2796e-7],
  ["cream of 36 %", cream, 60, 3263.58, 973.46, 0.44606, 1.404e-7],
];

/** Heat: what foods are like, by their composition. */
export const checks: readonly Check[] = [
  ofComponent("water", "conductivity", 60, 0.65271),
  ofComponent("water", "density", 100, 959.92),
  ofComponent("water", "specificHeat", 20, 4176.6),
  ofComponent("protein", "conductivity", 20, 0.20164),
  ofComponent("protein", "density", 60, 1298.8),
  ofComponent("protein", "specificHeat", 100, 2116.0),
  {
    what: "conductivity of fat at 60 °C, with the authors' correction (the first printing gives 0.0145)",
    source: `${choiOkos}; correction of 1995`,
    run: () => [componentProperty("fat", "conductivity", celsius(60)), 0.16351, 1e-4],
  },
  ofComponent("fat", "density", 20, 917.24),
  ofComponent("fat", "specificHeat", 60, 2055.3),
  ofComponent("carbohydrate", "conductivity", 100, 0.29684),
  ofComponent("carbohydrate", "specificHeat", 20, 1585.7),
  ofComponent("fibre", "conductivity", 20, 0.20704),
  ofComponent("fibre", "specificHeat", 60, 1939.0),
  ofComponent("ash", "specificHeat", 20, 1128.9),
  ofComponent("ice", "conductivity", -20, 2.3852),
  ofComponent("ice", "density", -10, 918.2),
  ofComponent("ice", "specificHeat", -20, 1940.8),
  ...mixtures.map(
    ([name, of, at, cp, rho, k, alpha]): Check => ({
      what: `${name} at ${at} °C: specific heat, density, conductivity and diffusivity, each ÷ its worked value`,
      source: `${choiOkos}, worked apart for the composition`,
      run: () => {
        const p = thermalProperties(of, celsius(at));
        return [
          [p.specificHeat / cp, p.density / rho, p.conductivity / k, p.diffusivity / alpha],
          [1, 1, 1, 1],
          1e-3,
        ];
      },
    }),
  ),
  {
    what: "lean beef at 20 °C with its components one behind the other, W/(m·K)",
    source: `${choiOkos}, series model`,
    run: () => [thermalProperties(beef, celsius(20)).conductivitySeries, 0.3995, 1e-4],
  },
  {
    what: "beef of 75 % water: specific heat, kJ/(kg·K)",
    source: "Earle and Earle, Unit Operations in Food Processing, Appendix 7 (3.22; their rule gives 3.35)",
    run: () => [
      thermalProperties(mixed({ water: 0.75, protein: 0.2, fat: 0.04, ash: 0.01 }), celsius(20))
        .specificHeat / 1000,
      3.35,
      0.335,
    ],
  },
  {
    what: "apple of 84 % water: specific heat, kJ/(kg·K)",
    source: "Earle and Earle, Unit Operations in Food Processing, Appendix 7",
    run: () => [
      thermalProperties(mixed({ water: 0.84, carbohydrate: 0.16 }), celsius(20)).specificHeat / 1000,
      3.6,
      0.36,
    ],
  },
  {
    what: "beef of 75 % water frozen at −18 °C: heat of the ice in it, kJ/kg",
    source:
      "Earle and Earle, Unit Operations in Food Processing, Appendix 7: latent heat 255, all water frozen",
    run: () => [
      partFrozen(mixed({ water: 0.75, protein: 0.2, fat: 0.04, ash: 0.01 }), celsius(-18)).ice * 333.6,
      255 * 0.85,
      25,
    ],
  },
];

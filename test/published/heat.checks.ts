import { type Body, flowsOf, jointOf, volumeOverSurface } from "../../src/engine/heat/bodies.ts";
import {
  type Component,
  componentProperty,
  type Property,
} from "../../src/engine/heat/component-properties.ts";
import { type Composition, compositionFrom, moistFood } from "../../src/engine/heat/composition.ts";
import {
  type Exposure,
  heatFlowed,
  lumpedBiot,
  minutesToMiddle,
  temperatureAfter,
} from "../../src/engine/heat/conduction.ts";
import {
  boilingPointAt,
  boilOff,
  burnerEfficiency,
  heatOfVaporisation,
  heatToWarm,
  iceToCool,
  minutesToDriveOff,
  minutesToGive,
} from "../../src/engine/heat/energy.ts";
import { openSurfaceLoss, vapourPressure } from "../../src/engine/heat/evaporation.ts";
import { plankMinutes, thawingMinutes } from "../../src/engine/heat/freezing.ts";
import { transferOf } from "../../src/engine/heat/media.ts";
import { eigenvalue, type Shape, seriesOf, weightOf } from "../../src/engine/heat/series.ts";
import { rateFrom, rateOf, stirredAfter, stirredMinutes } from "../../src/engine/heat/stirred.ts";
import { partFrozen, thermalProperties } from "../../src/engine/heat/thermal-properties.ts";
import {
  conductivity,
  density,
  diffusivity,
  kilojoules,
  kilowatts,
  metres,
  specificHeat,
  squareMetres,
  transfer,
} from "../../src/engine/measure/heat-units.ts";
import { celsiusFromFahrenheit } from "../../src/engine/measure/temperature.ts";
import { celsius, grams, minutes, share } from "../../src/engine/measure/units.ts";
import type { Check } from "./check.ts";

const choiOkos = "Choi and Okos 1986, in Singh and Heldman, Table A.2.9";
const cengel = "Çengel, Heat and Mass Transfer";
const table42 = `${cengel}, Table 4-2`;

const ofComponent = (component: Component, property: Property, at: number, value: number): Check => ({
  what: `${property} of ${component} at ${at} °C`,
  source: choiOkos,
  run: () => [componentProperty(component, property, celsius(at)), value, value * 1e-4],
});

const mixed = (parts: Partial<Composition>): Composition => compositionFrom(parts) ?? moistFood;
const beef = mixed({ water: 0.715, protein: 0.21, fat: 0.06, carbohydrate: 0.005, ash: 0.01 });
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

// Bi, then ζ1 and C1 of slab, cylinder and sphere.
const oneTerm: readonly (readonly [number, number, number, number, number, number, number])[] = [
  [0.01, 0.0998, 1.0017, 0.1412, 1.0025, 0.173, 1.003],
  [0.1, 0.3111, 1.0161, 0.4417, 1.0246, 0.5423, 1.0298],
  [0.5, 0.6533, 1.0701, 0.9408, 1.1143, 1.1656, 1.1441],
  [1, 0.8603, 1.1191, 1.2558, 1.2071, 1.5708, 1.2732],
  [5, 1.3138, 1.2402, 1.9898, 1.5029, 2.5704, 1.787],
  [10, 1.4289, 1.262, 2.1795, 1.5677, 2.8363, 1.9249],
  [30, 1.5202, 1.2717, 2.3261, 1.5973, 3.0372, 1.9898],
  [100, 1.5552, 1.2731, 2.3809, 1.6015, 3.1102, 1.999],
];

const pair = (shape: Shape, biot: number): readonly number[] => {
  const zeta = eigenvalue(shape, biot);
  return [zeta, weightOf(shape, zeta)];
};

const exposure = (
  body: Body,
  k: number,
  alpha: number,
  h: number,
  start: number,
  medium: number,
): Exposure => ({
  body,
  conductivity: conductivity(k),
  diffusivity: diffusivity(alpha),
  transfer: transfer(h),
  start: celsius(start),
  medium: celsius(medium),
});
const ball = (diameter: number): Body => ({ kind: "sphere", diameter: metres(diameter) });
const plate = (thickness: number): Body => ({ kind: "slab", thickness: metres(thickness) });
const rod = (diameter: number, length: number | null = null): Body => ({
  kind: "cylinder",
  diameter: metres(diameter),
  length: length === null ? null : metres(length),
});
const took = (of: Exposure, target: number): number => minutesToMiddle(of, celsius(target)) ?? Number.NaN;
const seconds = (of: Exposure, target: number): number => took(of, target) * 60;

const egg = exposure(ball(0.05), 0.627, 0.151e-6, 1200, 5, 95);
const apple = exposure(ball(0.09), 0.418, 1.3e-7, 8, 20, -15);
const cooledApple = exposure(ball(0.06), 0.355, 0.355 / (820 * 3600), 50, 15, 2);
const sausage = exposure(rod(0.1, 0.3), 0.48, 0.48 / (1070 * 3300), 1200, 21, 116);

// Food in a 60 °C bath from 5 °C, to within half a degree: mm, then minutes of a slab, a cylinder, a sphere.
const bath: readonly (readonly [number, number, number, number])[] = [
  [5, 8.4, 4.1, 2.7],
  [10, 19.5, 9.3, 6.0],
  [20, 50.2, 23.4, 14.8],
  [30, 92.6, 42.5, 26.6],
  [40, 147, 66.8, 41.6],
  [50, 213, 96.3, 59.7],
];
// Ice water of 1 °C, 55 to 5 °C.
const iceWater: readonly (readonly [number, number, number, number])[] = [
  [10, 10.6, 5.1, 3.3],
  [20, 27.8, 13.2, 8.5],
  [25, 38.9, 18.3, 11.7],
  [40, 82.5, 38.5, 24.5],
  [50, 120, 55.9, 35.4],
];
const three = (mm: number, h: number, start: number, medium: number, target: number): readonly number[] =>
  [plate(mm / 1000), rod(mm / 1000), ball(mm / 1000)].map((body) =>
    took(exposure(body, 0.48, 1.4e-7, h, start, medium), target),
  );
const series = "the series solution, worked apart for h 95 and 100, k 0.48, α 1.4e-7";

const newton = (medium: number, k: number) => (target: number) =>
  stirredMinutes(k, celsius(57), celsius(target), celsius(medium));
const foodCode = "FDA Food Code 3-501.14(A), as Newton's law";

const water = specificHeat(4186);
const fiveLitres = heatToWarm(grams(5000), water, celsius(15), celsius(100));

/** Heat: properties of foods, conduction, cooling, boiling, evaporation, freezing. */
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
  ...oneTerm.flatMap(([biot, slab, slabC, cylinder, cylinderC, sphere, sphereC]): readonly Check[] => [
    {
      what: `slab at Bi ${biot}: ζ1 and C1`,
      source: table42,
      run: () => [pair("slab", biot), [slab, slabC], 1e-4],
    },
    {
      what: `cylinder at Bi ${biot}: ζ1 and C1`,
      source: table42,
      run: () => [pair("cylinder", biot), [cylinder, cylinderC], 1e-4],
    },
    {
      what: `sphere at Bi ${biot}: ζ1 and C1`,
      source: table42,
      run: () => [pair("sphere", biot), [sphere, sphereC], 1e-4],
    },
  ]),
  {
    what: "a can of 3.676e-4 m³ shaken in ice water, h 120, 25 to 5 °C: seconds",
    source: `${cengel}, problem on a can in iced water`,
    run: () => [
      (stirredMinutes(
        rateOf(transfer(120), metres(3.676e-4 / 0.03016), {
          density: density(977),
          specificHeat: specificHeat(4180),
        }),
        celsius(25),
        celsius(5),
        celsius(0),
      ) ?? 0) * 60,
      667.6,
      1,
    ],
  },
  {
    what: "a glass of milk stirred in a 60 °C bath, h 120 and 240, 3 to 38 °C: seconds",
    source: `${cengel}, problem on milk in a glass`,
    run: () => [
      [120, 240].map(
        (h) =>
          (stirredMinutes(
            rateOf(transfer(h), metres(0.0105), { density: density(998), specificHeat: specificHeat(4182) }),
            celsius(3),
            celsius(38),
            celsius(60),
          ) ?? 0) * 60,
      ),
      [348, 174],
      1,
    ],
  },
  {
    what: "air of 3 °C, k 0.0091551 a minute: 57 to 21 °C and to 5 °C, minutes (both limits at once)",
    source: foodCode,
    run: () => [[21, 5].map(newton(3, 0.0091551)), [120, 360], 0.1],
  },
  {
    what: "air of 0 °C, k 0.0083211: 57 to 21 °C and to 5 °C, minutes",
    source: foodCode,
    run: () => [[21, 5].map(newton(0, 0.0083211)), [120, 292.5], 0.1],
  },
  {
    what: "air of 2 °C, k 0.0088575: 57 to 5 °C, minutes",
    source: foodCode,
    run: () => [newton(2, 0.0088575)(5), 328.4, 0.1],
  },
  {
    what: "air of 4 °C, k 0.0110286: 57 to 21 °C and to 5 °C, minutes",
    source: foodCode,
    run: () => [[21, 5].map(newton(4, 0.0110286)), [103.1, 360], 0.1],
  },
  {
    what: "air of 5 °C never brings food to 5 °C",
    source: foodCode,
    run: () => [newton(5, 0.01)(5), null],
  },
  {
    what: "egg of 5 cm in 95 °C water, h 1200, 5 to 70 °C: seconds",
    source: `${cengel}, example 4-4`,
    run: () => [seconds(egg, 70), 863, 5],
  },
  {
    what: "egg of 5.5 cm in 97 °C water, h 1400, 8 to 70 °C: seconds, full series",
    source: `${cengel}, problem on eggs`,
    run: () => [seconds(exposure(ball(0.055), 0.6, 0.14e-6, 1400, 8, 97), 70), 1062, 2],
  },
  {
    what: "egg of 5.5 cm in boiling water, h 800, 4.3 to 74 °C: seconds",
    source: `${cengel}, problem on eggs`,
    run: () => [seconds(exposure(ball(0.055), 0.607, 0.146e-6, 800, 4.3, 100), 74), 1106, 3],
  },
  {
    what: "the same egg, 8 to 60 °C, where one term is not enough (it gives 845): seconds",
    source: `${cengel}, problem on eggs; full series`,
    run: () => [seconds(exposure(ball(0.055), 0.607, 0.146e-6, 800, 8, 100), 60), 839, 2],
  },
  {
    what: "apple of 9 cm at −15 °C for an hour: middle and skin, °C",
    source: `${cengel}, problem on apples in a freezer`,
    run: () => [
      [temperatureAfter(apple, minutes(60)), temperatureAfter(apple, minutes(60), "surface")],
      [11.2, 2.65],
      0.1,
    ],
  },
  {
    what: "the same apple: heat given off, kJ",
    source: `${cengel}, problem on apples in a freezer`,
    run: () => [heatFlowed(apple, minutes(60)) * 840 * ((Math.PI / 6) * 0.09 ** 3) * 3.81 * 35, 17.2, 0.1],
  },
  {
    what: "apple of 6 cm in 2 °C water, h 50, 15 to 3 °C: seconds",
    source: "Singh and Heldman, Introduction to Food Engineering, example on apples",
    run: () => [seconds(cooledApple, 3), 3778, 38],
  },
  {
    what: "sausage of 10 cm × 30 cm in steam of 116 °C for 2 hours: middle, °C",
    source: "Earle, Unit Operations in Food Processing, example on sausages (statement from memory)",
    run: () => [temperatureAfter(sausage, minutes(120)), 99.6, 0.2],
  },
  {
    what: "of a slab at Fo 0.0435 there is never more left than all (one term gives 1.144)",
    source: `${cengel}, 4-2: one term holds from Fo 0.2`,
    run: () => [seriesOf("slab", 200).left(0.0435), 0.999, 0.002],
  },
  ...bath.map(
    ([mm, ...expected]): Check => ({
      what: `${mm} mm from 5 °C to 59.5 °C in a 60 °C bath, minutes ÷ worked: slab, cylinder, sphere`,
      source: series,
      run: () => [three(mm, 95, 5, 60, 59.5).map((m, i) => m / (expected[i] ?? 1)), [1, 1, 1], 0.02],
    }),
  ),
  {
    what: "20 mm slab in a 60 °C bath to within half a degree, minutes",
    source: "Baldwin, Sous Vide for the Home Cook, Table 2.2, from memory",
    run: () => [took(exposure(plate(0.02), 0.48, 1.4e-7, 95, 5, 60), 59.5), 50, 1.5],
  },
  ...iceWater.map(
    ([mm, ...expected]): Check => ({
      what: `${mm} mm from 55 °C to 5 °C in ice water of 1 °C, minutes ÷ worked: slab, cylinder, sphere`,
      source: series,
      run: () => [three(mm, 100, 55, 1, 5).map((m, i) => m / (expected[i] ?? 1)), [1, 1, 1], 0.02],
    }),
  ),
  ...(
    [
      [5, 367, 1076],
      [8, 244, 709],
      [10, 203, 586],
      [15, 149, 424],
      [25, 105, 294],
    ] as const
  ).map(
    ([h, first, second]): Check => ({
      what: `50 mm layer, both faces in air of 3 °C, h ${h}, 57 °C to 21 and to 5 °C, minutes ÷ worked`,
      source: "the series solution, worked apart for k 0.5, α 1.4e-7",
      run: () => {
        const layer = exposure(plate(0.05), 0.5, 1.4e-7, h, 57, 3);
        return [[took(layer, 21) / first, took(layer, 5) / second], [1, 1], 0.03];
      },
    }),
  ),
  {
    what: "50 mm layer in a still fridge of 3 °C, h 10: within 2 h to 21 °C?",
    source: "FDA Food Code 3-501.14(A)(1)",
    run: () => [took(exposure(plate(0.05), 0.5, 1.4e-7, 10, 57, 3), 21) <= 120, false],
  },
  ...(
    [
      [-10, 20, 194],
      [-10, 50, 114],
      [-20, 30, 115],
      [-20, 50, 88],
    ] as const
  ).map(
    ([air, h, expected]): Check => ({
      what: `blast chiller at ${air} °C, h ${h}: 50 mm from 70 to 3 °C, minutes`,
      source: "the series solution, worked apart for k 0.5, α 1.4e-7",
      run: () => [took(exposure(plate(0.05), 0.5, 1.4e-7, h, 70, air), 3), expected, expected * 0.03],
    }),
  ),
  {
    what: "stew and broth in a walk-in of 38 °F, 140 to 45 °F in 12 and 5 hours: rate a minute",
    source: "walk-in maker's handbook, cooling times of pans 2 in deep",
    run: () => [
      [12, 5].map((hours) =>
        rateFrom(
          celsiusFromFahrenheit(140),
          celsiusFromFahrenheit(45),
          celsiusFromFahrenheit(38),
          minutes(hours * 60),
        ),
      ),
      [0.00372, 0.00893],
      1e-5,
    ],
  },
  {
    what: "2.5 US quarts of soup stirred in an ice bath, 174 to 80 °F: rate a minute in steel, glass, plastic",
    source: "Cook's Illustrated, stirred soup in an ice bath: 11.5, 26, 36 minutes",
    run: () => [
      [11.5, 26, 36].map((took_) =>
        rateFrom(
          celsiusFromFahrenheit(174),
          celsiusFromFahrenheit(80),
          celsiusFromFahrenheit(32),
          minutes(took_),
        ),
      ),
      [0.0943, 0.0417, 0.0301],
      1e-4,
    ],
  },
  {
    what: "the same soup in steel as the ice bath's own coefficient has it: minutes, within its range",
    source: "Cook's Illustrated, stirred soup in an ice bath: 11.5 minutes; Çengel 4-169 for h",
    run: () => {
      const pot = { density: density(1000), specificHeat: specificHeat(4000) };
      const at = (h: number) =>
        stirredMinutes(rateOf(transfer(h), metres(0.033), pot), celsius(78.9), celsius(26.7), celsius(0)) ??
        0;
      const { low, high } = transferOf("ice-bath");
      return [at(high) <= 11.5 && 11.5 <= at(low), true];
    },
  },
  {
    what: "stirred: a rate found from two temperatures gives them back",
    source: "Newton's law of cooling",
    run: () => [
      stirredAfter(
        rateFrom(celsius(79), celsius(27), celsius(0), minutes(11.5)) ?? 0,
        celsius(79),
        celsius(0),
        minutes(11.5),
      ),
      27,
      1e-9,
    ],
  },
  {
    what: "ice for 10 kg of soup of 3.9 kJ/(kg·K), 60 to 5 °C: kg",
    source: "334 kJ/kg and 4.19 kJ/(kg·K) of the melt",
    run: () => [iceToCool(grams(10_000), specificHeat(3900), celsius(60), celsius(5)) / 1000, 6.04, 0.06],
  },
  {
    what: "5 litres of water from 15 to 100 °C: kJ",
    source: "water, 4.186 kJ/(kg·K)",
    run: () => [fiveLitres, 1779, 9],
  },
  {
    what: "the same in kWh",
    source: "1 kWh = 3600 kJ",
    run: () => [fiveLitres / 3600, 0.494, 0.0025],
  },
  {
    what: "the same on 3.5 kW at 85 % and on 8.8 kW at 30 %: minutes",
    source: "energy ÷ power",
    run: () => [
      [
        minutesToGive(fiveLitres, kilowatts(3.5), share(0.85)),
        minutesToGive(fiveLitres, kilowatts(8.8), share(0.3)),
      ],
      [9.97, 11.2],
      0.1,
    ],
  },
  {
    what: "water driven off at the boil by a net kilowatt: kg an hour",
    source: "steam tables: 2257 kJ/kg at 100 °C",
    run: () => [(boilOff(kilowatts(1)) * 60) / 1000, 1.595, 0.008],
  },
  {
    what: "minutes to drive off a kilogram with a net kilowatt",
    source: "steam tables: 2257 kJ/kg at 100 °C",
    run: () => [minutesToDriveOff(grams(1000), kilowatts(1), share(1)), 37.6, 0.2],
  },
  {
    what: "heat of vaporisation at 80 °C, kJ/kg",
    source: "steam tables, from memory",
    run: () => [heatOfVaporisation(celsius(80)), 2308],
  },
  {
    what: "12 litres from 20 to 56 °C on 1400 W: minutes",
    source: "maker's page of a bath heater: 21.6",
    run: () => [
      minutesToGive(heatToWarm(grams(12_000), water, celsius(20), celsius(56)), kilowatts(1.4), share(1)),
      21.6,
      0.2,
    ],
  },
  {
    what: "a quart boiled with 430 Btu on induction, 992 Btu on gas, of 317 that it takes: efficiency lies in the range of its kind",
    source: "Fast Company 2016, quart test: 74 % and 32 %",
    run: () => {
      const within = (kind: "induction" | "gas", used: number) =>
        317 / used >= burnerEfficiency[kind].low - 0.005 && 317 / used <= burnerEfficiency[kind].high;
      return [
        [within("induction", 430), within("gas", 992)],
        [true, true],
      ];
    },
  },
  {
    what: "heat for a US quart of water, 62 to 212 °F, in Btu",
    source: "Fast Company 2016, quart test: ideal 317",
    run: () => [
      heatToWarm(grams(946.35), water, celsiusFromFahrenheit(60.5), celsiusFromFahrenheit(212)) / 1.0551,
      317,
      3,
    ],
  },
  {
    what: "water boils at 1000, 2000 and 3000 m: °C",
    source: "McGee, On Food and Cooking: 96.6, 93.2, about 90",
    run: () => [[1000, 2000, 3000].map(boilingPointAt), [96.7, 93.4, 90.2], 0.5],
  },
  {
    what: "vapour pressure at 20, 60, 80, 100 °C: kPa",
    source: "steam tables, from memory",
    run: () => [[20, 60, 80, 100].map((t) => vapourPressure(celsius(t))), [2.34, 19.9, 47.4, 101.3], 0.4],
  },
  {
    what: "a pan 30 cm across at 80 °C in still air: kg an hour",
    source: "ASHRAE pool form, from memory: about 0.45, ±50 %",
    run: () => [(openSurfaceLoss(squareMetres(Math.PI * 0.15 ** 2), celsius(80)) * 60) / 1000, 0.45, 0.05],
  },
  {
    what: "Plank: 50 mm slab, ρ 1050, λ 255, −1 °C in −30 °C, h 25, k 1.5: seconds",
    source: "Plank's equation, from memory; worked apart",
    run: () => [
      (plankMinutes({
        body: plate(0.05),
        density: density(1050),
        heat: 255,
        conductivity: conductivity(1.5),
        transfer: transfer(25),
        freezes: celsius(-1),
        medium: celsius(-30),
      }) ?? 0) * 60,
      11_156,
      12,
    ],
  },
  {
    what: "a turkey of 12 lb thaws in a fridge in 3 days: within the range of the fridge's coefficient, and of walk-ins",
    source: "USDA FSIS: 24 hours in a fridge for each 4 to 5 lb",
    run: () => {
      const at = (h: number) =>
        (thawingMinutes(jointOf(grams(5443), density(1050)), beef, transfer(h), celsius(-18), celsius(4)) ??
          0) / 1440;
      return [at(transferOf("walk-in").high) <= 3 && 3 <= at(transferOf("fridge").low), true];
    },
  },
  {
    what: "lumped Biot number of an egg: h·(D/6)/k",
    source: `${cengel}, 4-1: volume ÷ surface`,
    run: () => [lumpedBiot(egg), (1200 * (0.05 / 6)) / 0.627, 1e-9],
  },
  {
    what: "volume ÷ surface of a cylinder as long as it is thick is a sixth of it, as of a cube",
    source: "geometry",
    run: () => [
      [
        volumeOverSurface(rod(0.06, 0.06)),
        volumeOverSurface({ kind: "brick", sides: [metres(0.06), metres(0.06), metres(0.06)] }),
      ],
      [0.01, 0.01],
      1e-12,
    ],
  },
  {
    what: "a brick is three slabs, each of half its side",
    source: `${cengel}, 4-4: product solution`,
    run: () => [
      flowsOf({ kind: "brick", sides: [metres(0.02), metres(0.04), metres(0.06)] }).map((flow) => flow.half),
      [0.01, 0.02, 0.03],
      1e-12,
    ],
  },
  {
    what: "a litre reduced by half on a net kilowatt takes as long as half a kilogram of steam",
    source: "steam tables: 2257 kJ/kg at 100 °C",
    run: () => [
      minutesToGive(kilojoules(0.5 * 2257), kilowatts(1), share(1)),
      minutesToDriveOff(grams(500), kilowatts(1), share(1)),
      1e-9,
    ],
  },
  ...(
    [
      [4, 163, 60],
      [6, 163, 60],
    ] as const
  ).map(
    ([pounds, setting, core]): Check => ({
      what: `rib roast of ${pounds} lb at ${setting} °C to ${core} °C: minutes a pound`,
      source: "USDA FSIS roasting chart: 23 to 25 minutes a pound at 325 °F; a static oven's coefficient",
      run: () => [
        took(
          {
            body: jointOf(grams(pounds * 453.6), density(1050)),
            ...thermalProperties(beef, celsius(40)),
            transfer: transferOf("static-oven").likely,
            start: celsius(7),
            medium: celsius(setting),
          },
          core,
        ) / pounds,
        24,
        6,
      ],
    }),
  ),
];

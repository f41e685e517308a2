import { flowsOf, jointOf, volumeOverSurface } from "../../src/engine/heat/bodies.ts";
import { type Exposure, heatFlowed, lumpedBiot, temperatureAfter } from "../../src/engine/heat/conduction.ts";
import { transferOf } from "../../src/engine/heat/media.ts";
import { eigenvalue, type Shape, seriesOf, weightOf } from "../../src/engine/heat/series.ts";
import { thermalProperties } from "../../src/engine/heat/thermal-properties.ts";
import { density, metres } from "../../src/engine/measure/heat-units.ts";
import { celsius, grams, minutes } from "../../src/engine/measure/units.ts";
import type { Check } from "./check.ts";
import { ball, beef, cengel, exposure, plate, rod, took } from "./heat-cases.ts";

const table42 = `${cengel}, Table 4-2`;

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

/** Heat: how long it takes to the middle, in water, air, steam and ovens. */
export const checks: readonly Check[] = [
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

import { jointOf } from "../../src/engine/heat/bodies.ts";
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
import {
  conductivity,
  density,
  kilojoules,
  kilowatts,
  specificHeat,
  squareMetres,
  transfer,
} from "../../src/engine/measure/heat-units.ts";
import { celsiusFromFahrenheit } from "../../src/engine/measure/temperature.ts";
import { celsius, grams, share } from "../../src/engine/measure/units.ts";
import type { Check } from "./check.ts";
import { beef, plate } from "./heat-cases.ts";

const water = specificHeat(4186);
const fiveLitres = heatToWarm(grams(5000), water, celsius(15), celsius(100));

/** Heat: warming, boiling, evaporation, ice, freezing and thawing. */
export const checks: readonly Check[] = [
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
    what: "a litre reduced by half on a net kilowatt takes as long as half a kilogram of steam",
    source: "steam tables: 2257 kJ/kg at 100 °C",
    run: () => [
      minutesToGive(kilojoules(0.5 * 2257), kilowatts(1), share(1)),
      minutesToDriveOff(grams(500), kilowatts(1), share(1)),
      1e-9,
    ],
  },
];

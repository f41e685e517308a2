import { transferOf } from "../../src/engine/heat/media.ts";
import { rateFrom, rateOf, stirredAfter, stirredMinutes } from "../../src/engine/heat/stirred.ts";
import { density, metres, specificHeat, transfer } from "../../src/engine/measure/heat-units.ts";
import { celsiusFromFahrenheit } from "../../src/engine/measure/temperature.ts";
import { celsius, minutes } from "../../src/engine/measure/units.ts";
import type { Check } from "./check.ts";
import { cengel } from "./heat-cases.ts";

const newton = (medium: number, k: number) => (target: number) =>
  stirredMinutes(k, celsius(57), celsius(target), celsius(medium));
const foodCode = "FDA Food Code 3-501.14(A), as Newton's law";

/** Heat: what is stirred, or cools by Newton's law. */
export const checks: readonly Check[] = [
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
];

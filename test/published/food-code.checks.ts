import { coreHold, isOver, limits, limitsFor } from "../../src/engine/larder/limits.ts";
import { celsius, minutes } from "../../src/engine/measure/units.ts";
import type { Limit, LimitCase } from "../../src/engine/model/limit.ts";
import type { LimitQuantity } from "../../src/engine/model/safety.ts";
import type { Region } from "../../src/engine/model/sitting.ts";
import type { Check } from "./check.ts";

const code = (paragraph: string): string => `FDA Food Code 2022, ${paragraph}`;
const fsa = "Food Standards Agency, cooking times and temperatures";

/** A core temperature held so many seconds meets the limit, or does not. */
const core = (
  region: Region,
  food: LimitCase,
  heat: number,
  seconds: number,
  meets: boolean,
  source: string,
): Check => ({
  what: `${region}: ${food} at ${heat} °C for ${seconds} s ${meets ? "meets" : "does not meet"} the limit`,
  source,
  run: () => {
    const hold = coreHold(region, food, celsius(heat));
    return [hold !== null && seconds / 60 >= hold - 1e-9, meets];
  },
});

const hold = (
  region: Region,
  food: LimitCase,
  heat: number,
  seconds: number | null,
  source: string,
): Check => ({
  what: `${region}: ${food} at ${heat} °C: ${seconds === null ? "no row" : `${seconds} s`}`,
  source,
  run: () => {
    const found = coreHold(region, food, celsius(heat));
    return [found === null ? null : Math.round(found * 60), seconds];
  },
});

const heatOf = (region: Region, quantity: LimitQuantity, heat: number, source: string): Check => ({
  what: `${region}: ${quantity} at ${heat} °C`,
  source,
  run: () => [limitsFor(region, quantity)[0]?.celsius, heat],
});

/** A length of time breaks a limit, or keeps it. */
const over = (
  region: Region,
  quantity: LimitQuantity,
  at: number,
  length: number,
  broken: boolean,
  source: string,
): Check => ({
  what: `${region}: ${quantity} ${at} °C, ${length} min ${broken ? "is too long" : "is within the limit"}`,
  source,
  run: () => {
    const row = limits.find(
      (l): l is Limit => l.region === region && l.quantity === quantity && l.celsius === at && l.main,
    );
    return [row === undefined ? "no row" : isOver(row, minutes(length)), broken];
  },
});

/** Seconds by Bigelow's model that do what 70 °C does in two minutes. */
const equivalent = (heat: number, z: number): number => 120 * 10 ** ((70 - heat) / z);

const published = (heat: number, z: number, seconds: number): Check => ({
  what: `70 °C for 2 min at z ${z} is ${seconds} s at ${heat} °C`,
  source: "Bigelow's model; basis FSAI 2018 (z 7.5), ACMSF 2007 (z 6)",
  run: () => [equivalent(heat, z), seconds, 0.06],
});

const ukRow = (heat: number): Check => ({
  what: `the row for ${heat} °C is within a fifth of the model at z 7.5`,
  source: `${fsa}; Bigelow's model, z 7.5`,
  run: () => {
    const row = (coreHold("uk", "raw-mince", celsius(heat)) ?? 0) * 60;
    return [Math.abs(row / equivalent(heat, 7.5) - 1) <= 0.2, true];
  },
});

const roast = "Table in 3-401.11(B)";

/** Limits of cooking, cooling, holding and keeping, on both sides of each figure. */
export const checks: readonly Check[] = [
  core("us", "raw-fish", 63, 15, true, code("3-401.11(A)(1)")),
  core("us", "raw-meat", 63, 14, false, code("3-401.11(A)(1)")),
  core("us", "raw-mince", 68, 17, true, code("3-401.11(A)(2)")),
  core("us", "raw-mince", 68, 16, false, code("3-401.11(A)(2)")),
  core("us", "raw-mince", 66, 60, true, code("3-401.11(A)(2)")),
  core("us", "raw-mince", 63, 180, true, code("3-401.11(A)(2)")),
  core("us", "raw-mince", 62, 3600, false, code("3-401.11(A)(2)")),
  core("us", "raw-poultry", 74, 0.5, true, code("3-401.11(A)(3)")),
  core("us", "raw-poultry", 73, 600, false, code("3-401.11(A)(3)")),
  hold("us", "whole-roast", 54.4, 6720, code(roast)),
  hold("us", "whole-roast", 62.8, 240, code(roast)),
  hold("us", "whole-roast", 63.3, 240, `${code(roast)}: 146 F is not listed, the next lower row counts`),
  hold("us", "whole-roast", 70, 0, code(roast)),
  hold("us", "whole-roast", 54.3, null, code(roast)),
  heatOf("us", "hold-hot", 57, code("3-501.16(A)(1)")),
  heatOf("us", "hold-cold", 5, code("3-501.16(A)(2)")),
  heatOf("us", "reheat", 74, code("3-403.11(A)")),
  over("us", "cool-to", 21, 120, false, code("3-501.14(A)(1)")),
  over("us", "cool-to", 21, 121, true, code("3-501.14(A)(1)")),
  over("us", "cool-to", 5, 360, false, code("3-501.14(A)(2)")),
  over("us", "cool-to", 5, 361, true, code("3-501.14(A)(2)")),
  over("us", "off-heat", 57, 240, false, code("3-501.19(B)")),
  over("us", "off-heat", 57, 241, true, code("3-501.19(B)")),
  over("us", "keep", 5, 7 * 1440, false, code("3-501.17(A)")),
  over("us", "keep", 5, 7 * 1440 + 1, true, code("3-501.17(A)")),
  {
    what: "us: fish to be eaten raw, 168 h at −20 °C or 15 h at −35 °C",
    source: code("3-402.11(A)"),
    run: () => [
      limits.filter((l) => l.region === "us" && l.quantity === "freeze").map((l) => [l.celsius, l.minutes]),
      [
        [-20, 168 * 60],
        [-35, 15 * 60],
      ],
    ],
  },
  heatOf("uk", "hold-hot", 63, "Food Safety and Hygiene (England) Regulations 2013, Schedule 4, 6"),
  heatOf("uk", "hold-cold", 8, "Food Safety and Hygiene (England) Regulations 2013, Schedule 4, 2"),
  over(
    "uk",
    "off-heat",
    63,
    119,
    false,
    "Food Safety and Hygiene (England) Regulations 2013, Schedule 4, 7: less than 2 hours",
  ),
  over(
    "uk",
    "off-heat",
    63,
    120,
    true,
    "Food Safety and Hygiene (England) Regulations 2013, Schedule 4, 7: less than 2 hours",
  ),
  over(
    "uk",
    "out-of-cold",
    8,
    239,
    false,
    "Food Safety and Hygiene (England) Regulations 2013, Schedule 4, 5: less than 4 hours",
  ),
  over(
    "uk",
    "out-of-cold",
    8,
    240,
    true,
    "Food Safety and Hygiene (England) Regulations 2013, Schedule 4, 5: less than 4 hours",
  ),
  {
    what: "uk: Scotland reheats to 82 °C",
    source: "Food Hygiene (Scotland) Regulations 2006, Schedule 4",
    run: () => [limitsFor("uk", "reheat").some((l) => l.celsius === 82 && l.source === "ssi-2006-3"), true],
  },
  {
    what: "uk: cooked rice is kept for a day",
    source: "Food Standards Agency, advice on rice",
    run: () => [limitsFor("uk", "keep", ["cooked-rice"])[0]?.minutes, 1440],
  },
  hold("uk", "raw-poultry", 60, 2700, fsa),
  hold("uk", "raw-poultry", 65, 600, fsa),
  hold("uk", "raw-poultry", 70, 120, fsa),
  hold("uk", "raw-poultry", 75, 30, fsa),
  hold("uk", "raw-poultry", 80, 6, fsa),
  hold("uk", "raw-poultry", 59.9, null, fsa),
  ukRow(60),
  ukRow(65),
  ukRow(75),
  ukRow(80),
  published(60, 7.5, 2585.3),
  published(65, 6, 817.6),
  published(75, 7.5, 25.9),
  published(75, 6, 17.6),
  over(
    "au",
    "cool-to",
    21,
    121,
    true,
    "Standard 3.2.2 (Australia New Zealand Food Standards Code), clause 7",
  ),
  over(
    "au",
    "cool-to",
    5,
    360,
    false,
    "Standard 3.2.2 (Australia New Zealand Food Standards Code), clause 7",
  ),
  heatOf("au", "hold-hot", 60, "Standard 3.2.2 (Australia New Zealand Food Standards Code)"),
  over(
    "eu",
    "cool-to",
    10,
    121,
    true,
    "France, arrêté du 21 décembre 2009: 63 to 10 °C in less than 2 hours",
  ),
];

import { findTemperatures } from "../../src/engine/dish-from-card/steps/find-temperatures.ts";
import { tokenise } from "../../src/engine/dish-from-card/steps/tokens.ts";
import { techniqueByVerb } from "../../src/engine/larder/techniques.ts";
import type { Check } from "./check.ts";

const charts = "UK oven charts (nannymcphee.co.uk, hintsandthings.co.uk)";
const practice = "common practice, no source";

const setting = (words: string, celsius: number, source: string, tolerance = 0.5): Check => ({
  what: `"${words}" in °C`,
  source,
  run: () => [findTemperatures(tokenise(words), "uk")[0]?.celsius, celsius, tolerance],
});

const rate = (verb: string, end: "low" | "likely" | "high", kilosAnHour: number, source: string): Check => ({
  what: `${verb}: minutes a kilogram at ${kilosAnHour} kg an hour (${end})`,
  source,
  run: () => [techniqueByVerb(verb)?.minutes[end], 60 / kilosAnHour, 0.1],
});

const each = (verb: string, end: "low" | "likely" | "high", anHour: number): Check => ({
  what: `${verb}: minutes a piece at ${anHour} an hour (${end})`,
  source: practice,
  run: () => [techniqueByVerb(verb)?.minutes[end], 60 / anHour, 0.01],
});

const within = (verb: string, low: number, high: number, source: string): Check => ({
  what: `${verb}: the sensible settings lie within ${low} to ${high} °C`,
  source,
  run: () => {
    const range = techniqueByVerb(verb)?.celsius;
    return [range !== null && range !== undefined && range.low >= low && range.high <= high, true];
  },
});

/** What verbs mean, against rates and settings of the trade. */
export const checks: readonly Check[] = [
  setting("bake at gas mark 4", 180, charts),
  setting("bake at gas 6", 200, charts),
  setting("in a moderate oven", 175, "UK oven charts: moderate is 160 to 190 °C", 15),
  setting("in a hot oven", 215, "UK oven charts: hot is 200 to 230 °C", 15),
  setting("in a very cool oven", 120, "UK oven charts: very cool is 110 to 130 °C", 10),
  setting("bake at 350°F", (350 - 32) / 1.8, "definition of the Fahrenheit scale"),
  setting("bake at 160°C fan", 180, "Healthy Kids NSW conversion chart: a fan oven is set 20 °C lower"),
  rate("peel", "low", 15, practice),
  rate("dice", "low", 7, practice),
  rate("brunoise", "likely", 1.5, practice),
  rate("julienne", "high", 2.5, practice),
  rate("grate", "likely", 4, practice),
  rate("slice", "low", 18, "PMQ forum, thread 9308: mushrooms, 10 lb in 15 minutes (an owner's claim)"),
  rate("slice", "high", 5, "PMQ forum, thread 9308: plum tomatoes, 20 in 15 minutes (an owner's claim)"),
  each("crack", "likely", 400),
  each("separate", "likely", 200),
  within(
    "cook to soft ball",
    110,
    160,
    "stages of boiled sugar, H. McGee, from thread (110 °C) to caramel (160 °C)",
  ),
  within("make the stock", 82, 98, "culinary ratio notes: stocks simmer at about 82 to 95 °C, no boil"),
];

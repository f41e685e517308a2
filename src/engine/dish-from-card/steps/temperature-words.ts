import { celsiusFromFahrenheit } from "../../measure/temperature.ts";
import { type Celsius, celsius } from "../../measure/units.ts";
import type { Region } from "../../model/sitting.ts";
import { text } from "./read-length.ts";
import type { Token } from "./tokens.ts";

/** A temperature in the words. "core" is what the middle of the food must reach. */
export type TemperaturePhrase = {
  readonly kind: "setting" | "core";
  readonly celsius: Celsius;
  /** The words name no scale, so the usual one of the figure was taken. */
  readonly scaleAssumed: boolean;
  readonly from: number;
  readonly to: number;
};

/** A phrase of a figure in °C, at these places in the tokens. */
export const phrase = (
  kind: "setting" | "core",
  value: number,
  scaleAssumed: boolean,
  from: number,
  to: number,
): TemperaturePhrase => ({ kind, celsius: celsius(value), scaleAssumed, from, to });

/** The figure of a scale in °C. */
export const toCelsius = (value: number, scale: "C" | "F"): number =>
  scale === "C" ? value : Math.round(celsiusFromFahrenheit(value));

/** The scale of a bare oven figure: 290 and more is Fahrenheit anywhere; below, what the country's ovens show. Common practice, no source. */
export const guessScale = (value: number, region: Region): "C" | "F" =>
  value >= 290 || (region === "us" && value >= 120) ? "F" : "C";

/** Words by which a figure is known to be of the middle of the food. */
export const coreWords = new Set(
  "internal internally core middle centre center reads reading read thermometer probe inside thickest registers register thigh rare medium-rare throughout".split(
    " ",
  ),
);

/** Words of liquids and mixtures that are heated to a figure themselves. */
export const liquids =
  /^(oil|fat|water|milk|cream|custard|syrup|sugar|chocolate|yoghurt|yogurt|curd|jam|butter|stock|egg|eggs|yolks|sauce|temperature|oven|bath)$/;

/** The words around a place speak of an oven. */
export const isOvenTalk = (tokens: readonly Token[], i: number): boolean =>
  tokens
    .slice(Math.max(0, i - 9), i + 8)
    .some((t) =>
      /^(oven|ovens|bake|baked|roast|preheat|pre-heat|preheated|fryer|heat|temperature)$/.test(t.text),
    );

/** The figure is that of a fan oven: "160 fan", "fan 160", "a fan oven at 160", "160C (fan)". */
export const isFan = (tokens: readonly Token[], i: number, to: number): boolean => {
  if (text(tokens, to) === "fan") return true;
  if (text(tokens, to) === "(" && text(tokens, to + 1) === "fan" && !/\d/.test(text(tokens, to + 2)))
    return true;
  let at = i - 1;
  while (/^(at|to|oven|of|on|:)$/.test(text(tokens, at))) at -= 1;
  return text(tokens, at) === "fan";
};

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
  /** The figure of a fan oven that the words give, where no other stands beside it; `celsius` is that of one without. */
  readonly fan?: number;
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

const middles = new Set("middle centre center inside core thickest throughout internally thigh".split(" "));

const readers = new Set(
  "internal internally thermometer probe core thickest middle centre center thigh".split(" "),
);

const reachWords =
  /^(hits?|reads?|reading|says|say|tells|tell|shows|registers?|reach|reaches|gets|is|be|it's|at|to|want|wants|of|means|for|after|till|until|temp|temperature|over|above|between|from)$/;

/** "The middle shelf", "the centre of the oven": a place, and no middle of the food. */
const isMiddle = (tokens: readonly Token[], at: number): boolean =>
  !/^(shelf|rack|of|ring|rung)$/.test(text(tokens, at + 1)) ||
  (text(tokens, at + 1) === "of" && !/^ovens?$/.test(text(tokens, at + 3)));

/** The words right before or behind a figure say that it is of the middle of the food: "the core hits 52", "63 in the middle". */
export const isToldCore = (tokens: readonly Token[], i: number, to: number): boolean => {
  let reached = /^[,:]$/.test(text(tokens, i - 1));
  for (let at = i - 1; at >= Math.max(0, i - 10); at -= 1) {
    const here = text(tokens, at);
    if (at < i - 1 && (/^[,;:(]$/.test(here) || (/^(until|till|for)$/.test(here) && !reached))) break;
    if (reachWords.test(here)) reached = true;
    if (/^(medium-rare|rare)$/.test(here) && reached && at >= i - 4) return true;
    if (readers.has(here) && isMiddle(tokens, at) && (reached || (here === "core" && at >= i - 2)))
      return true;
    // "Till it reads 60", "registers 145": nothing else is read.
    if (/^(reads|read|registers?)$/.test(here) && at >= i - 3) return true;
  }
  for (let at = to; at < to + 6; at += 1) {
    const here = text(tokens, at);
    if (/^([,;:)]|until|till|then|and|for|to)$/.test(here)) break;
    if (middles.has(here) && isMiddle(tokens, at)) return true;
    if (here === "bone" && /^(the|at)$/.test(text(tokens, at - 1))) return true;
    if (here === "through" && /^(right|way|all)$/.test(text(tokens, at - 1))) return true;
    if (/^(probe|thermometer)$/.test(here) && text(tokens, to) === "on") return true;
  }
  return false;
};

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

/** "Lamb is ready at 60", "pull it at 54", "take it out at 54": done when the middle is so hot. */
export const isReadyAt = (tokens: readonly Token[], i: number): boolean =>
  text(tokens, i - 1) === "at" &&
  tokens
    .slice(Math.max(0, i - 5), i)
    .some((t) => /^(ready|done|cooked|perfect|pink|rare|pull|pulled|out)$/.test(t.text));

const fans = new Set("fan fan-assisted fan-forced convection".split(" "));

/** The figure is that of a fan oven: "160 fan", "fan 160", "a fan oven at 160", "160C (fan)". */
export const isFan = (tokens: readonly Token[], i: number, to: number): boolean => {
  if (fans.has(text(tokens, to))) return true;
  if (text(tokens, to) === "(" && fans.has(text(tokens, to + 1)) && !/\d/.test(text(tokens, to + 2)))
    return true;
  let at = i - 1;
  while (/^(at|to|oven|of|on|:)$/.test(text(tokens, at))) at -= 1;
  return fans.has(text(tokens, at));
};

/** "With the fan on, 180", "200 (180 with the fan on)": the fan is spoken of beside the figure. */
export const fanAround = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i - 1; at >= Math.max(0, i - 5); at -= 1)
    if (fans.has(text(tokens, at))) return /^(on|oven|,)$/.test(text(tokens, at + 1));
  return false;
};

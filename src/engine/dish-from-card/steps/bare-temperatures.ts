import { fanDifference } from "../../measure/temperature.ts";
import type { Region } from "../../model/sitting.ts";
import { numberAt } from "./number-at.ts";
import { isTimeWord, text } from "./read-length.ts";
import {
  coreWords,
  guessScale,
  isFan,
  isOvenTalk,
  liquids,
  phrase,
  type TemperaturePhrase,
  toCelsius,
} from "./temperature-words.ts";
import type { Token } from "./tokens.ts";

// What a bare figure is of, and the figures that it may be in °C. Common practice, no source.
const bareOf: readonly (readonly [words: RegExp, low: number, high: number])[] = [
  [/^(oil|fat|fryer|lard|dripping|deep-fry|deep-fried|fry|frying)$/, 120, 210],
  [/^(sugar|syrup|caramel|toffee|fudge|jam|marmalade|nougat|honeycomb)$/, 100, 185],
  [
    /^(milk|cream|custard|chocolate|yoghurt|yogurt|water|bath|sous|vide|poach|melt|temper|rewarm|cool|warm|curd|sabayon)$/,
    20,
    100,
  ],
  [/^(hold|keep|holding|held|hot|hot-hold)$/, 55, 95],
];

/** Behind a bare figure that is a temperature: the end, a joint, a cue; never a unit or a food. */
const endsFigure = (tokens: readonly Token[], at: number): boolean => {
  const after = tokens[at];
  if (after === undefined) return true;
  if (after.kind === "mark") return !/^[%/”"″]$/.test(after.text);
  return /^(for|and|until|till|or|then|fan|so|with|before|as|in|inside|at|while|to|all|if|when|on|a|stirring|turning|again|from|throughout|through|it|over)$/.test(
    after.text,
  );
};

/** "bake at 350", "oven to 180", "turn it down to 150", "till it hits 74", "oil to 180": a figure without degrees. */
export const bareFigure = (tokens: readonly Token[], i: number, region: Region): TemperaturePhrase | null => {
  // "Two hundred", "one hundred and eighty".
  const spoken = tokens[i]?.kind !== "number";
  if (spoken && text(tokens, i + 1) !== "hundred") return null;
  const bare = numberAt(tokens, i);
  if (bare === null || (!spoken && bare.next !== i + 1) || bare.value < 20 || bare.value > 550) return null;
  let { value } = bare;
  let to = bare.next;
  // "at 180 to 190", "180-190"
  if (text(tokens, to) === "to" || /^[-‐-―]$/.test(text(tokens, to))) {
    const high = numberAt(tokens, to + 1);
    if (
      high !== null &&
      high.value > value &&
      high.value - value <= 50 &&
      tokens[to + 1]?.kind === "number"
    ) {
      value = (value + high.value) / 2;
      to = high.next;
    }
  }
  if (!endsFigure(tokens, to)) return null;
  // "Bake for 160 or so": minutes and people.
  let lead = i - 1;
  while (
    /^(about|around|roughly|say|least|approx|only|just|below|above|over|under|of)$/.test(text(tokens, lead))
  )
    lead -= 1;
  const prev = text(tokens, lead);
  const core = bareCore(tokens, i, to, value, region);
  if (core !== null) return phrase("core", core, true, i, to);
  const fan = isFan(tokens, i, to);
  const set = (celsius: number): TemperaturePhrase =>
    phrase(
      "setting",
      fan ? celsius + fanDifference : celsius,
      true,
      i,
      to + (text(tokens, to) === "fan" ? 1 : 0),
    );
  if (fan && value >= 90 && value <= 260) return set(value);
  if (value % 5 === 0 && value >= 80 && isBareSetting(tokens, { from: i, to, value, lead }))
    return set(toCelsius(value, guessScale(value, region)));
  if (!/^(to|at|hits|reaches|up|hit|reach|@|reads|,)$/.test(prev)) return null;
  for (const [words, low, high] of bareOf) {
    const scale = value > Math.max(high, 219) ? "F" : "C";
    const degrees = toCelsius(value, scale);
    if (
      degrees >= low &&
      degrees <= high &&
      tokens.slice(Math.max(0, i - 10), i + 4).some((t) => words.test(t.text))
    )
      return set(degrees);
  }
  return null;
};

/** "Until it hits 74", "63 in the middle", "to 55 for pink": °C of the core; null when it is none. */
const bareCore = (
  tokens: readonly Token[],
  i: number,
  to: number,
  value: number,
  region: Region,
): number | null => {
  const fahrenheit = value >= 115 && value <= 212 && (region === "us" || value % 5 === 0);
  const degrees = fahrenheit ? toCelsius(value, "F") : value;
  if (degrees < 45 || degrees > 100) return null;
  if (isToldCore(tokens, i, to)) return degrees;
  if (fahrenheit) return null;
  const until = tokens.slice(Math.max(0, i - 5), i).some((t) => /^(hits|reaches|hit|reach)$/.test(t.text));
  if (until && degrees >= 52 && degrees <= 80 && !tokens.some((t) => liquids.test(t.text))) return degrees;
  const done = /^for (pink|rare|medium|well)\b/.test([0, 1].map((k) => text(tokens, to + k)).join(" "));
  return done && text(tokens, i - 1) === "to" ? degrees : null;
};

/** The words right before or behind a figure say that it is of the middle of the food: "the core hits 52", "63 in the middle". */
const isToldCore = (tokens: readonly Token[], i: number, to: number): boolean => {
  let reached = false;
  for (let at = i - 1; at >= Math.max(0, i - 10); at -= 1) {
    const here = text(tokens, at);
    if (/^[,;:(]$/.test(here) || (/^(until|till|for)$/.test(here) && at < i - 1 && !reached)) break;
    if (/^(hits?|reads?|says|shows|registers?|reach|reaches|gets|is|it's|at|to|want|of)$/.test(here))
      reached = true;
    if (coreWords.has(here) && reached) return true;
  }
  for (let at = to; at < to + 5; at += 1) {
    const here = text(tokens, at);
    if (/^([,;:)]|until|till|then|and|for|to)$/.test(here)) break;
    if (/^(middle|centre|center|inside|core|thickest|throughout)$/.test(here)) return true;
  }
  return false;
};

// "Drop it to 160", "turn down to 150", "then up to 220".
const steering =
  /^(turn|drop|knock|lower|raise|crank|whack|reduce|bring|take|down|up|increase|start|blast|pull)$/;
const ovenWork =
  /^(bake|roast|cook|baked|roasted|cooking|baking|roasting|slow|gas|blast|start|finish|goes|go|into)$/;

/** A bare figure: its tokens, and the word before it that is not "about". */
type Figure = {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  readonly lead: number;
};

/** Whether the words around a bare figure speak of an oven's heat. */
const isBareSetting = (tokens: readonly Token[], { from: i, to, value, lead }: Figure): boolean => {
  const prev = text(tokens, lead);
  if (/^(at|to|on|oven|@)$/.test(prev) || (/^[,(:]$/.test(prev) && isOvenTalk(tokens, i))) {
    if (isOvenTalk(tokens, i)) return true;
    const near = tokens.slice(Math.max(0, i - 8), i);
    if (value >= 100 && near.some((t) => ovenWork.test(t.text) || steering.test(t.text)))
      return prev !== "on";
    // "It wants an hour at 170."
    if (prev === "at" && value >= 110 && tokens.some((t) => isTimeWord(t.text))) return true;
  }
  // "180 for 20 minutes", "then 160 for an hour", "cook it low and slow, 120 or so"
  const opens = lead < 0 || /^(,|then|and|;|by|:)$/.test(prev);
  if (opens && value >= 100 && value <= 500) {
    if (text(tokens, to) === "for" && (lead < 0 || tokens.slice(0, i).some((t) => ovenWork.test(t.text))))
      return true;
    const or = text(tokens, to) === "or" && text(tokens, to + 1) === "so";
    if (or && tokens.slice(0, i).some((t) => /^(slow|oven|bake|roast)$/.test(t.text))) return true;
  }
  return false;
};

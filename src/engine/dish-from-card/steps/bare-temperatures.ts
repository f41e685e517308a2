import { fanDifference } from "../../measure/temperature.ts";
import type { Region } from "../../model/sitting.ts";
import { figureAt } from "./figure-at.ts";
import { isTimeWord, text } from "./read-length.ts";
import {
  fanAround,
  guessScale,
  isFan,
  isToldCore,
  liquids,
  phrase,
  type TemperaturePhrase,
  toCelsius,
} from "./temperature-words.ts";
import type { Token } from "./tokens.ts";

/** What a bare figure may be of, and the figures in °C that it may be then. Common practice, no source. */
type Sort = {
  readonly low: number;
  readonly high: number;
  /** Dials are marked in fives. */
  readonly fives?: boolean;
  /** The country says which scale its dials show; elsewhere a figure too high for °C is °F. */
  readonly dial?: boolean;
};

const sorts: readonly (readonly [words: string, sort: Sort])[] = [
  [
    "oven ovens oven's bake bakes baked baking roast roasts roasted roasting preheat pre-heat preheated shelf crank blast combi broil",
    { low: 80, high: 290, fives: true, dial: true },
  ],
  ["grill barbecue bbq griddle plancha", { low: 120, high: 350, fives: true, dial: true }],
  ["oil fat fryer lard dripping deep-fry deep-fried fry fries fried frying tallow", { low: 60, high: 210 }],
  [
    "sugar syrup caramel toffee fudge jam marmalade nougat honeycomb jelly ball crack setting",
    { low: 40, high: 185 },
  ],
  [
    "milk cream custard chocolate yoghurt yogurt water bath sous vide poach poaching melt temper rewarm cool cooled cools warm curd sabayon yolks stock butter infuse brew pasteurise pasteurize confit drop drops dropped fall falls fell",
    { low: 20, high: 100 },
  ],
  ["hold keep holding held hot hot-hold", { low: 40, high: 95 }],
  ["steam steamer", { low: 60, high: 130 }],
  ["smoke smoker smoking", { low: 10, high: 150 }],
  ["dehydrate dehydrator dry drying plates", { low: 30, high: 95 }],
  ["prove proves proved proving prover proof dough rise ferment", { low: 18, high: 45 }],
  ["fridge refrigerator chill chilled chiller chilling retard", { low: 0, high: 12 }],
  ["freeze freezer frozen freezing churn churning", { low: -40, high: 0 }],
  // Work that is done in an oven as well as elsewhere, and words that steer its heat.
  [
    "cook cooks cooking slow gas start finish goes go into turn knock lower raise whack reduce bring take down up increase pull",
    { low: 100, high: 290, dial: true },
  ],
];

const sortOf: ReadonlyMap<string, Sort> = new Map(
  sorts.flatMap(([words, sort]) => words.split(" ").map((word): [string, Sort] => [word, sort])),
);

/** A place or a thing that a figure may follow at once, or behind a comma: "oven 220", "water bath, 58". */
const places = new Set(
  "oven ovens oven's fryer oil fat grill bath vide fridge freezer chiller smoker dehydrator prover shelf combi steamer temp temperature heat".split(
    " ",
  ),
);

/** Behind a bare figure that is a temperature: the end, a joint, a cue; never a unit or a food. */
const closes = new Set(
  (
    "for and until till or then fan so with before after as in inside at while to all if when once on a stirring turning again from " +
    "throughout through right it over core between max minimum means should by now not no never plus overnight but ordinary " +
    "conventional it'll it's they he she you because"
  ).split(" "),
);

const endsFigure = (tokens: readonly Token[], at: number): boolean => {
  const after = tokens[at];
  if (after === undefined) return true;
  return after.kind === "mark" ? !/^[%/”"″]$/.test(after.text) : closes.has(after.text);
};

const soft = new Set(
  "about around roughly say least approx only just nearly almost somewhere round anything anywhere between barely exactly good ~".split(
    " ",
  ),
);

/** Words right before a figure that make it a temperature of what is spoken of. */
const leads = new Set(
  (
    "at to @ until till hits hit reach reaches reached reads read reading says say shows registers register gets is be are it's oven's up down back " +
    "above below under over past than of exceed exceeds exceeding"
  ).split(" "),
);

/** "It climbs to 60 as it rests", "it will carry on to 60": the heat that is in it, and nobody's work. */
const climbs = new Set("climb climbs climbing creep creeps coast coasts carry carries carrying".split(" "));

const climbsThere = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i - 1; at >= Math.max(0, i - 5); at -= 1) {
    const here = text(tokens, at);
    if (climbs.has(here)) {
      for (let k = at - 1; k >= Math.max(0, at - 4); k -= 1)
        if (/^(until|till|let|when|once)$/.test(text(tokens, k))) return false;
      return true;
    }
    if (!/^(on|up|to|about|around|another|a|further)$/.test(here)) return false;
  }
  return false;
};

/** The figure as °C of a sort; null when it can be none of it. */
const within = (sort: Sort, value: number, region: Region): number | null => {
  if (sort.fives === true && value % 5 !== 0) return null;
  if (sort.dial === true) {
    const degrees = toCelsius(value, guessScale(value, region));
    return degrees >= sort.low && degrees <= sort.high ? degrees : null;
  }
  if (value >= sort.low && value <= sort.high) return value;
  const degrees = toCelsius(value, "F");
  return value > Math.max(sort.high, 100) && degrees >= sort.low && degrees <= sort.high ? degrees : null;
};

/** "bake at 350", "oven to 180", "turn it down to 150", "till it hits 74", "oil to 180": a figure without degrees. */
export const bareFigure = (tokens: readonly Token[], i: number, region: Region): TemperaturePhrase | null => {
  const figure = figureAt(tokens, i);
  if (figure === null || figure.value > 550 || !endsFigure(tokens, figure.next)) return null;
  const { value, next: to, from } = figure;
  let lead = from - 1;
  while (soft.has(text(tokens, lead)) || (text(tokens, lead) === "from" && figure.range)) lead -= 1;
  // "20 to 25, maybe 30": the second of two counts.
  if (tokens[lead - 1]?.kind === "number" && text(tokens, lead) === "to" && text(tokens, lead - 2) !== "gas")
    return null;
  if (climbsThere(tokens, from)) return null;
  const core = value >= 40 ? bareCore(tokens, { from, to, value, lead }, region) : null;
  if (core !== null) return phrase("core", core, true, from, to);
  const fan = isFan(tokens, from, to) || (value >= 90 && fanAround(tokens, from));
  const end = to + (text(tokens, to) === "fan" ? 1 : 0);
  if (fan && value >= 90 && value <= 260)
    return { ...phrase("setting", value + fanDifference, true, from, end), fan: value };
  const degrees = settingOf(tokens, { from, to, value, lead }, region);
  return degrees === null ? null : phrase("setting", degrees, true, from, end);
};

/** A bare figure: its tokens, and the word before it that is not "about". */
type Figure = {
  readonly from: number;
  readonly to: number;
  readonly value: number;
  readonly lead: number;
};

/** °C of a setting, by the nearest word that the figure may be of; null for none. */
const settingOf = (tokens: readonly Token[], figure: Figure, region: Region): number | null => {
  const { from, to, value, lead } = figure;
  const prev = text(tokens, lead);
  const led = leads.has(prev);
  const placed =
    places.has(prev) || (/^[,(:]$/.test(prev) && [1, 2].some((k) => places.has(text(tokens, lead - k))));
  if (!led && !placed && !(lead < 0 || /^(,|then|and|;|by|:|\()$/.test(prev))) return null;
  // "Bake at 180 for 40 minutes" is the oven's; "190, 40 minutes" opens with it.
  const open = !led && !placed;
  if (open) {
    if (value < 100 || value > 500) return null;
    const earlier = lead < 0 || tokens.slice(0, from).some((t) => sortOf.get(t.text)?.dial === true);
    const timed = text(tokens, to) === "for" || (/^[,;]$/.test(text(tokens, to)) && timeBehind(tokens, to));
    const orSo = text(tokens, to) === "or" && text(tokens, to + 1) === "so" && lead >= 0;
    const bracket = prev === "(" && tokens.slice(0, from).some((t) => places.has(t.text));
    if (value % 5 !== 0 || !earlier || !(timed || orSo || bracket)) return null;
    return toCelsius(value, guessScale(value, region));
  }
  if (value < 20 && !/^(at|to|below|under|than|fridge|freezer|chiller|until|till|it's|is)$/.test(prev))
    return null;
  for (let far = 1; far <= 12; far += 1) {
    // What stands behind the figure is asked after the words just before it.
    for (const at of far > 3 ? [from - far, to + far - 4] : [from - far]) {
      if (at < 0 || at >= tokens.length) continue;
      const sort = sortOf.get(text(tokens, at));
      if (sort === undefined || (at > to && at - to > 5)) continue;
      const degrees = within(sort, value, region);
      if (degrees !== null) return degrees;
    }
  }
  // "It wants an hour at 170."
  return prev === "at" && value >= 110 && value % 5 === 0 && tokens.some((t) => isTimeWord(t.text))
    ? toCelsius(value, guessScale(value, region))
    : null;
};

const timeBehind = (tokens: readonly Token[], to: number): boolean => {
  for (let at = to + 1; at < to + 7; at += 1) if (isTimeWord(text(tokens, at))) return true;
  return false;
};

/** "Until it hits 74", "63 in the middle", "ready at 60": °C of the core; null when it is none. */
const bareCore = (tokens: readonly Token[], figure: Figure, region: Region): number | null => {
  const { from, to, value, lead } = figure;
  const fahrenheit = value >= 105 && value <= 212 && (region === "us" || value % 5 === 0 || value > 130);
  const degrees = fahrenheit ? toCelsius(value, "F") : value;
  if (degrees < 40 || degrees > 100) return null;
  if (isToldCore(tokens, from, to)) return degrees;
  if (fahrenheit || degrees < 45 || degrees > 85) return null;
  const prev = text(tokens, lead);
  const wet = (): boolean => tokens.some((t) => liquids.test(t.text));
  const near = (words: RegExp, within: number): boolean =>
    tokens.slice(Math.max(0, from - within), from).some((t) => words.test(t.text));
  if (degrees >= 50 && near(/^(hits|reaches|hit|reach)$/, 5)) return wet() ? null : degrees;
  // "Lamb is ready at 60", "pull it at 54", "take it out at 54".
  if (prev === "at" && near(/^(ready|done|cooked|perfect|pink|rare|pull|out)$/, 4))
    return wet() ? null : degrees;
  if (/^(until|till)$/.test(prev) && degrees >= 50) return wet() ? null : degrees;
  const done = /^for (pink|rare|medium|well)\b/.test([0, 1].map((k) => text(tokens, to + k)).join(" "));
  return done && prev === "to" ? degrees : null;
};

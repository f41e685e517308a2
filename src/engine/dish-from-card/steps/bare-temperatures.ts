import { verbReadings } from "../../larder/techniques.ts";
import { fanDifference } from "../../measure/temperature.ts";
import type { Region } from "../../model/sitting.ts";
import { figureAt } from "./figure-at.ts";
import { isTimeWord, text } from "./read-length.ts";
import {
  fanAround,
  guessScale,
  isFan,
  isReadyAt,
  isToldCore,
  liquids,
  phrase,
  type TemperaturePhrase,
  toCelsius,
} from "./temperature-words.ts";
import type { Token } from "./tokens.ts";
import { nounVerbs } from "./word-sets.ts";

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
  ["oil fat fryer lard dripping deep-fry deep-fried fry fries fried frying tallow", { low: 40, high: 210 }],
  [
    "sugar syrup caramel glaze toffee fudge jam marmalade nougat honeycomb jelly ball crack setting sets",
    { low: 40, high: 185 },
  ],
  [
    "milk cream custard chocolate yoghurt yogurt water bath sous vide poach poaching melt temper rewarm cool cooled cools warm curd sabayon yolks stock butter infuse brew pasteurise pasteurize confit drop drops dropped fall falls fell down heat heats heated reheat flame stir stirring whisk whisking simmer blip",
    { low: 20, high: 100 },
  ],
  ["hold keep holding held hot hot-hold", { low: 40, high: 95 }],
  ["steam steamer", { low: 60, high: 130 }],
  ["smoke smoker smoking", { low: 10, high: 150 }],
  ["dehydrate dehydrator dry drying plates", { low: 30, high: 95 }],
  ["prove proves proved proving prover proof dough rise ferment", { low: 18, high: 45 }],
  ["fridge refrigerator chill chilled chiller chilling retard ice iced down cool", { low: 0, high: 12 }],
  ["freeze freezer frozen freezing churn churning", { low: -40, high: 0 }],
  // Work that is done in an oven as well as elsewhere, and words that steer its heat.
  [
    "cook cooks cooking slow gas start finish goes go into turn knock lower raise whack reduce bring take down up increase pull drop get gets heat heats heated boil",
    { low: 100, high: 290, dial: true },
  ],
];

const sortOf: ReadonlyMap<string, readonly Sort[]> = ((): ReadonlyMap<string, readonly Sort[]> => {
  const found = new Map<string, Sort[]>();
  for (const [words, sort] of sorts)
    for (const word of words.split(" ")) found.set(word, [...(found.get(word) ?? []), sort]);
  return found;
})();

const isDial = (word: string): boolean => sortOf.get(word)?.some((sort) => sort.dial) === true;

/** A place or a thing that a figure may follow at once, or behind a comma: "oven 220", "water bath, 58". */
const places = new Set(
  "oven ovens oven's fryer oil fat grill bath vide fridge freezer chiller smoker dehydrator prover shelf combi steamer temp temperature heat".split(
    " ",
  ),
);

/** Behind a bare figure that is a temperature: the end, a joint, a cue; never a unit or a food. */
const closes = new Set(
  (
    "for and until till or then within fan so with before after as in inside at while to all if when once on a stirring turning again from " +
    "throughout through right it over core between max minimum means should by now not no never plus overnight but ordinary " +
    "conventional it'll it's they he she you because"
  ).split(" "),
);

const endsFigure = (tokens: readonly Token[], from: number, at: number): boolean => {
  const after = tokens[at];
  if (after === undefined) return true;
  if (after.kind === "mark") return !/^[%/”"″]$/.test(after.text);
  if (closes.has(after.text)) return true;
  // "At 121 pour it on", "when the oil hits 180 drop them in": the order follows.
  return (
    /^(at|when|once)$/.test(text(tokens, 0)) &&
    leads.has(text(tokens, from - 1)) &&
    !nounVerbs.has(after.text) &&
    verbReadings(after.text).some((r) => r.form === "base")
  );
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

/** The figure as °C of a sort, a dial in the scale of the country; null when it can be none of it. */
const within = (sort: Sort, value: number, region: Region): number | null => {
  if (sort.fives === true && value % 5 !== 0) return null;
  const degrees = sort.dial === true ? toCelsius(value, guessScale(value, region)) : value;
  return degrees >= sort.low && degrees <= sort.high ? degrees : null;
};

/** A figure too high for a sort in °C, read in °F; null when it can be none of it. */
const withinFahrenheit = (sort: Sort, value: number): number | null => {
  if (sort.dial === true || value <= Math.max(sort.high, 100)) return null;
  const degrees = toCelsius(value, "F");
  return degrees >= sort.low && degrees <= sort.high ? degrees : null;
};

/** "bake at 350", "oven to 180", "turn it down to 150", "till it hits 74", "oil to 180": a figure without degrees. */
export const bareFigure = (tokens: readonly Token[], i: number, region: Region): TemperaturePhrase | null => {
  const figure = figureAt(tokens, i);
  if (figure === null || figure.value > 550) return null;
  const { value, next: to, from } = figure;
  // "Into a 150 oven".
  if (/^ovens?$/.test(text(tokens, to)) && value >= 80 && value % 5 === 0)
    return phrase("setting", toCelsius(value, guessScale(value, region)), true, from, to);
  if (!endsFigure(tokens, from, to)) return null;
  let lead = from - 1;
  // "Oven as hot as it'll go, call it 240."
  if (text(tokens, lead) === "it" && text(tokens, lead - 1) === "call") lead -= 2;
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

const bounds = /^(above|below|under|over|past|than|exceed|exceeds|exceeding)$/;

/** °C of a setting, by the nearest word that the figure may be of; null for none. */
const settingOf = (tokens: readonly Token[], figure: Figure, region: Region): number | null => {
  const { from, to, value, lead } = figure;
  const prev = text(tokens, lead);
  const led = leads.has(prev) || (lead < from - 1 && isDial(prev));
  const placed = places.has(prev) || (/^[,(:]$/.test(prev) && placeBefore(tokens, lead));
  if (!led && !placed) return openFigure(tokens, figure, region);
  if (value < 20 && !/^(at|to|below|under|than|fridge|freezer|chiller|until|till|it's|is)$/.test(prev))
    return null;
  const found = nearest(tokens, from, to, (sort) => within(sort, value, region));
  if (found !== null) return found;
  const other = nearest(tokens, from, to, (sort) => withinFahrenheit(sort, value));
  if (other !== null) return other;
  // "Back up to 85."
  if (prev === "to" && /^(up|down)$/.test(text(tokens, lead - 1)) && value >= 30 && value <= 105)
    return value;
  // "Stir until thick, no hotter than 85."
  if (bounds.test(prev) && value >= 20 && value <= 260) return value;
  // "Serve at 70 plus"; "serve to 70" are people.
  if (prev === "at" && value >= 45 && value <= 95 && /^serve/.test(text(tokens, lead - 1))) return value;
  // "It wants an hour at 170."
  return prev === "at" && value >= 110 && value % 5 === 0 && tokens.some((t) => isTimeWord(t.text))
    ? toCelsius(value, guessScale(value, region))
    : null;
};

/** "The oven, 220", "get the oven really hot, 220". */
const placeBefore = (tokens: readonly Token[], lead: number): boolean => {
  for (let at = lead - 1; at >= lead - 6; at -= 1) {
    if (places.has(text(tokens, at))) return true;
    if (at < lead - 1 && !howHot.test(text(tokens, at + 1))) return false;
  }
  return false;
};

const howHot =
  /^(really|very|properly|nice|good|and|blazing|hot|hottest|low|slow|moderate|medium|full|on|up|high|right|flat|out|as|it'll|it|will|go|goes|can|gets?|wants?|needs?|to|be)$/;

/** What the nearest word makes of a figure; what stands behind it is asked after the words just before it. */
const nearest = (
  tokens: readonly Token[],
  from: number,
  to: number,
  read: (sort: Sort) => number | null,
): number | null => {
  const ask = (at: number): number | null => {
    for (const sort of sortOf.get(text(tokens, at)) ?? []) {
      const degrees = read(sort);
      if (degrees !== null) return degrees;
    }
    return null;
  };
  for (let far = 1; far <= 12; far += 1) {
    const found = ask(from - far) ?? (far > 3 && far < 9 ? ask(to + far - 4) : null);
    if (found !== null) return found;
  }
  return null;
};

/** "190, 40 minutes", "cook it low and slow, 120 or so", "to a dark caramel, 175": a figure without a word that leads to it. */
const openFigure = (tokens: readonly Token[], figure: Figure, region: Region): number | null => {
  const { from, to, value, lead } = figure;
  const prev = text(tokens, lead);
  // "Keep it at a bare simmer, 90ish."
  if (value >= 40 && value <= 100 && prev === "," && text(tokens, to - 1) === "ish")
    return nearest(tokens, from, to, (sort) => (sort.dial === true ? null : within(sort, value, region)));
  // "Keep it just under a simmer, 90 or so."
  if (
    value >= 40 &&
    value < 100 &&
    prev === "," &&
    text(tokens, to) === "or" &&
    text(tokens, to + 1) === "so"
  )
    return tokens.some((t) => /^(simmer|simmering|boil|boiling|warm|hot)$/.test(t.text)) ? value : null;
  if (value < 100 || value > 500 || !(lead < 0 || /^(,|then|and|;|by|:|\()$/.test(prev))) return null;
  const before = tokens.slice(0, from);
  const next = text(tokens, to);
  const ends =
    /^[,.;)]?$/.test(next) || (next === "on" && /^(thermometer|probe|dial)$/.test(text(tokens, to + 2)));
  if (lead >= 0 && ends && prev !== "and") {
    const sugar = nearest(tokens, from, to, (sort) =>
      sort.dial === true ? null : within(sort, value, region),
    );
    if (sugar !== null) return sugar;
  }
  if (value % 5 !== 0 || !(lead < 0 || before.some((t) => isDial(t.text)))) return null;
  const timed =
    next === "for" ||
    (next === "," && timeIn(tokens, to + 1, to + 7)) ||
    (ends && prev === "," && timeIn(tokens, lead - 4, lead));
  const orSo = next === "or" && text(tokens, to + 1) === "so" && lead >= 0;
  const bracket = prev === "(" && before.some((t) => places.has(t.text));
  return timed || orSo || bracket ? toCelsius(value, guessScale(value, region)) : null;
};

const timeIn = (tokens: readonly Token[], from: number, to: number): boolean => {
  for (let at = from; at < to; at += 1) if (isTimeWord(text(tokens, at))) return true;
  return false;
};

/** "Until it hits 74", "63 in the middle", "ready at 60": °C of the core; null when it is none. */
const bareCore = (tokens: readonly Token[], figure: Figure, region: Region): number | null => {
  const { from, to, value, lead } = figure;
  const fahrenheit = value >= 105 && value <= 212 && (region === "us" || value % 5 === 0 || value > 130);
  const degrees = fahrenheit ? toCelsius(value, "F") : value;
  if (degrees < 40 || degrees > 100) return null;
  // Nothing is done at 105 °F; it is a figure in °C, and of a liquid.
  if (fahrenheit && degrees < 48) return null;
  if (isToldCore(tokens, from, to)) return degrees;
  if (fahrenheit || degrees < 45 || degrees > 85) return null;
  const prev = text(tokens, lead);
  const wet = (): boolean => tokens.some((t) => liquids.test(t.text));
  const near = (words: RegExp, within: number): boolean =>
    tokens.slice(Math.max(0, from - within), from).some((t) => words.test(t.text));
  if (degrees >= 50 && near(/^(hits|reaches|hit|reach)$/, 5)) return wet() ? null : degrees;
  if (isReadyAt(tokens, from)) return wet() ? null : degrees;
  if (/^(until|till)$/.test(prev) && degrees >= 50) return wet() ? null : degrees;
  const done = /^for (pink|rare|medium|well)\b/.test([0, 1].map((k) => text(tokens, to + k)).join(" "));
  return done && prev === "to" ? degrees : null;
};

import { celsiusFromFahrenheit, celsiusFromGasMark, fanDifference } from "../../measure/temperature.ts";
import { type Celsius, celsius } from "../../measure/units.ts";
import type { Region } from "../../model/sitting.ts";
import { numberAt } from "./number-at.ts";
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

// A setting within the range that UK oven charts (nannymcphee.co.uk, hintsandthings.co.uk) give each word.
const ovenWords: Readonly<Record<string, number>> = {
  "very cool": 120,
  "very slow": 120,
  "very low": 110,
  cool: 145,
  slow: 150,
  low: 140,
  warm: 160,
  "moderately slow": 160,
  moderate: 180,
  medium: 180,
  "moderately hot": 195,
  "fairly hot": 200,
  quick: 210,
  hot: 215,
  brisk: 215,
  high: 220,
  "very hot": 240,
};

/** The setting that an old heat word means for an oven ("moderate"); null when it is none. */
export const ovenHeat = (heatWord: string): number | null => ovenWords[heatWord] ?? null;

const text = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

const degreeSign = /^[°º˚]$/;

type Scaled = { readonly value: number; readonly scale: "C" | "F" | null; readonly next: number };

/** A figure with its sign and scale: "180C", "180 °C", "350 degrees F", "180 degrees"; null when it is no temperature. */
const scaledAt = (tokens: readonly Token[], i: number): Scaled | null => {
  const figure = numberAt(tokens, i);
  if (figure === null) return null;
  let next = figure.next;
  let marked = false;
  if (/^[-‐-―]$/.test(text(tokens, next)) || text(tokens, next) === "to") {
    const high = numberAt(tokens, next + 1);
    if (high !== null) {
      const rest = scaledAt(tokens, next + 1);
      if (rest !== null && Math.abs(rest.value - figure.value) <= 60)
        return { value: (figure.value + rest.value) / 2, scale: rest.scale, next: rest.next };
    }
  }
  if (degreeSign.test(text(tokens, next)) || /^(deg|degs|degree|degrees)$/.test(text(tokens, next))) {
    marked = true;
    next += 1;
    if (text(tokens, next) === "." || text(tokens, next) === "of") next += 1;
    // "80°-85°F": the scale stands with the second figure.
    const high = /^[-‐-―]$/.test(text(tokens, next)) ? scaledAt(tokens, next + 1) : null;
    if (high !== null && Math.abs(high.value - figure.value) <= 60)
      return { value: (figure.value + high.value) / 2, scale: high.scale, next: high.next };
  }
  const word = text(tokens, next);
  if (/^(c|celsius|centigrade|celcius|℃)$/.test(word))
    return { value: figure.value, scale: "C", next: next + 1 };
  if (/^(f|fahrenheit|farenheit|fahrenhiet|℉)$/.test(word))
    return { value: figure.value, scale: "F", next: next + 1 };
  if (!marked) return null;
  return { value: figure.value, scale: null, next };
};

const toCelsius = (value: number, scale: "C" | "F"): number =>
  scale === "C" ? value : Math.round(celsiusFromFahrenheit(value));

// A bare oven figure: 300 and more is Fahrenheit anywhere; below, what the country's ovens show. Common practice, no source.
const guessScale = (value: number, region: Region): "C" | "F" =>
  value >= 290 || (region === "us" && value >= 120) ? "F" : "C";

const coreWords = new Set(
  "internal internally core middle centre center reads reading read thermometer probe inside thickest registers register".split(
    " ",
  ),
);

/**
 * Every temperature in a run of tokens. Of "180C/350F/gas 4" the first counts; of conventional and fan figures the
 * conventional one, or the fan figure raised by the usual difference.
 */
export const findTemperatures = (tokens: readonly Token[], region: Region): readonly TemperaturePhrase[] => {
  const found: TemperaturePhrase[] = [];
  if (!tokens.some((t) => t.kind === "number" || /^(ovens?|gas|mark|degrees?|deg)$/.test(t.text)))
    return found;
  let i = 0;
  while (i < tokens.length) {
    const one = temperatureAt(tokens, i, region);
    if (one === null) {
      i += 1;
      continue;
    }
    const last = found.at(-1);
    const between = last === undefined ? 99 : i - last.to;
    const joined =
      last !== undefined &&
      between <= 3 &&
      tokens
        .slice(last.to, one.from)
        .every((t) => /^([/(),]|[-‐-―]|or|fan|gas|mark|a|oven|and)$/.test(t.text));
    // "Into a hot oven, 220": the figure says what the word meant.
    // "Gas mark 3, 170 °C": a mark stands for a band, the degrees for themselves.
    const worded = last !== undefined && /^(?:ovens?|gas|mark)$/.test(text(tokens, last.from));
    if (joined) found[found.length - 1] = worded ? { ...one, from: last.from } : { ...last, to: one.to };
    else found.push(one);
    i = Math.max(one.to, i + 1);
  }
  return found;
};

const isOvenTalk = (tokens: readonly Token[], i: number): boolean =>
  tokens
    .slice(Math.max(0, i - 9), i + 8)
    .some((t) =>
      /^(oven|ovens|bake|baked|roast|preheat|pre-heat|preheated|fryer|heat|temperature)$/.test(t.text),
    );

const temperatureAt = (tokens: readonly Token[], i: number, region: Region): TemperaturePhrase | null => {
  const word = text(tokens, i);
  // gas mark 4, gas 4, mark 4, Gas ½
  if (word === "gas" || (word === "mark" && text(tokens, i - 1) !== "gas") || word === "reg") {
    let at = i + 1;
    if (/^(mark|no|number)$/.test(text(tokens, at))) at += 1;
    const mark = numberAt(tokens, at);
    const value = mark === null ? null : celsiusFromGasMark(mark.value);
    if (mark !== null && value !== null) return phrase("setting", value, false, i, mark.next);
    return null;
  }
  const scaled = scaledAt(tokens, i);
  // "Rotate 90 degrees" turns the dough.
  if (
    scaled !== null &&
    scaled.scale === null &&
    /^(rotate|turn|it|dough|by|through)$/.test(text(tokens, i - 1))
  )
    return null;
  if (scaled !== null) {
    const scale =
      scaled.scale ??
      (isOvenTalk(tokens, i)
        ? guessScale(scaled.value, region)
        : scaled.value > 120
          ? guessScale(scaled.value, region)
          : "C");
    // "-18 °C": a dash that stands free before its figure is a minus.
    const dash = tokens[i - 1];
    const minus =
      dash !== undefined &&
      /^[-\u2212\u2013]$/.test(dash.text) &&
      dash.end === tokens[i]?.at &&
      (tokens[i - 2]?.end ?? -1) < dash.at;
    let value = toCelsius(minus ? -scaled.value : scaled.value, scale);
    if (value > 400 || value < -45) return null;
    let to = scaled.next;
    const fan =
      (text(tokens, i - 1) === "at" && text(tokens, i - 2) === "oven" && text(tokens, i - 3) === "fan") ||
      text(tokens, i - 1) === "fan" ||
      (text(tokens, i - 1) === "to" && text(tokens, i - 2) === "fan") ||
      text(tokens, to) === "fan" ||
      (text(tokens, to) === "(" && text(tokens, to + 1) === "fan" && !/\d/.test(text(tokens, to + 2)));
    if (text(tokens, to) === "fan") to += 1;
    if (fan && value >= 80) value += fanDifference;
    const around = tokens.slice(Math.max(0, i - 9), Math.min(tokens.length, to + 6));
    const core =
      value >= 45 &&
      value <= 100 &&
      around.some((t) => coreWords.has(t.text)) &&
      !/^(oven|preheat)$/.test(text(tokens, i - 2));
    return phrase(core ? "core" : "setting", value, scaled.scale === null, i, to);
  }
  // "in a moderate oven", "a very hot oven"
  if (/^ovens?$/.test(word)) {
    const two = `${text(tokens, i - 2)} ${text(tokens, i - 1)}`;
    const heat = ovenWords[two] ?? ovenWords[text(tokens, i - 1)];
    if (heat !== undefined) return phrase("setting", heat, false, i, i + 1);
    return null;
  }
  // "bake at 350", "preheat the oven to 180", "oven to 200"
  if (
    tokens[i]?.kind === "number" &&
    (/^(at|to|on|oven)$/.test(text(tokens, i - 1)) ||
      (/^[,(:]$/.test(text(tokens, i - 1)) && text(tokens, i - 2) === "oven")) &&
    isOvenTalk(tokens, i)
  ) {
    const bare = numberAt(tokens, i);
    if (bare === null || bare.next !== i + 1 || bare.value < 80 || bare.value > 550 || bare.value % 5 !== 0)
      return null;
    if (/^(g|kg|ml|l|minutes?|mins?|portions?|people)$/.test(text(tokens, i + 1))) return null;
    const value = toCelsius(bare.value, guessScale(bare.value, region));
    const fan = text(tokens, i + 1) === "fan";
    return phrase("setting", fan ? value + fanDifference : value, true, i, bare.next + (fan ? 1 : 0));
  }
  return null;
};

const phrase = (
  kind: "setting" | "core",
  value: number,
  scaleAssumed: boolean,
  from: number,
  to: number,
): TemperaturePhrase => ({ kind, celsius: celsius(value), scaleAssumed, from, to });

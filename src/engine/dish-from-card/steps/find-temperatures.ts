import { celsiusFromGasMark, fanDifference } from "../../measure/temperature.ts";
import type { Region } from "../../model/sitting.ts";
import { bareFigure } from "./bare-temperatures.ts";
import { signBefore, spokenFigures } from "./figure-at.ts";
import { numberAt } from "./number-at.ts";
import { text } from "./read-length.ts";
import {
  fanAround,
  guessScale,
  isFan,
  isOvenTalk,
  isReadyAt,
  isToldCore,
  liquids,
  phrase,
  type TemperaturePhrase,
  toCelsius,
} from "./temperature-words.ts";
import type { Token } from "./tokens.ts";

export type { TemperaturePhrase } from "./temperature-words.ts";

// A setting within the range that UK oven charts (nannymcphee.co.uk, hintsandthings.co.uk) give each word.
const ovenWords: ReadonlyMap<string, number> = new Map(
  Object.entries({
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
  }),
);

/** The setting that an old heat word means for an oven ("moderate"); null when it is none. */
export const ovenHeat = (heatWord: string): number | null => ovenWords.get(heatWord) ?? null;

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
      if (rest !== null && Math.abs(rest.value - figure.value) <= 100)
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

const heatWords = new Set([..."oven ovens gas mark degree degrees deg".split(" "), ...spokenFigures]);

/**
 * Every temperature in a run of tokens. Of "180C/350F/gas 4" the first counts; of conventional and fan figures the
 * conventional one, or the fan figure raised by the usual difference.
 */
export const findTemperatures = (tokens: readonly Token[], region: Region): readonly TemperaturePhrase[] => {
  const found: TemperaturePhrase[] = [];
  if (!tokens.some((t) => t.kind === "number" || heatWords.has(t.text))) return found;
  let i = 0;
  while (i < tokens.length) {
    const one = temperatureAt(tokens, i, region);
    if (one === null) {
      i += 1;
      continue;
    }
    const last = found.at(-1);
    const between = last === undefined ? 99 : i - last.to;
    // "Into a hot oven, 220", "a low oven at 150": the figure says what the word meant.
    // "Gas mark 3, 170 °C": a mark stands for a band, the degrees for themselves.
    const worded = last !== undefined && /^(?:ovens?|gas|mark)$/.test(text(tokens, last.from));
    const joined =
      last !== undefined &&
      between <= 3 &&
      tokens
        .slice(last.to, one.from)
        .every(
          (t) => /^([/(),]|[-‐-―]|or|fan|gas|mark|a|oven|and)$/.test(t.text) || (worded && t.text === "at"),
        ) &&
      // "At 180 to a core of 60" are two figures.
      one.kind === last.kind;
    if (joined) found[found.length - 1] = worded ? { ...one, from: last.from } : both(last, one);
    else found.push(one);
    i = Math.max(one.to, i + 1);
  }
  return found;
};

/** Two figures of one heat: the first counts, and one without a fan before one with. */
const both = (first: TemperaturePhrase, second: TemperaturePhrase): TemperaturePhrase =>
  first.fan !== undefined && second.fan === undefined
    ? { ...second, from: first.from }
    : { ...first, to: second.to };

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
    (/^(rotate|turn|it|dough|by|through)$/.test(text(tokens, i - 1)) ||
      tokens.slice(Math.max(0, i - 4), i).some((t) => /^(cut|slice|angle|halve)$/.test(t.text)))
  )
    return null;
  if (scaled !== null) {
    const inner = scaled.scale === null && scaled.value >= 105 && scaled.value <= 212;
    const scale =
      scaled.scale ??
      // "Until 165 degrees inside": no meat is so hot in °C.
      ((inner && isToldCore(tokens, i, scaled.next)) || (scaled.value > 101 && boilsBelow(tokens))
        ? "F"
        : isOvenTalk(tokens, i)
          ? guessScale(scaled.value, region)
          : scaled.value > 120
            ? guessScale(scaled.value, region)
            : "C");
    let value = toCelsius(signBefore(tokens, i) ? -scaled.value : scaled.value, scale);
    if (value > 400 || value < -45) return null;
    let to = scaled.next;
    const fan = isFan(tokens, i, to) || (value >= 90 && fanAround(tokens, i));
    if (text(tokens, to) === "fan") to += 1;
    const own = value;
    if (fan && value >= 80) value += fanDifference;
    const core =
      text(tokens, i - 1) === "core" || (value >= 40 && value <= 100 && isCore(tokens, i, to, value));
    const read = phrase(core ? "core" : "setting", value, scaled.scale === null, i, to);
    return value === own ? read : { ...read, fan: own };
  }
  // "in a moderate oven", "a very hot oven"
  if (/^ovens?$/.test(word)) {
    const two = `${text(tokens, i - 2)} ${text(tokens, i - 1)}`;
    const heat = ovenWords.get(two) ?? ovenWords.get(text(tokens, i - 1));
    if (heat !== undefined) return phrase("setting", heat, false, i, i + 1);
    return null;
  }
  return bareFigure(tokens, i, region);
};

/** "Warm the milk to 110 degrees": no milk is so hot in °C. */
const boilsBelow = (tokens: readonly Token[]): boolean =>
  tokens.some((t) => /^(milk|water|cream|yeast|butter|stock)$/.test(t.text)) &&
  !tokens.some((t) => /^(ovens?|oil|fat|sugar|syrup|caramel|honey|bake|roast|fry)$/.test(t.text));

/** A figure of 45 to 100 °C that the middle of the food must reach, and no heat of an oven, of a bath or of a sauce. */
const isCore = (tokens: readonly Token[], i: number, to: number, value: number): boolean => {
  if (/^(oven|preheat)$/.test(text(tokens, i - 2))) return false;
  if (isToldCore(tokens, i, to)) return true;
  // "Or 70C if you have a probe."
  if (
    /^(if|with|on)$/.test(text(tokens, to)) &&
    tokens.slice(to, to + 6).some((t) => /^(probe|thermometer)$/.test(t.text))
  )
    return true;
  if (value >= 45 && value <= 85 && isReadyAt(tokens, i) && !tokens.some((t) => liquids.test(t.text)))
    return true;
  // "Until it hits 74", where no liquid is spoken of.
  return (
    value >= 52 &&
    value <= 80 &&
    tokens.slice(Math.max(0, i - 4), i).some((t) => /^(hits?|reach|reaches|gets)$/.test(t.text)) &&
    !tokens.some((t) => liquids.test(t.text))
  );
};

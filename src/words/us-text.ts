import { grams, millilitres, usVolume, usWeight } from "#engine/index.ts";
import { numberText } from "./number-text.ts";

const quarters: readonly string[] = ["", "¼", "½", "¾"];

/** "5½", "2¾", "¼"; quarters only, as US kitchens measure. */
const quarterText = (n: number): string => {
  const whole = Math.floor(n);
  const mark = quarters[Math.round((n - whole) * 4)] ?? "";
  return whole === 0 && mark !== "" ? mark : `${numberText(whole)}${mark}`;
};

const joined = (parts: readonly (readonly [number, string])[]): string =>
  parts
    .filter(([n]) => n > 0)
    .map(([n, unit]) => `${quarterText(n)} ${unit}`)
    .join(" ");

/** "4 lb 5½ oz"; empty below an eighth of an ounce. */
export const usWeightText = (weight: number): string => {
  const { pounds, ounces } = usWeight(grams(weight));
  return joined([
    [pounds, "lb"],
    [ounces, "oz"],
  ]);
};

/** "19 gal 3 qt 1 pt 1 c 10 tbsp 2¾ tsp"; empty below an eighth of a teaspoon. */
export const usVolumeText = (volume: number): string => {
  const { gallons, quarts, pints, cups, tablespoons, teaspoons } = usVolume(millilitres(volume));
  return joined([
    [gallons, "gal"],
    [quarts, "qt"],
    [pints, "pt"],
    [cups, "c"],
    [tablespoons, "tbsp"],
    [teaspoons, "tsp"],
  ]);
};

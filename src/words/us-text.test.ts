import { expect, it } from "vitest";
import { usVolumeText, usWeightText } from "./us-text.ts";

it.each([
  [1973.14, "4 lb 5½ oz"],
  [28.35, "1 oz"],
  [453.6, "1 lb"],
  [8, "¼ oz"],
  [2, ""],
])("%s g is %s", (weight, text) => {
  expect(usWeightText(weight)).toBe(text);
});

it.each([
  [75632.5, "19 gal 3 qt 1 pt 1 c 10 tbsp 2¾ tsp"],
  [946.36, "1 qt"],
  [240, "1 c ¾ tsp"],
  [0.3, ""],
])("%s ml is %s", (volume, text) => {
  expect(usVolumeText(volume)).toBe(text);
});

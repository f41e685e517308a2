import { expect, it } from "vitest";
import { readCard } from "#engine/index.ts";
import { grams } from "../measure/units.ts";
import { bigPiecesAmong, bigPiecesAtSize } from "./big-pieces.ts";

const jointOn = (line: string, method = "Roast at 180°C for 2 hours.") => {
  const dish = readCard(`Sunday\n\nServes 6\n\n${line}\n\nMethod\n1. ${method}\n`, "sunday").value;
  const found = bigPiecesAmong(
    dish,
    dish.ingredients.map((i) => i.index),
    dish.steps.flatMap((s) => s.actions),
  );
  return found === null ? null : found.counted ? [found.grams, found.count] : found.grams;
};

it.each([
  ["2 kg pork shoulder", 2000],
  ["1.5 kg beef topside", 1500],
  ["2 kg lamb shoulder, tied", 2000],
  ["1 kg pork shoulder, cut into pieces", null],
  ["900 g braising steak", null],
  ["1 kg beef mince", null],
  ["1.5 kg chicken thighs", null],
  ["12 chicken thighs", null],
  ["2 chickens, about 1.6 kg each", [1600, 2]],
  ["2.5 kg rolled pork loin", 2500],
  ["1.5 kg pork loin chops", null],
  ["3 kg beef rib", 3000],
  ["400 g pork shoulder", null],
  ["2 kg potatoes", null],
])("%s: a joint of %s g", (line, weight) => {
  expect(jointOn(line)).toEqual(weight);
});

it("is none once the method has cut it up", () => {
  expect(jointOn("2 kg pork shoulder", "Dice the pork. Roast at 180°C for 2 hours.")).toBeNull();
});

it.each([
  [0.5, 1000],
  [1, 2000],
  [1.5, 3000],
  [2, 2000],
  [5, 2000],
  [2.5, 2500],
])("at %s times the card one of 2 kg is one of %s g", (factor, weight) => {
  const joint = { grams: grams(2000), count: 1, counted: false };
  expect(bigPiecesAtSize(joint, factor).grams).toBeCloseTo(weight, 6);
});

it.each([
  [0.5, 1],
  [1, 2],
  [1.2, 3],
  [5, 10],
])("at %s times the card two birds are %s, none heavier", (factor, many) => {
  const birds = { grams: grams(1600), count: 2, counted: true };
  expect(bigPiecesAtSize(birds, factor)).toEqual({ grams: 1600, count: many });
});

import { describe, expect, it } from "vitest";
import { count } from "../measure/units.ts";
import type { KitchenTin } from "../model/sitting.ts";
import { type CardTins, tinFrom } from "./card-tins.ts";
import { tinsAShelf } from "./tins.ts";
import { tinsTaken } from "./tins-taken.ts";

const tin = (
  form: KitchenTin["form"],
  wideCm: number,
  many: number,
  longCm: number = wideCm,
): KitchenTin => ({ name: `${form} ${wideCm}`, form, wideCm, longCm, count: count(many) });

const card = (words: string, many = 1): CardTins => {
  const read = tinFrom(words);
  if (read === null) throw new Error(words);
  return { tin: read, loaf: words.includes("loaf"), count: many, name: words };
};

describe("the tins of a card in a kitchen", () => {
  const taken = (words: string, factor: number, tins: readonly KitchenTin[]) => {
    const found = tinsTaken(card(words), factor, { tins });
    return [found.here?.name ?? null, found.tins, Number(found.deeper.toFixed(3)), found.same];
  };

  it.each([
    ["the same", "23 cm round tin", 2, [tin("round", 20, 4), tin("round", 23, 4)], ["round 23", 2, 1, true]],
    ["nine inches are 23 cm", "9-inch tin", 1, [tin("round", 23, 1)], ["round 23", 1, 1, true]],
    // Floors of 15 and 20 cm are 177 and 314 cm² (geometry): 20 → 23 cm round is 1.3225 times the floor.
    [
      "the nearest floor",
      "23 cm round tin",
      1,
      [tin("round", 20, 2), tin("round", 30, 2)],
      ["round 20", 1, 1.323, false],
    ],
    ["two for three", "23 cm round tin", 3, [tin("round", 20, 9)], ["round 20", 4, 0.992, false]],
    // Round to square of the same width is 4/π the floor.
    ["square for round", "20 cm round tin", 1, [tin("square", 20, 1)], ["square 20", 1, 0.785, false]],
    ["none that is near", "23 cm round tin", 1, [tin("round", 10, 9)], [null, 1, 1, false]],
    ["no cake in a loaf tin", "20 cm round tin", 1, [tin("loaf", 11, 9, 21)], [null, 1, 1, false]],
    [
      "a two-pound loaf",
      "2 lb loaf tin",
      1,
      [tin("square", 15, 1), tin("loaf", 11, 2, 21)],
      ["loaf 11", 1, 1, true],
    ],
    ["an empty list", "20 cm round tin", 1, [], [null, 1, 1, false]],
  ] as const)("%s", (_, words, factor, tins, expected) => {
    expect(taken(words, factor, tins)).toEqual(expected);
  });

  it("are its own where the kitchen lists none", () => {
    expect(tinsTaken(card("23 cm round tin"), 3, {})).toMatchObject({ tins: 3, here: null, same: true });
  });

  it("hold what the card's hold: floors × depth", () => {
    for (const factor of [0.5, 1, 2.3, 7, 40]) {
      const own = card("23 cm round tin", 2);
      const { tins, deeper } = tinsTaken(own, factor, { tins: [tin("round", 20, 50)] });
      expect((tins * deeper * 20 ** 2) / (2 * factor * 23 ** 2)).toBeCloseTo(1, 9);
    }
  });
});

// A shelf is a GN 1/1, 530 × 325 mm (EN 631-1), with two centimetres between: geometry.
it.each([
  ["15 cm round tin", 6],
  ["20 cm round tin", 2],
  ["30 cm round tin", 1],
  ["2 lb loaf tin", 4],
  ["33 x 23 cm tin", 1],
])("%s: %s a shelf", (words, many) => {
  expect(tinsAShelf(card(words).tin)).toBe(many);
});

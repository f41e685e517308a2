import { describe, expect, it } from "vitest";
import { readCard } from "#engine/index.ts";
import { cardText } from "../help/card-text.ts";

const lines = [
  "500 g strong white flour",
  "120 g walnuts",
  "200 ml double cream",
  "12 chicken thighs",
  "500 ml chicken stock",
  "2 tbsp honey",
  "100 g butter",
];
const steps = [
  "Mix the flour, walnuts, honey and butter.",
  "Add the cream, thighs and stock and simmer for 40 minutes.",
];

const swapOf = (words: string) => {
  const { value, findings } = readCard(cardText(lines, steps, `Swaps\n\n${words}\n`), "card");
  return {
    swaps: value.swaps.map((s) => ({
      needs: s.needs,
      out: s.out.map((i) => value.ingredients[i]?.name),
      comes: s.comes.map((c) => [c.food, c.grams === null ? "same" : Math.round(c.grams.likely)]),
    })),
    lost: findings.filter((f) => f.code === "swap-not-understood").length,
  };
};

describe("swaps", () => {
  it.each([
    [
      "Without nuts: replace the walnuts with the same weight of sunflower seeds.",
      ["no-nuts"],
      ["walnuts"],
      [["sunflower-seed", "same"]],
    ],
    [
      "Coeliac: replace the flour with the same weight of gluten-free flour.",
      ["coeliac"],
      ["strong white flour"],
      [["gluten-free-flour", "same"]],
    ],
    [
      "For coeliacs use gluten-free flour.",
      ["coeliac"],
      ["strong white flour"],
      [["gluten-free-flour", "same"]],
    ],
    [
      "Without milk, replace the cream with 200 g oat cream.",
      ["no-milk"],
      ["double cream"],
      [["oat-cream", 200]],
    ],
    [
      "To make it vegan, use oat cream instead of the double cream.",
      ["vegan"],
      ["double cream"],
      [["oat-cream", "same"]],
    ],
    [
      "Vegan or dairy-free: use oat cream instead of the cream.",
      ["vegan", "no-milk"],
      ["double cream"],
      [["oat-cream", "same"]],
    ],
    [
      "Vegetarian: swap the thighs for butternut squash, and the stock for vegetable stock.",
      ["vegetarian"],
      ["chicken thighs", "chicken stock"],
      [
        ["butternut-squash", "same"],
        ["vegetable-stock", "same"],
      ],
    ],
    [
      "Vegan: replace the butter with half the weight of olive oil.",
      ["vegan"],
      ["butter"],
      [["olive-oil", 50]],
    ],
    ["Nut allergy: leave out the walnuts.", ["no-nuts"], ["walnuts"], []],
    ["No nuts? Leave them out.", ["no-nuts"], ["walnuts"], []],
    ["No nuts: pumpkin seeds instead.", ["no-nuts"], ["walnuts"], [["pumpkin-seed", "same"]]],
    ["Vegan? Use olive oil for the butter.", ["vegan"], ["butter"], [["olive-oil", "same"]]],
    ["The cream can be left out for dairy-free guests.", ["no-milk"], ["double cream"], []],
    [
      "If someone can't eat nuts, use pumpkin seeds instead of the walnuts.",
      ["no-nuts"],
      ["walnuts"],
      [["pumpkin-seed", "same"]],
    ],
    [
      "The walnuts can be swapped for the same weight of pumpkin seeds if nuts are a problem.",
      ["no-nuts"],
      ["walnuts"],
      [["pumpkin-seed", "same"]],
    ],
  ])("%s", (words, needs, out, comes) => {
    expect(swapOf(words)).toEqual({ swaps: [{ needs, out, comes }], lost: 0 });
  });

  it("reads each change of a sentence by itself", () => {
    expect(swapOf("Vegetarian: leave out the thighs and use vegetable stock.").swaps).toEqual([
      { needs: ["vegetarian"], out: ["chicken thighs"], comes: [] },
      { needs: ["vegetarian"], out: ["chicken stock"], comes: [["vegetable-stock", "same"]] },
    ]);
    expect(swapOf("Vegan: swap the butter for olive oil; the cream for oat cream.").swaps).toHaveLength(2);
  });

  it("takes nothing in that the guest may not have, and no line by half", () => {
    expect(swapOf("Vegan: use double cream instead of the butter.")).toEqual({ swaps: [], lost: 1 });
    expect(swapOf("Swap half the walnuts for pumpkin seeds.")).toEqual({ swaps: [], lost: 1 });
  });

  it.each(["Halal: see the other kitchen.", "Replace the moon with cheese.", "Vegan: replace the honey."])(
    "says that it did not understand %j",
    (words) => {
      expect(swapOf(words)).toEqual({ swaps: [], lost: 1 });
    },
  );
});

const keepOf = (words: string) => {
  const { value, findings } = readCard(cardText(lines, steps, `Keeping\n\n${words}\n`), "card");
  return {
    keeping: value.keeping.map((k) => [k.where, k.minutes.likely / 60, k.afterStep]),
    lost: findings.filter((f) => f.code === "keeping-not-understood").length,
  };
};

describe("keeping", () => {
  it.each([
    ["Keeps 3 days in the fridge.", [["fridge", 72, null]]],
    ["2 days in the fridge.", [["fridge", 48, null]]],
    ["Better the next day: 4 days in the fridge, no trouble.", [["fridge", 96, null]]],
    ["Can be made a day ahead up to the end of step 1.", [["fridge", 24, 0]]],
    ["Holds warm an hour.", [["hot", 1, null]]],
    ["Holds hot for 45 minutes, covered.", [["hot", 0.75, null]]],
    ["Freezes well for 3 months.", [["freezer", 2160, null]]],
    ["Keeps a week in an airtight tin.", [["room", 168, null]]],
    [
      "Keeps 2 days in the fridge or 1 month in the freezer.",
      [
        ["fridge", 48, null],
        ["freezer", 720, null],
      ],
    ],
    ["Keeps overnight in the fridge before step 2.", [["fridge", 10, 0]]],
    ["Step 1 can be done 3 days ahead.", [["fridge", 72, 0]]],
    ["Make the dough the day before.", [["fridge", 24, null]]],
    ["Keeps a good fortnight in a jar.", [["room", 336, null]]],
    ["Chill within 90 minutes and keep up to 2 days.", [["fridge", 48, null]]],
    ["Keeps in the fridge for 2 days, don't freeze it.", [["fridge", 48, null]]],
    ["Best eaten on the day.", []],
  ])("%s", (words, keeping) => {
    expect(keepOf(words)).toEqual({ keeping, lost: 0 });
  });

  it("says that it did not understand what names no time", () => {
    expect(keepOf("Best eaten with friends.")).toEqual({ keeping: [], lost: 1 });
  });

  it("has nothing to say about what is not to be kept", () => {
    expect(keepOf("Does not freeze.")).toEqual({ keeping: [], lost: 0 });
  });

  it("takes a point of the method from which the dish can wait for keeping, and for no work", () => {
    const { value } = readCard(
      cardText(lines, [`${steps[0]} (It can be made to this point a day ahead.)`, steps[1] ?? ""]),
      "card",
    );
    expect(value.keeping.map((k) => [k.where, k.minutes.likely, k.afterStep])).toEqual([["fridge", 1440, 0]]);
    expect(value.steps[0]?.actions.map((a) => a.technique)).toEqual(["mix"]);
  });
});

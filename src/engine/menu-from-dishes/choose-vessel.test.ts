import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scaleCard } from "#engine/index.ts";
import { bareAction, nowhere } from "../../../test/help/bare.ts";
import { dish, ingredient, sitting } from "../../../test/help/dishes.ts";
import { count, share } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import type { Kitchen } from "../model/sitting.ts";
import { chooseVessels } from "./choose-vessel.ts";
import { kitchenWork } from "./kitchen-work.ts";

const kitchen: Kitchen = {
  ...sitting([], 1).kitchen,
  pans: [
    { name: "stockpot", litres: 16, count: count(1) },
    { name: "saucepan", litres: 3, count: count(2) },
    { name: "large pan", litres: 8, count: count(1) },
  ],
  containers: [
    { size: "GN 1/1 65", litres: 7.4, areaCm2: 1722.5, count: count(2) },
    { size: "GN 1/2 65", litres: 3.5, areaCm2: 861, count: count(2) },
  ],
};

const choose = (
  technique: string,
  station: Action["station"],
  vessel: string | null,
  grams: number,
  factor = 1,
  food = "water",
) =>
  chooseVessels(
    kitchenWork(
      dish("d", 4, [ingredient(0, food, grams)], {
        steps: [
          {
            index: 0,
            text: "",
            span: nowhere,
            part: null,
            phase: "method",
            actions: [
              bareAction("a", technique, {
                station,
                vessel,
                uses: [{ ingredient: 0, product: null, share: share(1), implied: false, span: nowhere }],
              }),
            ],
          },
        ],
      }),
      factor,
      new Map(),
      kitchen,
    ),
    "as-written",
  );

describe("the vessel of an action", () => {
  it.each([
    ["the smallest pan that holds it", "boil", "burner", null, 2000, "saucepan", 1],
    ["a larger one when it is too full", "boil", "burner", null, 2700, "large pan", 1],
    ["the pan that the card names", "boil", "burner", "large pan", 1000, "large pan", 1],
    [
      "a larger one than the card's when it holds no more",
      "boil",
      "burner",
      "large pan",
      9000,
      "stockpot",
      1,
    ],
    ["the largest in turns", "boil", "burner", null, 30_000, "stockpot", 3],
    ["one layer takes more room", "sear", "burner", null, 2000, "stockpot", 2],
    [
      "a pan with more floor when the one that is named is too small",
      "sear",
      "burner",
      "large pan",
      3000,
      "stockpot",
      3,
    ],
    ["a container for what lies deep", "braise", "oven", null, 2500, "GN 1/2 65", 1],
    ["trays for what is spread", "roast", "oven", null, 6000, "", 3],
  ] as const)("%s", (_, technique, station, vessel, grams, name, fillings) => {
    const food = technique === "roast" ? "carrot" : "water";
    expect(choose(technique, station, vessel, grams, 1, food).map((v) => [v.name, v.fillings])).toEqual([
      [name, fillings],
    ]);
  });

  it("holds what goes in, however much it is, and is never over its working fill", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("boil", "sear"),
        fc.integer({ min: 1, max: 5000 }),
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        (technique, grams, factor) => {
          for (const use of choose(technique, "burner", null, grams, factor)) {
            expect(use.fillings * use.holds).toBeGreaterThanOrEqual(use.litres - 1e-6);
            expect(use.fill).toBeLessThanOrEqual(1 + 1e-9);
            if (use.fillings > 1) expect((use.fillings - 1) * use.holds).toBeLessThan(use.litres);
          }
        },
      ),
    );
  });
});

describe("a card in a kitchen", () => {
  const range: Kitchen = {
    ...sitting([], 1).kitchen,
    pans: [
      { name: "stockpot", litres: 16, count: count(2) },
      { name: "large pan", litres: 8, count: count(3) },
      { name: "saucepan", litres: 3, count: count(4) },
      { name: "frying pan", litres: 2.5, count: count(2) },
    ],
    containers: [{ size: "GN 1/1 100", litres: 12.6, areaCm2: 1722, count: count(4) }],
  };
  const used = (text: string, covers: number, where: Kitchen = range) =>
    (scaleCard(text, "card", covers, where).value.sheet?.steps ?? []).flatMap((s) =>
      s.vessels.map((v) => `${v.verb}: ${v.name}`),
    );
  const lamb =
    "Lamb and barley\n\nServes 8\n\n1.6 kg lamb shoulder, diced\n3 tbsp olive oil\n300 g pearl barley\n1.5 litres lamb stock\n\nMethod\n1. Brown the lamb in the oil in a large pan for 10 minutes.\n2. Add the barley and stock, bring to the boil, put the lid on and put it in the oven at 160°C for 2 hours.\n";

  it("braises in the oven in the pot that it came to the boil in", () => {
    expect(used(lamb, 8).slice(-2)).toEqual(["bring to the boil: large pan", "put: large pan"]);
  });

  it("braises in containers when the pot is too high for the oven, where there are any", () => {
    expect(used(lamb, 24).slice(-2)).toEqual(["bring to the boil: stockpot", "put: GN 1/1 100"]);
    expect(used(lamb, 24, { ...range, containers: [] }).slice(-2)).toEqual([
      "bring to the boil: stockpot",
      "put: stockpot",
    ]);
  });

  it("heats fat in the pan that is then fried in", () => {
    const fritters =
      "Fritters\n\nServes 4\n\n300 g sweetcorn\n120 g plain flour\n1.5 litres sunflower oil, for deep-frying\n\nMethod\n1. Mix the sweetcorn and the flour.\n2. Heat the oil to 180°C in a deep pan. Deep-fry spoonfuls in batches for 3 minutes.\n";
    const [heat = "", fry = ""] = used(fritters, 40);
    expect(heat.replace(/^[^:]*/, "")).toBe(fry.replace(/^[^:]*/, ""));
    expect(heat).toContain("stockpot");
  });
});

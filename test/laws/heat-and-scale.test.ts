import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Dish, readCard, type Segment, share } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { guest, sitting } from "../help/dishes.ts";

const card = (name: string, text: string): Dish => readCard(text, name).value;

/** Cards on which every rule of scale has something to say. */
const cards: readonly Dish[] = [
  card(
    "broth",
    "Barley broth\n\nServes 4\n\n150 g pearl barley\n2 carrots, diced\n1 tsp ground cumin\n1 tbsp olive oil\n1.2 litres vegetable stock\nsalt\n\nMethod\n1. Heat the oil in a pan and sweat the carrots for 8 minutes.\n2. Add the cumin, the barley and the stock, bring to the boil and simmer for 40 minutes.\n",
  ),
  card(
    "pilaf",
    "Plain pilaf\n\nServes 6\n\n400 g basmati rice\n20 g butter\n600 ml water\n1 cinnamon stick\n\nMethod\n1. Melt the butter and fry the rice for 3 minutes.\n2. Add the water and the cinnamon, bring to the boil, cover and simmer for 12 minutes.\n",
  ),
  card(
    "fritters",
    "Courgette fritters\n\nServes 4\n\n500 g courgettes, grated\n150 g plain flour\n2 tsp baking powder\n1 litre sunflower oil\n\nMethod\n1. Mix the courgettes, the flour and the baking powder.\n2. Heat the oil to 180°C and deep-fry the fritters for 4 minutes.\n",
  ),
  card(
    "buns",
    "Milk buns\n\nServes 12\n\n500 g strong white flour\n7 g dried yeast\n300 ml milk\n\nMethod\n1. Mix the flour, the yeast and the milk and knead for 10 minutes.\n2. Prove for 1 hour. Bake at 200°C for 20 minutes.\n",
  ),
  card(
    "traybake",
    "Plain traybake\n\nServes 12\n\n300 g self-raising flour\n2 tsp baking powder\n250 g butter\n250 g caster sugar\n5 eggs\n\nMethod\n1. Beat everything together for 3 minutes and spread it out.\n2. Bake at 180°C for 35 minutes.\n",
  ),
  card(
    "muffins",
    "Plain muffins\n\nMakes 12 muffins\n\n300 g plain flour\n3 tsp baking powder\n200 ml milk\n2 eggs\n\nMethod\n1. Stir everything together.\n2. Bake at 190°C for 20 minutes.\n",
  ),
  card(
    "pasta",
    "Buttered pasta\n\nServes 4\n\n400 g spaghetti\n4 litres water\n40 g salt\n60 g butter\n\nMethod\n1. Bring the water to the boil with the salt.\n2. Add the spaghetti and boil for 9 minutes. Drain.\n3. Toss with the butter.\n",
  ),
  card(
    "moulds",
    "Little creams\n\nServes 6\n\n600 ml double cream\n3 leaves of gelatine\n2 tsp sunflower oil, for greasing\n\nMethod\n1. Warm the cream and stir in the gelatine.\n2. Oil six moulds, pour in the cream and chill for 4 hours.\n",
  ),
  card(
    "reduction",
    "Red wine jus\n\nServes 4\n\n1 litre beef stock\n300 ml red wine\n\nMethod\n1. Pour the stock and the wine into a pan and bring to the boil.\n2. Reduce for 25 minutes.\n",
  ),
];

const plain = { guests: [], spare: share(0) };
const menuFor = (dish: Dish, covers: number) =>
  menuFromDishes(sitting([dish.source], covers, plain), [dish]).value;

const amounts = (dish: Dish, covers: number): readonly number[] =>
  menuFor(dish, covers).dishes[0]!.versions[0]!.ingredients.map((m) => m.edible?.likely ?? 0);

/** Minutes of all segments, each as often as it takes a place: burner-minutes, shelf-minutes, hands-minutes. */
const workOf = (dish: Dish, covers: number): number => {
  const { tasks } = prepFromMenu(menuFor(dish, covers)).value;
  const places = ({ uses }: Segment): number =>
    Math.max(1, ...uses.map((u) => (u.resource === "fridge" ? 1 : u.amount)));
  return tasks.flatMap((t) => t.segments).reduce((sum, s) => sum + s.minutes.likely * places(s), 0);
};

const aCard = fc.constantFrom(...cards);
const someCovers = fc.integer({ min: 1, max: 150 });

describe("amounts that do not go in step", () => {
  it("give the card back at its own covers", () => {
    for (const dish of cards) {
      const [version] = menuFor(dish, dish.portions!.likely).dishes[0]!.versions;
      version!.ingredients.forEach((m) => {
        const line = dish.ingredients.find((i) => i.index === m.ingredient)!;
        expect(m.adjusted).toEqual([]);
        const own = line.weightBasis === "as-purchased" ? m.asPurchased : m.edible;
        expect(own).toEqual(line.grams);
      });
    }
  });

  it("never need less for more covers", () => {
    fc.assert(
      fc.property(aCard, someCovers, fc.integer({ min: 1, max: 60 }), (dish, covers, more) => {
        const small = amounts(dish, covers);
        amounts(dish, covers + more).forEach((n, i) => {
          expect(n).toBeGreaterThanOrEqual(small[i]! * (1 - 1e-9));
        });
      }),
    );
  });

  it("are card × factor × what was adjusted, line by line, and each adjustment is told", () => {
    fc.assert(
      fc.property(aCard, someCovers, (dish, covers) => {
        const { value, findings } = menuFromDishes(sitting([dish.source], covers, plain), [dish]);
        const { factor, ingredients } = value.dishes[0]!.versions[0]!;
        for (const m of ingredients) {
          const line = dish.ingredients.find((i) => i.index === m.ingredient)!;
          const times = m.adjusted.reduce((product, a) => product * a.factor, factor);
          const own = line.weightBasis === "as-purchased" ? m.asPurchased : m.edible;
          if (line.grams !== null && own !== null)
            expect(own.likely).toBeCloseTo(line.grams.likely * times, 6);
          const told = findings.some((f) => f.code === "amount-adjusted" && f.facts.name === line.name);
          // Whole eggs are told once for their part.
          const besides = m.adjusted.filter((a) => a.reason !== "whole-pieces");
          expect(told).toBe(besides.some((a) => Math.abs(a.factor - 1) >= 0.03));
        }
      }),
    );
  });

  it("are the same in a card that dishes use and in the dishes that take of it", () => {
    const stock = card(
      "stock",
      "Brown stock\n\nMakes 4 litres\n\n2 kg chicken wings\n5 litres water\n1 tsp black pepper\n\nMethod\n1. Put the wings, the pepper and the water in a pot and bring to the boil.\n2. Simmer for 3 hours. Strain.\n",
    );
    const soup = card(
      "soup",
      "Barley soup\n\nServes 4\n\n100 g pearl barley\n1 litre brown stock\n\nMethod\n1. Bring the stock to the boil with the barley and simmer for 40 minutes.\n",
    );
    fc.assert(
      fc.property(someCovers, fc.integer({ min: 1, max: 60 }), (covers, more) => {
        const at = (n: number) => menuFromDishes(sitting(["soup"], n, plain), [soup, stock]).value;
        const small = at(covers);
        const large = at(covers + more);
        const [made] = small.components;
        expect(made?.dish.source).toBe("stock");
        const taken = small.dishes[0]!.versions[0]!.ingredients.filter((m) => m.card === "stock");
        made!.ingredients.forEach((m, i) => {
          expect(taken[i]!.edible!.likely).toBeCloseTo(m.edible!.likely, 6);
          const line = stock.ingredients.find((l) => l.index === m.ingredient)!;
          const times = m.adjusted.reduce((product, a) => product * a.factor, made!.factor);
          if (line.weightBasis === "edible-portion")
            expect(m.edible!.likely).toBeCloseTo(line.grams!.likely * times, 6);
          const later = large.components[0]!.ingredients[i]!;
          expect(later.edible!.likely).toBeGreaterThanOrEqual(m.edible!.likely * (1 - 1e-9));
        });
      }),
    );
  });

  it("hold for what a swap brings in for one line", () => {
    const soup = card(
      "swapped",
      "Leek soup\n\nServes 4\n\n300 g leeks\n1 litre chicken stock\n\nMethod\n1. Put the leeks in the stock, bring to the boil and simmer for 30 minutes.\n\nSwaps\n\nVegetarian: replace the chicken stock with the same weight of vegetable stock.\n",
    );
    const { dishes } = menuFromDishes(
      sitting(["swapped"], 40, { ...plain, guests: [guest("Ada", "vegetarian")] }),
      [soup],
    ).value;
    const [written, swapped] = dishes[0]!.versions;
    const of = (food: string, version = written!) => version.ingredients.find((m) => m.food === food)!;
    expect(of("chicken-stock").adjusted).toHaveLength(1);
    expect(of("vegetable-stock", swapped!).adjusted).toEqual(of("chicken-stock").adjusted);
  });

  const times = (dish: Dish, covers: number, food: string): number =>
    menuFor(dish, covers)
      .dishes[0]!.versions[0]!.ingredients.find((m) => m.food === food)!
      .adjusted.reduce((product, a) => product * a.factor, 1);

  it.each([
    ["stock in a bigger pot boils away less", 0, 40, "vegetable-stock", 0.75, 0.99],
    ["stock in a small one more", 0, 1, "vegetable-stock", 1.01, 1.5],
    ["rice takes up what it takes up: the water only falls by what boils away", 1, 60, "water", 0.9, 0.999],
    ["spice is held back", 0, 40, "cumin-seed", 0.85, 0.85],
    ["yeast is held back", 3, 120, "dried-yeast", 0.85, 0.85],
    ["raising powder is held back a little in a layer", 4, 120, "baking-powder", 0.9, 0.9],
    ["but not in pieces that stay as they are", 5, 120, "baking-powder", 1, 1],
    ["nor in what is fried by the spoonful", 2, 40, "baking-powder", 1, 1],
    ["deep fat is half the largest pan, and what is taken up beyond it", 2, 40, "sunflower-oil", 0.4, 0.5],
    ["and no more than in step as long as the pan holds it", 2, 12, "sunflower-oil", 1, 1],
    ["water that is drained off is used again when the pots are full", 6, 240, "water", 0.01, 0.5],
    ["and its salt with it", 6, 240, "salt", 0.01, 0.5],
    ["but what is cooked in it is not", 6, 240, "spaghetti", 1, 1],
    ["while the pots hold it, water goes by what it must cover", 6, 8, "water", 0.7, 0.95],
    ["a mould is greased whole, if half of it is filled", 7, 3, "sunflower-oil", 1, 1],
    ["and one for one portion of the six", 7, 1, "sunflower-oil", 1, 1],
    ["gelatine goes with what it sets", 7, 120, "leaf-gelatine", 1, 1],
    ["oil that films a pan goes by its surface", 0, 32, "olive-oil", 0.5, 0.5],
    ["flour goes in step", 3, 120, "strong-white-flour", 1, 1],
  ] as const)("%s", (_, place, covers, food, low, high) => {
    const found = times(cards[place]!, covers, food);
    expect(found).toBeGreaterThanOrEqual(low - 1e-9);
    expect(found).toBeLessThanOrEqual(high + 1e-9);
  });
});

describe("the work", () => {
  it("is never less for more covers", () => {
    fc.assert(
      fc.property(aCard, someCovers, fc.integer({ min: 1, max: 60 }), (dish, covers, more) => {
        expect(workOf(dish, covers + more)).toBeGreaterThanOrEqual(workOf(dish, covers) * (1 - 1e-9));
      }),
      { numRuns: 60 },
    );
  });

  it("has every stated time as the card has it at its own covers", () => {
    for (const dish of cards) {
      const { findings } = prepFromMenu(menuFor(dish, dish.portions!.likely));
      expect(findings.filter((f) => f.code === "time-carried")).toEqual([]);
    }
  });
});

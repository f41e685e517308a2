import fc from "fast-check";
import { count, type Dish, type Kitchen, readCard } from "#engine/index.ts";
import { sitting } from "./dishes.ts";

/** Lines by what is done to them, in words that a card has. */
const bases = ["3 onions, chopped", "2 leeks, sliced", "400 g carrots, diced", "4 cloves of garlic, crushed"];
const bodies = ["400 g red lentils", "12 chicken thighs", "600 g potatoes, diced", "500 g mushrooms, sliced"];
const liquids = ["1 litre chicken stock", "800 ml vegetable stock", "500 ml water", "600 ml whole milk"];
const seasonings = [
  "1 tsp ground cumin",
  "1 tsp salt",
  "a pinch of cayenne",
  "2 tsp cornflour",
  "8 peppercorns",
];

const fats = ["2 tbsp olive oil", "30 g butter"];

/** What may come at the end of a method. */
const ends = [
  "Simmer for 25 minutes.",
  "Cover and simmer for 40 minutes.",
  "Bring to the boil and simmer for 10 minutes. Blend till smooth.",
  "Put into the oven at 180°C for 50 minutes.",
  "Bring to the boil and reduce for 15 minutes. Strain.",
  "Simmer until it has thickened, about 20 minutes. Serve at once.",
  "Simmer for 12 minutes. Garnish with the leaves and serve.",
  "Simmer for 15 minutes. Cool for an hour, then chill overnight.",
];
const serving = ["", "\nTo serve\n\nLadle into bowls.\n", "\nTo serve\n\nReheat for 10 minutes and serve.\n"];

const poured = (line: string): string => line.replace(/^[\d.]+ (?:ml|litres?) /, "");

/** Cards of one pot, written out: a base that is sweated, a body, a liquid, seasoning, and one of several ends. */
export const writtenCard: fc.Arbitrary<Dish> = fc
  .record({
    serves: fc.integer({ min: 2, max: 12 }),
    fat: fc.constantFrom(...fats),
    base: fc.constantFrom(...bases),
    body: fc.constantFrom(...bodies),
    liquid: fc.constantFrom(...liquids),
    seasoning: fc.constantFrom(...seasonings),
    first: fc.constantFrom("Sweat", "Fry", "Brown"),
    end: fc.constantFrom(...ends),
    serve: fc.constantFrom(...serving),
  })
  .map(({ serves, fat, base, body, liquid, seasoning, first, end, serve }) => {
    const name = (line: string): string =>
      (line.split(",")[0] ?? line)
        .replace(/^[\d.]+ (?:(?:g|tbsp|tsp|cloves) )?(?:of )?/, "")
        .replace(/^a pinch of /, "");
    const lines = [fat, base, body, liquid, seasoning].join("\n");
    const method =
      `1. Heat the ${name(fat)} in a pan. ${first} the ${name(base)} for 8 minutes.\n` +
      `2. Add the ${name(body)}, the ${name(seasoning)} and the ${poured(liquid)}. ${end}\n`;
    return readCard(
      `A pot of something\n\nServes ${serves}\n\n${lines}\n\nMethod\n\n${method}${serve}`,
      "pot",
    ).value;
  });

/** Kitchens from a caravan's to a hotel's. */
export const someKitchen: fc.Arbitrary<Kitchen> = fc
  .record({
    burners: fc.integer({ min: 1, max: 8 }),
    kilowatts: fc.constantFrom(1.5, 2.5, 6),
    pans: fc.array(
      fc.record({ litres: fc.constantFrom(2, 3, 8, 16, 40), many: fc.integer({ min: 1, max: 4 }) }),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
    frying: fc.boolean(),
    trays: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ burners, kilowatts, pans, frying, trays }) => ({
    ...sitting([], 1).kitchen,
    burners: count(burners),
    burnerKilowatts: kilowatts,
    trays: count(trays),
    pans: [
      ...pans.map(({ litres, many }, i) => ({ name: `pan ${i}`, litres, count: count(many) })),
      ...(frying ? [{ name: "frying pan", litres: 2.5, count: count(2) }] : []),
    ],
  }));

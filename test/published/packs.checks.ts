import { partGrams, partsOf } from "#engine/larder/food-parts.ts";
import { roundUpToPack } from "#engine/measure/round-up-to-pack.ts";
import { cover, type Offer } from "#engine/purchase-from-menu/cover.ts";
import { joinParts } from "#engine/purchase-from-menu/join-parts.ts";
import type { Check } from "./check.ts";

const byHand = "Worked by hand over all combinations";

const covering = (need: number, offers: readonly Offer[], counts: readonly number[], why: string): Check => ({
  what: `${need} from ${offers.map((o) => `${o.size} at ${o.price}`).join(", ")}: ${why}`,
  source: byHand,
  run: () => [(cover(need, offers) ?? []).join(" "), counts.join(" ")],
});
const offer = (size: number, price: number): Offer => ({ size, price });

/** Purchase units for 100 servings, by servings a unit: the guide prints them rounded up to a tenth. */
const perHundred: readonly (readonly [food: string, servings: number, units: number])[] = [
  ["artichokes, leaves, lb", 1.49, 67.2],
  ["artichokes, bottoms, lb", 1.38, 72.5],
  ["artichokes, leaves and bottoms, lb", 2.84, 35.3],
  ["artichoke bottoms, No. 300 tin", 5.97, 16.8],
  ["artichoke hearts, No. 300 tin", 4.67, 21.5],
  ["artichoke hearts, frozen, lb", 10.0, 10.0],
  ["black beans, heated, No. 10 tin", 27.8, 3.6],
  ["black beans, heated, No. 10 tin, 3/8 cup", 18.5, 5.5],
  ["black beans, unheated, No. 10 tin", 45.0, 2.3],
  ["black beans, unheated, lb", 10.14, 9.9],
  ["black beans, No. 300 tin", 5.91, 17.0],
  ["black beans, No. 300 tin, 3/8 cup", 3.94, 25.4],
  ["black beans, dry, lb", 18.3, 5.5],
  ["black beans, dry, lb, 3/8 cup", 12.2, 8.2],
  ["black-eyed beans, heated, No. 10 tin", 37.7, 2.7],
  ["black-eyed beans, heated, No. 10 tin, 3/8 cup", 25.1, 4.0],
  ["black-eyed beans, unheated, No. 10 tin", 46.0, 2.2],
  ["black-eyed beans, No. 300 tin", 4.91, 20.4],
  ["black-eyed beans, No. 300 tin, 3/8 cup", 3.27, 30.6],
  ["black-eyed beans, dry, lb", 28.3, 3.6],
  ["black-eyed beans, dry, lb, 3/8 cup", 18.8, 5.4],
  ["green beans, heated, lb", 7.17, 14.0],
  ["green beans, cold, lb", 8.1, 12.4],
];

const tenths = (need: number, servings: number): number => roundUpToPack(need, servings / 10) / 10;

const eggs = () =>
  joinParts(
    [
      { parts: ["yolk"], wholes: 5 },
      { parts: ["white"], wholes: 3 },
    ],
    ["yolk", "white"],
    (part) => (part === "yolk" ? 17 : 33),
  );
const perWhole = (food: string): number => {
  const [part] = partsOf(food, null);
  return part === undefined ? Number.NaN : (partGrams(part, "us") ?? Number.NaN);
};

/** What to buy, against tables and worked cases. */
export const checks: readonly Check[] = [
  covering(6, [offer(5, 900), offer(3, 550)], [0, 2], "largest first would cost 14.50"),
  covering(11, [offer(6, 1000), offer(4, 700)], [2, 0], "least waste alone would cost 21"),
  covering(2300, [offer(1000, 320), offer(2500, 690), offer(500, 190)], [0, 1, 0], "one large pack"),
  covering(700, [offer(1000, 200), offer(400, 120)], [1, 0], "the closer fit would cost 2.40"),
  covering(13, [offer(10, 400), offer(3, 150)], [1, 1], "two of the best value would cost 8"),
  ...perHundred.map(
    ([food, servings, units]): Check => ({
      what: `100 servings of ${food}, at ${servings} a unit`,
      source:
        "USDA Food Buying Guide for Child Nutrition Programs, yield tables, purchase units for 100 servings",
      run: () => [tenths(100, servings), units, 1e-9],
    }),
  ),
  {
    what: "200 quarter cups of apples at 14.80 a pound: 13.6 lb",
    source: "USDA Food Buying Guide for Child Nutrition Programs, worked case for apples",
    run: () => [tenths(200, 14.8), 13.6, 1e-9],
  },
  {
    what: "5 yolks, 3 whites and 2 whole eggs take 7 eggs",
    source: byHand,
    run: () => [2 + eggs().wholes, 7],
  },
  { what: "… and 2 whites are over", source: byHand, run: () => [eggs().over.get("white"), 2] },
  {
    what: "8 yolks of US large eggs weigh 136 g",
    source: "USDA SR28 01125",
    run: () => [8 * perWhole("egg-yolk"), 136, 1],
  },
  {
    what: "8 whites of US large eggs weigh 264 g",
    source: "USDA SR28 01124",
    run: () => [8 * perWhole("egg-white"), 264, 1],
  },
  {
    what: "120 ml of lemon juice and 9 g of zest take 5 lemons",
    source: "USDA SR28 09152 (48 g is 46.5 ml a lemon) and 09156 (2 g of zest)",
    run: () => {
      const joined = joinParts(
        [
          { parts: ["juice"], wholes: (120 * (48 / 46.5)) / perWhole("lemon-juice") },
          { parts: ["zest"], wholes: 9 / perWhole("lemon-zest") },
        ],
        ["juice", "zest"],
        () => 1,
      );
      return [roundUpToPack(joined.wholes, 1), 5];
    },
  },
];

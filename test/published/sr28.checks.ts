import { readSr28 } from "../../scripts/tables/sr28.ts";
import { foods } from "../../src/engine/larder/foods.ts";
import type { Check } from "./check.ts";

type Figure = number | null;

// Food number, description, then kcal, protein, fat, carbohydrate, fibre, sugars (g) and sodium (mg) in 100 g.
const golden: readonly (readonly [string, string, readonly Figure[]])[] = [
  ["01145", "Butter, without salt", [717, 0.85, 81.11, 0.06, 0, 0.06, 11]],
  ["01001", "Butter, salted", [717, 0.85, 81.11, 0.06, 0, 0.06, 643]],
  [
    "01211",
    "Milk, whole, 3.25% milkfat, without added vitamin A and vitamin D",
    [61, 3.15, 3.27, 4.78, 0, 5.05, 43],
  ],
  ["01053", "Cream, fluid, heavy whipping", [340, 2.84, 36.08, 2.74, 0, 2.92, 27]],
  ["01033", "Cheese, parmesan, hard", [392, 35.75, 25.83, 3.22, 0, 0.8, 1376]],
  ["01123", "Egg, whole, raw, fresh", [143, 12.56, 9.51, 0.72, 0, 0.37, 142]],
  ["01124", "Egg, white, raw, fresh", [52, 10.9, 0.17, 0.73, 0, 0.71, 166]],
  ["01125", "Egg, yolk, raw, fresh", [322, 15.86, 26.54, 3.59, 0, 0.56, 48]],
  ["04053", "Oil, olive, salad or cooking", [884, 0, 100, 0, 0, 0, 2]],
  ["20481", "Wheat flour, white, all-purpose, unenriched", [364, 10.33, 0.98, 76.31, 2.7, 0.27, 2]],
  ["20027", "Cornstarch", [381, 0.26, 0.05, 91.27, 0.9, 0, 9]],
  ["19335", "Sugars, granulated", [387, 0, 0, 99.98, 0, 99.8, 1]],
  ["19296", "Honey", [304, 0.3, 0, 82.4, 0.2, 82.12, 4]],
  ["02047", "Salt, table", [0, 0, 0, 0, 0, 0, 38758]],
  ["11282", "Onions, raw", [40, 1.1, 0.1, 9.34, 1.7, 4.24, 4]],
  ["11215", "Garlic, raw", [149, 6.36, 0.5, 33.06, 2.1, 1, 17]],
  ["11124", "Carrots, raw", [41, 0.93, 0.24, 9.58, 2.8, 4.74, 69]],
  ["11143", "Celery, raw", [16, 0.69, 0.17, 2.97, 1.6, 1.34, 80]],
  ["11352", "Potatoes, flesh and skin, raw", [77, 2.05, 0.09, 17.49, 2.1, 0.82, 6]],
  ["11529", "Tomatoes, red, ripe, raw, year round average", [18, 0.88, 0.2, 3.89, 1.2, 2.63, 5]],
  ["11260", "Mushrooms, white, raw", [22, 3.09, 0.34, 3.26, 1, 1.98, 5]],
  ["09003", "Apples, raw, with skin", [52, 0.26, 0.17, 13.81, 2.4, 10.39, 1]],
  ["09150", "Lemons, raw, without peel", [29, 1.1, 0.3, 9.32, 2.8, 2.5, 2]],
  ["09152", "Lemon juice, raw", [22, 0.35, 0.24, 6.9, 0.3, 2.52, 1]],
  ["20420", "Pasta, dry, unenriched", [371, 13.04, 1.51, 74.67, 3.2, 2.67, 6]],
  ["20444", "Rice, white, long-grain, regular, raw, unenriched", [365, 7.13, 0.66, 79.95, 1.3, 0.12, 5]],
  [
    "16056",
    "Chickpeas (garbanzo beans, bengal gram), mature seeds, raw",
    [378, 20.47, 6.04, 62.95, 12.2, 10.7, 24],
  ],
  ["12061", "Nuts, almonds", [579, 21.15, 49.93, 21.55, 12.5, 4.35, 1]],
  ["12155", "Nuts, walnuts, english", [654, 15.23, 65.21, 13.71, 6.7, 2.61, 2]],
  [
    "23342",
    'Beef, loin, tenderloin steak, boneless, separable lean and fat, trimmed to 0" fat, all grades, raw',
    [147, 21.72, 6.67, 0, 0, 0, 44],
  ],
  ["10005", "Pork, fresh, belly, raw", [518, 9.34, 53.01, 0, 0, 0, 32]],
  [
    "05062",
    "Chicken, broiler or fryers, breast, skinless, boneless, meat only, raw",
    [120, 22.5, 2.62, 0, 0, 0, 45],
  ],
  ["05006", "Chicken, broilers or fryers, meat and skin, raw", [215, 18.6, 15.06, 0, 0, 0, 70]],
  [
    "17011",
    'Lamb, domestic, leg, whole (shank and sirloin), separable lean and fat, trimmed to 1/4" fat, choice, raw',
    [230, 17.91, 17.07, 0, 0, null, 56],
  ],
  ["15236", "Fish, salmon, Atlantic, farmed, raw", [208, 20.42, 13.42, 0, 0, 0, 59]],
  ["15164", "Mollusks, mussel, blue, raw", [86, 11.9, 2.24, 3.69, 0, 0, 286]],
  ["15270", "Crustaceans, shrimp, raw (not previously frozen)", [85, 20.1, 0.51, 0, null, null, 119]],
  ["16123", "Soy sauce made from soy and wheat (shoyu)", [53, 8.14, 0.57, 4.93, 0.8, 0.4, 5493]],
  ["14106", "Alcoholic beverage, wine, table, white", [82, 0.07, 0, 2.6, 0, 0.96, 5]],
  ["19904", "Chocolate, dark, 70-85% cacao solids", [598, 7.79, 42.63, 45.9, 10.9, 23.99, 20]],
];

const database = readSr28();

// The food table where it holds the food, else the database as it is read; null stays null.
const figuresOf = (ndb: string): readonly Figure[] | null => {
  const food = foods.find((one) => one.ndb === ndb && one.source === "sr28");
  const n = food?.nutrients ?? database.get(ndb);
  return n === undefined ? null : [n.kcal, n.protein, n.fat, n.carbohydrate, n.fibre, n.sugars, n.sodium];
};

/** Forty foods of the composition table against SR28, figure by figure; a blank of SR28 is unknown, not zero. */
export const checks: readonly Check[] = golden.map(([ndb, description, figures]) => ({
  what: `kcal, protein, fat, carbohydrate, fibre, sugars, sodium mg in 100 g: ${description}`,
  source: `USDA SR28 (2015), ABBREV.txt, food ${ndb}`,
  run: () => [figuresOf(ndb), figures] as const,
}));

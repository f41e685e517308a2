import { exactly, grams, minor, share } from "#engine/index.ts";
import { pieceGrams } from "#engine/larder/food-parts.ts";
import { foodById } from "#engine/larder/foods.ts";
import { divideMoney, priceAtTarget, shareOut, taxOn } from "#engine/measure/money.ts";
import { roundDownToClaim } from "#engine/measure/round-down-to-claim.ts";
import { roundHalfUp } from "#engine/measure/round-half-up.ts";
import { asPurchasedFor, edibleOf } from "#engine/measure/trim.ts";
import type { Check } from "./check.ts";

const pound = 453.59237;
const bought = (edible: number, yields: number): number =>
  asPurchasedFor(exactly(grams(edible)), yields).likely;
const eaten = (asPurchased: number, yields: number): number =>
  edibleOf(exactly(grams(asPurchased)), yields).likely;
const piece = (id: string): number => {
  const food = foodById(id);
  return food === null ? Number.NaN : (pieceGrams(food, "us") ?? Number.NaN);
};

const wall = "G. Wall, Trade Calculations (2007), objective 4";
const fsm = "FSM 2025 Supplement, p. 608";
const openTextbook = "Bakery and Business Math, open textbook, ch. 25";
const culinaryMath = "Culinary mathematics textbook extract, yield problems (title from memory)";
const traster = "D. Traster, Foundations of Cost Control, menu price from cost";
const vat = "HMRC VAT Notice 700, VAT fraction (from memory)";
const sr28 = (ndb: string): string => `USDA SR28 ${ndb}, household weight and refuse`;

/** Yields, prices and tax against worked examples of the trade. */
export const checks: readonly Check[] = [
  {
    what: "striploin 5.2 kg at 4.6/5.2 yields 4.6 kg",
    source: wall,
    run: () => [eaten(5200, 4.6 / 5.2), 4600, 0.01],
  },
  {
    what: "striploin at 11.95/kg costs 13.51 a kilogram trimmed",
    source: wall,
    run: () => [divideMoney(1195 * bought(1, 4.6 / 5.2), 1), 1351],
  },
  {
    what: "85 portions of 170 g need 16.33 kg as bought",
    source: wall,
    run: () => [bought(85 * 170, 4.6 / 5.2) / 1000, 16.33, 0.01],
  },
  {
    what: "5 lb of broccoli florets at 0.81: 6.17 lb as bought",
    source: fsm,
    run: () => [bought(5 * pound, 0.81) / pound, 6.173, 0.001],
  },
  {
    what: "three 12 lb turkeys at 0.47: 16.92 lb",
    source: fsm,
    run: () => [eaten(36 * pound, 0.47) / pound, 16.92, 0.001],
  },
  {
    what: "… in 3 oz portions: 90, rounded down",
    source: fsm,
    run: () => [roundDownToClaim((eaten(36 * pound, 0.47) / pound) * (16 / 3)), 90],
  },
  {
    what: "3 lb of courgette at 0.95: 2.85 lb",
    source: openTextbook,
    run: () => [eaten(3 * pound, 0.95) / pound, 2.85, 0.001],
  },
  {
    what: "5000 g of strawberries at 0.87: 4350 g",
    source: openTextbook,
    run: () => [eaten(5000, 0.87), 4350, 0.001],
  },
  {
    what: "32 oz of pears at 0.78: 41.03 oz as bought",
    source: openTextbook,
    run: () => [bought(32, 0.78), 41.03, 0.01],
  },
  {
    what: "20 lb of cabbage at 0.79: 25.3 lb as bought",
    source: culinaryMath,
    run: () => [bought(20, 0.79), 25.3, 0.05],
  },
  {
    what: "20 lb of beans at 0.88: 17.6 lb",
    source: culinaryMath,
    run: () => [eaten(20, 0.88), 17.6, 0.001],
  },
  {
    what: "… in 4 oz portions: 70, rounded down",
    source: culinaryMath,
    run: () => [roundDownToClaim((eaten(20, 0.88) * 16) / 4), 70],
  },
  {
    what: "3 lb of pared cucumber at factor 1.19: 3.57 lb as bought",
    source: "Armed Forces Recipe Service, conversion factor E.P. to A.P.",
    run: () => [bought(3, 1 / 1.19), 3.57, 0.005],
  },
  {
    what: "lemons yield 45.6 % juice: 36.5 oz of 80",
    source: "Culinary Institute of America, Baking & Pastry (2015), yield box",
    run: () => [eaten(80, 0.456), 36.5, 0.05],
  },
  {
    what: "a medium banana of 118 g, 36 % refuse, is bought as 184.4 g",
    source: sr28("09040"),
    run: () => [piece("banana"), 184.4, 0.1],
  },
  {
    what: "a medium onion of 110 g, 10 % refuse, is bought as 122.2 g",
    source: sr28("11282"),
    run: () => [piece("onion"), 122.2, 0.1],
  },
  {
    what: "a lemon of 58 g flesh, 47 % refuse, is bought as 109 g",
    source: sr28("09150"),
    run: () => [piece("lemon"), 109, 0.5],
  },
  {
    what: "a US large egg of 50 g, 12 % shell, is bought as 56.8 g",
    source: sr28("01123"),
    run: () => [piece("egg"), 56.8, 0.1],
  },
  {
    what: "price at cost 5.71 and 30.2 %",
    source: traster,
    run: () => [priceAtTarget(571, share(0.302)), 1891],
  },
  { what: "price at cost 1.60 and 40 %", source: traster, run: () => [priceAtTarget(160, share(0.4)), 400] },
  {
    what: "price at cost 2.13 and 35.8 %",
    source: "G. Wall, Trade Calculations (2007), objective 8",
    run: () => [priceAtTarget(213, share(0.358)), 595],
  },
  { what: "20 % on 10.00 net", source: vat, run: () => [taxOn(minor(1000), share(0.2)), 200] },
  {
    what: "20 %: tax is a sixth of the gross",
    source: vat,
    run: () => [taxOn(minor(1000), share(0.2)) * 6, 1200],
  },
  {
    what: "12.5 %: tax is a ninth of the gross",
    source: vat,
    run: () => [taxOn(minor(800), share(0.125)) * 9, 900],
  },
  {
    what: "19 %: tax is 19/119 of the gross",
    source: "German Umsatzsteuer, standard rate (from memory)",
    run: () => [taxOn(minor(10000), share(0.19)), (11900 * 19) / 119],
  },
  { what: "1234.5 yen", source: "ISO 4217 minor unit 0, half up", run: () => [roundHalfUp(1234.5), 1235] },
  {
    what: "1.2345 dinar in fils",
    source: "ISO 4217 minor unit 3, half up",
    run: () => [roundHalfUp(1.2345 * 1000), 1235],
  },
  {
    what: "ten seats by largest remainder",
    source: "Largest remainder method with the Hare quota, textbook example (from memory)",
    run: () => [shareOut(minor(10), [47000, 16000, 15900, 12000, 6000, 3100]).join(" "), "5 2 1 1 1 0"],
  },
];

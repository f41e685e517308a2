import { describe, expect, it } from "vitest";
import { costFromPurchase } from "#engine/cost-from-purchase/cost-from-purchase.ts";
import { type Dish, type Finding, type Pack, type PurchaseLine, type Sitting, share } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { purchaseFromMenu } from "#engine/purchase-from-menu/purchase-from-menu.ts";
import { dish, ingredient, pack, pieces, sitting } from "../help/dishes.ts";

const shop = (
  dishes: readonly Dish[],
  covers: number,
  packs: readonly Pack[],
  more: Partial<Sitting> = {},
) => {
  const menu = menuFromDishes(
    sitting(
      dishes.map((d) => d.source),
      covers,
      { packs, ...more },
    ),
    dishes,
  ).value;
  const purchase = purchaseFromMenu(menu);
  return { menu, purchase: purchase.value, findings: purchase.findings };
};

const line = (lines: readonly PurchaseLine[], food: string): PurchaseLine =>
  lines.find((l) => l.food === food)!;
const packsOf = (l: PurchaseLine) => l.packs.map((p) => [p.pack.size, p.count]);
const codes = (findings: readonly Finding[]) => findings.map((f) => f.code);

describe("one list for the whole menu", () => {
  it("buys a food once for all the dishes that use it", () => {
    const tart = dish("tart", 4, [ingredient(0, "unsalted-butter", 150)]);
    const sauce = dish("sauce", 4, [ingredient(0, "unsalted-butter", 90)]);
    const { purchase } = shop([tart, sauce], 4, [pack("unsalted butter", 250, "g", 210)]);
    expect(purchase.lines).toHaveLength(1);
    expect(packsOf(purchase.lines[0]!)).toEqual([[250, 1]]);
    expect(purchase.lines[0]!.leftOver).toBeCloseTo(10);
    expect(purchase.total).toBe(210);
  });

  it("takes a piece on a price list for the whole that a shop sells, never for a sprig or a clove", () => {
    const green = dish("green", 4, [ingredient(0, "parsley", 50), ingredient(1, "garlic", 9)]);
    const { purchase } = shop([green], 4, [pack("parsley", 1, "piece", 90), pack("garlic", 1, "piece", 45)]);
    // A bunch of 28 g and a bulb of 50 g, as data/foods.csv has them.
    expect(purchase.lines.map((l) => [l.food, packsOf(l)])).toEqual([
      ["garlic", [[1, 1]]],
      ["parsley", [[1, 2]]],
    ]);
  });

  it("buys eggs once for whole eggs, yolks and whites, and says what is over", () => {
    const menu = dish("menu", 4, [
      ingredient(0, "egg-yolk", 86.5, pieces(5)),
      ingredient(1, "egg-white", 101.1, pieces(3)),
      ingredient(2, "egg", 102, { ...pieces(2), weightBasis: "edible-portion" }),
    ]);
    const { purchase } = shop([menu], 4, [pack("egg", 6, "piece", 195), pack("egg", 12, "piece", 360)]);
    const eggs = line(purchase.lines, "egg");
    expect(purchase.lines).toHaveLength(1);
    expect(eggs.needed / (51 / 0.88)).toBeCloseTo(7);
    expect(packsOf(eggs)).toEqual([[12, 1]]);
    expect(eggs.partsOver).toMatchObject([{ part: "white" }]);
    expect(eggs.partsOver[0]!.grams).toBeCloseTo(2 * 33.7);
  });

  it("buys exactly a dozen for twelve", () => {
    const cake = dish("cake", 4, [
      ingredient(0, "egg", 12 * 51, { ...pieces(12), weightBasis: "edible-portion" }),
    ]);
    const { purchase } = shop([cake], 4, [pack("egg", 1, "dozen", 360), pack("egg", 6, "piece", 200)]);
    expect(packsOf(purchase.lines[0]!)).toEqual([[1, 1]]);
    expect(purchase.lines[0]!.leftOver).toBeCloseTo(0);
  });

  it("takes juice and zest from the same lemons", () => {
    const curd = dish("curd", 4, [
      ingredient(0, "lemon-juice", 144),
      ingredient(1, "lemon", null, { ...pieces(2), portion: "zest" }),
    ]);
    const { purchase } = shop([curd], 4, [pack("lemon", 1, "piece", 40)]);
    expect(packsOf(line(purchase.lines, "lemon"))).toEqual([[1, 3]]);
  });

  it("buys a part as such when a list has it", () => {
    const meringue = dish("meringue", 4, [ingredient(0, "egg-white", 150)]);
    const { purchase } = shop([meringue], 4, [
      pack("egg white", 500, "g", 320),
      pack("egg", 6, "piece", 195),
    ]);
    expect(purchase.lines).toMatchObject([{ food: "egg-white", needed: 150, bought: 500 }]);
  });

  it("draws water from the tap", () => {
    const soup = dish("soup", 4, [ingredient(0, "water", 2000)]);
    const { purchase, findings } = shop([soup], 4, [pack("water", 1, "l", 90)]);
    expect(purchase.lines).toMatchObject([{ food: "water", free: true, packs: [], cost: 0, leftOver: 0 }]);
    expect(findings).toEqual([]);
  });

  it("buys with what is trimmed off", () => {
    const soup = dish("soup", 4, [ingredient(0, "leek", 880, { weightBasis: "edible-portion" })]);
    const { purchase, menu } = shop([soup], 4, [pack("leek", 1, "kg", 260)]);
    const trim = 880 / menu.dishes[0]!.versions[0]!.ingredients[0]!.asPurchased!.likely;
    expect(purchase.lines[0]!.needed).toBeCloseTo(880 / trim);
    expect(packsOf(purchase.lines[0]!)).toEqual([[1, 2]]);
  });

  it("takes a piece to weigh what the card says it does", () => {
    const soup = dish("soup", 4, [ingredient(0, "celeriac", 1600, { amounts: pieces(2).amounts! })]);
    const { purchase } = shop([soup], 8, [pack("celeriac", 1, "piece", 160)]);
    expect(packsOf(purchase.lines[0]!)).toEqual([[1, 4]]);
  });

  it("does not take a clove for a bulb", () => {
    const stew = dish("stew", 4, [ingredient(0, "garlic", 9, pieces(3, "clove"))]);
    const { purchase } = shop([stew], 4, [pack("garlic", 1, "bulb", 45)]);
    expect(packsOf(purchase.lines[0]!)).toEqual([[1, 1]]);
  });

  it("reads ml by the density of the food", () => {
    const soup = dish("soup", 4, [ingredient(0, "rapeseed-oil", 912)]);
    const { purchase } = shop([soup], 4, [pack("rapeseed oil", 500, "ml", 200)]);
    expect(purchase.lines[0]!.packs[0]!.count).toBe(2);
    expect(purchase.lines[0]!.bought).toBeLessThan(1000);
  });

  it("orders lines by supplier, then shelf", () => {
    const stew = dish("stew", 4, [
      ingredient(0, "salt", 5),
      ingredient(1, "chicken-thigh", 900),
      ingredient(2, "leek", 500),
      ingredient(3, "walnut", 50),
      ingredient(4, "water", 50),
    ]);
    const { purchase, findings } = shop([stew], 4, [
      pack("salt", 750, "g", 65, "Mill"),
      pack("chicken thigh", 1, "kg", 480, "Farm"),
      pack("leek", 1, "kg", 260, "Farm"),
    ]);
    expect(purchase.lines.map((l) => l.food)).toEqual(["leek", "chicken-thigh", "salt", "walnut", "water"]);
    expect(purchase.suppliers).toEqual([
      { name: "Farm", lines: 2, total: 740 },
      { name: "Mill", lines: 1, total: 65 },
    ]);
    expect(findings).toMatchObject([{ code: "price-missing", source: "stew", facts: { grams: 50 } }]);
  });

  it("splits a line between suppliers when that costs least", () => {
    const stew = dish("stew", 4, [ingredient(0, "leek", 7000)]);
    const { purchase } = shop([stew], 4, [
      pack("leek", 5, "kg", 900, "Farm"),
      pack("leek", 2, "kg", 400, "Mill"),
    ]);
    expect(purchase.lines[0]!).toMatchObject({ supplier: "Farm", cost: 1300, leftOver: 0 });
    expect(purchase.suppliers.map((s) => s.total)).toEqual([900, 400]);
  });

  it("matches words that no table knows only with the very same words", () => {
    const tea = dish("tea", 4, [ingredient(0, null, 30, { name: "moon moss" })]);
    const { purchase, findings } = shop([tea], 4, [pack("Moon moss", 50, "g", 300)]);
    expect(purchase.lines).toMatchObject([{ food: null, name: "moon moss", cost: 300 }]);
    expect(codes(findings)).toEqual(["pack-food-unknown"]);
  });

  it("leaves out rows it cannot use, with their place", () => {
    const stew = dish("stew", 4, [ingredient(0, "leek", 500)]);
    const rows = [pack("leek", 1, "armful", 100), pack("leek", 0, "kg", 100), pack("leek", 1, "kg", 260)];
    const { purchase, findings } = shop([stew], 4, rows);
    expect(findings).toMatchObject([
      { code: "pack-unit-unknown", path: "packs/0" },
      { code: "pack-unit-unknown", path: "packs/1" },
    ]);
    expect(purchase.total).toBe(260);
  });

  it("keeps what has no amount on the list, with nothing to buy", () => {
    const stew = dish("stew", 4, [ingredient(0, "salt", null)]);
    const { purchase } = shop([stew], 4, [pack("salt", 750, "g", 65)]);
    expect(purchase.lines).toMatchObject([{ food: "salt", needed: 0, packs: [] }]);
  });
});

describe("what the menu costs", () => {
  it("charges dishes what they use and leaves the rest standing", () => {
    const tart = dish("tart", 4, [ingredient(0, "unsalted-butter", 150)]);
    const sauce = dish("sauce", 4, [ingredient(0, "unsalted-butter", 50)]);
    const { menu, purchase } = shop([tart, sauce], 4, [pack("unsalted butter", 250, "g", 211)]);
    const { value } = costFromPurchase(menu, purchase);
    expect(value.dishes.map((d) => [d.dish, d.used, d.perPortion])).toEqual([
      ["tart", 127, 32],
      ["sauce", 42, 11],
    ]);
    expect(value).toMatchObject({ used: 169, leftOver: 42, bought: 211, perCover: 53 });
  });

  it("prices the menu on all that is bought, and adds tax to one cover", () => {
    const tart = dish("tart", 4, [ingredient(0, "unsalted-butter", 1000)]);
    const { menu, purchase } = shop([tart], 4, [pack("unsalted butter", 1, "kg", 1200)]);
    const { value } = costFromPurchase(menu, purchase);
    expect(value).toMatchObject({ perCover: 300, priceNet: 1000, tax: 200, priceGross: 1200 });
  });

  it("names what has no price, and water is not one of them", () => {
    const tart = dish("tart", 4, [ingredient(0, "walnut", 100), ingredient(1, "water", 100)]);
    const { menu, purchase } = shop([tart], 4, []);
    expect(costFromPurchase(menu, purchase).value.dishes[0]!.unpriced).toEqual(["walnut"]);
  });

  it("has no price without a target or covers", () => {
    const tart = dish("tart", 4, [ingredient(0, "walnut", 100)]);
    for (const more of [{ foodCostTarget: share(0) }, { covers: 0 as never }]) {
      const { menu, purchase } = shop([tart], 4, [pack("walnut", 100, "g", 100)], more);
      expect(costFromPurchase(menu, purchase).value).toMatchObject({ priceNet: 0, tax: 0, priceGross: 0 });
    }
  });
});

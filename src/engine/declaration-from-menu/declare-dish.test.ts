import { describe, expect, it } from "vitest";
import { action, asWritten, dish, line, measured } from "../../../test/help/made-menu.ts";
import { exactly } from "../measure/estimate.ts";
import { grams } from "../measure/units.ts";
import type { KnownSum } from "../model/declaration.ts";
import { declareDish } from "./declare-dish.ts";

const none = new Map();

describe("declaring a dish", () => {
  it("states each group with the ingredient it comes from, by kind", () => {
    const cake = dish("cake", [
      line(0, "flour", "plain-flour", 200),
      line(1, "ground almonds", "almond-flour", 100),
    ]);
    const { value } = declareDish(cake, asWritten(cake), none);
    expect(value.allergens.map((a) => [a.group, a.grade, a.paths[0]?.kind, a.paths[0]?.name])).toEqual([
      ["gluten", "certain", "wheat", "flour"],
      ["nuts", "certain", "almond", "ground almonds"],
    ]);
    expect(value.allergensUs.map((a) => a.name)).toEqual(["tree nuts", "wheat"]);
  });

  it("keeps US and EU lists apart: molluscs and barley are not US allergens, pine nuts are", () => {
    const d = dish("odd", [
      line(0, "mussels", "mussel", 100),
      line(1, "pearl barley", "pearl-barley", 100),
      line(2, "pine nuts", "pine-nut", 20),
    ]);
    const { value } = declareDish(d, asWritten(d), none);
    expect(value.allergens.map((a) => a.group)).toEqual(["gluten", "molluscs"]);
    expect(value.allergensUs.filter((a) => a.grade === "certain").map((a) => a.name)).toEqual(["tree nuts"]);
  });

  it("says that words which were not understood could hold anything", () => {
    const d = dish("odd", [line(0, "moon dust", null, 10), line(1, "carrots", "carrot", 100)]);
    const { value, findings } = declareDish(d, asWritten(d), none);
    expect(value.unknown).toEqual(["moon dust"]);
    expect(findings.map((f) => f.code)).toContain("food-could-hold-anything");
    expect(value.perPortion.fat.complete).toBe(false);
    expect(value.perPortion.fat.missing).toEqual(["moon dust"]);
  });

  it("counts a food that a line only allows as one to check", () => {
    const d = dish("buns", [
      line(0, "sunflower seeds", "sunflower-seed", 50, {
        alternatives: [{ text: "walnuts", food: "walnut", name: "walnuts", amounts: [], grams: null }],
      }),
    ]);
    const nuts = declareDish(d, asWritten(d), none).value.allergens.find((a) => a.group === "nuts");
    expect(nuts?.grade).toBe("check");
    expect(nuts?.paths[0]?.name).toBe("walnuts");
  });

  it("lists by descending weight, equal foods together, what has no weight last", () => {
    const d = dish("stew", [
      line(0, "salt", "salt", null),
      line(1, "onion", "onion", 200),
      line(2, "carrots", "carrot", 200),
      line(3, "more onion", "onion", 150),
      line(4, "butter", "unsalted-butter", 30),
    ]);
    const { value } = declareDish(d, asWritten(d), none);
    expect(value.ingredients.map((i) => i.name)).toEqual(["onion", "carrot", "unsalted butter", "salt"]);
    expect(value.ingredients.map((i) => i.grams)).toEqual([350, 200, 30, 0]);
    expect(value.ingredients[2]?.allergens).toEqual(["milk"]);
    expect(value.ingredients.reduce((sum, i) => sum + i.share, 0)).toBeCloseTo(1, 12);
  });

  it("gives per 100 g what agrees with per portion", () => {
    const d = dish("mash", [line(0, "potatoes", "potato", 800), line(1, "butter", "unsalted-butter", 100)]);
    const { value } = declareDish(d, asWritten(d, 8), none);
    expect(value.portionGrams).toBeCloseTo(225, 9);
    for (const key of Object.keys(value.per100g) as (keyof typeof value.per100g)[]) {
      const per100: KnownSum = value.per100g[key];
      expect((per100.value * value.portionGrams) / 100).toBeCloseTo(value.perPortion[key].value, 9);
    }
  });

  it("does not count what a stock is made from as eaten, and does state its allergens", () => {
    const stock = dish("stock", [
      line(0, "chicken wings", "chicken-wing", 2500),
      line(1, "celery", "celery", 100),
    ]);
    const soup = dish("soup", [line(0, "chicken stock", "chicken-stock", 500, { card: "stock" })]);
    const version = {
      ...asWritten(soup),
      ingredients: stock.ingredients.map((i, at) => ({
        ...measured(i, 0.2),
        ingredient: 0,
        card: "stock",
        cardIngredient: at,
      })),
    };
    const { value } = declareDish(soup, version, new Map([["stock", stock]]));
    expect(value.portionGrams).toBe(125);
    expect(value.allergens.find((a) => a.group === "celery")?.paths[0]?.through).toEqual(["chicken stock"]);
    expect(value.ingredients).toHaveLength(1);
    expect(value.ingredients[0]?.madeOf).toEqual(["chicken wing", "celery"]);
  });

  it("declares the yolk, not the egg, where the card says yolk", () => {
    const yolks = line(0, "egg yolks", "egg", 100, { portion: "yolk" });
    const d = dish("custard", [yolks]);
    const version = {
      ...asWritten(d, 1),
      ingredients: [{ ...measured(yolks), edible: exactly(grams(100)) }],
    };
    const { value } = declareDish(d, version, none);
    expect(value.ingredients[0]?.name).toBe("egg yolk");
    expect(value.perPortion.fat.value).toBeCloseTo(26.54, 2);
  });

  it("does not count drained water as eaten, and does not guess how much frying oil is", () => {
    const boiled = dish(
      "potatoes",
      [line(0, "potatoes", "potato", 800), line(1, "water", "water", 2000), line(2, "salt", "salt", 20)],
      [action("s1a1", "boil", [0, 1, 2]), action("s1a2", "drain", [], ["s1a1"])],
    );
    const { perPortion, portionGrams } = declareDish(boiled, asWritten(boiled), none).value;
    expect(portionGrams).toBe(200);
    expect(perPortion.salt.missing).toEqual(["salt"]);
    expect(perPortion.kilocalories.complete).toBe(true);

    const fried = dish(
      "fritters",
      [line(0, "courgettes", "courgette", 400), line(1, "oil", "sunflower-oil", 1000)],
      [action("s1a1", "heat", [1]), action("s1a2", "deep-fry", [0], ["s1a1"])],
    );
    expect(declareDish(fried, asWritten(fried), none).value.perPortion.fat.missing).toEqual(["oil"]);
  });

  it("does not call a figure unknown for what could not change it, and does for what could", () => {
    const stew = (g: number | null) => {
      const d = dish("stew", [line(0, "potatoes", "potato", 1000), line(1, "moon dust", null, g)]);
      return declareDish(d, asWritten(d), none).value.perPortion;
    };
    expect(stew(0.5).kilocalories.complete).toBe(true);
    expect(stew(5).kilocalories.missing).toEqual(["moon dust"]);
    expect(stew(null).kilocalories.missing).toEqual(["moon dust"]);
    // Of a nutrient of which there is hardly any, half a gram could be most.
    expect(stew(0.5).fat.missing).toEqual(["moon dust"]);
  });
});

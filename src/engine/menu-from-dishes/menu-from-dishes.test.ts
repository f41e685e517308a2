import { describe, expect, it } from "vitest";
import { dish, guest, ingredient, pieces, sitting } from "../../../test/help/dishes.ts";
import { exactly } from "../measure/estimate.ts";
import { count, grams, share } from "../measure/units.ts";
import type { Swap } from "../model/dish.ts";
import { menuFromDishes } from "./menu-from-dishes.ts";

const nowhere = { start: 0, end: 0 };
const swap = (needs: readonly string[], out: readonly number[], food: string): Swap => ({
  text: "",
  span: nowhere,
  needs,
  out,
  comes: [{ food, name: food, grams: null, amounts: [] }],
});
const made = (kind: "volume" | "mass" | "pieces" | "tin", amount: number, noun = "") => ({
  kind,
  amount: exactly(amount),
  noun,
  words: { text: "", span: nowhere },
});
const tart = dish("tart", 8, [ingredient(0, "walnut", 80), ingredient(1, "double-cream", 160)], {
  swaps: [swap(["no-nuts"], [0], "pumpkin-seed"), swap(["no-milk"], [1], "coconut-milk")],
});
const codes = (outcome: { findings: readonly { code: string }[] }) => outcome.findings.map((f) => f.code);

describe("menuFromDishes", () => {
  it("portions a dish for its covers", () => {
    const { value, findings } = menuFromDishes(sitting(["tart"], 24), [tart]);
    const [version] = value.dishes[0]!.versions;
    expect(version).toMatchObject({ id: "as-written", portions: 24, factor: 3 });
    expect(version!.ingredients[0]!.edible!.likely).toBeCloseTo(240);
    expect(findings).toEqual([]);
  });

  it("rounds spare up to whole portions and adds it to the dish as written", () => {
    const guests = [guest("Ann", "no-nuts")];
    const { value } = menuFromDishes(sitting(["tart"], 24, { spare: share(0.05), guests }), [tart]);
    expect(value.dishes[0]!.versions.map((v) => [v.id, v.portions, v.guests])).toEqual([
      ["as-written", 25, []],
      ["no-nuts", 1, ["Ann"]],
    ]);
  });

  it("gives spare to the largest version when nobody has the dish as written", () => {
    const guests = [guest("Ann", "no-nuts"), guest("Ben", "no-nuts")];
    const { value } = menuFromDishes(sitting(["tart"], 2, { spare: share(0.5), guests }), [tart]);
    expect(value.dishes[0]!.versions.map((v) => [v.id, v.portions])).toEqual([["no-nuts", 3]]);
  });

  it("swaps the same weight", () => {
    const { value } = menuFromDishes(sitting(["tart"], 8, { guests: [guest("Ann", "no-nuts")] }), [tart]);
    const version = value.dishes[0]!.versions[1]!;
    expect(version.ingredients.map((m) => [m.food, m.ingredient])).toEqual([
      ["double-cream", 1],
      ["pumpkin-seed", null],
    ]);
    expect(version.ingredients[1]!.edible!.likely).toBeCloseTo(10);
  });

  it("combines swaps for a guest with several needs", () => {
    const { value } = menuFromDishes(sitting(["tart"], 8, { guests: [guest("Ann", "no-nuts", "no-milk")] }), [
      tart,
    ]);
    expect(value.dishes[0]!.versions[1]).toMatchObject({ id: "no-nuts+no-milk", swaps: [0, 1] });
  });

  it("does not swap in what stands against another need of the guest", () => {
    const cake = dish("cake", 8, [ingredient(0, "walnut", 80)], {
      swaps: [swap(["no-nuts"], [0], "sesame-seed"), swap([], [0], "pumpkin-seed")],
    });
    const guests = [guest("Ann", "no-nuts", "no-sesame"), guest("Ben", "no-nuts")];
    const { value } = menuFromDishes(sitting(["cake"], 8, { guests }), [cake]);
    const by = new Map(value.dishes[0]!.versions.map((v) => [v.guests.join(), v.swaps]));
    expect(by.get("Ann")).toEqual([1]);
    expect(by.get("Ben")).toEqual([0]);
  });

  it("says who goes unserved when no swap clears the dish, and makes no portion for them", () => {
    const outcome = menuFromDishes(sitting(["tart"], 8, { guests: [guest("Ann", "no-milk")] }), [
      { ...tart, swaps: [] },
    ]);
    expect(outcome.value.dishes[0]!.unserved).toEqual([{ guest: "Ann", need: "no-milk", ingredients: [1] }]);
    expect(outcome.value.dishes[0]!.versions.map((v) => v.portions)).toEqual([7]);
    expect(outcome.findings).toMatchObject([{ code: "swap-missing", facts: { ingredient: "double-cream" } }]);
  });

  it("says a missing swap once, with all the guests who need it", () => {
    const guests = [guest("Ann", "no-milk"), guest("Ben", "no-milk"), guest("Cy", "no-milk")];
    const { findings } = menuFromDishes(sitting(["tart"], 8, { guests }), [{ ...tart, swaps: [] }]);
    expect(findings.map((f) => [f.code, f.facts])).toMatchObject([
      ["swap-missing", { guest: "Ann, Ben, Cy" }],
    ]);
  });

  it("portions nothing for a need it does not know, and says so", () => {
    const outcome = menuFromDishes(sitting(["tart"], 8, { guests: [guest("Ann", "no-moonlight")] }), [tart]);
    expect(outcome.findings).toMatchObject([{ code: "need-unknown", path: "guests/0/needs/0" }]);
    expect(outcome.value.dishes[0]!.unserved).toMatchObject([{ guest: "Ann", need: "no-moonlight" }]);
  });

  it("names the nearest card when one is not given", () => {
    const { findings } = menuFromDishes(sitting(["tarts"], 8), [tart]);
    expect(findings).toMatchObject([
      { code: "dish-unknown", path: "courses/0/dishes/0", facts: { dish: "tarts", near: "tart" } },
    ]);
  });

  it.each([
    [null, 4, ["portions-assumed"]],
    [made("volume", 3000), 12, ["portions-assumed"]],
    [made("mass", 1000), 5, ["portions-assumed"]],
    [made("pieces", 24, "rolls"), 24, ["pieces-assumed"]],
    [made("tin", 1, "23 cm tin"), 8, ["portions-assumed"]],
    [made("tin", 8, "small pots"), 8, ["pieces-assumed"]],
  ] as const)("assumes portions, and says so: %o", (yields, portions, says) => {
    const card = { ...tart, portions: null, yield: yields };
    const outcome = menuFromDishes(sitting(["tart"], 24), [card]);
    expect(outcome.value.dishes[0]!.versions[0]!.factor).toBeCloseTo(24 / portions);
    expect(codes(outcome).filter((c) => c !== "scaled-far")).toEqual(says);
  });

  it("takes the likely value of a claimed range, rounded down", () => {
    const card = { ...tart, portions: { low: count(4), likely: count(5), high: count(6) } };
    const half = { ...tart, portions: { low: count(4), likely: count(4.5), high: count(5) } };
    expect(menuFromDishes(sitting(["tart"], 20), [card]).value.dishes[0]!.versions[0]!.factor).toBe(4);
    expect(menuFromDishes(sitting(["tart"], 20), [half]).value.dishes[0]!.versions[0]!.factor).toBe(5);
  });

  describe("cards that use cards", () => {
    const stock = dish(
      "brown-stock",
      1,
      [ingredient(0, "chicken-wing", 2000), ingredient(1, "water", 4000)],
      {
        title: "Brown stock",
        portions: null,
        yield: made("volume", 4000),
      },
    );
    const stew = (line: Parameters<typeof ingredient>[3], weight: number | null = null) =>
      dish("stew", 6, [ingredient(0, null, weight, { name: "brown stock", ...line })]);

    it("brings in a whole quantity", () => {
      const card = stew({ card: "brown stock", amounts: pieces(1, "batch").amounts! });
      const { value, findings } = menuFromDishes(sitting(["stew"], 12), [card, stock]);
      const brought = value.dishes[0]!.versions[0]!.ingredients;
      expect(
        brought.map((m) => [m.food, m.ingredient, m.card, m.cardIngredient, m.edible!.likely]),
      ).toMatchObject([
        ["chicken-wing", 0, "brown-stock", 0, expect.any(Number)],
        ["water", 0, "brown-stock", 1, 8000],
      ]);
      expect(value.components).toMatchObject([
        {
          dish: { source: "brown-stock" },
          factor: 2,
          usedBy: [{ dish: "stew", version: "as-written", factor: 2 }],
        },
      ]);
      expect(findings).toEqual([]);
    });

    it("brings in a part of what the card makes, and says that a card was used", () => {
      const outcome = menuFromDishes(sitting(["stew"], 6), [stew({}, 500), stock]);
      expect(outcome.value.components[0]!.factor).toBeCloseTo(0.125);
      expect(codes(outcome)).toEqual(["card-used"]);
    });

    it("takes a plain food for itself when a card of its name does not say how much it makes", () => {
      const eggs = dish("eggs", 4, [ingredient(0, "water", 2000)]);
      const cake = dish("cake", 4, [ingredient(0, "egg", 102, { name: "eggs" })]);
      const outcome = menuFromDishes(sitting(["cake"], 4), [cake, eggs]);
      expect(outcome.value.components).toEqual([]);
      expect(outcome.value.dishes[0]!.versions[0]!.ingredients).toMatchObject([{ food: "egg", card: null }]);
    });

    it("says when a named card is not given", () => {
      expect(codes(menuFromDishes(sitting(["stew"], 6), [stew({ card: "brown stock" }, 500)]))).toEqual([
        "card-unknown",
      ]);
    });

    it("does not follow cards in a ring", () => {
      const a = dish("a", 1, [ingredient(0, null, 100, { name: "b", card: "b" })]);
      const b = dish("b", 1, [ingredient(0, null, 100, { name: "a", card: "a" })]);
      expect(codes(menuFromDishes(sitting(["a"], 2), [a, b]))).toContain("card-unknown");
    });

    it("adds up a component that another component uses", () => {
      const gravy = dish(
        "gravy",
        10,
        [ingredient(0, null, 1000, { name: "brown stock", card: "brown stock" })],
        {
          yield: made("volume", 1000),
        },
      );
      const pie = dish("pie", 5, [
        ingredient(0, null, 500, { name: "gravy", card: "gravy" }),
        ingredient(1, null, 2000, { name: "brown stock", card: "brown stock" }),
      ]);
      const { value } = menuFromDishes(sitting(["pie"], 5), [pie, gravy, stock]);
      expect(value.components.map((c) => [c.dish.source, c.factor])).toEqual([
        ["brown-stock", 0.625],
        ["gravy", 0.5],
      ]);
    });
  });

  it("counts eggs for yolks as whole eggs to buy", () => {
    const custard = dish("custard", 4, [ingredient(0, "egg-yolk", 69.2, pieces(4))]);
    const [yolks] = menuFromDishes(sitting(["custard"], 8), [custard]).value.dishes[0]!.versions[0]!
      .ingredients;
    expect(yolks).toMatchObject({ pieces: { likely: 8 } });
    expect(yolks!.edible!.likely).toBeCloseTo(8 * 17.3);
    expect(yolks!.asPurchased!.likely).toBeCloseTo((8 * 51) / 0.88);
  });

  it("notes what is scaled far, what has no amount, and leaves out what is no food", () => {
    const soup = dish("soup", 2, [
      ingredient(0, "salt", null),
      ingredient(1, null, null, { equipment: true, name: "muslin" }),
    ]);
    const outcome = menuFromDishes(sitting(["soup"], 40), [soup]);
    expect(codes(outcome).sort()).toEqual(["not-scaled", "scaled-far"]);
    expect(outcome.value.dishes[0]!.versions[0]!.ingredients).toHaveLength(1);
  });

  it("keeps grams of both bases by the trim of the food", () => {
    const mash = dish("mash", 4, [
      ingredient(0, "leek", 1000, { weightBasis: "edible-portion" }),
      ingredient(1, "leek", 1000),
    ]);
    const [edible, bought] = menuFromDishes(sitting(["mash"], 4), [mash]).value.dishes[0]!.versions[0]!
      .ingredients;
    expect(edible!.edible!.likely).toBe(1000);
    expect(bought!.asPurchased!.likely).toBe(1000);
    expect(edible!.asPurchased!.likely / edible!.edible!.likely).toBeCloseTo(
      bought!.asPurchased!.likely / bought!.edible!.likely,
    );
    expect(bought!.edible!.likely).toBeLessThan(grams(1000));
  });

  it("hands needs on by their ids, however they were put", () => {
    const guests = [guest("Ann", "nut-free", "no nuts"), guest("Ben", "moonlight")];
    const { value } = menuFromDishes(sitting(["tart"], 8, { guests }), [tart]);
    expect(value.sitting.guests.map((g) => g.needs)).toEqual([["no-nuts"], ["moonlight"]]);
  });

  it("says when more guests are named than there are covers", () => {
    const guests = [guest("Ann"), guest("Ben"), guest("Cas")];
    const out = menuFromDishes(sitting(["tart"], 2, { guests }), [tart]);
    expect(out.findings).toMatchObject([
      { code: "guests-beyond-covers", path: "covers", facts: { guests: 3, covers: 2 } },
    ]);
    expect(out.value.dishes[0]!.versions[0]!.portions).toBe(3);
  });

  it("says when nothing of a dish is made, for nobody may have it", () => {
    const plain = { ...tart, swaps: [] };
    const out = menuFromDishes(sitting(["tart"], 1, { guests: [guest("Ann", "vegan")] }), [plain]);
    expect(out.value.dishes[0]!.versions).toEqual([]);
    expect(out.findings.find((f) => f.code === "dish-for-nobody")?.path).toBe("courses/0/dishes/0");
  });

  it("says when a course has no dish", () => {
    expect(menuFromDishes(sitting([], 8), []).findings).toMatchObject([
      { code: "course-empty", path: "courses/0" },
    ]);
  });
});

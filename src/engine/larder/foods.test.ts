import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findFood, foodById, foodByName, foods, nearFoods } from "./foods.ts";
import { withMadeOf } from "./made-of.ts";
import { normaliseName } from "./normalise-name.ts";
import { regularPlural, singularsOf } from "./plural.ts";

describe("names of foods", () => {
  test.each([
    ["Onions", "onion"],
    ["aubergine", "aubergine"],
    ["eggplants", "aubergine"],
    ["crème fraîche", "creme-fraiche"],
    ["creme fraiche", "creme-fraiche"],
    ["Chef’s salad", null],
    ["bay leaves", "bay-leaf"],
    ["potatoes", "potato"],
    ["tomatos", "tomato"],
    ["cilantro", "coriander"],
    ["saleratus", "bicarbonate-of-soda"],
    ["isinglass", "isinglass"],
    ["egg yolks", "egg-yolk"],
    ["all-purpose flour", "plain-flour"],
    ["all purpose flour", "plain-flour"],
    ["spring onion", "spring-onion"],
    ["scallions", "spring-onion"],
    ["cornflour", "cornflour"],
    ["corn flour", "maize-flour"],
    ["tomato puree", "tomato-puree"],
    ["tomato paste", "tomato-puree"],
    ["pepper", "black-pepper"],
    ["green peppers", "green-pepper"],
    ["spaghetti", "spaghetti"],
    ["stock", "stock"],
    ["", null],
  ])("%j is %j", (words, id) => {
    expect(findFood(words)?.id ?? null).toBe(id);
  });

  test("no two foods share a written name", () => {
    const owner = new Map<string, string>();
    const shared: string[] = [];
    for (const food of foods)
      for (const name of new Set([food.name, food.nameUs ?? food.name].map(normaliseName))) {
        const other = owner.get(name);
        if (other !== undefined) shared.push(`${name}: ${other} and ${food.id}`);
        owner.set(name, food.id);
        if (foodByName.get(name) !== food.id) shared.push(`${name} does not find ${food.id}`);
      }
    expect(shared).toEqual([]);
  });

  test("every name that is printed finds its food", () => {
    const lost = foods.filter(
      (food) => findFood(food.name)?.id !== food.id || findFood(food.plural)?.id !== food.id,
    );
    expect(lost.map((food) => food.id)).toEqual([]);
  });

  test("ids are kebab-case and their own", () => {
    expect(foods.filter((food) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(food.id))).toEqual([]);
    expect(new Set(foods.map((food) => food.id)).size).toBe(foods.length);
    expect(foods.every((food) => foodById(food.id) === food)).toBe(true);
  });

  test.each([
    ["leaf", "leaves"],
    ["bay leaf", "bay leaves"],
    ["radish", "radishes"],
    ["berry", "berries"],
    ["turkey", "turkeys"],
    ["tomato", "tomatoes"],
  ])("the plural of %s is %s, and back", (one, many) => {
    expect(regularPlural(one)).toBe(many);
    expect(singularsOf(many)).toContain(one);
  });
});

describe("near names", () => {
  test.each([
    ["parsely", "parsley"],
    ["tumeric", "turmeric"],
    ["unslated butter", "unsalted-butter"],
    ["chiken breast", "chicken-breast"],
    ["mozarella", "mozzarella"],
    ["brocolli", "broccoli"],
    ["corriander", "coriander"],
  ])("%j is near %s", (words, id) => {
    expect(nearFoods(words, 3).map((food) => food.id)).toContain(id);
  });

  test("nothing is offered for words that resemble nothing", () => {
    expect(nearFoods("zzxqy", 5)).toEqual([]);
    expect(nearFoods("", 5)).toEqual([]);
    expect(nearFoods("onion", 0)).toEqual([]);
  });

  test("any text gets an answer, no longer than asked for, the same each time", () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 0, max: 5 }), (words, most) => {
        const near = nearFoods(words, most);
        expect(near.length).toBeLessThanOrEqual(most);
        expect(nearFoods(words, most)).toEqual(near);
      }),
    );
  });
});

describe("what the table says", () => {
  test("shares, weights and densities are possible", () => {
    const wrong = foods.filter(
      (food) =>
        !(food.trim > 0 && food.trim <= 1) ||
        food.pieces.some((piece) => !(piece.grams > 0)) ||
        (food.density !== null && !(food.density > 0.02 && food.density < 1.6)) ||
        (food.fridgeDays !== null && !(food.fridgeDays >= 1)),
    );
    expect(wrong.map((food) => food.id)).toEqual([]);
  });

  test("an unknown nutrient is null, and known ones add up to no more than the food", () => {
    const lamb = foodById("lamb-leg");
    expect(lamb?.nutrients.sugars).toBeNull();
    expect(foodById("thyme")?.nutrients.sugars).toBeNull();
    expect(foodById("zaatar")).toMatchObject({ nutrients: { kcal: null, fat: null } });
    const heavy = foods.filter(({ nutrients: n }) => {
      const parts = [n.water, n.protein, n.fat, n.carbohydrate, n.ash, n.alcohol];
      return parts.reduce<number>((sum, part) => sum + (part ?? 0), 0) > 104;
    });
    expect(heavy.map((food) => food.id)).toEqual([]);
  });

  test("every part of a compound is a food, and no compound holds itself", () => {
    const unknown = foods.flatMap((food) => food.madeOf.filter((part) => foodById(part) === null));
    expect(unknown).toEqual([]);
    const circular = foods.filter((food) =>
      withMadeOf(food)
        .slice(1)
        .some((held) => held.food.id === food.id),
    );
    expect(circular.map((food) => food.id)).toEqual([]);
  });

  test("a compound declares every group that its parts surely hold", () => {
    const hidden = foods.flatMap((food) =>
      food.madeOf.flatMap((part) =>
        (foodById(part)?.allergens ?? [])
          .filter((allergen) => allergen.grade === "certain")
          .filter((allergen) => !food.allergens.some((own) => own.group === allergen.group))
          .map((allergen) => `${food.id} hides ${allergen.group} of ${part}`),
      ),
    );
    expect(hidden).toEqual([]);
  });

  test("facts of diet and allergens agree", () => {
    const wrong = foods.filter((food) => {
      const surely = (group: string): boolean =>
        food.allergens.some((allergen) => allergen.group === group && allergen.grade !== "check");
      return (
        surely("milk") !== food.diet.includes("dairy") ||
        surely("eggs") !== food.diet.includes("egg") ||
        (surely("fish") && !food.diet.includes("fish")) ||
        ((surely("crustaceans") || surely("molluscs")) && !food.diet.includes("shellfish")) ||
        (food.diet.some((fact) => fact === "pork" || fact === "beef" || fact === "poultry") &&
          !food.diet.includes("meat"))
      );
    });
    expect(wrong.map((food) => food.id)).toEqual([]);
  });

  test("cereals and nuts are named wherever the food is surely of one kind", () => {
    const nameless = foods.filter((food) =>
      food.allergens.some(
        (allergen) =>
          (allergen.group === "gluten" || allergen.group === "nuts") &&
          allergen.grade !== "check" &&
          allergen.kind === null,
      ),
    );
    expect(nameless.map((food) => food.id)).toEqual([]);
  });

  test.each([
    ["white-bread", []],
    ["breadcrumb", []],
    ["chicken-stock", []],
    ["sponge-finger", []],
    ["hollandaise", ["raw-egg"]],
    ["puff-pastry", ["raw-flour"]],
    ["pork-sausage", ["raw-meat", "raw-mince"]],
    ["chicken-liver", ["raw-poultry", "liver"]],
    ["gravlax", ["smoked-fish"]],
    ["dried-kidney-bean", ["raw-beans"]],
    ["tinned-kidney-bean", []],
  ])("%s as it is bought is hazardous in %j", (id, hazards) => {
    expect(foodById(id)?.hazards).toEqual(hazards);
  });
});

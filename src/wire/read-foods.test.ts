import { describe, expect, it } from "vitest";
import { readCard, runEvening } from "#engine/index.ts";
import { readFoods } from "./read-foods.ts";
import { sittingFromFiles } from "./sitting-from-files.ts";

const list = `foods:
  - name: barn zindra
    other names: [yuzu dip]
    density: 1.05
    allergens: [soya, gluten (wheat), fish?]
    diet: [fish]
  - name: seaweed crackling
    pieces: {piece: 6}
    diet: none
  - name: barn pickle
    made of: [cucumber, white wine vinegar, mustard seeds]
  - name: barn relish
    made of: [barn pickle, onion]
`;

const card = (line: string): string => `Dish\n\nServes 2\n\nIngredients\n${line}\n\nMethod\n1. Mix it all.\n`;

describe("foods of the cook's own", () => {
  const { foods, problems } = readFoods("foods.yaml", list);

  it("are read with what is stated", () => {
    expect(foods.map((f) => f.id)).toEqual([
      "own:barn-zindra",
      "own:seaweed-crackling",
      "own:barn-pickle",
      "own:barn-relish",
    ]);
    expect(foods[0]?.allergens).toEqual([
      { group: "soya", kind: null, grade: "certain" },
      { group: "gluten", kind: "wheat", grade: "certain" },
      { group: "fish", kind: null, grade: "check" },
    ]);
  });

  it("take no silence for none: each group is to be asked about, and that is said", () => {
    expect(foods[1]?.allergens.map((a) => a.grade)).toEqual(Array(14).fill("check"));
    expect(problems.map((p) => [p.code, p.severity])).toEqual([["allergens-unstated", "warn"]]);
    const read = readCard(card("4 seaweed crackling"), "c", "uk", foods);
    expect(read.findings.map((f) => f.code)).toContain("allergens-unstated");
  });

  it("are told of as stated, with who states it", () => {
    const list = readFoods(
      "foods.yaml",
      "foods:\n  - name: glimmer syrup\n    allergens: [sulphites]\n    diet: none\n    told by: Ines\n",
    );
    expect(list.problems).toEqual([]);
    const { findings } = readCard(card("30 g glimmer syrup"), "c", "uk", list.foods);
    expect(findings.find((f) => f.code === "own-food-stated")?.facts).toEqual({
      name: "glimmer syrup",
      groups: "sulphites",
      by: "Ines",
    });
  });

  it("hold what they are made of, at any depth", () => {
    expect(foods[3]?.allergens.find((a) => a.group === "mustard")?.grade).toBe("certain");
  });

  it.each([
    ["2 tbsp barn zindra", "own:barn-zindra", 31.5],
    ["30 ml yuzu dip", "own:barn-zindra", 31.5],
    ["3 seaweed cracklings", "own:seaweed-crackling", 18],
    ["200 g barn relish, chopped", "own:barn-relish", 200],
  ])("are found and weighed on a line: %s", (line, food, grams) => {
    const [read] = readCard(card(line), "c", "uk", foods).value.ingredients;
    expect([read?.food, read?.grams?.likely]).toEqual([food, grams]);
  });

  it("are known in that reading alone", () => {
    readCard(card("2 tbsp barn zindra"), "c", "uk", foods);
    expect(readCard(card("2 tbsp barn zindra"), "c").value.ingredients[0]?.food).toBeNull();
  });

  it.each([
    ["foods: [{name: milk, allergens: none, diet: none}]", "food-taken"],
    ["foods: [{name: x-sauce, other names: [butter], allergens: none, diet: none}]", "food-taken"],
    ["foods: [{name: a, allergens: none, diet: none}, {name: a, allergens: none, diet: none}]", "food-taken"],
    ["foods: [{name: x-sauce, allergens: none}]", "key-missing"],
    ["foods: [{name: x-sauce, allergens: [sooya], diet: none}]", "value-bad"],
    ["foods: [{name: x-sauce, allergens: none, diet: [porc]}]", "value-bad"],
    ["foods: [{name: x-sauce, made of: [zzzz]}]", "name-unknown"],
    ["foods: [{name: x-sauce, allergens: none, diet: none, colour: red}]", "key-unknown"],
    ["foods: [{name: x-sauce, allergens: none, diet: none, in 100 g: {fat: 120}}]", "value-bad"],
  ])("are refused: %s", (text, code) => {
    const read = readFoods("foods.yaml", text);
    expect(read.foods).toEqual([]);
    expect(read.problems.filter((p) => p.severity === "stop").map((p) => p.code)).toEqual([code]);
  });
});

describe("a sitting with foods of the cook's own", () => {
  const files = new Map([
    ["foods.yaml", list],
    ["kitchen.yaml", "name: barn\nburners: {count: 2}\novens: []\nfridge litres: 100\n"],
    ["cards/dish.txt", card("2 tbsp barn zindra")],
  ]);
  const sitting = `title: Test
date: 2026-10-17
covers: 2
kitchen: kitchen.yaml
foods: foods.yaml
courses: [{name: Only, at: "19:00", dishes: [dish]}]
guests: [{name: Kim, needs: [coeliac]}]
`;
  const read = sittingFromFiles({
    sitting: { name: "sitting.yaml", text: sitting },
    read: (name) => files.get(name) ?? null,
    list: () => ["dish.txt"],
  });

  it("declares what they hold", () => {
    if (read.sitting === null) throw new Error(JSON.stringify(read.problems));
    const { value } = runEvening(read.sitting, read.cards, { tries: 1, seed: 1 });
    const groups = value.declaration.dishes.flatMap((d) => d.allergens.map((a) => `${a.group} ${a.grade}`));
    expect(groups).toEqual(["gluten certain", "fish check", "soya certain"]);
  });
});

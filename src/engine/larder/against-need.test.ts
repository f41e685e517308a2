import { describe, expect, it } from "vitest";
import type { AllergenGrade, Food } from "../model/food.ts";
import { againstNeed, broughtTogether } from "./against-need.ts";
import { findFood, foods } from "./foods.ts";
import { needById, needs } from "./needs.ts";

const food = (name: string): Food => {
  const found = findFood(name);
  if (found === null) throw new Error(`no food ${name}`);
  return found;
};

const grade = (name: string, need: string): AllergenGrade | null => againstNeed(food(name), needById(need)!);

describe("what stands against a need", () => {
  const rows: readonly (readonly [string, string, AllergenGrade | null])[] = [
    ["plain flour", "coeliac", "certain"],
    ["walnut", "no-nuts", "certain"],
    ["peanut", "no-nuts", "check"],
    ["pine nut", "no-nuts", "check"],
    ["butter", "no-milk", "certain"],
    ["egg", "vegan", "certain"],
    ["worcestershire sauce", "no-fish", "certain"],
    ["malt vinegar", "coeliac", "certain"],
    ["mayonnaise", "no-mustard", "typical"],
    ["prawn", "no-shellfish", "certain"],
    ["parmesan", "vegetarian", "certain"],
    ["chicken breast", "vegetarian", "certain"],
    ["brie", "pregnant", "typical"],
    ["egg", "pregnant", "check"],
    ["beef fillet", "halal", "check"],
    ["carrot", "no-nuts", null],
    ["carrot", "coeliac", null],
  ];
  it.each(rows)("%s against %s: %s", (name, need, expected) => {
    expect(grade(name, need)).toBe(expected);
  });

  it("is never silent on a food that holds a group the need forbids", () => {
    for (const need of needs)
      for (const f of foods)
        for (const a of f.allergens)
          if (need.allergens.includes(a.group) && a.grade !== "check")
            expect(["certain", "typical"], `${f.id} ${need.id}`).toContain(againstNeed(f, need));
  });

  it("follows what a compound is made of, and does not circle", () => {
    const made: Food = { ...food("carrot"), id: "made-up-relish", madeOf: ["walnut", "made-up-relish"] };
    expect(againstNeed(made, needById("no-nuts")!)).toBe("typical");
  });

  it("keeps meat and milk apart where the need asks it", () => {
    expect(broughtTogether(new Set(["meat", "dairy"]), needById("kosher")!)).toBe(true);
    expect(broughtTogether(new Set(["meat"]), needById("kosher")!)).toBe(false);
    expect(broughtTogether(new Set(["meat", "dairy"]), needById("vegan")!)).toBe(false);
  });
});

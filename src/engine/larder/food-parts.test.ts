import { describe, expect, it } from "vitest";
import { partGrams, partsOf, pieceGrams } from "./food-parts.ts";
import { foodById } from "./foods.ts";

describe("partsOf", () => {
  it.each([
    ["egg", "yolk", ["yolk"]],
    ["egg", "yolks", ["yolk"]],
    ["lemon", "juice and zest", ["juice", "zest"]],
    ["egg-white", null, ["white"]],
    ["egg", null, []],
    ["leek", "juice", []],
  ])("%s, %s", (food, portion, parts) => {
    expect(partsOf(food, portion).map((p) => p.part)).toEqual(parts);
  });

  it("knows the whole, the part as a food, and what one gives", () => {
    for (const food of [
      "egg-white",
      "egg-yolk",
      "lemon-juice",
      "lemon-zest",
      "lime-juice",
      "lime-zest",
      "orange-juice",
      "orange-zest",
    ]) {
      const [part] = partsOf(food, null);
      expect(foodById(food), food).not.toBeNull();
      expect(foodById(part!.whole), food).not.toBeNull();
      expect(partGrams(part!, "uk"), food).toBeGreaterThan(0);
      expect(pieceGrams(foodById(part!.whole)!, "uk"), food).toBeGreaterThan(partGrams(part!, "uk")!);
    }
  });
});

describe("pieceGrams", () => {
  it("differs by region and by the piece that is named", () => {
    const egg = foodById("egg")!;
    expect(pieceGrams(egg, "us")).not.toBe(pieceGrams(egg, "uk"));
    const garlic = foodById("garlic")!;
    expect(pieceGrams(garlic, "uk", "bulb")).toBeGreaterThan(pieceGrams(garlic, "uk", "clove")!);
    expect(pieceGrams(garlic, "uk", "armful")).toBeNull();
  });
});

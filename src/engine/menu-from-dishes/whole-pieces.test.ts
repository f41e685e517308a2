import { describe, expect, it } from "vitest";
import { readCard } from "#engine/index.ts";
import { sitting } from "../../../test/help/dishes.ts";
import { menuFromDishes } from "./menu-from-dishes.ts";

const custard = readCard(
  "Custard tart\n\nServes 8\n\nFor the pastry\n200 g plain flour\n100 g butter\n\nFor the custard\n3 eggs\n300 ml double cream\n60 g caster sugar\n\nMethod\n1. Rub the butter into the flour.\n2. Whisk the eggs, cream and sugar. Bake 40 minutes at 160°C.\n",
  "tart",
).value;

const at = (covers: number) => {
  const { value, findings } = menuFromDishes(sitting(["tart"], covers), [custard]);
  const [version] = value.dishes[0]!.versions;
  const of = (name: string) => version!.ingredients.find((m) => m.name === name)!;
  return { of, findings: findings.filter((f) => f.code === "whole-pieces") };
};

describe("whole eggs at other sizes", () => {
  it("leave the card's own size alone", () => {
    const { of, findings } = at(8);
    expect(of("eggs").pieces?.likely).toBe(3);
    expect(of("plain flour").edible?.likely).toBe(200);
    expect(findings).toEqual([]);
  });

  it("are rounded up where that is near, and their part keeps step with them", () => {
    // 13 portions of 8: 4.875 eggs; five of them make the custard 2.56 % larger.
    const { of, findings } = at(13);
    expect(of("eggs").pieces?.likely).toBe(5);
    expect(of("caster sugar").edible?.likely).toBeCloseTo((60 * 5) / 3, 9);
    expect(of("plain flour").edible?.likely).toBeCloseTo((200 * 13) / 8, 9);
    expect(of("caster sugar").adjusted).toEqual([{ reason: "whole-pieces", factor: 5 / 4.875 }]);
    expect(findings.map((f) => f.facts)).toMatchObject([{ name: "eggs", pieces: 5 }]);
  });

  it("are weighed where a whole one is too much more", () => {
    const { of, findings } = at(12);
    expect(of("eggs").pieces?.likely).toBe(4.5);
    expect(of("caster sugar").edible?.likely).toBe(90);
    expect(findings).toEqual([]);
  });

  it("never make more covers need less", () => {
    let before = 0;
    for (let covers = 1; covers <= 200; covers += 1) {
      const now = at(covers).of("caster sugar").edible?.likely ?? 0;
      expect(now).toBeGreaterThanOrEqual(before * (1 - 1e-12));
      before = now;
    }
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { action, asWritten, dish, line, menu, nutSwap, withSwap } from "../../../test/help/made-menu.ts";
import { foods } from "../larder/foods.ts";
import { needs } from "../larder/needs.ts";
import type { Guest } from "../model/sitting.ts";
import { declarationFromMenu } from "./declaration-from-menu.ts";

const guest = (name: string, ...needed: string[]): Guest => ({ name, needs: needed });

const answers = (made: ReturnType<typeof menu>) => declarationFromMenu(made).value.grid.map((v) => v.answer);

describe("the guest-by-dish grid", () => {
  it("never answers yes to an allergy that a certain or typical allergen of the dish stands against", () => {
    const allergies = needs.filter((n) => n.allergens.length > 0);
    for (const food of foods) {
      const d = dish("d", [line(0, food.name, food.id, 100)]);
      for (const need of allergies) {
        if (!food.allergens.some((a) => need.allergens.includes(a.group) && a.grade !== "check")) continue;
        expect(
          answers(menu([{ dish: d, versions: [asWritten(d)] }], [guest("Ana", need.id)])),
          `${food.id} ${need.id}`,
        ).toEqual(["no"]);
      }
    }
  });

  it("never answers yes or swap when any food is not understood, for a guest with any need", () => {
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom(...foods), { maxLength: 4 }),
        fc.constantFrom(...needs),
        fc.nat(4),
        (some, need, at) => {
          const lines = some.map((f) => ({ name: f.name, food: f.id as string | null }));
          lines.splice(Math.min(at, lines.length), 0, { name: "moon dust", food: null });
          const d = dish(
            "d",
            lines.map((l, i) => line(i, l.name, l.food, 10)),
          );
          expect(["check", "no"]).toContain(
            answers(menu([{ dish: d, versions: [asWritten(d)] }], [guest("Ana", need.id)]))[0],
          );
        },
      ),
    );
  });

  it("never answers yes when the need itself is not understood", () => {
    const d = dish("d", [line(0, "carrots", "carrot", 100)]);
    expect(answers(menu([{ dish: d, versions: [asWritten(d)] }], [guest("Ana", "no-moonlight")]))).toEqual([
      "check",
    ]);
  });

  it("says yes, swap, check and no, and why", () => {
    const d = dish("crumble", [line(0, "walnuts", "walnut", 100), line(1, "apples", "apple", 500)], [], {
      swaps: [nutSwap],
    });
    const made = menu(
      [{ dish: d, versions: [asWritten(d, 3), withSwap(d, nutSwap, 0, ["Odette"])] }],
      [guest("Iris"), guest("Odette", "no-nuts"), guest("Max", "no-nuts"), guest("Eve", "vegetarian")],
    );
    const { grid, guestsToSwap } = declarationFromMenu(made).value;
    expect(grid.map((v) => [v.guest, v.answer, v.version])).toEqual([
      ["Iris", "yes", "as-written"],
      ["Odette", "swap", "no-nuts"],
      ["Max", "no", null],
      ["Eve", "yes", "as-written"],
    ]);
    expect(grid[1]?.because).toEqual([{ need: "no-nuts", ingredient: 0, name: "walnuts", grade: "certain" }]);
    expect(guestsToSwap).toEqual(["Odette", "Max"]);
  });

  it("never answers yes to a need where no food was read on the card", () => {
    for (const lines of [[], [line(0, "baking paper", null, null, { equipment: true })]]) {
      const d = dish("d", lines);
      const made = menu([{ dish: d, versions: [asWritten(d)] }], [guest("Ana", "no-nuts"), guest("Eve")]);
      expect(answers(made)).toEqual(["check", "yes"]);
    }
  });

  it("keeps the word of a menu that found no version for a guest", () => {
    const d = dish("d", [line(0, "carrots", "carrot", 100)]);
    const made = menu(
      [{ dish: d, versions: [asWritten(d)], unserved: [{ guest: "Ana", need: "vegan", ingredients: [0] }] }],
      [guest("Ana", "vegan")],
    );
    expect(answers(made)).toEqual(["no"]);
  });

  it("asks about eggs for a pregnant guest only where the card does not cook them", () => {
    const raw = dish("mousse", [line(0, "egg", "egg", 100)], [action("s1a1", "whisk", [0])]);
    const cooked = dish(
      "cake",
      [line(0, "egg", "egg", 100)],
      [action("s1a1", "whisk", [0]), action("s1a2", "bake", [], ["s1a1"])],
    );
    const made = menu(
      [raw, cooked].map((d) => ({ dish: d, versions: [asWritten(d)] })),
      [guest("Marian", "pregnant")],
    );
    expect(answers(made)).toEqual(["check", "yes"]);
  });

  it("asks about a food that only the method names", () => {
    const text = "Melt a knob of butter and sweat the leeks.";
    const step = {
      index: 0,
      text,
      span: { start: 0, end: text.length },
      part: null,
      phase: "method" as const,
      actions: [],
    };
    const d = dish("d", [line(0, "leeks", "leek", 100)], [], { steps: [step] });
    const made = menu(
      [{ dish: d, versions: [asWritten(d)] }],
      [guest("Ana", "no-milk"), guest("Eve", "no-nuts")],
    );
    expect(answers(made)).toEqual(["check", "yes"]);
    expect(declarationFromMenu(made).value.dishes[0]?.allergens).toMatchObject([
      { group: "milk", grade: "check", paths: [{ name: "butter", ingredient: null }] },
    ]);
  });
});

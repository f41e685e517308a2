import { describe, expect, it } from "vitest";
import { action, dish, line } from "../../../test/help/made-menu.ts";
import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";
import { writeUpFromDish } from "./write-up-from-dish.ts";

const timed = (id: string, likely: number, more: Partial<Action> = {}): Action =>
  action(id, "mix", [], [], { minutes: { ...exactly(minutes(likely)), assumed: false }, ...more });

const withActions = (actions: readonly Action[]): Dish =>
  dish("d", [line(0, "carrots", "carrot", 100)], actions);

describe("a card as a document", () => {
  it("takes the longest chain for all the time, and hands alone for the work", () => {
    const d = withActions([
      timed("a", 10),
      timed("b", 60, { after: ["a"], attention: "none" }),
      timed("c", 20, { after: ["a"] }),
      timed("e", 5, { after: ["b", "c"] }),
    ]);
    const { handsMinutes, totalMinutes } = writeUpFromDish(d, null);
    expect([handsMinutes, totalMinutes]).toEqual([35, 75]);
  });

  it("gives no time where no action has one", () => {
    const { handsMinutes, totalMinutes } = writeUpFromDish(withActions([action("a", "mix", [0])]), null);
    expect([handsMinutes, totalMinutes]).toEqual([null, null]);
  });

  it("does not hang on actions that wait for each other", () => {
    const d = withActions([timed("a", 10, { after: ["b"] }), timed("b", 10, { after: ["a"] })]);
    expect(writeUpFromDish(d, null).totalMinutes).toBeGreaterThan(0);
  });

  it("prints only lengths that the words give beside a step", () => {
    const d = withActions([
      timed("a", 10),
      timed("b", 7, { minutes: { ...exactly(minutes(7)), assumed: true } }),
    ]);
    expect(writeUpFromDish(d, null).steps[0]?.minutes).toBe(10);
  });

  it("groups ingredients by part, in the order of the card", () => {
    const d = dish("pie", [
      line(0, "apples", "apple", 500),
      line(1, "flour", "plain-flour", 200, { part: "pastry" }),
      line(2, "sugar", "caster-sugar", 50),
    ]);
    expect(writeUpFromDish(d, null).parts.map((p) => [p.name, p.ingredients.map((i) => i.text)])).toEqual([
      [null, ["apples", "sugar"]],
      ["pastry", ["flour"]],
    ]);
  });

  it("says nothing of raw egg that the card cooks, and says it of what it does not", () => {
    const egg = [line(0, "eggs", "egg", 100)];
    expect(writeUpFromDish(dish("cake", egg, [action("a", "bake", [0])]), null).cautions).not.toContain(
      "raw-egg",
    );
    expect(writeUpFromDish(dish("mousse", egg, [action("a", "whisk", [0])]), null).cautions).toContain(
      "raw-egg",
    );
  });
});

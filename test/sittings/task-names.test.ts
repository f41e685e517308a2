import { expect, it } from "vitest";
import { moment } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { sitting } from "../help/dishes.ts";
import { cooked } from "./methods.ts";

it.each([
  [["preheat", 15], ["rub", 4], "rub"],
  [["whisk", 3], ["stand", 8], "whisk"],
  [["fry", 10], ["keep-warm", 12], "fry"],
  [["chop", 3], ["simmer", 8], "simmer"],
] as const)(
  "is named by what cooks or takes hands, not by what readies or stands: %j %j",
  (one, two, name) => {
    const crew = [{ name: "Ada", shifts: [{ from: moment(9 * 60), to: moment(22 * 60) }] }];
    const dish = cooked(
      "pot",
      4,
      [500],
      [
        { id: "a", technique: one[0], minutes: one[1], takes: [0] },
        { id: "b", technique: two[0], minutes: two[1], takes: ["a"] },
      ],
    );
    const { value } = prepFromMenu(menuFromDishes(sitting([dish.source], 4, { crew }), [dish]).value);
    const method = value.tasks.filter((task) => task.kind === "method");
    expect(method.map((task) => task.verb)).toContain(name);
  },
);

it("names a food once on a task, though two lines of the card ask for it", () => {
  const crew = [{ name: "Ada", shifts: [{ from: moment(9 * 60), to: moment(22 * 60) }] }];
  const made = cooked("pot", 4, [500, 300], [{ id: "a", technique: "simmer", minutes: 30, takes: [0, 1] }]);
  const ingredients = made.ingredients.map((line) => ({ ...line, name: "leek", preparation: ["sliced"] }));
  const dish = { ...made, ingredients };
  const { value } = prepFromMenu(menuFromDishes(sitting([dish.source], 4, { crew }), [dish]).value);
  const mise = value.tasks.filter((task) => task.kind === "mise");
  expect(mise.map((task) => task.objects)).toEqual([["leek"]]);
});

import { describe, expect, it } from "vitest";
import { moment, readCard } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { sitting } from "../help/dishes.ts";

const card = (title: string, onions: string, cut: string) =>
  readCard(
    `${title}\n\nServes 10\n\n${onions} onions, ${cut}\n2 litres water\n\nMethod\n1. Sweat the onions for 10 minutes in a pan.\n2. Add the water and simmer for 20 minutes.\n`,
    title.toLowerCase(),
  ).value;

const prepOf = (dishes: readonly ReturnType<typeof card>[], days: readonly number[]) =>
  prepFromMenu(
    menuFromDishes(
      sitting([], 40, {
        courses: dishes.map((dish, k) => ({
          name: dish.title,
          at: moment((19 + k) * 60 + (days[k] ?? 0) * 1440),
          dishes: [dish.source],
        })),
      }),
      dishes,
    ).value,
  ).value;

const mise = (prep: ReturnType<typeof prepOf>) => prep.tasks.filter((task) => task.kind === "mise");
const length = (prep: ReturnType<typeof prepOf>): number =>
  mise(prep).reduce((sum, task) => sum + (task.segments[0]?.minutes.likely ?? 0), 0);

describe("the same cut of the same food", () => {
  const soup = card("Soup", "3 kg", "peeled and sliced");
  const stew = card("Stew", "3 kg", "peeled and sliced");

  it("is one task for two dishes of a day, and saves laying out the board", () => {
    const both = prepOf([soup, stew], [0, 0]);
    expect(mise(both).map((task) => [task.dish, task.alsoFor, task.amount?.value])).toMatchObject([
      ["soup", ["stew"], expect.any(Number)],
    ]);
    expect(length(both)).toBeLessThan(length(prepOf([soup], [0])) + length(prepOf([stew], [0])));
    // Both pots wait for it.
    const [one] = mise(both);
    const waiting = both.lags.filter((lag) => lag.before === one?.id).map((lag) => lag.after.split("/")[0]);
    expect(new Set(waiting)).toEqual(new Set(["soup", "stew"]));
  });

  it.each([
    ["another cut", card("Stew", "3 kg", "peeled and diced"), [0, 0]],
    ["another day", stew, [0, 1]],
  ] as const)("is not shared with %s", (_, other, days) => {
    expect(mise(prepOf([soup, other], [...days])).length).toBe(2);
  });
});

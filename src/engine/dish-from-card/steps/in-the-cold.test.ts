import { expect, it } from "vitest";
import { cardOf, ingredientFrom } from "../../../../test/help/read-method.ts";
import { readSteps } from "./read-steps.ts";

const list =
  "venison: 1500 g, red wine: 700 g, juniper: 2 g, plain flour: 500 g, water: 300 g, fresh yeast: 5 g, chickpeas: 400 g, potatoes: 2000 g, double cream: 500 g, caster sugar: 300 g, plums: 300 g";

/** Where the last action stands, and whether that was assumed. */
const last = (method: string): string => {
  const { steps, findings } = readSteps(cardOf([method]), list.split(", ").map(ingredientFrom), "uk");
  const action = steps.flatMap((s) => s.actions).at(-1);
  return `${action?.station}${findings.some((f) => f.code === "fridge-assumed") ? ", assumed" : ""}`;
};

it.each([
  ["Leave the venison overnight in the wine with the juniper.", "fridge, assumed"],
  ["Leave the venison in the fridge overnight in the wine.", "fridge"],
  ["Leave the venison out on the side overnight.", "bench"],
  ["Rest the venison for 20 minutes.", "bench"],
  ["Boil the potatoes in the cream for 20 minutes. Press overnight.", "fridge, assumed"],
  ["Mix the flour, water and yeast. Leave it overnight.", "bench"],
  ["Cover the chickpeas with cold water and leave them overnight.", "bench"],
  ["Leave the plums overnight in the sugar.", "bench"],
])("what spoils does not stand out all night: %s", (method, expected) => {
  expect(last(method)).toBe(expected);
});

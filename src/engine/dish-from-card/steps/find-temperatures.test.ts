import { describe, expect, it } from "vitest";
import { findTemperatures } from "./find-temperatures.ts";
import { tokenise } from "./tokens.ts";

const read = (text: string, region: "uk" | "us" = "uk"): string =>
  findTemperatures(tokenise(text), region)
    .map((t) => `${t.kind} ${t.celsius}${t.scaleAssumed ? " assumed" : ""}`)
    .join("; ");

// Gas marks: UK oven charts (nannymcphee.co.uk, hintsandthings.co.uk). Fahrenheit: °C = (°F − 32) × 5/9. Fan ovens: 20 °C lower (Healthy Kids NSW).
describe("temperatures in words", () => {
  it.each([
    ["at 180°C", "setting 180"],
    ["at 180C", "setting 180"],
    ["180 degrees Celsius", "setting 180"],
    ["350°F", "setting 177"],
    ["350 degrees F", "setting 177"],
    ["375 F", "setting 191"],
    ["gas mark 4", "setting 180"],
    ["gas 7", "setting 220"],
    ["Gas Mark 3, 170°C", "setting 170"],
    ["gas mark ½", "setting 120"],
    ["180C/350F/gas 4", "setting 180"],
    ["200C (fan 180C)", "setting 200"],
    ["180C/160C fan/gas 4", "setting 180"],
    ["fan 160C", "setting 180"],
    ["160-170°C", "setting 165"],
    ["bake in a moderate oven", "setting 180"],
    ["in a very hot oven", "setting 240"],
    ["bake at 180 for 20 minutes", "setting 180 assumed"],
    ["bake at 350", "setting 177 assumed"],
    ["until the thickest reads 75°C in the middle", "core 75"],
    ["an internal temperature of 165 F", "core 74"],
    ["oil at 180 °C", "setting 180"],
    ["roast it at a hundred and eighty for an hour", "setting 180 assumed"],
    ["roast at one-eighty for an hour", "setting 180 assumed"],
    ["roast at two twenty for twenty minutes", "setting 220 assumed"],
    ["bake at 180ish for an hour", "setting 180 assumed"],
    ["roast anywhere from 180 to 200 for an hour", "setting 190 assumed"],
    ["oven: 200 fan, 220 ordinary", "setting 220 assumed"],
    ["heat the oven to 160°C (fan-assisted)", "setting 180"],
    ["with the fan on, 180 for forty minutes", "setting 200 assumed"],
    ["bake on the middle shelf at 180 for 30 minutes", "setting 180 assumed"],
    ["start it at 230, down to 170", "setting 230 assumed; setting 170 assumed"],
    ["lamb is ready at 60", "core 60 assumed"],
    ["pull it at 54, it climbs to 60 as it rests", "core 54 assumed"],
    ["the probe wants to say 75", "core 75 assumed"],
    ["it should read 70 in the middle", "core 70 assumed"],
    ["core 62", "core 62 assumed"],
    ["until 165 degrees inside", "core 74 assumed"],
    ["reheat to 75 right through", "core 75 assumed"],
    ["take the oil to 160, then 190", "setting 160 assumed; setting 190 assumed"],
    ["confit in the oil at 85", "setting 85 assumed"],
    ["boil the sugar and water to 121", "setting 121 assumed"],
    ["stir until thick, no hotter than 85", "setting 85 assumed"],
    ["when it has cooled to 60", "setting 60 assumed"],
    ["prove at 26 for two hours", "setting 26 assumed"],
    ["into the fridge at 3", "setting 3 assumed"],
    ["freeze at minus 18", "setting -18 assumed"],
    ["churn until it's at -6", "setting -6 assumed"],
    ["cut at 45 degrees", ""],
    ["serve to 120", ""],
    ["simmer 20 to 25, maybe 30 for a big one", ""],
    ["bake 12 biscuits on 2 trays", ""],
    ["add 200 g sugar", ""],
  ])("%s", (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it("takes a bare oven figure by the country's ovens", () => {
    expect(read("bake at 200", "uk")).toBe("setting 200 assumed");
    expect(read("bake at 200", "us")).toBe("setting 93 assumed");
  });
});

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

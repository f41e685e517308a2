import { describe, expect, it } from "vitest";
import { readCard } from "#engine/index.ts";
import { dishPortions } from "./dish-portions.ts";

const portions = (title: string, makes: string) => {
  const text = `${title}\n\n${makes}\n\n500 g onions\n200 ml vinegar\n\nMethod\n1. Simmer the onions in the vinegar for 20 minutes.\n`;
  return dishPortions(readCard(text, "card").value);
};

describe("portions of a card that counts none", () => {
  it.each([
    ["Onion soup", "Makes 1 litre", 4],
    ["Onion gravy", "Makes 1.5 litres", 20],
    ["Onion paste", "Makes 300 g", 10],
    ["Onion dip", "Makes 600 g", 20],
    ["Spice rub for onions", "Makes 100 g", 20],
    ["Onion bake", "Makes 1 kg", 5],
    ["Pickled onions", "Makes 2 jars", 24],
    ["Onion gravy", "Serves 6", 6],
  ])("%s, %s: %i", (title, makes, expected) => {
    const { value, findings } = portions(title, makes);
    expect(value).toBe(expected);
    expect(findings.map((f) => f.code)).toEqual(makes.startsWith("Serves") ? [] : ["portions-assumed"]);
  });

  it("takes one piece for each guest", () => {
    const { value, findings } = portions("Onion buns", "Makes 24 buns");
    expect(value).toBe(24);
    expect(findings.map((f) => f.code)).toEqual(["pieces-assumed"]);
  });
});

import { describe, expect, it } from "vitest";
import { readCard, scaleCard } from "#engine/index.ts";
import { coverTimes, steepedIn } from "./steeped.ts";
import { thickenedBy } from "./thickened.ts";

const card = (lines: string, method: string): string =>
  `Dish\n\nServes 4\n\n${lines}\n\nMethod\n1. ${method}\n`;
const dishOf = (lines: string, method: string) => readCard(card(lines, method), "dish", "uk").value;
const names = (lines: string, method: string) => {
  const dish = dishOf(lines, method);
  return steepedIn(dish).map((s) => [...s.lines].map((place) => dish.ingredients[place]?.name ?? ""));
};

const brine = [
  "900 g pork loin\n1.5 litres water\n90 g salt\n10 peppercorns",
  "Dissolve the salt in the water with the peppercorns. Put in the pork and brine for 4 hours in the fridge. Drain and pat dry. Roast at 180°C for 1 hour.",
] as const;
const poached = [
  "600 g chicken breasts\n1 litre chicken stock\n2 bay leaves\n100 g mayonnaise",
  "Bring the stock and bay to a simmer, add the chicken and poach for 15 minutes. Remove the chicken and leave to cool. Shred it and stir in the mayonnaise.",
] as const;
const kept = [
  "1.2 kg beef shin, diced\n750 ml red wine\n1 onion, sliced\n2 tbsp olive oil",
  "Put the beef in a bowl with the wine and onion and leave to marinate overnight in the fridge. Drain the meat and keep the wine. Brown the meat in the oil for 12 minutes. Add the wine, cover and simmer for 2 hours.",
] as const;
const coated = [
  "800 g chicken thighs, boneless, diced\n200 g plain yoghurt\n2 tsp ground cumin",
  "Mix the yoghurt and cumin. Add the chicken and marinate for 3 hours in the fridge. Grill for 12 minutes.",
] as const;

describe("what food is taken out of", () => {
  it.each([
    ["a brine with its salt", brine, [["water", "salt", "peppercorns"]]],
    ["a poaching stock with its bay", poached, [["chicken stock", "bay leaves"]]],
    ["no wine that is kept and stewed in", kept, []],
    ["no marinade that stays on", coated, []],
  ] as const)("is %s", (_, [lines, method], expected) => {
    const found = names(lines, method).map((l) => l.toSorted());
    expect(found).toEqual(expected.map((l) => [...l].toSorted()));
  });

  it("is less in step for more, and keeps its strength", () => {
    const at = (covers: number) => {
      const { sheet } = scaleCard(card(...brine), "dish", covers, null).value;
      const of = (name: string) => sheet?.lines.find((l) => l.name === name)?.amount?.exact ?? 0;
      return { pork: of("pork loin"), water: of("water"), salt: of("salt") };
    };
    const [own, many] = [at(4), at(80)];
    expect(many.pork / own.pork).toBeCloseTo(20, 6);
    expect(many.water / own.water).toBeLessThan(16);
    expect(many.water / many.pork).toBeGreaterThan(2 / 3);
    expect(many.salt / many.water).toBeCloseTo(own.salt / own.water, 6);
  });
});

describe("a liquid that covers", () => {
  it("is the card's at its size, never less for more, and never less than fills the gaps", () => {
    for (const [litres, kilos] of [
      [1.5, 0.9],
      [0.2, 0.8],
      [10, 1],
    ] as const) {
      expect(coverTimes(litres, kilos, 1)).toBe(1);
      let before = 0;
      for (let factor = 0.1; factor < 200; factor *= 1.1) {
        const all = litres * factor * coverTimes(litres, kilos, factor);
        expect(all).toBeGreaterThanOrEqual(before);
        expect(all).toBeGreaterThanOrEqual(Math.min(litres, (2 / 3) * kilos) * factor - 1e-9);
        before = all;
      }
    }
  });

  it("goes in step where it only coats", () => {
    expect(coverTimes(0.2, 0.8, 50)).toBeCloseTo(1, 9);
  });
});

describe("a thickener", () => {
  const white = card(
    "60 g butter\n60 g plain flour\n1 litre whole milk",
    "Melt the butter in a saucepan, stir in the flour and cook for 2 minutes. Add the milk bit by bit, bring to the boil and simmer for 20 minutes.",
  );
  it("is more in step where a larger pot loses less, by 5 to 15 %", () => {
    const flour = (covers: number): number =>
      scaleCard(white, "dish", covers, null).value.sheet?.lines.find((l) => l.name === "plain flour")?.amount
        ?.exact ?? 0;
    expect(flour(4)).toBeCloseTo(60, 6);
    // "Raise starch or reduce water 5 to 15 %": common practice, no source.
    expect(flour(120) / (30 * flour(4))).toBeGreaterThan(1.03);
    expect(flour(120) / (30 * flour(4))).toBeLessThan(1.15);
    expect(flour(2) / (0.5 * flour(4))).toBeLessThan(1);
  });

  it("is left alone where the stock is changed instead, and in a dough", () => {
    const gravy = dishOf(
      "20 g cornflour\n1 litre chicken stock",
      "Bring the stock to the boil and simmer for 20 minutes. Stir in the cornflour and simmer for 2 minutes.",
    );
    expect(thickenedBy(gravy)).toEqual([]);
    const dough = dishOf(
      "500 g plain flour\n300 ml milk",
      "Mix the flour and milk and simmer for 10 minutes.",
    );
    expect(thickenedBy(dough)).toEqual([]);
  });
});

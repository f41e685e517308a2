import { describe, expect, it } from "vitest";
import { count, type Kitchen, scaleCard } from "#engine/index.ts";
import { sitting } from "../help/dishes.ts";

const kitchen: Kitchen = { ...sitting([], 1).kitchen, trays: count(8) };

const sheetOf = (text: string, covers: number) => {
  const { sheet } = scaleCard(text, "card", covers, kitchen).value;
  if (sheet === null) throw new Error("no sheet");
  return sheet;
};
const trays = (text: string, covers: number) =>
  sheetOf(text, covers)
    .steps.flatMap((s) => s.vessels)
    .filter((v) => v.kind === "tray")
    .map((v) => v.fillings as number);

const rib =
  "Rib of beef\n\nServes 8\n\n3 kg beef rib\n2 tsp salt\n\nMethod\n1. Rub the beef with the salt. Roast at 230°C for 20 minutes, then at 160°C for 1 hour 30 minutes, until the middle reads 54°C.\n";
const birds =
  "Roast chickens\n\nServes 8\n\n2 chickens, about 1.6 kg each\n50 g butter\n\nMethod\n1. Rub the chickens with the butter. Roast at 190°C for 1 hour 20 minutes, until they read 75°C.\n";
const wings =
  "Wings\n\nServes 8\n\n3 kg chicken wings\n\nMethod\n1. Roast the wings at 200°C for 45 minutes.\n";

describe("meat in the piece", () => {
  it.each([
    // Three ribs of 3 kg lie beside each other on a GN 1/1, four chickens do: common practice, no source.
    ["one rib", rib, 8, 1],
    ["three ribs", rib, 24, 1],
    ["fifteen ribs", rib, 120, 5],
    ["two chickens", birds, 8, 1],
    ["six chickens", birds, 24, 2],
    ["wings go by their weight", wings, 24, 4],
  ])("lies on trays by its size: %s", (_, card, covers, many) => {
    expect(trays(card, covers)[0]).toBe(many);
  });

  it("cooks by the piece, and what is browned first is cold but once", () => {
    const length = (covers: number) => sheetOf(rib, covers).steps[0]?.minutes?.likely ?? 0;
    expect(length(24) / length(8)).toBeLessThan(1.35);
    // One joint twice as heavy is thicker by the cube root of two, and its middle takes longer by up to the square of that.
    expect(length(15) / length(8)).toBeGreaterThan(1.2);
    expect(length(15) / length(8)).toBeLessThan(1.7);
  });
});

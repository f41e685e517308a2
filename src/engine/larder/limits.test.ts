import { describe, expect, it } from "vitest";
import { celsius, minutes } from "../measure/units.ts";
import { regions } from "../model/sitting.ts";
import { coreHold, isOver, limits, limitsFor } from "./limits.ts";

describe("limits", () => {
  it("has ids that are used once, and a source on each row", () => {
    const ids = limits.map((l) => l.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const l of limits) expect(l.source, l.id).not.toBe("");
  });

  it("says something of cooking, holding, cooling and reheating in every region", () => {
    for (const region of regions)
      for (const quantity of ["hold-hot", "hold-cold", "cool-to", "reheat"] as const)
        expect(limitsFor(region, quantity).length, `${region} ${quantity}`).toBeGreaterThan(0);
    for (const region of regions)
      for (const hazard of ["raw-poultry", "raw-mince", "raw-meat", "raw-fish", "raw-egg"] as const)
        expect(limitsFor(region, "core", [hazard]).length, `${region} ${hazard}`).toBeGreaterThan(0);
  });

  it("asks no longer at a higher heat", () => {
    for (const region of regions)
      for (const hazard of ["raw-poultry", "raw-mince", "raw-meat", "whole-roast"] as const) {
        let before = Number.POSITIVE_INFINITY;
        for (let c = 50; c < 90; c += 0.1) {
          const hold = coreHold(region, hazard, celsius(c));
          if (hold === null) continue;
          expect(hold).toBeLessThanOrEqual(before);
          before = hold;
        }
      }
  });

  it("prefers the row of the very case", () => {
    expect(limitsFor("uk", "cool-to", ["cooked-rice"]).map((l) => l.id)).toEqual(["uk-cool-rice"]);
    expect(limitsFor("uk", "cool-to", []).map((l) => l.id)).toEqual(["uk-cool"]);
  });

  it("breaks 'less than' at the figure and 'at most' after it", () => {
    const [under] = limitsFor("uk", "off-heat");
    const [most] = limitsFor("us", "off-heat");
    expect([119, 120].map((m) => isOver(under!, minutes(m)))).toEqual([false, true]);
    expect([240, 241].map((m) => isOver(most!, minutes(m)))).toEqual([false, true]);
  });
});

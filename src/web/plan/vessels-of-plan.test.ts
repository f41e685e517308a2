import { describe, expect, it } from "vitest";
import type { Placed, Plan, Prep } from "#engine/index.ts";
import { vesselsInUse } from "./vessels-of-plan.ts";

const placed = (task: string, start: number, end: number) => ({ task, start, end }) as Placed;
const plan = {
  placed: [placed("boil", 60, 90), placed("wash", 100, 103), placed("stew", 20, 200)],
} as unknown as Plan;
const prep = {
  resources: [
    { id: "3 l pan", capacity: 3 },
    { id: "8 l pan", capacity: 1, alsoIn: ["3 l pan"] },
  ],
  stays: [
    { resource: "3 l pan", amount: 2, from: "boil", to: "wash" },
    { resource: "8 l pan", amount: 1, from: "stew", to: null },
    { resource: "3 l pan", amount: 1, from: "stew", to: null },
    { resource: "3 l pan", amount: 1, from: "unplaced", to: null },
  ],
} as unknown as Prep;

describe("vessels in use", () => {
  it("come in order of time, each once at its size, and end with their washing-up", () => {
    expect(vesselsInUse(prep, plan)).toEqual([
      { resource: "8 l pan", amount: 1, task: "stew", from: 20, to: null },
      { resource: "3 l pan", amount: 2, task: "boil", from: 60, to: 103 },
    ]);
  });

  it("are none where the work holds none", () => {
    expect(vesselsInUse({ ...prep, stays: [] }, plan)).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { runEvening } from "#engine/index.ts";
import { readDemo } from "../help/demo.ts";

describe("the same input", () => {
  it("gives the same bytes, whatever ran before", () => {
    const { sitting, cards } = readDemo();
    const first = JSON.stringify(runEvening(sitting!, cards));
    runEvening(sitting!, [...cards].reverse());
    expect(JSON.stringify(runEvening(sitting!, cards))).toBe(first);
  });
});

import { describe, expect, it } from "vitest";
import type { Task } from "#engine/index.ts";
import { handsApart } from "#engine/rest-from-plan/hands-apart.ts";
import { segment, task } from "../sittings/random-prep.ts";

const lengths = (tasks: readonly Task[]): readonly (readonly number[])[] =>
  tasks.map((t) => t.segments.map((s) => s.minutes.likely));

describe("running tasks of one cook", () => {
  const alone = (length: number) => segment(length, "none");
  const hands = (length: number) => segment(length, "hands");

  it("never ask for the hands at once: the later one stands longer before", () => {
    const two = [task("a", 0, [alone(10), hands(5)]), task("b", 0, [alone(12), hands(3)])];
    expect(lengths(handsApart(two))).toEqual([
      [10, 5],
      [15, 3],
    ]);
  });

  it("are left alone where they do not", () => {
    const two = [task("a", 0, [alone(10), hands(5)]), task("b", 0, [alone(15), hands(3)])];
    expect(lengths(handsApart(two))).toEqual(lengths(two));
  });

  it("are left as they are where both ask from the first minute", () => {
    const two = [task("a", 0, [hands(5)]), task("b", 0, [hands(3)])];
    expect(lengths(handsApart(two))).toEqual(lengths(two));
  });
});

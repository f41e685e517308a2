import { expect, it } from "vitest";
import { solvePrep } from "#engine/index.ts";
import { goal, lag, prepOf, segment, task, use } from "./random-prep.ts";

it("what is held by work behind a task that was given up is told so, and not that it has slack", () => {
  const prep = prepOf(
    [
      task("chill", 0, [segment(30, "none", [use("fridge", 10)], "fridge")]),
      task("carve", 0, [segment(10, "hands")], { cooks: ["nobody here"] }),
      task("plate", 0, [segment(5, "hands")], { kind: "plate", finishing: true }),
    ],
    [lag("chill", "carve"), lag("carve", "plate")],
    [goal(0, 1140, ["plate"])],
  );
  const { value } = solvePrep(prep, { tries: 0, seed: 1 });
  expect(value.unplaced).toEqual(["carve"]);
  const chill = value.placed.find((placed) => placed.task === "chill");
  const plate = value.placed.find((placed) => placed.task === "plate");
  expect(chill?.end).toBe(plate?.start);
  expect(chill?.because).toEqual([
    { kind: "lag", task: "plate", reason: "method-order", side: "least", minutes: 0 },
  ]);
});

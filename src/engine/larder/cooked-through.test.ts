import { describe, expect, it } from "vitest";
import { dish, ingredient } from "../../../test/help/dishes.ts";
import { action } from "../../../test/help/made-menu.ts";
import { celsius } from "../measure/units.ts";
import type { Action } from "../model/dish.ts";
import { isCookedThrough } from "./cooked-through.ts";

const nowhere = { start: 0, end: 0 };
const roastOf = (...actions: readonly Action[]) =>
  dish("joint", 4, [ingredient(0, "lamb-rack", 500)], {
    steps: [{ index: 0, text: "", span: nowhere, part: null, phase: "method", actions }],
  });

describe("isCookedThrough", () => {
  it.each([
    ["roasted, no middle stated", [action("a", "roast", [0])], true],
    ["only seared", [action("a", "sear", [0])], false],
    // FDA Food Code 3-401.11(A)(1): 63 °C (145 °F) for 15 s is the least in passing.
    ["roasted to 57 °C", [action("a", "roast", [0], [], { core: celsius(57) })], false],
    ["roasted to 63 °C", [action("a", "roast", [0], [], { core: celsius(63) })], true],
    [
      "roasted, then measured at 57 °C",
      [action("a", "roast", [0]), action("b", "rest", [], ["a"], { core: celsius(57) })],
      false,
    ],
    [
      "pink at first, then braised to 90 °C",
      [
        action("a", "roast", [0], [], { core: celsius(55) }),
        action("b", "braise", [], ["a"], { core: celsius(90) }),
      ],
      true,
    ],
  ] as const)("%s", (_, actions, cooked) => {
    expect(isCookedThrough(roastOf(...actions), 0)).toBe(cooked);
  });
});

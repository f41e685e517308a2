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

describe("a custard", () => {
  const custard = (degrees: number, over: Partial<Action>) => {
    const stirred = action("b", "stir", [], ["a"], { celsius: celsius(degrees), station: "burner", ...over });
    return dish("custard", 4, [ingredient(0, "egg-yolk", 140)], {
      steps: [
        {
          index: 0,
          text: "",
          span: nowhere,
          part: null,
          phase: "method",
          actions: [action("a", "whisk", [0]), stirred],
        },
      ],
    });
  };
  // USDA prints 71 °C (160 °F) for egg dishes; FSA 70 °C for two minutes or 75 °C for 30 seconds.
  it.each([
    ["stirred to 82 °C on the burner", 82, {}, true],
    ["stirred to 65 °C", 65, {}, false],
    ["stirred at 71 °C with no time stated", 71, { minutes: null }, false],
    ["held in a water bath at 82 °C", 82, { station: "machine" }, false],
  ] as const)("%s", (_, degrees, over, cooked) => {
    expect(isCookedThrough(custard(degrees, over), 0)).toBe(cooked);
  });
  it("says nothing of meat in such a liquid", () => {
    const lamb = roastOf(action("a", "stir", [0], [], { celsius: celsius(82), station: "burner" }));
    expect(isCookedThrough(lamb, 0)).toBe(false);
  });
});

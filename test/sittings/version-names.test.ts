import { describe, expect, it } from "vitest";
import { runEvening } from "#engine/index.ts";
import { readDemo } from "../help/demo.ts";

const { sitting, cards } = readDemo();
const evening = runEvening(sitting!, cards, { tries: 5, seed: 1 }).value;

describe("the work of a version that swaps foods", () => {
  const swapped = evening.menu.dishes.flatMap(({ dish, versions }) =>
    versions
      .filter((v) => v.swaps.length > 0)
      .map((v) => ({
        dish: dish.source,
        version: v.id,
        gone: v.swaps.flatMap((s) => dish.swaps[s]!.out.map((i) => dish.ingredients[i]!.name)),
        comes: v.swaps.flatMap((s) => dish.swaps[s]!.comes.map((c) => c.name)),
      })),
  );
  it("is in the demo", () => {
    expect(swapped.length).toBeGreaterThan(3);
  });
  it.each(swapped)("never names what was taken out of $dish for $version", ({ dish, version, gone }) => {
    const own = evening.prep.tasks.filter((t) => t.dish === dish && t.version === version);
    expect(own.flatMap((t) => t.objects).filter((name) => gone.includes(name))).toEqual([]);
  });
  it("names what comes instead", () => {
    const named = swapped.filter(({ dish, version, comes }) =>
      evening.prep.tasks.some(
        (t) => t.dish === dish && t.version === version && t.objects.some((name) => comes.includes(name)),
      ),
    );
    expect(named.length).toBeGreaterThan(3);
  });
});

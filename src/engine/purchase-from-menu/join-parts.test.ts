import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { joinParts } from "./join-parts.ts";

const part: fc.Arbitrary<string> = fc.constantFrom("yolk", "white", "shell");
const uses = fc.array(
  fc.record({
    parts: fc.uniqueArray(part, { minLength: 1, maxLength: 2 }),
    wholes: fc.integer({ min: 0, max: 40 }),
  }),
  { maxLength: 8 },
);
const weightOf = (name: string): number => ({ yolk: 17, white: 33 })[name] ?? 5;

describe("joinParts", () => {
  it("takes as many wholes as the part that is asked for most, and shares them all out", () => {
    fc.assert(
      fc.property(uses, (list) => {
        const joined = joinParts(list, ["yolk", "white", "shell"], weightOf);
        const asked = (name: string): number =>
          list.reduce((sum, use) => sum + (use.parts.includes(name) ? use.wholes : 0), 0);
        expect(joined.wholes).toBe(Math.max(asked("yolk"), asked("white"), asked("shell")));
        expect(joined.shares.reduce((a, b) => a + b, 0)).toBeCloseTo(joined.wholes, 6);
        for (const [name, over] of joined.over) expect(over).toBe(joined.wholes - asked(name));
        joined.shares.forEach((s, i) => {
          if (list[i]!.parts.length === 1) expect(s).toBeLessThanOrEqual(list[i]!.wholes + 1e-9);
        });
      }),
    );
  });

  it("charges by weight what is shared, and the rest to those who need it", () => {
    const yolk = { parts: ["yolk"], wholes: 5 };
    const white = { parts: ["white"], wholes: 3 };
    const [a, b] = joinParts([yolk, white], ["yolk", "white"], weightOf).shares;
    expect(a).toBeCloseTo(3 * 0.34 + 2);
    expect(b).toBeCloseTo(3 * 0.66);
  });

  it("says what is over of a part that nobody asks for", () => {
    const { over } = joinParts([{ parts: ["yolk"], wholes: 8 }], ["yolk", "white"], weightOf);
    expect([...over]).toEqual([
      ["yolk", 0],
      ["white", 8],
    ]);
  });
});

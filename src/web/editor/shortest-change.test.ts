import fc from "fast-check";
import { expect, it } from "vitest";
import { shortestChange, withEdits } from "./shortest-change.ts";

it.each([
  ["one egg", "two eggs"],
  ["aa", "aaa"],
  ["", "new"],
  ["gone", ""],
])("turns %j into %j", (before, after) => {
  const { from, to, insert } = shortestChange(before, after);
  expect(before.slice(0, from) + insert + before.slice(to)).toBe(after);
});

it("always gives the text that was wanted, and touches nothing outside", () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (before, after) => {
      const { from, to, insert } = shortestChange(before, after);
      expect(from).toBeLessThanOrEqual(to);
      expect(before.slice(0, from) + insert + before.slice(to)).toBe(after);
    }),
  );
});

it("applies several edits of one fix together", () => {
  expect(
    withEdits("a b c", [
      { span: { start: 0, end: 1 }, text: "first" },
      { span: { start: 4, end: 5 }, text: "last" },
      { span: { start: 2, end: 2 }, text: "not " },
    ]),
  ).toBe("first not b last");
});

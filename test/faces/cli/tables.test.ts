import { describe, expect, it } from "vitest";
import { tableText, widthOf, wrap } from "#cli/show/table.ts";

describe("tables", () => {
  it("set columns under each other, by what a terminal shows", () => {
    expect(
      tableText(
        [
          ["a", "1"],
          ["crème", "22"],
        ],
        ["left", "right"],
      ),
    ).toBe("a       1\ncrème  22\n");
    expect([widthOf("é"), widthOf("e\u0301"), widthOf("日本")]).toEqual([1, 1, 4]);
  });
  it("break long lines between words", () => {
    expect(wrap("one two three", "  ", "    ", 9)).toBe("  one two\n    three\n");
  });
});

import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { findingsPages } from "../../scripts/findings-pages.ts";

const folder = new URL("../../docs/findings/", import.meta.url);

it.each(findingsPages().map((page) => [page.name, page.text]))(
  "docs/findings/%s is what the examples give",
  (name, text) => {
    expect(readFileSync(new URL(name, folder), "utf8")).toBe(text);
  },
);

it("docs/findings holds no page without a rule", () => {
  expect(readdirSync(folder).sort()).toEqual(
    findingsPages()
      .map((page) => page.name)
      .sort(),
  );
});

import { readdirSync } from "node:fs";
import { cruise, type ICruiseOptions, type ICruiseResult } from "dependency-cruiser";
import { describe, expect, it } from "vitest";
// @ts-expect-error The rule file is plain JavaScript, read by the tool as it is.
import rules from "../.dependency-cruiser.mjs";

const sources = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((name) =>
  /\.tsx?$/.test(name),
);

describe("the fences", () => {
  it("hold: nobody imports what is not theirs to import", async () => {
    const { forbidden, options } = rules as { forbidden: unknown[]; options: ICruiseOptions };
    const { output } = await cruise(["src"], {
      ...options,
      ruleSet: { forbidden: forbidden as never },
      validate: true,
    });
    const { summary, modules } = output as ICruiseResult;
    // With a TypeScript that it cannot use, the tool reads nothing and still finds no fault.
    const read = modules.filter((module) => module.source.startsWith("src/"));
    expect(read.length).toBeGreaterThanOrEqual(sources.length);
    expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`)).toEqual([]);
  });
});

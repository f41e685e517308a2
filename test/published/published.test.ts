import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { checkedAgainst } from "../../scripts/checked-against.ts";
import { projectRoot } from "../../scripts/tables/csv.ts";
import { allChecks } from "./all-checks.ts";

const topics = await allChecks();

const meets = (actual: unknown, expected: unknown, tolerance: number): void => {
  if (typeof actual === "number" && typeof expected === "number")
    expect(Math.abs(actual - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(tolerance + 1e-12);
  else if (Array.isArray(actual) && Array.isArray(expected) && tolerance > 0) {
    expect(actual).toHaveLength(expected.length);
    actual.forEach((value, place) => {
      meets(value, expected[place], tolerance);
    });
  } else expect(actual).toEqual(expected);
};

describe.each(topics.map(({ topic, checks }) => [topic, checks] as const))("%s", (_topic, checks) => {
  test.each(checks.map((check) => [check.what, check.source, check] as const))("%s (%s)", (_w, _s, check) => {
    const [actual, expected, tolerance = 0] = check.run();
    meets(actual, expected, tolerance);
  });
});

test("no topic is empty, and there are many checks", () => {
  expect(topics.filter(({ checks }) => checks.length === 0)).toEqual([]);
  expect(topics.flatMap(({ checks }) => checks).length).toBeGreaterThanOrEqual(400);
});

test("every check says where its figure comes from", () => {
  const silent = topics.flatMap(({ checks }) => checks).filter((check) => check.source.trim() === "");
  expect(silent).toEqual([]);
});

test("docs/checked-against.md is what the checks print", () => {
  const committed = readFileSync(`${projectRoot}docs/checked-against.md`, "utf8");
  expect(committed === checkedAgainst(topics), "run npm run docs").toBe(true);
});

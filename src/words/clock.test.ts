import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  civilDate,
  clockText,
  dateOfDay,
  dayNumber,
  dayText,
  endText,
  isoText,
  momentText,
  relativeDayText,
} from "./clock.ts";

describe("civil dates", () => {
  it("agree with the running machine's own calendar, and come back", () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 200_000 }), (days) => {
        const date = dateOfDay(days);
        expect(isoText(date)).toBe(new Date(days * 86_400_000).toISOString().slice(0, 10));
        expect(dayNumber(date)).toBe(days);
      }),
    );
  });
  it.each([
    // ISO 8601: no such days.
    "2026-02-29",
    "2026-13-01",
    "2026-00-10",
    "2026-04-31",
    "26-04-01",
    "2026-4-1",
    "1900-02-29",
  ])("knows that %s is none", (iso) => {
    expect(civilDate(iso)).toBeNull();
  });
  it.each([
    ["2026-10-17", 0, "Saturday 17 October"],
    ["2026-10-17", -1, "Friday 16 October"],
    ["2026-03-01", -1, "Saturday 28 February"],
    ["2024-03-01", -1, "Thursday 29 February"],
    ["2026-12-31", 1440, "Friday 1 January"],
    // The moon landing, a Sunday.
    ["1969-07-20", 0, "Sunday 20 July"],
  ])("%s and %i minutes is %s", (date, moment, text) => {
    expect(dayText(date, moment)).toBe(text);
  });
  it.each([
    [0, "00:00"],
    [1439, "23:59"],
    [1440, "00:00"],
    [-1, "23:59"],
    [1145.4, "19:05"],
  ])("%f minutes is %s on the clock", (moment, text) => {
    expect(clockText(moment)).toBe(text);
  });
  it.each([
    [600, 720, "12:00"],
    [600, 1440, "00:00"],
    [600, 1500, "Fri 01:00"],
    [775, 775 + 2880, "Sat 12:55"],
    [600, 600, "10:00"],
    [600, 600 + 10 * 1440, "Sun 10 Jan 10:00"],
  ])("a stretch from %i to %i ends at %s", (from, to, text) => {
    expect(endText("2026-12-31", from, to)).toBe(text);
  });
  it("tells days without a date by their distance", () => {
    expect([-1441, -1, 0, 1440].map(relativeDayText)).toEqual([
      "2 days before",
      "the day before",
      "on the day",
      "the day after",
    ]);
    expect(momentText("", 60)).toBe("on the day 01:00");
  });
});

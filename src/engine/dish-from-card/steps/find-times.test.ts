import { describe, expect, it } from "vitest";
import { findTimes } from "./find-times.ts";
import { tokenise } from "./tokens.ts";

const read = (text: string): string =>
  findTimes(tokenise(text))
    .map(
      (t) =>
        `${t.kind} ${[t.minutes.low, t.minutes.likely, t.minutes.high].map((m) => Math.round(m * 100) / 100).join("/")}`,
    )
    .join("; ");

describe("times in words", () => {
  it.each([
    ["for 10 minutes", "length 10/10/10"],
    ["25-30 minutes", "length 25/27.5/30"],
    ["25 – 30 mins", "length 25/27.5/30"],
    ["10 to 15 minutes", "length 10/12.5/15"],
    ["between 10 and 15 minutes", "length 10/12.5/15"],
    ["2 or 3 minutes", "length 2/2.5/3"],
    ["ten to fifteen minutes", "length 10/12.5/15"],
    ["forty-five minutes", "length 45/45/45"],
    ["half an hour", "length 30/30/30"],
    ["for about ½ an hour", "length 27/30/34.5"],
    ["3/4 of an hour", "length 45/45/45"],
    ["no more than 10 minutes", "length 10/10/10"],
    ["for another 15.", "more 15/15/15"],
    ["for another 15 meatballs", ""],
    ["a quarter of an hour", "length 15/15/15"],
    ["three quarters of an hour", "length 45/45/45"],
    ["an hour and a half", "length 90/90/90"],
    ["1 1/2 hours", "length 90/90/90"],
    ["1½ hours", "length 90/90/90"],
    ["1.5 hours", "length 90/90/90"],
    ["2 and a half hours", "length 150/150/150"],
    ["1h30", "length 90/90/90"],
    ["1 hour 15 minutes", "length 75/75/75"],
    ["one hour and ten minutes", "length 70/70/70"],
    ["90 seconds", "length 1.5/1.5/1.5"],
    ["30 seconds to 1 minute", "length 0.5/0.75/1"],
    ["45 minutes to an hour", "length 45/52.5/60"],
    ["a few minutes", "length 2/3/5"],
    ["a couple of minutes", "length 2/2/3"],
    ["a minute or two", "length 1/1.5/2"],
    ["an hour or so", "length 54/60/69"],
    ["about 20 minutes", "length 18/20/23"],
    ["at least 3 hours", "length 180/180/270"],
    ["up to 2 days", "length 1440/2880/2880"],
    ["overnight", "length 480/600/720"],
    ["2 hours or overnight", "length 120/480/720"],
    ["another 5 minutes", "more 5/5/5"],
    ["5 more minutes", "more 5/5/5"],
    ["3 minutes per side", "side 3/3/3"],
    ["5 minutes on each side", "side 5/5/5"],
    ["8 minutes a batch", "batch 8/8/8"],
    ["every 10 minutes", "interval 10/10/10"],
    ["for the last 5 minutes", "last 5/5/5"],
    ["after 20 minutes", "wait 20/20/20"],
    ["the next day", "wait 480/600/720"],
    ["20 minutes per 500 g", "rate 20/20/20"],
    ["the best part of an hour", "length 51/55.2/60"],
    ["getting on for two hours", "length 102/114/120"],
    ["well over an hour", "length 60/69/81"],
    ["upwards of three hours", "length 180/180/270"],
    ["three hours or more", "length 180/180/270"],
    ["overnight, 8 hours at the least", "length 480/480/720"],
    ["three and a half hours, maybe four", "length 210/225/240"],
    ["20 to 25 minutes, maybe 30 for a big one", "length 20/22.5/25"],
    ["an hour, or anything up to an hour and a half", "length 60/75/90"],
    ["1 min 30", "length 1.5/1.5/1.5"],
    ["fry them ten a side", "side 10/10/10"],
    ["a quarter of an hour a kilo plus twenty", "rate 15/15/15; more 20/20/20"],
    ["leave till tomorrow", "length 480/600/720"],
    ["salt it the night before", "length 480/600/720"],
    ["rest five", "length 5/5/5"],
    ["down to 5 inside the hour", "length 60/60/60"],
    ["serve it five", ""],
    ["cut into 2 cm pieces", ""],
    ["3-day-old bread", ""],
    ["12 rounds, 3 trays", ""],
    ["two thirds of the butter", ""],
  ])("%s", (text, expected) => {
    expect(read(text)).toBe(expected);
  });
});

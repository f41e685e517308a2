import type { CriticalLimit } from "#engine/index.ts";
import { celsiusText, durationText } from "./quantity-text.ts";

/** A limit as a cook reads it: "the middle reaches at least 75 °C for 30 s". */
export const limitText = (limit: CriticalLimit, region: string): string => {
  const heat = limit.celsius === null ? null : celsiusText(limit.celsius, region);
  const time = limit.minutes === null ? null : durationText(limit.minutes);
  const level =
    heat === null ? "" : limit.comparator === "at-least" ? `${heat} or hotter` : `${heat} or colder`;
  const atMost = time === null ? "" : ` for ${time} at most`;
  switch (limit.quantity) {
    case "core":
      return `the middle reaches ${level}${time === null ? "" : `, held ${time}`}`;
    case "cool-to":
      return `cooled to ${level}${time === null ? "" : ` within ${time}`}`;
    case "hold-hot":
      return `kept ${level === "" ? "hot" : `at ${level}`}${atMost}`;
    case "reheat":
      return `reheated to ${level}${time === null ? "" : `, held ${time}`}, once`;
    case "off-heat":
      return `below ${heat ?? "that"}${atMost}, once`;
    case "out-of-cold":
      return `above ${heat ?? "that"}${atMost}, once`;
    case "freeze":
      return `frozen through at ${level}${time === null ? "" : ` for at least ${time}`}`;
    case "hold-cold":
      return `kept ${level === "" ? "cold" : `at ${level}`}${atMost}`;
    case "keep":
      return `kept${heat === null ? "" : ` at ${level}`}${atMost}`;
  }
};

/** Stands under every sheet that names a temperature or an allergen. */
export const deferral =
  "These are the usual cautions, computed from what the cards say; they are not a judgement that any food may be eaten. " +
  "Your local food code, and a licensed practitioner where one is called for, come first.";

/** Stands under every declaration. */
export const allergenDeferral =
  "What is not listed was not found in the words; that is no promise of absence. Read the label of what you buy, keep " +
  "traces apart, and speak with each guest.";

/** Where the names in brackets lead. */
export const sourcesNote = "Each source in brackets is a row of data/SOURCES.md.";

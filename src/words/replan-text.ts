import type { Moved, Overrun } from "#engine/index.ts";
import { momentText } from "./clock.ts";
import { durationText } from "./quantity-text.ts";

/** Headings of a plan for what is left of a night. */
export const replanHeadings = {
  courses: "Courses now",
  unplaced: "No place was found for",
  changes: "What changes",
  overruns: "Has waited too long",
  nothing: "Nothing changes.",
  over: "No course is left to serve.",
} as const;

/** How a task stands otherwise: "17:40 instead of 17:25, Tobias instead of Maud". */
export const changeText = ({ before, after }: Moved, date: string): string => {
  if (after === null) return "finds no place any more";
  if (before === null) return `now at ${momentText(date, after.start)}`;
  const parts = [
    before.start === after.start
      ? `still at ${momentText(date, after.start)}`
      : `${momentText(date, after.start)} instead of ${momentText(date, before.start)}`,
    before.cook === after.cook ? "" : `${after.cook ?? "nobody"} instead of ${before.cook ?? "nobody"}`,
    before.oven === after.oven ? "" : `${after.oven ?? "no oven"} instead of ${before.oven ?? "no oven"}`,
  ];
  return parts.filter((part) => part !== "").join(", ");
};

/** What has waited too long, and by how much. */
export const overrunText = ({ before, after, by }: Overrun, task: (id: string) => string): string =>
  `${task(before)}: ${durationText(by)} over its limit before: ${task(after)}`;

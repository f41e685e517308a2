import type { Moved, Overrun, Overtime } from "#engine/index.ts";
import { clockText, momentText } from "./clock.ts";
import { durationText } from "./quantity-text.ts";

/** Headings of a plan for what is left of a night. */
export const replanHeadings = {
  courses: "Courses now",
  changes: "What changes",
  overruns: "Waits longer than it should",
  overtime: "Stays on",
  nothing: "Nothing changes.",
  over: "No course is left to serve.",
} as const;

/** How a task stands otherwise: "17:40 instead of 17:25, Tobias instead of Maud". Times are of the sitting's day unless another is named. */
export const changeText = ({ before, after }: Moved, date: string): string => {
  const at = (moment: number): string =>
    moment >= 0 && moment < 1440 ? clockText(moment) : momentText(date, moment);
  if (after === null) return "finds no place any more";
  if (before === null) return `now at ${at(after.start)}`;
  const parts = [
    before.start === after.start
      ? `still at ${at(after.start)}`
      : `${at(after.start)} instead of ${at(before.start)}`,
    before.cook === after.cook ? "" : `${after.cook ?? "nobody"} instead of ${before.cook ?? "nobody"}`,
    before.oven === after.oven ? "" : `${after.oven ?? "no oven"} instead of ${before.oven ?? "no oven"}`,
  ];
  return parts.filter((part) => part !== "").join(", ");
};

/** What waits longer than its limit, for what, and what hangs on it. */
export const overrunText = (
  { before, after, kind, waits, limit, by }: Overrun,
  task: (id: string) => string,
): string => {
  const how = `${durationText(waits)}, ${durationText(by)} more than its ${durationText(limit)}`;
  const text = `${task(before)}: ${how}, before: ${task(after)}`;
  switch (kind) {
    case "together":
      return `${task(before)} and ${task(after)} leave ${durationText(waits)} apart`;
    case "quality":
      return text;
    case "part-cooked":
      return `${text}. It waits half cooked, and food safety hangs on that: go by your local code`;
    case "hot-holding":
      return `${text}. Food safety hangs on how long it stands: measure it, and go by your local code`;
    case "cold-keeping":
      return `${text}. Food safety hangs on how long it is kept: go by your local code`;
    case "cooling":
      return `${text}. Food safety hangs on how soon it is cooled: go by your local code`;
  }
};

/** Who is needed after the end of the shift. */
export const overtimeText = ({ cook, until, by }: Overtime): string =>
  `${cook} until ${clockText(until)}, ${durationText(by)} more than the shift`;

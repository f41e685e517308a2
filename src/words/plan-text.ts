import type { Cause, Task } from "#engine/index.ts";
import { clockText, momentText } from "./clock.ts";
import { lagLabels } from "./labels.ts";
import { capital, countText, listText, numberText } from "./number-text.ts";
import { durationText, massText } from "./quantity-text.ts";

/** A task as an order to a cook: "Peel potatoes and carrots (2.4 kg)". */
export const taskText = (task: Pick<Task, "verb" | "objects" | "amount" | "thenClean">): string => {
  const what = task.objects.length > 0 ? ` ${listText(task.objects)}` : "";
  const amount = task.amount === null ? "" : ` (${amountText(task.amount)})`;
  return `${capital(task.verb)}${what}${amount}${task.thenClean === true ? ", clean down" : ""}`;
};

const amountText = ({ value, unit }: NonNullable<Task["amount"]>): string => {
  switch (unit) {
    case "g":
      return massText(value);
    case "portion":
      return countText(value, "portion", "portions");
    case "batch":
      return countText(value, "batch", "batches");
    case "piece":
      return numberText(value, 1);
  }
};

/** Why a task stands where it stands. Names of other tasks and courses are looked up by the caller. */
export const causeText = (
  cause: Cause,
  names: {
    readonly task: (id: string) => string;
    readonly course: (index: number) => string;
    readonly date: string;
    /** When another task begins; without it, others are taken to come after. */
    readonly startOf?: (id: string) => number | null;
  },
  /** When the task itself begins. */
  start: number | null = null,
): string => {
  switch (cause.kind) {
    case "lag": {
      const wait = cause.minutes === 0 ? "" : ` (${durationText(Math.abs(cause.minutes))})`;
      const other = names.startOf?.(cause.task) ?? null;
      const side = start !== null && other !== null && other < start ? "before" : "after";
      const label = (lagLabels as Readonly<Record<string, { after: string; before: string }>>)[cause.reason];
      return `${label?.[side] ?? cause.reason}${wait}: ${names.task(cause.task)}`;
    }
    case "cook":
      return `${cause.cook} then turns to: ${names.task(cause.task)}`;
    case "resource":
      return `the ${cause.resource} is then taken by: ${names.task(cause.task)}`;
    case "oven":
      return `the ${cause.oven} is then taken by: ${names.task(cause.task)}${
        cause.changeMinutes > 0 ? `, ${durationText(cause.changeMinutes)} to change its heat` : ""
      }`;
    case "shift":
      return `${cause.cook}'s shift turns at ${momentText(names.date, cause.at)}`;
    case "due":
      return `${names.course(cause.course)} is due at ${clockText(cause.at)}`;
    case "calm":
      return `done by ${momentText(names.date, cause.at)}, so that the last hour is left to finishing`;
    case "spread":
      return `${cause.cook} has enough to do in the shift until ${momentText(names.date, cause.at)}`;
  }
};

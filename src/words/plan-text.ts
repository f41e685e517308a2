import type { Cause, Dish, GoalLevel, LagReason, Task } from "#engine/index.ts";
import { clockText, momentText } from "./clock.ts";
import { lagLabels } from "./labels.ts";
import { capital, countText, listText, numberText } from "./number-text.ts";
import { durationText, massText } from "./quantity-text.ts";

/** Over work that has no place in a plan. */
export const unplacedHeading = "No place was found for";

/** A task as an order to a cook: "Peel potatoes and carrots (2.4 kg)". */
export const taskText = (task: Pick<Task, "verb" | "objects" | "amount" | "thenClean">): string => {
  const what = task.objects.length > 0 ? ` ${listText(task.objects)}` : "";
  const amount = task.amount === null ? "" : ` (${amountText(task.amount)})`;
  return `${capital(task.verb)}${what}${amount}${task.thenClean === true ? ", clean down" : ""}`;
};

/** The words of the card that a task comes from, on one line; null for a task that no card tells. */
export const cardWords = (
  dishes: readonly Pick<Dish, "source" | "text">[],
  task: Pick<Task, "dish" | "span">,
): string | null => {
  const text = dishes.find((d) => d.source === task.dish)?.text;
  return text === undefined || task.span === null
    ? null
    : text.slice(task.span.start, task.span.end).replace(/\s+/g, " ").trim();
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
  const comesBefore = (id: string): boolean => {
    const other = names.startOf?.(id) ?? null;
    return start !== null && other !== null && other < start;
  };
  /** Of two tasks on one thing: the other has it before, or then. */
  const taken = (thing: string, id: string): string =>
    comesBefore(id)
      ? `until then the ${thing} is taken by: ${names.task(id)}`
      : `the ${thing} is then taken by: ${names.task(id)}`;
  switch (cause.kind) {
    case "lag": {
      const wait = cause.minutes === 0 ? "" : ` (${durationText(Math.abs(cause.minutes))})`;
      const label = lagLabels[reasonOf(cause)][comesBefore(cause.task) ? "before" : "after"];
      return `${label}${wait}: ${names.task(cause.task)}`;
    }
    case "cook":
      return comesBefore(cause.task)
        ? `${cause.cook} is still busy with: ${names.task(cause.task)}`
        : `${cause.cook} then turns to: ${names.task(cause.task)}`;
    case "resource":
      return cause.freeAt !== undefined && (cause.earlier === true || comesBefore(cause.task))
        ? `the ${cause.resource} is free from ${clockText(cause.freeAt)}, after: ${names.task(cause.task)}`
        : taken(cause.resource, cause.task);
    case "oven":
      return `${taken(cause.oven, cause.task)}${
        cause.changeMinutes > 0 ? `, ${durationText(cause.changeMinutes)} to change its heat` : ""
      }`;
    case "shift":
      return `${cause.cook}'s shift turns at ${momentText(names.date, cause.at)}`;
    case "open":
      return `heat is on, and somebody is in the kitchen only ${cause.earlier ? "from" : "until"} ${momentText(names.date, cause.at)}`;
    case "fixed":
      return "it is asked to begin then";
    case "due":
      return `${names.course(cause.course)} lands with it and is due at ${clockText(cause.at)}`;
    case "calm":
      return `done by ${momentText(names.date, cause.at)}, so that the last hour is left to finishing`;
    case "level":
      return levelCauses[cause.level];
    case "spread":
      return `${cause.cook} has enough to do in the shift until ${momentText(names.date, cause.at)}`;
    case "slack":
      return `nothing: it could stand up to ${durationText(cause.minutes)} later, and so a slip has somewhere to go`;
  }
};

/** Why a least wait of none is there is told by the order of the work; the limit itself is told by its own reason. */
const reasonOf = ({ reason, side, minutes }: Extract<Cause, { kind: "lag" }>): LagReason => {
  const limit = reason === "hold-limit" || reason === "fridge-limit" || reason === "serve-soon";
  if (side === "most" || !limit) return reason;
  return minutes > 0 ? "stated-wait" : "uses-product";
};

/** What would be worse in the plan if a task stood later. */
const levelCauses: { readonly [L in GoalLevel]: string } = {
  late: "later, a course would be late",
  hold: "later, hot food would wait longer",
  "free-from": "later, it would come after the version that holds what it is free from",
  calm: "later, it would stand in the hour that is left to finishing",
  service: "later, it would stand in the service",
  freshness: "later, cold food would wait longer",
};

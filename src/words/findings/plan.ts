import type { PlanFacts } from "#engine/index.ts";
import { durationText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

const whereText: { readonly [where: string]: string } = {
  fridge: "in the fridge",
  freezer: "in the freezer",
  room: "at room temperature",
  hot: "hot",
};

const withArticle = (noun: string): string => `${/^[aeiou]/i.test(noun) ? "an" : "a"} ${noun}`;

/** What each finding of the work and its plan says, and what to write or change. */
export const planSentences: SentencesOf<PlanFacts> = {
  "station-missing": ({ title, station }) => ({
    says: `${title} needs ${withArticle(station)}, and this kitchen has none. Its work is in the plan without one.`,
    write: `Add one to the kitchen, or write another way to cook it.`,
  }),
  "nobody-on-shift": ({ course }) => ({
    says: `Nobody is on shift to plate ${course}.`,
    write: "Give a cook a shift that lasts until the course has gone.",
  }),
  "course-late": ({ course, minutes }) => ({
    says: `${course} lands ${durationText(minutes)} late; no place was found to have it on time.`,
    write: "Start earlier, add a pair of hands, move its time, or make more of it ahead.",
  }),
  "task-unplaced": ({ verb, title }) => ({
    says: `No place was found for “${verb}” of ${title}.`,
    write: "Look at the shifts, the stations it needs and how long it may wait.",
  }),
  "limits-clash": ({ title, tasks, minutes }) => ({
    says: `The times of ${title} cannot all be kept: ${tasks} need ${minutes} min more than they may have.`,
    write: "Let something wait longer, or shorten one of these steps.",
  }),
  "plan-broken": ({ rule, detail }) => ({
    says: `The plan breaks its own rule “${rule}”: ${detail}. Do not cook from it.`,
    write: "Please report this; the plan is wrong, not your words.",
  }),
  "sitting-value-bad": ({ path, why }) => ({
    says: `${path} cannot be used: ${why}.`,
    write: "Correct the value there.",
  }),
  "keeping-assumed": ({ title, minutes, where }) => ({
    says: `${title} does not say how long it keeps; up to ${durationText(minutes)} ${whereText[where] ?? where} was allowed.`,
    write: "Write how long it keeps and where, such as “Keeps 2 days in the fridge”.",
  }),
  "minutes-assumed": ({ title, verb, minutes }) => ({
    says: `“${verb}” of ${title} has no time; ${minutes} min was planned for this amount.`,
    write: "Write the minutes if yours differ.",
  }),
  "station-in-turns": ({ title, station, turns }) => ({
    says: `${title} does not fit the ${station} at once; it is done in ${turns} turns.`,
    write: "Check that the turns suit the dish, or find more room.",
  }),
};

import type { PlanFacts, TimeReason } from "#engine/index.ts";
import { countText, numberText, percentText } from "../number-text.ts";
import { durationText, massText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

const whereText: { readonly [where: string]: string } = {
  fridge: "in the fridge",
  freezer: "in the freezer",
  room: "at room temperature",
  hot: "hot",
};

const withArticle = (noun: string): string => `${/^[aeiou]/i.test(noun) ? "an" : "a"} ${noun}`;

type TimeFacts = { readonly grams: number; readonly kilowatts: number; readonly millimetres: number };

const thickText = (millimetres: number): string =>
  millimetres === 0 ? "as thick as it is" : `${numberText(millimetres)} mm thick`;

/** What a length was reckoned by, after "by". */
const timeReasons: { readonly [R in TimeReason]: (facts: TimeFacts) => string } = {
  "burner-power": ({ grams, kilowatts }) =>
    `the power of the burners: ${massText(grams)} on ${numberText(kilowatts, 1)} kW`,
  "oven-load": ({ grams, kilowatts }) =>
    `what the oven can give: ${massText(grams)} in all, ${numberText(kilowatts, 1)} kW`,
  thickness: ({ millimetres }) => `heat going to the middle of a piece ${thickText(millimetres)}`,
  layer: ({ millimetres }) => `heat leaving a layer ${thickText(millimetres)}`,
  "ice-bath": ({ grams }) => `a stirred pot in iced water: ${massText(grams)}`,
  surface: ({ grams, kilowatts }) => `what boils away: ${massText(grams)} on ${numberText(kilowatts, 1)} kW`,
};

const unsafeText: { readonly [kind: string]: string } = {
  "part-cooked": "waits half cooked for",
  "hot-holding": "waits hot for",
  "cold-keeping": "is kept for",
  cooling: "waits to be cooled for",
};

const nowhereText = (why: string, what: string): string => {
  switch (why) {
    case "no-oven":
      return "no oven is left that takes it";
    case "no-equipment":
      return `not enough is left of: ${what}`;
    case "no-cook":
      return "nobody is left who can do it";
    default:
      return "no hour was found at which cooks, ovens and equipment are free for it";
  }
};

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
    write: "The plan says what stands in its way, and which changes were tried and help.",
  }),
  "task-unplaced": ({ verb, title }) => ({
    says: `No place was found for “${verb}” of ${title}.`,
    write:
      "The plan says what stands in its way; else look at the shifts, the stations it needs and how long it may wait.",
  }),
  "tasks-unplaced": ({ count, tasks }) => ({
    says: `No place was found for ${countText(count, "task", "tasks")}: ${tasks}.`,
    write:
      "The plan says what stands in their way; else look at the shifts, the stations they need and how long they may wait.",
  }),
  "limits-clash": ({ title, tasks, minutes }) => ({
    says: `The times of ${title} cannot all be kept: ${tasks} need ${minutes} min more than they may have.`,
    write: "Let something wait longer, or shorten one of these steps.",
  }),
  "waits-over": ({ title, verb, minutes, limit, by, together }) =>
    together
      ? {
          says: `The plates of ${title} leave ${durationText(minutes)} apart, ${durationText(by)} more than was meant.`,
          write: "Keep what is plated warm, or let the table know.",
        }
      : {
          says: `${title}: after “${verb}” it waits ${durationText(minutes)}, ${durationText(by)} more than its ${durationText(limit)}.`,
          write:
            "Keep it as it should be kept until then (hot and covered, or cold), and taste it before it goes.",
        },
  "waits-unsafe": ({ title, verb, minutes, limit, kind }) => ({
    says: `${title}: after “${verb}” it ${unsafeText[kind] ?? "waits"} ${durationText(minutes)}; the limit is ${durationText(limit)}. Food safety hangs on that limit.`,
    write:
      "Measure its temperature and decide by your local code whether it may still be served. Where in doubt, it is not served.",
  }),
  "course-slips": ({ course, minutes }) => ({
    says: `${course} lands ${durationText(minutes)} late.`,
    write: "Tell whoever serves it.",
  }),
  "stays-on": ({ cook, minutes }) => ({
    says: `${cook} is needed for ${durationText(minutes)} after the end of the shift.`,
    write: "Ask now, or give the work to somebody else.",
  }),
  "nowhere-tonight": ({ verb, title, why, what }) => ({
    says: `“${verb}” of ${title} has no place any more: ${nowhereText(why, what)}.`,
    write: "Do it another way, borrow what is missing, or leave it out and say so.",
  }),
  "held-up": ({ verb, title }) => ({
    says: `“${verb}” of ${title} cannot go on at once: what it needs is taken or gone.`,
    write: "See where it now stands, and keep what is in it hot or cold until then.",
  }),
  "made-anew": ({ verb, title }) => ({
    says: `“${verb}” of ${title} is done again.`,
    write: "See that what it is made of is still there.",
  }),
  "left-undone": ({ verb, title }) => ({
    says: `“${verb}” of ${title} is left out; whatever it was for, this plan does without.`,
    write:
      "If it was to cook, cool or reheat something, food safety may hang on it: decide by your local code.",
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
  "wait-counted-long": ({ title, verb, minutes, usual }) => ({
    says: `“${verb}” of ${title} is planned with ${durationText(minutes)}, its longest, since it takes no hands; usually ${durationText(usual)} is enough.`,
    write: "Write the time if yours differs.",
  }),
  "time-worked-out": ({ title, verb, minutes, low, high, by, ...facts }) => ({
    says: `“${verb}” of ${title} has no time; about ${durationText(minutes)} was planned (${durationText(low)} to ${durationText(high)}), by ${timeReasons[by](facts)}.`,
    write: "Write the minutes if yours differ.",
  }),
  "time-carried": ({ title, verb, stated, minutes, by, factor, ...facts }) => ({
    says: `“${verb}” of ${title} is ${durationText(stated)} on the card; for ${numberText(factor, 1)} times as much about ${durationText(minutes)} was planned, by ${timeReasons[by]({ millimetres: 0, ...facts })}.`,
    write: null,
  }),
  "tin-instead": ({ title, tins, tin, card, deeper }) => ({
    says: `${title} goes into ${numberText(tins)} × ${tin}: this kitchen has no ${card}, and of what it has its floor is the nearest. ${Math.abs(deeper - 1) < 0.03 ? "It stands as deep as on the card" : `It stands ${percentText(Math.abs(deeper - 1))} ${deeper > 1 ? "deeper" : "less deep"} than on the card, and the time is carried by that`}.`,
    write: "Borrow the card's tin if the form matters.",
  }),
  "tin-missing": ({ title, tins, card }) => ({
    says: `${title} is baked in ${numberText(tins)} × ${card}; this kitchen has neither that tin nor one whose floor is near to it.`,
    write: "Borrow it, or add it to the kitchen's tins.",
  }),
  "tins-taken": ({ title, tins, onCard, deeper }) => ({
    says: `${title} goes into ${countText(tins, "tin", "tins")} where the card fills ${numberText(onCard)}, ${percentText(Math.abs(deeper - 1))} ${deeper > 1 ? "deeper" : "less deep"} than on the card.`,
    write: "Take other tins, or other covers, if the depth matters.",
  }),
  "vessels-short": ({ title, vessel, wanted, has }) => ({
    says: `${title} wants ${numberText(wanted)} of the ${vessel} at once, and this kitchen has ${numberText(has)} as large.`,
    write: "Borrow what is missing, or make it in two lots.",
  }),
  "washing-up-after": ({ vessels, minutes }) => ({
    says: `${countText(vessels, "pan, tray or container", "pans, trays and containers")} that nobody needs again are left to wash up after the service: about ${durationText(minutes)} for one pair of hands.`,
    write: "It is not in the plan; give somebody a shift for it.",
  }),
  "station-in-turns": ({ title, station, turns }) => ({
    says: `${title} does not fit the ${station} at once; it is done in ${turns} turns.`,
    write: "Check that the turns suit the dish, or find more room.",
  }),
};

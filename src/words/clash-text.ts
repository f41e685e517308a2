import type { Clash, ClashDemand, Easing, WayOut } from "#engine/index.ts";
import { clockText, momentText } from "./clock.ts";
import { moreText, thereIsText } from "./equipment-text.ts";
import { countText, listText } from "./number-text.ts";
import { durationText } from "./quantity-text.ts";

/** How tasks (briefly) and courses are called by whoever shows a clash. */
export type ClashNames = {
  readonly task: (id: string) => string;
  readonly course: (index: number) => string;
  readonly date: string;
};

/** Tasks that are named before the demands; of more than these only the number is told. */
const mostTasks = 4;

/** What cannot be, before the demands that clash: "Main cannot be on time, with these to do: …, while all of this holds:". */
export const clashText = (clash: Clash, names: ClashNames): string => {
  const more = clash.tasks.length - mostTasks;
  const shown = clash.tasks.slice(0, more > 1 ? mostTasks : undefined).map((id) => `“${names.task(id)}”`);
  const tasks = listText(more > 1 ? [...shown, `${more} more`] : shown);
  // Its own lengths and hours leave no room for it: nothing else stands in its way.
  if (clash.demands.length === 0) return `There is no place for ${tasks}, whatever else is asked.`;
  const perhaps = clash.smallest ? "" : " (perhaps a part of it clashes already)";
  return clash.lateCourse === null
    ? `There is no place for ${tasks} while all of this holds${perhaps}:`
    : `${names.course(clash.lateCourse)} cannot be on time, with ${tasks} to do, while all of this holds${perhaps}:`;
};

/** Waits that are named; of more than these only the number is told. */
const mostWaits = 4;
const order: readonly ClashDemand["kind"][] = [
  "hands",
  "shift",
  "open",
  "resource",
  "shelves",
  "oven-heat",
  "due",
  "lag",
];

/** The demands of a clash, one a line: what there is first, then when courses land, then the waits. */
export const demandTexts = ({ demands }: Clash, names: ClashNames): readonly string[] => {
  const sorted = demands
    .filter((demand) => !isPaired(demand, demands))
    .toSorted((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
  const texts = (some: readonly ClashDemand[]): readonly string[] => [
    ...new Set(
      some.map((demand) =>
        demand.kind === "due" && demands.some((other) => isSameDue(demand, other))
          ? `${names.course(demand.course)} lands at ${clockText(demand.at)}`
          : demandText(demand, names),
      ),
    ),
  ];
  const rest = texts(sorted.filter((demand) => demand.kind !== "lag"));
  const waits = texts(sorted.filter((demand) => demand.kind === "lag"));
  const more = waits.length - mostWaits;
  if (more < 2) return [...rest, ...waits];
  return [...rest, ...waits.slice(0, mostWaits), `and ${more} more waits`];
};

/** The two sides of one hour: not before it, and not after it. */
const isSameDue = (a: ClashDemand, b: ClashDemand): boolean =>
  a.kind === "due" && b.kind === "due" && a.course === b.course && a.side !== b.side && a.at === b.at;

/** True for the second of the two sides of one hour, which is told with the first. */
const isPaired = (demand: ClashDemand, among: readonly ClashDemand[]): boolean =>
  demand.kind === "due" && demand.side === "least" && among.some((other) => isSameDue(demand, other));

/** One demand of a clash, as a statement that holds. */
export const demandText = (demand: ClashDemand, names: ClashNames): string => {
  switch (demand.kind) {
    case "lag":
      return lagText(demand, names);
    case "shift":
      return `${demand.cook} works the hours that are set, and no others`;
    case "hands":
      return `${demand.cook} has one pair of hands`;
    case "open":
      return "heat is on only while somebody is in the kitchen";
    case "resource":
      return thereIsText(demand.resource, demand.capacity);
    case "shelves":
      return `the ${demand.oven} has ${countText(demand.shelves, "shelf", "shelves")}`;
    case "oven-heat":
      return "an oven has one heat at a time";
    case "due":
      return demand.side === "most"
        ? `${names.course(demand.course)} lands by ${clockText(demand.at)}`
        : `${names.course(demand.course)} does not land before ${clockText(demand.at)}`;
  }
};

const lagText = (demand: Extract<ClashDemand, { kind: "lag" }>, names: ClashNames): string => {
  const before = names.task(demand.before);
  const after = names.task(demand.after);
  const time = durationText(Math.abs(demand.minutes));
  if (demand.reason === "plate-together") return `${before} and ${after} land within ${time} of each other`;
  return demand.side === "most"
    ? `${before} waits at most ${time} for: ${after}`
    : `${before} waits at least ${time} before: ${after}`;
};

/** A change as an order to whoever can make it: "One more burner". */
export const changeText = (change: Easing, names: ClashNames): string => {
  switch (change.kind) {
    case "lag": {
      const by = durationText(Math.abs(change.minutes - change.was));
      const to = durationText(change.minutes);
      const pair = `${names.task(change.before)}, before: ${names.task(change.after)}`;
      return change.side === "most"
        ? `Let it wait up to ${to}, ${by} longer: ${pair}`
        : `Let it wait only ${to}, ${by} less: ${pair}`;
    }
    case "resource":
      return moreText(change.resource, change.more);
    case "oven":
      return `Another oven with ${countText(change.shelves, "shelf", "shelves")}`;
    case "hands":
      return `Another pair of hands from ${momentText(names.date, change.from)} to ${clockText(change.to)}`;
    case "shift":
      return change.end === "from"
        ? `${change.cook} begins at ${momentText(names.date, change.at)} instead of ${clockText(change.was)}`
        : `${change.cook} stays until ${momentText(names.date, change.at)} instead of ${clockText(change.was)}`;
    case "day-before":
      return `${change.cook} also works the day before, ${momentText(names.date, change.from)} to ${clockText(change.to)}`;
    case "course":
      return `${names.course(change.course)} ${durationText(Math.abs(change.minutes))} ${change.minutes < 0 ? "earlier" : "later"}`;
  }
};

/** What the plan is once a change is made: "then every course is on time". */
export const afterText = ({ after, least }: WayOut, names: ClashNames): string => {
  const then =
    after.unplaced > 0
      ? `then ${countText(after.unplaced, "task still has", "tasks still have")} no place`
      : after.lateMinutes > 0
        ? `then courses are ${durationText(after.lateMinutes)} late in all`
        : "then every course is on time";
  const done =
    after.tasks.length === 0
      ? ""
      : after.tasks.length <= 3
        ? `; what is done then: ${listText(after.tasks.map(names.task))}`
        : `; ${after.tasks.length} tasks are done then`;
  return `${then}${done}${least ? "" : " (perhaps less would do)"}`;
};

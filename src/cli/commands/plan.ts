import {
  chainOf,
  courseChains,
  type Evening,
  type Placed,
  type Task,
  usualWhy,
  whyPlan,
} from "#engine/index.ts";
import { planJson, planNames } from "#wire/plan-json.ts";
import { chainText, courseChainTexts } from "#words/chain-text.ts";
import { clockText, dayText, endText, momentText } from "#words/clock.ts";
import { attentionLabels, stationLabels } from "#words/labels.ts";
import { listText } from "#words/number-text.ts";
import { cardWords, causeText, taskText, unplacedHeading } from "#words/plan-text.ts";
import { celsiusText, durationText } from "#words/quantity-text.ts";
import { versionTitle } from "#words/version-text.ts";
import { clashesText } from "../show/clashes.ts";
import { heading } from "../show/heading.ts";
import type { Paint } from "../show/paint.ts";
import { tableText, wrap } from "../show/table.ts";
import { sittingCommand } from "../sitting-command.ts";

/** Shows the work: who does what and when. */
export const planCommand = sittingCommand({
  name: "plan",
  topics: ["work"],
  summary: "show who does what and when, so that each course lands on time",
  about: "Prints when each course is due and lands, then a list for each cook, then what goes by itself.",
  examples: ["tamis plan demo/lantern-supper/sitting.yaml", "tamis plan --why sitting.yaml"],
  options: {
    why: {
      type: "boolean",
      help: "say with each task the words of the card, and why it stands where it stands",
    },
  },
  searches: true,
  text: (evening, paint, flag, _, keepGoing) => planText(evening, paint, flag("why"), keepGoing),
  json: (evening, keepGoing) => ({
    plan: planJson({ ...evening, plan: whyPlan(evening, { ...usualWhy, keepGoing }) }),
  }),
});

/** The landing of each course, one a line. */
export const landingsText = (evening: Evening): string => {
  const { names, date } = planNames(evening);
  return tableText(
    evening.plan.courses.map((course) => [
      course.name,
      `due ${clockText(course.due)}`,
      course.whole ? `lands ${clockText(course.lands)}` : "does not land whole",
      course.whole && course.lateMinutes > 0 ? `${durationText(course.lateMinutes)} late` : "",
      course.firstStart === null || course.firstTask === null
        ? ""
        : `first task ${momentText(date, course.firstStart)}: ${names.task(course.firstTask)}`,
    ]),
    ["left", "left", "left", "left", "left"],
    "  ",
  );
};

const planText = (evening: Evening, paint: Paint, why: boolean, keepGoing: () => boolean): string => {
  const { plan, prep } = evening;
  const cooks = [
    ...new Set([...prep.crew.map((cook) => cook.name), ...plan.placed.flatMap((p) => p.cook ?? [])]),
  ];
  const lists = cooks.map((cook) => {
    const load = plan.load.find((l) => l.cook === cook);
    const name = load === undefined ? cook : `${cook} (hands-on ${durationText(load.handsMinutes)})`;
    return tasksText(
      evening,
      plan.placed.filter((p) => p.cook === cook),
      name,
      paint,
      why,
    );
  });
  const alone = tasksText(
    evening,
    plan.placed.filter((p) => p.cook === null),
    "Goes by itself",
    paint,
    why,
  );
  const { names } = planNames(evening);
  const unplaced =
    plan.unplaced.length === 0
      ? ""
      : `\n${paint.stop(unplacedHeading)}\n${plan.unplaced.map((id) => `  ${names.task(id)}\n`).join("")}`;
  const broken =
    plan.violations.length === 0
      ? ""
      : `\n${paint.stop("The plan breaks its own rules; do not cook from it")}\n${plan.violations.map((v) => `  ${v.rule}: ${v.detail}\n`).join("")}`;
  return `${heading(evening, paint)}\n${paint.bold("Courses")}\n${landingsText(evening)}${why ? chainsText(evening, paint) : ""}${lists.join("")}${alone}${unplaced}${clashesText(whyPlan(evening, { ...usualWhy, keepGoing }), { ...names, task: names.brief }, paint)}${broken}`;
};

/** One cook's list, by day. */
const tasksText = (
  evening: Evening,
  placed: readonly Placed[],
  name: string,
  paint: Paint,
  why: boolean,
): string => {
  if (placed.length === 0) return "";
  const { tasks, title, names, date } = planNames(evening);
  const sorted = placed.toSorted((a, b) => a.start - b.start || a.end - b.end);
  const rows = sorted.map((p) => {
    const task = tasks.get(p.task);
    return {
      day: dayText(date, p.start),
      cells: [
        `${clockText(p.start)}–${endText(date, p.start, p.end)}`,
        task === undefined ? p.task : taskText(task),
        task === undefined
          ? ""
          : versionTitle(listText([task.dish, ...(task.alsoFor ?? [])].map(title)), task.version),
        task === undefined ? "" : placesOfTask(p, task, evening.menu.sitting.region),
      ],
      below: [
        ...(task === undefined ? [] : freeTimes(p, task, date)),
        ...(why ? whyLines(evening, p, names) : []),
      ],
    };
  });
  const lines = tableText(
    rows.map((row) => row.cells),
    ["left", "left", "left", "left"],
    "  ",
  ).split("\n");
  let day = "";
  let text = "";
  rows.forEach((row, i) => {
    if (row.day !== day) text += `${paint.bold(row.day)}\n`;
    day = row.day;
    text += `${lines[i] ?? ""}\n${row.below.map((line) => `               ${paint.faint(line)}\n`).join("")}`;
  });
  return `\n${paint.bold(name)}\n${text}`;
};

/** Why a task stands where it stands, and, where that is pinned by others in turn, the chain to its course. */
const whyLines = (
  evening: Evening,
  placed: Placed,
  names: ReturnType<typeof planNames>["names"],
): readonly string[] => {
  const chain = chainOf(evening.plan, placed.task);
  const task = evening.prep.tasks.find((t) => t.id === placed.task);
  const words = task === undefined ? null : cardWords(evening.dishes, task);
  return [
    ...(words === null ? [] : [`“${words}”`]),
    ...placed.because.map((cause) => `because ${causeText(cause, names, placed.start)}`),
    ...(chain.length > 1 ? [`which stands there because ${chainText(chain, names)}`] : []),
  ];
};

/** The tightest chain of each course. */
const chainsText = (evening: Evening, paint: Paint): string => {
  const { names } = planNames(evening);
  return courseChains(evening.prep, evening.plan)
    .filter((chain) => chain.links.length > 0)
    .map(
      (chain) =>
        `\n${paint.bold(`Tightest chain of ${names.course(chain.course)}`)}\n` +
        courseChainTexts(chain, names)
          .map((text) => wrap(text, "  - ", "    "))
          .join(""),
    )
    .join("");
};

/** Where a task is done, with its heat: "range oven at 200 °C, burner". */
const placesOfTask = (placed: Placed, task: Task, region: string): string =>
  listText([
    ...new Set(
      task.segments.flatMap((segment) => {
        if (segment.station === "hands" || segment.station === "bench") return [];
        const heat = segment.uses.find((use) => use.celsius !== null)?.celsius ?? null;
        const station =
          segment.station === "oven" && placed.oven !== null ? placed.oven : stationLabels[segment.station];
        return [heat === null ? station : `${station} at ${celsiusText(heat, region)}`];
      }),
    ),
  ]);

/** Stretches of an attended task in which the cook is free: "goes alone 17:11–17:25 and 17:32–17:45". */
const freeTimes = (placed: Placed, task: Task, date: string): readonly string[] => {
  if (placed.cook === null) return [];
  const free = task.segments.flatMap((segment, i) => {
    const start = placed.segments[i];
    if (start === undefined || segment.attention !== "none" || segment.minutes.likely < leastFree) return [];
    return [`${clockText(start)}–${endText(date, start, start + Math.ceil(segment.minutes.likely))}`];
  });
  return free.length === 0 ? [] : [`${attentionLabels.none} ${listText(free)}`];
};

/** Minutes below which a cook who is free has no time to turn to something else. Common practice, no source. */
const leastFree = 3;

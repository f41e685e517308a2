import type { CourseRisk, Risk } from "#engine/index.ts";
import { numberText, percentText } from "./number-text.ts";
import { durationText } from "./quantity-text.ts";

/** Headings of the sheet that says how sure a plan is. */
export const riskHeadings = {
  courses: "How sure each course is",
  watch: "What to watch",
  course: "Course",
  withinFive: "Within 5 min",
  expected: "Late on the mean",
  nineInTen: "Nine nights in ten no later than",
} as const;

/** What the figures are and are not. */
export const riskPolicy = (risk: Risk): string =>
  `${numberText(risk.runs)} nights with lengths drawn by chance. Work begins up to a quarter of an hour before its hour when all it needs is there; of what is ready, the next in the plan goes first, by its own cook, or by whoever is free and knows how; ovens and equipment go round in the order of the plan; what is finished waits for its plates. The spreads are common practice, not measured: compare plans by them.`;

/** A chance as people say it; a run of nights proves no certainty. */
export const chanceText = (share: number): string =>
  share >= 0.995 ? "over 99 %" : share < 0.005 ? "under 1 %" : percentText(share, 0);

/** Minutes late, or that it is in time. */
export const latenessText = (minutes: number): string =>
  minutes < 0.5 ? "in time" : `${durationText(minutes)} late`;

/** "Supper: 83 % of nights within 5 min". */
export const surenessText = (course: CourseRisk): string =>
  `${chanceText(course.withinFive)} of nights within 5 min`;

/** What starting sooner buys, over all courses. */
export const spareText = ({ spare, courses }: Risk): string => {
  if (courses.length === 0) return "No course lands whole in this plan: how sure it is cannot be told.";
  const worst = (of: readonly CourseRisk[]): number =>
    of.reduce((least, course) => Math.min(least, course.withinFive), 1);
  const surer = courses.some((course, k) => (spare.courses[k]?.withinFive ?? 0) > course.withinFive);
  if (!surer)
    return `All but the plating begun another ${durationText(spare.minutes)} sooner, as far as hands and limits let it, makes no course surer: the plan has its spare.`;
  return `All but the plating begun ${durationText(spare.minutes)} sooner, as far as hands and limits let it: the least sure course goes from ${chanceText(worst(courses))} to ${chanceText(worst(spare.courses))}.`;
};

/** How much a task brings. */
export const bringsText = (minutes: number, share: number): string =>
  `brings ${minutes < 0.95 ? `${numberText(minutes, 1)} min` : durationText(minutes)} of lateness on the mean, in ${chanceText(share)} of nights`;

import { type CourseChain, courseChains, type Evening, type Task } from "#engine/index.ts";
import { civilDate, clockText, dateOfDay, dayNumber, isoText } from "#words/clock.ts";
import { cardWords, causeText, taskText } from "#words/plan-text.ts";
import { clashJson } from "./clash-json.ts";

/** A moment as ISO 8601 local time, "2026-10-16T14:05"; the minutes alone when the sitting has no date. */
export const isoMoment = (sittingDate: string, moment: number): string => {
  const start = civilDate(sittingDate);
  if (start === null) return String(moment);
  const date = dateOfDay(dayNumber(start) + Math.floor(Math.round(moment) / 1440));
  return `${isoText(date)}T${clockText(moment)}`;
};

/** Look-ups that every view of a plan needs. */
export const planNames = (evening: Evening) => {
  const tasks = new Map<string, Task>(evening.prep.tasks.map((task) => [task.id, task]));
  const titles = new Map(evening.dishes.map((dish) => [dish.source, dish.title]));
  const title = (dish: string): string => titles.get(dish) ?? dish;
  const date = evening.menu.sitting.date;
  const starts = new Map(evening.plan.placed.map((placed) => [placed.task, placed.start]));
  const named = (id: string, amount: boolean): string => {
    const task = tasks.get(id);
    if (task === undefined) return id;
    const text = taskText(amount ? task : { ...task, amount: null });
    const of = title(task.dish);
    return text.toLowerCase().includes(of.toLowerCase()) ? text : `${text}, ${of}`;
  };
  const names = {
    date,
    startOf: (id: string): number | null => starts.get(id) ?? null,
    task: (id: string): string => named(id, true),
    /** Without its amount. */
    brief: (id: string): string => named(id, false),
    course: (index: number): string => evening.menu.sitting.courses[index]?.name ?? String(index + 1),
  };
  return { tasks, title, names, date };
};

/** The tightest chain of a course, and the minutes that what comes before it may overrun by. */
const chainJson = (chain: CourseChain | undefined, names: ReturnType<typeof planNames>["names"]) => ({
  chain: (chain?.links ?? []).map(({ task, cause }) => ({
    ...cause,
    of: task,
    text: causeText(cause, names, names.startOf(task)),
  })),
  slackMinutes: chain?.slackMinutes ?? null,
});

/** The shape of `plan --json`. */
export const planJson = (evening: Evening) => {
  const { tasks, title, names, date } = planNames(evening);
  const { plan } = evening;
  const chains = courseChains(evening.prep, plan);
  const at = (moment: number) => ({ at: isoMoment(date, moment), moment });
  return {
    status: plan.status,
    courses: plan.courses.map((course) => ({
      course: course.course,
      name: course.name,
      due: at(course.due),
      lands: at(course.lands),
      lateMinutes: course.lateMinutes,
      whole: course.whole,
      firstTask: course.firstTask,
      ...chainJson(
        chains.find((chain) => chain.course === course.course),
        names,
      ),
      firstStart: course.firstStart === null ? null : at(course.firstStart),
    })),
    tasks: plan.placed.map((placed) => {
      const task = tasks.get(placed.task);
      return {
        id: placed.task,
        text: task === undefined ? placed.task : taskText(task),
        kind: task?.kind ?? null,
        dish: task?.dish ?? null,
        title: task === undefined ? null : title(task.dish),
        alsoFor: task?.alsoFor ?? [],
        version: task?.version ?? null,
        course: task?.course ?? null,
        cook: placed.cook,
        oven: placed.oven,
        start: at(placed.start),
        end: at(placed.end),
        segments: placed.segments.map((start, i) => {
          const segment = task?.segments[i];
          return {
            start: at(start),
            minutes: segment?.minutes ?? null,
            attention: segment?.attention ?? null,
            station: segment?.station ?? null,
            uses: segment?.uses ?? [],
          };
        }),
        because: placed.because.map((cause) => ({ ...cause, text: causeText(cause, names, placed.start) })),
        span: task?.span ?? null,
        words: task === undefined ? null : cardWords(evening.dishes, task),
      };
    }),
    unplaced: plan.unplaced.map((id) => ({ id, text: names.task(id) })),
    objective: plan.objective,
    load: plan.load,
    violations: plan.violations,
    ...clashJson(plan, { ...names, task: names.brief }),
  };
};

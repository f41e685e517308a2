import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep, Task } from "../model/prep.ts";
import type { Ring } from "./clashing-lags.ts";

const nowhere = { start: 0, end: 0 };

/** What there is to say about a plan: courses that are late, tasks without a place, limits that clash, nobody there. */
export const planFindings = (prep: Prep, plan: Plan, rings: readonly Ring[]): readonly Finding[] => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  // The plate of a dish bears its title; a part that is not plated goes by its card.
  const titles = new Map(
    prep.tasks
      .filter((task) => task.kind === "plate")
      .map((task) => [task.dish, task.objects[0] ?? task.dish]),
  );
  const titleOf = (task: Task | undefined): string => titles.get(task?.dish ?? "") ?? task?.dish ?? "";
  const inRing = new Set(rings.flatMap((ring) => ring.tasks));
  const shifts = prep.crew.flatMap((cook) => cook.shifts);
  const unmanned = prep.courses.filter(
    (goal) =>
      goal.plateTasks.length > 0 && !shifts.some((shift) => shift.from < goal.due && goal.due <= shift.to),
  );
  return [
    ...unmanned.map((goal) =>
      makeFinding(
        "nobody-on-shift",
        "sitting",
        nowhere,
        { course: goal.name },
        { path: `courses/${goal.course}` },
      ),
    ),
    ...plan.courses
      .filter((course) => course.lateMinutes > 0)
      .map((course) =>
        makeFinding(
          "course-late",
          "sitting",
          nowhere,
          { course: course.name, minutes: course.lateMinutes },
          { path: `courses/${course.course}` },
        ),
      ),
    ...rings.map((ring) => {
      const members = ring.tasks.flatMap((id) => tasks.get(id) ?? []);
      const first = members[0];
      const names = members.map((task) => task.verb).join(", ");
      const facts = { title: titleOf(first), tasks: names, minutes: ring.excess };
      return makeFinding("limits-clash", first?.dish ?? "sitting", first?.span ?? nowhere, facts);
    }),
    ...unplacedFindings(
      plan.unplaced.filter((id) => !inRing.has(id)).flatMap((id) => tasks.get(id) ?? []),
      titleOf,
    ),
  ];
};

/** More than so many tasks without a place are told in one finding, dish by dish. */
const mostByOne = 3;

const unplacedFindings = (tasks: readonly Task[], titleOf: (task: Task) => string): readonly Finding[] => {
  if (tasks.length <= mostByOne)
    return tasks.map((task) =>
      makeFinding("task-unplaced", task.dish, task.span ?? nowhere, {
        verb: task.verb,
        title: titleOf(task),
      }),
    );
  const verbs = new Map<string, string[]>();
  for (const task of tasks) {
    const known = verbs.get(titleOf(task)) ?? [];
    if (!known.includes(task.verb)) verbs.set(titleOf(task), [...known, task.verb]);
  }
  const list = [...verbs].map(([title, own]) => `${title} (${own.join(", ")})`).join("; ");
  return [makeFinding("tasks-unplaced", "sitting", nowhere, { count: tasks.length, tasks: list })];
};

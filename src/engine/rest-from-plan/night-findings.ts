import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import type { Plan } from "../model/plan.ts";
import type { Prep, Task, TaskId } from "../model/prep.ts";
import type { Overrun, OverrunKind, Overtime, Progress, Stuck } from "../model/rest.ts";
import { madeAnew } from "./work-left.ts";

/** True for a limit that food safety may hang on. */
export const isOfSafety = (kind: OverrunKind): boolean => kind !== "quality" && kind !== "together";

const nowhere = { start: 0, end: 0 };

type Night = {
  readonly overruns: readonly Overrun[];
  readonly overtime: readonly Overtime[];
  readonly stuck: readonly Stuck[];
  readonly held: readonly TaskId[];
};

/** What there is to say about the plan of a rest. */
export const nightFindings = (
  prep: Prep,
  plan: Plan,
  progress: Progress,
  { overruns, overtime, stuck, held }: Night,
): readonly Finding[] => {
  const tasks = new Map(prep.tasks.map((task) => [task.id, task]));
  const titles = new Map(
    prep.tasks
      .filter((task) => task.kind === "plate")
      .map((task) => [task.dish, task.objects[0] ?? task.dish]),
  );
  const titleOf = (task: Task | undefined): string => titles.get(task?.dish ?? "") ?? task?.dish ?? "";
  const named = (id: TaskId) => {
    const task = tasks.get(id);
    return { verb: task?.verb ?? id, title: titleOf(task) };
  };
  const placeOf = (id: TaskId) => {
    const task = tasks.get(id);
    return [task?.dish ?? "sitting", task?.span ?? nowhere] as const;
  };
  // One food that waits for several things is told once, by the longest wait.
  const worst = new Map<TaskId, Overrun>();
  for (const overrun of overruns) {
    const known = worst.get(overrun.before);
    const graver =
      known === undefined ||
      Number(isOfSafety(overrun.kind)) - Number(isOfSafety(known.kind)) > 0 ||
      (isOfSafety(overrun.kind) === isOfSafety(known.kind) && overrun.by > known.by);
    if (graver) worst.set(overrun.before, overrun);
  }
  const stuckIds = new Set(stuck.map((entry) => entry.task));
  return [
    ...[...worst.values()].map((overrun) => {
      const { verb, title } = named(overrun.before);
      const { kind, waits: minutes, limit, by } = overrun;
      const [source, span] = placeOf(overrun.before);
      return isOfSafety(kind)
        ? makeFinding("waits-unsafe", source, span, { title, verb, minutes, limit, kind })
        : makeFinding("waits-over", source, span, {
            title,
            verb,
            minutes,
            limit,
            by,
            together: kind === "together",
          });
    }),
    ...plan.courses
      .filter((course) => course.lateMinutes > 0)
      .map((course) =>
        makeFinding(
          "course-slips",
          "sitting",
          nowhere,
          { course: course.name, minutes: course.lateMinutes },
          { path: `courses/${course.course}` },
        ),
      ),
    ...overtime.map(({ cook, by }) => makeFinding("stays-on", "sitting", nowhere, { cook, minutes: by })),
    ...stuck.map(({ task, why, what }) =>
      makeFinding("nowhere-tonight", ...placeOf(task), { ...named(task), why, what }),
    ),
    ...held.filter((id) => !stuckIds.has(id)).map((id) => makeFinding("held-up", ...placeOf(id), named(id))),
    ...[...madeAnew(prep, progress)].map((id) => makeFinding("made-anew", ...placeOf(id), named(id))),
    ...(progress.skipped ?? []).map((id) => makeFinding("left-undone", ...placeOf(id), named(id))),
  ];
};

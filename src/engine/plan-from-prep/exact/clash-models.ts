import type { Prep, Task } from "../../model/prep.ts";
import { compile } from "../compile.ts";
import type { Model } from "../model.ts";

/** Ways of doing the whole work that are asked about one by one, at most. */
const mostWays = 12;

/** The work as questions are asked of it. */
export type Asking = {
  /** One for each choice of ways, all with the same tasks and lags. What clashes clashes in every one. */
  readonly models: readonly Model[];
  /** Tasks left out of every question, since there are too many choices: that only allows more. */
  readonly open: ReadonlySet<number>;
};

/** The models of a prep: only one where no task has several ways. */
export const modelsOf = (prep: Prep): Asking => {
  const open = new Set(prep.tasks.flatMap((task, t) => ((task.ways ?? []).length > 0 ? [t] : [])));
  const choices = [...open].reduce((all, t) => all * (1 + (prep.tasks[t]?.ways ?? []).length), 1);
  if (choices > mostWays) return { models: [compile(prep)], open };
  const tasks = prep.tasks.reduce<readonly (readonly Task[])[]>(
    (all, task) =>
      [task.segments, ...(task.ways ?? [])].flatMap((segments) =>
        all.map((before) => [...before, segments === task.segments ? task : { ...task, segments }]),
      ),
    [[]],
  );
  return { models: tasks.map((chosen) => compile({ ...prep, tasks: chosen })), open: new Set() };
};

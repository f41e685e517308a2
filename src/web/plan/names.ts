import type { Evening, Task } from "#engine/index.ts";
import { listText } from "#words/number-text.ts";
import { cardWords, taskText } from "#words/plan-text.ts";

/** Look-ups that the plan's views share. */
export type PlanNames = {
  readonly date: string;
  readonly task: (id: string) => string;
  /** Without its amount. */
  readonly brief: (id: string) => string;
  /** When a task begins; null without a place. */
  readonly startOf: (id: string) => number | null;
  readonly taskOf: (id: string) => Task | null;
  readonly course: (index: number) => string;
  /** The titles of all dishes that a task is done for. */
  readonly dishes: (task: Task) => string;
  /** The words of the card that it comes from; null for none. */
  readonly words: (task: Task) => string | null;
};

/** Names of tasks, courses and dishes of an evening. */
export const namesOf = ({ prep, plan, menu, dishes }: Evening): PlanNames => {
  const tasks = new Map(prep.tasks.map((t) => [t.id, t]));
  const named = (id: string, amount: boolean): string => {
    const task = tasks.get(id);
    if (task === undefined) return id;
    const text = taskText(amount ? task : { ...task, amount: null });
    const of = titles.get(task.dish) ?? task.dish;
    return text.toLowerCase().includes(of.toLowerCase()) ? text : `${text}, ${of}`;
  };
  const starts = new Map(plan.placed.map((p) => [p.task, p.start]));
  const titles = new Map(dishes.map((d) => [d.source, d.title]));
  return {
    date: menu.sitting.date,
    task: (id) => named(id, true),
    brief: (id) => named(id, false),
    startOf: (id) => starts.get(id) ?? null,
    taskOf: (id) => tasks.get(id) ?? null,
    course: (index) => menu.sitting.courses[index]?.name ?? "",
    dishes: ({ dish, alsoFor = [] }) => listText([dish, ...alsoFor].map((id) => titles.get(id) ?? id)),
    words: (task) => cardWords(dishes, task),
  };
};

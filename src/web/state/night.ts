import {
  type Evening,
  moment,
  type Placed,
  type Plan,
  type Progress,
  planTaken,
  progressAt,
  type TaskId,
} from "#engine/index.ts";
import { makeStore, type Store } from "./store.ts";

/** What has been marked on the board of a night, and the plan that was taken since; kept in this browser alone. */
export type Night = {
  /** Minutes that tasks go on longer. */
  readonly late: Readonly<Record<TaskId, number>>;
  /** When tasks were said to be done. */
  readonly done: Readonly<Record<TaskId, number>>;
  readonly notBegun: readonly TaskId[];
  readonly skipped: readonly TaskId[];
  /** Where the work stands in the plan that was taken; null while it is the sitting's own. */
  readonly taken: { readonly placed: readonly Placed[]; readonly courses: Plan["courses"] } | null;
};

/** A night on which all goes as planned. */
export const plainNight: Night = { late: {}, done: {}, notBegun: [], skipped: [], taken: null };

const nameOf = (book: string): string => `tamis:night:${book}`;

/** The night that this browser keeps of a book. */
export const keptNight = (book: string): Night => {
  try {
    const kept = JSON.parse(localStorage.getItem(nameOf(book)) ?? "null") as Partial<Night> | null;
    return { ...plainNight, ...kept };
  } catch {
    return plainNight;
  }
};

const stores = new Map<string, Store<Night>>();

/** The night of a book. What is changed in it is kept; where the browser keeps nothing it lasts as long as the page. */
export const nightStore = (book: string): Store<Night> => {
  const known = stores.get(book);
  if (known !== undefined) return known;
  const store = makeStore(keptNight(book));
  store.watch(() => {
    try {
      localStorage.setItem(nameOf(book), JSON.stringify(store.get()));
    } catch {
      // The page still shows it.
    }
  });
  stores.set(book, store);
  return store;
};

/** The plan that the night goes by: the one that was taken, as long as it is of the sitting as it now stands. */
export const planOfNight = ({ prep, plan }: Evening, { taken }: Night): Plan => {
  const known = new Set(prep.tasks.map((task) => task.id));
  if (taken === null || !taken.placed.every((placed) => known.has(placed.task))) return plan;
  return { ...plan, placed: taken.placed, courses: taken.courses, unplaced: [], violations: [] };
};

/** How far the night is, by the plan it goes by and what was marked. */
export const progressOf = (evening: Evening, night: Night, now: number): Progress =>
  progressAt(evening.prep, planOfNight(evening, night), {
    now: moment(now),
    late: new Map(Object.entries(night.late)),
    done: new Map(Object.entries(night.done).map(([task, at]) => [task, moment(Math.min(at, now))])),
    notBegun: new Set(night.notBegun),
    skipped: night.skipped,
  });

/** The night once a new plan of its rest is taken: what was said of running work is in it. */
export const taking = (evening: Evening, night: Night, progress: Progress, rest: Plan): Night => {
  const { placed, courses } = planTaken(planOfNight(evening, night), rest, progress);
  const begun = new Set([...progress.done, ...progress.running].map((entry) => entry.task));
  const landed = planOfNight(evening, night).courses.filter(
    (course) => !courses.some((other) => other.course === course.course),
  );
  return {
    ...night,
    late: Object.fromEntries(Object.entries(night.late).filter(([task]) => !begun.has(task))),
    notBegun: [],
    taken: { placed, courses: [...landed, ...courses].sort((a, b) => a.course - b.course) },
  };
};

import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { minutes } from "../measure/units.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { CourseGoal, Prep, Task } from "../model/prep.ts";
import { type DishTasks, dishTasks } from "./dish-tasks.ts";
import type { DraftLag } from "./draft-lag.ts";
import { ovensOf, resourcesOf } from "./equipment.ts";
import { freeFromPairs } from "./free-from.ts";
import { waits } from "./kitchen-rates.ts";
import { latestTimes } from "./latest-times.ts";
import { loosen } from "./loosen.ts";
import { longWaitsOf, prudent } from "./prudent.ts";
import { shareMise } from "./share-mise.ts";
import { staysOf } from "./vessel-stays.ts";
import { vesselsOf } from "./vessels.ts";
import { type Work, worksOf } from "./work.ts";

/**
 * The work of the menu, as tasks with segments, stations and lags. `longWaits`: waits that take no hands are counted at
 * their longest, not at the mean.
 */
export const prepFromMenu = (menu: Menu, longWaits = true): Outcome<Prep, Finding> => {
  const { sitting } = menu;
  const { kitchen } = sitting;
  const works = worksOf(menu);
  const vessels = vesselsOf(kitchen);
  const made = works.map((work, w) => {
    // A course goes to the table once, with the plates of its first dish.
    const first = works.findIndex((other) => other.plated && other.course === work.course) === w;
    return dishTasks(work, kitchen, vessels, first ? kitchen.carry : undefined);
  });
  const plated = new Set(works.flatMap((work) => (work.plated ? [work.dish.source] : [])));
  const shared = shareMise(
    made.flatMap((m) => m.tasks),
    made.flatMap((m) => m.lags),
    made.flatMap((m) => m.cuts),
    // Parts made for several dishes are made when they suit; only dishes of one day share a board.
    (task) => {
      const at = sitting.courses[task.course]?.at;
      return at === undefined || !plated.has(task.dish) ? null : Math.floor(at / 1440);
    },
  );
  const between = [...shared.lags, ...componentLags(menu, works, made)];
  const tasks = prudent(shared.tasks, between, longWaits);
  const plates = new Map<number, string[]>();
  works.forEach((work, w) => {
    const plate = made[w]?.plate;
    if (plate) plates.set(work.course, [...(plates.get(work.course) ?? []), plate]);
  });
  const lags = loosen(tasks, [...between, ...[...plates.values()].flatMap((ids) => together(ids, tasks))]);
  const courses: CourseGoal[] = sitting.courses.flatMap((course, c) => {
    const plateTasks = plates.get(c);
    return plateTasks ? [{ course: c, name: course.name, due: course.at, plateTasks }] : [];
  });
  const inUse = staysOf(
    made.flatMap((m) => m.chains),
    vessels,
    sitting,
    latestTimes(tasks, lags, courses),
  );
  return {
    value: {
      tasks: [...tasks, ...inUse.tasks],
      lags: [...lags, ...inUse.lags],
      courses,
      holds: made.flatMap((m) => m.holds),
      crew: sitting.crew.map(({ name, shifts }) => ({ name, shifts })),
      ovens: ovensOf(kitchen),
      resources: [...resourcesOf(kitchen), ...inUse.resources],
      attention: { capacity: 4, hands: 3, mind: 1 },
      kitchen,
      freeFrom: freeFromPairs(menu, tasks),
      ...(inUse.stays.length > 0 ? { stays: inUse.stays } : {}),
      ...(sitting.spareTime === undefined ? {} : { spareTime: sitting.spareTime }),
    },
    findings: [...made.flatMap((m) => m.findings), ...inUse.findings, ...waitFindings(works, tasks)],
  };
};

/** Waits that are begun so that their longest still fits. */
const waitFindings = (works: readonly Work[], tasks: readonly Task[]): readonly Finding[] => {
  const titles = new Map(works.map(({ dish }) => [dish.source, dish.title]));
  return longWaitsOf(tasks).map(({ task, minutes: length, usual }) =>
    makeFinding("wait-counted-long", task.dish, task.span ?? { start: 0, end: 0 }, {
      title: titles.get(task.dish) ?? task.dish,
      verb: task.verb,
      minutes: length,
      usual,
    }),
  );
};

/** A component is done before whatever takes it, and keeps as its own card says. */
const componentLags = (
  menu: Menu,
  works: readonly Work[],
  made: readonly DishTasks[],
): readonly DraftLag[] => {
  const bySource = new Map<string, DishTasks[]>();
  works.forEach(({ dish }, w) => {
    const own = made[w];
    if (own) bySource.set(dish.source, [...(bySource.get(dish.source) ?? []), own]);
  });
  return menu.components.flatMap((component) =>
    component.usedBy.flatMap((user) =>
      // A component comes first, also where its card is served as a dish besides.
      (bySource.get(component.dish.source)?.slice(0, 1) ?? []).flatMap((own) =>
        (bySource.get(user.dish) ?? []).flatMap((other) => lagsToTakers(own, other, user.ingredient)),
      ),
    ),
  );
};

const lagsToTakers = (own: DishTasks, other: DishTasks, ingredient: number | null): readonly DraftLag[] => {
  const all = ingredient === null ? [] : (other.takers.get(ingredient) ?? []);
  const takers = all.length > 0 ? all : other.tasks.slice(-1).map((task) => task.id);
  return own.lasts.flatMap(({ task, limit }) =>
    takers.map(
      (taker): DraftLag => ({
        before: task,
        beforeEdge: "end",
        after: taker,
        afterEdge: "start",
        least: minutes(0),
        most: minutes(limit.stated ? limit.most : Math.max(limit.most, waits.component)),
        reason: limit.where === "fridge" ? "fridge-limit" : "hold-limit",
        soft: !limit.stated,
      }),
    ),
  );
};

/** Plates of one course end close together: within the time one cook would need for all of them. */
const together = (ids: readonly string[], tasks: readonly Task[]): readonly DraftLag[] => {
  const length = (id: string): number =>
    tasks.find((task) => task.id === id)?.segments.reduce((sum, s) => sum + Math.ceil(s.minutes.likely), 0) ??
    0;
  const window = Math.max(
    10,
    ids.reduce((sum, id) => sum + length(id), 0),
  );
  return ids.slice(1).map((id) => ({
    before: ids[0] ?? id,
    beforeEdge: "end",
    after: id,
    afterEdge: "end",
    least: minutes(-window),
    most: minutes(window),
    reason: "plate-together",
    soft: false,
  }));
};

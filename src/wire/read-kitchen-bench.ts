import {
  type CourseGoal,
  celsius,
  count,
  exactly,
  type GoalLevel,
  type Hold,
  type Lag,
  minutes,
  moment,
  type Prep,
  type Segment,
  type Shift,
  type Task,
} from "#engine/index.ts";
import { checked } from "./checked.ts";
import { jsonFile } from "./json-file.ts";
import { type benchLevels, type KitchenBench, kitchenBenchSchema } from "./kitchen-bench-schema.ts";
import type { Problem } from "./problem.ts";
import { problemKitchen } from "./problem-kitchen.ts";
import { namesIn } from "./problem-names.ts";
import type { YamlFile } from "./yaml-file.ts";

/** A problem as read; null when something in the file stops it. */
export type ReadProblem = { readonly prep: Prep | null; readonly problems: readonly Problem[] };

/** Reads a kitchen of the format kitchen-bench/1 into the planner's own form; moments are its minutes. */
export const readKitchenBench = (name: string, text: string): ReadProblem => {
  const file = jsonFile(name, text);
  const { value, problems } = checked(file, kitchenBenchSchema);
  if (value === null) return { prep: null, problems };
  const wrong = wrongNames(file, value);
  return wrong.length > 0 ? { prep: null, problems: wrong } : { prep: prepOf(value), problems: [] };
};

const wrongNames = (file: YamlFile, bench: KitchenBench): readonly Problem[] => {
  const names = namesIn(file);
  const tasks = new Set(bench.tasks.map((task) => task.id));
  const resources = new Set([...bench.equipment.map((e) => e.id), "oven"]);
  const courses = new Set(bench.courses.map((course) => course.id));
  for (const list of ["tasks", "cooks", "ovens", "equipment", "courses"] as const) {
    names.once(
      bench[list].map((item) => item.id),
      (i) => [list, i, "id"],
    );
  }
  bench.tasks.forEach((task, t) => {
    names.known(task.dish, "course", courses, ["tasks", t, "dish"]);
    task.segments.forEach((segment, s) => {
      segment.uses?.forEach((use, u) => {
        names.known(use.resource, "resource", resources, ["tasks", t, "segments", s, "uses", u, "resource"]);
      });
    });
  });
  bench.lags.forEach((lag, l) => {
    names.known(lag.before, "task", tasks, ["lags", l, "before"]);
    names.known(lag.after, "task", tasks, ["lags", l, "after"]);
  });
  bench.courses.forEach((course, c) => {
    course.plateTasks.forEach((id, i) => {
      names.known(id, "task", tasks, ["courses", c, "plateTasks", i]);
    });
  });
  for (const list of ["hotHold", "freshness"] as const) {
    bench[list].forEach((term, i) => {
      names.known(term.task, "task", tasks, [list, i, "task"]);
      names.known(term.plate, "task", tasks, [list, i, "plate"]);
    });
  }
  return names.problems;
};

const levelOf: { readonly [L in (typeof benchLevels)[number]]: GoalLevel } = {
  courseLatenessMinutes: "late",
  hotHoldWeightedMinutes: "hold",
  freshnessWeightedMinutes: "freshness",
  calmHandsOnMinutes: "calm",
};

const prepOf = (bench: KitchenBench): Prep => {
  const courseOf = new Map(bench.courses.map((course, c) => [course.id, c]));
  const plates = new Set(bench.courses.flatMap((course) => course.plateTasks));
  const burners = bench.equipment.find((e) => e.id === "burner")?.capacity ?? 0;
  return {
    tasks: bench.tasks.map(
      (task): Task => ({
        id: task.id,
        kind: plates.has(task.id) ? "plate" : "method",
        dish: task.dish,
        version: "as-written",
        course: courseOf.get(task.dish) ?? 0,
        verb: task.name,
        objects: [],
        amount: null,
        segments: task.segments.map(segmentOf),
        finishing: task.finishing,
        span: null,
      }),
    ),
    lags: [...bench.lags.map(lagOf), ...togetherLags(bench)],
    courses: bench.courses.map(
      (course, c): CourseGoal => ({
        course: c,
        name: course.id,
        due: moment(course.dueMinute),
        plateTasks: course.plateTasks,
        landsWith: "first",
      }),
    ),
    holds: [...bench.hotHold.map((t) => holdOf(t, true)), ...bench.freshness.map((t) => holdOf(t, false))],
    crew: bench.cooks.map((cook) => ({
      name: cook.id,
      shifts: cook.shifts.map(([from, to]) => shift(from, to)),
    })),
    ovens: bench.ovens.map((oven) => ({
      id: oven.id,
      shelves: count(oven.shelves),
      cold: celsius(oven.startTempC),
    })),
    resources: bench.equipment.map((e) => ({ id: e.id, capacity: e.capacity })),
    attention: {
      capacity: bench.attention.capacityPerCook,
      hands: bench.attention.handsOn,
      mind: bench.attention.minded,
    },
    kitchen: problemKitchen({
      name: bench.name,
      burners,
      ovens: bench.ovens,
      heat: bench.ovenRamp.heatMinutesPer10C,
      tolerance: 0,
    }),
    span: shift(0, bench.horizon),
    ramp: {
      heat: minutes(bench.ovenRamp.heatMinutesPer10C),
      cool: minutes(bench.ovenRamp.coolMinutesPer10C),
    },
    ovensCold: "once",
    calm: bench.calm.map(({ fromMinute, toMinute }) => shift(fromMinute, toMinute)),
    levels: bench.objective.order.map((level) => levelOf[level]),
  };
};

const shift = (from: number, to: number): Shift => ({ from: moment(from), to: moment(to) });

const attentions = { handsOn: "hands", minded: "mind", unattended: "none" } as const;

const segmentOf = (segment: KitchenBench["tasks"][number]["segments"][number]): Segment => {
  const uses = segment.uses ?? [];
  return {
    minutes: exactly(minutes(segment.minutes)),
    attention: attentions[segment.attention],
    station: uses.some((u) => u.resource === "oven")
      ? "oven"
      : uses.some((u) => u.resource === "burner")
        ? "burner"
        : "hands",
    uses: uses.map((use) => ({
      resource: use.resource,
      amount: use.amount,
      celsius: use.tempC === undefined ? null : celsius(use.tempC),
    })),
    manned: segment.needsSomeoneInKitchen ?? false,
  };
};

const lagOf = (lag: KitchenBench["lags"][number]): Lag => ({
  before: lag.before,
  beforeEdge: lag.beforeEdge,
  after: lag.after,
  afterEdge: lag.afterEdge,
  least: minutes(lag.minMinutes),
  most: lag.maxMinutes === undefined ? null : minutes(lag.maxMinutes),
  reason: lag.maxMinutes === undefined ? "method-order" : "hold-limit",
  ...(lag.why === undefined ? {} : { why: lag.why }),
});

/** The plates of a course start together; said once more where no lag of the file says it. */
const togetherLags = (bench: KitchenBench): readonly Lag[] =>
  bench.courses.flatMap(({ plateTasks: [first, ...others] }) =>
    others.flatMap((other): Lag[] => {
      if (first === undefined) return [];
      const said = bench.lags.some(
        (lag) =>
          lag.before === first &&
          lag.after === other &&
          lag.beforeEdge === "start" &&
          lag.afterEdge === "start" &&
          lag.minMinutes === 0 &&
          lag.maxMinutes === 0,
      );
      if (said) return [];
      return [
        {
          before: first,
          beforeEdge: "start",
          after: other,
          afterEdge: "start",
          least: minutes(0),
          most: minutes(0),
          reason: "plate-together",
        },
      ];
    }),
  );

const holdOf = (term: KitchenBench["hotHold"][number], hot: boolean): Hold => ({
  task: term.task,
  plate: term.plate,
  weight: term.weight,
  hot,
});

import {
  celsius,
  count,
  type Estimate,
  exactly,
  type Lag,
  type Minutes,
  minutes,
  moment,
  type Prep,
  type Segment,
  type Shift,
  type Task,
  type VesselStay,
} from "#engine/index.ts";
import { checked } from "./checked.ts";
import { jsonFile } from "./json-file.ts";
import { makeProblem } from "./problem.ts";
import { problemKitchen } from "./problem-kitchen.ts";
import { namesIn } from "./problem-names.ts";
import { type ProblemFile, problemSchema } from "./problem-schema.ts";
import { type ReadProblem, readKitchenBench } from "./read-kitchen-bench.ts";
import type { YamlFile } from "./yaml-file.ts";

/** Reads a problem for the planner: tamis-problem/1, or kitchen-bench/1. What is wrong with it carries its place. */
export const readProblem = (name: string, text: string): ReadProblem => {
  const file = jsonFile(name, text);
  if (formatOf(file.value) === "kitchen-bench/1") return readKitchenBench(name, text);
  const { value, problems } = checked(file, problemSchema);
  if (value === null) return { prep: null, problems };
  const wrong = [...wrongNames(file, value), ...wrongLags(file, value)];
  return wrong.length > 0 ? { prep: null, problems: wrong } : { prep: prepOf(value), problems: [] };
};

/** True for a text that says it is a kitchen to be planned, in a format that is read here. */
export const isProblem = (text: string): boolean =>
  /"format"\s*:\s*"(tamis-problem|kitchen-bench)\/1"/.test(text.slice(0, 100_000));

const formatOf = (value: unknown): unknown =>
  typeof value === "object" && value !== null ? (value as { format?: unknown }).format : undefined;

const wrongNames = (file: YamlFile, problem: ProblemFile) => {
  const names = namesIn(file);
  const tasks = new Set(problem.tasks.map((task) => task.id));
  const cooks = new Set(problem.cooks.map((cook) => cook.name));
  const courses = new Set(problem.courses.map((course) => course.name));
  const ovens = problem.ovens ?? [];
  const resources = new Set([...(problem.resources ?? []), ...ovens].map((r) => r.id));
  if (ovens.length > 0) resources.add("oven");
  names.once(
    problem.tasks.map((t) => t.id),
    (i) => ["tasks", i, "id"],
  );
  names.once(
    problem.cooks.map((c) => c.name),
    (i) => ["cooks", i, "name"],
  );
  names.once(
    problem.courses.map((c) => c.name),
    (i) => ["courses", i, "name"],
  );
  names.once(
    (problem.resources ?? []).map((r) => r.id),
    (i) => ["resources", i, "id"],
  );
  names.once(
    ovens.map((o) => o.id),
    (i) => ["ovens", i, "id"],
  );
  problem.tasks.forEach((task, t) => {
    if (task.course !== undefined) names.known(task.course, "course", courses, ["tasks", t, "course"]);
    task.cooks?.forEach((cook, c) => {
      names.known(cook, "cook", cooks, ["tasks", t, "cooks", c]);
    });
    const lists = [
      { segments: task.segments, at: ["segments"] as const },
      ...(task.ways ?? []).map((segments, w) => ({ segments, at: ["ways", w] as const })),
    ];
    for (const { segments, at } of lists)
      segments.forEach((segment, s) => {
        segment.uses?.forEach((use, u) => {
          names.known(use.resource, "resource", resources, ["tasks", t, ...at, s, "uses", u, "resource"]);
        });
      });
  });
  problem.courses.forEach((course, c) => {
    course.plates.forEach((id, i) => {
      names.known(id, "task", tasks, ["courses", c, "plates", i]);
    });
  });
  const pairs = { lags: problem.lags, freeFrom: problem.freeFrom } as const;
  for (const list of ["lags", "freeFrom"] as const) {
    pairs[list]?.forEach((pair, i) => {
      names.known(pair.before, "task", tasks, [list, i, "before"]);
      names.known(pair.after, "task", tasks, [list, i, "after"]);
    });
  }
  problem.holds?.forEach((hold, i) => {
    names.known(hold.task, "task", tasks, ["holds", i, "task"]);
    names.known(hold.plate, "task", tasks, ["holds", i, "plate"]);
  });
  const kit = new Set((problem.resources ?? []).map((r) => r.id));
  problem.stays?.forEach((stay, i) => {
    names.known(stay.resource, "resource", kit, ["stays", i, "resource"]);
    if (stay.from !== undefined) names.known(stay.from, "task", tasks, ["stays", i, "from"]);
    if (stay.to !== undefined) names.known(stay.to, "task", tasks, ["stays", i, "to"]);
  });
  problem.sameCook?.forEach((group, g) => {
    group.forEach((id, i) => {
      names.known(id, "task", tasks, ["sameCook", g, i]);
    });
  });
  return names.problems;
};

/** A lag whose most is below its least asks for nothing that can be. */
const wrongLags = (file: YamlFile, problem: ProblemFile) =>
  (problem.lags ?? []).flatMap((lag, l) =>
    lag.most !== undefined && lag.most < (lag.least ?? 0)
      ? [
          makeProblem("value-bad", file.placeOf(["lags", l, "most"]), {
            key: "most",
            found: String(lag.most),
            wanted: "not-below-least",
          }),
        ]
      : [],
  );

const usualAttention = { capacity: 4, hands: 3, mind: 1 };
/** Minutes an oven takes to change by 10 °C where the file does not say; common practice, no source. */
const usualRamp = 1;

const prepOf = (problem: ProblemFile): Prep => {
  const courseOf = new Map(problem.courses.map((course, c) => [course.name, c]));
  const plateOf = new Map(
    problem.courses.flatMap((course, c) => course.plates.map((id) => [id, c] as const)),
  );
  const ovens = problem.ovens ?? [];
  const ramp = problem.ovenRamp ?? { heat: usualRamp, cool: usualRamp };
  return {
    tasks: problem.tasks.map((task): Task => {
      const course = plateOf.get(task.id) ?? courseOf.get(task.course ?? "") ?? 0;
      return {
        id: task.id,
        kind: plateOf.has(task.id) ? "plate" : "method",
        dish: task.dish ?? problem.courses[course]?.name ?? problem.name,
        version: "as-written",
        course,
        verb: task.name ?? task.id,
        objects: [],
        amount: null,
        segments: task.segments.map(segmentOf),
        ...(task.ways === undefined ? {} : { ways: task.ways.map((way) => way.map(segmentOf)) }),
        finishing: task.finishing ?? plateOf.has(task.id),
        span: null,
        ...(task.cooks === undefined ? {} : { cooks: task.cooks }),
        ...(task.starts === undefined ? {} : { starts: shift(task.starts) }),
      };
    }),
    lags: (problem.lags ?? []).map(lagOf),
    courses: problem.courses.map((course, c) => ({
      course: c,
      name: course.name,
      due: moment(course.due),
      plateTasks: course.plates,
      landsWith: course.landsWith ?? "last",
    })),
    holds: problem.holds ?? [],
    crew: problem.cooks.map((cook) => ({ name: cook.name, shifts: cook.shifts.map(shift) })),
    ovens: ovens.map((oven) => ({
      id: oven.id,
      shelves: count(oven.shelves),
      ...(oven.cold === undefined ? {} : { cold: celsius(oven.cold) }),
    })),
    resources: problem.resources ?? [],
    attention: problem.attention ?? usualAttention,
    kitchen: problemKitchen({
      name: problem.name,
      burners: problem.resources?.find((r) => r.id === "burner")?.capacity ?? 0,
      ovens,
      heat: ramp.heat,
      tolerance: problem.ovenTolerance ?? 0,
    }),
    ramp: { heat: minutes(ramp.heat), cool: minutes(ramp.cool) },
    ovensCold: problem.ovensCold ?? "at-opening",
    ...(problem.stays === undefined ? {} : { stays: problem.stays.map(stayOf) }),
    ...(problem.span === undefined ? {} : { span: shift(problem.span) }),
    ...(problem.calm === undefined ? {} : { calm: problem.calm.map(shift) }),
    ...(problem.sameCook === undefined ? {} : { sameCook: problem.sameCook }),
    ...(problem.freeFrom === undefined ? {} : { freeFrom: problem.freeFrom }),
    ...(problem.levels === undefined ? {} : { levels: problem.levels }),
  };
};

/** A stay without a first task stands from the beginning; without a last it is never given back. */
const stayOf = (stay: NonNullable<ProblemFile["stays"]>[number]): VesselStay => ({
  resource: stay.resource,
  amount: stay.amount ?? 1,
  from: stay.from ?? null,
  to: stay.to ?? null,
});

const shift = ([from, to]: readonly [number, number]): Shift => ({ from: moment(from), to: moment(to) });

const estimate = (given: number | readonly [number, number, number]): Estimate<Minutes> =>
  typeof given === "number"
    ? exactly(minutes(given))
    : { low: minutes(given[0]), likely: minutes(given[1]), high: minutes(given[2]) };

const segmentOf = (segment: ProblemFile["tasks"][number]["segments"][number]): Segment => {
  const uses = (segment.uses ?? []).map((use) => ({
    resource: use.resource,
    amount: use.amount ?? 1,
    celsius: use.celsius === undefined ? null : celsius(use.celsius),
  }));
  return {
    minutes: estimate(segment.minutes),
    attention: segment.attention,
    station: uses.some((use) => use.celsius !== null) ? "oven" : "hands",
    uses,
    ...(segment.manned === undefined ? {} : { manned: segment.manned }),
  };
};

const lagOf = (lag: NonNullable<ProblemFile["lags"]>[number]): Lag => ({
  before: lag.before,
  beforeEdge: lag.beforeEdge ?? "end",
  after: lag.after,
  afterEdge: lag.afterEdge ?? "start",
  least: minutes(lag.least ?? 0),
  most: lag.most === undefined ? null : minutes(lag.most),
  reason: lag.reason ?? (lag.most === undefined ? "method-order" : "hold-limit"),
  ...(lag.why === undefined ? {} : { why: lag.why }),
});

import fc from "fast-check";
import type { CourseGoal, Hold, Kitchen, Lag, Prep, Segment, Task } from "#engine/index.ts";
import { celsius, count, exactly, minutes, moment } from "#engine/index.ts";

/** A kitchen for tests; every figure is invented. */
const testKitchen: Kitchen = {
  name: "Test kitchen",
  burners: count(4),
  burnerKilowatts: 2.5,
  ovens: [
    { name: "oven a", shelves: count(2), fan: true, kilowatts: 4 },
    { name: "oven b", shelves: count(3), fan: false, kilowatts: 3 },
  ],
  grills: count(1),
  fryers: count(1),
  fridgeLitres: 200,
  freezerLitres: 50,
  pans: [],
  trays: count(8),
  containers: [],
  machines: [{ name: "mixer", count: count(1) }],
  ovenMinutesPer10C: minutes(1),
  ovenTolerance: celsius(5),
};

export const segment = (
  length: number,
  attention: Segment["attention"],
  uses: Segment["uses"] = [],
  station: Segment["station"] = "hands",
): Segment => ({ minutes: exactly(minutes(length)), attention, station, uses });

export const use = (
  resource: string,
  amount = 1,
  setting: number | null = null,
): Segment["uses"][number] => ({
  resource,
  amount,
  celsius: setting === null ? null : celsius(setting),
});

export const task = (
  id: string,
  course: number,
  segments: readonly Segment[],
  more: Partial<Task> = {},
): Task => ({
  id,
  kind: "method",
  dish: `dish-${course}`,
  version: "as-written",
  course,
  verb: "do",
  objects: [],
  amount: null,
  segments,
  finishing: false,
  span: null,
  ...more,
});

export const lag = (before: string, after: string, least = 0, most: number | null = null): Lag => ({
  before,
  beforeEdge: "end",
  after,
  afterEdge: "start",
  least: minutes(least),
  most: most === null ? null : minutes(most),
  reason: most === null ? "uses-product" : "hold-limit",
});

/** A prep out of its parts, in the test kitchen. */
export const prepOf = (
  tasks: readonly Task[],
  lags: readonly Lag[],
  courses: readonly CourseGoal[],
  more: Partial<Prep> = {},
): Prep => ({
  tasks,
  lags,
  courses,
  holds: [],
  crew: [{ name: "Ada", shifts: [{ from: moment(600), to: moment(1320) }] }],
  ovens: testKitchen.ovens.map((oven) => ({ id: oven.name, shelves: oven.shelves })),
  resources: [
    { id: "burner", capacity: 4 },
    { id: "fridge", capacity: 200 },
    { id: "mixer", capacity: 1 },
  ],
  attention: { capacity: 4, hands: 3, mind: 1 },
  kitchen: testKitchen,
  ...more,
});

export const goal = (course: number, due: number, plateTasks: readonly string[]): CourseGoal => ({
  course,
  name: `course ${course}`,
  due: moment(due),
  plateTasks,
});

const shape = fc.record({
  prep: fc.integer({ min: 1, max: 25 }),
  kind: fc.constantFrom("hands", "burner", "oven", "mixer", "fridge", "mind"),
  length: fc.integer({ min: 1, max: 70 }),
  setting: fc.constantFrom(140, 160, 180, 185, 220),
  most: fc.option(fc.integer({ min: 0, max: 60 }), { nil: null }),
  rest: fc.constantFrom(0, 0, 0, 10, 60),
  weight: fc.integer({ min: 0, max: 3 }),
});

const courseShape = fc.record({
  due: fc.integer({ min: 1080, max: 1260 }),
  dishes: fc.array(fc.array(shape, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 3 }),
  plate: fc.integer({ min: 1, max: 12 }),
});

const mainSegments = (s: { kind: string; length: number; setting: number }): readonly Segment[] => {
  if (s.kind === "oven") {
    return [
      segment(2, "hands"),
      segment(s.length, "none", [use("oven", 1, s.setting)], "oven"),
      segment(1, "hands"),
    ];
  }
  if (s.kind === "fridge") return [segment(s.length, "none", [use("fridge", 40)], "fridge")];
  if (s.kind === "mind") return [segment(s.length, "mind", [use("burner")], "burner")];
  if (s.kind === "hands") return [segment(s.length, "hands")];
  return [segment(s.length, "hands", [use(s.kind)])];
};

/** Preps as an evening gives them: chains of work with waits and holds, plated together, for one to three cooks. */
export const randomPrep: fc.Arbitrary<Prep> = fc
  .record({
    courses: fc.array(courseShape, { minLength: 1, maxLength: 4 }),
    cooks: fc.array(
      fc.record({ from: fc.integer({ min: 480, max: 900 }), pause: fc.boolean(), dayBefore: fc.boolean() }),
      { minLength: 1, maxLength: 3 },
    ),
    burners: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ courses, cooks, burners }) => {
    const tasks: Task[] = [];
    const lags: Lag[] = [];
    const goals: CourseGoal[] = [];
    const holds: Hold[] = [];
    courses.forEach((c, ci) => {
      const plates: string[] = [];
      c.dishes.forEach((chain, di) => {
        const plate = `c${ci}d${di}plate`;
        chain.forEach((s, si) => {
          const id = `c${ci}d${di}t${si}`;
          tasks.push(
            task(`${id}cut`, ci, [segment(s.prep, "hands")], { dish: `c${ci}d${di}`, kind: "mise" }),
          );
          tasks.push(task(id, ci, mainSegments(s), { dish: `c${ci}d${di}` }));
          lags.push(lag(`${id}cut`, id));
          const last = si === chain.length - 1;
          const most = s.most === null ? null : s.most + s.rest;
          lags.push(lag(id, last ? plate : `c${ci}d${di}t${si + 1}`, s.rest, most));
          if (last) holds.push({ task: id, plate, weight: s.weight, hot: true });
        });
        tasks.push(
          task(plate, ci, [segment(c.plate, "hands")], {
            kind: "plate",
            finishing: true,
            dish: `c${ci}d${di}`,
          }),
        );
        plates.push(plate);
      });
      for (const plate of plates.slice(1)) {
        const window = minutes(Math.max(15, c.plate * plates.length));
        lags.push({
          ...lag(plates[0] ?? "", plate),
          beforeEdge: "end",
          afterEdge: "end",
          least: minutes(-window),
          most: window,
          reason: "plate-together",
        });
      }
      goals.push(goal(ci, c.due, plates));
    });
    const crew = cooks.map((cook, i) => ({
      name: `cook ${i}`,
      shifts: [
        ...(cook.dayBefore ? [{ from: moment(780 - 1440), to: moment(1080 - 1440) }] : []),
        ...(cook.pause
          ? [
              { from: moment(cook.from), to: moment(960) },
              { from: moment(990), to: moment(1380) },
            ]
          : [{ from: moment(cook.from), to: moment(1380) }]),
      ],
    }));
    return prepOf(tasks, lags, goals, {
      holds,
      crew,
      resources: [
        { id: "burner", capacity: burners },
        { id: "fridge", capacity: 100 },
        { id: "mixer", capacity: 1 },
      ],
    });
  });

import fc from "fast-check";
import {
  celsius,
  count,
  type GoalLevel,
  type Hold,
  type Lag,
  minutes,
  moment,
  type Prep,
  type Task,
} from "#engine/index.ts";
import { goal, lag, prepOf, segment, task, use } from "../sittings/random-prep.ts";

/** Minutes from the first to the last that a small problem knows. */
const end = 36;

const piece = fc.record({
  kind: fc.constantFrom("hands", "mind", "oven", "burner", "rest"),
  length: fc.integer({ min: 1, max: 7 }),
  heat: fc.constantFrom(100, 120, 150),
  most: fc.option(fc.integer({ min: 0, max: 14 }), { nil: null }),
  least: fc.constantFrom(0, 0, 0, 3),
  hot: fc.boolean(),
  weight: fc.integer({ min: 0, max: 3 }),
  only: fc.constantFrom(null, null, null, 0),
});

const segmentsOf = (p: { kind: string; length: number; heat: number }): Task["segments"] => {
  if (p.kind === "oven") {
    return [
      segment(1, "hands"),
      { ...segment(p.length + 2, "none", [use("oven", 1, p.heat)], "oven"), manned: true },
      segment(1, "hands"),
    ];
  }
  if (p.kind === "burner") return [{ ...segment(p.length, "hands", [use("burner")]), manned: true }];
  if (p.kind === "rest") return [segment(p.length, "none", [use("fridge")])];
  return [segment(p.length, p.kind === "mind" ? "mind" : "hands")];
};

/** Problems of up to twelve tasks within an hour, with everything that a problem can ask for, some of them impossible. */
export const smallProblem: fc.Arbitrary<Prep> = fc
  .record({
    courses: fc.array(
      fc.record({
        chains: fc.array(fc.array(piece, { minLength: 1, maxLength: 2 }), { minLength: 1, maxLength: 3 }),
        due: fc.integer({ min: 13, max: 27 }),
        plate: fc.integer({ min: 1, max: 4 }),
      }),
      { minLength: 1, maxLength: 2 },
    ),
    second: fc.option(fc.integer({ min: 0, max: 20 }), { nil: null }),
    pause: fc.boolean(),
    shelves: fc.integer({ min: 1, max: 2 }),
    ovens: fc.integer({ min: 1, max: 2 }),
    burners: fc.integer({ min: 1, max: 2 }),
    ties: fc.boolean(),
    order: fc.constantFrom<readonly GoalLevel[]>(
      ["late", "hold", "freshness", "calm"],
      ["late", "hold", "free-from", "calm", "freshness"],
    ),
  })
  .map(({ courses, second, pause, shelves, ovens, burners, ties, order }) => {
    const tasks: Task[] = [];
    const lags: Lag[] = [];
    const holds: Hold[] = [];
    const goals = courses.map((c, ci) => {
      const plate = `c${ci}plate`;
      c.chains.forEach((chain, k) => {
        chain.forEach((p, s) => {
          const id = `c${ci}k${k}s${s}`;
          const more = { dish: `c${ci}k${k}`, finishing: s === chain.length - 1 && p.hot };
          tasks.push(
            task(
              id,
              ci,
              segmentsOf(p),
              p.only === null || second === null ? more : { ...more, cooks: ["Ada"] },
            ),
          );
          const last = s === chain.length - 1;
          const most = p.most === null ? null : p.most + p.least;
          lags.push(lag(id, last ? plate : `c${ci}k${k}s${s + 1}`, p.least, most));
          if (last && p.weight > 0) holds.push({ task: id, plate, weight: p.weight, hot: p.hot });
        });
      });
      tasks.push(task(plate, ci, [segment(c.plate, "hands")], { kind: "plate", finishing: true }));
      return { ...goal(ci, c.due, [plate]), landsWith: "first" as const };
    });
    const first = goals[0]?.due ?? moment(0);
    const shift = (from: number, to: number) => ({ from: moment(from), to: moment(to) });
    return prepOf(tasks.slice(0, 12), lags, goals, {
      holds,
      crew: [
        { name: "Ada", shifts: pause ? [shift(0, 14), shift(17, end)] : [shift(0, end)] },
        ...(second === null ? [] : [{ name: "Bea", shifts: [shift(second, end)] }]),
      ],
      ovens: Array.from({ length: ovens }, (_, o) => ({
        id: `oven ${o}`,
        shelves: count(shelves),
        cold: celsius(80),
      })),
      resources: [
        { id: "burner", capacity: burners },
        { id: "fridge", capacity: 1 },
      ],
      span: shift(0, end),
      ramp: { heat: minutes(1), cool: minutes(2) },
      ovensCold: "once",
      calm: [shift(Math.max(0, first - 12), first)],
      levels: order,
      ...(ties ? { sameCook: [["c0k0s0", "c0plate"]] } : {}),
      freeFrom: [
        { before: "c0plate", after: "c0k0s0" },
        { before: "c0k1s0", after: "c0k0s0" },
      ],
    });
  })
  .map((prep) => {
    const known = new Set(prep.tasks.map((t) => t.id));
    const kitchen = { ...prep.kitchen, ovenTolerance: celsius(0) };
    return {
      ...prep,
      kitchen,
      lags: prep.lags.filter((l) => known.has(l.before) && known.has(l.after)),
      holds: prep.holds.filter((h) => known.has(h.task) && known.has(h.plate)),
      courses: prep.courses.filter((c) => c.plateTasks.every((id) => known.has(id))),
    };
  });

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { celsius, count, goalLevels, minutes, moment, type Plan, type Prep } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { smallProblem } from "../help/small-problems.ts";
import { goal, lag, prepOf, segment, task, use } from "../sittings/random-prep.ts";

const rules = (prep: Prep, plan: Plan) => [...new Set(checkFromPlan(prep, plan).map((v) => v.rule))];

type Spot = { readonly at: number; readonly cook: string | null; readonly oven?: string };

/** A plan that states where things stand, and whatever levels are given. */
const standing = (prep: Prep, spots: readonly Spot[], levels: Plan["objective"]["levels"] = []): Plan => {
  const placed = prep.tasks.map((t, i) => {
    const spot = spots[i]!;
    let at = spot.at;
    const segments = t.segments.map((s) => {
      const from = moment(at);
      at += s.minutes.likely;
      return from;
    });
    return {
      task: t.id,
      start: moment(spot.at),
      end: moment(at),
      segments,
      cook: spot.cook,
      oven: spot.oven ?? null,
      because: [],
    };
  });
  return {
    placed,
    courses: prep.courses.map((c) => {
      const lands = placed.find((p) => p.task === c.plateTasks[0])?.end ?? c.due;
      return {
        course: c.course,
        name: c.name,
        due: c.due,
        lands,
        lateMinutes: minutes(Math.max(0, lands - c.due)),
        whole: true,
        firstTask: null,
        firstStart: null,
      };
    }),
    unplaced: [],
    status: "on-time",
    objective: { lateMinutes: minutes(0), holdMinutes: minutes(0), calmMinutes: minutes(0), levels },
    load: [],
    violations: [],
  };
};

const shift = (from: number, to: number) => ({ from: moment(from), to: moment(to) });
const two = {
  crew: [
    { name: "Ada", shifts: [shift(600, 1320)] },
    { name: "Bea", shifts: [shift(600, 1320)] },
  ],
};
const hands = (id: string, more = {}) => task(id, 0, [segment(10, "hands")], more);
const bake = (id: string, heat: number) => task(id, 0, [segment(30, "none", [use("oven", 1, heat)], "oven")]);
const ovens = [{ id: "o", shelves: count(2), cold: celsius(20) }];
const once = { ovens, ovensCold: "once", span: shift(600, 1320) } as const;
const ramp = { heat: minutes(1), cool: minutes(2) };
const inOven = (...at: readonly number[]): Spot[] => at.map((a) => ({ at: a, cook: null, oven: "o" }));

/** Figures worked by hand. */
const byHand: readonly { what: string; prep: Prep; plan: readonly Spot[]; breaks: readonly string[] }[] = [
  {
    what: "a cook who does not know how",
    prep: prepOf([hands("a", { cooks: ["Bea"] })], [], [], two),
    plan: [{ at: 700, cook: "Ada" }],
    breaks: ["unskilled"],
  },
  {
    what: "a cook who does",
    prep: prepOf([hands("a", { cooks: ["Bea"] })], [], [], two),
    plan: [{ at: 700, cook: "Bea" }],
    breaks: [],
  },
  {
    what: "one cook's two tasks with two cooks",
    prep: prepOf([hands("a"), hands("b")], [], [], { ...two, sameCook: [["a", "b"]] }),
    plan: [
      { at: 700, cook: "Ada" },
      { at: 700, cook: "Bea" },
    ],
    breaks: ["two-cooks"],
  },
  {
    what: "a minute before the span",
    prep: prepOf([hands("a")], [], [], { ...two, span: shift(650, 1320) }),
    plan: [{ at: 649, cook: "Ada" }],
    breaks: ["outside-span"],
  },
  {
    what: "180 °C from cold, at 1 min for 10 °C, 16 min after the beginning",
    prep: prepOf([bake("a", 180)], [], [], { ...once, ramp }),
    plan: inOven(616),
    breaks: [],
  },
  {
    what: "180 °C from cold, 15 min after the beginning",
    prep: prepOf([bake("a", 180)], [], [], { ...once, ramp }),
    plan: inOven(615),
    breaks: ["oven-clash"],
  },
  {
    what: "220 °C then 180 °C, at 2 min for 10 °C down, 8 min apart",
    prep: prepOf([bake("a", 220), bake("b", 180)], [], [], { ...once, ramp }),
    plan: inOven(700, 738),
    breaks: [],
  },
  {
    what: "220 °C then 180 °C, 7 min apart",
    prep: prepOf([bake("a", 220), bake("b", 180)], [], [], { ...once, ramp }),
    plan: inOven(700, 737),
    breaks: ["oven-clash"],
  },
  {
    what: "180 °C then 220 °C, 4 min apart, as heating is quicker",
    prep: prepOf([bake("a", 180), bake("b", 220)], [], [], { ...once, ramp }),
    plan: inOven(700, 734),
    breaks: [],
  },
  {
    what: "what needs somebody there, with nobody there",
    prep: prepOf([task("a", 0, [{ ...segment(30, "none"), manned: true }])], [], [], two),
    plan: [{ at: 1300, cook: null }],
    breaks: ["outside-shift"],
  },
];

describe("the checker, worked by hand", () => {
  for (const { what, prep, plan, breaks } of byHand) {
    it(`${what}: ${breaks.join(", ") || "holds"}`, () => {
      expect(rules(prep, standing(prep, plan))).toEqual(breaks);
    });
  }

  it("counts every level for itself", () => {
    // Due 1200: plate 1190-1200. Hot ends 1180, waits 10 × 2. Cold ends 1150, waits 40 × 1; its hands 1140-1150 fall in the hour before.
    const prep = prepOf(
      [hands("hot", { finishing: true }), hands("cold"), hands("plate", { finishing: true, kind: "plate" })],
      [lag("hot", "plate"), lag("cold", "plate")],
      [goal(0, 1200, ["plate"])],
      {
        ...two,
        holds: [
          { task: "hot", plate: "plate", weight: 2, hot: true },
          { task: "cold", plate: "plate", weight: 1, hot: false },
        ],
        freeFrom: [{ before: "hot", after: "cold" }],
      },
    );
    const spots: Spot[] = [
      { at: 1170, cook: "Ada" },
      { at: 1140, cook: "Ada" },
      { at: 1190, cook: "Ada" },
    ];
    const values = [0, 20, 1, 10, 0, 40];
    const levels = goalLevels.map((level, l) => ({ level, value: values[l]!, bound: 0, proved: false }));
    expect(rules(prep, standing(prep, spots, levels))).toEqual([]);
    for (let l = 0; l < values.length; l++) {
      const wrong = levels.map((level, i) => (i === l ? { ...level, value: level.value + 1 } : level));
      expect(rules(prep, standing(prep, spots, wrong))).toEqual(["wrong-value"]);
      const over = levels.map((level, i) => (i === l ? { ...level, bound: level.value + 1 } : level));
      expect(rules(prep, standing(prep, spots, over))).toEqual(["wrong-value"]);
    }
    const claimed = levels.map((level, i) => (i === 1 ? { ...level, proved: true } : level));
    expect(rules(prep, standing(prep, spots, claimed))).toEqual(["wrong-value"]);
  });
});

describe("whatever is asked for", () => {
  it("plans hold, and a task moved to another cook or minute by hand is caught or harmless", () => {
    fc.assert(
      fc.property(smallProblem, fc.nat(), fc.integer({ min: -8, max: 8 }), (prep, n, by) => {
        const plan = planFromPrep(prep, { tries: 40, seed: 5 }).value;
        expect(checkFromPlan(prep, plan)).toEqual([]);
        const at = n % Math.max(1, plan.placed.length);
        const moved = {
          ...plan,
          placed: plan.placed.map((p, i) =>
            i === at
              ? {
                  ...p,
                  start: moment(p.start + by),
                  end: moment(p.end + by),
                  segments: p.segments.map((s) => moment(s + by)),
                }
              : p,
          ),
        };
        const plate = prep.courses.some((c) => c.plateTasks.includes(plan.placed[at]?.task ?? ""));
        // A plate that moves makes the landing that is stated untrue, if nothing else.
        if (plate && by !== 0) expect(checkFromPlan(prep, moved)).not.toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});

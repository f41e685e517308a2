import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { brokenFindings } from "#engine/check-from-plan/broken-findings.ts";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { minutes, moment, type Placed, type Plan, type Prep, type Violation } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { goal, lag, prepOf, randomPrep, segment, task, use } from "../sittings/random-prep.ts";

const planned = (prep: Prep): Plan => planFromPrep(prep, { tries: 10, seed: 3 }).value;
const rules = (prep: Prep, plan: Plan): readonly Violation["rule"][] =>
  checkFromPlan(prep, plan).map((v) => v.rule);

const shifted = (placed: Placed, by: number): Placed => ({
  ...placed,
  start: moment(placed.start + by),
  end: moment(placed.end + by),
  segments: placed.segments.map((s) => moment(s + by)),
});
const withPlaced = (plan: Plan, at: number, change: (placed: Placed) => Placed): Plan => ({
  ...plan,
  placed: plan.placed.map((p, i) => (i === at ? change(p) : p)),
});

/** A random prep with its plan, and a place in the plan; plans without tasks are passed over. */
const case_ = fc.tuple(randomPrep, fc.nat()).map(([prep, n]) => {
  const plan = planned(prep);
  return { prep, plan, at: plan.placed.length === 0 ? 0 : n % plan.placed.length };
});
const runs = { numRuns: 60 };

describe("the checker catches", () => {
  it("a task that is left out, put in twice, or unknown", () => {
    fc.assert(
      fc.property(case_, ({ prep, plan, at }) => {
        fc.pre(plan.placed.length > 0);
        const gone = { ...plan, placed: plan.placed.filter((_, i) => i !== at) };
        expect(rules(prep, gone)).toContain("missing-task");
        const twice = { ...plan, placed: [...plan.placed, plan.placed[at]!] };
        expect(rules(prep, twice)).toContain("missing-task");
        const odd = { ...plan, placed: [...plan.placed, { ...plan.placed[at]!, task: "nobody" }] };
        expect(rules(prep, odd)).toContain("missing-task");
      }),
      runs,
    );
  });

  it("segments with a gap, or cut short", () => {
    fc.assert(
      fc.property(case_, ({ prep, plan, at }) => {
        fc.pre(plan.placed.length > 0);
        const short = withPlaced(plan, at, (p) => ({ ...p, end: moment(p.end - 1) }));
        expect(rules(prep, short)).toContain("segment-gap");
        const gap = withPlaced(plan, at, (p) => ({
          ...p,
          segments: p.segments.map((s, i) => (i === p.segments.length - 1 ? moment(s + 1) : s)),
        }));
        expect(rules(prep, gap)).toContain("segment-gap");
      }),
      runs,
    );
  });

  it("a lag missed by one minute, on either side", () => {
    fc.assert(
      fc.property(case_, fc.nat(), ({ prep, plan }, n) => {
        fc.pre(prep.lags.length > 0);
        const l = prep.lags[n % prep.lags.length]!;
        const before = plan.placed.find((p) => p.task === l.before);
        const at = plan.placed.findIndex((p) => p.task === l.after);
        fc.pre(before !== undefined && at >= 0);
        const gap = plan.placed[at]![l.afterEdge] - before![l.beforeEdge];
        const early = withPlaced(plan, at, (p) => shifted(p, l.least - gap - 1));
        expect(rules(prep, early)).toContain("lag");
        if (l.most !== null) {
          const most = l.most;
          const late = withPlaced(plan, at, (p) => shifted(p, most - gap + 1));
          expect(rules(prep, late)).toContain("lag");
        }
      }),
      runs,
    );
  });

  it("attended work without a cook, with a stranger, or outside a shift", () => {
    fc.assert(
      fc.property(case_, ({ prep, plan, at }) => {
        fc.pre(plan.placed[at] !== undefined && plan.placed[at].cook !== null);
        expect(
          rules(
            prep,
            withPlaced(plan, at, (p) => ({ ...p, cook: null })),
          ),
        ).toContain("no-cook");
        expect(
          rules(
            prep,
            withPlaced(plan, at, (p) => ({ ...p, cook: "Nemo" })),
          ),
        ).toContain("no-cook");
        const night = withPlaced(plan, at, (p) => shifted(p, 3 * 1440 - p.start));
        expect(rules(prep, night)).toContain("outside-shift");
      }),
      runs,
    );
  });

  it("two pairs of hands' work on one cook", () => {
    fc.assert(
      fc.property(case_, fc.nat(), ({ prep, plan }, n) => {
        const hands = plan.placed.filter(
          (p) => prep.tasks.find((t) => t.id === p.task)?.segments[0]?.attention === "hands",
        );
        fc.pre(hands.length > 1);
        const a = hands[n % hands.length]!;
        const b = hands[(n + 1) % hands.length]!;
        const at = plan.placed.indexOf(b);
        const both = withPlaced(plan, at, (p) => ({ ...shifted(p, a.start - p.start), cook: a.cook }));
        expect(rules(prep, both)).toContain("cook-overloaded");
      }),
      runs,
    );
  });

  it("a course stated whole that is not, or the other way round", () => {
    fc.assert(
      fc.property(case_, ({ prep, plan }) => {
        fc.pre(plan.courses.length > 0);
        const courses = plan.courses.map((c, i) => (i === 0 ? { ...c, whole: !c.whole } : c));
        expect(rules(prep, { ...plan, courses })).toContain("wrong-lateness");
      }),
      runs,
    );
  });

  it("lateness that is not so", () => {
    fc.assert(
      fc.property(case_, fc.integer({ min: 1, max: 30 }), ({ prep, plan }, by) => {
        fc.pre(plan.unplaced.length === 0);
        const courses = plan.courses.map((c, i) =>
          i === 0 ? { ...c, lateMinutes: minutes(c.lateMinutes + by) } : c,
        );
        expect(rules(prep, { ...plan, courses })).toContain("wrong-lateness");
        const objective = { ...plan.objective, lateMinutes: minutes(plan.objective.lateMinutes + by) };
        expect(rules(prep, { ...plan, objective })).toContain("wrong-lateness");
      }),
      runs,
    );
  });
});

/** A plan stated by hand: each task at a start, for Ada unless said. */
const stated = (
  prep: Prep,
  spots: readonly { task: string; at: number; cook?: string | null; oven?: string }[],
): Plan => {
  const placed = spots.map(({ task: id, at, cook = "Ada", oven }): Placed => {
    const own = prep.tasks.find((t) => t.id === id)!;
    let now = at;
    const segments = own.segments.map((s) => {
      const start = now;
      now += Math.ceil(s.minutes.likely);
      return moment(start);
    });
    return { task: id, start: moment(at), end: moment(now), segments, cook, oven: oven ?? null, because: [] };
  });
  const courses = prep.courses.map((c) => {
    const lands = Math.max(...c.plateTasks.map((id) => placed.find((p) => p.task === id)?.end ?? c.due));
    const lateMinutes = minutes(Math.max(0, lands - c.due));
    const whole = c.plateTasks.every((id) => placed.some((p) => p.task === id));
    return { ...c, lands: moment(lands), lateMinutes, whole, firstTask: null, firstStart: null };
  });
  const late = courses.reduce((sum, c) => sum + c.lateMinutes, 0);
  return {
    placed,
    courses,
    unplaced: [],
    status: late > 0 ? "late" : "on-time",
    objective: { lateMinutes: minutes(late), holdMinutes: minutes(0), calmMinutes: minutes(0), levels: [] },
    load: [],
    violations: [],
  };
};

const boil = (id: string) => task(id, 0, [segment(30, "none", [use("burner", 2)], "burner")]);
const bake = (id: string, setting: number, shelves = 1) =>
  task(id, 0, [segment(30, "none", [use("oven", shelves, setting)], "oven")]);

/** Shift 600–1320; oven a has 2 shelves; 1 min for 10 °C; tolerance 5 °C. Figures worked by hand. */
const byHand: readonly {
  what: string;
  prep: Prep;
  plan: Parameters<typeof stated>[1];
  breaks: readonly string[];
}[] = [
  {
    what: "three pots of two burners on four",
    prep: prepOf([boil("a"), boil("b"), boil("c")], [], []),
    plan: ["a", "b", "c"].map((t) => ({ task: t, at: 700, cook: null })),
    breaks: ["resource-over"],
  },
  {
    what: "the third pot when the first two are done",
    prep: prepOf([boil("a"), boil("b"), boil("c")], [], []),
    plan: [
      { task: "a", at: 700, cook: null },
      { task: "b", at: 700, cook: null },
      { task: "c", at: 730, cook: null },
    ],
    breaks: [],
  },
  {
    what: "heat with nobody there",
    prep: prepOf([boil("a")], [], []),
    plan: [{ task: "a", at: 1310, cook: null }],
    breaks: ["outside-shift"],
  },
  {
    what: "a machine that is not there",
    prep: prepOf([task("a", 0, [segment(5, "hands", [use("churn")])])], [], []),
    plan: [{ task: "a", at: 700 }],
    breaks: ["resource-over"],
  },
  {
    what: "180 and 185 °C together, within tolerance",
    prep: prepOf([bake("a", 180), bake("b", 185)], [], []),
    plan: [
      { task: "a", at: 700, cook: null, oven: "oven a" },
      { task: "b", at: 710, cook: null, oven: "oven a" },
    ],
    breaks: [],
  },
  {
    what: "180 and 190 °C together",
    prep: prepOf([bake("a", 180), bake("b", 190)], [], []),
    plan: [
      { task: "a", at: 700, cook: null, oven: "oven a" },
      { task: "b", at: 710, cook: null, oven: "oven a" },
    ],
    breaks: ["oven-clash"],
  },
  {
    what: "220 °C four minutes after 180 °C ends",
    prep: prepOf([bake("a", 180), bake("b", 220)], [], []),
    plan: [
      { task: "a", at: 700, cook: null, oven: "oven a" },
      { task: "b", at: 734, cook: null, oven: "oven a" },
    ],
    breaks: [],
  },
  {
    what: "220 °C three minutes after 180 °C ends",
    prep: prepOf([bake("a", 180), bake("b", 220)], [], []),
    plan: [
      { task: "a", at: 700, cook: null, oven: "oven a" },
      { task: "b", at: 733, cook: null, oven: "oven a" },
    ],
    breaks: ["oven-clash"],
  },
  {
    what: "180 °C sixteen minutes after the kitchen opens",
    prep: prepOf([bake("a", 180)], [], []),
    plan: [{ task: "a", at: 616, cook: null, oven: "oven a" }],
    breaks: [],
  },
  {
    what: "180 °C fifteen minutes after the kitchen opens, from 20 °C",
    prep: prepOf([bake("a", 180)], [], []),
    plan: [{ task: "a", at: 615, cook: null, oven: "oven a" }],
    breaks: ["oven-clash"],
  },
  {
    what: "three trays on two shelves",
    prep: prepOf([bake("a", 180, 2), bake("b", 180)], [], []),
    plan: [
      { task: "a", at: 700, cook: null, oven: "oven a" },
      { task: "b", at: 700, cook: null, oven: "oven a" },
    ],
    breaks: ["oven-over"],
  },
  {
    what: "a bake in no oven",
    prep: prepOf([bake("a", 180)], [], []),
    plan: [{ task: "a", at: 700, cook: null }],
    breaks: ["oven-over"],
  },
  {
    what: "minding two pots with nothing in the hands",
    prep: prepOf([task("a", 0, [segment(9, "mind")]), task("b", 0, [segment(9, "mind")])], [], []),
    plan: [
      { task: "a", at: 700 },
      { task: "b", at: 700 },
    ],
    breaks: [],
  },
  {
    what: "minding two pots with full hands",
    prep: prepOf(
      [
        task("a", 0, [segment(9, "mind")]),
        task("b", 0, [segment(9, "mind")]),
        task("c", 0, [segment(9, "hands")]),
      ],
      [],
      [],
    ),
    plan: ["a", "b", "c"].map((t) => ({ task: t, at: 700 })),
    breaks: ["cook-overloaded"],
  },
  {
    what: "a course that lands a minute early",
    prep: prepOf([task("p", 0, [segment(10, "hands")])], [], [goal(0, 800, ["p"])]),
    plan: [{ task: "p", at: 789 }],
    breaks: ["lands-early"],
  },
  {
    what: "a wait of 61 where 60 is the most",
    prep: prepOf(
      [task("a", 0, [segment(10, "hands")]), task("b", 0, [segment(10, "hands")])],
      [lag("a", "b", 0, 60)],
      [],
    ),
    plan: [
      { task: "a", at: 700 },
      { task: "b", at: 771 },
    ],
    breaks: ["lag"],
  },
];

it("hands a breach on as a finding that names its tasks", () => {
  const found = brokenFindings([{ rule: "lag", tasks: ["a", "b"], at: moment(7), detail: "61 > 60" }]);
  expect(found.map((f) => [f.code, f.severity, f.facts])).toEqual([
    ["plan-broken", "stop", { rule: "lag", detail: "61 > 60 (a, b)" }],
  ]);
});

describe("worked by hand", () => {
  for (const { what, prep, plan, breaks } of byHand) {
    it(`${what}: ${breaks.join(", ") || "holds"}`, () => {
      expect([...new Set(rules(prep, stated(prep, plan)))]).toEqual(breaks);
    });
  }
});

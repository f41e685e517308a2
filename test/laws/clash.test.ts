import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { celsius, count, minutes, moment, type Prep, whyPlan } from "#engine/index.ts";
import { compile } from "#engine/plan-from-prep/compile.ts";
import { withChange } from "#engine/plan-from-prep/exact/clash-changes.ts";
import { findClash } from "#engine/plan-from-prep/exact/clash-find.ts";
import { askWith } from "#engine/plan-from-prep/exact/clash-least.ts";
import { oracleFor } from "#engine/plan-from-prep/exact/clash-oracle.ts";
import { smallestClash } from "#engine/plan-from-prep/exact/clash-smallest.ts";
import { followPlan } from "#engine/plan-from-prep/follow-plan.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { goal, lag, prepOf, segment, task, use } from "../sittings/random-prep.ts";

const purse = () => ({ each: 5000, left: 500_000, keepGoing: () => true });
const opens = 600;

type Oven = { readonly bake: number; readonly setting: number; readonly rest: number; readonly most: number };

/** Things baked in one oven, rested or held, and plated together by one cook. */
const ovenPrep = (bakes: readonly Oven[], due: number, hours: number): Prep => ({
  ...prepOf(
    [
      ...bakes.map(({ bake, setting }, i) =>
        task(`bake ${i}`, 0, [
          segment(1, "hands"),
          segment(bake, "none", [use("oven", 1, setting)], "oven"),
          segment(1, "hands"),
        ]),
      ),
      task("plate", 0, [segment(3, "hands")], { kind: "plate", finishing: true }),
    ],
    bakes.map(({ rest, most }, i) => lag(`bake ${i}`, "plate", rest, rest + most)),
    [goal(0, opens + due, ["plate"])],
    { crew: [{ name: "Ada", shifts: [{ from: moment(opens), to: moment(opens + hours) }] }] },
  ),
  ovens: [{ id: "oven a", shelves: count(1), cold: celsius(20) }],
  ovensCold: "once",
  span: { from: moment(opens), to: moment(opens + hours) },
});

const bakes = fc.array(
  fc.record({
    bake: fc.integer({ min: 1, max: 8 }),
    setting: fc.constantFrom(40, 60, 100),
    rest: fc.integer({ min: 0, max: 4 }),
    most: fc.integer({ min: 0, max: 8 }),
  }),
  { minLength: 1, maxLength: 2 },
);

/** Whether any start of every task keeps every rule; tried one by one. */
const anyStart = (items: readonly Oven[], due: number, hours: number): boolean => {
  const change = (a: number, b: number): number => Math.ceil(Math.abs(a - b) / 10);
  const ok = (starts: readonly number[], plate: number): boolean => {
    const hands = [
      [plate, plate + 3],
      ...items.flatMap(({ bake }, i) => {
        const at = starts[i] ?? 0;
        return [
          [at, at + 1],
          [at + 1 + bake, at + 2 + bake],
        ];
      }),
    ];
    const apart = hands.every(([from = 0, to = 0], i) =>
      hands.slice(i + 1).every(([f = 0, t = 0]) => to <= f || t <= from),
    );
    const oven = items.map(({ bake, setting }, i) => ({
      from: (starts[i] ?? 0) + 1,
      to: (starts[i] ?? 0) + 1 + bake,
      setting,
    }));
    const heats = oven.every((a, i) =>
      oven.slice(i + 1).every((b) => {
        const gap = Math.abs(a.setting - b.setting) <= 5 ? 0 : Math.max(1, change(a.setting, b.setting));
        return a.to + gap <= b.from || b.to + gap <= a.from;
      }),
    );
    const warm = oven.every(({ from, setting }) => from >= change(20, setting));
    const waits = items.every(({ bake, rest, most }, i) => {
      const wait = plate - (starts[i] ?? 0) - bake - 2;
      return wait >= rest && wait <= rest + most;
    });
    return apart && heats && warm && waits;
  };
  for (let plate = Math.max(0, due - 3); plate + 3 <= hours; plate++) {
    const first = items[0];
    const second = items[1];
    for (let a = 0; first && a + first.bake + 2 <= hours; a++) {
      if (!second) {
        if (ok([a], plate)) return true;
        continue;
      }
      for (let b = 0; b + second.bake + 2 <= hours; b++) if (ok([a, b], plate)) return true;
    }
  }
  return false;
};

describe("a clash of demands", () => {
  it("is found exactly when no start of every task keeps every rule", () => {
    fc.assert(
      fc.property(
        bakes,
        fc.integer({ min: 3, max: 25 }),
        fc.integer({ min: 12, max: 30 }),
        (items, due, hours) => {
          const prep = ovenPrep(items, due, hours);
          const told = askWith(prep, { tasks: null, mostLate: () => null, anchored: false }, purse()).answer;
          expect(told).toBe(anyStart(items, due, hours) ? "fits" : "clash");
        },
      ),
      { numRuns: 150 },
    );
  });

  it("has no member that could be left out, and no task either", () => {
    fc.assert(
      fc.property(
        bakes,
        fc.integer({ min: 3, max: 25 }),
        fc.integer({ min: 12, max: 30 }),
        (items, due, hours) => {
          const prep = ovenPrep(items, due, hours);
          const model = compile(prep);
          const mostLate = model.goals.map(() => null);
          const found = findClash(prep, [model], { tasks: null, mostLate }, purse());
          fc.pre(found !== null);
          if (!found) return;
          expect(found.sure).toBe(true);
          const oracle = oracleFor(model, { tasks: new Set(found.tasks), mostLate }, purse());
          expect(oracle.ask(found.groups)).toBe("clash");
          for (const group of found.groups) {
            expect(oracle.ask(found.groups.filter((g) => g !== group))).toBe("fits");
          }
          for (const out of found.tasks) {
            const rest = oracleFor(
              model,
              { tasks: new Set(found.tasks.filter((n) => n !== out)), mostLate },
              purse(),
            );
            expect(rest.ask(found.groups)).toBe("fits");
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it("is left by each way out that is offered, and one minute less would not do", () => {
    let ways = 0;
    fc.assert(
      fc.property(
        bakes,
        fc.integer({ min: 3, max: 25 }),
        fc.integer({ min: 14, max: 30 }),
        (items, due, hours) => {
          const prep = ovenPrep(items, due, hours);
          const effort = { conflicts: 100_000, tries: 20, seed: 1 };
          const plan = whyPlan({ prep, plan: planFromPrep(prep, { tries: 30, seed: 1 }).value }, effort);
          fc.pre(plan.unplaced.length > 0);
          expect(plan.clashes?.length).toBeGreaterThan(0);
          const mostLate = () => 360;
          for (const way of plan.waysOut ?? []) {
            expect(way.after.unplaced).toBeLessThan(plan.unplaced.length);
            // Of several clashes apart from each other, one change frees one; what was only tried may help in part.
            if (plan.clashes?.length !== 1 || way.clash === null) continue;
            ways++;
            const eased = withChange(prep, way.change);
            const question = { tasks: null, mostLate, anchored: false };
            const told = askWith(eased, question, purse());
            expect(told.answer).toBe("fits");
            const then = followPlan(eased, told.placed, { tries: 0, seed: 1 }).value;
            expect(then.unplaced).toEqual([]);
            expect(checkFromPlan(eased, then)).toEqual([]);
            expect(way.after.unplaced).toBe(0);
            const { change } = way;
            if (!way.least || change.kind !== "lag") continue;
            const step = change.side === "most" ? -1 : 1;
            const less = { ...change, minutes: minutes(change.minutes + step) };
            expect(askWith(withChange(prep, less), question, purse()).answer).toBe("clash");
          }
        },
      ),
      { numRuns: 60 },
    );
    expect(ways).toBeGreaterThan(0);
  });

  it("and its ways out are the same for the same work", () => {
    const prep = ovenPrep(
      [
        { bake: 7, setting: 60, rest: 2, most: 3 },
        { bake: 5, setting: 100, rest: 0, most: 1 },
      ],
      20,
      30,
    );
    const why = () => whyPlan({ prep, plan: planFromPrep(prep, { tries: 20, seed: 1 }).value });
    expect(why().clashes?.length).toBeGreaterThan(0);
    expect(JSON.stringify(why())).toBe(JSON.stringify(why()));
  });

  it("never offers to let food keep longer than its limit of safety", () => {
    const roast = ovenPrep([{ bake: 5, setting: 60, rest: 0, most: 2 }], 20, 40);
    const prep: Prep = {
      ...roast,
      lags: roast.lags.map((l) => ({ ...l, least: minutes(10), most: minutes(5), reason: "fridge-limit" })),
    };
    const plan = whyPlan({ prep, plan: planFromPrep(prep, { tries: 10, seed: 1 }).value });
    expect(plan.clashes).toHaveLength(1);
    expect(plan.waysOut?.filter((way) => way.change.kind === "lag" && way.change.side === "most")).toEqual(
      [],
    );
  });

  it("never offers to let food stand longer before it is cooled", () => {
    // To be cooled within five minutes, and not before ten.
    const prep = prepOf(
      [
        task("simmer", 0, [segment(10, "hands")]),
        task("cool", 0, [segment(2, "hands", [], "ice-bath"), segment(20, "none", [], "ice-bath")]),
        task("plate", 0, [segment(3, "hands")], { kind: "plate", finishing: true }),
      ],
      [lag("simmer", "cool", 10, 5), lag("cool", "plate", 0)],
      [goal(0, opens + 120, ["plate"])],
    );
    const plan = whyPlan({ prep, plan: planFromPrep(prep, { tries: 10, seed: 1 }).value });
    expect(plan.clashes?.[0]?.demands.map((d) => (d.kind === "lag" ? d.side : d.kind)).toSorted()).toEqual([
      "least",
      "most",
    ]);
    for (const way of plan.waysOut ?? []) {
      expect(way.change.kind === "lag" && way.change.side === "most" && way.change.after === "cool").toBe(
        false,
      );
    }
  });

  it("says why a course is late, and by what least it would be on time", () => {
    // Two things at two heats in one oven, both served hot: the second waits for the oven.
    const items = [
      { bake: 6, setting: 60, rest: 0, most: 5 },
      { bake: 6, setting: 100, rest: 0, most: 5 },
    ];
    const prep = { ...ovenPrep(items, 3, 60), holds: [] };
    const plan = whyPlan({ prep, plan: planFromPrep(prep, { tries: 50, seed: 1 }).value });
    expect(plan.status).not.toBe("on-time");
    expect(plan.clashes?.[0]?.demands.some((d) => d.kind === "oven-heat" || d.kind === "due")).toBe(true);
    for (const way of plan.waysOut ?? []) {
      const { unplaced, lateMinutes } = way.after;
      expect(unplaced < plan.unplaced.length || lateMinutes < plan.objective.lateMinutes).toBe(true);
    }
  });
});

describe("the smallest set that clashes", () => {
  it("clashes, loses its clash with any member, and keeps the first in the list where it can", () => {
    fc.assert(
      fc.property(
        fc.array(fc.subarray([0, 1, 2, 3, 4, 5, 6, 7], { minLength: 1 }), { minLength: 1, maxLength: 5 }),
        (cores) => {
          const clashes = (set: readonly number[]): boolean =>
            cores.some((core) => core.every((member) => set.includes(member)));
          const all = [0, 1, 2, 3, 4, 5, 6, 7];
          const { members, sure } = smallestClash(all, (set) => (clashes(set) ? "clash" : "fits"));
          expect(sure).toBe(true);
          expect(clashes(members)).toBe(true);
          for (const member of members) expect(clashes(members.filter((m) => m !== member))).toBe(false);
          // The one whose last member comes first in the list, then by the next to last, and so on.
          const deleted = [...all]
            .reverse()
            .reduce<readonly number[]>(
              (left, m) => (clashes(left.filter((x) => x !== m)) ? left.filter((x) => x !== m) : left),
              all,
            );
          expect([...members].sort()).toEqual([...deleted].sort());
        },
      ),
    );
  });
});

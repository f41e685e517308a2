import { describe, expect, it } from "vitest";
import { action, asWritten, dish, line, menu, nutSwap, withSwap } from "../../../test/help/made-menu.ts";
import { exactly } from "../measure/estimate.ts";
import { celsius, minutes, moment } from "../measure/units.ts";
import type { Station } from "../model/food.ts";
import type { Plan } from "../model/plan.ts";
import type { Lag, Prep, Task, TaskKind } from "../model/prep.ts";
import type { Region } from "../model/sitting.ts";
import { safetyFromPlan } from "./safety-from-plan.ts";

type Step = {
  readonly id: string;
  readonly kind?: TaskKind;
  readonly station: Station;
  readonly at: number;
  readonly for: number;
};

/** A plan made by hand: steps of one dish, each after the one before. */
const planned = (source: string, steps: readonly Step[], hot = false): { prep: Prep; plan: Plan } => {
  const made = menu([], []);
  const tasks: Task[] = steps.map((s) => ({
    id: s.id,
    kind: s.kind ?? "method",
    dish: source,
    version: "as-written",
    course: 0,
    verb: s.id,
    objects: [],
    amount: null,
    segments: [{ minutes: exactly(minutes(s.for)), attention: "none", station: s.station, uses: [] }],
    finishing: false,
    span: null,
  }));
  const lags: Lag[] = steps.slice(1).map((s, i) => ({
    before: steps[i]!.id,
    beforeEdge: "end",
    after: s.id,
    afterEdge: "start",
    least: minutes(0),
    most: null,
    reason: "uses-product",
  }));
  const last = steps.at(-1);
  const before = steps.at(-2);
  return {
    prep: {
      tasks,
      lags,
      courses: [],
      holds: hot && last && before ? [{ task: before.id, plate: last.id, weight: 1, hot: true }] : [],
      crew: [],
      ovens: [],
      resources: [],
      attention: { capacity: 4, hands: 3, mind: 1 },
      kitchen: made.sitting.kitchen,
    },
    plan: {
      placed: steps.map((s) => ({
        task: s.id,
        start: moment(s.at),
        end: moment(s.at + s.for),
        segments: [moment(s.at)],
        cook: null,
        oven: null,
        because: [],
      })),
      courses: [],
      unplaced: [],
      status: "on-time",
      objective: { lateMinutes: minutes(0), holdMinutes: minutes(0), calmMinutes: minutes(0), levels: [] },
      load: [],
      violations: [],
    },
  };
};

const stew = dish("stew", [line(0, "carrots", "carrot", 500)]);
const rice = dish("rice", [line(0, "rice", "basmati-rice", 500)]);

const run = (d: typeof stew, steps: readonly Step[], region: Region = "uk", hot = false) => {
  const { prep, plan } = planned(d.source, steps, hot);
  return safetyFromPlan(menu([{ dish: d, versions: [asWritten(d)] }], [], { region }), prep, plan);
};

const cooling = (gap: number): readonly Step[] => [
  { id: "simmer", station: "burner", at: 0, for: 60 },
  { id: "cool", station: "bench", at: 60, for: gap },
  { id: "chill", station: "fridge", at: 60 + gap, for: 600 },
];

const holding = (wait: number): readonly Step[] => [
  { id: "roast", station: "oven", at: 0, for: 60 },
  { id: "plate", kind: "plate", station: "hands", at: 55 + wait, for: 5 },
];

describe("what the plan says of heat and cold", () => {
  const coolings: readonly (readonly [Region, number, boolean])[] = [
    ["uk", 90, false],
    ["uk", 91, true],
    ["us", 120, false],
    ["us", 121, true],
    ["eu", 119, false],
    ["eu", 120, true],
    ["au", 120, false],
    ["au", 121, true],
  ];
  it.each(coolings)("%s: %i minutes from the heat to the fridge, broken: %s", (region, gap, broken) => {
    const { value, findings } = run(stew, cooling(gap), region);
    const point = value.points.find((p) => p.hazard === "slow-cooling");
    expect(point?.broken).toBe(broken);
    expect(findings.some((f) => f.code === "limit-broken")).toBe(broken);
  });

  it("holds nothing against cold work", () => {
    const { value } = run(stew, [
      { id: "mix", station: "hands", at: 0, for: 10 },
      { id: "chill", station: "fridge", at: 600, for: 60 },
    ]);
    expect(value.points.map((p) => p.hazard)).toEqual(["cold-holding"]);
  });

  it("does not count the cooling of what was already chilled once", () => {
    const { value } = run(stew, [
      ...cooling(30),
      { id: "mix", station: "hands", at: 900, for: 10 },
      { id: "chill again", station: "fridge", at: 910, for: 60 },
    ]);
    expect(value.points.filter((p) => p.hazard === "slow-cooling")).toHaveLength(1);
  });

  const holds: readonly (readonly [Region, number, boolean])[] = [
    ["uk", 119, false],
    ["uk", 120, true],
    ["us", 240, false],
    ["us", 241, true],
    ["au", 241, true],
  ];
  it.each(holds)("%s: %i minutes from the heat to the plate, broken: %s", (region, wait, broken) => {
    const { value, findings } = run(stew, holding(wait), region, true);
    expect(value.points.find((p) => p.hazard === "hot-holding")?.broken).toBe(broken);
    expect(findings.some((f) => f.code === "limit-broken")).toBe(broken);
  });

  it("compares a wait with what the card says it holds", () => {
    const kept = {
      ...stew,
      keeping: [
        {
          text: "",
          span: { start: 0, end: 0 },
          where: "hot" as const,
          minutes: exactly(minutes(45)),
          afterStep: null,
          part: null,
        },
      ],
    };
    // Plating takes five minutes; the card's limit ends when it begins, as in the plan.
    expect(run(kept, holding(50), "uk", true).findings.map((f) => f.code)).toEqual([]);
    expect(run(kept, holding(51), "uk", true).findings.map((f) => f.code)).toEqual(["held-too-long"]);
  });

  it("gives the limits of reheating", () => {
    const { value } = run(stew, [{ id: "reheat", kind: "reheat", station: "burner", at: 0, for: 15 }]);
    expect(value.points.map((p) => [p.hazard, p.limits[0]?.celsius, p.limits[0]?.minutes])).toEqual([
      ["reheating", 70, 2],
    ]);
  });

  it("keeps cooked rice for a day in the UK and a week in the US", () => {
    const days = (d: number): readonly Step[] => [
      { id: "simmer", station: "burner", at: 0, for: 20 },
      { id: "chill", station: "fridge", at: 50, for: 60 },
      { id: "serve", kind: "plate", station: "hands", at: 50 + d * 1440, for: 5 },
    ];
    const broken = (d: number, region: Region) =>
      run(rice, days(d), region).value.points.find((p) => p.hazard === "cold-holding")?.broken;
    expect([broken(1, "uk"), broken(1.1, "uk"), broken(7, "us"), broken(7.1, "us")]).toEqual([
      false,
      true,
      false,
      true,
    ]);
  });
});

const nothing = planned("none", []);
const points = (d: typeof stew, region: Region = "uk", guests = [{ name: "Marian", needs: ["pregnant"] }]) =>
  safetyFromPlan(
    menu([{ dish: d, versions: [asWritten(d)] }], guests, { region }),
    nothing.prep,
    nothing.plan,
  );

describe("what can go wrong with the foods", () => {
  it("gives the limit of cooking for poultry, by region", () => {
    const d = dish("roast", [line(0, "chicken", "chicken-thigh", 500)], [action("s1a1", "roast", [0])]);
    const limit = (region: Region) =>
      points(d, region).value.points.find((p) => p.hazard === "raw-poultry")?.limits[0];
    expect(limit("uk")).toMatchObject({ celsius: 70, minutes: 2 });
    expect(limit("us")).toMatchObject({ celsius: 74, minutes: 0 });
  });

  it("says when no step cooks a raw food through", () => {
    const raw = dish("salad", [line(0, "chicken", "chicken-thigh", 500)], [action("s1a1", "slice", [0])]);
    expect(points(raw).findings.map((f) => f.code)).toContain("not-cooked-through");
    const cooked = dish(
      "roast",
      [line(0, "chicken", "chicken-thigh", 500)],
      [action("s1a1", "slice", [0]), action("s1a2", "roast", [], ["s1a1"])],
    );
    expect(points(cooked).findings.map((f) => f.code)).not.toContain("not-cooked-through");
  });

  const cores: readonly (readonly [Region, string, number, boolean])[] = [
    ["uk", "chicken-thigh", 75, false],
    ["uk", "chicken-thigh", 70, false],
    ["uk", "chicken-thigh", 65, true],
    ["us", "chicken-thigh", 74, false],
    ["us", "chicken-thigh", 73, true],
    ["us", "beef-mince", 68, false],
    ["us", "beef-mince", 62, true],
  ];
  it.each(cores)("%s: %s to %i °C, broken: %s", (region, food, core, broken) => {
    const d = dish(
      "d",
      [line(0, "it", food, 500)],
      [action("s1a1", "fry", [0], [], { core: celsius(core) })],
    );
    expect(points(d, region).findings.some((f) => f.code === "limit-broken")).toBe(broken);
  });

  it("cautions a pregnant guest about soft cheese, and about egg only where it is not cooked", () => {
    const brie = dish("tart", [line(0, "brie", "brie", 100)]);
    expect(points(brie).findings.map((f) => f.code)).toContain("pregnancy-caution");
    const baked = dish("cake", [line(0, "eggs", "egg", 100)], [action("s1a1", "bake", [0])]);
    expect(points(baked).findings.map((f) => f.code)).not.toContain("pregnancy-caution");
    expect(points(brie, "uk", [{ name: "Iris", needs: [] }]).findings.map((f) => f.code)).not.toContain(
      "pregnancy-caution",
    );
  });

  it("names what is about in the kitchen beside a plate made without it", () => {
    const d = dish("crumble", [line(0, "walnuts", "walnut", 100)], [], { swaps: [nutSwap] });
    const made = menu(
      [{ dish: d, versions: [asWritten(d), withSwap(d, nutSwap, 0, ["Odette"])] }],
      [{ name: "Odette", needs: ["no-nuts"] }],
    );
    const point = safetyFromPlan(made, nothing.prep, nothing.plan).value.points.find(
      (p) => p.hazard === "cross-contact",
    );
    expect(point).toMatchObject({ names: ["walnuts"], guests: ["Odette"] });
  });
});

describe("the same work for a version with an allergen and one without", () => {
  const nutty = dish("biscuits", [line(0, "ground almonds", "almond", 100)], [], { swaps: [nutSwap] });
  const guests = [{ name: "Odile", needs: ["no-nuts"] }];
  const order = (first: string, second: string): readonly string[] => {
    const versions = [asWritten(nutty), withSwap(nutty, nutSwap, 0, ["Odile"])];
    const { prep, plan } = planned(nutty.source, [
      { id: first, station: "machine", at: 0, for: 5 },
      { id: second, station: "machine", at: 10, for: 5 },
    ]);
    const tasks = prep.tasks.map((task) => ({
      ...task,
      verb: "pulse",
      version: task.id,
      segments: task.segments.map((s) => ({ ...s, attention: "hands" as const })),
    }));
    const made = menu([{ dish: nutty, versions }], guests);
    return safetyFromPlan(made, { ...prep, tasks }, plan)
      .findings.map((f) => f.code)
      .filter((code) => code === "made-after-allergen");
  };

  it("is said when the allergen comes first", () => {
    expect(order("as-written", "no-nuts")).toEqual(["made-after-allergen"]);
  });
  it("is not said the other way round", () => {
    expect(order("no-nuts", "as-written")).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { checkPlan, solvePrep } from "#engine/index.ts";
import { problemSentence } from "#words/problems.ts";
import { isProblem, readProblem } from "./read-problem.ts";

/** Two pans, an oven and a plate; invented. */
const small = {
  format: "tamis-problem/1",
  name: "two pans",
  cooks: [{ name: "Ada", shifts: [[600, 1200]] }],
  ovens: [{ id: "top", shelves: 2 }],
  resources: [{ id: "burner", capacity: 1 }],
  tasks: [
    { id: "fry", segments: [{ minutes: 8, attention: "hands", uses: [{ resource: "burner" }] }] },
    {
      id: "roast",
      segments: [
        { minutes: 1, attention: "hands" },
        { minutes: [20, 25, 30], attention: "none", uses: [{ resource: "oven", celsius: 200 }] },
      ],
    },
    { id: "plate", segments: [{ minutes: 4, attention: "hands" }] },
  ],
  lags: [
    { before: "fry", after: "plate", most: 5 },
    { before: "roast", after: "plate", most: 30 },
  ],
  courses: [{ name: "main", due: 720, plates: ["plate"] }],
  holds: [
    { task: "fry", plate: "plate", weight: 2, hot: true },
    { task: "roast", plate: "plate", weight: 1, hot: true },
  ],
};

const textOf = (value: unknown): string => JSON.stringify(value, null, 1);

describe("a problem file", () => {
  it("is planned and proved", () => {
    const { prep, problems } = readProblem("p.json", textOf(small));
    expect(problems).toEqual([]);
    const { value } = solvePrep(prep!, { tries: 50, proof: 10_000, seed: 1 });
    expect(checkPlan(prep!, value)).toEqual([]);
    // The fry ends at the plate; the roast, 25 min after a minute by hand, too.
    expect(value.objective.levels.map((l) => [l.level, l.value, l.proved]).slice(0, 2)).toEqual([
      ["late", 0, true],
      ["hold", 0, true],
    ]);
  });

  it("keeps a pan in use from the task that fills it to the one that ends with it clean", () => {
    const chain = (dish: string) => [
      { id: `${dish} in`, segments: [{ minutes: 10, attention: "hands" as const }] },
      { id: `${dish} out`, segments: [{ minutes: 10, attention: "hands" as const }] },
    ];
    const onePan = {
      ...small,
      resources: [{ id: "pan", capacity: 1 }],
      ovens: [],
      tasks: [...chain("a"), ...chain("b")],
      lags: ["a", "b"].map((dish) => ({ before: `${dish} in`, after: `${dish} out`, least: 60 })),
      courses: [{ name: "main", due: 900, plates: ["a out", "b out"] }],
      holds: [],
      stays: ["a", "b"].map((dish) => ({ resource: "pan", from: `${dish} in`, to: `${dish} out` })),
    };
    const { prep, problems } = readProblem("p.json", textOf(onePan));
    expect(problems).toEqual([]);
    const { value } = solvePrep(prep!, { tries: 50, proof: 10_000, seed: 1 });
    expect([value.unplaced, checkPlan(prep!, value)]).toEqual([[], []]);
    const at = (task: string) => value.placed.find((p) => p.task === task);
    const apart = at("a out")!.end <= at("b in")!.start || at("b out")!.end <= at("a in")!.start;
    expect(apart).toBe(true);
  });

  it("says of itself that it is one", () => {
    expect(isProblem(textOf(small))).toBe(true);
    expect(isProblem(textOf({ format: "other/1" }))).toBe(false);
    expect(isProblem('{"format": "kitchen-bench/1"}')).toBe(true);
  });

  type Wrong = readonly [what: string, change: (p: typeof small) => unknown, code: string, at: string];
  const wrongs: readonly Wrong[] = [
    ["an unknown key", (p) => ({ ...p, chefs: [] }), "key-unknown", '"chefs"'],
    ["a missing key", ({ courses: _, ...p }) => p, "key-missing", "{"],
    [
      "a stay in a pan that is not there",
      (p) => ({ ...p, stays: [{ resource: "wok" }] }),
      "name-unknown",
      '"wok"',
    ],
    ["no format", (p) => ({ ...p, format: "two pans" }), "value-bad", '"two pans"'],
    [
      "a lag to nowhere",
      (p) => ({ ...p, lags: [{ before: "fry", after: "plait" }] }),
      "name-unknown",
      '"plait"',
    ],
    ["a cook twice", (p) => ({ ...p, cooks: [...p.cooks, ...p.cooks] }), "name-twice", '"Ada"'],
    [
      "a shift that ends first",
      (p) => ({ ...p, cooks: [{ name: "Ada", shifts: [[700, 600]] }] }),
      "value-bad",
      "[",
    ],
    [
      "most below least",
      (p) => ({ ...p, lags: [{ before: "fry", after: "plate", least: 9, most: 5 }] }),
      "value-bad",
      "5",
    ],
    [
      "minutes below none",
      (p) => ({ ...p, tasks: [{ id: "a", segments: [{ minutes: -1, attention: "none" }] }] }),
      "value-bad",
      "-1",
    ],
    ["a level that is none", (p) => ({ ...p, levels: ["tasty"] }), "value-bad", '"tasty"'],
  ];
  it.each(wrongs)("refuses %s, with its place", (_, change, code, at) => {
    const text = textOf(change(small));
    const { prep, problems } = readProblem("p.json", text);
    expect(prep).toBeNull();
    const found = problems.find((p) => p.code === code);
    expect(found, problems.map((p) => p.code).join()).toBeDefined();
    expect(text.slice(found!.place.start).startsWith(at)).toBe(true);
    expect(found!.place.line).toBe(text.slice(0, found!.place.start).split("\n").length);
    expect(problemSentence(found!).says).not.toContain("undefined");
  });

  it("refuses what is no JSON", () => {
    const { prep, problems } = readProblem("p.json", '{"format": "tamis-problem/1", "name": ');
    expect(prep).toBeNull();
    expect(problems.length).toBeGreaterThan(0);
  });
});

/** A kitchen of kitchen-bench/1: one cook, a pan, a plate of two hands that start together; invented. */
const bench = {
  format: "kitchen-bench/1",
  name: "made up",
  horizon: 300,
  attention: { capacityPerCook: 4, handsOn: 3, minded: 1, unattended: 0 },
  cooks: [
    { id: "one", shifts: [[10, 280]] },
    { id: "two", shifts: [[100, 280]] },
  ],
  ovens: [{ id: "oven1", shelves: 1, startTempC: 20 }],
  ovenRamp: { heatMinutesPer10C: 1, coolMinutesPer10C: 2 },
  equipment: [{ id: "burner", capacity: 1 }],
  tasks: [
    {
      id: "t1",
      name: "bake",
      dish: "c1",
      finishing: false,
      segments: [
        { minutes: 20, attention: "unattended", uses: [{ resource: "oven", amount: 1, tempC: 220 }] },
      ],
    },
    {
      id: "t2",
      name: "plate",
      dish: "c1",
      finishing: true,
      segments: [{ minutes: 5, attention: "handsOn" }],
    },
    {
      id: "t3",
      name: "plate",
      dish: "c1",
      finishing: true,
      segments: [{ minutes: 9, attention: "handsOn" }],
    },
  ],
  lags: [
    {
      before: "t1",
      beforeEdge: "end",
      after: "t2",
      afterEdge: "start",
      minMinutes: 0,
      maxMinutes: 15,
      why: "hot",
    },
  ],
  courses: [{ id: "c1", service: 1, dueMinute: 60, plateTasks: ["t2", "t3"] }],
  hotHold: [{ task: "t1", plate: "t2", maxMinutes: 15, weight: 3, course: "c1" }],
  freshness: [],
  calm: [{ service: 1, fromMinute: 0, toMinute: 60 }],
  objective: { order: ["courseLatenessMinutes", "hotHoldWeightedMinutes", "calmHandsOnMinutes"] },
  note: "further keys are let go",
};

describe("a kitchen of kitchen-bench/1", () => {
  it("keeps to the format's meaning: plates start together, the first carries the lateness", () => {
    const { prep } = readProblem("k.json", textOf(bench));
    const { value } = solvePrep(prep!, { tries: 50, proof: 10_000, seed: 1 });
    // The second cook comes at 100, so both plates start there: the first ends at 105, 45 late.
    expect(value.placed.filter((p) => p.task !== "t1").map((p) => p.start)).toEqual([100, 100]);
    expect(value.objective.levels.map((l) => [l.level, l.value, l.proved])).toEqual([
      ["late", 45, true],
      ["hold", 0, true],
      ["calm", 0, true],
    ]);
  });

  it("refuses a resource that is not there, and a wrong attention", () => {
    const wrong = {
      ...bench,
      equipment: [],
      tasks: [{ ...bench.tasks[0], segments: [{ minutes: 5, attention: "hands" }] }],
    };
    expect(readProblem("k.json", textOf(wrong)).problems.map((p) => p.code)).toEqual(["value-bad"]);
    const gone = { ...bench, hotHold: [{ task: "t9", plate: "t2", weight: 1 }] };
    expect(readProblem("k.json", textOf(gone)).problems.map((p) => p.code)).toEqual(["name-unknown"]);
  });
});

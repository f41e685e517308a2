import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import {
  count,
  type Dish,
  exactly,
  type Finding,
  minutes,
  moment,
  type Prep,
  type Sitting,
  type Task,
} from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { guest, sitting } from "../help/dishes.ts";
import { cooked, type Told } from "./methods.ts";

const crew = [{ name: "Ada", shifts: [{ from: moment(9 * 60), to: moment(22 * 60) }] }];
const worked = (
  dishes: readonly Dish[],
  covers = 4,
  more: Partial<Sitting> = {},
): { prep: Prep; findings: readonly Finding[] } => {
  const at = sitting(
    dishes.map((d) => d.source),
    covers,
    { crew, ...more },
  );
  const { value, findings } = prepFromMenu(menuFromDishes(at, dishes).value);
  return { prep: value, findings };
};
const find = (prep: Prep, verb: string): Task => prep.tasks.find((t) => t.verb === verb)!;
const length = (task: Task): number => task.segments.reduce((sum, s) => sum + s.minutes.likely, 0);
const codes = (findings: readonly Finding[]): readonly string[] => findings.map((f) => f.code);

const gratin = (more: Partial<Dish> = {}) =>
  cooked(
    "gratin",
    4,
    [1000, 200],
    [
      { id: "a", technique: "layer", takes: [0, 1] },
      { id: "b", technique: "bake", minutes: 50, celsius: 180, takes: ["a"] },
    ],
    more,
  );

describe("the work of a menu", () => {
  it("tells the work of a dish apart that is served in two courses", () => {
    const courses = [19, 20].map((hour) => ({
      name: `At ${hour}`,
      at: moment(hour * 60),
      dishes: ["gratin"],
    }));
    const { prep } = worked([gratin()], 4, { courses });
    expect(new Set(prep.tasks.map((t) => t.id)).size).toBe(prep.tasks.length);
    expect(prep.courses.map((c) => c.plateTasks.length)).toEqual([1, 1]);
    const plan = planFromPrep(prep, { tries: 5, seed: 1 }).value;
    expect(plan.unplaced).toEqual([]);
    expect(checkFromPlan(prep, plan)).toEqual([]);
  });

  it("loads the oven by hand, leaves it alone, takes it out", () => {
    const bake = find(worked([gratin()]).prep, "bake");
    expect(bake.segments.map((s) => s.attention)).toEqual(["hands", "none", "hands"]);
    expect(bake.segments[1]!.uses).toEqual([{ resource: "oven", amount: 1, celsius: 180 }]);
    expect(bake.segments[1]!.minutes.likely).toBe(50);
  });

  it("keeps a stated time where the oven can give it, and asks for more shelves", () => {
    const shelves = (covers: number): number => {
      const kitchen = {
        ...sitting([], 4).kitchen,
        ovens: [{ name: "oven", shelves: count(3), fan: true, kilowatts: 40 }],
      };
      const { prep } = worked([gratin()], covers, { kitchen });
      const bakes = prep.tasks.filter((t) => t.verb === "bake");
      for (const bake of bakes) expect(bake.segments.some((s) => s.minutes.likely === 50)).toBe(true);
      return bakes.flatMap((b) => b.segments.flatMap((s) => s.uses)).reduce((sum, u) => sum + u.amount, 0);
    };
    expect(shelves(4)).toBe(1);
    expect(shelves(40)).toBeGreaterThan(3);
  });

  it("lets a full oven of little power take longer, and says by what", () => {
    const kitchen = {
      ...sitting([], 4).kitchen,
      ovens: [{ name: "oven", shelves: count(3), fan: true, kilowatts: 1.5 }],
    };
    const { prep, findings } = worked([gratin()], 40, { kitchen });
    const bakes = prep.tasks.filter((t) => t.verb === "bake");
    const longest = Math.max(...bakes.flatMap((b) => b.segments.map((s) => s.minutes.likely)));
    expect(longest).toBeGreaterThan(55);
    const [told] = findings.filter((f) => f.code === "time-carried");
    expect(told?.facts).toMatchObject({
      verb: "bake",
      stated: 50,
      by: "oven-load",
      factor: 10,
      kilowatts: 1.5,
    });
  });

  it("says that a kitchen without an oven cannot roast, and still lays out the work", () => {
    const kitchen = { ...sitting([], 4).kitchen, ovens: [] };
    const { prep, findings } = worked([gratin()], 4, { kitchen });
    expect(findings.filter((f) => f.code === "station-missing").map((f) => f.facts)).toEqual([
      { title: "gratin", station: "oven" },
    ]);
    expect(find(prep, "bake").segments.flatMap((s) => s.uses)).toEqual([]);
    const plan = planFromPrep(prep, { tries: 20, seed: 1 }).value;
    expect(plan.unplaced).toEqual([]);
    expect(checkFromPlan(prep, plan)).toEqual([]);
  });

  it("fries in so many rounds, two pans side by side", () => {
    const chops = cooked(
      "chops",
      4,
      [800],
      [{ id: "a", technique: "brown", minutes: 16, batches: 2, takes: [0] }],
    );
    const at = (covers: number): number => length(find(worked([chops], covers).prep, "brown"));
    // 2 batches of 8 min in two pans; 8 batches in two pans are 4 rounds.
    expect(at(4)).toBe(8);
    expect(at(16)).toBe(32);
  });

  it("peels by the kilo", () => {
    const mash = cooked("mash", 4, [1000], [{ id: "a", technique: "peel", takes: [0] }]);
    const at = (covers: number): number => length(find(worked([mash], covers).prep, "peel"));
    // Set-up 1 min, then the PERT mean of 4, 5.5 and 7.5 min a kilo, for the 750 g that are left of a kilo of potatoes.
    const rate = (4 + 4 * 5.5 + 7.5) / 6;
    expect(at(4)).toBeCloseTo(1 + 0.75 * rate, 5);
    expect(at(8)).toBeCloseTo(1 + 1.5 * rate, 5);
  });

  it("waits by itself: a chill takes hands only to put it in, and what follows comes after", () => {
    const mousse = cooked(
      "mousse",
      4,
      [500],
      [
        { id: "a", technique: "whisk", minutes: 6, takes: [0] },
        { id: "b", technique: "chill", minutes: 180, takes: ["a"] },
      ],
    );
    const { prep } = worked([mousse]);
    const chill = find(prep, "chill");
    expect(chill.kind).toBe("wait");
    expect(chill.segments.map((s) => [s.attention, s.minutes.likely])).toEqual([
      ["hands", 1],
      ["none", 180],
    ]);
    expect(prep.lags.some((l) => l.before === chill.id && l.after === "mousse/plate")).toBe(true);
  });

  it("lets a hot dish wait as long as its card says, and a fried one ten minutes when it says nothing", () => {
    const held = (d: Dish): number | null =>
      worked([d]).prep.lags.find((l) => l.after.endsWith("/plate"))?.most ?? null;
    const hot = {
      text: "",
      span: { start: 0, end: 0 },
      where: "hot" as const,
      minutes: exactly(minutes(45)),
      afterStep: null,
      part: null,
    };
    expect(held(gratin({ keeping: [hot] }))).toBe(45);
    expect(held(gratin())).toBe(30);
    expect(held(cooked("f", 4, [500], [{ id: "a", technique: "fry", minutes: 8, takes: [0] }]))).toBe(10);
    expect(codes(worked([gratin()]).findings)).toContain("keeping-assumed");
    expect(codes(worked([gratin({ keeping: [hot] })]).findings)).not.toContain("keeping-assumed");
  });

  it("hurries nobody for what soaked overnight, nor for what simmered long in its pot", () => {
    const most = (told: Told[], after: string): number | null =>
      worked([cooked("b", 4, [500], told)]).prep.lags.find((l) => l.after === after)?.most ?? null;
    const boiled = { id: "b", technique: "simmer", minutes: 60, takes: ["a"] };
    const soaked = (length: number): Told[] => [
      { id: "a", technique: "soak", minutes: length, takes: [0] },
      boiled,
    ];
    expect(most(soaked(600), "b/2")).toBe(24 * 60 - 600);
    expect(most(soaked(120), "b/2")).toBe(4 * 60);
    expect(most(soaked(600), "b/plate")).toBe(90);
    expect(
      most([{ id: "a", technique: "simmer", minutes: 8, takes: [0] }], "b/plate"),
      "what is done in minutes is spoilt by standing",
    ).toBe(30);
  });

  it("keeps a slowly cooked joint hot longer than a quick roast, and takes an ice out just before its plate", () => {
    const plated = (told: Told[]): number | null =>
      worked([cooked("d", 4, [1500], told)]).prep.lags.find((l) => l.after === "d/plate")?.most ?? null;
    const roast = (length: number): Told[] => [
      { id: "a", technique: "roast", minutes: length, celsius: 150, takes: [0] },
    ];
    expect(plated(roast(240))).toBe(90);
    expect(plated(roast(40))).toBe(30);
    const ice = (length: number): Told[] => [
      { id: "a", technique: "freeze", minutes: 240, takes: [0] },
      { id: "b", technique: "chill", minutes: length, takes: ["a"] },
    ];
    expect(plated(ice(15))).toBe(10);
    expect(plated(ice(600)), "what takes a night is thawed").toBe(24 * 60);
    const lags = worked([cooked("d", 4, [1500], ice(15))]).prep.lags;
    expect(lags.find((l) => l.after === "d/2")?.most, "what is frozen stays frozen").toBe(24 * 60);
  });

  it("cools what is hot before it keeps in the fridge until it is reheated", () => {
    const soup = cooked(
      "soup",
      4,
      [1500],
      [
        { id: "a", technique: "simmer", minutes: 30, takes: [0] },
        { id: "b", technique: "reheat", minutes: 10, takes: ["a"], toServe: true },
      ],
      {
        keeping: [
          {
            text: "",
            span: { start: 0, end: 0 },
            where: "fridge",
            minutes: exactly(minutes(2880)),
            afterStep: 0,
            part: null,
          },
        ],
      },
    );
    const { prep } = worked([soup]);
    const cool = find(prep, "cool quickly");
    const before = prep.lags.find((l) => l.after === cool.id)!;
    const after = prep.lags.find((l) => l.before === cool.id)!;
    expect([before.most, after.most, after.reason]).toEqual([30, 2880, "fridge-limit"]);
  });

  it("counts a night once: a stated gap is passed by the wait before it", () => {
    const least = (chill: number): number =>
      worked([
        cooked(
          "dough",
          4,
          [500],
          [
            { id: "a", technique: "chill", minutes: chill, takes: [0] },
            { id: "b", technique: "shape", takes: ["a"], gap: 480 },
          ],
        ),
      ]).prep.lags.find((l) => l.after === "dough/2")!.least;
    expect([least(600), least(60)]).toEqual([0, 420]);
  });

  it("takes hours of one thing by hand for a wait", () => {
    const dried = cooked("dried", 4, [500], [{ id: "a", technique: "pat-dry", minutes: 600, takes: [0] }]);
    expect(
      worked([dried])
        .prep.tasks.find((t) => t.id === "dried/1")!
        .segments.map((s) => s.attention),
    ).toEqual(["none"]);
  });

  it("does only that part twice which a swap changes", () => {
    const stew = cooked(
      "stew",
      4,
      [1000, 300],
      [
        { id: "a", technique: "sweat", minutes: 10, takes: [0] },
        { id: "b", technique: "simmer", minutes: 30, takes: [1, "a"] },
      ],
      {
        swaps: [
          {
            text: "",
            span: { start: 0, end: 0 },
            needs: ["no-celery"],
            out: [1],
            comes: [{ food: "parsnip", name: "parsnip", grams: null, amounts: [] }],
          },
        ],
      },
    );
    const celery = {
      ...stew,
      ingredients: stew.ingredients.map((i) => (i.index === 1 ? { ...i, food: "celery" } : i)),
    };
    const { prep } = worked([celery], 8, { guests: [guest("Bea", "no-celery")] });
    const verbs = prep.tasks.map((t) => t.verb);
    expect(verbs.filter((v) => v === "sweat")).toHaveLength(1);
    expect(verbs.filter((v) => v === "simmer")).toHaveLength(2);
  });

  it("plates by the portion: 24 take more than a minute", () => {
    const plate = find(worked([gratin()], 24).prep, "plate");
    expect(length(plate)).toBeGreaterThan(4);
    expect(plate.amount).toEqual({ value: 24, unit: "portion" });
    expect(plate.finishing).toBe(true);
  });
});

const techniques = [
  "chop",
  "whisk",
  "sweat",
  "simmer",
  "bake",
  "fry",
  "chill",
  "prove",
  "cool",
  "blend",
  "rest",
  "shape",
];

/** Dishes whose actions take lines and earlier actions at random. */
const anyDish = (source: string): fc.Arbitrary<Dish> =>
  fc
    .array(
      fc.record({
        technique: fc.constantFrom(...techniques),
        minutes: fc.option(fc.integer({ min: 1, max: 90 }), { nil: undefined }),
        back: fc.integer({ min: 0, max: 4 }),
        second: fc.integer({ min: 0, max: 6 }),
      }),
      { minLength: 1, maxLength: 9 },
    )
    .map((steps) =>
      cooked(
        source,
        4,
        [800, 300],
        steps.map((s, i): Told => {
          const earlier = [i - s.back, i - s.second].filter((n) => n >= 0 && n < i).map((n) => `s${n}`);
          const takes = earlier.length > 0 ? [...new Set(earlier)] : [i % 2];
          return { id: `s${i}`, technique: s.technique, takes, ...(s.minutes ? { minutes: s.minutes } : {}) };
        }),
      ),
    );

describe("any menu", () => {
  it("gives work whose limits can all be kept, and a plan that keeps them", () => {
    fc.assert(
      fc.property(anyDish("one"), anyDish("two"), fc.integer({ min: 1, max: 60 }), (one, two, covers) => {
        const { prep } = worked([one, two], covers, {
          crew: [
            {
              name: "Ada",
              shifts: [
                { from: moment(9 * 60 - 1440), to: moment(20 * 60 - 1440) },
                { from: moment(8 * 60), to: moment(22 * 60) },
              ],
            },
            { name: "Bo", shifts: [{ from: moment(12 * 60), to: moment(22 * 60) }] },
          ],
        });
        const { value: plan, findings } = planFromPrep(prep, { tries: 5, seed: 1 });
        expect(codes(findings)).not.toContain("limits-clash");
        expect(checkFromPlan(prep, plan)).toEqual([]);
        const ids = prep.tasks.map((t) => t.id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 40 },
    );
  });

  it("has the same work with more covers, and never less of it", () => {
    fc.assert(
      fc.property(anyDish("one"), fc.integer({ min: 1, max: 20 }), (one, covers) => {
        const hands = (n: number): number =>
          worked([one], n).prep.tasks.reduce((sum, t) => sum + length(t), 0);
        expect(hands(covers * 3)).toBeGreaterThanOrEqual(hands(covers) - 1e-6);
      }),
      { numRuns: 40 },
    );
  });
});

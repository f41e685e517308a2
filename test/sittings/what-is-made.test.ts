import { describe, expect, it } from "vitest";
import { count, type Dish, moment, type Prep, type Sitting, type Task } from "#engine/index.ts";
import { menuFromDishes } from "#engine/menu-from-dishes/menu-from-dishes.ts";
import { prepFromMenu } from "#engine/prep-from-menu/prep-from-menu.ts";
import { guest, sitting } from "../help/dishes.ts";
import { cooked } from "./methods.ts";

const crew = [{ name: "Ada", shifts: [{ from: moment(9 * 60), to: moment(22 * 60) }] }];
const worked = (dish: Dish, more: Partial<Sitting> = {}): Prep =>
  prepFromMenu(menuFromDishes(sitting([dish.source], more.covers ?? 4, { crew, ...more }), [dish]).value)
    .value;

describe("what stands in a vessel", () => {
  it("is counted once where the words lift a thing out and put it back", () => {
    const prep = worked(
      cooked(
        "pot",
        4,
        [1000, 200],
        [
          { id: "a", technique: "braise", minutes: 50, celsius: 180, takes: [0] },
          { id: "b", technique: "bake", minutes: 30, celsius: 180, takes: ["a", 1] },
          { id: "c", technique: "roast", minutes: 40, celsius: 180, takes: ["b", "a"] },
        ],
      ),
    );
    const grams = (verb: string): number => prep.tasks.find((t) => t.verb === verb)?.amount?.value ?? 0;
    expect(grams("bake")).toBeGreaterThan(0);
    // All of it is in the dish before; lifting some out and putting it back brings nothing in.
    expect(grams("roast")).toBe(grams("bake"));
  });

  it("keeps versions apart that differ in what an earlier action took, named or not", () => {
    const dish = cooked(
      "sauce",
      4,
      [1000, 200],
      [
        { id: "a", technique: "simmer", minutes: 30, takes: [0] },
        { id: "b", technique: "boil", minutes: 20, takes: [1] },
        { id: "c", technique: "bake", minutes: 30, celsius: 180, takes: ["a"] },
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
    // The third action goes on from the second, whose food the version swaps, without naming it.
    const ingredients = dish.ingredients.map((line, i) => (i === 1 ? { ...line, food: "celery" } : line));
    const steps = dish.steps.map((step) => ({
      ...step,
      actions: step.actions.map((action) => (action.id === "c" ? { ...action, after: ["a", "b"] } : action)),
    }));
    const guests = [guest("Vera", "no-celery")];
    const prep = worked({ ...dish, ingredients, steps }, { guests });
    expect(prep.tasks.filter((t) => t.verb === "bake").length).toBe(2);
  });
});

const roast = cooked(
  "roast",
  4,
  [2000, 200],
  [
    { id: "take", technique: "rest", minutes: 60, takes: [0] },
    { id: "roast", technique: "roast", minutes: 60, celsius: 180, takes: ["take"] },
    { id: "rest", technique: "rest", minutes: 30, takes: ["roast"] },
    { id: "slice", technique: "slice", takes: ["rest"] },
    { id: "sweat", technique: "sweat", minutes: 15, takes: [1] },
    { id: "turn", technique: "toss", takes: ["sweat"], toServe: true },
  ],
);
const lagsInto = (prep: Prep, id: string) => prep.lags.filter((lag) => lag.after === id);
const minutesOf = (task: Task | undefined): number =>
  task?.segments.reduce((sum, s) => sum + s.minutes.likely, 0) ?? 0;
const only = (prep: Prep, verb: string): Task | undefined => prep.tasks.find((t) => t.verb === verb);

describe("a roast and what is told after it", () => {
  const prep = worked(roast, { covers: count(8) });

  it("goes to the plates and not into the sauce", () => {
    const sweat = only(prep, "sweat");
    const slice = only(prep, "slice");
    expect(lagsInto(prep, sweat?.id ?? "").map((lag) => lag.before)).not.toContain(slice?.id);
    const toPlate = prep.lags.find((lag) => lag.before === slice?.id);
    expect(toPlate?.after).toBe(prep.courses[0]?.plateTasks[0]);
    expect(toPlate?.most).toBeLessThanOrEqual(30);
    expect(prep.holds.some((hold) => hold.task === slice?.id && hold.hot)).toBe(true);
  });

  it("is set out by somebody, and rests as soon as it is out of the oven", () => {
    const rests = prep.tasks.filter((t) => t.verb === "rest");
    expect(rests.length).toBe(2);
    expect(rests[0]?.segments[0]?.attention).toBe("hands");
    expect(Math.max(...lagsInto(prep, rests[1]?.id ?? "").map((lag) => lag.most ?? 999))).toBeLessThanOrEqual(
      10,
    );
  });

  it("is sliced at 12 to 20 kilos an hour", () => {
    // Common practice, no source.
    const slice = only(prep, "slice");
    const hours = minutesOf(slice) / 60;
    const kilos = (slice?.amount?.value ?? 0) / 1000;
    expect(kilos / hours).toBeGreaterThan(12);
    expect(kilos / hours).toBeLessThan(20);
  });
});

describe("what is wrung out", () => {
  it("takes as long as its weight says, and not a moment for each guest", () => {
    const told = [
      { id: "soak", technique: "soak", minutes: 5, takes: [0] },
      { id: "squeeze", technique: "squeeze", takes: ["soak"] },
      { id: "simmer", technique: "simmer", minutes: 30, takes: ["squeeze", 1] },
    ];
    const prep = worked(cooked("leaves", 4, [4, 500], told), { covers: count(120) });
    const attended = prep.tasks
      .flatMap((t) => (t.kind === "plate" ? [] : t.segments))
      .reduce((sum, s) => sum + (s.attention === "none" ? 0 : s.minutes.likely), 0);
    expect(attended).toBeLessThan(40);
  });
});

describe("words to serve", () => {
  it("are done in the last stretch before the plate", () => {
    const told = [
      { id: "boil", technique: "boil", minutes: 30, takes: [0] },
      { id: "chill", technique: "chill", minutes: 120, takes: ["boil"] },
      { id: "cut", technique: "slice", minutes: 10, takes: ["chill"], toServe: true },
      { id: "fry", technique: "simmer", minutes: 10, takes: [1], toServe: true },
    ];
    const prep = worked(cooked("late", 4, [500, 500], told));
    const plate = prep.courses[0]?.plateTasks[0];
    const late = prep.tasks.filter((t) => t.finishing && t.id !== plate).map((t) => t.id);
    const into = prep.lags.filter((lag) => lag.after === plate && late.includes(lag.before));
    expect(into.length).toBeGreaterThan(0);
    for (const lag of into) expect(lag.most).toBeLessThanOrEqual(45);
  });

  it("are not the only ones: what is turned out cold is turned out late", () => {
    const told = [
      { id: "simmer", technique: "simmer", minutes: 10, takes: [0, 1] },
      { id: "chill", technique: "chill", minutes: 300, takes: ["simmer"] },
      { id: "out", technique: "unmould", takes: ["chill"] },
    ];
    const prep = worked(cooked("set", 4, [500, 500], told), { covers: count(40) });
    const into = prep.lags.filter((lag) => lag.after === prep.courses[0]?.plateTasks[0]);
    expect(into.length).toBe(1);
    expect(into[0]?.most).toBeLessThanOrEqual(45);
  });
});

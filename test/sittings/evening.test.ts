import { beforeAll, describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import { type Evening, type Finding, type Placed, runEvening, type Task } from "#engine/index.ts";
import { readDemo } from "../help/demo.ts";

/** The whole line over the demo: would a cook work from this plan? */
let evening: Evening;
let findings: readonly Finding[];
let placed: ReadonlyMap<string, Placed>;
const tasks = (dish: string): readonly Task[] => evening.prep.tasks.filter((t) => t.dish === dish);
const at = (task: Task): Placed => placed.get(task.id)!;
const byVerb = (dish: string, verb: RegExp): readonly Placed[] =>
  tasks(dish)
    .filter((t) => verb.test(t.verb))
    .map(at);

beforeAll(() => {
  const { sitting, cards } = readDemo();
  const out = runEvening(sitting!, cards);
  evening = out.value;
  findings = out.findings;
  placed = new Map(evening.plan.placed.map((p) => [p.task, p]));
});

describe("the supper for twenty-four", () => {
  it("is planned whole, on time, and the checker agrees", () => {
    expect(evening.plan.unplaced).toEqual([]);
    expect(evening.plan.status).toBe("on-time");
    expect(checkFromPlan(evening.prep, evening.plan)).toEqual([]);
    expect(findings.filter((f) => f.code === "limits-clash" || f.code === "station-missing")).toEqual([]);
  });

  it("has work for a kitchen, not for a stopwatch", () => {
    const { plan, prep } = evening;
    expect(prep.tasks.length).toBeGreaterThan(40);
    expect(prep.tasks.length).toBeLessThan(250);
    const short = prep.tasks.filter((t) => {
      const own = at(t);
      return t.kind !== "wait" && own.end - own.start < 3;
    });
    expect(short.length).toBeLessThan(prep.tasks.length / 5);
    expect(plan.load).toHaveLength(evening.menu.sitting.crew.length);
    for (const load of plan.load) expect(load.handsMinutes).toBeGreaterThan(60);
  });

  it("plates each dish in some minutes, close to the others of its course", () => {
    expect(evening.prep.courses).toHaveLength(evening.menu.sitting.courses.length);
    for (const goal of evening.prep.courses) {
      const plates = goal.plateTasks.map((id) => placed.get(id)!);
      expect(plates.length).toBeGreaterThan(0);
      for (const plate of plates) {
        expect(plate.end - plate.start).toBeGreaterThanOrEqual(4);
        expect(goal.due - plate.start).toBeLessThanOrEqual(60);
      }
      expect(Math.max(...plates.map((p) => p.end))).toBe(goal.due);
    }
  });

  it("keeps no hot thing longer than its card lets it", () => {
    expect(evening.prep.holds.length).toBeGreaterThan(0);
    for (const hold of evening.prep.holds) {
      const wait = placed.get(hold.plate)!.start - placed.get(hold.task)!.end;
      expect(wait).toBeGreaterThanOrEqual(0);
      expect(wait).toBeLessThanOrEqual(60);
    }
  });

  it("proves the dough before it is baked, and bakes before it is plated", () => {
    const dish = "oat-and-honey-rolls";
    const bakes = tasks(dish).filter((t) => /bake/.test(t.verb));
    const plate = byVerb(dish, /plate/);
    expect(bakes.length * plate.length).toBeGreaterThan(0);
    for (const bake of bakes) {
      // Each version is proved by itself.
      const prove = tasks(dish).filter((t) => /prove/.test(t.verb) && t.version === bake.version);
      expect(prove.length).toBe(1);
      expect(at(prove[0]!).end).toBeLessThanOrEqual(at(bake).start);
      expect(at(bake).end).toBeLessThanOrEqual(plate[0]!.start);
    }
  });

  it("makes the custards and the stock the day before, as their nights in the fridge ask", () => {
    const bake = byVerb("set-custards", /bake/);
    expect(bake.length).toBeGreaterThan(0);
    for (const b of bake) expect(b.end).toBeLessThan(0);
    const roast = byVerb("chicken-stock", /roast/);
    expect(roast.length).toBeGreaterThan(0);
    for (const s of roast) expect(s.end).toBeLessThan(0);
  });

  it("chills before serving, never after", () => {
    const waits = evening.prep.tasks.filter((t) => t.kind === "wait");
    const pairs = waits.flatMap((wait) =>
      evening.prep.tasks
        .filter((t) => t.kind === "plate" && t.dish === wait.dish)
        .map((plate) => [wait, plate] as const),
    );
    expect(pairs.length).toBeGreaterThan(0);
    for (const [wait, plate] of pairs) expect(at(wait).end).toBeLessThanOrEqual(at(plate).start);
  });

  it("is the same again", () => {
    const { sitting, cards } = readDemo();
    const again = runEvening(sitting!, cards);
    expect(JSON.stringify(again.value.plan)).toBe(JSON.stringify(evening.plan));
  });
});

import { beforeAll, describe, expect, it } from "vitest";
import { type Evening, minutes, runEvening, weighPlan } from "#engine/index.ts";
import { readDemo } from "../help/demo.ts";

let evening: Evening;
let without: Evening;

beforeAll(() => {
  const { sitting, cards } = readDemo();
  evening = runEvening(sitting!, cards).value;
  without = runEvening({ ...sitting!, spareTime: minutes(0) }, cards).value;
}, 300_000);

describe("how sure the supper for twenty-four is", () => {
  it("lands each course within five minutes on at least 85 nights of a hundred, with nothing late in the plan", () => {
    const { risk } = weighPlan(evening);
    expect(evening.plan.courses.every((course) => course.lateMinutes === 0)).toBe(true);
    expect(risk.courses.length).toBe(evening.prep.courses.length);
    for (const course of risk.courses) expect(course.withinFive, course.name).toBeGreaterThanOrEqual(0.85);
  });

  it("is never less sure with another quarter of an hour; four standard errors of a share of a thousand nights", () => {
    const { risk } = weighPlan(evening);
    for (const [k, course] of risk.courses.entries())
      expect(risk.spare.courses[k]?.withinFive).toBeGreaterThanOrEqual(course.withinFive - 0.06);
  });

  it("lets hot food wait no shorter with spare time than without", () => {
    const hold = ({ plan }: Evening): number => plan.objective.holdMinutes;
    expect(hold(evening)).toBeGreaterThanOrEqual(hold(without));
  });

  it("asks for no order between versions of which each holds what the other's guest may not have", () => {
    const pairs = new Set((evening.prep.freeFrom ?? []).map(({ before, after }) => `${before} ${after}`));
    expect(pairs.size).toBeGreaterThan(0);
    for (const { before, after } of evening.prep.freeFrom ?? [])
      expect(pairs.has(`${after} ${before}`)).toBe(false);
  });

  it("begins what takes no hands so that its longest still fits", () => {
    const chill = evening.prep.tasks.find(
      (task) => task.dish.includes("baked-plums") && task.verb === "chill",
    );
    const alone = chill?.segments.at(-1);
    expect(alone?.minutes.likely).toBe(alone?.minutes.high);
    expect(alone?.usual).toBeLessThan(alone!.minutes.high);
  });
});

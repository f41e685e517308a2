import { describe, expect, it } from "vitest";
import { checkPlan, runEvening } from "#engine/index.ts";
import { readDemo } from "../help/demo.ts";

const { sitting, cards, problems } = readDemo();
const { value: evening, findings } = runEvening(sitting!, cards);
const says = (code: string, source: string): readonly string[] =>
  findings.filter((f) => f.code === code && f.source === source).map((f) => JSON.stringify(f.facts));

describe("a supper for twenty-four", () => {
  it("is read without a problem in its files", () => {
    expect(problems).toEqual([]);
    expect(evening.dishes).toHaveLength(cards.length);
  });

  it("understands every food on its cards", () => {
    expect(findings.filter((f) => f.code === "food-unknown").map((f) => f.facts)).toEqual([]);
  });

  it("catches butter that the soup uses and does not list", () => {
    expect(says("used-not-listed", "celeriac-and-pear-soup").join()).toMatch(/butter/);
  });

  it("catches a ratio that the custard's amounts break", () => {
    expect(says("ratio-broken", "set-custards")).toHaveLength(1);
  });

  it("has a plan that its checker accepts, with every course landing on time", () => {
    expect(checkPlan(evening.prep, evening.plan)).toEqual([]);
    expect(evening.plan.unplaced).toEqual([]);
    expect(evening.plan.courses.map((c) => c.lateMinutes)).toEqual([0, 0, 0, 0, 0]);
  });

  it("cooks nothing after it is served, and works on both days", () => {
    const firstDay = evening.plan.placed.filter((p) => p.start < 0);
    expect(firstDay.length).toBeGreaterThan(5);
    for (const p of evening.plan.placed) {
      const task = evening.prep.tasks.find((t) => t.id === p.task)!;
      if (task.kind === "wash") continue;
      expect(p.end, p.task).toBeLessThanOrEqual(
        evening.plan.courses.find((c) => c.course === task.course)!.lands,
      );
    }
  });

  it("gives each guest with a need an answer for each dish, and never a plain yes to what stands against it", () => {
    expect(evening.declaration.guestsToSwap).toEqual(
      expect.arrayContaining(["Iris", "Cyril", "Piers", "Odette", "Rufus", "Marian"]),
    );
    const answer = (guest: string, dish: string): string | undefined =>
      evening.declaration.grid.find((v) => v.guest === guest && v.dish === dish)?.answer;
    expect(answer("Odette", "almond-shortbread")).toBe("swap");
    expect(answer("Rufus", "trout-and-shrimp-pots")).toBe("swap");
    expect(answer("Iris", "chicken-and-leeks-in-cider")).toBe("swap");
    expect(["swap", "check"]).toContain(answer("Piers", "oat-and-honey-rolls"));
  });

  it("buys at least what it needs, and prices every line", () => {
    for (const line of evening.purchase.lines.filter((l) => l.packs.length > 0)) {
      expect(line.bought, line.name).toBeGreaterThanOrEqual(line.needed - 1e-6);
    }
    expect(findings.filter((f) => f.code === "price-missing").map((f) => f.facts)).toEqual([]);
    expect(evening.cost.perCover).toBeGreaterThan(300);
    expect(evening.cost.perCover).toBeLessThan(1500);
  });
});

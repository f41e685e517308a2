import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { lunch, worldOf } from "./memory-world.ts";

describe("replan", () => {
  it("plans the rest of a night, and says which words it does not know", async () => {
    const plan = JSON.parse((await run(["plan", "--json", "lunch"], worldOf(lunch))).stdout).plan;
    const task = plan.tasks.find((t: { cook: string | null }) => t.cook !== null);
    const now = task.start.at.replace("T", " ");
    const night = (text: string) => worldOf({ ...lunch, "night.yaml": text });
    const fine = await run(["replan", "--json", "lunch", "night.yaml"], night(`now: "${now}"\n`));
    expect(JSON.parse(fine.stdout).replan.changes).toEqual([]);
    const late = `now: "${now}"\nnot begun: ["${task.id}"]\n`;
    expect((await run(["replan", "lunch", "night.yaml"], night(late))).code).toBe(0);
    for (const [text, said] of [
      [`now: "${now}"\nlate: {nothing of the kind: 5}\n`, "nothing of the kind"],
      ['now: "soon"\n', "now"],
      ["late: {}\n", "now"],
      [`now: "${now}"\nlate: {"${task.id}": -5}\n`, "minutes from 0 to 1440"],
      [`now: "${now}"\nnot begun: ["${task.id}"]\ndone: ["${task.id}"]\n`, 'under "done" too'],
    ] as const) {
      const wrong = await run(["replan", "lunch", "night.yaml"], night(text));
      expect(wrong.stderr).toContain(said);
      expect(wrong.stderr).not.toContain("one of .");
      expect(wrong.code).toBe(1);
    }
    for (const text of [
      `now: "${now}"\naway: {Bea: "14:00"}\n`,
      `now: "${now}"\nlost: [burner]\n`,
      `now: "${now}"\nlost: {burner: 1}\nlater: {soup: 20}\n`,
      `now: "${now}"\nskipped: ["${task.id}"]\n`,
      `now: "13:05"\nmade anew: ["${task.id}"]\n`,
      `now: "13:05"\ndone: {"${task.id}": "13:00"}\n`,
    ]) {
      const told = await run(["replan", "--json", "lunch", "night.yaml"], night(text));
      const { replan } = JSON.parse(told.stdout);
      expect([text, replan.violations, replan.unplaced]).toEqual([text, [], []]);
    }
    for (const [text, said] of [
      [`now: "${now}"\naway: [Beatrix]\n`, "Bea"],
      [`now: "${now}"\nlost: [steamer]\n`, "burner"],
      [`now: "${now}"\nlater: {Soup: 900}\n`, "minutes from -240"],
      [`now: "${now}"\naway: {Bea: "late"}\n`, "a time such as"],
    ] as const) {
      const wrong = await run(["replan", "lunch", "night.yaml"], night(text));
      expect([text, wrong.code]).toEqual([text, 1]);
      expect(wrong.stderr).toContain(said);
    }
    const gone = await run(["replan", "lunch", "night.yaml"], night(`now: "${now}"\nlost: {burner: 2}\n`));
    expect(gone.code).toBe(1);
    expect(gone.stderr).toContain("not enough is left of: burner");
    const over = await run(["replan", "lunch", "night.yaml"], night('now: "2030-01-01 12:00"\n'));
    expect(over.stdout).toContain("No course is left to serve.");
  });
});

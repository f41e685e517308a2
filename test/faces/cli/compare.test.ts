import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { lunch, worldOf } from "./memory-world.ts";

describe("compare", () => {
  it("compares variants, each with its own keys of sitting and kitchen", async () => {
    const variants =
      "- name: eight covers\n  covers: 8\n- name: one burner\n  kitchen:\n    burners: {count: 1, kilowatts: 2}\n";
    const world = worldOf({ ...lunch, "what-if.yaml": variants });
    const { stdout, code, stderr } = await run(["compare", "--json", "lunch", "what-if.yaml"], world);
    expect(stderr).toBe("");
    expect(code).toBe(0);
    const rows = JSON.parse(stdout).variants;
    expect(rows.map((row: { name: string; covers: number }) => [row.name, row.covers])).toEqual([
      ["as it is", 4],
      ["eight covers", 8],
      ["one burner", 4],
    ]);
    expect(rows[1].purchaseTotal).toBeGreaterThanOrEqual(rows[0].purchaseTotal);
    expect(rows[1].handsMinutes).toBeGreaterThan(rows[0].handsMinutes);
    const text = await run(["compare", "lunch", "what-if.yaml"], world);
    expect(text.stdout).toContain("eight covers");
  });

  it("says of a variant what it lacks, at no line that is not there", async () => {
    const world = worldOf({ ...lunch, "v.yaml": "- name: nobody\n  crew: []\n" });
    const { stderr, code } = await run(["compare", "lunch", "v.yaml"], world);
    expect(stderr).toContain("nobody:\n  lunch/sitting.yaml, as changed: Nobody is on shift");
    expect(code).toBe(1);
  });

  it.each([
    ["- covers: 8\n", "name"],
    ["- name: x\n  coverz: 8\n", "coverz"],
    ["name: x\n", "list"],
    ["- name: x\n  kitchen: nowhere.yaml\n", "nowhere.yaml"],
  ])("says what is wrong with the variants %j", async (variants, said) => {
    const world = worldOf({ ...lunch, "v.yaml": variants });
    const { stderr, code } = await run(["compare", "lunch", "v.yaml"], world);
    expect(stderr).toContain(said);
    expect(code).toBe(1);
  });
});

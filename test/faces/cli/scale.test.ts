import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { lunch, worldOf } from "./memory-world.ts";

describe("scale", () => {
  it("scales a card to so many covers, in the kitchen's own pans, and says why", async () => {
    const world = worldOf({ ...lunch, "k.yaml": lunch["lunch/kitchen.yaml"] ?? "" });
    const soup = Object.keys(lunch).find((path) => path.includes("/cards/"))!;
    const read = JSON.parse((await run(["read", "--json", soup], world)).stdout);
    const own = JSON.parse((await run(["scale", "--json", soup], world)).stdout).sheet;
    expect(own.factor).toBe(1);
    const large = JSON.parse(
      (await run(["scale", "--json", "--covers", "120", "--kitchen", "k.yaml", soup], world)).stdout,
    ).sheet;
    expect(large.portions).toBe(120);
    expect(large.lines.length).toBe(read.ingredients.length);
    for (const line of large.lines) {
      const before = own.lines.find((l: { ingredient: number }) => l.ingredient === line.ingredient);
      if (line.amount === null) continue;
      const times = line.adjusted.reduce((p: number, a: { factor: number }) => p * a.factor, large.factor);
      expect(Math.abs(line.amount.exact / (before.amount.exact * times) - 1)).toBeLessThan(1e-3);
      expect(Math.abs(line.amount.value / line.amount.exact - 1)).toBeLessThanOrEqual(0.0146);
    }
    const text = (await run(["scale", "--covers", "120", "--kitchen", "k.yaml", "--why", soup], world))
      .stdout;
    expect(text).toContain("120 portions");
    expect(text).toContain("card: ");
  });

  it.each([
    [["--covers", "none"], "covers"],
    [["--covers", "0"], "covers"],
    [["--kitchen", "nowhere.yaml"], "nowhere.yaml"],
    [["--region", "mars"], "mars"],
  ])("does not scale with %j", async (options, said) => {
    const soup = Object.keys(lunch).find((path) => path.includes("/cards/"))!;
    const { stderr, code } = await run(["scale", ...options, soup], worldOf(lunch));
    expect(stderr).toContain(said);
    expect(code).toBe(2);
  });

  it("scales a card that is silent on portions by the number it takes it to have", async () => {
    const world = worldOf({
      "soup.txt": "Leek soup\n\n2 leeks\n1 l stock\n\nSimmer the leeks in the stock for 20 minutes.\n",
    });
    const { stdout } = await run(["scale", "soup.txt"], world);
    expect(stdout).toContain("4 portions");
    expect(stdout).not.toContain("there is none");
  });
});

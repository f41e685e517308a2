import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { lunch, worldOf } from "./memory-world.ts";

describe("write-up", () => {
  const card = "lunch/cards/nettle-soup.txt";
  it("prints the card as text", async () => {
    const { stdout, code } = await run(["write-up", card], worldOf(lunch));
    expect(code).toBe(0);
    for (const words of [
      "Nettle soup\n",
      "2 onions, sliced",
      "1. Melt the butter",
      "Vegan: replace",
      "no promise of absence",
    ])
      expect(stdout).toContain(words);
  });
  it("prints it as HTML with its data inside", async () => {
    const { stdout } = await run(["write-up", "--format", "html", card], worldOf(lunch));
    expect(stdout).toMatch(/^<!doctype html>/);
    const data = /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(stdout)?.[1] ?? "";
    expect(JSON.parse(data)).toMatchObject({ "@type": "Recipe", name: "Nettle soup" });
  });
  it("prints it as schema.org JSON-LD", async () => {
    const { stdout } = await run(["write-up", "--format", "json-ld", card], worldOf(lunch));
    const data = JSON.parse(stdout);
    expect(data).toMatchObject({
      "@context": "https://schema.org",
      "@type": "Recipe",
      recipeYield: "Serves 4",
    });
    expect(data.recipeIngredient).toContain("50 g butter");
  });
  it.each([
    [["write-up", "--format", "pdf", card], "pdf"],
    [["write-up", "none.txt"], "no such file"],
  ])("answers %j with what is wrong", async (argv, words) => {
    const { code, stderr } = await run(argv, worldOf(lunch));
    expect([code, stderr.includes(words)]).toEqual([2, true]);
  });
});

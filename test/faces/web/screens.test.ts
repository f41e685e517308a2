import { describe, expect, it } from "vitest";
import { axe, openPage, soup, withTheApp } from "./app.ts";

withTheApp();

describe("every screen", () => {
  const screens = [
    ["cards", "Cards"],
    [soup, "Nettle soup"],
    ["sitting", "Lunch in the potting shed"],
    ["plan", "Plan"],
    ["board", "Board"],
    ["buying", "Buying"],
    ["cost", "Cost"],
    ["guests", "Guests and allergens"],
    ["safety", "Safety"],
    ["sheet/cards/nettle-soup.txt", "Sheets"],
    ["write-up/cards/nettle-soup.txt", "Write-ups"],
  ] as const;

  it.each([1280, 390])("can be used by all, %i px wide", async (width) => {
    const { page, close } = await openPage("cards", width);
    // The rules are put in by the debugger, which the page's own policy does not bind.
    await page.evaluate(axe());
    const wrong: string[] = [];
    for (const [hash, title] of screens) {
      await page.evaluate((to) => {
        location.hash = `#/lunch/${to}`;
      }, hash);
      await page.getByRole("heading", { level: 1, name: title }).first().waitFor();
      await page.waitForFunction(
        () => !/Working|Reading|Fetching/.test(document.querySelector("main")?.textContent ?? ""),
      );
      const found = await page.evaluate(async () => {
        const checker = (
          globalThis as unknown as {
            axe: {
              run: (options: object) => Promise<{
                violations: { id: string; impact: string; nodes: { html: string }[] }[];
              }>;
            };
          }
        ).axe;
        const { violations } = await checker.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa"] });
        return violations
          .filter((v) => v.impact === "serious" || v.impact === "critical")
          .map((v) => `${v.id}: ${v.nodes[0]?.html}`);
      });
      wrong.push(...found.map((v) => `${hash}: ${v}`));
      const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (wider > 0) wrong.push(`${hash} is ${wider} px too wide`);
    }
    expect(wrong).toEqual([]);
    await close();
  });
});

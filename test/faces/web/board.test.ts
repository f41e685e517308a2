import { describe, expect, it } from "vitest";
import { openPage, withTheApp } from "./app.ts";

withTheApp();

describe("the board", () => {
  it("takes marks, shows what a new plan of the rest changes, and goes by it once it is taken", async () => {
    const { page, close } = await openPage("board", 390);
    await page.locator(".working:empty").waitFor({ state: "attached" });
    await page.getByLabel("It is now").fill("12:45");
    const running = page.getByRole("region", { name: "Now", exact: true }).locator(".board-task");
    await running.first().waitFor();
    const task = running.filter({ hasText: "Bea" }).first();
    const text = (await task.locator(".board-what").textContent()) ?? "";
    // By keyboard alone: twenty minutes late.
    const late = task.getByRole("button", { name: "+5 min late" });
    await late.focus();
    for (let i = 0; i < 4; i += 1) await page.keyboard.press("Enter");
    await page.getByRole("status").filter({ hasText: "20 min late" }).waitFor();
    expect(await task.locator(".board-what").textContent()).toContain("20 min late");
    // Nothing has moved yet.
    const soup = page.locator(".landing tbody tr").first();
    expect(await soup.textContent()).toContain("on time");
    await page.getByRole("button", { name: "Plan the rest anew" }).click();
    const fresh = page.getByRole("region", { name: "The new plan" });
    await fresh.waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("new-plan-head");
    expect(await fresh.textContent()).toMatch(/Soup: 13:\d\d \d+ min late/);
    expect(await soup.textContent()).toContain("on time");
    await page.getByRole("button", { name: "Take this plan" }).click();
    await page.getByRole("status").filter({ hasText: "on the board" }).waitFor();
    expect(await soup.textContent()).toContain("late");
    expect(await fresh.count()).toBe(0);
    // It is kept over a reload, and a night that then goes as planned changes nothing.
    await page.reload();
    await page.locator(".working:empty").waitFor({ state: "attached" });
    await page.getByLabel("It is now").fill("12:45");
    expect(await soup.textContent()).toContain("late");
    expect(await page.locator(".board-what", { hasText: text }).first().textContent()).not.toContain(
      "20 min late",
    );
    await page.getByRole("button", { name: "Plan the rest anew" }).click();
    await page.getByText("Nothing changes.").waitFor();
    await page.getByRole("button", { name: "Keep the plan as it was" }).click();
    await page.getByRole("button", { name: "Clear the board" }).click();
    expect(await soup.textContent()).toContain("on time");
    await close();
  });

  it("has nothing to press that is smaller than a fingertip", async () => {
    const { page, close } = await openPage("board", 390);
    await page.locator(".board-task").first().waitFor();
    const small = await page
      .locator(".board button")
      .evaluateAll((all) =>
        all.filter((b) => b.getBoundingClientRect().height < 48).map((b) => b.textContent),
      );
    expect(small).toEqual([]);
    await close();
  });
});

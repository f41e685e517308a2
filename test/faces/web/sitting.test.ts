import { describe, expect, it } from "vitest";
import { smallSitting } from "../small-sitting.ts";
import { onServer, openPage, saved, withTheApp, words } from "./app.ts";

withTheApp();

describe("the sitting", () => {
  it("writes what its controls say into the words, and the rest follows", async () => {
    const { page, close } = await openPage("sitting");
    await page.getByLabel("Covers").fill("6");
    await page.keyboard.press("Tab");
    await words(page).getByText("covers: 6").waitFor();
    await saved(page);
    expect(await onServer("sitting.yaml")).toBe(
      smallSitting["sitting.yaml"]!.replace("covers: 4", "covers: 6"),
    );
    await close();
  });

  it("underlines what it cannot read at its place", async () => {
    const { page, close } = await openPage("sitting/kitchen.yaml");
    await words(page).getByText("fridge litres: 100").click();
    await page.keyboard.press("End");
    await page.keyboard.insertText("x");
    await page.locator(".cm-lintRange.cm-stop").first().waitFor();
    await page.keyboard.press("Backspace");
    await page.locator(".cm-lintRange.cm-stop").first().waitFor({ state: "detached" });
    await saved(page);
    await close();
  });
});

describe("the plan", () => {
  it("draws tasks and landings, and says why a task stands where it stands", async () => {
    const { page, close } = await openPage("plan");
    await page.locator(".bar").first().waitFor();
    await page.locator(".working:empty").waitFor({ state: "attached" });
    expect(await page.locator(".landing tbody tr").count()).toBe(2);
    expect(await page.locator(".landings line").count()).toBe(2);
    const bars = page.locator(".bar");
    expect(await bars.count()).toBeGreaterThan(4);
    await page.locator('.bar[tabindex="0"]').focus();
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowRight");
    await page.locator(".task-details h4", { hasText: "Why then" }).waitFor();
    expect(await page.locator(".task-details ul").last().locator("li").count()).toBeGreaterThan(0);
    expect(await page.locator('.bar[aria-pressed="true"]').count()).toBe(1);
    expect(await page.locator(".cook-list tbody tr").count()).toBeGreaterThan(2);
    await close();
  });
});

describe("what if", () => {
  it("reckons changes of the sitting in one table, without a word of it changed", async () => {
    const { page, close } = await openPage("plan");
    const part = page.getByRole("region", { name: "What if" });
    await part.getByLabel("Covers").fill("9");
    await part.getByLabel("Another burner").check();
    const before = await onServer("sitting.yaml");
    await part.getByRole("button", { name: "Work it out" }).click();
    await part.getByRole("rowheader", { name: "All of these" }).waitFor();
    expect(await part.getByRole("rowheader").allTextContents()).toEqual([
      "As it is",
      "9 covers",
      "1 more burner",
      "All of these",
    ]);
    const covers = part.locator("tbody tr td:nth-child(2)");
    const [asItIs = "", ...others] = await covers.allTextContents();
    expect(others).toEqual(["9", asItIs, "9"]);
    expect(await onServer("sitting.yaml")).toBe(before);
    await close();
  });

  it("can be stopped", async () => {
    const { page, close } = await openPage("plan");
    const part = page.getByRole("region", { name: "What if" });
    await part.getByLabel("Covers").fill("40");
    await part.getByRole("button", { name: "Work it out" }).click();
    await part.getByRole("button", { name: "Stop" }).click();
    await part.getByRole("button", { name: "Work it out" }).and(page.locator(":enabled")).waitFor();
    expect(await part.getByRole("rowheader").count()).toBeLessThan(2);
    await close();
  });
});

describe("a card's sheet", () => {
  it("gives its amounts for so many covers, with the reasons of each", async () => {
    const { page, close } = await openPage("sheet/cards/nettle-soup.txt");
    const covers = page.getByLabel("Covers");
    const amount = page.locator(".weigh > li", { hasText: "spinach" }).locator(".num");
    await covers.fill("12");
    await expect.poll(() => amount.textContent()).toBe("600 g");
    await page.getByText("12 portions, 3 times the card (4)").waitFor();
    await covers.fill("0");
    await page.getByText("Covers is a whole number").waitFor();
    await covers.fill("50");
    const line = page.locator(".weigh details").first();
    await line.locator("summary").focus();
    await page.keyboard.press("Enter");
    expect(await line.locator("ul li").first().isVisible()).toBe(true);
    await close();
  });
});

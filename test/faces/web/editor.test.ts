import { describe, expect, it } from "vitest";
import {
  address,
  axe,
  onServer,
  openPage,
  saved,
  soup,
  textOf,
  typeAtEnd,
  withTheApp,
  words,
} from "./app.ts";

withTheApp();

describe("the card editor", () => {
  it("shows what was understood, and follows the words as they are typed", async () => {
    const { page, close } = await openPage(soup);
    await page.locator(".ingredients").getByRole("button", { name: "onion" }).waitFor();
    await page.locator(".steps").getByText("Sweat").waitFor();
    await words(page).getByText("50 g butter").click();
    await page.keyboard.press("End");
    await page.keyboard.insertText("\n7 g blarnwort");
    await page.locator(".remark", { hasText: "blarnwort" }).first().waitFor();
    await page.locator(".cm-lintRange", { hasText: "blarnwort" }).first().waitFor();
    await close();
  });

  it("marks the words that an item was read from, and the item that the words belong to", async () => {
    const { page, close } = await openPage(soup);
    await page.locator(".ingredients").getByRole("button", { name: "spinach" }).focus();
    expect(await page.locator(".cm-linked").first().textContent()).toContain("spinach");
    await words(page).getByText("50 g butter").click();
    await page.locator('.ingredients tr[data-here="true"]', { hasText: "butter" }).waitFor();
    await close();
  });

  it("applies a fix to the words", async () => {
    const { page, close } = await openPage("cards");
    await page.getByLabel("New card").fill("Butter rice");
    await page.getByRole("button", { name: "Begin" }).click();
    await typeAtEnd(
      page,
      "\nServes 2\n\n200 g long-grain rice\n30 g buttter\n\nSimmer the rice for 12 minutes. Stir in the buttter.\n",
    );
    const fix = page.locator(".remark .fix").first();
    await fix.waitFor();
    const before = await textOf(page);
    await fix.click();
    await page.waitForFunction(
      (old) => document.querySelector(".words-view .cm-content")?.textContent !== old,
      before,
    );
    await saved(page);
    expect(await onServer("cards/butter-rice.txt")).toContain("Serves 2");
    await close();
  });

  it("saves by itself, and what was saved is there again", async () => {
    const { page, close } = await openPage("cards/cards/lemon-rice.txt");
    await typeAtEnd(page, "\nKeeping: 1 day in the fridge.\n");
    await saved(page);
    await page.reload();
    await words(page).getByText("1 day in the fridge").waitFor();
    expect(await onServer("cards/lemon-rice.txt")).toContain("1 day in the fridge");
    await close();
  });

  it("keeps words in the browser while the server is not reached, over a reload too", async () => {
    const { page, close } = await openPage(soup);
    await page.route("**/api/documents/**", (route) =>
      route.request().method() === "PUT" ? route.abort() : route.continue(),
    );
    await typeAtEnd(page, "\nWritten with no line to the server.\n");
    await page.locator('.save-mark[data-state="kept-here"]').waitFor();
    await page.reload();
    await words(page).getByText("Written with no line").waitFor();
    await page.unroute("**/api/documents/**");
    await saved(page);
    expect(await onServer("cards/nettle-soup.txt")).toContain("Written with no line");
    await close();
  });

  it("lets two tabs see each other's words", async () => {
    const first = await openPage(soup);
    const second = await openPage(soup);
    await words(second.page).getByText("Nettle soup").first().waitFor();
    await typeAtEnd(first.page, "\nSaid in the first tab.\n");
    await words(second.page).getByText("Said in the first tab").waitFor();
    await first.close();
    await second.close();
  });

  it("shows both versions when two tabs wrote at once, and loses neither", async () => {
    const first = await openPage(soup);
    const second = await openPage(soup);
    // The second tab hears and says nothing for a while.
    await second.page.route("**/api/documents/**", (route) => route.abort());
    await typeAtEnd(second.page, "\nMine.\n");
    await second.page.locator('.save-mark[data-state="kept-here"]').waitFor();
    await typeAtEnd(first.page, "\nTheirs.\n");
    await saved(first.page);
    await second.page.unroute("**/api/documents/**");
    await second.page.getByText("These words were changed elsewhere too").waitFor();
    expect(await second.page.getByLabel("The other version").inputValue()).toContain("Theirs.");
    expect(await textOf(second.page)).toContain("Mine.");
    await second.page.getByRole("button", { name: "Keep both" }).click();
    await second.page.waitForURL(/nettle-soup-mine/);
    await saved(second.page);
    expect(await onServer("cards/nettle-soup-mine.txt")).toContain("Mine.");
    expect(await onServer("cards/nettle-soup.txt")).toContain("Theirs.");
    await first.close();
    await second.close();
  });
});

describe("a book made in the browser", () => {
  it("begins with a name and a dish, and goes on to a sitting, a price list and a plan", async () => {
    const { page, close } = await openPage("cards");
    await page.getByText("Another book").click();
    await page.getByLabel("New book").fill("lunch");
    await page.getByLabel("Its first dish").fill("Boiled eggs");
    await page.getByText("There is a book by that name").waitFor();
    await page.getByLabel("New book").fill("Orchard tea");
    await page.getByRole("button", { name: "Begin the book" }).click();
    await page.waitForURL(/orchard-tea\/cards/);
    await typeAtEnd(page, "Serves 4\n\n8 eggs\n\nBoil the eggs for 8 minutes.\n");
    await saved(page);
    await page.getByRole("link", { name: "Plan" }).click();
    await page.getByText("this book has cards and no sitting").waitFor();
    await page.getByRole("link", { name: "To the sitting" }).click();
    await page.getByRole("button", { name: "Begin a sitting" }).click();
    await page.getByRole("button", { name: "Begin a price list" }).click();
    await words(page).getByText("supplier,item,food,size,unit,price").waitFor();
    await page.keyboard.press("Tab");
    await typeAtEnd(page, "Farm,Eggs dozen,egg,12,piece,3.60\n");
    await saved(page);
    await page.getByRole("link", { name: "Cost" }).click();
    await page.locator(".cost-table tbody tr", { hasText: "Boiled eggs" }).waitFor();
    await page.getByRole("link", { name: "Plan" }).click();
    await page.locator(".cook-list tbody tr").first().waitFor();
    await close();
  });
});

describe("a food of the cook's own", () => {
  it("is added beside the remark that nobody knows it, and what was stated is declared", async () => {
    const { page, close } = await openPage(soup);
    await words(page).getByText("50 g butter").click();
    await page.keyboard.press("End");
    await page.keyboard.insertText("\n30 ml glimmer syrup");
    const own = page.getByRole("button", { name: "It is a food of my own" });
    await own.click();
    const form = page.getByRole("form", { name: "A food of my own: glimmer syrup" });
    const add = form.getByRole("button", { name: "Add to my foods" });
    expect(await form.getByLabel("Name", { exact: true }).inputValue()).toBe("glimmer syrup");
    // Nothing is taken for granted: without a word on what it is, it is not added.
    await add.click();
    await form.getByText("Write a food that it counts like").waitFor();
    await form.getByLabel("Counts like").fill("moonbeam");
    await add.click();
    await form.getByRole("alert").getByText("moonbeam").waitFor();
    await form.getByLabel("Counts like").fill("");
    await form.getByRole("group", { name: "Is or holds" }).getByLabel("None of these").check();
    await form.getByRole("group", { name: "Allergens" }).getByLabel("sulphites").check();
    await form.getByLabel("Grams in a millilitre").fill("1.3");
    await form.getByLabel("Who says so").fill("Ines, from the label");
    await page.evaluate(axe());
    const faults = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: { run: (at: string) => Promise<{ violations: { id: string }[] }> };
      };
      return (await axe.run(".own-food")).violations.map((v) => v.id);
    });
    expect(faults).toEqual([]);
    await add.click();
    await form.waitFor({ state: "detached" });
    await own.waitFor({ state: "detached" });
    await page
      .locator(".remark-note", { hasText: "Ines, from the label states" })
      .first()
      .waitFor({ state: "attached" });
    await page.locator(".ingredients tr", { hasText: "glimmer syrup" }).getByText("39 g").waitFor();
    await expect.poll(() => onServer("foods.yaml").catch(() => "")).toContain("sulphites");
    await expect.poll(() => onServer("sitting.yaml")).toContain("foods: foods.yaml");
    await page.goto(`${address()}/#/lunch/guests`);
    await page.getByText("Ines, from the label states").first().waitFor();
    await close();
  });
});

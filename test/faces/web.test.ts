import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type Serving, serve } from "#server/serve.ts";
import { answerAsk } from "#web/state/answer-ask.ts";
import type { Told } from "#web/state/engine-talk.ts";
import { smallSitting } from "./small-sitting.ts";

const root = join(import.meta.dirname, "../..");
const browserPath = [process.env["CHROME_PATH"], "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path !== undefined && path !== "" && existsSync(path),
);

let folder = "";
let serving: Serving;
let browser: Browser;

beforeAll(async () => {
  const bundler: string = join(root, "scripts/bundle.mjs");
  const { bundleWeb } = (await import(bundler)) as { bundleWeb: () => Promise<void> };
  await bundleWeb();
  folder = mkdtempSync(join(tmpdir(), "tamis-web-"));
  for (const [name, text] of Object.entries(smallSitting)) {
    const path = join(folder, "lunch", name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
  serving = await serve({
    dataFolder: join(folder, "data"),
    webFolder: join(root, "dist/web"),
    folder: join(folder, "lunch"),
    port: 0,
  });
  browser = await chromium.launch({
    executablePath: browserPath ?? "/usr/bin/chromium",
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
});

afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A page on a screen of the app, in a browser of its own. What goes wrong in it fails the test. */
const openPage = async (hash: string, width = 1280): Promise<{ page: Page; close: () => Promise<void> }> => {
  const context = await browser.newContext({
    viewport: { width, height: 900 },
    reducedMotion: "reduce",
    locale: "en-GB",
  });
  const page = await context.newPage();
  const faults: string[] = [];
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error" && !/Failed to load resource|ERR_/.test(message.text()))
      faults.push(message.text());
  });
  page.setDefaultTimeout(15_000);
  await page.goto(`${serving.url}/#/lunch/${hash}`);
  await page.locator("h1").first().waitFor();
  return {
    page,
    close: async () => {
      await context.close();
      expect(faults).toEqual([]);
    },
  };
};

const soup = "cards/cards/nettle-soup.txt";
const words = (page: Page) => page.locator(".words-view .cm-content");
const saved = (page: Page) => page.locator('.save-mark[data-state="saved"]').waitFor();
const textOf = (page: Page): Promise<string> => words(page).evaluate((e) => e.textContent);
const onServer = async (path: string): Promise<string> =>
  ((await (await fetch(`${serving.url}/api/documents/lunch/${path}`)).json()) as { text: string }).text;
/** Types at the end of the card. */
const typeAtEnd = async (page: Page, text: string): Promise<void> => {
  await words(page).click();
  await page.keyboard.press("Control+End");
  await page.keyboard.insertText(text);
};

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

describe("every screen", () => {
  const screens = [
    ["cards", "Cards"],
    [soup, "Nettle soup"],
    ["sitting", "Lunch in the potting shed"],
    ["plan", "Plan"],
    ["buying", "Buying"],
    ["cost", "Cost"],
    ["guests", "Guests and allergens"],
    ["safety", "Safety"],
    ["sheet/cards/nettle-soup.txt", "Sheets"],
    ["write-up/cards/nettle-soup.txt", "Write-ups"],
  ] as const;
  const axe = readFileSync(join(root, "node_modules/axe-core/axe.min.js"), "utf8");

  it.each([1280, 390])("can be used by all, %i px wide", async (width) => {
    const { page, close } = await openPage("cards", width);
    // The rules are put in by the debugger, which the page's own policy does not bind.
    await page.evaluate(axe);
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

describe("the engine in the browser", () => {
  it("gives the same bytes as in Node", async () => {
    const ask = {
      id: 1,
      ask: "evening" as const,
      sitting: "sitting.yaml",
      files: Object.entries(smallSitting).map(([path, text]) => ({ path, text })),
      quick: false,
    };
    const { page, close } = await openPage("cards");
    const inBrowser = await page.evaluate(
      (question) =>
        new Promise<string>((resolve, reject) => {
          const worker = new Worker("engine-worker.js", { type: "module" });
          worker.onerror = (event) => reject(new Error(event.message));
          worker.onmessage = ({ data }) => resolve(JSON.stringify(data));
          worker.postMessage(question);
        }),
      ask,
    );
    const told: Told = answerAsk(ask);
    expect(told.told).toBe("evening");
    expect(told.told === "evening" && told.answer.evening !== null).toBe(true);
    expect(inBrowser).toBe(JSON.stringify(told));
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
    await page.evaluate(readFileSync(join(root, "node_modules/axe-core/axe.min.js"), "utf8"));
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
    await page.goto(`${serving.url}/#/lunch/guests`);
    await page.getByText("Ines, from the label states").first().waitFor();
    await close();
  });
});

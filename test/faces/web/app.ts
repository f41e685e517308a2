import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect } from "vitest";
import { type Serving, serve } from "#server/serve.ts";
import { smallSitting } from "../small-sitting.ts";

const root = join(import.meta.dirname, "../../..");
const browserPath = [process.env["CHROME_PATH"], "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path !== undefined && path !== "" && existsSync(path),
);

let folder = "";
/** The server that the file of tests talks to. */
let serving: Serving;
let browser: Browser;

/** Bundles the app, serves a small sitting, and opens a browser, for the file that calls it. */
export const withTheApp = (): void => {
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
};

/** Where the server is. */
export const address = (): string => serving.url;

/** A page on a screen of the app, in a browser of its own. What goes wrong in it fails the test. */
export const openPage = async (
  hash: string,
  width = 1280,
): Promise<{ page: Page; close: () => Promise<void> }> => {
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

/** The script of axe-core, which finds what hinders a screen reader. */
export const axe = (): string => readFileSync(join(root, "node_modules/axe-core/axe.min.js"), "utf8");

export const soup = "cards/cards/nettle-soup.txt";
export const words = (page: Page) => page.locator(".words-view .cm-content");
export const saved = (page: Page) => page.locator('.save-mark[data-state="saved"]').waitFor();
export const textOf = (page: Page): Promise<string> => words(page).evaluate((e) => e.textContent);
export const onServer = async (path: string): Promise<string> =>
  ((await (await fetch(`${serving.url}/api/documents/lunch/${path}`)).json()) as { text: string }).text;
/** Types at the end of the card. */
export const typeAtEnd = async (page: Page, text: string): Promise<void> => {
  await words(page).click();
  await page.keyboard.press("Control+End");
  await page.keyboard.insertText(text);
};

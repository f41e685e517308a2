// Takes the README's pictures of the real app with the demo loaded: npm run pictures.
import { existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { serve } from "#server/serve.ts";

const root = join(import.meta.dirname, "..");
const out = join(root, "docs/pictures");
const book = readdirSync(join(root, "demo"))[0] ?? "";
const dataFolder = mkdtempSync(join(tmpdir(), "tamis-pictures-"));
const serving = await serve({
  dataFolder,
  webFolder: join(root, "dist/web"),
  folder: join(root, "demo", book),
  port: 0,
});
const executablePath =
  [process.env["CHROME_PATH"], "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
    (p) => p !== undefined && existsSync(p),
  ) ?? "/usr/bin/chromium";
const browser = await chromium.launch({
  executablePath,
  args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--lang=en-GB"],
});

/** A screen of the app once its figures stand. */
const open = async (width: number, height: number, screen: string): Promise<Page> => {
  const context = await browser.newContext({ viewport: { width, height }, locale: "en-GB" });
  const page = await context.newPage();
  await page.goto(`${serving.url}/#/${book}/${screen}`);
  await page.waitForTimeout(800);
  await page.waitForFunction(() => !/Working|Fetching|Reading…/.test(document.body.textContent ?? ""), null, {
    timeout: 60_000,
  });
  await page.waitForTimeout(500);
  return page;
};

/** Brings what the selector finds to the top of the page, below the bar. */
const toTop = async (page: Page, selector: string, nth = 0): Promise<void> => {
  await page
    .locator(selector)
    .nth(nth)
    .evaluate((e) => scrollTo(0, e.getBoundingClientRect().top + scrollY - 70));
  await page.waitForTimeout(300);
};

const card = "cards/cards/chicken-and-leeks-in-cider.txt";

const editor = await open(1360, 850, card);
await editor.locator(".ingredients").getByRole("button", { name: "leeks" }).hover();
await editor.screenshot({ path: join(out, "editor.png") });

const plan = await open(1360, 1080, "plan");
// A bar that is wide enough to bear its name is not covered by another.
await plan
  .locator(".bar", { has: plan.locator(".bar-text") })
  .nth(2)
  .dispatchEvent("click");
await plan.mouse.move(5, 5);
await plan.screenshot({ path: join(out, "plan.png") });

const guests = await open(1360, 850, "guests");
await guests.screenshot({ path: join(out, "declaration.png") });

const buying = await open(1360, 850, "buying");
await buying.screenshot({ path: join(out, "buying.png") });

const phones = [await open(390, 800, card), await open(390, 800, "plan"), await open(390, 800, "guests")];
if (phones[1]) await toTop(phones[1], ".cook-list");
if (phones[2]) await toTop(phones[2], ".guest-list", 2);
const shots = await Promise.all(phones.map((p) => p.screenshot()));
const sheet = await (await browser.newContext({ viewport: { width: 1290, height: 850 } })).newPage();
await sheet.setContent(
  `<body style="margin:25px;background:#e6dcc8;display:flex;gap:35px">${shots
    .map(
      (s) =>
        `<img style="border:1px solid #8a7a60;border-radius:14px" src="data:image/png;base64,${s.toString("base64")}">`,
    )
    .join("")}</body>`,
);
await sheet.screenshot({ path: join(out, "phone.png") });

await browser.close();
await serving.close();
rmSync(dataFolder, { recursive: true, force: true });

// How long the editor takes from a key to what is said of it, in a browser: npm run bench -- typing
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { serve } from "#server/serve.ts";
import { unseenCard } from "./unseen-card.ts";

const sizes = [60, 400] as const;
const typed = " and a little of the cream, stirring for 5 minutes until it coats a spoon";

type Times = {
  readonly keys: readonly number[];
  readonly asked: readonly number[];
  readonly answers: readonly number[];
  readonly drawn: readonly number[];
};

// Notes when a key goes down, when the worker is asked and answers, and when the answer has been drawn.
const notes = `
  const times = (window.typingTimes = { keys: [], asked: [], answers: [], drawn: [] });
  document.addEventListener("keydown", () => times.keys.push(performance.now()), true);
  const Plain = window.Worker;
  window.Worker = class extends Plain {
    constructor(...how) {
      super(...how);
      this.addEventListener("message", ({ data }) => {
        if (data.told !== "card") return;
        times.answers.push(performance.now());
        requestAnimationFrame(() => setTimeout(() => times.drawn.push(performance.now())));
      });
    }
    postMessage(...what) {
      times.asked.push(performance.now());
      super.postMessage(...what);
    }
  };`;

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

const folder = mkdtempSync(join(tmpdir(), "tamis-typing-"));
const demo = "demo/lantern-supper";
mkdirSync(join(folder, "long/cards"), { recursive: true });
for (const name of ["sitting.yaml", "kitchen.yaml"])
  writeFileSync(join(folder, "long", name), readFileSync(join(demo, name)));
for (const size of sizes)
  writeFileSync(join(folder, `long/cards/lines-${size}.txt`), `${unseenCard(size, 4_711 + size)}\n`);
const serving = await serve({
  dataFolder: join(folder, "data"),
  webFolder: "dist/web",
  folder: join(folder, "long"),
  port: 0,
});
const path = [process.env["CHROME_PATH"], "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (p) => p !== undefined && p !== "" && existsSync(p),
);
const browser = await chromium.launch({
  executablePath: path ?? "/usr/bin/chromium",
  args: ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run"],
});
const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
await page.addInitScript(notes);
for (const size of sizes) {
  await page.goto("about:blank");
  await page.goto(`${serving.url}/#/long/cards/cards/lines-${size}.txt`);
  await page.locator(".ingredients tr").first().waitFor();
  await page.locator(".words-view .cm-line").nth(12).click();
  await page.keyboard.press("End");
  const read = (): Promise<Times> => page.evaluate("window.typingTimes");
  const [answered, drawn, worked]: [number[], number[], number[]] = [[], [], []];
  for (const key of typed) {
    const before = (await read()).drawn.length;
    await page.keyboard.press(key === " " ? "Space" : key);
    let now = await read();
    while (now.drawn.length <= before) {
      await page.waitForTimeout(20);
      now = await read();
    }
    const [pressed = 0, asked = 0, answer = 0, shown = 0] = [
      now.keys.at(-1),
      now.asked.at(-1),
      now.answers.at(-1),
      now.drawn.at(-1),
    ];
    answered.push(answer - pressed);
    drawn.push(shown - pressed);
    worked.push(answer - asked);
  }
  console.log(
    `${String(size).padStart(4)} lines  key to answer ${middle(answered).toFixed(0)} ms, worst ${Math.max(...answered).toFixed(0)}; ` +
      `drawn ${middle(drawn).toFixed(0)} ms, worst ${Math.max(...drawn).toFixed(0)}; of that the worker ${middle(worked).toFixed(1)} ms`,
  );
}
await browser.close();
await serving.close();
rmSync(folder, { recursive: true, force: true });

import { describe, expect, it } from "vitest";
import { answerAsk } from "#web/state/answer-ask.ts";
import type { Told } from "#web/state/engine-talk.ts";
import { smallSitting } from "../small-sitting.ts";
import { openPage, withTheApp } from "./app.ts";

withTheApp();

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

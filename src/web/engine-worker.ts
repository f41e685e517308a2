import { answerAsk } from "./state/answer-ask.ts";
import type { Ask, Told } from "./state/engine-talk.ts";

/** Runs the engine away from the page, so that typing never waits for it. */
const told = (message: Told): void => self.postMessage(message);

self.onmessage = ({ data }: MessageEvent<Ask>) => {
  try {
    told(answerAsk(data));
  } catch (error) {
    told({ id: data.id, told: "failed", why: error instanceof Error ? error.message : String(error) });
  }
};

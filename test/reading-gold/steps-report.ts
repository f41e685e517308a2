import { goldDishes } from "./steps-gold.ts";
import { kinds, type Score, scoreSteps } from "./steps-score.ts";

/** "time 97.1 % (66 of 68)", one line a kind. */
export const reportOf = (score: Score): string =>
  kinds
    .map((k) => {
      const share = (100 * score.right[k]) / Math.max(1, score.of[k]);
      return `  ${k.padEnd(12)} ${share.toFixed(1)} % (${score.right[k]} of ${score.of[k]})`;
    })
    .join("\n");

const folder = new URL(".", import.meta.url).pathname;

/** The score of both parts of the steps; no misses are named, so that the held-out part stays unseen. */
export const stepsReport = (): string =>
  [
    [
      "working",
      ["working/steps.txt", "working/steps-more.txt", "working/steps-third.txt", "working/steps-fourth.txt"],
    ] as const,
    ["held-out", ["held-out/steps.txt"]] as const,
  ]
    .map(([part, files]) => {
      const dishes = files.flatMap((file) => goldDishes(folder + file));
      return `steps, ${part} part\n${reportOf(scoreSteps(dishes))}`;
    })
    .join("\n");

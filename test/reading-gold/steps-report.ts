import { kinds, type Score } from "./steps-score.ts";

/** "time 97.1 % (66 of 68)", one line a kind. */
export const reportOf = (score: Score): string =>
  kinds
    .map((k) => {
      const share = (100 * score.right[k]) / Math.max(1, score.of[k]);
      return `  ${k.padEnd(12)} ${share.toFixed(1)} % (${score.right[k]} of ${score.of[k]})`;
    })
    .join("\n");

import { kinds, type Score } from "./lines-score.ts";

/** "amounts  98.1 % (103 of 105)", one line a kind that the gold states. */
export const linesReportOf = (score: Score): string =>
  kinds
    .filter((k) => score.of[k] > 0)
    .map((k) => {
      const share = (100 * score.right[k]) / score.of[k];
      return `  ${k.padEnd(12)} ${share.toFixed(1)} % (${score.right[k]} of ${score.of[k]})`;
    })
    .join("\n");

/** The lines that were misread and how, worst first. */
export const linesMisses = (score: Score): string =>
  score.misses.map((m) => `  ${m.text}\n${m.wrong.map((w) => `      ${w}`).join("\n")}`).join("\n");

// Scores the reader against cards and lines whose right reading is known: npm run reading:score -- [--quiet] FILE…
// A .yaml or .json file holds lines, a .txt file dishes with their steps; see "A file of right readings" in docs/formats.md.
import { goldLines } from "../test/reading-gold/lines-gold.ts";
import { linesMisses, linesReportOf } from "../test/reading-gold/lines-report.ts";
import { scoreLines } from "../test/reading-gold/lines-score.ts";
import { goldDishes } from "../test/reading-gold/steps-gold.ts";
import { reportOf } from "../test/reading-gold/steps-report.ts";
import { scoreSteps } from "../test/reading-gold/steps-score.ts";

const folder = new URL("../test/reading-gold/", import.meta.url).pathname;
const asked = process.argv.slice(2).filter((a) => !a.startsWith("--"));
const quiet = process.argv.includes("--quiet");
const files =
  asked.length > 0
    ? asked
    : [
        "working/lines.yaml",
        "working/lines-third.yaml",
        "working/steps.txt",
        "working/steps-more.txt",
        "working/steps-third.txt",
        "working/steps-fourth.txt",
        "working/steps-fifth.txt",
      ].map((file) => folder + file);

for (const file of files) {
  console.log(file);
  if (/\.(?:ya?ml|json)$/.test(file)) {
    const score = scoreLines(goldLines(file));
    if (!quiet) console.log(linesMisses(score));
    console.log(linesReportOf(score));
  } else {
    const score = scoreSteps(goldDishes(file));
    if (!quiet) for (const miss of score.misses) console.log(`  ${JSON.stringify(miss)}`);
    console.log(reportOf(score));
  }
}

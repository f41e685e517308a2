// Everything that must hold: types, lint, tables, then every test. Ends with a plain line of counts.
import { readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ensureChromium } from "./ensure-chromium.mjs";
import { ensureInstalled, run } from "./run.mjs";

ensureInstalled();
const chromium = ensureChromium();

const node = process.execPath;
const failures = [];
const step = (name, program, args, options) => {
  const began = performance.now();
  const status = run(program, args, options);
  console.log(
    `${status === 0 ? "ok" : "FAILED"}: ${name} (${((performance.now() - began) / 1000).toFixed(1)} s)`,
  );
  if (status !== 0) failures.push(name);
  return status;
};

step("types", node, ["scripts/types.mjs"]);
step("lint", node, ["node_modules/@biomejs/biome/bin/biome", "check", "--error-on-warnings", "."]);
step("build", node, ["scripts/build.mjs"]);

const report = join(tmpdir(), `tamis-tests-${process.pid}.json`);
step(
  "tests",
  node,
  [
    "node_modules/vitest/vitest.mjs",
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
  ],
  { env: { ...process.env, CHROME_PATH: chromium } },
);

/** The counts of the run; a run that ended before it could count has failed as a whole. */
const counts = () => {
  try {
    const { numPassedTests, numFailedTests, numFailedTestSuites, success } = JSON.parse(
      readFileSync(report, "utf8"),
    );
    // A file that breaks while loading has no failed test to count.
    return { passed: numPassedTests, failed: success ? 0 : Math.max(numFailedTests, numFailedTestSuites, 1) };
  } catch {
    return { passed: 0, failed: 1 };
  }
};
const { passed, failed } = counts();
rmSync(report, { force: true });
const otherFailures = failures.filter((name) => name !== "tests");
if (failures.length > 0) console.log(`Failed: ${failures.join(", ")}`);
console.log(`${passed} passed, ${failed + otherFailures.length} failed`);
process.exit(failures.length > 0 || failed > 0 ? 1 : 0);

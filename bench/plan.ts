// Times the planner on the demo, by tries: npm run bench -- plan
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { runEvening } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { sittingFromFiles } from "#wire/sitting-from-files.ts";

const folder = join("demo", readdirSync("demo")[0] ?? "");
const name = "sitting.yaml";
const { sitting, cards } = sittingFromFiles({
  sitting: { name, text: readFileSync(join(folder, name), "utf8") },
  read: (file) => readFileSync(join(folder, file), "utf8"),
  list: (sub) => readdirSync(join(folder, sub)),
});
if (sitting) {
  const { prep } = runEvening(sitting, cards, { tries: 0, seed: 1 }).value;
  console.log(`${prep.tasks.length} tasks, ${prep.lags.length} lags`);
  for (const tries of [0, 50, 200, 1000]) {
    const from = performance.now();
    const { value } = planFromPrep(prep, { tries, seed: 1 });
    const took = performance.now() - from;
    const { lateMinutes, holdMinutes, calmMinutes } = value.objective;
    console.log(
      `${String(tries).padStart(5)} tries ${took.toFixed(0).padStart(6)} ms  ${value.status}, ${value.unplaced.length} unplaced, late ${lateMinutes}, hold ${holdMinutes}, calm ${calmMinutes}`,
    );
  }
}

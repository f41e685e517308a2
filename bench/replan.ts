// Times the first answer of a night planned anew, on kitchens of kitchen-bench/1: npm run bench -- replan FILE…
// At five moments of each plan one or two running tasks are 5 or 20 minutes late; CPU milliseconds, of the second round.
import { readFileSync } from "node:fs";
import { minutes, moment, progressAt, replan, solvePrep } from "#engine/index.ts";
import { readKitchenBench } from "#wire/read-kitchen-bench.ts";

for (const file of process.argv.slice(2)) {
  const { prep } = readKitchenBench(file, readFileSync(file, "utf8"));
  if (prep === null) {
    console.log(`${file} cannot be read`);
    continue;
  }
  const plan = solvePrep(prep, { tries: 20, seed: 1 }).value;
  const starts = plan.placed.map((placed) => placed.start as number).sort((a, b) => a - b);
  const took: number[] = [];
  let wrong = 0;
  for (const round of [0, 1])
    for (const share of [0.1, 0.3, 0.5, 0.7, 0.9])
      for (const more of [5, 20]) {
        const now = moment(starts[Math.floor(share * starts.length)] ?? 0);
        const running = plan.placed.filter((p) => p.start < now && p.end > now).slice(0, 2);
        const late = new Map(running.map((p) => [p.task, minutes(more)]));
        const told = { now, late, notBegun: new Set<string>(), done: new Map() };
        const progress = progressAt(prep, plan, told);
        const from = process.cpuUsage().user;
        const { value } = replan({ prep, plan }, progress, { tries: 0, seed: 1 });
        if (round === 1) took.push((process.cpuUsage().user - from) / 1000);
        if (value.plan.violations.length + value.plan.unplaced.length > plan.unplaced.length) wrong += 1;
      }
  took.sort((a, b) => a - b);
  const [median = 0, worst = 0] = [took[Math.floor(took.length / 2)], took.at(-1)];
  console.log(
    `${file} ${prep.tasks.length} tasks: median ${median.toFixed(0)} ms, worst ${worst.toFixed(0)} ms, ${wrong} not whole`,
  );
}

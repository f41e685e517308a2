// Solves research problems and writes bench/solve-table.md: npm run bench -- solve PATH [--seconds j30=1,j60=5] [--every N]
// PATH holds psplib/{j30,j60,j120}, rcpspmax/{j20,ubo20,ubo50,ubo100} with their best-known.csv, and kitchen/*.json.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { solveKitchen } from "#cli/commands/solve-kitchen.ts";
import { solveProject } from "#engine/index.ts";
import { readProject } from "#wire/read-project.ts";

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { seconds: { type: "string" }, every: { type: "string" }, only: { type: "string" } },
});
const root = positionals[0];
if (root === undefined || !existsSync(root)) {
  console.error("npm run bench -- solve PATH, the folder that holds psplib, rcpspmax and kitchen");
  process.exit(2);
}
const every = Number(values.every ?? 1);
const usual: Record<string, number> = {
  j30: 1,
  j60: 5,
  j120: 10,
  j20: 5,
  ubo20: 5,
  ubo50: 5,
  ubo100: 5,
  k12: 5,
  k25: 5,
  k50: 5,
  k200: 60,
  x1: 5,
  x2: 5,
};
for (const pair of (values.seconds ?? "").split(",").filter((p) => p !== "")) {
  const [name = "", seconds] = pair.split("=");
  usual[name] = Number(seconds);
}
const wanted = (name: string): boolean => values.only === undefined || values.only.split(",").includes(name);

type Known = {
  readonly status: string;
  readonly lower: number;
  readonly upper: number;
  readonly path: number;
};

const knownOf = (folder: string): ReadonlyMap<string, Known> => {
  const [head = "", ...lines] = readFileSync(join(folder, "best-known.csv"), "utf8").trim().split("\n");
  const columns = head.split(",");
  return new Map(
    lines.map((line) => {
      const cells = line.split(",");
      const at = (name: string): string => cells[columns.indexOf(name)] ?? "";
      return [
        `${at("set")}/${at("instance").replace(/\.sch$/, "")}`,
        {
          status: at("status"),
          lower: Number(at("merged_lb") || at("lb")),
          upper: Number(at("merged_ub") || at("ub")),
          path: Number(at("critical_path_lb")),
        },
      ];
    }),
  );
};

const rows: string[] = [];
const solveSet = (
  folder: string,
  set: string,
  reference: "optimum" | "critical path" | "best known",
): void => {
  const where = join(folder, set);
  if (!existsSync(where) || !wanted(set)) return;
  const known = knownOf(folder);
  const seconds = usual[set] ?? 5;
  const names = readdirSync(where).filter((name, i) => /\.(sm|sch)$/.test(name) && i % every === 0);
  let deviation = 0;
  let compared = 0;
  let best = 0;
  let proved = 0;
  let none = 0;
  let noneKnown = 0;
  let nothing = 0;
  let processor = 0;
  for (const name of names) {
    const { project } = readProject(name, readFileSync(join(where, name), "utf8"));
    const facts = known.get(`${set}/${name.replace(/\.(sm|sch)$/, "")}`);
    if (project === null || facts === undefined)
      throw new Error(`${name} cannot be read, or nothing is known of it`);
    const from = performance.now();
    const before = process.cpuUsage();
    const answer = solveProject(project, {
      seed: 1,
      steps: null,
      keepGoing: () => performance.now() - from < seconds * 1000,
      tell: () => undefined,
    });
    const used = process.cpuUsage(before);
    processor += (used.user + used.system) / 1e6;
    if (facts.status === "infeasible") noneKnown += 1;
    if (answer.status === "none") {
      none += 1;
      if (facts.status !== "infeasible") throw new Error(`${name}: called infeasible, and it is not`);
      continue;
    }
    if (answer.makespan === null) {
      if (facts.upper > 0) nothing += 1;
      continue;
    }
    const to = reference === "critical path" ? facts.path : facts.upper;
    deviation += (100 * (answer.makespan - to)) / to;
    compared += 1;
    if (answer.makespan <= facts.upper) best += 1;
    if (answer.status === "proved") proved += 1;
  }
  rows.push(
    `| ${set} | ${names.length} | ${seconds} | ${reference} | ${(deviation / Math.max(1, compared)).toFixed(2)} % | ${best} | ${proved} | ${noneKnown === 0 ? "–" : `${none} of ${noneKnown}`} | ${nothing} | ${(processor / names.length).toFixed(2)} |`,
  );
  console.log(rows.at(-1));
};

for (const [set, reference] of [
  ["j30", "optimum"],
  ["j60", "critical path"],
  ["j120", "critical path"],
] as const)
  solveSet(join(root, "psplib"), set, reference);
for (const set of ["j20", "ubo20", "ubo50", "ubo100"]) solveSet(join(root, "rcpspmax"), set, "best known");

const kitchens: string[] = [];
for (const name of ["k12", "k25", "k50", "k200", "x1", "x2"]) {
  const file = join(root, "kitchen", `${name}.json`);
  if (!existsSync(file) || !wanted(name)) continue;
  const seconds = usual[name] ?? 5;
  const { solution } = solveKitchen(file, readFileSync(file, "utf8"), {
    seconds,
    seed: 1,
    now: () => performance.now() / 1000,
  });
  if (solution === null) throw new Error(`${name} cannot be read`);
  const parts = solution.parts === null ? "–" : Object.values(solution.parts).join(", ");
  const bounds = solution.bounds === null ? "–" : Object.values(solution.bounds).join(", ");
  kitchens.push(
    `| ${name} | ${seconds} | ${solution.status} | ${parts} | ${bounds} | ${solution.firstAt ?? "–"} | ${solution.bestAt ?? "–"} | ${solution.seconds} | ${(solution.conflict ?? []).join(", ")} |`,
  );
  console.log(kitchens.at(-1));
}

if (values.only === undefined)
  writeFileSync(
    "bench/solve-table.md",
    `# The planner on research problems

Written by \`npm run bench -- solve PATH\`; one thread, Node ${process.versions.node}${every > 1 ? `; one in ${every} of each set` : ""}. The problems are not part of this project.

PSPLIB: R. Kolisch, A. Sprecher, European Journal of Operational Research 96 (1997) 205–216; the first instance of each class.
RCPSP/max: C. Schwindt 1996 (ProGen/max), B. Franck and others 2001; instances 1 to 30.
Deviations are from the optimum (j30), the critical path (j60, j120), or the best known makespan.

| set | problems | seconds each | against | mean deviation | at the best known | proved | shown infeasible | no plan found | processor s each |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${rows.join("\n")}

Kitchens (kitchen-bench/1): late, hold, freshness and calm minutes in the order of the file.

| kitchen | seconds | status | parts | bounds | first plan, s | best plan, s | took, s | conflict |
| --- | --- | --- | --- | --- | --- | --- | --- | --- |
${kitchens.join("\n")}
`,
  );

import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { readCard, runEvening, scaleCard } from "#engine/index.ts";
import { sittingFromFiles } from "#wire/sitting-from-files.ts";
import { cardOf } from "./card-of.ts";
import { unseenCard } from "./unseen-card.ts";

type Budgets = Readonly<Record<string, number>>;
const budgets = JSON.parse(readFileSync("bench/budgets.json", "utf8")) as Budgets;

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

const timed = (runs: number, work: () => unknown): number =>
  median(
    Array.from({ length: runs }, () => {
      const from = performance.now();
      work();
      return performance.now() - from;
    }),
  );

const found: Record<string, number> = {};

for (const [size, runs] of [
  [60, 200],
  [1000, 15],
  [10000, 3],
] as const) {
  const text = cardOf(size);
  // Typing reads the same card over and over, so that it is the warm reader that counts.
  timed(Math.max(3, runs), () => readCard(text, "card"));
  found[`read-${size}-lines-ms`] = timed(runs, () => readCard(text, "card"));
}

// A card opened for the first time: the reader is warm, and has met none of its lines.
for (const [size, runs] of [
  [60, 150],
  [1000, 9],
  [10000, 2],
] as const) {
  const first = size * 1000;
  for (let k = 0; k < (size === 60 ? 300 : 1); k += 1) readCard(unseenCard(size, first + k), "card");
  const texts = Array.from({ length: runs }, (_, k) => unseenCard(size, first + 500 + k));
  found[`read-unseen-${size}-lines-ms`] = median(
    texts.map((text) => {
      const from = performance.now();
      readCard(text, "card");
      return performance.now() - from;
    }),
  );
}

// A hundred cards of ordinary length, each for six hundred covers.
const hundred = Array.from({ length: 100 }, (_, k) => ({ name: `card-${k}`, text: `${cardOf(30)}\n` }));
found["scale-100-cards-600-covers-ms"] = timed(1, () => {
  for (const { name: card, text } of hundred) scaleCard(text, card, 600, null);
});

const folder = join("demo", readdirSync("demo")[0] ?? "");
const name = "sitting.yaml";
const loaded = sittingFromFiles({
  sitting: { name, text: readFileSync(join(folder, name), "utf8") },
  read: (file) => readFileSync(join(folder, file), "utf8"),
  list: (sub) => readdirSync(join(folder, sub)),
});
if (loaded.sitting) {
  const sitting = loaded.sitting;
  found["evening-first-run-ms"] = timed(1, () => runEvening(sitting, loaded.cards));
}

for (const [key, file] of [
  ["web-main-kb", "dist/web/main.js"],
  ["web-worker-kb", "dist/web/engine-worker.js"],
] as const) {
  try {
    found[key] = statSync(file).size / 1024;
  } catch {
    console.log(`${file} is not built; run npm run build first.`);
  }
}

let over = 0;
for (const [key, budget] of Object.entries(budgets)) {
  const value = found[key];
  if (value === undefined) continue;
  if (value > budget) over += 1;
  console.log(
    `${key.padEnd(28)} ${value.toFixed(2).padStart(10)}  budget ${budget}${value > budget ? "  OVER" : ""}`,
  );
}
process.exitCode = over > 0 ? 1 : 0;

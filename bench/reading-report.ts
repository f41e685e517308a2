// Counts what the reader makes of a pile of cards: npm run bench -- reading-report FOLDER|FILE.json [--misses]
// A .json file holds a list of {title, servings_text, ingredients: [line], method: [step]}; a folder holds one card a file.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { type Dish, type Finding, readCard } from "#engine/index.ts";

type Listed = {
  readonly title: string;
  readonly servings_text: string | null;
  readonly ingredients: readonly string[];
  readonly method: readonly string[];
};

const textOf = (d: Listed): string =>
  [
    d.title,
    "",
    ...(d.servings_text ? [d.servings_text, ""] : []),
    "Ingredients",
    ...d.ingredients,
    "",
    "Method",
    ...d.method.map((m, i) => `${i + 1}. ${m}`),
    "",
  ].join("\n");

const path = process.argv[2] ?? "";
const showMisses = process.argv.includes("--misses");
const texts: readonly string[] = statSync(path).isDirectory()
  ? readdirSync(path).map((f) => readFileSync(join(path, f), "utf8"))
  : (JSON.parse(readFileSync(path, "utf8")) as readonly Listed[]).map(textOf);

/** Written apart from the reader, so that it can disagree with it. */
const statedTime =
  /\b(?:\d+(?:[.,]\d+)?|½|¼|¾|one|two|three|four|five|six|ten|fifteen|twenty|thirty|half an|an|a few|a couple of)\s*(?:(?:-|–|to|or)\s*\d+\s*)?(?:more\s+|full\s+)?(?:min(?:ute)?s?|h(?:ou)?rs?|seconds?|secs?)\b/i;
const interval = /\bevery\s+(?:few\s+|\d+\s*)?(?:min|hour|half)/i;
const statedHeat = /\d{2,3}\s*(?:°|º|˚|degrees?)\s*[CF]?\b|\b\d{3}\s*[CF]\b|\bgas (?:mark )?\d/i;

const count = {
  dishes: 0,
  lines: 0,
  foods: 0,
  weighed: 0,
  steps: 0,
  withAction: 0,
  timed: 0,
  timeRead: 0,
  heated: 0,
  heatRead: 0,
  warns: 0,
};
const times: number[] = [];
const misses: string[] = [];
const codes = new Map<string, number>();

for (const text of texts) {
  const from = performance.now();
  const { value, findings }: { value: Dish; findings: readonly Finding[] } = readCard(text, "card");
  times.push(performance.now() - from);
  count.dishes += 1;
  for (const f of findings) codes.set(f.code, (codes.get(f.code) ?? 0) + 1);
  count.warns += findings.filter((f) => f.severity !== "note").length;
  for (const i of value.ingredients.filter((x) => !x.equipment)) {
    count.lines += 1;
    if (i.food !== null || i.card !== null) count.foods += 1;
    else misses.push(`food: ${i.text}  [${i.name}]`);
    if (i.grams !== null) count.weighed += 1;
  }
  for (const s of value.steps) {
    count.steps += 1;
    if (s.actions.some((a) => a.technique !== null)) count.withAction += 1;
    else misses.push(`technique: ${s.text}`);
    if (statedTime.test(s.text) && !interval.test(s.text)) {
      count.timed += 1;
      if (s.actions.some((a) => (a.minutes && !a.minutes.assumed) || a.leastWait !== null))
        count.timeRead += 1;
      else misses.push(`time: ${s.text}`);
    }
    if (statedHeat.test(s.text)) {
      count.heated += 1;
      if (s.actions.some((a) => a.celsius !== null || a.core !== null)) count.heatRead += 1;
      else misses.push(`temperature: ${s.text}`);
    }
  }
}

times.sort((a, b) => a - b);
const part = (a: number, b: number): string => `${a} of ${b} (${((100 * a) / Math.max(1, b)).toFixed(1)} %)`;
console.log(`dishes read               ${count.dishes}`);
console.log(`ingredients with a food   ${part(count.foods, count.lines)}`);
console.log(`ingredients with a weight ${part(count.weighed, count.lines)}`);
console.log(`steps with a technique    ${part(count.withAction, count.steps)}`);
console.log(`steps, stated time read   ${part(count.timeRead, count.timed)}`);
console.log(`steps, temperature read   ${part(count.heatRead, count.heated)}`);
console.log(`warnings a dish           ${(count.warns / Math.max(1, count.dishes)).toFixed(2)}`);
console.log(
  `ms a card                 median ${times[times.length >> 1]?.toFixed(2)}, worst ${times.at(-1)?.toFixed(1)}`,
);
console.log(
  [...codes]
    .sort((a, b) => b[1] - a[1])
    .map(([c, n]) => `${c} ${n}`)
    .join(", "),
);
if (showMisses) console.log(misses.join("\n"));

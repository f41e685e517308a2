// Makes a kitchen problem of the format kitchen-bench/1 by chance: npm run bench -- make-kitchen SEED [--tasks N] [--cooks N]
// [--ovens N] [--services N] [--ample X] [--tight X] [--harsh]. The same arguments give the same file on every machine.
// ample: above 1 more hands and equipment than usual, below 1 less. tight: below 1 what is ready waits for less long.
// harsh: cooks have breaks, ovens are wanted at heats further apart, and minding takes more of a cook.
import { parseArgs } from "node:util";
import { chanceFrom } from "../src/engine/search/chance.ts";
import { type Chain, chains } from "./kitchen-chains.ts";

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: {
    tasks: { type: "string" },
    cooks: { type: "string" },
    ovens: { type: "string" },
    services: { type: "string" },
    ample: { type: "string" },
    tight: { type: "string" },
    harsh: { type: "boolean" },
  },
});
const seed = Number(positionals[0] ?? 1);
const chance = chanceFrom(seed);
for (let i = 0; i < 5; i++) chance.below(2);
const between = (least: number, most: number): number => least + chance.below(most - least + 1);
const given = (text: string | undefined, usual: () => number): number =>
  text === undefined ? usual() : Number(text);

const wanted = given(values.tasks, () => [12, 20, 35, 50, 80, 120, 200, 300][chance.below(8)] ?? 50);
const ample = given(values.ample, () => [0.7, 0.85, 1, 1.3, 1.8][chance.below(5)] ?? 1);
const tight = given(values.tight, () => [0.4, 0.7, 1, 1, 1.5][chance.below(5)] ?? 1);
const harsh = values.harsh === true;
const services = given(values.services, () =>
  wanted <= 60 ? 1 : wanted <= 120 ? between(1, 2) : between(2, 3),
);
const cooks = given(values.cooks, () =>
  Math.max(1, Math.min(8, Math.round((wanted / services / 27) * ample))),
);
const ovens = given(values.ovens, () =>
  Math.max(1, Math.min(4, Math.round((wanted / services / 45) * ample))),
);

type Use = { readonly resource: string; readonly amount: number; readonly tempC?: number };
type Segment = {
  readonly minutes: number;
  readonly attention: string;
  readonly uses: readonly Use[];
  readonly needsSomeoneInKitchen: boolean;
};

const tasks: { id: string; name: string; dish: string; finishing: boolean; segments: Segment[] }[] = [];
const lags: Record<string, unknown>[] = [];
const courses: { id: string; service: number; dueMinute: number; plateTasks: string[] }[] = [];
const waits: { readonly hotHold: object[]; readonly freshness: object[] } = { hotHold: [], freshness: [] };

const addTask = (name: string, dish: string, finishing: boolean, segments: Segment[]): string => {
  const id = `t${tasks.length + 1}`;
  tasks.push({ id, name, dish, finishing, segments });
  return id;
};
const lag = (before: string, after: string, least: number, most: number | null, why: string): void => {
  lags.push({
    before,
    beforeEdge: "end",
    after,
    afterEdge: "start",
    minMinutes: least,
    ...(most === null ? {} : { maxMinutes: Math.max(least, most) }),
    why,
  });
};

/** Hands take longer the more there is to do; ovens and fridges hardly so. */
const minutesOf = (usual: number, attention: string): number =>
  Math.max(
    1,
    Math.round(
      usual * (attention === "unattended" ? 0.9 + chance.share() * 0.2 : 0.75 + chance.share() * 0.7),
    ),
  );
/** What waits a short time is what hurts when it is cut. */
const most = (usual: number): number =>
  usual < 5 ? usual : Math.max(3, Math.round(usual * (usual > 600 ? 1 : tight)));

const addChain = (chain: Chain, course: string, plate: string): void => {
  const ids = chain.steps.map((step) =>
    addTask(
      step.name,
      course,
      step.finishing ?? false,
      step.segments.map(([minutes, attention, ...uses]) => {
        const made = uses.map(([resource, amount, tempC]) => ({
          resource,
          amount,
          ...(tempC === undefined ? {} : { tempC: tempC + 5 * between(harsh ? -6 : -2, harsh ? 6 : 2) }),
        }));
        return {
          minutes: minutesOf(minutes, attention),
          attention,
          uses: made,
          needsSomeoneInKitchen: made.some((use) => use.resource === "oven" || use.resource === "burner"),
        };
      }),
    ),
  );
  chain.steps.forEach((step, i) => {
    const before = ids[i] as string;
    const after = step.to === undefined ? ids[i + 1] : ids[step.to];
    if (after !== undefined)
      lag(
        before,
        after,
        step.least ?? 0,
        step.most === null ? null : most(step.most),
        `${step.name}: it keeps so long`,
      );
  });
  const last = ids.at(-1) as string;
  const limit = most(chain.keeps);
  lag(last, plate, 0, limit, chain.hot ? "served hot" : "served fresh");
  (chain.hot ? waits.hotHold : waits.freshness).push({
    task: last,
    plate,
    maxMinutes: limit,
    weight: chain.weight,
    course,
  });
};

const horizon = 1440 * services + 1560;
const shifts: [number, number][][] = Array.from({ length: cooks }, () => []);
const calm: object[] = [];
const perCourse = Math.max(4, Math.min(34, Math.round(wanted / services / between(3, 6))));
for (let service = 1; service <= services; service++) {
  const first = 1440 * service + 60 * between(12, 20);
  const share = Math.round((wanted * service) / services);
  calm.push({ service, fromMinute: first - 60, toMinute: first });
  let due = first;
  while (tasks.length < share) {
    const id = `c${courses.length + 1}`;
    // Plates that go together take as many pairs of hands.
    const plates = between(1, Math.min(cooks, wanted > 100 ? 3 : 2));
    const room = Math.min(perCourse, share - tasks.length) - plates;
    // The plates bear numbers after the work that they wait for, so their names are made when it is known.
    const plate = `plate ${id}`;
    const until = tasks.length + Math.max(1, room);
    const used = new Set<Chain>();
    while (tasks.length < until) {
      const able = chains.filter((c) => c.steps.length <= until - tasks.length && !used.has(c));
      const chain = able[chance.below(able.length)] ?? chains[0];
      if (chain === undefined) break;
      used.add(chain);
      addChain(chain, id, plate);
    }
    const segment = (): Segment[] => [
      { minutes: 4 + chance.below(6), attention: "handsOn", uses: [], needsSomeoneInKitchen: false },
    ];
    const ids = Array.from({ length: plates }, () => addTask("plate up", id, true, segment()));
    const head = ids[0] as string;
    for (const entry of [...lags, ...waits.hotHold, ...waits.freshness] as Record<string, unknown>[]) {
      if (entry["after"] === plate) entry["after"] = head;
      if (entry["plate"] === plate) entry["plate"] = head;
    }
    for (const other of ids.slice(1))
      lags.push({
        before: head,
        beforeEdge: "start",
        after: other,
        afterEdge: "start",
        minMinutes: 0,
        maxMinutes: 0,
        why: "one course goes together",
      });
    courses.push({ id, service, dueMinute: due, plateTasks: ids });
    due += 5 * between(4, 7);
  }
  shifts.forEach((own, cook) => {
    const early = cook === 0 ? 480 : between(5, 9) * 60;
    if (cook === 0 || chance.below(3) > 0) {
      // The day before, or the hours after the evening before.
      const from = 1440 * (service - 1) + 60 * between(13, 15) + (service > 1 ? 480 : 0);
      own.push([from, from + Math.round(60 * between(5, 8) * Math.min(1.3, ample))]);
    }
    const last = own.at(-1)?.[1] ?? 0;
    own.push([
      Math.max(
        last + 30,
        Math.min(first - 240, Math.round(first - early * Math.min(1.3, Math.max(0.9, ample)))),
      ),
      due + 120,
    ]);
  });
}

/** Shifts with a break in them: two of three have one, where they are long enough. */
const withBreaks = (own: readonly [number, number][]): [number, number][] =>
  own.flatMap(([from, to]): [number, number][] => {
    const rest = 5 * between(4, 12);
    const at = from + 60 + chance.below(Math.max(1, to - from - 120 - rest));
    return chance.below(3) === 0 || to - from < 240
      ? [[from, to]]
      : [
          [from, at],
          [at + rest, to],
        ];
  });

const count = (usual: number): number =>
  Math.max(1, Math.round(usual * ample * Math.max(1, Math.sqrt(wanted / services / 40))));
const file = {
  format: "kitchen-bench/1",
  name: `made ${seed}`,
  timeUnit: "minute from 00:00 of day 1",
  horizon,
  attention: {
    capacityPerCook: 4,
    handsOn: harsh ? between(3, 4) : 3,
    minded: harsh ? between(1, 2) : 1,
    unattended: 0,
  },
  cooks: shifts.map((own, c) => ({ id: `cook${c + 1}`, shifts: harsh ? withBreaks(own) : own })),
  ovens: Array.from({ length: ovens }, (_, o) => ({
    id: `oven${o + 1}`,
    shelves: between(2, 3),
    startTempC: 20,
  })),
  ovenRamp: {
    heatMinutesPer10C: [1, 1, 0.7, 1.5][chance.below(4)],
    coolMinutesPer10C: [2, 2, 1, 3][chance.below(4)],
  },
  equipment: [
    { id: "burner", capacity: Math.max(2, count(4)) },
    { id: "fridge", capacity: Math.max(2, count(4)) },
    { id: "mixer", capacity: 1 },
    { id: "blender", capacity: 1 },
    { id: "chiller", capacity: count(1.5) },
    { id: "churn", capacity: 1 },
    { id: "bath", capacity: count(2) },
  ],
  tasks,
  lags,
  courses,
  hotHold: waits.hotHold,
  freshness: waits.freshness,
  calm,
  objective: {
    order: [
      "courseLatenessMinutes",
      "hotHoldWeightedMinutes",
      "freshnessWeightedMinutes",
      "calmHandsOnMinutes",
    ],
  },
};
console.log(JSON.stringify(file, null, 1));

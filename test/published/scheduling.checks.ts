import { type Lag, minutes, moment, type Prep } from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { goal, lag, prepOf, segment, task, use } from "../sittings/random-prep.ts";
import type { Check } from "./check.ts";

/** The minute at which the only course lands, counted from the start of the shift. */
const makespan = (prep: Prep, tries = 2000): number => {
  const { courses, unplaced } = planFromPrep(prep, { tries, seed: 1 }).value;
  return unplaced.length > 0 ? Number.NaN : (courses[0]?.lands ?? 0) - opens;
};

const opens = 600;
const shop = (cooks: number, resources: Prep["resources"]): Partial<Prep> => ({
  crew: Array.from({ length: cooks }, (_, i) => ({
    name: `cook ${i + 1}`,
    shifts: [{ from: moment(opens), to: moment(opens + 600) }],
  })),
  resources,
});

/** A course due at once, of one plate of no length after all the work: it lands when the last job is done. */
const afterAll = (ids: readonly string[]): { readonly lags: readonly Lag[]; readonly plate: string } => ({
  plate: "plate",
  lags: ids.map((id) => lag(id, "plate")),
});

/** Jobs through machine one, then machine two, each job minded by a fraction of a cook. */
const flowShop = (jobs: readonly (readonly [number, number])[]): Prep => {
  const first = jobs.map(([length], j) => task(`a${j}`, 0, [segment(length, "mind", [use("one")])]));
  const second = jobs.map(([, length], j) => task(`b${j}`, 0, [segment(length, "mind", [use("two")])]));
  const end = afterAll(jobs.map((_, j) => `b${j}`));
  return prepOf(
    [...first, ...second, task(end.plate, 0, [segment(0, "none")], { kind: "plate", finishing: true })],
    [...jobs.map((_, j) => lag(`a${j}`, `b${j}`)), ...end.lags],
    [goal(0, opens, [end.plate])],
    shop(2, [
      { id: "one", capacity: 1 },
      { id: "two", capacity: 1 },
    ]),
  );
};

/** Johnson's rule: jobs quicker on the first machine first, by that time; the rest last, by falling time on the second. */
const johnson = (jobs: readonly (readonly [number, number])[]): number => {
  const early = jobs.filter(([a, b]) => a < b).sort((x, y) => x[0] - y[0]);
  const late = jobs.filter(([a, b]) => a >= b).sort((x, y) => y[1] - x[1]);
  let one = 0;
  let two = 0;
  for (const [a, b] of [...early, ...late]) {
    one += a;
    two = Math.max(one, two) + b;
  }
  return two;
};

const fiveJobs = [
  [3, 6],
  [5, 2],
  [1, 2],
  [6, 6],
  [7, 5],
] as const;
const sixJobs = [
  [5, 5],
  [4, 3],
  [14, 9],
  [2, 6],
  [8, 11],
  [10, 7],
] as const;

/** Independent jobs by hand on so many cooks. */
const parallel = (lengths: readonly number[], cooks: number): Prep => {
  const end = afterAll(lengths.map((_, j) => `j${j}`));
  return prepOf(
    [
      ...lengths.map((length, j) => task(`j${j}`, 0, [segment(length, "hands")])),
      task(end.plate, 0, [segment(0, "none")], { kind: "plate", finishing: true }),
    ],
    end.lags,
    [goal(0, opens, [end.plate])],
    shop(cooks, []),
  );
};

/** A small project without limits on hands: its length is its longest path. */
const project = (): Prep => {
  const lengths: Readonly<Record<string, number>> = { a: 4, b: 3, c: 6, d: 2, e: 5, f: 7 };
  const arcs = [
    ["a", "c"],
    ["a", "d"],
    ["b", "d"],
    ["c", "e"],
    ["d", "f"],
  ] as const;
  const ids = Object.keys(lengths);
  const end = afterAll(ids);
  return prepOf(
    [
      ...ids.map((id) => task(id, 0, [segment(lengths[id] ?? 0, "hands")])),
      task(end.plate, 0, [segment(0, "none")], { kind: "plate", finishing: true }),
    ],
    [...arcs.map(([x, y]) => lag(x, y)), ...end.lags],
    [goal(0, opens, [end.plate])],
    shop(6, []),
  );
};

export const checks: readonly Check[] = [
  {
    what: "two machines in line, five jobs: the least makespan",
    source:
      "S. M. Johnson, Naval Research Logistics Quarterly 1 (1954) 61-68, rule; figures worked by hand (24)",
    run: () => [makespan(flowShop(fiveJobs)), 24],
  },
  {
    what: "two machines in line, six jobs: the least makespan",
    source: "S. M. Johnson, Naval Research Logistics Quarterly 1 (1954) 61-68, rule applied in the check",
    run: () => [makespan(flowShop(sixJobs)), johnson(sixJobs)],
  },
  {
    what: "the project a4 b3 c6 d2 e5 f7 with hands enough is as long as its longest path a-c-e",
    source: "critical path method, Kelley and Walker 1959 (from memory); figures worked by hand (15)",
    run: () => [makespan(project()), 15],
  },
  {
    what: "3 3 2 2 2 on two cooks: the least makespan, which longest-first misses by one",
    source:
      "R. L. Graham, SIAM J. Applied Mathematics 17 (1969) 416-429, the tight case of the 4/3 bound (from memory)",
    run: () => [makespan(parallel([3, 3, 2, 2, 2], 2)), 6],
  },
  {
    what: "5 5 4 4 3 3 3 on three cooks: the least makespan, which longest-first misses by two",
    source:
      "R. L. Graham, SIAM J. Applied Mathematics 17 (1969) 416-429, the tight case of the 4/3 bound (from memory)",
    run: () => [makespan(parallel([5, 5, 4, 4, 3, 3, 3], 3)), 9],
  },
  {
    what: "a wait of 240 in a day of 200: how many minutes are missing",
    source: "worked by hand: 20 + 240 + 20 − 200 = 80",
    run: () => {
      const ring = prepOf(
        [task("a", 0, [segment(20, "hands")]), task("b", 0, [segment(20, "hands")])],
        [
          lag("a", "b", 240),
          {
            ...lag("a", "b"),
            beforeEdge: "start",
            afterEdge: "end",
            most: minutes(200),
            reason: "hold-limit",
          },
        ],
        [],
      );
      const found = planFromPrep(ring, { tries: 0, seed: 1 }).findings.find((f) => f.code === "limits-clash");
      return [found?.code === "limits-clash" ? found.facts.minutes : null, 80];
    },
  },
];

import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

// Exit codes as docs/formats.md has them; 128 and the number of the signal as POSIX shells have it (XCU 2.8.2).

/** Work that no search is done with soon: many tasks of odd lengths on one resource, as short as can be. */
const long = {
  format: "tamis-problem/1",
  name: "a long day",
  cooks: [{ name: "Ada", shifts: [[0, 5000]] }],
  resources: [{ id: "bench", capacity: 11 }],
  span: [0, 5000],
  tasks: [
    ...Array.from({ length: 90 }, (_, i) => ({
      id: `t${i}`,
      segments: [
        {
          minutes: 5 + ((i * 37) % 29),
          attention: "none",
          uses: [{ resource: "bench", amount: 2 + ((i * 7) % 5) }],
        },
      ],
    })),
    { id: "plate", segments: [{ minutes: 1, attention: "hands" }] },
  ],
  lags: [
    ...Array.from({ length: 90 }, (_, i) => ({ before: `t${i}`, after: "plate" })),
    ...Array.from({ length: 60 }, (_, i) => ({ before: `t${i}`, after: `t${i + 3 + ((i * 11) % 25)}` })),
  ],
  courses: [{ name: "all of it", due: 100, plates: ["plate"] }],
};

const cannot = {
  ...long,
  tasks: long.tasks.slice(88),
  lags: [
    { before: "t88", after: "plate", most: 10 },
    { before: "t89", after: "plate", most: 10 },
    { before: "t88", after: "t89" },
  ],
};

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "tamis-solve-"));
  writeFileSync(join(folder, "long.json"), JSON.stringify(long));
  writeFileSync(join(folder, "cannot.json"), JSON.stringify(cannot));
  writeFileSync(join(folder, "by-machine.json"), JSON.stringify(byMachine));
  writeFileSync(join(folder, "no-machine.json"), JSON.stringify({ ...byMachine, resources: [] }));
  writeFileSync(join(folder, "two-clashes.json"), JSON.stringify(twoClashes));
  writeFileSync(join(folder, "at-once.json"), JSON.stringify(atOnce));
  writeFileSync(join(folder, "broken.json"), JSON.stringify({ format: "tamis-problem/1" }));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Solves a file; the signal comes after so many seconds. */
const solve = (file: string, signal: NodeJS.Signals | null, after = 0) =>
  new Promise<{ readonly code: number | null; readonly stdout: string; readonly stderr: string }>(
    (resolve) => {
      const child = spawn(process.execPath, [
        "bin/tamis.mjs",
        "solve",
        join(folder, file),
        "--seconds",
        "100",
        "--json",
      ]);
      let stdout = "";
      let stderr = "";
      child.stdout.on("data", (chunk) => {
        stdout += chunk;
      });
      child.stderr.on("data", (chunk) => {
        stderr += chunk;
      });
      child.on("close", (code) => resolve({ code, stdout, stderr }));
      if (signal !== null) setTimeout(() => child.kill(signal), after * 1000);
    },
  );

describe("a search that is asked to end", () => {
  it.each([
    ["SIGINT", 130],
    ["SIGTERM", 143],
  ] as const)(
    "on %s prints the best so far and exits with %i",
    { timeout: 120_000 },
    async (signal, code) => {
      let status = "unknown";
      // On a busy machine it may take a while to start, and to find the first plan; then it is given longer.
      for (let after = 3; status === "unknown" && after < 60; after *= 3) {
        const ended = await solve("long.json", signal, after);
        if (ended.code === null) continue;
        expect(ended).toMatchObject({ code, stderr: "" });
        status = (JSON.parse(ended.stdout) as { readonly status: string }).status;
      }
      expect(status).toBe("feasible");
    },
  );
});

/** One cook, two things at once: by hand they would be late, and the machine takes one of them. */
const byMachine = {
  format: "tamis-problem/1",
  name: "two doughs",
  cooks: [{ name: "Ada", shifts: [[0, 100]] }],
  resources: [{ id: "mixer", capacity: 1 }],
  span: [0, 100],
  tasks: [
    { id: "white", segments: [{ minutes: 20, attention: "hands" }] },
    {
      id: "brown",
      segments: [{ minutes: 20, attention: "hands" }],
      ways: [
        [
          { minutes: 1, attention: "hands" },
          { minutes: 12, attention: "none", uses: [{ resource: "mixer" }] },
        ],
      ],
    },
    { id: "plate", segments: [{ minutes: 2, attention: "hands" }] },
  ],
  lags: [
    { before: "white", after: "plate" },
    { before: "brown", after: "plate" },
  ],
  courses: [{ name: "bread", due: 23, plates: ["plate"] }],
};

describe("ways of doing a task in a problem", () => {
  it("are read, chosen among and told", { timeout: 60_000 }, async () => {
    const { code, stdout } = await solve("by-machine.json", null);
    expect(code).toBe(0);
    const found = JSON.parse(stdout) as { readonly start: readonly number[] };
    expect(found).toMatchObject({
      status: "optimal",
      wayOfTask: [0, 1, 0],
      parts: { courseLatenessMinutes: 0 },
    });
    expect(found.start).toHaveLength(4);
  });

  it("name only what there is", { timeout: 60_000 }, async () => {
    const { code, stderr } = await solve("no-machine.json", null);
    expect(code).toBe(1);
    expect(stderr).toContain("mixer");
  });
});

/** A wait that is too short for the rest it holds, twice, on tasks that have nothing to do with each other. */
const twoClashes = {
  format: "tamis-problem/1",
  name: "two rests",
  cooks: [{ name: "Ada", shifts: [[0, 500]] }],
  span: [0, 500],
  tasks: ["a", "b"].flatMap((k) => [
    { id: `${k} cook`, segments: [{ minutes: 5, attention: "hands" }] },
    { id: `${k} rest`, segments: [{ minutes: 60, attention: "none" }] },
    { id: `${k} plate`, segments: [{ minutes: 2, attention: "hands" }] },
  ]),
  lags: ["a", "b"].flatMap((k) => [
    { before: `${k} cook`, after: `${k} rest` },
    { before: `${k} rest`, after: `${k} plate` },
    { before: `${k} cook`, after: `${k} plate`, most: 45 },
  ]),
  courses: ["a", "b"].map((k) => ({ name: k, due: 200, plates: [`${k} plate`] })),
};

/** Two bakes at different heats that fill the time there is, in an oven that changes at once. */
const atOnce = {
  format: "tamis-problem/1",
  name: "an oven that changes at once",
  cooks: [{ name: "Ada", shifts: [[0, 62]] }],
  ovens: [{ id: "deck", shelves: 2 }],
  ovenRamp: { heat: 0, cool: 0 },
  ovensCold: "once",
  span: [0, 62],
  tasks: [
    ...[180, 220].map((celsius) => ({
      id: `bake at ${celsius}`,
      segments: [{ minutes: 30, attention: "none", uses: [{ resource: "oven", celsius }] }],
    })),
    { id: "plate", segments: [{ minutes: 2, attention: "hands" }] },
  ],
  lags: [180, 220].map((celsius) => ({ before: `bake at ${celsius}`, after: "plate" })),
  courses: [{ name: "all", due: 10, plates: ["plate"] }],
};

describe("what solve says of a kitchen", () => {
  it("names each clash, and offers no lag where one alone frees nothing", { timeout: 60_000 }, async () => {
    const { code, stdout } = await solve("two-clashes.json", null);
    expect(code).toBe(3);
    const found = JSON.parse(stdout) as Readonly<Record<string, unknown>>;
    expect([found["conflict"], found["otherConflicts"]]).toEqual([["lag2.max"], [["lag5.max"]]]);
    expect(found["relaxations"]).toEqual([]);
  });

  it("lets an oven that changes at once go from one heat to the next", { timeout: 60_000 }, async () => {
    const { code, stdout } = await solve("at-once.json", null);
    expect(code).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ status: "optimal", parts: { courseLatenessMinutes: 52 } });
  });
});

describe("the exit code of solve", () => {
  it("tells a problem without a plan from a file that is no problem", { timeout: 60_000 }, async () => {
    const none = await solve("cannot.json", null);
    expect(none.code).toBe(3);
    expect(JSON.parse(none.stdout)).toMatchObject({ status: "infeasible" });
    const broken = await solve("broken.json", null);
    expect(broken).toMatchObject({ code: 1, stdout: "" });
  });
});

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkFromPlan } from "#engine/check-from-plan/check-from-plan.ts";
import {
  type Cause,
  chainOf,
  courseChains,
  exactly,
  type Lag,
  minutes,
  moment,
  type Placed,
  type Plan,
  type Prep,
  type Violation,
} from "#engine/index.ts";
import { planFromPrep } from "#engine/plan-from-prep/plan-from-prep.ts";
import { randomPrep } from "../sittings/random-prep.ts";

/** Rules that a task may break when it alone moves; what a plan says of its own figures is another matter. */
const hard: ReadonlySet<Violation["rule"]> = new Set([
  "lag",
  "cook-overloaded",
  "outside-shift",
  "resource-over",
  "oven-clash",
  "oven-over",
  "outside-span",
]);

/** What the checker finds once one task stands some minutes later, all else as it is. */
const broken = (prep: Prep, plan: Plan, task: string, by: number): readonly Violation[] => {
  const moved = plan.placed.map(
    (p): Placed =>
      p.task === task
        ? {
            ...p,
            start: moment(p.start + by),
            end: moment(p.end + by),
            segments: p.segments.map((s) => moment(s + by)),
          }
        : p,
  );
  return checkFromPlan(prep, { ...plan, placed: moved }).filter((v) => hard.has(v.rule));
};

type Problem = { readonly prep: Prep; readonly plan: Plan };

/** The problem without one cause: the lag's side let out, the other task not there, the shift a minute longer. */
const withoutCause = ({ prep, plan }: Problem, task: string, cause: Cause): Problem => {
  const drop = (id: string): Problem => ({
    prep: {
      ...prep,
      tasks: prep.tasks.filter((t) => t.id !== id),
      lags: prep.lags.filter((l) => l.before !== id && l.after !== id),
    },
    plan: { ...plan, placed: plan.placed.filter((p) => p.task !== id) },
  });
  switch (cause.kind) {
    case "cook":
    case "resource":
    case "oven":
      return drop(cause.task);
    case "lag": {
      const between = (lag: Lag): boolean =>
        lag.reason === cause.reason &&
        lag[cause.side] === cause.minutes &&
        ((lag.before === task && lag.after === cause.task) ||
          (lag.after === task && lag.before === cause.task));
      const eased = (lag: Lag): Lag =>
        cause.side === "most"
          ? { ...lag, most: minutes((lag.most ?? 0) + 1) }
          : { ...lag, least: minutes(lag.least - 1) };
      return { plan, prep: { ...prep, lags: prep.lags.map((lag) => (between(lag) ? eased(lag) : lag)) } };
    }
    case "shift":
    case "open": {
      const crew = prep.crew.map((member) =>
        cause.kind === "open" || member.name === cause.cook
          ? {
              ...member,
              shifts: member.shifts.map((s) => ({
                from: moment(s.from === cause.at ? s.from - 1 : s.from),
                to: moment(s.to === cause.at ? s.to + 1 : s.to),
              })),
            }
          : member,
      );
      return { plan, prep: { ...prep, crew } };
    }
    default:
      return { prep, plan };
  }
};

const blocks = (cause: Cause): boolean =>
  ["cook", "resource", "oven", "lag", "shift", "open"].includes(cause.kind);
const sizeOf = (found: readonly Violation[]): number => found.length;

describe("the causes of a place", () => {
  it("are each in the way: without one, less is broken a minute later; without all, nothing is", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planFromPrep(prep, { tries: 20, seed: 3 }).value;
        for (const { task, because } of plan.placed) {
          for (const by of [1, -1]) {
            const causes = because.filter(
              (c) => blocks(c) && ("earlier" in c && c.earlier === true) === by < 0,
            );
            if (causes.length === 0) continue;
            const before = broken(prep, plan, task, by);
            for (const cause of causes) {
              seen++;
              const without = withoutCause({ prep, plan }, task, cause);
              const after = broken(without.prep, without.plan, task, by);
              expect({ task, cause, fewer: sizeOf(after) < sizeOf(before) }).toEqual({
                task,
                cause,
                fewer: true,
              });
            }
            const none = causes.reduce((problem, cause) => withoutCause(problem, task, cause), {
              prep,
              plan,
            });
            expect({ task, causes, left: broken(none.prep, none.plan, task, by) }).toEqual({
              task,
              causes,
              left: [],
            });
          }
        }
      }),
      { numRuns: 40 },
    );
    expect(seen).toBeGreaterThan(100);
  });

  it("are nothing hard where it is said that nothing holds a task, or that the plan would be worse", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planFromPrep(prep, { tries: 20, seed: 3 }).value;
        for (const { task, because } of plan.placed) {
          const free = because.find((c) => c.kind === "slack" || c.kind === "level" || c.kind === "calm");
          if (!free) continue;
          expect(broken(prep, plan, task, 1)).toEqual([]);
          if (free.kind === "slack") expect(broken(prep, plan, task, free.minutes)).toEqual([]);
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("the chain that pins a task", () => {
  it("goes from each task to one that its cause names, never twice, to something that is no task", () => {
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planFromPrep(prep, { tries: 10, seed: 5 }).value;
        const causes = new Map(plan.placed.map((p) => [p.task, p.because]));
        for (const { task } of plan.placed) {
          const links = chainOf(plan, task);
          expect(links[0]?.task).toBe(task);
          expect(new Set(links.map((link) => link.task)).size).toBe(links.length);
          links.forEach((link, i) => {
            expect(causes.get(link.task)).toContainEqual(link.cause);
            const next = links[i + 1];
            const named = "task" in link.cause ? link.cause.task : undefined;
            if (next) expect(named).toBe(next.task);
            // Tasks that hold each other end the chain where it comes round.
            else if (named !== undefined) expect(links.map((l) => l.task)).toContain(named);
          });
        }
      }),
      { numRuns: 40 },
    );
  });

  it("leads each whole course to its landing, and says truly for how long the cook is free before it", () => {
    let seen = 0;
    fc.assert(
      fc.property(randomPrep, (prep) => {
        const plan = planFromPrep(prep, { tries: 10, seed: 5 }).value;
        const places = new Map(plan.placed.map((p) => [p.task, p]));
        for (const chain of courseChains(prep, plan)) {
          const landing = plan.courses.find((c) => c.course === chain.course)!;
          if (landing.lateMinutes > 0 || chain.links.length === 0) continue;
          seen++;
          expect(chain.links.at(-1)?.cause).toMatchObject({ kind: "due", course: chain.course });
          const first = chain.links.flatMap(({ task }) => places.get(task)!).find((p) => p.cook !== null);
          const free = chain.slackMinutes ?? 0;
          if (!first || free === 0) continue;
          // With one unit of attention, whatever else the cook attends to would be too much beside it.
          const extra = {
            task: "extra",
            start: moment(first.start - free),
            end: first.start,
            segments: [moment(first.start - free)],
          };
          const busy = {
            ...prep.tasks[0]!,
            id: "extra",
            segments: [{ minutes: exactly(minutes(free)), attention: "hands", station: "hands", uses: [] }],
          } as const;
          const more = {
            ...prep,
            tasks: [...prep.tasks, busy],
            attention: { capacity: 1, hands: 1, mind: 1 },
          };
          const laid = {
            ...plan,
            placed: [...plan.placed, { ...extra, cook: first.cook, oven: null, because: [] }],
          };
          const found = checkFromPlan(more, laid).filter(
            (v) => v.tasks.includes("extra") && hard.has(v.rule),
          );
          expect(found).toEqual([]);
        }
      }),
      { numRuns: 40 },
    );
    expect(seen).toBeGreaterThan(10);
  });
});

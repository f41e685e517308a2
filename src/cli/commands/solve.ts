import { type ProjectAnswer, solveProject } from "#engine/index.ts";
import { printJson } from "#wire/print-json.ts";
import type { Problem } from "#wire/problem.ts";
import { isProjectFile, readProject } from "#wire/read-project.ts";
import { numberText } from "#words/number-text.ts";
import { solveHeadings, statusOfProject } from "#words/solve-text.ts";
import { type Command, commonOptions } from "../command.ts";
import { readInput, troubleText } from "../load-sitting.ts";
import { remarkOfProblem, showRemarks } from "../show/remarks.ts";
import { tableText } from "../show/table.ts";
import { exitCodes, type Result } from "../world.ts";
import { solveKitchen } from "./solve-kitchen.ts";

/** Seconds that a problem is worked on when nothing is said. */
const usualSeconds = 5;
/** Seconds, and the part of what is asked for, left for the last checks and for printing; and a part of what starting took. */
const reserve = { seconds: 0.06, part: 0.01, start: 0.3 };

/** Solves a scheduling problem given as a file. */
export const solveCommand: Command = {
  name: "solve",
  summary: "solve a scheduling problem: a kitchen as JSON, PSPLIB .sm, or RCPSP/max .sch",
  takes: "FILE",
  least: 1,
  most: 1,
  options: {
    seconds: { type: "string", value: "N", help: `how long to look (${usualSeconds} when left out)` },
    seed: { type: "string", value: "N", help: "where chance begins (1 when left out)" },
    json: commonOptions.json,
  },
  searches: true,
  about:
    "Prints the status, what the plan is worth with bounds and gap, when the first plan and the best one were\n" +
    "found, and the schedule. It ends sooner when there is proof that nothing is better.",
  examples: ["tamis solve kitchen.json --seconds 60", "tamis solve project.sm --json"],
  run: async ({ args, flag, value, world, errPaint }) => {
    const wrong = (message: string): Result => ({
      stdout: "",
      stderr: `tamis solve: ${message}\n`,
      code: exitCodes.unusable,
    });
    const seconds = Number(value("seconds") ?? usualSeconds);
    if (!(seconds > 0 && seconds <= 86_400))
      return wrong(`--seconds is "${value("seconds")}"; a number above 0 was looked for`);
    const seed = Number(value("seed") ?? 1);
    if (!Number.isInteger(seed)) return wrong(`--seed is "${value("seed")}"; a whole number was looked for`);
    const path = args[0] ?? "";
    const found = await readInput(path, world);
    if (typeof found === "string") return wrong(troubleText(path, found));
    // The clock runs from the start of the process, so that the whole of it stays within what was asked for.
    const begun = world.now();
    const endAsked = (): boolean => world.endAsked?.() === true;
    const left = Math.max(
      seconds / 2,
      seconds * (1 - reserve.part) - reserve.seconds - (1 + reserve.start) * begun,
    );
    const refused = (problems: readonly Problem[]): Result => ({
      stdout: "",
      stderr: showRemarks(problems.map(remarkOfProblem), () => found.text, true, errPaint),
      code: exitCodes.stopped,
    });
    if (!isProjectFile(path, found.text)) {
      const { solution, problems } = solveKitchen(path, found.text, {
        seconds: left,
        seed,
        now: world.now,
        endAsked,
        tell: (at, { unplaced, levels }) =>
          world.tell(betterLine(at, unplaced > 0 ? [] : levels.map((l) => l.value))),
      });
      world.tell(clearLine);
      if (solution === null) return refused(problems);
      return {
        stdout: flag("json") ? printJson(solution) : kitchenText(solution),
        stderr: "",
        code: codeOf(solution.status),
      };
    }
    const { project, problems } = readProject(path, found.text);
    if (project === null) return refused(problems);
    const from = world.now();
    const taken = (): number => Math.round((world.now() - from) * 1000) / 1000;
    let firstAt: number | null = null;
    let bestAt: number | null = null;
    let best: number | null = null;
    const answer = solveProject(project, {
      seed,
      steps: null,
      keepGoing: () => world.now() - from < left && !endAsked(),
      tell: (makespan) => {
        if (makespan === null || makespan === best) return;
        best = makespan;
        firstAt ??= taken();
        bestAt = taken();
        world.tell(betterLine(bestAt, [makespan]));
      },
    });
    world.tell(clearLine);
    const solution = {
      status: statusOfProject[answer.status],
      makespan: answer.makespan,
      bound: answer.bound,
      starts: answer.starts,
      firstAt,
      bestAt,
      seconds: taken(),
    };
    return {
      stdout: flag("json") ? printJson(solution) : projectText(solution, answer),
      stderr: "",
      code: codeOf(solution.status),
    };
  },
};

/** One line that takes the place of the one before it. */
const clearLine = "\r\u001b[K";
const betterLine = (at: number, levels: readonly number[]): string =>
  `${clearLine}${numberText(at, 1)} s  ${levels.length === 0 ? "–" : levels.join(", ")}`;

const codeOf = (status: string): number =>
  status === "infeasible" ? exitCodes.noPlan : status === "unknown" ? exitCodes.noneFound : exitCodes.fine;

type Timed = { readonly firstAt: number | null; readonly bestAt: number | null; readonly seconds: number };

const timesOf = ({ firstAt, bestAt, seconds }: Timed): readonly (readonly string[])[] => [
  [solveHeadings.firstAt, firstAt === null ? "–" : `${numberText(firstAt, 3)} s`],
  [solveHeadings.bestAt, bestAt === null ? "–" : `${numberText(bestAt, 3)} s`],
  [solveHeadings.seconds, `${numberText(seconds, 3)} s`],
];

const projectText = (solution: Timed & { readonly status: string }, answer: ProjectAnswer): string => {
  const { makespan, bound, starts } = answer;
  const gap =
    makespan === null || makespan === 0 ? "–" : `${numberText((100 * (makespan - bound)) / makespan, 2)} %`;
  return (
    tableText(
      [
        [solveHeadings.status, solution.status],
        [solveHeadings.makespan, makespan === null ? "–" : String(makespan)],
        [solveHeadings.bound, String(bound)],
        [solveHeadings.gap, gap],
        ...timesOf(solution),
      ],
      ["left", "left"],
    ) +
    (starts === null
      ? ""
      : `\n${solveHeadings.schedule}\n${tableText(
          starts.map((start, i) => [String(i + 1), String(start)]),
          ["right", "right"],
          "  ",
        )}`)
  );
};

const kitchenText = (solution: NonNullable<ReturnType<typeof solveKitchen>["solution"]>): string => {
  const { status, parts, bounds, conflict } = solution;
  const bound = (name: string): string => String(bounds?.[name] ?? "–");
  return (
    tableText(
      [
        [solveHeadings.status, status, ""],
        ...Object.entries(parts ?? {}).map(([name, amount]) => [
          name,
          String(amount),
          `${solveHeadings.bound} ${bound(name)}`,
        ]),
        ...timesOf(solution).map((row) => [...row, ""]),
      ],
      ["left", "left", "left"],
    ) +
    (conflict === undefined ? "" : `\n${solveHeadings.conflict}\n${conflict.map((c) => `  ${c}\n`).join("")}`)
  );
};

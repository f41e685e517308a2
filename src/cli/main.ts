import { parseArgs } from "node:util";
import { nearestName } from "#wire/nearest-name.ts";
import type { Command } from "./command.ts";
import { buyCommand } from "./commands/buy.ts";
import { compareCommand } from "./commands/compare.ts";
import { costCommand } from "./commands/cost.ts";
import { declareCommand } from "./commands/declare.ts";
import { eveningCommand } from "./commands/evening.ts";
import { importCommand } from "./commands/import.ts";
import { planCommand } from "./commands/plan.ts";
import { readCommand } from "./commands/read.ts";
import { replanCommand } from "./commands/replan.ts";
import { riskCommand } from "./commands/risk.ts";
import { safetyCommand } from "./commands/safety.ts";
import { scaleCommand } from "./commands/scale.ts";
import { serveCommand } from "./commands/serve.ts";
import { solveCommand } from "./commands/solve.ts";
import { writeUpCommand } from "./commands/write-up.ts";
import { commandHelp, mainHelp } from "./help.ts";
import { nodeWorld } from "./node-world.ts";
import { runBeside } from "./run-beside.ts";
import { paintFor } from "./show/paint.ts";
import { exitCodes, type Result, type World } from "./world.ts";

const commands: readonly Command[] = [
  readCommand,
  importCommand,
  scaleCommand,
  planCommand,
  buyCommand,
  costCommand,
  declareCommand,
  riskCommand,
  compareCommand,
  replanCommand,
  safetyCommand,
  eveningCommand,
  writeUpCommand,
  solveCommand,
  serveCommand,
];

/** Runs one command line: arguments and a world in, text and an exit code out. */
export const run = async (argv: readonly string[], world: World): Promise<Result> => {
  const [verb, ...rest] = argv;
  if (verb === undefined) return unusable(mainHelp(commands));
  if (verb === "--help" || verb === "-h" || verb === "help") {
    const about = commands.find((command) => command.name === rest[0]);
    return fine(about === undefined ? mainHelp(commands) : commandHelp(about));
  }
  const command = commands.find(({ name }) => name === verb);
  if (command === undefined) {
    const near = nearestName(
      verb,
      commands.map(({ name }) => name),
    );
    return unusable(
      `tamis: "${verb}" is no command${near === "" ? "" : `; write "${near}" if that is what you mean`}. tamis --help lists them.\n`,
    );
  }
  const parsed = parse(command, rest);
  if (typeof parsed === "string")
    return unusable(`tamis ${verb}: ${parsed}. tamis ${verb} --help says more.\n`);
  if (parsed.values["help"] === true) return fine(commandHelp(command));
  const { positionals } = parsed;
  if (positionals.length < command.least || positionals.length > command.most)
    return unusable(
      `tamis ${verb}: ${positionals.length} given where ${command.takes} was looked for. tamis ${verb} --help says more.\n`,
    );
  const result = await command.run({
    args: positionals,
    flag: (name) => parsed.values[name] === true,
    value: (name) => {
      const value = parsed.values[name];
      return typeof value === "string" ? value : null;
    },
    world,
    paint: paintFor(world.terminal.stdout, world.env),
    errPaint: paintFor(world.terminal.stderr, world.env),
  });
  const { terminal } = world;
  return {
    ...result,
    stdout: terminal.stdout ? forTerminal(result.stdout) : result.stdout,
    stderr: terminal.stderr ? forTerminal(result.stderr) : result.stderr,
  };
};

/** A card may hold codes that steer a terminal; on a terminal they become dots, colours apart. Pipes get what is there. */
const forTerminal = (text: string): string => text.replace(/(?!\p{Cc}\[[\d;]*m)[^\P{Cc}\t\n]/gu, "·");

type Parsed = { readonly values: Readonly<Record<string, unknown>>; readonly positionals: readonly string[] };

/** The options and operands, or what is wrong with them. */
const parse = (command: Command, args: readonly string[]): Parsed | string => {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        ...Object.fromEntries(Object.entries(command.options).map(([name, { type }]) => [name, { type }])),
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (error) {
    return (
      (error instanceof Error ? error.message : String(error)).split(/\.\s/)[0]?.replace(/\.$/, "") ?? ""
    );
  }
};

const fine = (stdout: string): Result => ({ stdout, stderr: "", code: exitCodes.fine });
const unusable = (stderr: string): Result => ({ stdout: "", stderr, code: exitCodes.unusable });

/** The program as the shell starts it. */
export const start = async (argv: readonly string[] = process.argv.slice(2)): Promise<void> => {
  // A reader such as "head" may close the pipe early; that is no fault.
  for (const stream of [process.stdout, process.stderr])
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EPIPE") process.exit(exitCodes.fine);
      throw error;
    });
  try {
    const searches = commands.find(({ name }) => name === argv[0])?.searches === true;
    const result = searches ? await runBeside(argv, nodeWorld()) : await run(argv, nodeWorld());
    process.stderr.write(result.stderr);
    process.stdout.write(result.stdout);
    process.exitCode = result.code;
  } catch (error) {
    process.stderr.write(
      `tamis: a fault of the program itself: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
    );
    process.exitCode = exitCodes.broken;
  }
};

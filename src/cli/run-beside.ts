import { Worker } from "node:worker_threads";
import type { Beside } from "./node-world.ts";
import { endedBy, exitCodes, type Result, type World } from "./world.ts";

/** What a thread is started with. */
export type BesideWork = { readonly argv: readonly string[]; readonly beside: Beside };

/**
 * Runs a command line in a thread of its own. A search never lets go of its thread, so signals are heard in this one:
 * the first asks the command to end and to show what it has, the second ends the process.
 */
export const runBeside = async (argv: readonly string[], world: World): Promise<Result> => {
  const end = new Int32Array(new SharedArrayBuffer(4));
  const beside: Beside = {
    terminal: world.terminal,
    input: argv.includes("-") ? await world.stdin() : new Uint8Array(),
    startedAt: performance.timeOrigin,
    end,
  };
  let code: number | null = null;
  const signals = ["SIGINT", "SIGTERM"] as const;
  const heard = (signal: (typeof signals)[number]): void => {
    if (code !== null) process.exit(endedBy[signal]);
    code = endedBy[signal];
    Atomics.store(end, 0, 1);
  };
  for (const signal of signals) process.on(signal, heard);
  try {
    const work: BesideWork = { argv, beside };
    const worker = new Worker(new URL("./beside.mjs", import.meta.url), { workerData: work });
    const result = await new Promise<Result>((resolve, reject) => {
      worker.once("message", resolve);
      worker.once("error", reject);
      worker.once("exit", () => reject(new Error("the thread of the search ended without an answer")));
    });
    const spoilt = result.code === exitCodes.unusable || result.code === exitCodes.broken;
    return code === null || spoilt ? result : { ...result, code };
  } finally {
    for (const signal of signals) process.off(signal, heard);
  }
};

// A thread of the command line: runs one command and hands its result back.
import { parentPort, workerData } from "node:worker_threads";
import { run } from "./main.ts";
import { worldBeside } from "./node-world.ts";
import type { BesideWork } from "./run-beside.ts";

const { argv, beside } = workerData as BesideWork;
parentPort?.postMessage(await run(argv, worldBeside(beside)));

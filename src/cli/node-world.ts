import { readdirSync, readFileSync, statSync, writeFileSync, writeSync } from "node:fs";
import { dirname, join } from "node:path";
import { decode } from "#wire/read-text.ts";
import { makeFolder } from "./make-folder.ts";
import { longestFile, type World } from "./world.ts";

/** What a thread beside the first cannot know of the process by itself. */
export type Beside = {
  readonly terminal: World["terminal"];
  /** What stands on standard input, when it is asked for. */
  readonly input: Uint8Array;
  /** When the process started, as `performance.timeOrigin` has it. */
  readonly startedAt: number;
  /** Its first place is set when the command is asked to end. */
  readonly end: Int32Array;
};

/** The machine as a thread beside the first sees it. */
export const worldBeside = ({ terminal, input, startedAt, end }: Beside): World => ({
  ...nodeWorld(),
  now: () => (performance.timeOrigin - startedAt + performance.now()) / 1000,
  tell: (text) => {
    if (terminal.stderr) writeSync(2, text);
  },
  stdin: async () => input,
  endAsked: () => Atomics.load(end, 0) !== 0,
  terminal,
});

/** The machine as it is. */
export const nodeWorld = (): World => ({
  read: (path) => {
    try {
      const facts = statSync(path);
      if (facts.isDirectory()) return "folder";
      if (facts.size > longestFile) return "too-long";
      return decode(readFileSync(path));
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      return code === "EACCES" || code === "EPERM" ? "denied" : "missing";
    }
  },
  list: (folder) => {
    try {
      return readdirSync(folder, { withFileTypes: true })
        .filter((entry) => !entry.isDirectory())
        .map((entry) => entry.name);
    } catch {
      return null;
    }
  },
  walk: (folder) => {
    try {
      return readdirSync(folder, { withFileTypes: true, recursive: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name))
        .sort();
    } catch {
      return null;
    }
  },
  write: (path, text) => {
    try {
      makeFolder(dirname(path));
      writeFileSync(path, text, { flag: "wx" });
      return "written";
    } catch (error) {
      return (error as NodeJS.ErrnoException).code === "EEXIST" ? "taken" : "denied";
    }
  },
  now: () => performance.now() / 1000,
  tell: (text) => {
    if (process.stderr.isTTY === true) process.stderr.write(text);
  },
  stdin: async () => {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return new Uint8Array(Buffer.concat(chunks));
  },
  env: process.env,
  terminal: { stdout: process.stdout.isTTY === true, stderr: process.stderr.isTTY === true },
});

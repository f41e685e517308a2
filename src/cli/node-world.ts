import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { decode } from "#wire/read-text.ts";
import { longestFile, type World } from "./world.ts";

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
      mkdirSync(dirname(path), { recursive: true });
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

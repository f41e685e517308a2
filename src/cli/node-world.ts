import { readdirSync, readFileSync, statSync } from "node:fs";
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
  stdin: async () => {
    const chunks: Buffer[] = [];
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return new Uint8Array(Buffer.concat(chunks));
  },
  env: process.env,
  terminal: { stdout: process.stdout.isTTY === true, stderr: process.stderr.isTTY === true },
});

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the project. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Runs a program with its output shown; on Windows npm is a script and needs a shell. */
export const run = (program, args, options = {}) =>
  spawnSync(program, args, {
    cwd: root,
    stdio: "inherit",
    shell: process.platform === "win32" && program === "npm",
    ...options,
  }).status ?? 1;

/** Installs what package-lock.json names, when it is not there. Ends the process when that fails. */
export const ensureInstalled = () => {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19))
    fail(`Node ${process.versions.node} is too old; 20.19 or newer is needed.`);
  if (!existsSync(join(root, "node_modules/.package-lock.json"))) {
    console.log("Installing what is needed (npm ci) …");
    if (run("npm", ["ci", "--no-audit", "--no-fund"]) !== 0)
      fail("npm ci failed; its own words stand above.");
  }
  // npm may be set not to run install scripts; the database is then there without its native part.
  if (!opensDatabase()) {
    run("npm", ["rebuild", "better-sqlite3"]);
    if (!opensDatabase())
      fail(
        "The database (better-sqlite3) cannot be loaded. Where no ready-made part can be fetched for this system,\n" +
          "building it needs Python 3, make and a C++ compiler; then: npm rebuild better-sqlite3",
      );
  }
};

/** Asked in a process of its own, because a failed load cannot be tried again in the same one. */
const opensDatabase = () =>
  spawnSync(process.execPath, ["-e", 'new (require("better-sqlite3"))(":memory:").close()'], {
    cwd: root,
    stdio: "ignore",
  }).status === 0;

export const fail = (message) => {
  console.error(message);
  process.exit(1);
};

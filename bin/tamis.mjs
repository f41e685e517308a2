#!/usr/bin/env node
// Starts the command line; in a clone whose sources are newer than the last build, builds it first.
import { existsSync, readdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const built = join(root, "dist/cli/main.mjs");

/** True when a file of the folder, or the folder itself, changed after the moment. */
const newerThan = (folder, moment) =>
  readdirSync(folder, { withFileTypes: true }).some((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? newerThan(path, moment) : statSync(path).mtimeMs > moment;
  });

const isStale = (file) => {
  if (!existsSync(file)) return true;
  const moment = statSync(file).mtimeMs;
  return ["src", "data"].some((name) => {
    const folder = join(root, name);
    return existsSync(folder) && newerThan(folder, moment);
  });
};

const staleCli = isStale(built);
const staleWeb = process.argv[2] === "serve" && isStale(join(root, "dist/web/main.js"));
if (staleCli || staleWeb) {
  const { bundleCli, bundleWeb } = await import("../scripts/bundle.mjs");
  if (staleCli) await bundleCli();
  if (staleWeb) await bundleWeb();
}
const { start } = await import(pathToFileURL(built).href);
await start();

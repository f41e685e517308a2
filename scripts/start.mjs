// Installs what is missing, builds, shows the evening of the sitting in demo/, and serves it on loopback.
import { readdirSync } from "node:fs";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { ensureInstalled, fail, root } from "./run.mjs";

ensureInstalled();
const { bundleCli, bundleWeb } = await import("./bundle.mjs");
await bundleCli();
await bundleWeb();

const demos = readdirSync(join(root, "demo"), { withFileTypes: true }).filter((entry) => entry.isDirectory());
const demo = demos[0];
if (demo === undefined || demos.length > 1) fail("One folder was looked for in demo/.");
const folder = relative(process.cwd(), join(root, "demo", demo.name)) || ".";

const { start } = await import(pathToFileURL(join(root, "dist/cli/main.mjs")).href);
await start(["evening", folder]);
// Warnings about the demo's words do not keep the app from starting.
process.exitCode = 0;
console.log();
await start([
  "serve",
  folder,
  "--data",
  process.env.TAMIS_DATA ?? join(root, ".tamis"),
  ...process.argv.slice(2),
]);

// Timed runs against bench/budgets.json, on the code as it ships: bundled, in plain Node.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { build } from "esbuild";
import { bundleWeb, root } from "./bundle.mjs";

const names = readdirSync(`${root}/bench`)
  .filter((name) => name.endsWith(".ts"))
  .map((name) => name.replace(/\.ts$/, ""));
await bundleWeb();
await build({
  absWorkingDir: root,
  entryPoints: Object.fromEntries(names.map((name) => [name, `bench/${name}.ts`])),
  outdir: "dist/bench",
  outExtension: { ".js": ".mjs" },
  bundle: true,
  platform: "node",
  format: "esm",
  external: ["better-sqlite3", "playwright-core"],
  logLevel: "warning",
  banner: {
    js: 'import { createRequire as tamisRequire } from "node:module"; const require = tamisRequire(import.meta.url);',
  },
});
const [name = "run", ...rest] = process.argv.slice(2);
process.exitCode =
  spawnSync(process.execPath, [`dist/bench/${name}.mjs`, ...rest], { cwd: root, stdio: "inherit" }).status ??
  1;

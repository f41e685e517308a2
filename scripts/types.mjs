// Checks the types: each part by its own fences first, then the whole.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(fileURLToPath(import.meta.url), "../..");
const tsc = join(root, "node_modules/typescript/bin/tsc");
let failed = false;
for (const project of ["src/engine", "src/words", "src/wire", "src/web", "."]) {
  const { status } = spawnSync(process.execPath, [tsc, "-p", project], { cwd: root, stdio: "inherit" });
  if (status !== 0) failed = true;
}
process.exit(failed ? 1 : 0);

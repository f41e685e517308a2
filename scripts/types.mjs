// Checks the types: each part by its own fences, and the whole, two at a time.
import { spawn } from "node:child_process";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const tsc = join(root, "node_modules/typescript/bin/tsc");

const check = (project) =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [tsc, "-p", project], {
      cwd: root,
      stdio: ["ignore", "pipe", "inherit"],
    });
    let output = "";
    child.stdout.on("data", (chunk) => {
      output += chunk;
    });
    child.on("close", (status) => {
      if (output !== "") console.log(`${project}:\n${output}`);
      resolve(status === 0);
    });
  });

/** Checks one after another; the order is that of the list. */
const checkAll = async (projects) => {
  let passed = true;
  for (const project of projects) passed = (await check(project)) && passed;
  return passed;
};

const passed = await Promise.all([
  checkAll(["."]),
  checkAll(["src/engine", "src/words", "src/wire", "src/web"]),
]);
process.exit(passed.every(Boolean) ? 0 : 1);

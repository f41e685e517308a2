import { spawn } from "node:child_process";
import { expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { lunch, worldOf } from "./memory-world.ts";

// Exit codes as docs/formats.md has them; 128 and the number of the signal as POSIX shells have it (XCU 2.8.2).

/** Plans the demo; the signal comes after so many seconds. */
const planned = (after: number) =>
  new Promise<{ readonly code: number | null; readonly stdout: string }>((resolve) => {
    const child = spawn(process.execPath, ["bin/tamis.mjs", "plan", "demo/lantern-supper"]);
    let stdout = "";
    child.stdout.on("data", (chunk) => {
      stdout += chunk;
    });
    child.on("close", (code) => resolve({ code, stdout }));
    setTimeout(() => child.kill("SIGINT"), after * 1000);
  });

it("on Ctrl-C a plan of a sitting ends with what it has, and exits with 130", {
  timeout: 120_000,
}, async () => {
  // How soon it hears, and how soon it is done, hangs on how busy the machine is.
  for (let after = 0.4; after < 30; after *= 1.5) {
    const { code, stdout } = await planned(after);
    if (code === null) continue;
    expect(stdout).toContain("Courses");
    if (code === 130) return;
  }
  throw new Error("it never heard the signal");
});

it("asked to end from the first, a plan of a sitting still has every course", async () => {
  const ended = await run(["plan", "lunch"], worldOf(lunch, { endAsked: () => true }));
  expect(ended.stdout).toContain("Soup");
  expect(ended.stdout).toContain("Rice");
});

it("says so where cards are brought to a folder that may not be written in", async () => {
  const card = String(lunch["lunch/cards/lemon-rice.txt"]);
  const { code, stderr } = await run(
    ["import", "rice.txt", "--into", "sealed"],
    worldOf({ "rice.txt": card }),
  );
  expect(code).toBe(2);
  expect(stderr).toMatch(/^tamis: sealed\/.*: this cannot be written/m);
});

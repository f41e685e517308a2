import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { smallSitting } from "../small-sitting.ts";

describe("the program", () => {
  it("builds itself, prints nothing of that, and ends with the exit code", async () => {
    const folder = mkdtempSync(join(tmpdir(), "tamis-"));
    mkdirSync(join(folder, "cards"));
    for (const [name, text] of Object.entries(smallSitting)) writeFileSync(join(folder, name), text);
    const program = promisify(execFile);
    const read = await program(process.execPath, [
      "bin/tamis.mjs",
      "read",
      "--json",
      join(folder, "cards/lemon-rice.txt"),
    ]);
    expect(JSON.parse(read.stdout)).toMatchObject({ title: "Lemon rice" });
    const wrong = await program(process.execPath, ["bin/tamis.mjs", "plan", join(folder, "none.yaml")]).catch(
      (error: { code: number; stdout: string; stderr: string }) => error,
    );
    expect(wrong).toMatchObject({ code: 2, stdout: "" });
    rmSync(folder, { recursive: true });
  });
});

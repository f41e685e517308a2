import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { worldOf } from "./memory-world.ts";

describe("the command line itself", () => {
  it.each([
    [[], 2, "stderr", "Usage: tamis"],
    [["--help"], 0, "stdout", "Exit codes"],
    [["help", "plan"], 0, "stdout", "Usage: tamis plan SITTING"],
    [["plan", "--help"], 0, "stdout", "--why"],
    [["raed", "x"], 2, "stderr", 'write "read"'],
    [["read"], 2, "stderr", "CARD…"],
    [["read", "--nonsense", "x"], 2, "stderr", "--nonsense"],
    [["plan", "a", "b"], 2, "stderr", "SITTING"],
    [["read", "--region", "mars", "x"], 2, "stderr", "mars"],
    [["serve", "--port", "x"], 2, "stderr", "--port"],
    [["serve", "nowhere"], 2, "stderr", "no such folder"],
  ] as const)("answers %j with %i", async (argv, code, stream, text) => {
    const result = await run(argv, worldOf({}));
    expect(result.code).toBe(code);
    expect(result[stream]).toContain(text);
    expect(result[stream === "stdout" ? "stderr" : "stdout"]).toBe("");
  });

  it.each([
    "read",
    "import",
    "plan",
    "buy",
    "cost",
    "declare",
    "safety",
    "evening",
    "write-up",
    "serve",
    "risk",
    "compare",
  ])("has help with examples for %s", async (verb) => {
    const { stdout, code } = await run([verb, "--help"], worldOf({}));
    expect(code).toBe(0);
    expect(stdout).toContain("Examples\n  tamis ");
  });
});

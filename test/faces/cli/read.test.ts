import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import type { World } from "#cli/world.ts";
import { smallSitting } from "../small-sitting.ts";
import { type Files, lunch, worldOf } from "./memory-world.ts";

const formats = readFileSync("docs/formats.md", "utf8");
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("read", () => {
  it("gives JSON whose every key stands in the page on formats", async () => {
    const { stdout } = await run(["read", "--json", "lunch/cards/nettle-soup.txt"], worldOf(lunch));
    const keys = new Set<string>();
    const gather = (value: unknown): void => {
      if (typeof value !== "object" || value === null) return;
      for (const [key, inner] of Object.entries(value)) {
        if (!Array.isArray(value)) keys.add(key);
        // Facts are those of each code, told on its own page.
        if (key !== "facts") gather(inner);
      }
    };
    gather(JSON.parse(stdout));
    expect(keys.size).toBeGreaterThan(40);
    expect([...keys].filter((key) => !new RegExp(`\\b${key}\\b`).test(formats))).toEqual([]);
  });

  it("prints the dish, and the findings elsewhere", async () => {
    const { stdout, stderr, code } = await run(["read", "lunch/cards/nettle-soup.txt"], worldOf(lunch));
    expect(code).toBe(0);
    expect(stdout).toContain("Nettle soup (Serves 4)");
    expect(stdout).toContain("sweat");
    expect(stdout).not.toContain("warn:");
    for (const line of stderr.split("\n").filter((l) => l.includes("warn:")))
      expect(line).toMatch(/^lunch\/cards\/nettle-soup\.txt:\d+:\d+: warn: .+ \[[a-z-]+\]$/);
  });

  it("gives one object for one card, and a list for several", async () => {
    const one = await run(["read", "--json", "lunch/cards/lemon-rice.txt"], worldOf(lunch));
    expect(JSON.parse(one.stdout)).toMatchObject({ title: "Lemon rice", file: "lunch/cards/lemon-rice.txt" });
    const two = await run(
      ["read", "--json", "lunch/cards/lemon-rice.txt", "lunch/cards/nettle-soup.txt"],
      worldOf(lunch),
    );
    expect(JSON.parse(two.stdout)).toHaveLength(2);
  });

  it("knows the foods of a list, says what nobody said of them, and refuses a list that is wrong", async () => {
    const input = bytes("Dip\n\nServes 2\n\n30 ml barn zindra\n\n1. Stir it.\n");
    const list = (text: string): World =>
      worldOf({ "foods.yaml": `foods: [{name: barn zindra, density: 1.1, diet: none${text}}]` }, { input });
    const silent = await run(["read", "--foods", "foods.yaml", "-"], list(""));
    expect(silent.stdout).toContain("33 g");
    expect(silent.stderr).toContain("[allergens-unstated]");
    const said = await run(["read", "--foods", "foods.yaml", "-"], list(", allergens: none"));
    expect(said.stderr).not.toContain("allergens-unstated");
    const wrong = await run(["read", "--foods", "foods.yaml", "-"], list(", alergens: none"));
    expect([wrong.code, wrong.stdout]).toEqual([2, ""]);
    expect(wrong.stderr).toContain("allergens");
    const scaled = await run(
      ["scale", "--foods", "foods.yaml", "--covers", "20", "-"],
      list(", allergens: none"),
    );
    expect(scaled.stdout).toContain("barn zindra");
    expect(scaled.stderr).not.toContain("food-unknown");
    const written = await run(["write-up", "--foods", "foods.yaml", "-"], list(", allergens: [mustard]"));
    expect(written.stdout.toLowerCase()).toContain("mustard");
    const gone = await run(["read", "--foods", "none.yaml", "-"], list(""));
    expect([gone.code, gone.stderr]).toEqual([2, "tamis: none.yaml: there is no such file\n"]);
  });

  it("reads the standard input", async () => {
    const input = bytes(smallSitting["cards/lemon-rice.txt"] ?? "");
    const { stdout, stderr } = await run(["read", "-"], worldOf({}, { input }));
    expect(stdout).toContain("Lemon rice");
    expect(stderr).not.toContain("undefined");
  });

  it("marks the words of a finding beneath their line", async () => {
    const text = "Soup\n\nServes 4\n\n2 onions\nsome frobnicated zorp\n\nSweat the onions for 10 minutes.\n";
    const { stderr } = await run(["read", "a.txt"], worldOf({ "a.txt": text }));
    expect(stderr).toMatch(/a\.txt:6:\d+: warn: .*\n {4}6 \| some frobnicated zorp\n {6}\| *\^+\n/);
  });

  it("counts notes, and shows them when asked", async () => {
    const files = {
      "a.txt": "Soup\n\nServes 4\n\na good slosh of cider\n\nSimmer the cider for 10 minutes.\n",
    };
    const quiet = await run(["read", "a.txt"], worldOf(files));
    expect(quiet.stderr).toContain("--notes shows them");
    expect(quiet.stderr).not.toContain(": note:");
    expect((await run(["read", "--notes", "a.txt"], worldOf(files))).stderr).toContain(": note:");
  });

  it("colours only a terminal, and not where NO_COLOR is set (no-color.org)", async () => {
    const files = { "a.txt": "" };
    const colour = "\u001b[";
    const terminal = { stdout: true, stderr: true };
    expect((await run(["read", "a.txt"], worldOf(files))).stderr).not.toContain(colour);
    expect((await run(["read", "a.txt"], worldOf(files, { terminal }))).stderr).toContain(colour);
    expect(
      (await run(["read", "a.txt"], worldOf(files, { terminal, env: { NO_COLOR: "1" } }))).stderr,
    ).not.toContain(colour);
    expect(
      (await run(["read", "a.txt"], worldOf(files, { terminal, env: { NO_COLOR: "" } }))).stderr,
    ).toContain(colour);
  });

  const noise = new Uint8Array(10_000_000).map((_, i) => (i * 2654435761) >>> 24);
  it.each([
    ["an empty file", { "x.txt": "" }, 1, "text-empty"],
    ["blanks", { "x.txt": " \n\n \t" }, 1, "text-empty"],
    ["ten megabytes of noise", { "x.txt": noise }, 1, "text-not-readable"],
    ["ten megabytes of words", { "x.txt": "stir the pot ".repeat(800_000) }, 1, "text-not-readable"],
    [
      "a binary",
      { "x.txt": new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0, 0, 1, 2, 255]) },
      1,
      "text-not-readable",
    ],
    ["a card without a method", { "x.txt": "Salad\n\nServes 2\n\n200 g leaves\n" }, 0, "method-missing"],
    ["a folder", { "x.txt/a": "" }, 2, "folder"],
    ["no file", {}, 2, "no such file"],
  ] as readonly (readonly [string, Files, number, string])[])(
    "says what is wrong with %s",
    async (_, files, code, word) => {
      const result = await run(["read", "x.txt"], worldOf(files));
      expect(result.stderr).toContain("x.txt");
      expect(result.stderr).toContain(word);
      expect(result.code).toBe(code);
      expect(result.stderr.length).toBeLessThan(20_000);
      // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what must not get out.
      expect(result.stderr).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
    },
  );

  it("goes on with the other cards when one is missing", async () => {
    const { stdout, stderr, code } = await run(
      ["read", "none.txt", "lunch/cards/lemon-rice.txt"],
      worldOf(lunch),
    );
    expect(stdout).toContain("Lemon rice");
    expect(stderr).toContain("none.txt: there is no such file");
    expect(code).toBe(2);
  });

  it("reads Windows-1252 and UTF-16, and says so for the first", async () => {
    const text = "Crème brûlée\n\nServes 2\n";
    const latin = Uint8Array.from(text, (c) => c.codePointAt(0) ?? 0);
    const first = await run(["read", "a.txt"], worldOf({ "a.txt": latin }));
    expect(first.stdout).toContain("Crème brûlée");
    expect(first.stderr).toContain("Windows-1252");
    const wide = new Uint8Array([0xff, 0xfe, ...Buffer.from(text, "utf16le")]);
    expect((await run(["read", "a.txt"], worldOf({ "a.txt": wide }))).stdout).toContain("Crème brûlée");
  });

  it("lets no card steer the terminal", async () => {
    const world = worldOf({
      "soup.txt": "Soup\u001b[2J\u001b]0;x\u0007\r of leeks\n\n2 leeks\n\nBoil the leeks.\n",
    });
    const seen = await run(["read", "soup.txt"], { ...world, terminal: { stdout: true, stderr: true } });
    expect(seen.stdout + seen.stderr).not.toMatch(/(?!\p{Cc}\[[\d;]*m)[^\P{Cc}\n]/u);
    expect(seen.stdout).toContain("·[2J");
  });
});

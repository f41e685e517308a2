import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { changed, smallSitting } from "../small-sitting.ts";
import { type Files, lunch, worldOf } from "./memory-world.ts";

const formats = readFileSync("docs/formats.md", "utf8");

describe("commands on a sitting", () => {
  it.each([
    ["plan", "Bea"],
    ["plan", "due 13:00"],
    ["buy", "Corner shop"],
    ["buy", "Total £"],
    ["cost", "Per cover"],
    ["declare", "Ada (vegan)"],
    ["declare", "\n  Milk (holds it): butter\n"],
    ["declare", "no promise of absence"],
    ["safety", "Your local food code"],
    ["evening", "Cost per cover"],
    ["risk", "How sure each course is"],
  ])("%s shows %s", async (verb, text) => {
    const { stdout, code, stderr } = await run([verb, "lunch/sitting.yaml"], worldOf(lunch));
    expect(stdout).toContain("Lunch in the potting shed: Saturday 9 May 2026, Potting shed, 4 covers");
    expect(stdout).toContain(text);
    expect(code, stderr).toBe(0);
    for (const line of stdout.split("\n")) expect(line).toBe(line.trimEnd());
  });

  it.each([
    ["plan", "plan"],
    ["buy", "purchase"],
    ["cost", "cost"],
    ["declare", "declaration"],
    ["safety", "safety"],
    ["evening", "evening"],
    ["risk", "risk"],
  ])("%s gives JSON, of the shape that the page on formats tells", async (verb, part) => {
    const { stdout } = await run([verb, "--json", "lunch/sitting.yaml"], worldOf(lunch));
    const shape = JSON.parse(stdout);
    expect(shape.problems).toEqual([]);
    expect(Array.isArray(shape.findings)).toBe(true);
    const told = new RegExp(`^\\| \`${verb}\` \\| \`${part}: \\{([^}]*)\\}\``, "m").exec(formats)?.[1] ?? "";
    expect(told.match(/\w+/g)?.toSorted()).toEqual(Object.keys(shape[part]).toSorted());
  });

  it("says with each task why it stands there", async () => {
    const { stdout } = await run(["plan", "--why", "lunch/sitting.yaml"], worldOf(lunch));
    expect(stdout).toContain("because ");
    expect((await run(["plan", "lunch/sitting.yaml"], worldOf(lunch))).stdout).not.toContain("because ");
  });

  it("does not let a course land of which a plate has no place", async () => {
    const nobody = (smallSitting["sitting.yaml"] ?? "").replace(/crew:[\s\S]*/, "crew: []\n");
    const { stdout } = await run(["plan", "lunch"], worldOf({ ...lunch, "lunch/sitting.yaml": nobody }));
    expect(stdout).toContain("does not land whole");
    expect(stdout).not.toContain("lands 13:00");
  });

  it("weighs nothing where no course lands whole", async () => {
    const files = Object.entries(lunch).map(([name, text]): [string, string | Uint8Array] => [
      name,
      name.endsWith("sitting.yaml") ? String(text).replace(/^crew:\n(?:[ -].*\n)*/m, "crew: []\n") : text,
    ]);
    const { stdout, code } = await run(["risk", "lunch"], worldOf(Object.fromEntries(files)));
    expect(stdout).toContain("No course lands whole");
    expect(stdout).not.toContain("over 99");
    expect(code).toBe(1);
  });

  it("takes a folder for the sitting in it", async () => {
    expect((await run(["cost", "lunch"], worldOf(lunch))).code).toBe(0);
  });

  it("never prints that something is safe or free from something", async () => {
    for (const verb of ["plan", "buy", "cost", "declare", "safety", "evening"]) {
      const { stdout, stderr } = await run([verb, "--notes", "lunch"], worldOf(lunch));
      expect(stdout + stderr).not.toMatch(/\b(is|are) safe\b|safe to eat|[a-z]+-free\b|guarante/i);
    }
  });

  const without = (files: Readonly<Record<string, string | null>>): Files =>
    Object.fromEntries(Object.entries(changed(files)).map(([name, text]) => [`lunch/${name}`, text]));
  const sitting = smallSitting["sitting.yaml"] ?? "";
  it.each([
    [
      "an unknown dish",
      { "sitting.yaml": sitting.replace("[lemon-rice]", "[lemon-rise]") },
      1,
      /sitting\.yaml:18:14: stop: .*lemon-rise/,
    ],
    [
      "an unknown key",
      { "sitting.yaml": sitting.replace("covers", "cover") },
      1,
      /sitting\.yaml:6:1: stop: .*covers/,
    ],
    ["no kitchen file", { "kitchen.yaml": null }, 1, /sitting\.yaml:10:10: stop: .*kitchen\.yaml/],
    ["an empty sitting", { "sitting.yaml": "" }, 1, /sitting\.yaml:1:1: stop: /],
    ["a binary sitting", { "sitting.yaml": "a\u0000b" }, 1, /sitting\.yaml:1:1: stop: /],
    [
      "a price that is none",
      { "shop.csv": "supplier,item,food,size,unit,price\nA,B,onion,1,kg,dear\n" },
      0,
      /shop\.csv:2:16: warn: .*dear/,
    ],
    [
      "no oven for a roast",
      {
        "cards/lemon-rice.txt":
          "Roast roots\n\nServes 4\n\n1 kg carrots\n\nRoast the carrots at 200°C for 40 minutes.\n",
      },
      1,
      /stop: .*oven/,
    ],
    ["nobody on shift", { "sitting.yaml": sitting.replace(/crew:[\s\S]*/, "crew: []\n") }, 1, /stop: /],
    ["no sitting", { "sitting.yaml": null }, 2, /no such file/],
  ] as readonly (readonly [string, Readonly<Record<string, string | null>>, number, RegExp])[])(
    "says what is wrong with %s",
    async (_, files, code, words) => {
      const result = await run(["plan", "lunch/sitting.yaml"], worldOf(without(files)));
      expect(result.stderr).toMatch(words);
      expect(result.code).toBe(code);
      const json = await run(["plan", "--json", "lunch/sitting.yaml"], worldOf(without(files)));
      if (code < 2) expect(JSON.parse(json.stdout)).toHaveProperty("plan");
    },
  );
});

describe("what each command tells", () => {
  const idle = {
    ...lunch,
    "lunch/sitting.yaml": (smallSitting["sitting.yaml"] ?? "").replace(/crew:[\s\S]*/, "crew: []\n"),
    "lunch/shop.csv": "supplier,item,food,size,unit,price\n",
  };
  it.each([
    ["plan", 1, ["nobody-on-shift"], ["prices-none", "swap-missing"]],
    ["buy", 0, ["prices-none"], ["nobody-on-shift"]],
    ["cost", 0, ["prices-none"], ["nobody-on-shift"]],
    ["declare", 0, [], ["nobody-on-shift", "prices-none"]],
  ] as const)("%s tells what bears on it", async (verb, code, told, untold) => {
    const result = await run([verb, "lunch"], worldOf(idle));
    expect(result.code).toBe(code);
    for (const finding of told) expect(result.stderr).toContain(`[${finding}]`);
    for (const finding of untold) expect(result.stderr).not.toContain(`[${finding}]`);
    const { findings } = JSON.parse((await run([verb, "--json", "lunch"], worldOf(idle))).stdout);
    expect(findings.map((f: { code: string }) => f.code)).toEqual(
      expect.arrayContaining(["nobody-on-shift", "prices-none"]),
    );
  });
});

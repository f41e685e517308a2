import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { run } from "#cli/main.ts";
import { tableText, widthOf, wrap } from "#cli/show/table.ts";
import type { World } from "#cli/world.ts";
import { decode } from "#wire/read-text.ts";
import { changed, listIn, smallSitting } from "./small-sitting.ts";

type Files = Readonly<Record<string, string | Uint8Array>>;

/** A machine in memory. */
const worldOf = (files: Files, more: Partial<World> & { readonly input?: Uint8Array } = {}): World => ({
  read: (path) => {
    const found = files[path];
    if (found === undefined) return listIn(files, path) === null ? "missing" : "folder";
    return typeof found === "string" ? { text: found, encoding: "utf-8" } : decode(found);
  },
  list: (folder) => listIn(files, folder),
  walk: (folder) => {
    const inside = Object.keys(files).filter((path) => path.startsWith(`${folder}/`));
    return inside.length === 0 ? null : inside.sort();
  },
  write: () => "denied",
  now: () => performance.now() / 1000,
  tell: () => undefined,
  stdin: async () => more.input ?? new Uint8Array(),
  env: {},
  terminal: { stdout: false, stderr: false },
  ...more,
});

const lunch: Files = Object.fromEntries(
  Object.entries(smallSitting).map(([name, text]) => [`lunch/${name}`, text]),
);
const formats = readFileSync("docs/formats.md", "utf8");
const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

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
});

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

  it("scales a card to so many covers, in the kitchen's own pans, and says why", async () => {
    const world = worldOf({ ...lunch, "k.yaml": lunch["lunch/kitchen.yaml"] ?? "" });
    const soup = Object.keys(lunch).find((path) => path.includes("/cards/"))!;
    const read = JSON.parse((await run(["read", "--json", soup], world)).stdout);
    const own = JSON.parse((await run(["scale", "--json", soup], world)).stdout).sheet;
    expect(own.factor).toBe(1);
    const large = JSON.parse(
      (await run(["scale", "--json", "--covers", "120", "--kitchen", "k.yaml", soup], world)).stdout,
    ).sheet;
    expect(large.portions).toBe(120);
    expect(large.lines.length).toBe(read.ingredients.length);
    for (const line of large.lines) {
      const before = own.lines.find((l: { ingredient: number }) => l.ingredient === line.ingredient);
      if (line.amount === null) continue;
      const times = line.adjusted.reduce((p: number, a: { factor: number }) => p * a.factor, large.factor);
      expect(Math.abs(line.amount.exact / (before.amount.exact * times) - 1)).toBeLessThan(1e-3);
      expect(Math.abs(line.amount.value / line.amount.exact - 1)).toBeLessThanOrEqual(0.0146);
    }
    const text = (await run(["scale", "--covers", "120", "--kitchen", "k.yaml", "--why", soup], world))
      .stdout;
    expect(text).toContain("120 portions");
    expect(text).toContain("card: ");
  });

  it.each([
    [["--covers", "none"], "covers"],
    [["--covers", "0"], "covers"],
    [["--kitchen", "nowhere.yaml"], "nowhere.yaml"],
    [["--region", "mars"], "mars"],
  ])("does not scale with %j", async (options, said) => {
    const soup = Object.keys(lunch).find((path) => path.includes("/cards/"))!;
    const { stderr, code } = await run(["scale", ...options, soup], worldOf(lunch));
    expect(stderr).toContain(said);
    expect(code).toBe(2);
  });

  it("compares variants, each with its own keys of sitting and kitchen", async () => {
    const variants =
      "- name: eight covers\n  covers: 8\n- name: one burner\n  kitchen:\n    burners: {count: 1, kilowatts: 2}\n";
    const world = worldOf({ ...lunch, "what-if.yaml": variants });
    const { stdout, code, stderr } = await run(["compare", "--json", "lunch", "what-if.yaml"], world);
    expect(stderr).toBe("");
    expect(code).toBe(0);
    const rows = JSON.parse(stdout).variants;
    expect(rows.map((row: { name: string; covers: number }) => [row.name, row.covers])).toEqual([
      ["as it is", 4],
      ["eight covers", 8],
      ["one burner", 4],
    ]);
    expect(rows[1].purchaseTotal).toBeGreaterThanOrEqual(rows[0].purchaseTotal);
    expect(rows[1].handsMinutes).toBeGreaterThan(rows[0].handsMinutes);
    const text = await run(["compare", "lunch", "what-if.yaml"], world);
    expect(text.stdout).toContain("eight covers");
  });

  it("plans the rest of a night, and says which words it does not know", async () => {
    const plan = JSON.parse((await run(["plan", "--json", "lunch"], worldOf(lunch))).stdout).plan;
    const task = plan.tasks.find((t: { cook: string | null }) => t.cook !== null);
    const now = task.start.at.replace("T", " ");
    const night = (text: string) => worldOf({ ...lunch, "night.yaml": text });
    const fine = await run(["replan", "--json", "lunch", "night.yaml"], night(`now: "${now}"\n`));
    expect(JSON.parse(fine.stdout).replan.changes).toEqual([]);
    const late = `now: "${now}"\nnot begun: ["${task.id}"]\n`;
    expect((await run(["replan", "lunch", "night.yaml"], night(late))).code).toBe(0);
    for (const [text, said] of [
      [`now: "${now}"\nlate: {nothing of the kind: 5}\n`, "nothing of the kind"],
      ['now: "soon"\n', "now"],
      ["late: {}\n", "now"],
      [`now: "${now}"\nlate: {"${task.id}": -5}\n`, "minutes from 0 to 1440"],
      [`now: "${now}"\nnot begun: ["${task.id}"]\ndone: ["${task.id}"]\n`, 'under "done" too'],
    ] as const) {
      const wrong = await run(["replan", "lunch", "night.yaml"], night(text));
      expect(wrong.stderr).toContain(said);
      expect(wrong.stderr).not.toContain("one of .");
      expect(wrong.code).toBe(1);
    }
    const over = await run(["replan", "lunch", "night.yaml"], night('now: "2030-01-01 12:00"\n'));
    expect(over.stdout).toContain("No course is left to serve.");
  });

  it("says of a variant what it lacks, at no line that is not there", async () => {
    const world = worldOf({ ...lunch, "v.yaml": "- name: nobody\n  crew: []\n" });
    const { stderr, code } = await run(["compare", "lunch", "v.yaml"], world);
    expect(stderr).toContain("nobody:\n  lunch/sitting.yaml, as changed: Nobody is on shift");
    expect(code).toBe(1);
  });

  it("lets no card steer the terminal", async () => {
    const world = worldOf({
      "soup.txt": "Soup\u001b[2J\u001b]0;x\u0007\r of leeks\n\n2 leeks\n\nBoil the leeks.\n",
    });
    const seen = await run(["read", "soup.txt"], { ...world, terminal: { stdout: true, stderr: true } });
    expect(seen.stdout + seen.stderr).not.toMatch(/(?!\p{Cc}\[[\d;]*m)[^\P{Cc}\n]/u);
    expect(seen.stdout).toContain("·[2J");
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

  it("scales a card that is silent on portions by the number it takes it to have", async () => {
    const world = worldOf({
      "soup.txt": "Leek soup\n\n2 leeks\n1 l stock\n\nSimmer the leeks in the stock for 20 minutes.\n",
    });
    const { stdout } = await run(["scale", "soup.txt"], world);
    expect(stdout).toContain("4 portions");
    expect(stdout).not.toContain("there is none");
  });

  it.each([
    ["- covers: 8\n", "name"],
    ["- name: x\n  coverz: 8\n", "coverz"],
    ["name: x\n", "list"],
    ["- name: x\n  kitchen: nowhere.yaml\n", "nowhere.yaml"],
  ])("says what is wrong with the variants %j", async (variants, said) => {
    const world = worldOf({ ...lunch, "v.yaml": variants });
    const { stderr, code } = await run(["compare", "lunch", "v.yaml"], world);
    expect(stderr).toContain(said);
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
    ["plan", 1, ["nobody-on-shift"], ["price-missing", "swap-missing"]],
    ["buy", 0, ["price-missing"], ["nobody-on-shift"]],
    ["cost", 0, ["price-missing"], ["nobody-on-shift"]],
    ["declare", 0, [], ["nobody-on-shift", "price-missing"]],
  ] as const)("%s tells what bears on it", async (verb, code, told, untold) => {
    const result = await run([verb, "lunch"], worldOf(idle));
    expect(result.code).toBe(code);
    for (const finding of told) expect(result.stderr).toContain(`[${finding}]`);
    for (const finding of untold) expect(result.stderr).not.toContain(`[${finding}]`);
    const { findings } = JSON.parse((await run([verb, "--json", "lunch"], worldOf(idle))).stdout);
    expect(findings.map((f: { code: string }) => f.code)).toEqual(
      expect.arrayContaining(["nobody-on-shift", "price-missing"]),
    );
  });
});

describe("write-up", () => {
  const card = "lunch/cards/nettle-soup.txt";
  it("prints the card as text", async () => {
    const { stdout, code } = await run(["write-up", card], worldOf(lunch));
    expect(code).toBe(0);
    for (const words of [
      "Nettle soup\n",
      "2 onions, sliced",
      "1. Melt the butter",
      "Vegan: replace",
      "no promise of absence",
    ])
      expect(stdout).toContain(words);
  });
  it("prints it as HTML with its data inside", async () => {
    const { stdout } = await run(["write-up", "--format", "html", card], worldOf(lunch));
    expect(stdout).toMatch(/^<!doctype html>/);
    const data = /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(stdout)?.[1] ?? "";
    expect(JSON.parse(data)).toMatchObject({ "@type": "Recipe", name: "Nettle soup" });
  });
  it("prints it as schema.org JSON-LD", async () => {
    const { stdout } = await run(["write-up", "--format", "json-ld", card], worldOf(lunch));
    const data = JSON.parse(stdout);
    expect(data).toMatchObject({
      "@context": "https://schema.org",
      "@type": "Recipe",
      recipeYield: "Serves 4",
    });
    expect(data.recipeIngredient).toContain("50 g butter");
  });
  it.each([
    [["write-up", "--format", "pdf", card], "pdf"],
    [["write-up", "none.txt"], "no such file"],
  ])("answers %j with what is wrong", async (argv, words) => {
    const { code, stderr } = await run(argv, worldOf(lunch));
    expect([code, stderr.includes(words)]).toEqual([2, true]);
  });
});

describe("tables", () => {
  it("set columns under each other, by what a terminal shows", () => {
    expect(
      tableText(
        [
          ["a", "1"],
          ["crème", "22"],
        ],
        ["left", "right"],
      ),
    ).toBe("a       1\ncrème  22\n");
    expect([widthOf("é"), widthOf("e\u0301"), widthOf("日本")]).toEqual([1, 1, 4]);
  });
  it("break long lines between words", () => {
    expect(wrap("one two three", "  ", "    ", 9)).toBe("  one two\n    three\n");
  });
});

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

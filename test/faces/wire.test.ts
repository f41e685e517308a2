import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCard } from "#engine/index.ts";
import { isBookName, isDocumentPath, kindOfPath } from "#wire/documents.ts";
import { nearestName } from "#wire/nearest-name.ts";
import { placesIn } from "#wire/place.ts";
import { printJson, roundForPrint } from "#wire/print-json.ts";
import { readJson } from "#wire/read-json.ts";
import { readPrices } from "#wire/read-prices.ts";
import { momentFromText, shareFromValue, shiftFromText } from "#wire/read-times.ts";
import { sittingFromFiles } from "#wire/sitting-from-files.ts";
import { problemSentence } from "#words/problems.ts";
import { changed, listIn, smallSitting } from "./small-sitting.ts";

const read = (files: Readonly<Record<string, string>>) =>
  sittingFromFiles({
    sitting: { name: "sitting.yaml", text: files["sitting.yaml"] ?? "" },
    read: (name) => files[name] ?? null,
    list: (folder) => listIn(files, folder),
  });

const sittingWith = (from: string | RegExp, to: string) =>
  read(changed({ "sitting.yaml": (smallSitting["sitting.yaml"] ?? "").replace(from, to) }));

describe("numbers in print", () => {
  it.each([
    [16.200000000000003, 16.2],
    [302.59999999999997, 302.6],
    [1 / 3, 0.333],
    [0.0005, 0.001],
    [-0.0001, 0],
    [1205, 1205],
    [Number.MAX_VALUE, Number.MAX_VALUE],
  ])("%d is %d", (value, printed) => {
    expect(roundForPrint(value)).toBe(printed);
  });

  it("are rounded wherever they stand, and words are left alone", () => {
    expect(printJson({ a: [0.1 + 0.2, { b: "0.30000000000000004", c: null }] })).toBe(
      `${JSON.stringify({ a: [0.3, { b: "0.30000000000000004", c: null }] }, null, 2)}\n`,
    );
  });
});

describe("a dish as JSON", () => {
  const lines = readJson(
    readCard(
      "Broth\n\nIngredients\n3 shallots\n250 g barley, or 2 tins chickpeas\n\nMethod\nSimmer everything.",
      "b",
    ).value,
    [],
    "b.md",
  ).ingredients;

  it("gives a bare count no unit", () => {
    expect(lines.map((line) => line.amounts.map((a) => [a.likely, a.unit]))).toEqual([
      [[3, null]],
      [[250, "g"]],
    ]);
  });

  it("gives the amounts of what may stand in", () => {
    expect(lines[1]?.alternatives[0]?.amounts[0]).toMatchObject({ likely: 2, unit: "tin" });
  });
});

describe("a sitting from its files", () => {
  it("is read whole", () => {
    const { sitting, cards, problems } = read(smallSitting);
    expect(problems).toEqual([]);
    expect(cards.map((card) => card.source)).toEqual(["lemon-rice", "nettle-soup"]);
    expect(sitting).toMatchObject({
      date: "2026-05-09",
      covers: 4,
      spare: 0,
      foodCostTarget: 0.3,
      taxRate: 0.2,
      courses: [
        { name: "Soup", at: 780, dishes: ["nettle-soup"] },
        { name: "Rice", at: 820, dishes: ["lemon-rice"] },
      ],
      crew: [{ name: "Bea", shifts: [{ from: 540, to: 870 }] }],
      guests: [{ name: "Ada", needs: ["vegan"] }],
    });
    expect(sitting?.packs).toHaveLength(4);
    expect(sitting?.packs[1]).toEqual({
      supplier: "Corner shop",
      item: "Butter, salted 250 g",
      food: "butter",
      size: 250,
      unit: "g",
      price: 210,
      line: 3,
    });
  });

  it.each([
    ["an unknown key", "covers: 4", "cover: 4", "key-unknown", 6, 1, "covers"],
    ["a missing key", "covers: 4\n", "", "key-missing", 1, 1, "covers"],
    ["no number", "covers: 4", "covers: four", "value-bad", 6, 9, "four"],
    ["half a cover", "covers: 4", "covers: 2.5", "value-bad", 6, 9, "2.5"],
    ["a date that is none", "2026-05-09\nplace", "2026-02-30\nplace", "value-bad", 2, 7, "2026-02-30"],
    ["a region that is none", "region: uk", "region: mars", "value-bad", 4, 9, "mars"],
    ["a currency that is none", "currency: GBP", "currency: QQQ", "value-bad", 5, 11, "QQQ"],
    ["a time that is none", '"13:40"', '"25:40"', "value-bad", 17, 9, "25:40"],
    ["a shift that is none", "09:00-14:30", "9 to 2", "value-bad", 24, 14, "9 to 2"],
    ["more than the whole", "tax: 20 %", "tax: 120 %", "value-bad", 9, 6, "120 %"],
    ["a key twice", "covers: 4", "covers: 4\ncovers: 5", "marks-broken", 7, 1, "twice"],
    ["a tab", "  - name: Soup", "\t- name: Soup", "marks-broken", 13, 1, "tab"],
    ["a kitchen that is not there", "kitchen.yaml", "shed.yaml", "file-missing", 10, 10, "shed.yaml"],
    ["prices that are not there", "shop.csv", "stall.csv", "file-missing", 11, 10, "stall.csv"],
    ["a course without a time", '    at: "13:00"\n', "", "key-missing", 13, 5, "at"],
    ["an unknown key in a course", "at:", "when:", "key-unknown", 14, 5, "when"],
    ["two guests of one name", "  - name: Ada", "  - name: Ada\n  - name: Ada", "name-twice", 21, 11, "Ada"],
  ])("refuses %s with its place", (_, from, to, code, line, column, word) => {
    const { sitting, problems } = sittingWith(from, to);
    expect(sitting).toBeNull();
    const problem = problems.find((p) => p.code === code);
    expect(problem, JSON.stringify(problems)).toBeDefined();
    expect(problem?.place).toMatchObject({ file: "sitting.yaml", line, column });
    const { says, write } = problemSentence(problem!);
    expect(`${says} ${write}`).toContain(word);
  });

  it("names the nearest key", () => {
    const problem = sittingWith("food cost target", "food costs target").problems[0];
    expect(problem?.facts).toMatchObject({ key: "food costs target", near: "food cost target" });
  });

  it("says what it assumes", () => {
    const { sitting, problems } = sittingWith("region: uk\ncurrency: GBP\n", "");
    expect(sitting).toMatchObject({ region: "uk", currency: "GBP" });
    expect(problems.map((p) => [p.code, p.severity])).toEqual([
      ["value-assumed", "note"],
      ["value-assumed", "note"],
    ]);
  });

  it("tells the places of the kitchen's problems in the kitchen's file", () => {
    const { sitting, problems } = read(
      changed({
        "kitchen.yaml": (smallSitting["kitchen.yaml"] ?? "").replace(
          "count: 2\n  kilo",
          "count: two\n  kilo",
        ),
      }),
    );
    expect(sitting).toBeNull();
    expect(problems[0]).toMatchObject({
      code: "value-bad",
      place: { file: "kitchen.yaml", line: 3, column: 10 },
    });
  });

  it("leads from a finding's path to its place", () => {
    const { placeOf } = read(smallSitting);
    expect(placeOf("courses/1/dishes/0")).toMatchObject({ file: "sitting.yaml", line: 18, column: 14 });
    expect(placeOf("guests/0/needs/0")).toMatchObject({ line: 21, column: 13 });
    expect(placeOf("kitchen/pans/0")).toMatchObject({ file: "kitchen.yaml", line: 8 });
    expect(placeOf("packs/2")).toMatchObject({ file: "shop.csv", line: 4 });
    expect(placeOf("taxRate")).toMatchObject({ line: 9 });
    expect(placeOf("nowhere/at/all")).toMatchObject({ file: "sitting.yaml" });
  });

  it("never throws, whatever stands in the files", () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200 }),
        fc.constantFrom("sitting.yaml", "kitchen.yaml", "shop.csv"),
        (text, file) => {
          const { sitting, problems } = read(changed({ [file]: text }));
          expect(sitting !== null || problems.some((p) => p.severity === "stop")).toBe(true);
          for (const problem of problems) expect(problemSentence(problem).says).not.toBe("");
        },
      ),
    );
  });

  it("never throws, whichever line is lost, doubled or put elsewhere", () => {
    const names = Object.keys(smallSitting).filter((name) => !name.startsWith("cards/"));
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.nat(60), fc.nat(60), fc.nat(2), (file, a, b, how) => {
        const lines = (smallSitting[file] ?? "").split("\n");
        const line = lines[a % lines.length] ?? "";
        if (how !== 0) lines.splice(a % lines.length, 1);
        if (how !== 1) lines.splice(b % lines.length, 0, line);
        const { sitting, problems } = read(changed({ [file]: lines.join("\n") }));
        expect(sitting !== null || problems.some((p) => p.severity === "stop")).toBe(true);
        for (const { place } of problems) {
          const text = changed({ [file]: lines.join("\n") })[place.file] ?? "";
          expect(place.start).toBeLessThanOrEqual(place.end);
          expect(place.end).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("stops at an alias that grows without end", () => {
    const bomb = `a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c,*c,*c,*c]`;
    expect(read(changed({ "sitting.yaml": bomb })).problems[0]?.code).toBe("marks-broken");
  });
});

describe("a file that nests without end", () => {
  it.each([
    ["lists", "title: ", "[", "]"],
    ["maps", "title: ", "{a: ", "}"],
  ])("is refused with its place, in words of the house: %s", (_, head, open, close) => {
    const deep = head + open.repeat(10_000) + close.repeat(10_000);
    const [problem] = read(changed({ "sitting.yaml": deep })).problems;
    expect(problem?.code).toBe("marks-broken");
    expect(problemSentence(problem!).says).toContain("too many times over");
  });
});

describe("a price list", () => {
  const header = "supplier,item,food,size,unit,price\n";
  it.each([
    ["A,B,onion,1,kg,1.2", 120],
    ["A,B,onion,1,kg,1", 100],
    ['A,"B, the ""big"" one",onion,1,kg,0.05', 5],
    ["A,B,onion,0.5,kg,12.34", 1234],
  ])("reads %s", (row, price) => {
    expect(readPrices("p.csv", `${header}${row}\n`, "GBP").packs[0]?.price).toBe(price);
  });
  it.each([
    ["A,B,onion,1,kg,£1.20", "price", 19],
    ["A,B,onion,1,kg,1.205", "price", 16],
    ["A,B,onion,1,kg,-1", "price", 16],
    ["A,B,onion,0,kg,1", "size", 11],
    ["A,B,onion,1 kg,kg,1", "size", 11],
    ["A,B,,1,kg,1", "food", 5],
    ["A,B,onion,1,kg", "supplier", 1],
  ])("leaves out %s and says which cell", (row, key) => {
    const { packs, problems } = readPrices("p.csv", `${header}${row}\nA,B,leek,1,kg,2\n`, "GBP");
    expect(packs.map((pack) => [pack.food, pack.line])).toEqual([["leek", 3]]);
    expect(problems[0]).toMatchObject({
      code: "value-bad",
      severity: "warn",
      facts: { key },
      place: { line: 2 },
    });
  });
  it("takes whole units of a currency without minor units (ISO 4217: JPY 0, KWD 3)", () => {
    expect(readPrices("p.csv", `${header}A,B,onion,1,kg,120\n`, "JPY").packs[0]?.price).toBe(120);
    expect(readPrices("p.csv", `${header}A,B,onion,1,kg,1.205\n`, "KWD").packs[0]?.price).toBe(1205);
  });
  it("takes the columns in any order, with a byte order mark and Windows line ends (RFC 4180 asks for CRLF)", () => {
    const { packs, problems } = readPrices(
      "p.csv",
      "\ufeffprice,unit,size,food,item,supplier\r\n1.20,kg,1,onion,B,A\r\n",
      "GBP",
    );
    expect(problems).toEqual([]);
    expect(packs[0]).toMatchObject({ supplier: "A", price: 120, line: 2 });
  });
  it.each(["supplier,item,food,size,unit\n", "shop,item,food,size,unit,price\n", "x\n", "", 'a,"b\nc'])(
    "refuses the first line %j",
    (text) => {
      expect(readPrices("p.csv", text, "GBP").problems[0]?.severity).toBe("stop");
    },
  );
});

describe("times", () => {
  it.each([
    ["19:00", 1140],
    ["2026-05-10 00:30", 1470],
    ["2026-05-08T23:59", -1],
    ["24:00", 1440],
    ["2024-02-29 12:00", -800 * 1440 + 720],
    ["19:60", null],
    ["7pm", null],
    ["2026-02-30 10:00", null],
  ])("reads %s", (text, moment) => {
    expect(momentFromText(text, "2026-05-09")).toBe(moment);
  });
  it.each([
    ["2026-05-08 14:00-18:00", { from: -600, to: -360 }],
    ["22:00–02:00", { from: 1320, to: 1560 }],
    ["10:00", null],
  ])("reads the shift %s", (text, shift) => {
    expect(shiftFromText(text, "2026-05-09")).toEqual(shift);
  });
  it.each([
    ["5 %", 0.05],
    ["5%", 0.05],
    [0.05, 0.05],
    [30, null],
    ["-1 %", null],
    ["some", null],
  ])("reads the share %s", (value, share) => {
    expect(shareFromValue(value)).toBe(share);
  });
});

describe("places and names", () => {
  it("counts lines and columns from 1", () => {
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom("a", "\n", "é", "\r") }), fc.nat(), (text, n) => {
        const start = text.length === 0 ? 0 : n % (text.length + 1);
        const { line, column } = placesIn("f", text)(start, start);
        const before = text.slice(0, start).split("\n");
        expect([line, column]).toEqual([before.length, (before.at(-1) ?? "").length + 1]);
      }),
    );
  });
  it.each([
    ["cuorses", "courses"],
    ["kitchn", "kitchen"],
    ["xyzzy", ""],
  ])("finds what is near %s", (written, near) => {
    expect(nearestName(written, ["courses", "kitchen", "crew"])).toBe(near);
  });
  it.each([
    ["cards/soup.txt", "card", true],
    ["sitting.yaml", "sitting", true],
    ["kitchen.yml", "kitchen", true],
    ["a.csv", "prices", true],
    ["../a.csv", "prices", false],
    ["cards/.hidden.txt", "card", false],
    ["/etc/passwd.txt", "card", false],
    ["a/../b.txt", "card", false],
    ["a\\b.txt", "card", false],
    ["run.sh", null, false],
  ])("knows what %s is", (path, kind, fit) => {
    expect([kindOfPath(path), isDocumentPath(path)]).toEqual([kind, fit]);
  });
  it.each([
    ["lantern-supper", true],
    ["..", false],
    ["a/b", false],
    ["", false],
  ])("takes the book %j: %s", (book, fit) => {
    expect(isBookName(book)).toBe(fit);
  });
});

describe("the shape of a read card", () => {
  it("has each key of the format", () => {
    const text = smallSitting["cards/lemon-rice.txt"] ?? "";
    const { value, findings } = readCard(text, "lemon-rice");
    const shape = JSON.parse(JSON.stringify(readJson(value, findings, "lemon-rice.txt")));
    expect(shape).toMatchObject({ title: "Lemon rice", portions: { low: 4, likely: 4, high: 4 } });
    expect(shape.ingredients[0]).toMatchObject({
      text: "300 g long-grain rice",
      part: null,
      amounts: [{ low: 300, likely: 300, high: 300, unit: "g", approximate: false, vague: false }],
      grams: { low: 300, likely: 300, high: 300 },
      state: [],
      purpose: null,
      optional: false,
      alternatives: [],
    });
    expect(shape.steps.length).toBeGreaterThan(0);
    const actions = shape.steps.flatMap((s: { actions: unknown[] }) => s.actions);
    expect(actions[0]).toMatchObject({
      verb: "simmer",
      minutes: { low: 12, likely: 12, high: 12, assumed: false },
      station: "burner",
    });
    for (const finding of shape.findings) {
      expect(Object.keys(finding)).toEqual(
        expect.arrayContaining(["code", "severity", "span", "line", "column", "message", "fixes"]),
      );
      expect(finding.span.end).toBeLessThanOrEqual(text.length);
    }
  });
});

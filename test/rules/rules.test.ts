import { describe, expect, it } from "vitest";
import { codes, type Finding, readCard } from "#engine/index.ts";
import { examplesOf } from "../../src/engine/dish-from-card/rules/examples.ts";
import { rules } from "../../src/engine/dish-from-card/rules/list.ts";
import { readingExamples } from "../../src/engine/dish-from-card/rules/reading.examples.ts";
import { messageOf, sentenceOf } from "../../src/words/en.ts";

const of = (text: string, code: string): readonly Finding[] =>
  readCard(text, "card").findings.filter((f) => f.code === code);

const table = [...examplesOf].flatMap(([code, examples]) =>
  examples.map((example, k) => [code, k + 1, example] as const),
);

/** Rules that offer no edit, and why: what to write is known to the cook alone. */
const withoutFix: Readonly<Record<string, string>> = {
  "more-used-than-listed": "which of the shares is wrong, or whether the list is, the words do not say",
  "ratio-broken": "whether the ratio or an amount is meant, the words do not say",
  "part-unused": "what becomes of the rest is known to the cook alone",
  "technique-unknown": "what the verb means is what is asked",
  "interval-unlikely": "which of the two lengths is wrong, the words do not say",
};

const applied = (text: string, edits: Finding["fixes"][number]["edits"]): string =>
  [...edits]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce((t, e) => t.slice(0, e.span.start) + e.text + t.slice(e.span.end), text);

describe("rules", () => {
  it("each have a code of the register, used once, and at least one example", () => {
    expect(new Set(rules.map((r) => r.code)).size).toBe(rules.length);
    for (const rule of rules) {
      expect(codes).toContain(rule.code);
      expect(examplesOf.get(rule.code)?.length ?? 0, rule.code).toBeGreaterThan(0);
    }
    const ofRules = [...examplesOf.keys()].filter((code) => !readingExamples.has(code));
    expect(ofRules.sort()).toEqual(rules.map((r) => r.code).sort());
  });

  it.each(table)("%s, example %i: stands at the words it speaks of", (code, _, example) => {
    expect(of(example.card, code).map((f) => example.card.slice(f.span.start, f.span.end))).toEqual(
      example.says,
    );
  });

  it.each(table)("%s, example %i: has nothing to say once it is put right", (code, _, example) => {
    expect(of(example.fixed, code)).toEqual([]);
  });

  it.each(table)("%s, example %i: each fix that it offers silences it there", (code, _, example) => {
    for (const finding of of(example.card, code))
      for (const fix of finding.fixes) {
        const text = applied(example.card, fix.edits);
        expect(text).not.toBe(example.card);
        expect(of(text, code).length, text).toBeLessThan(of(example.card, code).length);
      }
  });

  it.each(table)("%s, example %i: no fix that it offers brings another warning", (code, _, example) => {
    const warnings = (text: string): ReadonlyMap<string, number> => {
      const found = new Map<string, number>();
      for (const f of readCard(text, "card").findings)
        if (f.severity !== "note") found.set(f.code, (found.get(f.code) ?? 0) + 1);
      return found;
    };
    const before = warnings(example.card);
    for (const finding of of(example.card, code))
      for (const fix of finding.fixes) {
        const text = applied(example.card, fix.edits);
        for (const [other, many] of warnings(text))
          expect(many, `${other} in ${text}`).toBeLessThanOrEqual(before.get(other) ?? 0);
      }
  });

  it.each(rules.map((rule) => rule.code))(
    "%s offers a fix in some example, or says why it cannot",
    (code) => {
      const fixes = (examplesOf.get(code) ?? [])
        .flatMap((example) => of(example.card, code))
        .flatMap((f) => f.fixes);
      expect(fixes.length > 0).toBe(withoutFix[code] === undefined);
    },
  );

  it.each(table)("%s, example %i: is said in a sentence", (code, _, example) => {
    for (const finding of of(example.card, code)) {
      expect(sentenceOf(finding).says).toMatch(/\S.*[.!?]$/);
      expect(messageOf(finding)).not.toMatch(/undefined|NaN|null/);
    }
  });
});

const joints = (food: string): string =>
  `Hot plate\n\nServes 4\n\nIngredients\n800 g ${food}\n\nMethod\nFry the ${food} in a wide pan for 9 minutes.`;

describe("the figure for the middle", () => {
  // FDA Food Code 3-401.11(A) in the States; the FSA's cooking equivalents in the UK.
  it.each([
    ["us", "chicken thighs", 74],
    ["us", "beef mince", 68],
    ["us", "pork chops", 63],
    ["uk", "pork chops", 75],
    ["eu", "chicken thighs", 75],
  ] as const)("in %s, for %s, is %i °C", (region, food, figure) => {
    const found = readCard(joints(food), "hot", region).findings.filter(
      (f) => f.code === "core-temperature-missing",
    );
    expect(found.map((f) => f.facts)).toMatchObject([{ celsius: figure }]);
  });
});

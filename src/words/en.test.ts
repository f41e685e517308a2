import { describe, expect, it } from "vitest";
import { type Code, codes, type FactsOf } from "#engine/index.ts";
import { fixTitles, sentenceFor } from "./en.ts";

/** Facts that are one of a few words. */
const chosen: Readonly<Record<string, string>> = {
  because: "pan-volume",
  by: "burner-power",
  reason: "spice",
  quantity: "core",
};

/** Facts of any code: every fact is some words. */
const anyFacts = new Proxy({}, { get: (_, name) => chosen[String(name)] ?? "some words" }) as FactsOf[Code];

describe("sentences", () => {
  it.each(codes)("%s is said in whole sentences that promise nothing", (code) => {
    const { says, write } = sentenceFor(code, anyFacts as never);
    for (const sentence of [says, ...(write === null ? [] : [write])]) {
      expect(sentence).toMatch(/^["“'A-Z°\d–s].*[.?…]$/s);
      expect(sentence).not.toMatch(/undefined|null|NaN|\[object/);
      expect(sentence).not.toMatch(/\b(is|are) safe\b|safe to eat|allergen.free|guarante/i);
    }
  });
  it("name every fix", () => {
    for (const title of Object.values(fixTitles)) expect(title).toMatch(/^[A-Z]/);
  });
});

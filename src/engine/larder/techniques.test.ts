import { describe, expect, it } from "vitest";
import { techniqueByVerb, techniques } from "./techniques.ts";

describe("the technique table", () => {
  it("holds at least 180 techniques, each with a source and its minutes in order", () => {
    expect(techniques.length).toBeGreaterThanOrEqual(180);
    for (const t of techniques) {
      expect(t.source, t.id).not.toBe("");
      expect(t.minutes.low, t.id).toBeLessThanOrEqual(t.minutes.likely);
      expect(t.minutes.likely, t.id).toBeLessThanOrEqual(t.minutes.high);
      expect(t.massShare, t.id).toBeGreaterThanOrEqual(0);
      expect(t.massShare, t.id).toBeLessThanOrEqual(1);
    }
  });
});

describe("finding a technique by a verb", () => {
  it.each([
    ["sweat", "sweat"],
    ["sweats", "sweat"],
    ["sweating", "sweat"],
    ["sweated", "sweat"],
    ["softening", "sweat"],
    ["chopped", "chop"],
    ["chopping", "chop"],
    ["baking", "bake"],
    ["fries", "fry"],
    ["fried", "fry"],
    ["sautéed", "fry"],
    ["sauté", "fry"],
    ["caramelize", "brown"],
    ["caramelising", "brown"],
    ["liquidise", "blend"],
    ["puréed", "blend"],
    ["bring to the boil", "bring-to-boil"],
    ["bringing to a boil", "bring-to-boil"],
    ["brought to the boil", "bring-to-boil"],
    ["set aside", "set-aside"],
    ["leave to cool", "cool"],
    ["let it rest", "rest"],
    ["leave to rest", "rest"],
    ["deep fry", "deep-fry"],
    ["deep-fried", "deep-fry"],
    ["stir-frying", "stir-fry"],
    ["whipped", "whisk"],
    ["beaten", "beat"],
    ["taken", "take-out"],
    ["frozen", "freeze"],
    ["simmering", "simmer"],
    ["covered", "cover"],
    ["refrigerate", "chill"],
    ["broil", "grill"],
    ["strain", "sieve"],
    ["press through a sieve", "push-through"],
    ["proofing", "prove"],
  ])("%s means %s", (verb, id) => {
    expect(techniqueByVerb(verb)?.id).toBe(id);
  });

  it.each([["juggle"], [""], ["of"], ["in the"]])("knows no kitchen verb %j", (verb) => {
    expect(techniqueByVerb(verb)).toBeNull();
  });
});

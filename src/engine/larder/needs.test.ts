import { describe, expect, it } from "vitest";
import { allergenGroups } from "../model/food.ts";
import { needById, needByWords, needs } from "./needs.ts";

const readAs: readonly (readonly [string, string | null])[] = [
  ["coeliac", "coeliac"],
  ["Celiac", "coeliac"],
  ["for coeliacs", "coeliac"],
  ["coeliac version", "coeliac"],
  ["gluten-free", "no-gluten"],
  ["Gluten free:", "no-gluten"],
  ["nut allergy", "no-nuts"],
  ["severe nut allergy", "no-nuts"],
  ["allergic to nuts", "no-nuts"],
  ["Without nuts", "no-nuts"],
  ["no nuts", "no-nuts"],
  ["no-nuts", "no-nuts"],
  ["peanut allergy", "no-peanuts"],
  ["without any peanuts", "no-peanuts"],
  ["veggie", "vegetarian"],
  ["For vegetarians", "vegetarian"],
  ["vegan version", "vegan"],
  ["no shellfish", "no-shellfish"],
  ["shellfish-free", "no-shellfish"],
  ["without milk", "no-milk"],
  ["dairy-free", "no-milk"],
  ["lactose intolerant", "no-milk"],
  ["lactose intolerance", "no-milk"],
  ["pregnant", "pregnant"],
  ["if pregnant", "pregnant"],
  ["egg-free", "no-eggs"],
  ["no pork", "no-pork"],
  ["sulfites", "no-sulphites"],
  ["allergic to celery", "no-celery"],
  ["wheat allergy", "no-gluten"],
  ["allergic to hazelnuts", "no-nuts"],
  ["no seafood", "no-seafood"],
  ["no beef", "no-beef"],
  ["lactose-free", "no-milk"],
  ["", null],
  ["purple", null],
  ["nutmeg allergy", null],
  ["no", null],
];

describe("needs", () => {
  it.each(readAs)("reads %j as %j", (words, id) => {
    expect(needByWords(words)?.id ?? null).toBe(id);
  });

  it("has a row for each EU and UK group", () => {
    for (const group of allergenGroups) expect(needById(`no-${group}`)?.allergens, group).toContain(group);
  });

  it("never gives the same words to two rows", () => {
    const words = needs.flatMap((n) => [...new Set([n.name, ...n.words])]);
    expect(words.filter((w, i) => words.indexOf(w) !== i)).toEqual([]);
  });
});

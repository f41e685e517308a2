import { grams, share } from "../measure/units.ts";
import {
  type AllergenGrade,
  allergenGroups,
  type DietFact,
  type Food,
  type FoodAllergen,
  type HazardKind,
  type Nutrients,
  type Piece,
  type Shelf,
} from "../model/food.ts";
import { regularPlural } from "./plural.ts";

const numberOrNull = (text: string | undefined): number | null =>
  text === undefined || text === "" ? null : Number(text);

const split = (text: string, mark: string): readonly string[] => (text === "" ? [] : text.split(mark));

const nutrientsFrom = (text: string): Nutrients => {
  const [water, kcal, protein, fat, saturates, carbohydrate, sugars, fibre, sodium, ash, alcohol] = text
    .split(" ")
    .map(numberOrNull);
  return {
    water: water ?? null,
    kcal: kcal ?? null,
    protein: protein ?? null,
    fat: fat ?? null,
    saturates: saturates ?? null,
    carbohydrate: carbohydrate ?? null,
    sugars: sugars ?? null,
    fibre: fibre ?? null,
    sodium: sodium ?? null,
    ash: ash ?? null,
    alcohol: alcohol ?? null,
  };
};

const pieceFrom = (text: string): Piece => {
  const cut = text.lastIndexOf("=");
  return { name: text.slice(0, cut), grams: grams(Number(text.slice(cut + 1))) };
};

const allergenFrom = (text: string): FoodAllergen => {
  const [group, kind, grade] = text.split(",");
  return {
    group: allergenGroups[Number(group)] ?? "gluten",
    kind: kind === undefined || kind === "" ? null : kind,
    // The builder of the table writes these three words and no others.
    grade: (grade ?? "check") as AllergenGrade,
  };
};

const withPlurals = (aliases: readonly string[]): readonly string[] => [
  ...new Set(aliases.flatMap((alias) => [alias, regularPlural(alias)])),
];

/** A row of the generated food table as a food, and the normalised names it is found by. */
export const foodFromRow = (row: string): { readonly food: Food; readonly keys: readonly string[] } => {
  const cells = row.split("\t");
  const at = (column: number): string => cells[column] ?? "";
  const food: Food = {
    id: at(0),
    name: at(1),
    plural: at(2),
    nameUs: at(3) === "" ? null : at(3),
    aliases: withPlurals(split(at(4).toLowerCase(), ";")),
    shelf: at(5) as Shelf,
    ndb: at(6) === "" ? null : at(6),
    nutrients: nutrientsFrom(at(7)),
    density: numberOrNull(at(8)),
    pieces: split(at(9), ";").map(pieceFrom),
    trim: share(Number(at(10))),
    allergens: split(at(11), ";").map(allergenFrom),
    diet: split(at(12), " ") as readonly DietFact[],
    hazards: split(at(13), " ") as readonly HazardKind[],
    fridgeDays: numberOrNull(at(14)),
    madeOf: split(at(15), ";"),
    note: at(16),
    source: at(17),
  };
  return { food, keys: split(at(18), ";") };
};

import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { pieceGrams } from "../larder/food-parts.ts";
import { findFood } from "../larder/foods.ts";
import { findUnit, measureFor, measureKind } from "../larder/measures.ts";
import { normaliseName } from "../larder/normalise-name.ts";
import type { Food } from "../model/food.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Pack, Region, Sitting } from "../model/sitting.ts";

/** A row of a price list with what it holds. */
export type Offered = {
  readonly pack: Pack;
  /** What the size counts; sizes of one kind are compared in their own unit, so that 12 eggs are exactly 12. */
  readonly kind: string;
  /** In the unit of its kind: grams, millilitres, pieces. */
  readonly size: number;
  /** Grams of one unit of its kind; null for pieces of which no weight is known. */
  readonly gramsPerUnit: number | null;
};

/** What food a pack or a line is, as one key: the id, or the words when the table does not know them. */
export const foodKey = (food: string | null, name: string): string => food ?? `words:${normaliseName(name)}`;

type Sized = Omit<Offered, "pack"> & { readonly assumed: boolean };

const dozen = 12;

// Nobody sells one sprig or one clove: a piece on a price list is the whole that a shop sells. Common practice, no source.
const soldWhole = ["bunch", "head", "bulb", "loaf", "whole"] as const;

const sizeOf = (pack: Pack, food: Food | null, region: Region): Sized | null => {
  const words = pack.unit.trim();
  const unit = findUnit(words) ?? words.toLowerCase();
  const row = measureFor(unit, region, food);
  const amount = row?.size?.likely ?? 0;
  const kind = measureKind(unit);
  if (kind === "mass" && row !== null)
    return { kind: "mass", size: pack.size * amount, gramsPerUnit: 1, assumed: false };
  if (kind === "volume" && row !== null) {
    const density = food?.density ?? null;
    return {
      kind: "volume",
      size: pack.size * amount,
      gramsPerUnit: density ?? 1,
      assumed: density === null,
    };
  }
  const pieces = (name: string | null, each: number): Sized => ({
    kind: name === null ? "piece" : `piece ${name}`,
    size: pack.size * each,
    gramsPerUnit: food === null ? null : pieceGrams(food, region, name),
    assumed: false,
  });
  if (["piece", "each", "ea", "item", "whole", ""].includes(unit)) {
    const whole =
      food === null ? undefined : soldWhole.find((name) => pieceGrams(food, region, name) !== null);
    return pieces(whole ?? null, 1);
  }
  if (unit === "dozen") return pieces(null, dozen);
  if (unit === "half dozen") return pieces(null, dozen / 2);
  if (food === null) return null;
  return pieceGrams(food, region, unit) === null ? null : pieces(unit, 1);
};

/**
 * The price lists of a sitting by food. Rows that cannot be used are left out and said, each with its path; a row
 * without size or with a price below zero is one of them.
 */
export const readPacks = (sitting: Sitting): Outcome<ReadonlyMap<string, readonly Offered[]>, Finding> => {
  const byFood = new Map<string, Offered[]>();
  const findings: Finding[] = [];
  const nowhere = { start: 0, end: 0 };
  sitting.packs.forEach((pack, i) => {
    const path = { path: `packs/${i}` };
    const food = findFood(pack.food);
    const { supplier, line, item } = pack;
    if (food === null)
      findings.push(
        makeFinding(
          "pack-food-unknown",
          sitting.source,
          nowhere,
          { item, food: pack.food, supplier, line },
          path,
        ),
      );
    const sized = sizeOf(pack, food, sitting.region);
    const usable = sized !== null && sized.size > 0 && Number.isFinite(sized.size) && pack.price >= 0;
    if (!usable) {
      const facts = { item, unit: `${pack.size} ${pack.unit}`, supplier, line };
      findings.push(makeFinding("pack-unit-unknown", sitting.source, nowhere, facts, path));
      return;
    }
    if (sized.assumed) {
      const facts = { item, grams: sized.size };
      findings.push(makeFinding("pack-weight-assumed", sitting.source, nowhere, facts, path));
    }
    const key = foodKey(food?.id ?? null, pack.food);
    const { kind, size, gramsPerUnit } = sized;
    byFood.set(key, [...(byFood.get(key) ?? []), { pack, kind, size, gramsPerUnit }]);
  });
  return { value: byFood, findings };
};

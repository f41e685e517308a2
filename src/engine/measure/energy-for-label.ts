/** Grams of what gives energy. Carbohydrate is the EU's: fibre left out. */
type EnergyGiving = {
  readonly carbohydrate: number;
  readonly protein: number;
  readonly fat: number;
  readonly fibre: number;
  readonly alcohol: number;
};

/** Conversion factors of Regulation (EU) 1169/2011, Annex XIV; each unit has its own, and neither is made from the other. */
export const energyFactors = {
  kilojoules: { carbohydrate: 17, protein: 17, fat: 37, fibre: 8, alcohol: 29 },
  kilocalories: { carbohydrate: 4, protein: 4, fat: 9, fibre: 2, alcohol: 7 },
} as const;

/** Energy as EU and UK labels state it, before rounding. */
export const energyForLabelEu = (food: EnergyGiving, unit: keyof typeof energyFactors): number => {
  const factor = energyFactors[unit];
  return (
    food.carbohydrate * factor.carbohydrate +
    food.protein * factor.protein +
    food.fat * factor.fat +
    food.fibre * factor.fibre +
    food.alcohol * factor.alcohol
  );
};

/** Kilocalories by the 4-4-9 method of 21 CFR 101.9(c)(1)(i)(B), on carbohydrate with its fibre; alcohol at 7 is custom. */
export const energyForLabelUs = (food: EnergyGiving): number =>
  4 * (food.carbohydrate + food.fibre) + 4 * food.protein + 9 * food.fat + 7 * food.alcohol;

/** Grams of salt as labels count it: sodium × 2.5 (Regulation (EU) 1169/2011, Annex I, 11). */
export const saltOfSodium = (milligrams: number): number => (milligrams * 2.5) / 1000;

/** Milligrams of sodium in so many grams of salt; the inverse of `saltOfSodium`. */
export const sodiumOfSalt = (grams: number): number => (grams * 1000) / 2.5;

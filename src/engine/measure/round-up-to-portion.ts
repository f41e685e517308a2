import { type Count, count } from "./units.ts";

/** To whole portions, upwards, so that a share of a portion that is promised is always there. A hair above a whole number is forgiven. */
export const roundUpToPortion = (portions: number): Count => count(Math.max(0, Math.ceil(portions - 1e-9)));

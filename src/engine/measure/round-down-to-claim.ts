import { type Count, count } from "./units.ts";

/**
 * To whole portions, downwards and at least one: what a card is taken to serve. Fewer portions than it claims is the
 * safe side, since then more of it is made.
 */
export const roundDownToClaim = (portions: number): Count => count(Math.max(1, Math.floor(portions + 1e-9)));

/**
 * To whole packs of one size, upwards. A need that is above whole packs by less than a millionth part is taken as
 * met: it comes from arithmetic, not from the kitchen.
 */
export const roundUpToPack = (need: number, size: number): number =>
  need <= 0 || size <= 0 ? 0 : Math.ceil((need * (1 - 1e-6)) / size);

/** What a pack holds, in any unit, and its price in whole grid units of money. */
type PricedOffer = { readonly size: number; readonly price: number };

/**
 * The cheapest packs that cover `need`, by dynamic programming over money: the most that can be had for each sum, and
 * the least sum that is enough. For sizes that fit no grid. Equal prices are settled by the most food for the money.
 * Prices are whole and above zero; `most` is a sum that is known to be enough.
 */
export const coverByPrice = (
  need: number,
  offers: readonly PricedOffer[],
  most: number,
): readonly number[] => {
  const had = new Float64Array(most + 1);
  const choice = new Int32Array(most + 1).fill(-1);
  let sum = 0;
  while ((had[sum] ?? 0) < need && sum < most) {
    sum += 1;
    let best = had[sum - 1] ?? 0;
    let pick = -1;
    for (let j = 0; j < offers.length; j += 1) {
      const offer = offers[j];
      if (offer === undefined || offer.price > sum) continue;
      const size = (had[sum - offer.price] ?? 0) + offer.size;
      if (size > best) {
        best = size;
        pick = j;
      }
    }
    had[sum] = best;
    choice[sum] = pick;
  }
  const counts = offers.map(() => 0);
  while (sum > 0) {
    const j = choice[sum] ?? -1;
    const offer = offers[j];
    if (offer === undefined) sum -= 1;
    else {
      counts[j] = (counts[j] ?? 0) + 1;
      sum -= offer.price;
    }
  }
  return counts;
};

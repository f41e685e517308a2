/** What a pack holds, in any unit, and its price in whole grid units of money. */
export type PricedOffer = { readonly size: number; readonly price: number };

/**
 * The cheapest packs that cover `need`, by dynamic programming over money: the most that can be had for each sum, and
 * the least sum that is enough. For sizes that fit no grid. Equal prices are settled by the most food for the money.
 * Prices are whole and above zero.
 */
export const coverByPrice = (need: number, offers: readonly PricedOffer[]): readonly number[] => {
  const had: number[] = [0];
  const choice: number[] = [-1];
  let sum = 0;
  while ((had[sum] ?? 0) < need) {
    sum += 1;
    let best = had[sum - 1] ?? 0;
    let pick = -1;
    offers.forEach((offer, j) => {
      if (offer.price > sum) return;
      const size = (had[sum - offer.price] ?? 0) + offer.size;
      if (size > best) {
        best = size;
        pick = j;
      }
    });
    had.push(best);
    choice.push(pick);
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

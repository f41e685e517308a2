/** What a pack holds, in whole units of the grid, and its price in minor units. */
type GridOffer = { readonly size: number; readonly price: number };

type Table = {
  readonly cost: Float64Array;
  readonly covered: Float64Array;
  readonly packs: Float64Array;
  readonly choice: Int32Array;
};

/** Is the pack, put on top of the state `from`, better than what stands at `at`? Price first, then waste, then packs. */
const better = (t: Table, at: number, from: number, offer: GridOffer): boolean => {
  if (t.choice[at] === -1) return true;
  const cost = (t.cost[from] ?? 0) + offer.price - (t.cost[at] ?? 0);
  if (cost !== 0) return cost < 0;
  const covered = (t.covered[from] ?? 0) + offer.size - (t.covered[at] ?? 0);
  if (covered !== 0) return covered < 0;
  return (t.packs[from] ?? 0) + 1 < (t.packs[at] ?? 0);
};

/**
 * The cheapest packs that cover `need` (a whole number of grid units): unbounded covering knapsack by dynamic
 * programming over the need. Equal prices are settled by least waste, then by fewest packs. Exact, and any optimum of
 * a smaller need plus one pack is tried, so that price, waste and packs are optimal in that order.
 */
export const coverBySize = (need: number, offers: readonly GridOffer[]): readonly number[] => {
  const table: Table = {
    cost: new Float64Array(need + 1),
    covered: new Float64Array(need + 1),
    packs: new Float64Array(need + 1),
    choice: new Int32Array(need + 1).fill(-1),
  };
  for (let n = 1; n <= need; n += 1)
    offers.forEach((offer, j) => {
      const from = Math.max(0, n - offer.size);
      if (!better(table, n, from, offer)) return;
      table.cost[n] = (table.cost[from] ?? 0) + offer.price;
      table.covered[n] = (table.covered[from] ?? 0) + offer.size;
      table.packs[n] = (table.packs[from] ?? 0) + 1;
      table.choice[n] = j;
    });
  const counts = offers.map(() => 0);
  for (let n = need; n > 0; ) {
    const j = table.choice[n] ?? -1;
    counts[j] = (counts[j] ?? 0) + 1;
    n -= offers[j]?.size ?? n;
  }
  return counts;
};

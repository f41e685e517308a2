import { roundUpToPack } from "../measure/round-up-to-pack.ts";
import { coverByPrice } from "./cover-by-price.ts";
import { coverBySize } from "./cover-by-size.ts";

/** What one pack holds, in the unit of the need, and its price in minor units. */
export type Offer = { readonly size: number; readonly price: number };

const mostStates = 300_000;
const mostSums = 3_000_000;
// Sizes are laid on a grid of thousandths of the unit (2.27 l is 2270 ml is 2 270 000).
const fineness = 1000;

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

const gridOf = (numbers: readonly number[]): number => Math.max(1, numbers.reduce(commonDivisor, 0));

const isWhole = (n: number): boolean => Math.abs(n - Math.round(n)) < 1e-6 && n < 2 ** 52;

/** The offer with most for its money; of equals the largest, so that bulk is bought in the fewest packs. */
const bestValue = (offers: readonly Offer[]): number =>
  offers.reduce((best, offer, j) => {
    const champion = offers[best];
    if (champion === undefined) return j;
    const gain = champion.price * offer.size - offer.price * champion.size;
    return gain > 0 || (gain === 0 && offer.size > champion.size) ? j : best;
  }, 0);

const largestFree = (offers: readonly Offer[]): number =>
  offers.reduce((best, offer, j) => {
    const champion = offers[best];
    const better = champion === undefined || champion.price > 0 || offer.size > champion.size;
    return offer.price === 0 && better ? j : best;
  }, 0);

const onlyOne = (offers: readonly Offer[], j: number, packs: number): readonly number[] =>
  offers.map((_, i) => (i === j ? packs : 0));

const withBulk = (counts: readonly number[], j: number, bulk: number): readonly number[] =>
  counts.map((n, i) => (i === j ? n + bulk : n));

/**
 * The most food that an optimum can hold in packs of other kinds than the best value. Each gram of it costs at least
 * the difference of the two best values more, and what that adds up to cannot exceed the price of one best pack, or
 * buying that pack alone would be cheaper.
 */
const mostInOthers = (offers: readonly Offer[], best: number): number => {
  const chosen = offers[best];
  if (chosen === undefined) return 0;
  const value = chosen.price / chosen.size;
  const next = offers.reduce(
    (least, offer, j) => (j === best ? least : Math.min(least, offer.price / offer.size)),
    Number.POSITIVE_INFINITY,
  );
  return next > value * (1 + 1e-9) ? chosen.price / (next - value) : Number.POSITIVE_INFINITY;
};

/**
 * How many of each pack to buy so that the need is covered at the least price; null when nothing is offered.
 * Where the sizes lie on a common grid, equal prices are settled by least waste and then fewest packs; otherwise by
 * the most food for the money.
 *
 * Both ways first set aside whole packs of the best value, so that only the last stretch has to be searched, however
 * large the need is. In some optimum the packs of other kinds number fewer than the best pack's size (or price) in
 * grid units, since among that many some would add up to a multiple of it and could be exchanged at no loss.
 */
export const cover = (need: number, offers: readonly Offer[]): readonly number[] | null => {
  if (offers.length === 0) return null;
  if (!(need > 0)) return offers.map(() => 0);
  const best = bestValue(offers);
  const chosen = offers[best] ?? { size: 1, price: 0 };
  // Beyond this the numbers themselves no longer hold single grams.
  if (need > 1e11) return onlyOne(offers, best, roundUpToPack(need, chosen.size));
  const others = mostInOthers(offers, best);
  return onGrid(need, offers, best, others) ?? byPrice(need, offers, best, others);
};

/** Null when the sizes have no common grid that is coarse enough. */
const onGrid = (
  need: number,
  offers: readonly Offer[],
  best: number,
  others: number,
): readonly number[] | null => {
  const sizes = offers.map((o) => o.size * fineness);
  if (!sizes.every(isWhole)) return null;
  const whole = sizes.map(Math.round);
  const grid = gridOf(whole);
  const units = whole.map((s) => s / grid);
  const size = units[best] ?? 1;
  const steps = roundUpToPack(need * fineness, grid);
  const reserve = Math.min(size * Math.max(...units), Math.ceil((others * fineness) / grid) + 1);
  const bulk = Math.max(0, Math.floor((steps - reserve) / size));
  const rest = steps - bulk * size;
  if (rest > mostStates) return null;
  const counts = coverBySize(
    rest,
    offers.map((o, i) => ({ size: units[i] ?? 1, price: o.price })),
  );
  return withBulk(counts, best, bulk);
};

const byPrice = (need: number, offers: readonly Offer[], best: number, others: number): readonly number[] => {
  const chosen = offers[best] ?? { size: 1, price: 0 };
  if (chosen.price === 0) {
    const free = largestFree(offers);
    return onlyOne(offers, free, roundUpToPack(need, offers[free]?.size ?? 1));
  }
  const grid = gridOf(offers.map((o) => o.price));
  const prices = offers.map((o) => o.price / grid);
  const price = prices[best] ?? 1;
  const dearest = Math.max(...prices);
  const inOthers = Math.min(others, (price * dearest * chosen.size) / price);
  const bulk = Math.max(0, Math.floor((need - inOthers) / chosen.size) - 1);
  const rest = need - bulk * chosen.size;
  const most = roundUpToPack(rest, chosen.size) * price;
  // Prices with no common grid this far apart are no kitchen's; the best value is then bought alone.
  if (most > mostSums) return onlyOne(offers, best, roundUpToPack(need, chosen.size));
  const counts = coverByPrice(
    rest * (1 - 1e-6),
    offers.map((o, i) => ({ size: o.size, price: prices[i] ?? 1 })),
    most,
  );
  return withBulk(counts, best, bulk);
};

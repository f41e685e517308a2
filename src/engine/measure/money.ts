import { roundHalfUp } from "./round-half-up.ts";
import { type Minor, minor, type Share } from "./units.ts";

/**
 * Splits an amount by weights so that the parts add up to it exactly: each gets its share rounded down, and the units
 * left over go to the largest remainders, earlier ones first when equal. Without any weight every part is zero.
 */
export const shareOut = (total: Minor, weights: readonly number[]): readonly Minor[] => {
  const sum = weights.reduce((a, b) => a + b, 0);
  if (!(sum > 0)) return weights.map(() => minor(0));
  const exact = weights.map((w) => (total * w) / sum);
  const parts = exact.map((x) => Math.floor(x + 1e-9));
  const left = total - parts.reduce((a, b) => a + b, 0);
  const order = exact
    .map((x, place) => ({ place, remainder: x - Math.floor(x + 1e-9) }))
    .sort((a, b) => b.remainder - a.remainder || a.place - b.place);
  for (let i = 0; i < left; i += 1) {
    const place = order[i % order.length]?.place ?? 0;
    parts[place] = (parts[place] ?? 0) + 1;
  }
  return parts.map(minor);
};

/** An amount divided by a number, rounded half up to the minor unit; zero when there is nothing to divide by. */
export const divideMoney = (amount: number, by: number): Minor =>
  minor(by > 0 && Number.isFinite(amount / by) ? roundHalfUp(amount / by) : 0);

/** The price before tax of which the cost is the target share: cost ÷ target. Zero when there is no target. */
export const priceAtTarget = (cost: number, target: Share): Minor => divideMoney(cost, target);

/** Tax on a price before tax, rounded half up. */
export const taxOn = (net: Minor, rate: Share): Minor => minor(roundHalfUp(net * Math.max(0, rate)));

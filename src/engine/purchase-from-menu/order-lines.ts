import { compareText } from "../measure/compare-text.ts";
import type { Shelf } from "../model/food.ts";
import type { PurchaseLine } from "../model/purchase.ts";

/** The order in which shelves stand on a list: what spoils first is bought with most care. */
const shelfOrder: { readonly [S in Shelf]: number } = {
  vegetables: 0,
  fruit: 1,
  herbs: 2,
  meat: 3,
  poultry: 4,
  fish: 5,
  dairy: 6,
  eggs: 7,
  bread: 8,
  frozen: 9,
  dry: 10,
  baking: 11,
  sweet: 12,
  tins: 13,
  oils: 14,
  spices: 15,
  drinks: 16,
  other: 17,
};

const group = (line: PurchaseLine): number => (line.supplier !== null ? 0 : line.free ? 2 : 1);

/** By supplier, then shelf, then name; what no list has comes after, and what is free last. */
export const orderLines = (lines: readonly PurchaseLine[]): readonly PurchaseLine[] =>
  [...lines].sort(
    (a, b) =>
      group(a) - group(b) ||
      compareText(a.supplier ?? "", b.supplier ?? "") ||
      shelfOrder[a.shelf] - shelfOrder[b.shelf] ||
      compareText(a.name, b.name),
  );

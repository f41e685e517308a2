import { compareText } from "../measure/compare-text.ts";
import { count, type Grams, grams, minor } from "../measure/units.ts";
import type { PackCount, PurchaseLine } from "../model/purchase.ts";
import type { Need } from "./consolidate.ts";
import { cover } from "./cover.ts";
import type { Offered } from "./read-packs.ts";

/** The packs for one need, over all suppliers. */
export type Bought = Pick<PurchaseLine, "packs" | "bought" | "leftOver" | "cost" | "supplier">;

const nothing: Bought = {
  packs: [],
  bought: grams(0),
  leftOver: grams(0),
  cost: minor(0),
  supplier: null,
};

/** The supplier that gets most of the money; of equals the first by name. */
const mainSupplier = (packs: readonly PackCount[]): string | null => {
  const paid = new Map<string, number>();
  for (const { pack, count: n } of packs)
    paid.set(pack.supplier, (paid.get(pack.supplier) ?? 0) + pack.price * n);
  const [first] = [...paid].sort(([a, x], [b, y]) => y - x || compareText(a, b));
  return first?.[0] ?? null;
};

const weighed = (offered: Offered, need: Need): readonly (Offered & { readonly gramsPerUnit: number })[] => {
  // Where a card says what its pieces weigh ("2 celeriac, about 1.6 kg"), that is what a piece is.
  const gramsPerUnit = (offered.kind === "piece" ? need.gramsPerPiece : null) ?? offered.gramsPerUnit;
  return gramsPerUnit === null || !(gramsPerUnit > 0) ? [] : [{ ...offered, gramsPerUnit }];
};

/**
 * The cheapest packs that hold at least the need; null when no list has the food by a size that can be weighed.
 * Packs of one kind are covered in their own unit, mixed kinds in grams.
 */
export const buy = (need: Need, offered: readonly Offered[]): Bought | null => {
  const offers = offered.flatMap((o) => weighed(o, need));
  const [first] = offers;
  if (first === undefined) return null;
  if (!(need.needed > 0)) return nothing;
  const oneKind = offers.every((o) => o.kind === first.kind && o.gramsPerUnit === first.gramsPerUnit);
  const counts = cover(
    oneKind ? need.needed / first.gramsPerUnit : need.needed,
    offers.map((o) => ({ size: oneKind ? o.size : o.size * o.gramsPerUnit, price: o.pack.price })),
  );
  if (counts === null) return null;
  const packs = offers.flatMap((o, i) => {
    const n = counts[i] ?? 0;
    return n > 0 ? [{ pack: o.pack, count: count(n) }] : [];
  });
  const held = offers.reduce((sum, o, i) => sum + (counts[i] ?? 0) * o.size * o.gramsPerUnit, 0);
  // A need that is above whole packs by a hair of arithmetic counts as met.
  const bought: Grams = grams(Math.max(held, need.needed));
  return {
    packs,
    bought,
    leftOver: grams(bought - need.needed),
    cost: minor(packs.reduce((sum, p) => sum + p.pack.price * p.count, 0)),
    supplier: mainSupplier(packs),
  };
};

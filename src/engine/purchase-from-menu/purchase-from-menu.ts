import type { Finding } from "../findings/finding.ts";
import { minor } from "../measure/units.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Purchase } from "../model/purchase.ts";

/** One purchase list for the whole menu, in packs of the price lists. */
export const purchaseFromMenu = (_menu: Menu): Outcome<Purchase, Finding> => ({
  value: { lines: [], suppliers: [], total: minor(0) },
  findings: [],
});

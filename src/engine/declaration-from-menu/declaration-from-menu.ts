import type { Finding } from "../findings/finding.ts";
import type { Declaration } from "../model/declaration.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";

/** Allergens, ingredient lists and nutrition of every version on the menu, and the guest-by-dish grid. */
export const declarationFromMenu = (_menu: Menu): Outcome<Declaration, Finding> => ({
  value: { dishes: [], grid: [], guestsToSwap: [] },
  findings: [],
});

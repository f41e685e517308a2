import type { Finding } from "../findings/finding.ts";
import type { Declaration } from "../model/declaration.ts";
import type { Menu } from "../model/menu.ts";
import type { Outcome } from "../model/outcome.ts";
import { declareDish } from "./declare-dish.ts";
import type { Cards } from "./entries.ts";
import { guestGrid } from "./guest-grid.ts";

/** Allergens, ingredient lists and nutrition of every version on the menu, and the guest-by-dish grid. */
export const declarationFromMenu = (menu: Menu): Outcome<Declaration, Finding> => {
  const cards: Cards = new Map(menu.components.map((component) => [component.dish.source, component.dish]));
  const declared = menu.dishes.flatMap((onMenu) =>
    onMenu.versions.map((version) => declareDish(onMenu.dish, version, cards)),
  );
  const grid = guestGrid(menu, cards);
  return {
    value: {
      dishes: declared.map((d) => d.value),
      grid,
      guestsToSwap: menu.sitting.guests
        .map((guest) => guest.name)
        .filter((name) => grid.some((verdict) => verdict.guest === name && verdict.answer !== "yes")),
    },
    findings: declared.flatMap((d) => d.findings),
  };
};

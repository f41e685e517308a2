import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { roundDownToClaim } from "../measure/round-down-to-claim.ts";
import { type Count, count } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Outcome } from "../model/outcome.ts";

// What one guest is taken to get of a dish that only says how much it makes; common practice, no source.
const portionMillilitres = 250;
const portionGrams = 200;
const portionsWhenSilent = 4;
// From this many on, a count of tins means small ones for one guest each ("fills 8 small pots").
const tinsOfOne = 3;
const portionsOfATin = 8;

const assumed = (dish: Dish): number => {
  const made = dish.yield;
  if (made === null) return portionsWhenSilent;
  if (made.kind === "volume") return made.amount.likely / portionMillilitres;
  if (made.kind === "mass") return made.amount.likely / portionGrams;
  if (made.kind === "tin" && made.amount.likely < tinsOfOne) return portionsOfATin * made.amount.likely;
  return made.amount.likely;
};

/**
 * How many portions the card makes, in whole portions: the likely value of what it claims, rounded down. A card that
 * counts pieces is taken to give each guest one of them. What the card does not say is assumed, and said.
 */
export const dishPortions = (dish: Dish): Outcome<Count, Finding> => {
  const claim = dish.portions?.likely ?? 0;
  const stated = claim > 0 && Number.isFinite(claim);
  const portions = roundDownToClaim(stated ? claim : assumed(dish));
  const kind = dish.yield?.kind ?? null;
  const span = dish.yield?.words.span ?? dish.titleSpan;
  const oneEach = kind === "pieces" || (kind === "tin" && (dish.yield?.amount.likely ?? 0) >= tinsOfOne);
  if (oneEach)
    return {
      value: portions,
      findings: [
        makeFinding("pieces-assumed", dish.source, span, {
          title: dish.title,
          pieces: portions,
          noun: dish.yield?.noun ?? "",
        }),
      ],
    };
  const findings = stated
    ? []
    : [makeFinding("portions-assumed", dish.source, span, { title: dish.title, portions })];
  return { value: Number.isFinite(portions) ? portions : count(portionsWhenSilent), findings };
};

import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { roundDownToClaim } from "../measure/round-down-to-claim.ts";
import { type Count, count } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { Outcome } from "../model/outcome.ts";

// What one guest is taken to get of a dish that only says how much it makes; common practice, no source.
const portionMillilitres = 250;
const portionGrams = 200;
// Of what goes with a dish: sauces and dressings are poured, pastes and pickles taken by the spoon, mixes by the pinch.
const besides: readonly { readonly named: RegExp; readonly each: number }[] = [
  // Two scoops.
  { named: /\b(?:sorbet|ice cream|gelato|granita|parfait|semifreddo)s?\b/i, each: 110 },
  { named: /\b(?:rub|spice mix|spice blend|seasoning|masala powder|za'?atar|dukkah)\b/i, each: 5 },
  {
    named:
      /\b(?:paste|pesto|chutney|relish|pickles?|jam|marmalade|jelly|mayonnaise|aioli|harissa|tapenade|butter|dip|compote|confit)\b/i,
    each: 30,
  },
  {
    named: /\b(?:gravy|sauce|jus|dressing|vinaigrette|coulis|syrup|caramel|glaze|custard|salsa|marinade)\b/i,
    each: 75,
  },
];
// A jar or a bottle is put on the table for several.
const jars = /\b(?:jars?|bottles?|tubs?)\b/i;
const portionsOfAJar = 12;
const portionsWhenSilent = 4;
// From this many on, a count of tins means small ones for one guest each ("fills 8 small pots").
const tinsOfOne = 3;
const portionsOfATin = 8;

const assumed = (dish: Dish): number => {
  const made = dish.yield;
  if (made === null) return portionsWhenSilent;
  const words = `${dish.title} ${made.noun}`;
  const each = besides.find(({ named }) => named.test(words))?.each;
  if (made.kind === "volume") return made.amount.likely / (each ?? portionMillilitres);
  if (made.kind === "mass") return made.amount.likely / (each ?? portionGrams);
  if (jars.test(made.noun)) return portionsOfAJar * made.amount.likely;
  if (made.kind === "tin" && made.amount.likely < tinsOfOne) return portionsOfATin * made.amount.likely;
  return made.amount.likely;
};

/**
 * How many portions the card makes, in whole portions: the likely value of what it claims, rounded down. A card that
 * counts pieces is taken to give each guest one of them. What the card does not say is assumed, and said.
 */
export const dishPortions = (dish: Dish): Outcome<Count, Finding> => {
  const claim = dish.portions?.likely ?? 0;
  const inJars = dish.yield !== null && jars.test(dish.yield.noun);
  const stated = claim > 0 && Number.isFinite(claim) && !inJars;
  const portions = roundDownToClaim(stated ? claim : assumed(dish));
  const kind = dish.yield?.kind ?? null;
  const span = dish.yield?.words.span ?? dish.titleSpan;
  const oneEach =
    !inJars && (kind === "pieces" || (kind === "tin" && (dish.yield?.amount.likely ?? 0) >= tinsOfOne));
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

import { type OwnVessel, ownVessels } from "../larder/own-vessels.ts";
import { smallNumbers, tenNumbers } from "../measure/number-words.ts";
import { count } from "../measure/units.ts";
import type { Dish, Step } from "../model/dish.ts";
import type { VesselUse } from "../model/menu.ts";
import type { SheetCount } from "../model/sheet.ts";

/** So many of a vessel at another size, whole; never none. */
export const vesselsHere = (vessel: OwnVessel, factor: number): number =>
  Math.max(1, Math.ceil(vessel.count * factor - 1e-9));

const inKitchens: ReadonlySet<string> = new Set(["dish", "casserole"]);

/**
 * The vessels that the card counts and that are used here: where the kitchen's own trays, containers or pots do for its
 * dishes, those are told instead.
 */
export const ownVesselsHere = (dish: Dish, uses: readonly VesselUse[]): readonly OwnVessel[] => {
  const ovens = new Set(
    dish.steps.flatMap(({ actions }) => actions.flatMap((a) => (a.station === "oven" ? a.id : []))),
  );
  const instead = uses.some(({ action }) => ovens.has(action));
  return ownVessels(dish).filter(({ noun }) => !(instead && inKitchens.has(noun)));
};

const numbers = [...smallNumbers.keys(), ...tenNumbers.keys()].join("|");
/** "cut it in 30", "pipe 24 buns": a verb that makes pieces, and the number soon after it. */
const making = new RegExp(
  `\\b(?:cut|divide|split|shape|roll|pipe|form|make|stamp|scoop|portion|drop)\\b[^.;]{0,40}?\\b((\\d{1,4}|${numbers})(?:\\s+(?!and\\b|or\\b|on\\b|with\\b|to\\b)[a-z]+)?)`,
  "gi",
);
const aSize = /^\S+\s*(?:cm|mm|in|inch|inches|g|kg|oz|lb|ml|l|minutes?|mins?|hours?|times?|°|%)\b/i;

const numberOf = (word: string): number =>
  smallNumbers.get(word.toLowerCase()) ?? tenNumbers.get(word.toLowerCase()) ?? Number(word);

/** The numbers in the words of a step that are others at this size: of pieces that the card makes, and of its own vessels. */
export const countsOf = (
  dish: Dish,
  step: Step,
  factor: number,
  own: readonly OwnVessel[],
): readonly SheetCount[] => {
  if (Math.abs(factor - 1) < 1e-9) return [];
  const vessels = own
    .filter((v) => v.step === step.index)
    .map((v) => ({ words: v.words, here: count(vesselsHere(v, factor)), card: v.count }));
  const makes =
    dish.yield?.kind === "mass" || dish.yield?.kind === "volume" ? null : dish.yield?.amount.likely;
  const pieces = [...step.text.matchAll(making)].flatMap(([, words = "", figure = ""]) =>
    numberOf(figure) === makes && !aSize.test(words) && !vessels.some((v) => v.words.includes(words))
      ? [{ words, here: count(Math.max(1, Math.ceil(makes * factor - 1e-9))), card: makes }]
      : [],
  );
  return [...pieces, ...vessels]
    .filter(({ here, card }) => here !== card)
    .map(({ words, here }) => ({ words, here }));
};

import type { MenuFacts } from "#engine/index.ts";
import { countText, numberText, quoted } from "../number-text.ts";
import { massText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

/** What is said about the menu, the purchase and the prices. */
export const menuSentences: SentencesOf<MenuFacts> = {
  "dish-unknown": ({ dish, near }) => ({
    says: `No card is called ${quoted(dish)}.`,
    write:
      near === ""
        ? "Write the name of a card's file, without its ending."
        : `Write "${near}" if that is the card.`,
  }),
  "portions-assumed": ({ title, portions }) => ({
    says: `${quoted(title)} does not say how many it serves; ${countText(portions, "portion was", "portions were")} taken.`,
    write: 'Write "Serves" and a number on the card.',
  }),
  "swap-missing": ({ guest, need, title, ingredient }) => ({
    says: `${guest} (${need}): ${quoted(ingredient)} in ${quoted(title)} stands against it, and the card has no swap.`,
    write: `Write a swap on the card: what replaces the ${ingredient}.`,
  }),
  "need-unknown": ({ need, near }) => ({
    says: `${quoted(need)} is no need that the tool knows, so it was not looked for in any dish.`,
    write:
      near === ""
        ? "Write a need from the list in docs/formats.md."
        : `Write "${near}" if that is what you mean.`,
  }),
  "not-scaled": ({ name }) => ({
    says: `${quoted(name)} has no amount that can be scaled.`,
    write: "Write its amount on the card.",
  }),
  "batches-needed": ({ verb, batches, because }) => ({
    says: `${quoted(verb)} takes ${numberText(batches)} batches: ${because}.`,
    write: null,
  }),
  "card-unknown": ({ name }) => ({
    says: `A line uses ${quoted(name)}, and no card goes by that title.`,
    write: "Add the card, or write what is bought instead.",
  }),
  "price-missing": ({ name, grams }) => ({
    says: `No list has ${quoted(name)} (${massText(grams)}); it is left out of the total.`,
    write: "Add a row for it to a price list.",
  }),
  "pack-unit-unknown": ({ item, unit }) => ({
    says: `${quoted(item)} is sold by ${quoted(unit)}, which is no unit that the tool knows; the row was left out.`,
    write: "Write g, kg, ml, l or piece.",
  }),
  "pack-food-unknown": ({ item, food }) => ({
    says: `${quoted(item)} is listed as ${quoted(food)}, which is not in the food table; the row was left out.`,
    write: "Write a name that the food table knows.",
  }),
};

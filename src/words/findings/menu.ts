import type { AdjustmentReason, BatchReason, MenuFacts } from "#engine/index.ts";
import { countText, numberText, percentText, quoted } from "../number-text.ts";
import { massText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

/** Why something is done in batches, as the end of a sentence. */
const batchReasons: { readonly [R in BatchReason]: string } = {
  "card-says": "the card does so, and there is more of it here",
  "pan-volume": "the largest pan holds no more",
  "oven-shelves": "the trays and shelves hold no more",
  "frying-fat": "the fat stays hot for no more at once",
};

/** Why an amount does not go in step with the portions, after a colon. */
export const adjustmentTexts: { readonly [R in Exclude<AdjustmentReason, "whole-pieces">]: string } = {
  "boils-away": "what boils away goes by the surface of the pot, not by what is in it",
  spice: "strong flavours are held back in large amounts",
  yeast: "a large dough stays warm and ferments faster",
  "raising-agent": "raising powders are held back in large amounts",
  "pan-surface": "it films the pan, whose surface grows less than what it holds",
  panful: "it is one panful to fry in, and what the food takes up",
  bath: "what food is lifted from is used again for the next batch",
  covers: "it has to cover what lies in it, and in a larger vessel less stands over it",
  "liquid-left": "a larger pot boils away less of its liquid, and it thickens what is left",
  tins: "each tin is greased whole, however full it is",
};

/** From more batches than this on a caterer finds another way. Common practice, no source. */
const manyBatches = 20;

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
  "pieces-assumed": ({ title, pieces, noun }) => ({
    says: `${quoted(title)} makes ${numberText(pieces)} ${noun === "" ? "pieces" : noun}; one was taken for each guest.`,
    write: 'Write "Serves" and a number on the card if guests get more than one.',
  }),
  "swap-missing": ({ guest, need, title, ingredient }) => ({
    says: `${guest} (${need}): ${quoted(ingredient)} in ${quoted(title)} stands against it, and the card has no swap.`,
    write: `Write a swap on the card: what replaces the ${ingredient}.`,
  }),
  "need-unknown": ({ need, near, guest }) => ({
    says: `${quoted(need)} is no need that the tool knows, so that nothing is portioned for ${guest}.`,
    write:
      near === ""
        ? "Write a need from the list in docs/formats.md."
        : `Write "${near}" if that is what you mean.`,
  }),
  "guests-beyond-covers": ({ guests, covers }) => ({
    says: `${countText(guests, "guest is", "guests are")} named and there ${covers === 1 ? "is" : "are"} ${countText(covers, "cover", "covers")}; everything is portioned for ${numberText(guests)}.`,
    write: "Correct the covers or the guests.",
  }),
  "course-empty": ({ course }) => ({
    says: `No dish stands under ${quoted(course)}, so nothing is made for it.`,
    write: "Write its dishes, or take the course out.",
  }),
  "dish-for-nobody": ({ title }) => ({
    says: `Nothing of ${quoted(title)} is made: something in it stands against every guest, or is not known.`,
    write: "Write swaps on its card, or put another dish in its place.",
  }),
  "not-scaled": ({ name }) => ({
    says: `${quoted(name)} has no amount that can be scaled.`,
    write: "Write its amount on the card.",
  }),
  "batches-needed": ({ verb, batches, because }) => ({
    says: `${quoted(verb)} takes ${countText(batches, "batch", "batches")}: ${batchReasons[because]}.`,
    write:
      batches > manyBatches
        ? "So many are no way to work: do it on trays in the oven or in a larger pan, or hire one."
        : null,
  }),
  "card-unknown": ({ name }) => ({
    says: `A line uses ${quoted(name)}, and no card goes by that title.`,
    write: "Add the card, or write what is bought instead.",
  }),
  "card-used": ({ name, title }) => ({
    says: `${quoted(name)} is made from the card ${quoted(title)}.`,
    write: "Name it otherwise on the line if it is bought.",
  }),
  "card-share-assumed": ({ name, title, share }) => ({
    says: `How much of ${quoted(title)} ${quoted(name)} takes is not clear; ${numberText(share, 2)} times its card was taken.`,
    write: "Write what that card makes, and how much of it goes in here, in the same unit.",
  }),
  "whole-pieces": ({ title, name, pieces, by }) => ({
    says: `${quoted(title)}: ${numberText(pieces)} whole ${name} are taken, and the rest of that part is made ${percentText(by - 1)} larger to keep in step.`,
    write: null,
  }),
  "amount-adjusted": ({ title, name, factor, times, reason }) => ({
    says: `${quoted(title)} is made ${numberText(factor, 1)} times over, and ${quoted(name)} ${percentText(Math.abs(times - 1))} ${times < 1 ? "less" : "more"} than in step: ${adjustmentTexts[reason]}.`,
    write: "Taste and look before the rest goes in.",
  }),
  "scaled-far": ({ title, factor }) => ({
    says: `${quoted(title)} is made ${numberText(factor, 1)} times over: what is known not to grow in step was adjusted, and no reckoning knows how it tastes.`,
    write: "Taste, and hold some of the seasoning back.",
  }),
  "pack-weight-assumed": ({ item, grams }) => ({
    says: `${quoted(item)} was taken to hold ${massText(grams)}, at the density of water.`,
    write: "List it by weight if that is wrong.",
  }),
  "price-missing": ({ name, grams }) => ({
    says: `No list has ${quoted(name)} (${massText(grams)}); it is left out of the total.`,
    write: "Add a row for it to a price list.",
  }),
  "prices-none": ({ foods }) => ({
    says: `No price list has a price yet: ${countText(foods, "food", "foods")} to buy ${foods === 1 ? "is" : "are"} told by weight alone, and nothing is costed.`,
    write: "Name a price list in the sitting: supplier,item,food,size,unit,price.",
  }),
  "pack-unit-unknown": ({ item, unit, supplier, line }) => ({
    says: `${quoted(item)} (${supplier}, line ${numberText(line)}) is sold by ${quoted(unit)}, which cannot be weighed; the row was left out.`,
    write: "Write a number and g, kg, ml, l, piece or bunch.",
  }),
  "pack-food-unknown": ({ item, food, supplier, line }) => ({
    says: `${quoted(item)} (${supplier}, line ${numberText(line)}) is listed as ${quoted(food)}, which is not in the food table; only a line with those very words can use it.`,
    write: "Write a name that the food table knows.",
  }),
};

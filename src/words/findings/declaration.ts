import type { DeclarationFacts } from "#engine/index.ts";
import { quoted } from "../number-text.ts";
import { durationText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

/** What is said about allergens, nutrition and the safety sheet. */
export const declarationSentences: SentencesOf<DeclarationFacts> = {
  "allergen-check-label": ({ name, group }) => ({
    says: `${quoted(name)} may hold ${group}, by brand.`,
    write: "Read the label of the one you buy.",
  }),
  "nutrition-incomplete": ({ title, missing }) => ({
    says: `The figures for ${quoted(title)} leave out ${missing}, for which no values are known.`,
    write: null,
  }),
  "food-could-hold-anything": ({ name }) => ({
    says: `${quoted(name)} was not understood, so it could hold any allergen.`,
    write: "Write it with a name that the food table knows, and read its label.",
  }),
  "pregnancy-caution": ({ name, guest }) => ({
    says: `${guest} is pregnant, and ${quoted(name)} is usually advised against; ask her what she has been told.`,
    write: "Write a swap on the card.",
  }),
  "limit-broken": ({ title, limit }) => ({
    says: `The plan for ${quoted(title)} breaks a limit: ${limit}.`,
    write: null,
  }),
  "held-too-long": ({ title, minutes, most }) => ({
    says: `${quoted(title)} waits ${durationText(minutes)}; the card lets it wait ${durationText(most)}.`,
    write: null,
  }),
};

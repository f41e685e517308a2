import type { DeclarationFacts } from "#engine/index.ts";
import { quoted } from "../number-text.ts";
import { celsiusText, durationText } from "../quantity-text.ts";
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
  "figures-from-raw-weights": ({ title }) => ({
    says: `The figures for ${quoted(title)} are of the raw weights: water lost and fat taken up in cooking are left out.`,
    write: null,
  }),
  "not-cooked-through": ({ name }) => ({
    says: `No step cooks ${quoted(name)} through.`,
    write: "Write the step that cooks it, or say on the menu that it is served raw.",
  }),
  "made-after-allergen": ({ title, guests, verb, name, either }) => ({
    says: `${quoted(title)} for ${guests}: the plan comes to ${quoted(verb)} after it was done with ${name}.${
      either === "yes"
        ? " No order helps here, since theirs holds what a guest of the other version may not have."
        : ""
    }`,
    write:
      either === "yes"
        ? "Do one of them on other kit or kit that has been washed, or serve these guests one version that suits them both."
        : "Do theirs first, or on other kit or kit that has been washed.",
  }),
  "limit-broken": (facts) => ({ says: `${quoted(facts.title)}: ${limitBroken(facts)}.`, write: null }),
  "held-too-long": ({ title, minutes, most }) => ({
    says: `${quoted(title)} waits ${durationText(minutes)}; the card lets it wait ${durationText(most)}.`,
    write: null,
  }),
};

/** What is over or under a limit, and by the book of the region, how much it may be. */
const limitBroken = ({ quantity, celsius, most, minutes }: DeclarationFacts["limit-broken"]): string => {
  const heat = celsius === null ? "" : celsiusText(celsius);
  const limit = most === null ? "" : durationText(most);
  const found = minutes === null ? "" : durationText(minutes);
  switch (quantity) {
    case "core":
      return `the card cooks it to ${heat}${minutes === null ? "" : ` for ${found}`}; the usual limit is ${limit === "" ? "hotter" : `${limit} at that heat`}`;
    case "reheat":
      return `the usual limit for reheating is ${heat}, and the card says less`;
    case "cool-to":
      return `${found} pass between the heat and the cold; the usual limit to reach ${heat} is ${limit}`;
    case "hold-hot":
    case "off-heat":
      return `it waits ${found}; off the heat, below ${heat}, the usual limit is ${limit}`;
    case "hold-cold":
    case "out-of-cold":
      return `it stands ${found} out of the cold; above ${heat} the usual limit is ${limit}`;
    case "keep":
      return `it is kept ${found}; the usual limit is ${limit}`;
    case "freeze":
      return `served raw, it is usually frozen first, at ${heat} for ${limit}`;
  }
};

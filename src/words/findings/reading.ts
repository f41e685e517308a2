import type { ReadingFacts } from "#engine/index.ts";
import { numberText, quoted } from "../number-text.ts";
import { celsiusText, durationText, massText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

// How a weight was found that no scales told.
const weightBasisWords: Readonly<Record<string, string>> = {
  pieces: "by the usual weight of a piece",
  volume: "by the usual weight of that volume",
  pack: "by the usual pack",
  vague: "by what the word usually means",
};

/** What is said about a card. */
export const readingSentences: SentencesOf<ReadingFacts> = {
  "text-empty": () => ({
    says: "The card has no words.",
    write: "Write a title, what goes in and what is done with it.",
  }),
  "text-not-readable": ({ reason, kept }) => ({
    says:
      reason === "binary"
        ? "This is not text: it holds bytes that no plain text has."
        : `This is longer than any card; the first ${numberText(kept)} characters were read.`,
    write: reason === "binary" ? "Save the card as plain text." : "Put one dish on one card.",
  }),
  "title-missing": ({ assumed }) => ({
    says: `No title was found; the dish goes by ${quoted(assumed)}.`,
    write: "Write the name of the dish on the first line.",
  }),
  "yield-missing": () => ({
    says: "The card does not say how many it feeds.",
    write: 'Write "Serves" or "Makes" and a number under the title.',
  }),
  "method-missing": () => ({
    says: "No method was found, so no work can be planned.",
    write: "Write what is done, step by step.",
  }),
  "ingredients-missing": () => ({
    says: "No list of ingredients was found.",
    write: "Write each ingredient on a line of its own, with its amount.",
  }),
  "amount-missing": ({ name }) => ({
    says: `No amount stands with ${quoted(name)}.`,
    write: "Write how much, by weight if you can.",
  }),
  "amount-vague": ({ words, likely, unit }) => ({
    says: `${quoted(words)} was taken as about ${numberText(likely, 2)} ${unit}.`,
    write: "Write the amount if that is not it.",
  }),
  "amounts-disagree": ({ name, first, second }) => ({
    says: `Two amounts stand for ${quoted(name)} and do not agree: ${first} and ${second}.`,
    write: "Keep the one that is right.",
  }),
  "weight-assumed": ({ name, grams, basis }) => ({
    says: `${quoted(name)} was taken to weigh ${massText(grams)}, ${weightBasisWords[basis] ?? "by a usual figure"}.`,
    write: "Write the weight if yours differ.",
  }),
  "weight-unknown": ({ name }) => ({
    says: `The weight of ${quoted(name)} could not be worked out.`,
    write: "Write a weight in grams beside it.",
  }),
  "food-unknown": ({ name, near }) => ({
    says:
      near === ""
        ? `${quoted(name)} is not in the food table: its weight, price and allergens are not known.`
        : `${quoted(name)} is not in the food table; the nearest name is ${quoted(near)}.`,
    write: near === "" ? "Write a more usual name for it." : `Write "${near}" if that is what you mean.`,
  }),
  "allergens-unstated": ({ name }) => ({
    says: `${quoted(name)} is a food of your own, and nobody has said what allergens it holds: each of the 14 groups is marked to be asked about.`,
    write: 'Write "allergens:" for it in your list of foods, or "made of:" with what goes into it.',
  }),
  "unit-doubtful": ({ words, taken }) => ({
    says: `${quoted(words)} can be read in more than one way; it was taken as ${taken}.`,
    write: "Write the unit out.",
  }),
  "amount-doubtful": ({ words, taken }) => ({
    says:
      taken === ""
        ? `${quoted(words)} is no amount that could be meant; it was left out.`
        : `${quoted(words)} is no amount that could be meant; it was taken as ${taken}.`,
    write: "Write the figure that is meant.",
  }),
  "line-not-understood": ({ words }) => ({
    says: `This line was not understood: ${quoted(words)}.`,
    write: "Write the amount, the unit and the food.",
  }),
  "used-not-listed": ({ name }) => ({
    says: `${quoted(name)} is used in the method and stands on no line of the list.`,
    write: "Add it to the list with its amount.",
  }),
  "listed-not-used": ({ name }) => ({
    says: `${quoted(name)} is on the list and the method never uses it.`,
    write: "Say in the method where it goes in, or take it off the list.",
  }),
  "more-used-than-listed": ({ name, share }) => ({
    says: `The method uses ${numberText(share, 2)} times the ${quoted(name)} that is listed.`,
    write: "Raise the amount on the list, or correct the method.",
  }),
  "time-missing": ({ verb, assumed }) => ({
    says: `No time stands with ${quoted(verb)}; ${durationText(assumed)} was put in.`,
    write: "Write how long it takes.",
  }),
  "cue-only-time": ({ verb, cue, assumed }) => ({
    says: `${quoted(verb)} goes on ${quoted(cue)} with no time; ${durationText(assumed)} was put in.`,
    write: "Write about how long that takes.",
  }),
  "technique-unknown": ({ verb }) => ({
    says: `${quoted(verb)} is no verb that the tool knows, so its station and its time are not known.`,
    write: "Write it with a more usual kitchen verb.",
  }),
  "temperature-missing": ({ verb }) => ({
    says: `No temperature stands with ${quoted(verb)}.`,
    write: "Write the oven or oil temperature.",
  }),
  "temperature-doubtful": ({ verb, celsius, low, high }) => ({
    says: `${celsiusText(celsius)} is unusual for ${quoted(verb)}, which is mostly done at ${numberText(low)} to ${numberText(high)} °C.`,
    write: "Check the figure and its scale.",
  }),
  "temperature-scale-assumed": ({ words, celsius }) => ({
    says: `${quoted(words)} names no scale; it was taken as ${celsiusText(celsius)}.`,
    write: "Write °C or °F.",
  }),
  "ratio-broken": ({ first, second, stated, found }) => ({
    says: `The card says ${numberText(stated, 2)} of ${first} to 1 of ${second}; its amounts give ${numberText(found, 2)} to 1.`,
    write: "Correct the amounts or the ratio.",
  }),
  "swap-not-understood": ({ words }) => ({
    says: `This swap was not understood: ${quoted(words)}.`,
    write: 'Write it as "Without nuts: replace the … with the same weight of …".',
  }),
  "keeping-not-understood": ({ words }) => ({
    says: `This line about keeping was not understood: ${quoted(words)}.`,
    write: 'Write how long and where: "Keeps 2 days in the fridge".',
  }),
  "raw-egg": ({ name }) => ({
    says: `${quoted(name)} is eaten raw or barely cooked; raw egg can carry salmonella.`,
    write:
      "Say on the card which eggs to use, such as pasteurised egg, and who should not be served it; follow your local code.",
  }),
  "core-temperature-missing": ({ name, celsius }) => ({
    says: `No core temperature stands for ${quoted(name)}; the usual rule asks for ${celsiusText(celsius)} in the middle.`,
    write: `Write the core temperature to reach, such as ${celsiusText(celsius)}; your local code decides.`,
  }),
  "cooling-missing": ({ name }) => ({
    says: `${quoted(name)} is kept after cooking, and the card does not say how it is cooled.`,
    write: "Write how it is cooled, and how fast.",
  }),
};

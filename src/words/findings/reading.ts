import type { ReadingFacts } from "#engine/index.ts";
import { allergenLabels } from "../labels.ts";
import { capital, numberText, percentText, quoted } from "../number-text.ts";
import { celsiusText, durationText, massText } from "../quantity-text.ts";
import type { SentencesOf } from "./sentence.ts";

// How a weight was found that no scales told.
const weightBasisWords: Readonly<Record<string, string>> = {
  pieces: "by the usual weight of a piece",
  volume: "by the usual weight of that volume",
  pack: "by the usual pack",
  vague: "by what the word usually means",
};

const allergenWords = (groups: string): string =>
  groups
    .split(", ")
    .map((id) => Object.entries(allergenLabels).find(([group]) => group === id)?.[1] ?? id)
    .join(", ");

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
  "own-food-stated": ({ name, groups, by }) => ({
    says: `${quoted(name)} is a food of your own. ${by === "" ? "Your list of foods states" : `${capital(by)} states`}: ${
      groups === "" ? "none of the 14 groups of allergens" : `allergens ${allergenWords(groups)}`
    }.`,
    write: "Check it against the label of what you buy.",
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
  "part-unused": ({ name, share }) => ({
    says: `The method takes ${numberText(Math.round(share * 100), 0)} % of the ${quoted(name)} that is listed, and nothing says what the rest is for.`,
    write: "Say where the rest goes, or lower the amount on the list.",
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
  "fan-setting-raised": ({ words, fan, celsius }) => ({
    says: `${quoted(words)} is ${celsiusText(fan)} in a fan oven; it is reckoned as ${celsiusText(celsius)} in one without.`,
    write: 'Write both figures, such as "180 °C, 160 °C fan".',
  }),
  "fridge-assumed": ({ verb, minutes }) => ({
    says: `No word says where it stands for ${quoted(verb)}, ${durationText(minutes)}; it was put in the fridge, where food that spoils is kept.`,
    write: "Write where it stands, such as in the fridge. Local codes decide how long food may stand out.",
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
  "oven-not-preheated": ({ celsius }) => ({
    says: `Nothing says that the oven is heated to ${celsiusText(celsius)} first.`,
    write: "Write it at the beginning, so that it is planned.",
  }),
  "rest-missing": ({ name }) => ({
    says: `${capital(quoted(name))} is carved straight from the oven.`,
    write: "Write how long it rests; twenty minutes keep the juice in.",
  }),
  "order-doubtful": ({ verb, before }) => ({
    says: `${capital(quoted(verb))} stands before ${quoted(before)}, which should come first.`,
    write: "Put the steps in the order in which they are done.",
  }),
  "beans-not-boiled": ({ name }) => ({
    says: `Nothing has ${quoted(name)} boiled hard: raw or slowly cooked they can make people ill.`,
    write:
      "Soak them, throw the water away and boil them hard for at least ten minutes (the FDA advises thirty) before they simmer. Local advice decides.",
  }),
  "raw-flour-eaten": ({ name }) => ({
    says: `Nothing heats ${quoted(name)}; flour is raw and may carry bacteria.`,
    write: "Cook it, or take flour that was sold as heat-treated.",
  }),
  "thawed-warm": () => ({
    says: "Thawed in the warm, the outside is soon warmer than it should be while the middle is frozen.",
    write: "Thaw it in the fridge, or under cold running water; local codes decide.",
  }),
  "poultry-washed": () => ({
    says: "Washing raw poultry spreads bacteria over sink and board.",
    write: "Pat it dry with paper, and clean down.",
  }),
  "marinade-reused": () => ({
    says: "This marinade had raw food in it and is served without being boiled.",
    write: "Boil it first, or keep some aside before the food goes in.",
  }),
  "garlic-in-oil-kept": ({ days }) => ({
    says: `Garlic or herbs under oil are kept longer than ${numberText(days)} days or out of the fridge; botulism needs neither air nor warmth that you would notice.`,
    write: "Keep it in the fridge for a few days at most, or freeze it. Local advice decides.",
  }),
  "salt-doubtful": ({ name, share }) => ({
    says: `${capital(quoted(name))} is ${percentText(share)} of all that goes in; about 1 % is usual.`,
    write: "Check the amount and its unit.",
  }),
  "raising-agent-doubtful": ({ name, share }) => ({
    says: `${capital(quoted(name))} is ${percentText(share)} of the flour, which would be tasted.`,
    write: "Check the amount and its unit.",
  }),
  "yeast-doubtful": ({ name, share }) => ({
    says: `${capital(quoted(name))} is ${percentText(share)} of the flour, far more than a dough needs.`,
    write: "Check the amount, its unit, and whether it is fresh or dried.",
  }),
  "gelatine-doubtful": ({ name, share }) => ({
    says: `${capital(quoted(name))} is ${percentText(share)} of what it sets; one to two per cent are usual.`,
    write: "Check the amount and its unit.",
  }),
  "portion-unlikely": ({ portions, grams }) => ({
    says: `For ${numberText(portions)}, each would get ${massText(grams)} of what goes in.`,
    write: "Check how many it feeds, or the amounts.",
  }),
  "time-unlikely": ({ verb, minutes }) => ({
    says: `${durationText(minutes)} are very long to ${verb}.`,
    write: "Check whether minutes are meant.",
  }),
  "interval-unlikely": ({ verb, every, minutes }) => ({
    says: `Every ${durationText(every)} does not come round once in the ${durationText(minutes)} of ${quoted(verb)}.`,
    write: "Check which of the two lengths is meant.",
  }),
  "meanwhile-alone": () => ({
    says: "Nothing goes on yet that this could be done beside.",
    write: "Leave the word out, or put the step that goes on before it.",
  }),
  "shellfish-unchecked": ({ name }) => ({
    says: `Nothing says what is done with ${quoted(name)} that stay shut.`,
    write: "Write that those that gape before, or stay shut after, are thrown away.",
  }),
  "raw-sprouts": ({ name }) => ({
    says: `${capital(quoted(name))} are eaten raw; they may carry bacteria from the seed.`,
    write: "Cook them through for guests at risk; local codes decide.",
  }),
  "raw-milk-used": ({ name }) => ({
    says: `${capital(quoted(name))} is not pasteurised.`,
    write: "Ask whether it may be served where you are, and to whom.",
  }),
  "core-too-low": ({ name, celsius, needed }) => ({
    says: `${capital(quoted(name))} is taken off at ${celsiusText(celsius)} in the middle; ${celsiusText(needed)} is what the books print.`,
    write: "Write the higher figure, or how long the lower one is held. Local codes decide.",
  }),
  "listed-twice": ({ name }) => ({
    says: `The line of ${quoted(name)} stands twice.`,
    write: "Take one off, or write what the other is for.",
  }),
  "step-repeated": () => ({ says: "This step stands twice.", write: "Take one out." }),
  "settings-disagree": ({ first, second }) => ({
    says: `${quoted(first)} and ${quoted(second)} are not the same heat.`,
    write: "Keep the one that is right.",
  }),
  "amount-beyond-list": ({ name, stated, listed }) => ({
    says: `The method takes ${stated} of ${quoted(name)}; the list has ${listed}.`,
    write: "Correct the one that is wrong.",
  }),
  "amount-unlikely": ({ name, words }) => ({
    says: `${quoted(words)} of ${quoted(name)} is hardly what is meant beside the rest of the list.`,
    write: "Check the figure and its unit.",
  }),
  "component-not-made": ({ name }) => ({
    says: `${capital(quoted(name))} is taken up in the method, and nothing on the list is it or could have made it.`,
    write: "List what it is made of, or the ready-made one, or name the card it comes from.",
  }),
  "kept-too-long": ({ name, days, usual }) => ({
    says: `${numberText(days)} days in the fridge are longer than is usual with ${quoted(name)}: ${usual === 1 ? "one day" : `${numberText(usual)} days`} at most.`,
    write: "Write a shorter time, or freeze it. Local codes and the label decide.",
  }),
  "reheated-twice": () => ({
    says: "Cooked food is heated up again more than once here.",
    write: "Heat up only what is eaten, once. Local codes decide.",
  }),
  "hot-in-fridge": () => ({
    says: "A hot pot that goes into the fridge as it is stays warm for hours and warms what stands beside it.",
    write: "Write how it is cooled first: shallow trays, small portions, iced water.",
  }),
  "left-out": ({ name }) => ({
    says: `The dish stands out of the cold for hours with ${quoted(name)} in it.`,
    write: "Write how it is kept hot, or how fast it is cooled and put in the fridge. Local codes decide.",
  }),
  "stuffing-unchecked": ({ celsius }) => ({
    says: "The bird is cooked with its stuffing inside, and nothing says how hot the middle of the stuffing gets.",
    write: `Write that the middle of the stuffing reads ${celsiusText(celsius)}, or cook it in a dish of its own. Local codes decide.`,
  }),
};

import { allergenGroups, dietFacts, hazardKinds, shelves } from "#engine/index.ts";
import type { Problem, ProblemCode, ProblemFacts, Wanted } from "#wire/problem.ts";
import type { Sentence, SentencesOf } from "./findings/sentence.ts";
import { listText, quoted } from "./number-text.ts";

/** What a value has to be, with an example. */
const wantedWords: { readonly [W in Wanted]: string } = {
  text: "words",
  list: "a list with something in it",
  map: "keys with values",
  date: "a date such as 2026-10-17",
  region: "uk, us, eu or au",
  currency: "an ISO 4217 code such as GBP",
  "whole-number": "a whole number such as 0 or 4",
  "number-from-one": "a whole number from 1",
  number: "a number such as 2.5",
  share: "a share such as 5 % or 0.05",
  "course-time": 'a time such as "19:00" or "2026-10-17 19:00"',
  shift: "a shift such as 2026-10-17 14:00-22:30",
  "yes-or-no": "true or false",
  "file-name": "the name of a file",
  cards: "a folder, or a list of card files",
  price: "a price such as 3.60, with a point, no sign and no more decimals than the currency has",
  size: "a number above 0 such as 2.5",
  columns: "supplier,item,food,size,unit,price",
  integer: "a whole number such as -30 or 90",
  edge: '"start" or "end"',
  attention: '"hands", "mind" or "none"',
  "bench-attention": '"handsOn", "minded" or "unattended"',
  level: '"late", "hold", "free-from", "calm", "service" or "freshness"',
  reason: "a reason of the list in docs/formats.md, such as hold-limit",
  landing: '"last" or "first"',
  "cold-ovens": '"at-opening" or "once"',
  stretch: "two whole minutes, the earlier first, such as [600, 1320]",
  minutes: "minutes such as 12, or the least, the likely and the most such as [10, 12, 20]",
  "not-below-least": "a number not below the lag's least",
  "late-minutes": "minutes from 0 to 1440",
  "later-minutes": "minutes from -240 (sooner) to 240 (later)",
  "how-many": "a number above 0",
  "task-not-done": 'a task that does not stand under "done" too',
  format: "the format's name, tamis-problem/1 or kitchen-bench/1",
  shelf: listText(shelves, "or"),
  density: "grams a millilitre, from 0.02 to 3",
  pieces: "grams by kind of piece, such as {bottle: 250}",
  allergen: `one of ${listText(allergenGroups, "or")}, with the kind in brackets, and ? for "read the label"`,
  allergens: "a list such as [soya, gluten (wheat), fish?], or none",
  diet: `a list of ${listText(dietFacts, "or")}, or none`,
  hazard: listText(hazardKinds, "or"),
  kcal: "kilocalories in 100 g, 900 at most",
  "grams-in-100": "grams in 100 g",
  work: "a verb of hand work, such as peel or dice",
  food: "a food, by a name that the food table knows",
  "one-rate": "either minutes per kilo or minutes per piece",
  "tin-shape": "round, square, rectangle or loaf",
  "tin-length": "the length of a rectangle or a loaf tin, and none for a round or square one",
  "container-size": "a Gastronorm size with its depth in mm, such as GN 1/1 65",
};

const fileUse = {
  sitting: "the sitting",
  kitchen: "the kitchen",
  prices: "a price list",
  foods: "a list of foods",
  card: "a card",
  cards: "the cards",
} as const;

const fileKinds = {
  yaml: "YAML",
  csv: "CSV",
  psplib: "a project in the form of PSPLIB",
  "progen-max": "a project in the form of ProGen/max",
} as const;

const problemSentences: SentencesOf<ProblemFacts> = {
  "file-missing": ({ name, use }) => ({
    says: `There is no ${quoted(name)}, which is named as ${fileUse[use]}.`,
    write: "Write the name as the file or folder has it, from the sitting's own folder.",
  }),
  "file-empty": ({ name }) => ({ says: `${quoted(name)} is empty.`, write: null }),
  "file-not-text": ({ name, reason }) => ({
    says:
      reason === "binary"
        ? `${quoted(name)} is not text.`
        : `${quoted(name)} is longer than any file of this kind.`,
    write: "Save it as plain text (UTF-8).",
  }),
  "marks-broken": ({ kind, why }) => ({
    says: `This cannot be read as ${fileKinds[kind]}: ${why}.`,
    write: null,
  }),
  "key-unknown": ({ key, near, known }) => ({
    says: `${quoted(key)} is not known here.`,
    write:
      near !== ""
        ? `Write "${near}" if that is what you mean.`
        : known.length > 0
          ? `Write one of ${listText(known, "or")}.`
          : null,
  }),
  "key-missing": ({ key, wanted }) => ({
    says: `${quoted(key)} is missing.`,
    write:
      wanted === "columns"
        ? `Write the columns ${wantedWords.columns}.`
        : `Write "${key}:" and ${wantedWords[wanted]}.`,
  }),
  "value-bad": ({ key, found, wanted }) => ({
    says: `${quoted(key)} holds ${quoted(found)}.`,
    write: `Write ${wantedWords[wanted]}.`,
  }),
  "name-twice": ({ name }) => ({
    says: `${quoted(name)} stands here twice.`,
    write: "Give each a name of its own.",
  }),
  "food-taken": ({ name, by }) => ({
    says: `The name ${quoted(name)} already means ${by}.`,
    write: "Give the food a name of its own, such as one with the house's name in front.",
  }),
  "allergens-unstated": ({ name }) => ({
    says: `Nothing says what allergens ${quoted(name)} holds: each of the 14 groups is marked to be asked about.`,
    write:
      'Write "allergens:" with what the label says, or "allergens: none", or "made of:" with what goes into it.',
  }),
  "name-unknown": ({ name, of, near }) => ({
    says: `There is no ${of} named ${quoted(name)}.`,
    write: near === "" ? null : `Write "${near}" if that is what you mean.`,
  }),
  "value-assumed": ({ key, taken }) => ({
    says: `${quoted(key)} is not written; ${taken} was taken.`,
    write: `Write "${key}:" if yours differs.`,
  }),
};

const sentenceFor = <C extends ProblemCode>(code: C, facts: ProblemFacts[C]): Sentence =>
  problemSentences[code](facts);

/** What a problem of a file says, in English. */
export const problemSentence = (problem: Problem): Sentence => sentenceFor(problem.code, problem.facts);

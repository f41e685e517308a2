import { smallNumbers, tenNumbers } from "../measure/number-words.ts";
import type { Dish } from "../model/dish.ts";

/** Vessels that a card fills one by one, which a kitchen does not list among its pans: singular and plural. */
const nouns: ReadonlyMap<string, string> = new Map(
  (
    "tray:trays tin:tins mould:moulds mold:molds pot:pots ramekin:ramekins dish:dishes jar:jars glass:glasses " +
    "bowl:bowls basin:basins cup:cups case:cases casserole:casseroles bottle:bottles verrine:verrines"
  )
    .split(" ")
    .flatMap((pair): readonly (readonly [string, string])[] => {
      const [one = "", many = ""] = pair.split(":");
      return [
        [one, one],
        [many, one],
      ];
    }),
);

/** A number of vessels as the card has it. */
export type OwnVessel = {
  /** Place of the step that names them; before the first when the yield does. */
  readonly step: number;
  /** "two 2 lb loaf tins", as written. */
  readonly words: string;
  readonly count: number;
  /** "tin", singular. */
  readonly noun: string;
  /** "2 lb loaf tin": what it is called, without its number, singular. */
  readonly name: string;
};

const numbers = [...smallNumbers.keys(), ...tenNumbers.keys()].join("|");
const after = "(?:\\s+(?:[\\w.-]+\\s+){0,3}?)";
const pattern = new RegExp(
  `\\b(\\d{1,3}|${numbers})(?=\\s)${after}(${[...nouns.keys()].join("|")})\\b`,
  "gi",
);
/** After these a number is a size, a time or a part, and no count. */
const notACount =
  /^\S+\s+(?:cm|mm|in|inch|inches|lb|kg|g|oz|ml|l|litres?|minutes?|mins?|hours?|of|or|more|to|and|x|×)\b/i;

const numberOf = (word: string): number =>
  smallNumbers.get(word.toLowerCase()) ?? tenNumbers.get(word.toLowerCase()) ?? Number(word);

const inText = (text: string, step: number): readonly OwnVessel[] =>
  [...text.matchAll(pattern)].flatMap((match): readonly OwnVessel[] => {
    const [words, figure = "", noun = ""] = match;
    const one = nouns.get(noun.toLowerCase());
    const many = numberOf(figure);
    if (one === undefined || notACount.test(words) || !(many > 0)) return [];
    const between = words.slice(figure.length, words.length - noun.length).trim();
    return [{ step, words, count: many, noun: one, name: `${between} ${one}`.trim() }];
  });

/**
 * The vessels that a card counts: what its yield says that it fills, then what its steps name with a number. "A tin" is
 * no count. Singular and plural are told apart, so that more of the card makes more of them.
 */
export const ownVessels = (dish: Dish): readonly OwnVessel[] => {
  const made = dish.yield;
  const last = made?.noun.split(/\s+/).at(-1)?.toLowerCase() ?? "";
  const one = nouns.get(last);
  const filled =
    made !== null &&
    one !== undefined &&
    (made.kind === "tin" || made.kind === "pieces") &&
    made.amount.likely > 0
      ? [
          {
            step: -1,
            words: made.words.text,
            count: made.amount.likely,
            noun: one,
            name: made.noun.replace(/\S+$/, one),
          },
        ]
      : [];
  return [...filled, ...dish.steps.flatMap(({ text, index }) => inText(text, index))];
};

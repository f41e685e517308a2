import type { Ingredient } from "../../model/dish.ts";
import { type ClassIndex, classIndexOf } from "./class-words.ts";
import type { Clause } from "./clauses.ts";
import { type NameIndex, nameIndexOf } from "./name-index.ts";
import type { Kitchen } from "./pools.ts";
import { stem } from "./stem.ts";

/** What stays the same, and what is carried along, while the steps of one card are read. */
export type StepReader = {
  readonly ingredients: readonly Ingredient[];
  readonly names: NameIndex;
  readonly classes: ClassIndex;
  readonly kitchen: Kitchen;
  /** The part of each listed line that the method has not used yet. */
  readonly remaining: number[];
  /** Clauses still to come that take "the rest" of a line, by ingredient. */
  readonly restLater: number[];
  /** How often lines are still to be named. */
  readonly toCome: number[];
  /** How often the method calls a line by a name that no other line bears. */
  readonly namedAlone: number[];
  /** The line of which only a part was taken last; null when none was. */
  lastPart: number | null;
  /** The last preheating; baking waits for it. */
  preheat: string | null;
  /** Setting of the last preheating, for baking that states none. */
  ovenCelsius: number | null;
  /** Actions that were put into the fridge though no word says where they stand. */
  readonly heldCold: string[];
  readonly partMembers: (noun: string) => readonly number[];
  /** The part of the list that a stemmed noun names ("pastry"); null for none. */
  readonly partNamed: (noun: string) => string | null;
  /** The list is parted by headings. */
  readonly hasParts: boolean;
  /** Stemmed words of the card's title: "the soup" on a card of that name is the dish itself. */
  readonly titleWords: ReadonlySet<string>;
};

/** Starts reading the steps of a card. */
export const newStepReader = (ingredients: readonly Ingredient[], title: string): StepReader => {
  const byPart = new Map<string, number[]>();
  for (const i of ingredients) {
    if (i.part === null || i.equipment) continue;
    for (const raw of i.part.toLowerCase().split(/[^\p{L}]+/u)) {
      const word = stem(raw);
      if (word.length > 2) byPart.set(word, [...(byPart.get(word) ?? []), i.index]);
    }
  }
  return {
    ingredients,
    names: nameIndexOf(ingredients),
    classes: classIndexOf(ingredients),
    kitchen: {
      pools: [],
      current: null,
      emptied: null,
      vacated: null,
      names: new Set(),
      turn: 0,
      split: null,
    },
    remaining: ingredients.map(() => 1),
    restLater: ingredients.map(() => 0),
    toCome: ingredients.map(() => 0),
    namedAlone: ingredients.map(() => 0),
    lastPart: null,
    preheat: null,
    ovenCelsius: null,
    heldCold: [],
    partMembers: (noun) => (byPart.size === 0 ? [] : (byPart.get(stem(noun)) ?? [])),
    partNamed: (noun) => ingredients[byPart.get(noun)?.[0] ?? -1]?.part ?? null,
    hasParts: byPart.size > 0,
    titleWords: new Set(
      title
        .toLowerCase()
        .split(/[^\p{L}]+/u)
        .filter((w) => w.length > 2)
        .map(stem),
    ),
  };
};

/** Counts, before reading, how many times "the rest" of each line is taken, and how often a line is named alone. */
export const countRests = (reader: StepReader, clauses: readonly Clause[]): void => {
  let some: number | null = null;
  const whole = new Set<number>();
  const parted = new Set<number>();
  for (const clause of clauses) {
    const object = clause.tokens[clause.verbTo + 1];
    // "Mix the flour with a bit of the water, boil the rest": all but the bit is still to come.
    if (some !== null && object?.text === "rest" && clause.tokens[clause.verbTo + 2]?.text !== "of")
      reader.restLater[some] = (reader.restLater[some] ?? 0) + 1;
    some = null;
    for (const mention of clause.mentions) {
      if (mention.portioning.kind === "some") some = mention.candidates[0]?.ingredient ?? null;
      const [first, second] = mention.candidates;
      if (first !== undefined && (second === undefined || second.strength < first.strength - 0.05))
        reader.namedAlone[first.ingredient] = (reader.namedAlone[first.ingredient] ?? 0) + 1;
      const named = first?.ingredient ?? -1;
      for (const { ingredient, strength } of mention.candidates)
        if (strength >= (first?.strength ?? 0) - 0.05)
          reader.toCome[ingredient] = (reader.toCome[ingredient] ?? 0) + 1;
      // "Brown the butter … fold in two thirds of it … the remaining butter": the rest of what was made of all of it.
      if (mention.portioning.kind === "plain") whole.add(named);
      if (mention.portioning.kind === "share" && whole.has(named)) parted.add(named);
      if (mention.portioning.kind === "rest" && !parted.has(named) && named >= 0)
        reader.restLater[named] = (reader.restLater[named] ?? 0) + 1;
    }
  }
};

import type { Estimate } from "../measure/estimate.ts";
import type { Celsius, Count, Grams, Minutes, Share } from "../measure/units.ts";
import type { Attention, FoodId, Station, TechniqueId } from "./food.ts";
import type { SourceId, Span, Words } from "./span.ts";

/** An amount as a line gives it. A line may give several for the same food ("2 leeks (about 600 g)"). */
export type Amount = Estimate<number> & {
  /** A row of the measure table ("g", "tbsp", "tin", "clove", "pinch"), "piece" for a bare count, or null for none. */
  readonly unit: string | null;
  /** "about", "roughly", "~". */
  readonly approximate: boolean;
  /** The number is a default put in for a vague word ("a slosh", "some"). */
  readonly vague: boolean;
  readonly span: Span;
};

/** How the grams of a line were found; every kind but "weighed" is an assumption that is shown. */
export type GramsBasis = "weighed" | "volume" | "pieces" | "pack" | "vague" | "none";

/** Where a stated weight stands: with what is trimmed off, or without. */
export type WeightBasis = "as-purchased" | "edible-portion";

/** What a line offers in place of its food: "or 2 tins chickpeas". */
export type Alternative = {
  readonly text: string;
  readonly food: FoodId | null;
  readonly name: string;
  readonly amounts: readonly Amount[];
  readonly grams: Estimate<Grams> | null;
};

/** One line of the list as it was understood, with its place in the text. */
export type Ingredient = {
  /** Place in the dish's list, from 0. Steps refer to it. */
  readonly index: number;
  readonly text: string;
  readonly span: Span;
  /** The part of the dish it is listed under ("pastry"); null for the dish itself. */
  readonly part: string | null;
  readonly amounts: readonly Amount[];
  /** What the line asks for, by weight, in the basis of `weightBasis`; null when unknown. */
  readonly grams: Estimate<Grams> | null;
  readonly gramsBasis: GramsBasis;
  readonly weightBasis: WeightBasis;
  /** A row of the food table; null when the words were not understood. */
  readonly food: FoodId | null;
  /** The food in the cook's own words. */
  readonly name: string;
  readonly nameSpan: Span;
  /** Another card that the line uses ("1 quantity of brown stock"): its title as written; null otherwise. */
  readonly card: string | null;
  /** "cold", "melted", "frozen", "at room temperature". */
  readonly state: readonly string[];
  /** Mise en place stated on the line: "finely chopped", "peeled", "juice of". */
  readonly preparation: readonly string[];
  /** "for greasing", "to serve"; null when none. */
  readonly purpose: string | null;
  readonly optional: boolean;
  readonly alternatives: readonly Alternative[];
  /** "large", "small", "23 cm"; null when none. */
  readonly size: string | null;
  /** The pack it comes in: "tin", "jar", "packet"; null when none. */
  readonly container: string | null;
  /** A part of the food alone: "yolk", "white", "juice", "zest"; null for the whole. */
  readonly portion: string | null;
  /** Not a food: baking paper, skewers. */
  readonly equipment: boolean;
};

/** What an action takes: an ingredient, or what an earlier action made. */
export type Use = {
  /** Place in the ingredient list; null when a product is used. */
  readonly ingredient: number | null;
  /** Id of the action that made it; null when an ingredient is used. */
  readonly product: string | null;
  /** The part of what is listed or made that goes in here, 0 to 1. */
  readonly share: Share;
  /** True when the words do not say it and it was carried from the vessel. */
  readonly implied: boolean;
  /** With a product: the ingredient by which the words name it ("the thighs", already browned). It is not taken from the list again. */
  readonly named?: number;
  /** With a product: the listed lines in it that go in here alone ("lift out the thighs"); absent when all of them do. */
  readonly only?: readonly number[];
  readonly span: Span;
};

/** Minutes for all the food: both sides, all batches. */
export type ActionMinutes = Estimate<Minutes> & {
  /** The words state no length; the technique's usual one was put in. */
  readonly assumed: boolean;
};

/** One thing that a step has the cook do: a verb with what goes in, how long, where and until when. */
export type Action = {
  /** "s2a1": the second action of the third step. Unique within the dish. */
  readonly id: string;
  readonly span: Span;
  readonly technique: TechniqueId | null;
  /** The verb as written, base form. */
  readonly verb: string;
  readonly uses: readonly Use[];
  readonly minutes: ActionMinutes | null;
  readonly station: Station;
  readonly attention: Attention;
  /** Oven, oil or water setting; null when not stated and not implied. */
  readonly celsius: Celsius | null;
  /** The heat word as a level; null when not stated. */
  readonly heat: "low" | "medium" | "high" | null;
  /** Core temperature to reach; null when not stated. */
  readonly core: Celsius | null;
  /** "large pan", "bowl"; null when not stated. */
  readonly vessel: string | null;
  /** The doneness cue: "until golden"; null when none. */
  readonly cue: string | null;
  /** What it makes, when the words or a part name it ("dough", "filling"); null otherwise. */
  readonly makes: string | null;
  /** Ids of the actions that must be done before this one may start. */
  readonly after: readonly string[];
  /** Done while the one before goes on ("meanwhile"). */
  readonly alongside: boolean;
  /** "in three batches"; null when not stated. */
  readonly batches: Count | null;
  /** "turning every 10 minutes"; null when none. */
  readonly every: Minutes | null;
  /** Least wait between the action before and this one is overnight or a stated gap; null when none. */
  readonly leastWait: Minutes | null;
};

type Phase = "method" | "to-serve";

/** A numbered step or a sentence of the method, in order; its actions stand in the order they are told. */
export type Step = {
  readonly index: number;
  readonly text: string;
  readonly span: Span;
  readonly part: string | null;
  readonly phase: Phase;
  readonly actions: readonly Action[];
};

/** "Without nuts: replace the hazelnuts with the same weight of toasted pumpkin seeds." */
export type Swap = {
  readonly text: string;
  readonly span: Span;
  /** Needs it serves, rows of the need table ("coeliac", "no-nuts"); empty when the words name none. */
  readonly needs: readonly string[];
  /** Ingredients that go. */
  readonly out: readonly number[];
  /** What comes instead; amounts null means the same weight. */
  readonly comes: readonly {
    readonly food: FoodId | null;
    readonly name: string;
    readonly grams: Estimate<Grams> | null;
    readonly amounts: readonly Amount[];
  }[];
};

/** "Keeps 3 days in the fridge"; "can be made a day ahead up to the end of step 3". */
export type Keeping = {
  readonly text: string;
  readonly span: Span;
  readonly where: "fridge" | "freezer" | "room" | "hot";
  /** How long it holds. */
  readonly minutes: Estimate<Minutes>;
  /** The step after which it holds, from 0; null for the finished dish. */
  readonly afterStep: number | null;
  /** The part of the dish it speaks of; null for the whole. */
  readonly part: string | null;
};

/** What the card says it makes: portions, pieces, grams, millilitres, or how many tins it fills. */
export type Yield = {
  readonly kind: "portions" | "pieces" | "mass" | "volume" | "tin";
  readonly amount: Estimate<number>;
  /** "biscuits", "23 cm round tin"; empty when none. */
  readonly noun: string;
  readonly words: Words;
};

/** A card that has been read. */
export type Dish = {
  readonly source: SourceId;
  readonly text: string;
  readonly title: string;
  readonly titleSpan: Span;
  /** How many it serves; from the yield when that is in portions or pieces; null when not stated. */
  readonly portions: Estimate<Count> | null;
  readonly yield: Yield | null;
  readonly ingredients: readonly Ingredient[];
  readonly steps: readonly Step[];
  readonly swaps: readonly Swap[];
  readonly keeping: readonly Keeping[];
};

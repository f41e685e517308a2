import type { Estimate } from "../measure/estimate.ts";
import type { Count, Grams, Minutes, Share } from "../measure/units.ts";
import type { Adjustment, VesselUse } from "./menu.ts";
import type { SourceId } from "./span.ts";

/** An amount as it is weighed or poured, and what it was before it was rounded for the scales. */
export type SheetAmount = {
  readonly unit: "g" | "ml";
  readonly value: number;
  readonly exact: number;
};

/** A count that goes beside the weight: whole where pieces come whole, else to the nearest half. */
export type SheetPieces = { readonly value: number; readonly exact: number; readonly name: string | null };

/** What a line that goes in step is a share of: what is left of the liquid, what it sets, or what a cook tastes. */
export type SheetBase = "liquid-left" | "what-it-sets" | "taste";

/** One ingredient of a version in its real amount. */
export type SheetLine = {
  /** Place in the dish's list; null for what a swap brings in. */
  readonly ingredient: number | null;
  readonly part: string | null;
  /** The food in the cook's own words, and what is done to it first. */
  readonly name: string;
  /** A part of the food alone ("juice", "zest"), where the words do not name it; null otherwise. */
  readonly portion: string | null;
  readonly preparation: readonly string[];
  readonly optional: boolean;
  /** The card's own line, from which the amount comes; null for what a swap brings in. */
  readonly cardText: string | null;
  readonly amount: SheetAmount | null;
  readonly pieces: SheetPieces | null;
  /** Why the amount is not the card's × the factor. */
  readonly adjusted: readonly Adjustment[];
  readonly base: SheetBase | null;
};

/** A number in the words of a step that is another at this size: "24 buns", "two lined trays". */
export type SheetCount = { readonly words: string; readonly here: Count };

/** Water that the words of a step put food in and no line lists, with its salt where it is salted. */
export type SheetWater = { readonly litres: number; readonly saltGrams: Grams | null };

/** One step of the method at this size. */
export type SheetStep = {
  readonly index: number;
  readonly text: string;
  readonly phase: "method" | "to-serve";
  /** What each action of it is done in. */
  readonly vessels: readonly (VesselUse & { readonly verb: string })[];
  /** Its words that count, where the count is another here. */
  readonly counts: readonly SheetCount[];
  readonly water: SheetWater | null;
  /** Times to go round where the card or the vessel asks for it; 1 for once. */
  readonly batches: Count;
  /** How long the tasks that begin in it take at this size, one after the other; null when none does. */
  readonly minutes: Estimate<Minutes> | null;
  /** The last step that those tasks reach into: work that goes on in one pot is one task. */
  readonly until: number;
  /** The length that its own words give, at the card's size; null when they give none. */
  readonly cardMinutes: Estimate<Minutes> | null;
  /** How much of it is by hand, on the average: likely values do not add when work is told together. */
  readonly handsMinutes: Minutes;
};

/** Something of the kitchen that the dish needs at once, at the most. */
export type SheetEquipment = {
  readonly kind: "pan" | "tray" | "container" | "oven" | "burner" | "grill" | "fryer" | "tin" | "own";
  readonly name: string;
  readonly count: Count;
  /** How many the kitchen has; fewer than `count` means that it goes in turns. Null for the card's own tins, which no kitchen lists. */
  readonly has: Count | null;
  /** The card's own words for the tin that this one of the kitchen stands in for; absent where it is none. */
  readonly insteadOf?: string;
};

/** A dish in one version at one size, as a cook works from it. */
export type Sheet = {
  readonly dish: SourceId;
  readonly title: string;
  readonly version: string;
  readonly portions: Count;
  /** Portions that the card is written for. */
  readonly cardPortions: number;
  readonly factor: number;
  readonly lines: readonly SheetLine[];
  readonly steps: readonly SheetStep[];
  readonly equipment: readonly SheetEquipment[];
  /** What goes in altogether. */
  readonly grams: Grams;
  /** Share of it whose weight is known. */
  readonly known: Share;
};

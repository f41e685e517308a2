import type {
  Dish,
  Evening,
  Finding,
  Plan,
  Prep,
  Progress,
  Region,
  Replanned,
  Risk,
  ScaledCard,
  Sitting,
} from "#engine/index.ts";
import type { VariantRow } from "#wire/variant-row.ts";
import type { Variant } from "#wire/variants.ts";

/** A text of a book as the engine is handed it. */
export type BookFile = { readonly path: string; readonly text: string };

/** What a file has against it, with its place: a finding of the engine, or a problem of the file's own form. */
export type FileRemark = {
  readonly path: string;
  readonly start: number;
  readonly end: number;
  readonly severity: "stop" | "warn" | "note";
  readonly says: string;
  readonly write: string | null;
};

/** What was read on one card. */
export type CardAnswer = { readonly dish: Dish; readonly findings: readonly Finding[] };

/** What came of a whole book. The evening is null when the files allow none. */
export type EveningAnswer = {
  readonly evening: Evening | null;
  /** How sure its plan is; null without an evening. */
  readonly risk: Risk | null;
  readonly findings: readonly Finding[];
  readonly remarks: readonly FileRemark[];
  /** Where each card's file is, by the name the card goes by. */
  readonly cardPaths: readonly (readonly [string, string])[];
};

/** The sitting alone, which is read at once; the evening takes longer. Null when the files allow none. */
export type SittingAnswer = {
  readonly sitting: Sitting | null;
  readonly remarks: readonly FileRemark[];
  readonly cardPaths: readonly (readonly [string, string])[];
};

/** A card as a document: one HTML file that needs nothing else. */
export type WriteUpAnswer = { readonly html: string };

/** What the page asks of the worker. */
export type Ask =
  | {
      readonly id: number;
      readonly ask: "write-up";
      readonly text: string;
      readonly source: string;
      readonly region: Region;
      /** The lists of the cook's own foods that the sitting names. */
      readonly foods: readonly BookFile[];
    }
  | {
      readonly id: number;
      readonly ask: "card";
      readonly text: string;
      readonly source: string;
      readonly region: Region;
      /** The lists of the cook's own foods that the sitting names. */
      readonly foods: readonly BookFile[];
    }
  | {
      readonly id: number;
      readonly ask: "foods";
      readonly list: BookFile;
    }
  | {
      readonly id: number;
      readonly ask: "sitting";
      readonly sitting: string;
      readonly files: readonly BookFile[];
    }
  | {
      readonly id: number;
      readonly ask: "evening";
      readonly sitting: string;
      readonly files: readonly BookFile[];
      /** The first plan that stands, at once; otherwise as good a one as the usual effort finds. */
      readonly quick: boolean;
    }
  | {
      readonly id: number;
      readonly ask: "sheet";
      readonly text: string;
      readonly source: string;
      readonly region: Region;
      /** For how many; null for the card's own number. */
      readonly covers: number | null;
      /** The sitting whose kitchen it is made in; null for no kitchen. */
      readonly sitting: string | null;
      readonly files: readonly BookFile[];
    }
  | {
      readonly id: number;
      readonly ask: "variant";
      readonly sitting: string;
      readonly files: readonly BookFile[];
      readonly variant: Variant;
    }
  | {
      readonly id: number;
      readonly ask: "night";
      readonly prep: Prep;
      readonly plan: Plan;
      readonly progress: Progress;
    }
  | {
      readonly id: number;
      readonly ask: "why";
      readonly prep: Prep;
      readonly plan: Plan;
    };

/** What keeps a list of the cook's own foods from being used; empty when it can be. */
export type FoodsAnswer = { readonly remarks: readonly FileRemark[] };

/** A card at another size, in the kitchen of the sitting where that can be read. */
export type SheetAnswer = ScaledCard & { readonly findings: readonly Finding[]; readonly inKitchen: boolean };

/** A sitting with some of its keys changed, in figures; null with what stops it. */
export type VariantAnswer = { readonly row: VariantRow | null; readonly stops: readonly string[] };

/** The rest of a night planned anew from how far it was, and what there is to say about it. */
export type NightAnswer = {
  readonly replanned: Replanned;
  readonly findings: readonly Finding[];
  readonly progress: Progress;
};

/** What the worker hands back, under the number of the question. */
export type Told =
  | { readonly id: number; readonly told: "sitting"; readonly answer: SittingAnswer }
  | { readonly id: number; readonly told: "write-up"; readonly answer: WriteUpAnswer }
  | { readonly id: number; readonly told: "card"; readonly answer: CardAnswer }
  | { readonly id: number; readonly told: "foods"; readonly answer: FoodsAnswer }
  | { readonly id: number; readonly told: "evening"; readonly answer: EveningAnswer }
  | { readonly id: number; readonly told: "sheet"; readonly answer: SheetAnswer }
  | { readonly id: number; readonly told: "variant"; readonly answer: VariantAnswer }
  | { readonly id: number; readonly told: "night"; readonly answer: NightAnswer }
  | { readonly id: number; readonly told: "why"; readonly answer: Plan }
  | { readonly id: number; readonly told: "failed"; readonly why: string };

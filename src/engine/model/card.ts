import type { SourceId, Words } from "./span.ts";

/** What a stretch of a card is for. */
export type BlockRole = "ingredients" | "method" | "to-serve" | "keeping" | "swaps" | "notes";

/** A run of lines under one heading (or none), all of one role. */
export type Block = {
  readonly role: BlockRole;
  /** The heading as written, without its colon or mark; null when the role was inferred from the lines. */
  readonly heading: Words | null;
  /** The part of the dish that the heading names ("For the pastry" → "pastry"); null for the dish itself. */
  readonly part: string | null;
  /** One entry an ingredient line or a step; list marks and numbers are left out of the text and the span. */
  readonly lines: readonly Words[];
};

/** The text of one dish, laid out: which words are the title, the yield, the ingredients, the method. */
export type Card = {
  readonly source: SourceId;
  readonly text: string;
  readonly title: Words | null;
  /** The words that state the yield ("Serves 8", "Makes 24 biscuits", "Fills a 23 cm tin"). */
  readonly yields: readonly Words[];
  /** Words that state times for the whole dish ("Prep 20 min", "Total time 1 h 30"). */
  readonly times: readonly Words[];
  readonly blocks: readonly Block[];
};

/** One check against something outside the house. */
export type Check = {
  readonly what: string;
  /** Document, year, table or paragraph; "from memory" or "common practice, no source" where that is so. */
  readonly source: string;
  /** Actual, expected, and the tolerance allowed between them (0 for text and whole numbers). */
  readonly run: () => readonly [actual: unknown, expected: unknown, tolerance?: number];
};

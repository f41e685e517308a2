/** A stretch of a text: offsets in UTF-16 code units, start included, end excluded. 0 ≤ start ≤ end ≤ text length. */
export type Span = { readonly start: number; readonly end: number };

/** The text a span lies in: a card's id or a sitting's id. */
export type SourceId = string;

/** Words as they stand in a source. */
export type Words = { readonly text: string; readonly span: Span };

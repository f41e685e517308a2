/** What a finding says in words: what is there, and what to write instead. */
export type Sentence = {
  /** What is there and what was looked for; one sentence, with its full stop. */
  readonly says: string;
  /** What the cook may write; null when there is nothing to write. */
  readonly write: string | null;
};

/** A sentence maker for each code of one area, typed by the facts of that code. */
export type SentencesOf<Facts> = { readonly [C in keyof Facts]: (facts: Facts[C]) => Sentence };

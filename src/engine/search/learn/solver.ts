/** A literal: a whole number; `negate` gives its opposite. */
export type Literal = number;
/** An integer unknown with a least and a greatest value. */
export type Unknown = number;

/** A use of a cumulative resource: `amount` units from `start` for `length`, when `present` holds (null: always). */
export type ResourceUse = {
  readonly start: Unknown;
  readonly offset: number;
  readonly length: number;
  readonly amount: number;
  readonly present: Literal | null;
};

/** `yes` with values, `no` (then `core` holds the assumptions that clash), or `unknown` when stopped. */
export type Verdict = "yes" | "no" | "unknown";

/** When to stop: after so many conflicts (null: never), or when `keepGoing`, asked often, says no. */
export type SearchLimit = { readonly conflicts: number | null; readonly keepGoing: () => boolean };

/**
 * Search over bounded whole numbers that learns from its conflicts (lazy clause generation: Ohrimenko, Stuckey, Codish
 * 2009). Every number given is whole and within half a thousand million; unknowns with a short range are searched
 * faster. Rules may be added between two questions; what was learned stays, for a rule is never taken back: what shall
 * be taken back hangs on a literal (`when`) and is assumed.
 */
export type LearningSolver = {
  /** An unknown from `least` to `greatest`; when there is nothing between them, every question is answered `no`. */
  readonly integer: (least: number, greatest: number) => Unknown;
  /** A yes or no of its own. */
  readonly literal: () => Literal;
  readonly negate: (literal: Literal) => Literal;
  /** The literal [x ≥ value]; made on demand. */
  readonly atLeast: (x: Unknown, value: number) => Literal;
  /** At least one of them holds. */
  readonly clause: (literals: readonly Literal[]) => void;
  /** y ≥ x + weight, whenever `when` holds (null: always). */
  readonly difference: (x: Unknown, y: Unknown, weight: number, when: Literal | null) => void;
  /** Σ coefficient · x ≤ most, whenever `when` holds. */
  readonly linear: (
    terms: readonly { readonly coefficient: number; readonly x: Unknown }[],
    most: number,
    when: Literal | null,
  ) => void;
  /** At no moment are more than `capacity` units in use, whenever `when` holds. */
  readonly cumulative: (uses: readonly ResourceUse[], capacity: number, when: Literal | null) => void;
  /** Are there values that keep all rules and these assumptions? */
  readonly solve: (assumptions: readonly Literal[], limit: SearchLimit) => Verdict;
  /** After `yes`. */
  readonly value: (x: Unknown) => number;
  readonly holds: (literal: Literal) => boolean;
  /** After `no`: assumptions that cannot hold together; empty when nothing can. */
  readonly core: () => readonly Literal[];
  /** For so many conflicts the unknown with the least value is set to it first; later, when nothing else is open. */
  readonly branchOn: (unknowns: readonly Unknown[], conflicts: number) => void;
  /** Where to look for an unknown first; a solution found takes its place. */
  readonly prefer: (x: Unknown, value: number) => void;
  /** Whether to look first where a literal of its own holds, or where it does not. */
  readonly preferLiteral: (literal: Literal, holds: boolean) => void;
  /** What is known of an unknown without any assumption. */
  readonly least: (x: Unknown) => number;
  readonly greatest: (x: Unknown) => number;
  /** Conflicts learned from so far: a measure of work that is the same on every machine. */
  readonly conflicts: () => number;
};

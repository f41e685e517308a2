import type { Severity } from "#engine/index.ts";
import type { Place } from "./place.ts";

/** What a value of a sitting, kitchen or price file had to be; src/words phrases each with an example. */
export type Wanted =
  | "text"
  | "list"
  | "map"
  | "date"
  | "region"
  | "currency"
  | "whole-number"
  | "number-from-one"
  | "number"
  | "share"
  | "course-time"
  | "shift"
  | "yes-or-no"
  | "file-name"
  | "cards"
  | "price"
  | "size"
  | "columns"
  | "container-size"
  | "tin-shape"
  | "tin-length"
  | "work"
  | "food"
  | "one-rate"
  | "shelf"
  | "density"
  | "pieces"
  | "allergen"
  | "allergens"
  | "diet"
  | "hazard"
  | "kcal"
  | "grams-in-100"
  | "integer"
  | "edge"
  | "attention"
  | "bench-attention"
  | "level"
  | "reason"
  | "landing"
  | "cold-ovens"
  | "format"
  | "stretch"
  | "minutes"
  | "not-below-least"
  | "late-minutes"
  | "later-minutes"
  | "how-many"
  | "task-not-done";

/** What a name in a problem file is the name of. */
export type Named = "task" | "cook" | "oven" | "resource" | "course" | "food";

/** The facts of each thing that can be wrong with a file. */
export type ProblemFacts = {
  /** The file is not there. */
  "file-missing": {
    readonly name: string;
    readonly use: "sitting" | "kitchen" | "prices" | "foods" | "card" | "cards";
  };
  /** The file holds no words. */
  "file-empty": { readonly name: string };
  /** The file holds bytes that no text has, or is longer than any such file. */
  "file-not-text": { readonly name: string; readonly reason: "binary" | "too-long" };
  /** The marks of YAML or CSV cannot be read. */
  "marks-broken": { readonly kind: "yaml" | "csv" | "psplib" | "progen-max"; readonly why: string };
  "key-unknown": { readonly key: string; readonly near: string; readonly known: readonly string[] };
  "key-missing": { readonly key: string; readonly wanted: Wanted };
  "value-bad": { readonly key: string; readonly found: string; readonly wanted: Wanted };
  /** The same name stands twice where one is wanted. */
  "name-twice": { readonly name: string };
  /** A food of the cook's own bears a name that another food has already. */
  "food-taken": { readonly name: string; readonly by: string };
  /** Nobody has said what allergens a food of the cook's own holds. */
  "allergens-unstated": { readonly name: string };
  /** A name that nothing in the file bears. */
  "name-unknown": { readonly name: string; readonly of: Named; readonly near: string };
  /** Nothing stands there, and a usual value was put in. */
  "value-assumed": { readonly key: string; readonly taken: string };
};

/** The name of a problem of a file, kebab-case. */
export type ProblemCode = keyof ProblemFacts;

/** One thing wrong with a file that people write, as data. */
export type Problem = {
  readonly [C in ProblemCode]: {
    readonly code: C;
    readonly severity: Severity;
    readonly place: Place;
    readonly facts: ProblemFacts[C];
  };
}[ProblemCode];

/** stop: no sitting can be made. warn: it goes on without the thing named. */
const severityOf: { readonly [C in ProblemCode]: Severity } = {
  "file-missing": "stop",
  "file-empty": "stop",
  "file-not-text": "stop",
  "marks-broken": "stop",
  "key-unknown": "stop",
  "key-missing": "stop",
  "value-bad": "stop",
  "name-twice": "stop",
  "food-taken": "stop",
  "allergens-unstated": "warn",
  "name-unknown": "stop",
  "value-assumed": "note",
};

/** Builds a problem with the severity of its code, or with a milder one where the work can go on. */
export const makeProblem = <C extends ProblemCode>(
  code: C,
  place: Place,
  facts: ProblemFacts[C],
  severity: Severity = severityOf[code],
): Problem => ({ code, severity, place, facts }) as unknown as Problem;

import { type Clause, isAim } from "./clauses.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import { joiningTechniques } from "./word-sets.ts";

/**
 * Which part of the dish the clauses of a line speak of, when no heading says it: "For the sauce, melt the butter" and
 * what follows, or "rub the butter into the flour" where only one part lists flour.
 */
export const withPartHints = (clauses: readonly Clause[], reader: StepReader): readonly Clause[] => {
  if (!reader.hasParts) return clauses;
  let aim: string | null = null;
  let last: string | null = null;
  return clauses.map((clause) => {
    const begun = aimOf(clause, reader);
    const anew = begun !== null && begun !== aim && !joiningTechniques.has(clause.hit?.technique.id ?? "");
    aim = begun ?? aim;
    last = voteOf(clause, reader) ?? last;
    return { ...clause, partHint: aim ?? last, beginsPart: anew };
  });
};

const aimOf = (clause: Clause, reader: StepReader): string | null => {
  for (let i = 0; i < clause.tokens.length; i += 1) {
    const part = reader.partNamed(clause.tokens[i]?.stem ?? "");
    if (part === null) continue;
    const made = clause.hit?.technique.id === "make" && i > clause.verbAt && i <= clause.verbAt + 3;
    // "Pastry: rub the butter …"
    const label = i < clause.verbAt && i <= 3 && clause.opens && clause.tokens[i + 1]?.text === ":";
    if (made || label || (i < clause.verbAt && isAim(clause.tokens, i, clause.verbAt))) return part;
  }
  return clause.aim === null ? null : reader.partNamed(stem(clause.aim));
};

/** The one part that all foods belong to which are named so that only one line can be meant. */
const voteOf = (clause: Clause, reader: StepReader): string | null => {
  const parts = new Set<string | null>();
  for (const mention of clause.mentions) {
    const top = mention.candidates[0]?.strength ?? 0;
    const meant = new Set(
      mention.candidates
        .filter((c) => c.strength >= top - 0.05)
        .map((c) => reader.ingredients[c.ingredient]?.part ?? null),
    );
    if (meant.size === 1) for (const part of meant) parts.add(part);
  }
  const [only = null] = parts;
  // The dish itself, beside its named parts, is "".
  return parts.size === 1 ? (only ?? "") : null;
};

import { classAt } from "./class-words.ts";
import type { Clause } from "./clauses.ts";
import { newestPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import type { Again, Fresh } from "./taken.ts";

/** A share below which nothing is left. */
export const enough = 0.001;

/** The pool in which a listed line lies, the one in hand first; of "the rest", the one of which a part was taken. */
export const poolOf = (reader: StepReader, ingredient: number, rest = false): Pool | null => {
  const { kitchen } = reader;
  if (rest && kitchen.split !== null && kitchen.split.left > enough && kitchen.split.contents.has(ingredient))
    return kitchen.split;
  if (kitchen.current?.contents.has(ingredient) === true && kitchen.current.left > enough)
    return kitchen.current;
  for (let i = kitchen.pools.length - 1; i >= 0; i -= 1) {
    const pool = kitchen.pools[i];
    if (pool?.contents.has(ingredient) === true && pool.left > enough) return pool;
  }
  return null;
};

const excepting = new Set("except excluding bar barring minus".split(" "));

/** "Everything except the butter", "all the ingredients but the parsley": where the exception stands; null for none. */
export const exceptAt = (clause: Clause): { readonly at: number; readonly everything: boolean } | null => {
  const at = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbAt &&
      (excepting.has(t.text) ||
        (t.text === "apart" && clause.tokens[i + 1]?.text === "from") ||
        (t.text === "but" && /^(the|for)$/.test(clause.tokens[i + 1]?.text ?? ""))),
  );
  if (at < 0) return null;
  const lead = clause.tokens.slice(Math.max(0, at - 4), at).map((t) => t.text);
  if (lead.some((w) => /^(everything|lot)$/.test(w))) return { at, everything: true };
  return lead.some((w) => /^ingredients$/.test(w)) ? { at, everything: false } : null;
};

/** Takes what classes of food in the words stand for ("the spices", "the remaining ingredients"). */
export const takeClasses = (
  reader: StepReader,
  clause: Clause,
  part: string | null,
  seen: Set<string>,
  fresh: Fresh[],
  again: Again[],
): void => {
  const { tokens, verbAt, mentions, hints, cueAt } = clause.lent ?? clause;
  for (let i = 0; i < tokens.length; i += 1) {
    if (mentions.some((m) => i >= m.from && i < m.to) || hints.some((m) => i >= m.from && i < m.to)) continue;
    const found = classAt(tokens, i, reader.classes, reader.partMembers, stem);
    if (found === null || i === verbAt) continue;
    if (cueAt !== null && i >= cueAt.from && i < cueAt.to) continue;
    // "the ingredients (quark, eggs, sugar)": the brackets say which.
    if (found.kind === "all" && mentions.length > 1) continue;
    // "The wet ingredients (eggs, milk)": the brackets say which.
    if (found.mixed !== undefined && tokens[found.to]?.text === "(" && mentions.length > 1) continue;
    // "Stir the dry ingredients into …": those that were mixed before.
    const mixed = found.mixed === undefined ? null : mixedOf(reader, found.mixed, found.members);
    if (mixed !== null && found.kind === "class") {
      const [first] = mixed.contents;
      if (first !== undefined && !again.some((a) => a.pool === mixed)) {
        for (const m of mixed.contents) seen.add(`${m}`);
        again.push({ ingredient: first, pool: mixed, share: 1, ...placeOf(clause, found) });
      }
      continue;
    }
    const inPart = ofPart(
      reader,
      found.members,
      found.kind === "class" ? null : part,
      part ?? clause.partHint,
    );
    const open = inPart.filter(
      (m) =>
        !seen.has(`${m}`) &&
        !seen.has(`${m}#`) &&
        (reader.remaining[m] ?? 0) > enough &&
        !(found.kind !== "class" && reader.ingredients[m]?.purpose !== null),
    );
    for (const m of open) {
      seen.add(`${m}`);
      fresh.push({
        ingredient: m,
        share: reader.remaining[m] ?? 1,
        implied: false,
        ...placeOf(clause, found),
      });
      reader.remaining[m] = 0;
    }
    // "Mix all the ingredients": what was got ready before is among them.
    if (open.length > 0 && (found.kind !== "all" || part !== null)) continue;
    for (const m of found.members) {
      const pool = poolOf(reader, m);
      if (pool === null || seen.has(`${m}`) || again.some((a) => a.pool === pool)) continue;
      if (open.length > 0 && (!pool.raw || pool.did.has("grease"))) continue;
      seen.add(`${m}`);
      again.push({ ingredient: m, pool, share: 1, ...placeOf(clause, found) });
    }
  }
};

/** The bowl in which the dry or the wet ingredients stand, if they were mixed before; null when they were not. */
const mixedOf = (reader: StepReader, kind: "wet" | "dry", members: readonly number[]): Pool | null => {
  const share = (p: Pool, of: readonly number[]): number =>
    [...p.contents].filter((m) => of.includes(m)).length / p.contents.size;
  return newestPool(
    reader.kitchen,
    (p) =>
      p.contents.size > 1 &&
      (kind === "dry"
        ? share(p, members) > 0.6
        : share(p, members) > 0.2 && share(p, reader.classes.dry) <= 0.6),
  );
};

/** Of the members of a class, those of the part that the method stands under; else those of the part that is hinted at, if any are. */
const ofPart = (
  reader: StepReader,
  members: readonly number[],
  part: string | null,
  hint: string | null,
): readonly number[] => {
  const own = (name: string): readonly number[] =>
    members.filter((m) => (reader.ingredients[m]?.part ?? (name === part ? name : "")) === name);
  if (part !== null) return own(part);
  const hinted = hint === null ? [] : own(hint);
  return hinted.length > 0 ? hinted : members;
};

/** Takes what is left of these lines without their being named. */
export const takeImplied = (
  reader: StepReader,
  members: readonly number[],
  from: number,
  to: number,
): readonly Fresh[] =>
  members
    .filter((m) => (reader.remaining[m] ?? 0) > enough)
    .map((ingredient) => {
      const share = reader.remaining[ingredient] ?? 1;
      reader.remaining[ingredient] = 0;
      return { ingredient, share, implied: true, from, to };
    });

/** Where the words of a class stand; the verb, when they are lent by the clause behind. */
const placeOf = (
  clause: Clause,
  found: { readonly from: number; readonly to: number },
): { from: number; to: number } =>
  clause.lent === null ? { from: found.from, to: found.to } : { from: clause.verbAt, to: clause.verbTo };

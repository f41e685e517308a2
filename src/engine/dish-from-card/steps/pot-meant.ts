import type { Clause } from "./clauses.ts";
import { latestPool, newestPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import { poolInVessel } from "./vessel-words.ts";
import { pans } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** What the cook has in hand. "Heat a griddle. Brush each flatbread with oil": the hot pan is empty, and what was got ready is meant. */
export const inHand = ({ kitchen }: StepReader, id: string): Pool | null => {
  const emptyPan = kitchen.current?.primed === true && kitchen.current.contents.size === 0;
  return emptyPan && /^(brush|rub|season|drizzle|sprinkle|salt|roll-out|shape)$/.test(id)
    ? (newestPool(kitchen, (p) => p.contents.size > 0) ?? kitchen.current)
    : kitchen.current;
};

/** The pot that a clause means which names no food: by the fire it goes back to, or by its vessel; null where it is the one in hand. */
export const potMeant = (reader: StepReader, clause: Clause, id: string): Pool | null => {
  const { kitchen } = reader;
  const { current } = kitchen;
  if (current === null) return null;
  // "Back to the heat, bring to 90": what stood on it before, and not the bowl beside it.
  if (!wasHot(current) && backToHeat(clause))
    return latestPool(kitchen, (p) => wasHot(p) && p.contents.size > 0);
  // "Remove the hot skillet": it is empty as yet.
  if (id === "take-out" && liftsVessel(clause)) {
    const empty = poolInVessel(reader, clause);
    return empty !== null && empty !== current && empty.contents.size === 0 ? empty : null;
  }
  // "Dip the moulds in hot water": what stands in them.
  const noun = objectVessel(clause);
  if (noun === null || current.vessel === noun || !/^(dip|unmould|chill|freeze|bake|cool)$/.test(id))
    return null;
  return newestPool(kitchen, (p) => p.vessel === noun && p.contents.size > 0);
};

/** "Mix the semolina and stir in together with the lemon": what stood there before this sentence; null elsewhere. */
export const stirredInto = (
  reader: StepReader,
  clause: Clause,
  current: Pool | null,
  sentence: string,
): Pool | null => {
  const says =
    word(clause, clause.verbAt + 1) === "in" && /^(together|along)$/.test(word(clause, clause.verbAt + 2));
  if (!says || current === null || current.sentence !== sentence) return null;
  return latestPool(
    reader.kitchen,
    (p) => p !== current && p.sentence !== sentence && p.contents.size > 0 && !p.primed && !p.aside,
  );
};

/** "Bash the salt and rub it in", when what was pounded only seasons: into the meat or fish that lies ready; null elsewhere. */
export const rubbedIn = (reader: StepReader, id: string, current: Pool | null): Pool | null => {
  if (!/^(rub|press|spread)$/.test(id) || current === null) return null;
  const main = [...reader.classes.membersOf("meat"), ...reader.classes.membersOf("fish")];
  if ([...current.contents].some((i) => main.includes(i))) return null;
  return newestPool(
    reader.kitchen,
    (p) => p !== current && !p.onHeat && !p.baked && [...p.contents].some((i) => main.includes(i)),
  );
};

/** "Fill the moulds": what was divided between them before; null where nothing was. */
const inMoulds = (reader: StepReader, clause: Clause, current: Pool | null): Pool | null => {
  const noun = clause.tokens.find((t) => /^(mould|mold|ramekin|glass|jar|cup|pot)s$/.test(t.text))?.stem;
  return noun === undefined
    ? null
    : newestPool(reader.kitchen, (p) => p !== current && p.vessel === noun && p.contents.size > 0);
};

/** "Brush the rim of the dish": the dish that was filled; null elsewhere. */
const filledDish = (reader: StepReader, clause: Clause, current: Pool | null): Pool | null => {
  const rim = clause.tokens.findIndex(
    (t, i) => /^(rim|rims|edge|edges|lip)$/.test(t.text) && word(clause, i + 1) === "of",
  );
  if (rim < 0 || !/^(dish|tin|dishes|pie|bowl)$/.test(word(clause, rim + 3))) return null;
  return newestPool(
    reader.kitchen,
    (p) =>
      p !== current && p.contents.size > 1 && (p.did.has("put") || p.did.has("fill") || p.did.has("pour")),
  );
};

/** What an action works on that names a vessel which stands beside what is in hand; null where it names none such. */
export const besideHand = (
  reader: StepReader,
  clause: Clause,
  id: string,
  current: Pool | null,
  named: readonly (Pool | null)[],
): readonly (Pool | null)[] | null => {
  const mould = /^(fill|pour|divide)$/.test(id) ? inMoulds(reader, clause, current) : null;
  if (mould !== null) return [mould, ...(named.length > 0 ? named : [current])];
  const dish = /^(brush|season|salt)$/.test(id) ? filledDish(reader, clause, current) : null;
  return dish === null ? null : [dish];
};

const hot = ["heat", "bring-to-boil", "bring-to-simmer", "infuse", "simmer", "boil", "warm"];

/** It stood on the fire, or what was made hot stands in it. */
const wasHot = (pool: Pool): boolean => pool.onHeat || hot.some((id) => pool.did.has(id));

/** "Back to the heat", "return it to the boil". */
const backToHeat = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      /^(back|return)$/.test(t.text) &&
      word(clause, i + 1) === "to" &&
      clause.tokens.slice(i + 2, i + 5).some((w) => /^(heat|hob|stove|fire|boil|simmer)$/.test(w.text)),
  );

/** "Remove the hot skillet": the vessel itself is the object. */
const liftsVessel = (clause: Clause): boolean => {
  for (let at = clause.verbTo; at < clause.verbTo + 4; at += 1) {
    if (pans.has(word(clause, at)) || /^(tin|tray|griddle)$/.test(word(clause, at))) return true;
    if (/^(from|in|into|out|of|on)$/.test(word(clause, at))) return false;
  }
  return false;
};

/** "Dip the moulds", "chill the glasses": the vessel that is the object; null for none. */
const objectVessel = (clause: Clause): string | null => {
  if (!/^(the|your)$/.test(word(clause, clause.verbTo))) return null;
  for (let at = clause.verbTo + 1; at < clause.verbTo + 3; at += 1) {
    const noun = stem(word(clause, at));
    if (/^(mould|mold|ramekin|glass|jar|tin|dish|basin|cup)$/.test(noun)) return noun;
  }
  return null;
};

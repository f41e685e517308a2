import { verbReadings } from "../../larder/techniques.ts";
import { type Clause, isAim } from "./clauses.ts";
import { onTheMeat, partOfIt, shareBefore } from "./part-of-it.ts";
import { callPool, latestPool, livePools, newestPool, type Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import type { Product } from "./taken.ts";
import { borrowedNouns, determiners, productNouns } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

// Nouns that name any mixture, so that they are no name to remember it by.
const anonymous = new Set(
  "mixture mix content lot pan tin pot dish bowl tray shape piece slice round square potato vegetable veg meat fish rice pasta noodle white yolk leaf cream".split(
    " ",
  ),
);

/** Every product that a clause names behind a determiner: "the dough", "half the filling", a part's name. */
export const findProducts = (
  reader: StepReader,
  clause: Clause,
  taken: (i: number) => boolean,
  held: readonly Pool[],
): readonly Product[] => {
  const products: Product[] = [];
  for (let i = 0; i < clause.tokens.length; i += 1) {
    if (taken(i) || taken(i - 1) || i === clause.verbAt || clause.tokens[i]?.kind !== "word") continue;
    const noun = clause.tokens[i]?.stem ?? "";
    // "Fold the lot together" is all that stands ready.
    if (noun === "lot" && clause.tokens.some((t) => t.text === "together")) continue;
    // "Brown it in three lots": how often, and not what.
    if (clause.tokens[i]?.text === "lots") continue;
    const other = partOfIt(reader, clause, i) ?? onTheMeat(reader, clause, i);
    if (other !== null) {
      products.push(other);
      continue;
    }
    const partMembers = reader.partMembers(noun);
    const isName =
      productNouns.has(noun) ||
      noun === "stuff" ||
      partMembers.length > 0 ||
      (reader.titleWords.has(noun) && noun.length > 3 && !titleFillers.has(noun));
    if (!isName) {
      if (!reader.kitchen.names.has(noun)) continue;
      const named = newestPool(reader.kitchen, (p) => p.names.has(noun));
      if (named === null) continue;
    }
    if (clause.cue !== null && isInCue(clause, i)) continue;
    // "Pastry: rub the butter in" names what is made.
    if (i < clause.verbAt && word(clause, i + 1) === ":") continue;
    if (i < clause.verbAt && isAim(clause.tokens, i, clause.verbAt)) continue;
    // "The base of the dish" is a place.
    if (/^(base|crust|shape|round|roll|ball)$/.test(noun) && word(clause, i + 1) === "of") continue;
    // "While the cake is in the oven, mix …": it stays where it is.
    if (i < clause.verbAt && clause.meanwhile) continue;
    const terse = !behindDeterminer(clause, i);
    if (
      terse &&
      partMembers.length === 0 &&
      !(bare.has(noun) && /^(|with|into|over|onto|in|to|and|,|of)$/.test(word(clause, i - 1)))
    )
      continue;
    if (
      /^(pan|tin|dish|tray|bowl|processor|board|brush|cutter|cloth)$/.test(clause.tokens[i + 1]?.stem ?? "")
    )
      continue;
    const product =
      firstMixture(reader, clause, i) ??
      madeBefore(reader, clause, i) ??
      mixedSauce(reader, clause, noun) ??
      resolve(reader, noun, partMembers, held, terse);
    if (product === null) continue;
    const share = shareBefore(clause, i);
    products.push({
      ...product,
      share: share === "rest" ? (product.pool?.left ?? 1) : share,
      from: i,
      to: i + 1,
    });
  }
  return products;
};

const isInCue = (clause: Clause, i: number): boolean => {
  for (let at = i; at >= 0; at -= 1) if (/^(until|till)$/.test(word(clause, at))) return true;
  return false;
};

const behindDeterminer = (clause: Clause, i: number): boolean => {
  for (let at = i - 1; at >= Math.max(0, i - 4); at -= 1) {
    const here = word(clause, at);
    if (here === "a" || here === "an") return false;
    if (determiners.has(here) || /^(first|enough|plenty)$/.test(here)) return true;
    if (
      clause.tokens[at]?.kind !== "word" ||
      /^(in|into|to|and|with|of|on|over|for|from|making|without)$/.test(here)
    )
      return false;
  }
  return i === clause.verbAt + 1;
};

/** "Add to the first mixture": the oldest bowl that still stands beside the one in hand. */
const firstMixture = (
  reader: StepReader,
  clause: Clause,
  i: number,
): { pool: Pool | null; members: readonly number[] } | null => {
  if (word(clause, i - 1) !== "first" || !/^(mixture|bowl|batter)$/.test(word(clause, i))) return null;
  const pool = livePools(reader.kitchen).find((p) => p !== reader.kitchen.current && p.contents.size > 0);
  return pool === undefined ? null : { pool, members: [] };
};

/** "Pour the melted stuff in": that to which it was done. */
const madeBefore = (
  reader: StepReader,
  clause: Clause,
  i: number,
): { pool: Pool | null; members: readonly number[] } | null => {
  if (!/^(stuff|things?|bits|mixture|mix|lot)$/.test(word(clause, i))) return null;
  const done = verbReadings(word(clause, i - 1)).filter((r) => r.form === "past" && r.tail.length === 0);
  const pool = newestPool(reader.kitchen, (p) => done.some((r) => p.did.has(r.technique.id)));
  return pool === null ? null : { pool, members: [] };
};

/** "Pour in the sauce", over a hot pan: the one that was stirred together in a bowl before. */
const mixedSauce = (
  { kitchen, ingredients }: StepReader,
  clause: Clause,
  noun: string,
): { pool: Pool | null; members: readonly number[] } | null => {
  if (noun !== "sauce" || kitchen.current?.onHeat !== true) return null;
  if (!/^(pour|add|deglaze)$/.test(clause.hit?.technique.id ?? "")) return null;
  const pool = newestPool(
    kitchen,
    (p) =>
      p !== kitchen.current &&
      p.contents.size > 1 &&
      !p.onHeat &&
      p.did.size === 1 &&
      /^(mix|stir|whisk)$/.test([...p.did][0] ?? "") &&
      [...p.contents].some((i) => sauces.test(ingredients[i]?.name.toLowerCase() ?? "")),
  );
  return pool === null ? null : { pool, members: [] };
};

const sauces = /\b(soy|sauce|stock|vinegar|mirin|wine|ketchup|honey|juice)\b/;

// Words of a title that name nothing on the stove.
const titleFillers = new Set(
  "with from over style slow quick easy baked roast roasted braised grilled fried brown white green black golden sweet spicy smoky warm cold chilled fresh lemon lime orange butter cream home made oven whole little best good night monday sunday".split(
    " ",
  ),
);

// Products that terse cooks name without an article: "toss pasta with sauce".
const bare = new Set(
  "sauce batter dough filling dressing custard icing glaze topping marinade gravy mixture mash".split(" "),
);

type Fits = (pool: Pool, has: (pattern: RegExp) => boolean) => boolean;

const flour = /\b(flour|semolina|cornmeal|polenta|oats|suet)\b/;
// What a pool must hold or have gone through to be called so.
const fitting: readonly (readonly [nouns: string, fits: Fits])[] = [
  [
    "cake loaf bread bun roll biscuit cookie scone muffin brownie sponge tart pie meringue case shell",
    (p) => p.baked,
  ],
  ["dough batter pastry", (p, has) => !p.baked && has(flour)],
  ["crust base", (p) => p.baked],
  [
    "sauce gravy ragu",
    (p, has) =>
      heated.some((t) => p.did.has(t)) &&
      has(
        /\b(passata|tomato(es)?|stock|wine|cream|milk|cider|ale|beer|vinegar|soy|juice|water|oil|butter|ketchup)\b/,
      ),
  ],
  [
    "syrup icing frosting caramel",
    (p, has) => !p.baked && has(/\b(sugar|honey|syrup|treacle)\b/) && !has(flour),
  ],
  ["mash", (_, has) => has(/\bpotato/)],
  ["custard", (_, has) => has(/\b(eggs?|yolks?|custard)\b/) && has(/\b(milk|cream)\b/)],
  [
    "dressing vinaigrette marinade",
    (p, has) => !p.onHeat && has(/\b(oil|vinegar|lemon|lime|yogh?urt|soy|mustard|mayonnaise|wine)\b/),
  ],
];

const heated = [
  "simmer",
  "reduce",
  "thicken",
  "boil",
  "cook",
  "bring-to-boil",
  "bring-to-simmer",
  "melt",
  "deglaze",
];

const fitsOf = new Map<string, Fits>(
  fitting.flatMap(([nouns, fits]) => nouns.split(" ").map((noun): [string, Fits] => [noun, fits])),
);

const leftBehind = new Set(
  "sauce gravy stew soup curry broth pot pan mixture content liquor marinade braise".split(" "),
);

const liquids = /\b(water|stock|milk|cream|wine|cordial|juice|cider|syrup|beer|coffee|tea|coconut milk)\b/;

const resolve = (
  reader: StepReader,
  noun: string,
  partMembers: readonly number[],
  held: readonly Pool[],
  terse: boolean,
): { pool: Pool | null; members: readonly number[] } | null => {
  const byName = newestPool(reader.kitchen, (p) => p.names.has(noun) && !held.includes(p));
  if (byName !== null) return { pool: byName, members: [] };
  if (partMembers.length > 0) {
    const unused = partMembers.filter((m) => (reader.remaining[m] ?? 0) > 0.001);
    const holding = newestPool(reader.kitchen, (p) => partMembers.some((m) => p.contents.has(m)));
    if (unused.length === partMembers.length || holding === null)
      return unused.length > 0 ? { pool: null, members: unused } : null;
    return { pool: holding, members: [] };
  }
  // "The pan juices", "the sauce" when the meat was lifted out: what was left behind.
  const { current: inHand, emptied } = reader.kitchen;
  // "Add the shallots to the fat": to the pan that was emptied.
  if (/^(fat|juice|dripping)$/.test(noun) && emptied !== null) return { pool: emptied, members: [] };
  // "Spoon the fat out of the tin", when the meat was lifted out: of what it left.
  if (noun === "fat") {
    const left = latestPool(
      reader.kitchen,
      (p) => p !== inHand && p.partial && p.baked && p.contents.size > 0,
    );
    if (left !== null) return { pool: left, members: [] };
  }
  if (/^(juice|liquid|liquor|dripping)$/.test(noun) || (inHand?.aside === true && leftBehind.has(noun))) {
    const left = latestPool(
      reader.kitchen,
      (p) => (p.partial || (p.did.has("sieve") && noun !== "juice")) && p.contents.size > 0,
    );
    if (left !== null) return { pool: left, members: [] };
    if (noun === "juice" || noun === "dripping") {
      const roasted = latestPool(
        reader.kitchen,
        (p) => p.baked && (p !== inHand || p.did.has("rest")) && p.contents.size > 1,
      );
      return roasted === null ? null : { pool: roasted, members: [] };
    }
    if (noun === "liquid") {
      const wet = newestPool(
        reader.kitchen,
        (p) =>
          !held.includes(p) &&
          [...p.contents].some((i) => liquids.test(reader.ingredients[i]?.name.toLowerCase() ?? "")),
      );
      if (wet !== null) return { pool: wet, members: [] };
    }
  }
  if (borrowedNouns.has(noun)) return null;
  if (/^(rest|remainder)$/.test(noun)) {
    const { split } = reader.kitchen;
    return split !== null && split.left > 0.001 ? { pool: split, members: [] } : null;
  }
  const fits = fitsOf.get(noun);
  const has = (p: Pool) => (pattern: RegExp) =>
    [...p.contents].some((i) => pattern.test(reader.ingredients[i]?.name.toLowerCase() ?? ""));
  const fitted =
    fits === undefined ? null : newestPool(reader.kitchen, (p) => !held.includes(p) && fits(p, has(p)));
  const raw =
    /^(crust|base)$/.test(noun) && fitted === null
      ? newestPool(reader.kitchen, (p) => !held.includes(p) && has(p)(flour))
      : null;
  if (raw !== null) return { pool: raw, members: [] };
  if (fitted !== null) {
    if (reader.kitchen.current !== fitted && !fitted.names.has(noun)) callPool(reader.kitchen, fitted, noun);
    return { pool: fitted, members: [] };
  }
  // "Toss the pasta with the sauce": not what is named beside it.
  if (
    held.length > 0 &&
    (terse || (reader.kitchen.current !== null && held.includes(reader.kitchen.current)))
  ) {
    const other = newestPool(reader.kitchen, (p) => !held.includes(p) && p.contents.size > 1);
    if (other !== null) return { pool: other, members: [] };
  }
  if (terse) return null;
  const { current } = reader.kitchen;
  if (current === null || current.left <= 0.001 || current.contents.size === 0) return null;
  // "Heat the butter, turn in the mixture": the hot pan waits for what stands beside it.
  if (current.primed) {
    const beside = newestPool(reader.kitchen, (p) => p !== current && p.contents.size > 1);
    if (beside !== null) return { pool: beside, members: [] };
  }
  const vague = anonymous.has(noun);
  if (!vague && (current.names.size > 0 || reader.titleWords.has(noun))) {
    // The pot in hand is called something else, or the dish itself is meant: the fullest pot without a name.
    const unnamed = livePools(reader.kitchen).filter((p) => p.names.size === 0 && p.contents.size > 1);
    const fullest = unnamed.reduce<Pool | null>(
      (best, p) => (best === null || p.contents.size > best.contents.size ? p : best),
      null,
    );
    const pool = fullest ?? current;
    callPool(reader.kitchen, pool, noun);
    return { pool, members: [] };
  }
  if (!vague) callPool(reader.kitchen, current, noun);
  return { pool: current, members: [] };
};

/** What a lone "make the …" makes: its last word. */
export const madeBy = (clause: Clause): string | null =>
  clause.tokens.findLast((t) => t.kind === "word" && t.text !== "make")?.text ?? null;

/** The name that a clause gives to what it makes ("to form a dough", "for the sauce"); null when it gives none. */
export const findMakes = (clause: Clause): string | null => {
  if (clause.aim !== null) return clause.aim;
  for (let i = 0; i < clause.tokens.length; i += 1) {
    const noun = clause.tokens[i]?.stem ?? "";
    if (!productNouns.has(noun) || anonymous.has(noun)) continue;
    const lead = clause.tokens
      .slice(Math.max(0, i - 5), i)
      .map((t) => t.text)
      .join(" ");
    if (
      /\b(to|into|form|forms|make|makes|making|get|have|becomes?|gives?|like|with|until|forming) (a|an) (\w+ ){0,2}$/.test(
        `${lead} `,
      ) &&
      !/\b(like) a/.test(lead)
    )
      return word(clause, i);
    if (
      /\b(to make|make|for) the (\w+ )?$/.test(`${lead} `) &&
      (clause.verbAt < 0 || i < clause.verbAt || clause.hit?.technique.id === "make")
    )
      return word(clause, i);
    if (/\bto make \w* ?$/.test(`${lead} `)) return word(clause, i);
  }
  return null;
};

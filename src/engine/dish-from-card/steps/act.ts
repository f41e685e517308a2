import { celsius, count, minutes, share as shareOf } from "../../measure/units.ts";
import type { Action, Use } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";
import type { Chosen } from "./choose-technique.ts";
import { type Again, type Fresh, takeImplied, takeIngredients } from "./choose-uses.ts";
import type { Clause } from "./clauses.ts";
import { findMakes, findProducts, type Product } from "./find-products.ts";
import { asMinutes, type Load, statedLength, usualLength } from "./length-of.ts";
import { livePools, newestPool, newPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import { joiningTechniques, pronouns, steeringTechniques } from "./word-sets.ts";

/** Where in the method an action stands. */
export type Place = {
  readonly id: string;
  readonly part: string | null;
  readonly offset: number;
  /** The action before in the same sentence; null for the first. */
  readonly before: Action | null;
  readonly toServe: boolean;
};

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

const mixes = new Set(
  "mix whisk beat cream blend stir toss knead rub-in mash fold whisk-whites whip-cream".split(" "),
);
const primers = new Set("heat melt bring-to-boil bring-to-simmer warm boil".split(" "));
const burners = new Set(["burner", "grill", "fryer"]);
const finishing = new Set(["serve", "plate"]);
const lifting = new Set("take-out set-aside remove-from-heat drain discard skim sieve".split(" "));

/** Reads one clause as an action, and moves food between the vessels as it says. */
export const act = (reader: StepReader, clause: Clause, chosen: Chosen, place: Place): Action => {
  const { technique } = chosen;
  const { kitchen } = reader;
  const spanAt = (from: number, to: number): Span => ({
    start: place.offset + (clause.tokens[from]?.at ?? clause.verbSpan.start),
    end: place.offset + (clause.tokens[to - 1]?.end ?? clause.verbSpan.end),
  });
  const verbSpan: Span = {
    start: place.offset + clause.verbSpan.start,
    end: place.offset + clause.verbSpan.end,
  };
  const id = place.id;

  const isOven = technique.id === "preheat";
  if (isOven) {
    reader.preheat = id;
    reader.ovenCelsius = clause.settings[0]?.celsius ?? null;
  }
  const taken = isOven ? { fresh: [], again: [] } : takeIngredients(reader, clause, place.part);
  const fresh: Fresh[] = [...taken.fresh];
  const again: readonly Again[] = taken.again;
  const inMention = (i: number): boolean =>
    [...clause.mentions, ...clause.hints].some((m) => i >= m.from && i < m.to);
  const products = isOven ? [] : findProducts(reader, clause, inMention);
  for (const p of products)
    if (p.pool === null)
      fresh.push(...takeImplied(reader, p.members, p.from, p.to).map((f) => ({ ...f, implied: false })));
  if (technique.id === "season" && fresh.length === 0 && again.length === 0)
    fresh.push(...takeImplied(reader, seasonings(reader), clause.verbAt, clause.verbTo));

  const joined = isOven ? [] : poolsOf(reader, clause, chosen, place, fresh, again, products);
  const main = joined[0] ?? null;
  const uses: Use[] = [];
  for (const f of fresh)
    uses.push({
      ingredient: f.ingredient,
      product: null,
      share: shareOf(f.share),
      implied: f.implied,
      span: f.from < 0 ? verbSpan : spanAt(f.from, f.to),
    });
  for (const pool of joined) {
    if (pool.last === null) continue;
    const words = again.find((a) => a.pool === pool);
    const product = products.find((p) => p.pool === pool);
    const from = words?.from ?? product?.from;
    const to = words?.to ?? product?.to;
    const part = Math.min(
      pool.left,
      product?.share ??
        (words !== undefined && words.share < 1 && pool.contents.size === 1 ? words.share : pool.left),
    );
    uses.push({
      ingredient: null,
      product: pool.last,
      share: shareOf(pool.left > 0 ? Math.min(1, part) : 0),
      implied: from === undefined,
      ...(words === undefined ? {} : { named: words.ingredient }),
      span: from === undefined || to === undefined ? verbSpan : spanAt(from, to),
    });
  }

  const after = new Set<string>();
  for (const pool of joined) if (pool.last !== null) after.add(pool.last);
  if (chosen.station === "oven" && !isOven && reader.preheat !== null && technique.id !== "warm-plates")
    after.add(reader.preheat);
  if (steeringTechniques.has(technique.id) && !isOven && kitchen.current?.last != null)
    after.add(kitchen.current.last);
  if (usesEmptied(reader, clause, fresh, main) && kitchen.emptied?.last != null)
    after.add(kitchen.emptied.last);
  if (finishing.has(technique.id))
    for (const pool of livePools(kitchen)) if (pool.last !== null) after.add(pool.last);
  after.delete(id);

  const load = loadOf(reader, fresh, joined);
  const stated = statedLength(clause, technique, load);
  const wait = clause.times.find((t) => t.kind === "wait");
  const makes = findMakes(clause);
  const action: Action = {
    id,
    span: { start: place.offset + clause.span.start, end: place.offset + clause.span.end },
    technique: technique.id,
    verb: chosen.verb,
    uses,
    minutes: asMinutes(stated ?? usualLength(technique, load, clause.batches), stated === null),
    station: chosen.station,
    attention: chosen.attention,
    celsius: settingOf(reader, clause, chosen),
    heat: clause.heat,
    core: clause.core,
    vessel: clause.vessel,
    cue: clause.cue,
    makes,
    after: [...after],
    alongside: clause.meanwhile || clause.times.some((t) => t.kind === "last"),
    batches: clause.batches === null ? null : count(clause.batches),
    every: clause.every,
    leastWait: wait === undefined ? null : minutes(wait.long ? wait.minutes.low : wait.minutes.likely),
  };
  if (!isOven && !(steeringTechniques.has(technique.id) && fresh.length === 0 && joined.length === 0))
    settle(reader, clause, chosen, action, place, fresh, joined, again, products);
  else if (!isOven && kitchen.current !== null && technique.id === "adjust-heat") kitchen.current.last = id;
  return action;
};

const settingOf = (reader: StepReader, clause: Clause, chosen: Chosen): Action["celsius"] => {
  const stated = clause.settings[0];
  if (stated !== undefined) return stated.celsius;
  const oven =
    chosen.station === "oven" &&
    chosen.technique.heat === "oven" &&
    !/^(warm-plates|keep-warm|preheat|sterilise)$/.test(chosen.technique.id);
  return oven && reader.ovenCelsius !== null ? celsius(reader.ovenCelsius) : null;
};

const seasonings = (reader: StepReader): readonly number[] =>
  reader.ingredients
    .filter(
      (i) =>
        /\b(salt|pepper)\b/.test(i.name.toLowerCase()) &&
        !/\b(bell|red|green|chilli|sweet|salted)\b/.test(i.name.toLowerCase()),
    )
    .map((i) => i.index);

const loadOf = (reader: StepReader, fresh: readonly Fresh[], joined: readonly Pool[]): Load => {
  let grams = 0;
  let known = false;
  let pieces: number | null = null;
  const add = (index: number, share: number): void => {
    const line = reader.ingredients[index];
    if (line?.grams != null) {
      grams += line.grams.likely * share;
      known = true;
    }
    for (const amount of line?.amounts ?? [])
      if ((amount.unit === "piece" || amount.unit === null) && amount.likely >= 1)
        pieces = Math.max(pieces ?? 0, amount.likely * share);
  };
  for (const f of fresh) add(f.ingredient, f.share);
  for (const pool of joined) for (const index of pool.contents) add(index, pool.left);
  return { grams: known ? grams : null, pieces };
};

const hasPronoun = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) => i >= clause.verbAt && pronouns.has(t.text) && !/^(this|that|these|those)$/.test(t.text),
  ) ||
  clause.tokens.some(
    (t, i) => i > clause.verbAt - 3 && /^(this|that|these|those)$/.test(t.text) && !isNoun(clause, i + 1),
  );

const isNoun = (clause: Clause, i: number): boolean => {
  const next = clause.tokens[i];
  return (
    next !== undefined &&
    next.kind === "word" &&
    !/^(to|for|in|into|on|with|and|until|till|at|over|aside|together|up|out|down|is|bubble|cook|simmer|rest|cool|stand|sit)$/.test(
      next.text,
    )
  );
};

/** "Heat a frying pan", "grease a tin": the vessel alone is worked on. */
const heatsEmptyVessel = (
  clause: Clause,
  chosen: Chosen,
  fresh: readonly Fresh[],
  named: number,
): boolean => {
  if (
    !/^(heat|warm|preheat|grease|line|get|warm-plates|sterilise)$/.test(chosen.technique.id) ||
    named > 0 ||
    clause.hit?.verb === "heat through"
  )
    return false;
  if (/^(grease|line)$/.test(chosen.technique.id)) return true;
  const at = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbAt &&
      i <= clause.verbAt + 5 &&
      /^(pan|saucepan|pot|skillet|wok|casserole|griddle|grill|iron|fryer|barbecue)$/.test(t.text),
  );
  return (
    at >= 0 &&
    fresh.length === 0 &&
    !clause.tokens.slice(clause.verbAt, at).some((t) => /^(in|it|them|with|into)$/.test(t.text))
  );
};

/** Words that ask for a vessel of its own: "in another pan", "in a large bowl". */
const asksNewVessel = (clause: Clause): boolean => {
  for (let i = 0; i < clause.tokens.length; i += 1) {
    if (!/^(in|into|using)$/.test(word(clause, i))) continue;
    const next = word(clause, i + 1);
    const end = clause.tokens
      .slice(i + 1, i + 6)
      .findIndex((t) =>
        /^(pan|saucepan|pot|skillet|wok|casserole|bowl|jug|processor|blender|dish|cauldron|tin|tray|microwave|mixer)$/.test(
          t.text,
        ),
      );
    if (end < 0) continue;
    if (
      /^(another|separate|second|different|new|clean)$/.test(next) ||
      /^(separate|second|different|new|clean|fresh)$/.test(word(clause, i + 2))
    )
      return true;
    if (next === "a" || next === "an") return true;
  }
  return false;
};

const sameVessel = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      t.text === "same" &&
      /^(pan|pot|saucepan|skillet|wok|bowl|fat|oil|casserole|dish|water|tin)$/.test(
        word(clause, i + 1) === "frying" || word(clause, i + 1) === "large"
          ? word(clause, i + 2)
          : word(clause, i + 1),
      ),
  );

/** Behind "to", "into", "over", "with": where the food goes. */
const isTarget = (clause: Clause, from: number): boolean => {
  for (let at = from - 1; at > clause.verbAt && at >= from - 6; at -= 1) {
    const here = word(clause, at);
    if (/^(to|into|over|onto|on|in|through|around|inside|under|between|with|upon)$/.test(here))
      return here !== "with" || clause.hit?.technique.id === "mix";
    if (/^(,|and)$/.test(here)) return false;
  }
  return false;
};

const unique = (pools: readonly (Pool | null | undefined)[]): readonly Pool[] =>
  [...new Set(pools)].filter((p): p is Pool => p != null && p.left > 0.001);

/** The pools that an action works on; the one it goes on in comes first. */
const poolsOf = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  place: Place,
  fresh: readonly Fresh[],
  again: readonly Again[],
  products: readonly Product[],
): readonly Pool[] => {
  const { kitchen } = reader;
  const { technique } = chosen;
  const current = kitchen.current;
  const named = [
    ...products.filter((p) => p.pool !== null).map((p) => ({ pool: p.pool, from: p.from })),
    ...again.map((a) => ({ pool: a.pool, from: a.from })),
  ];
  const hint = clause.hints
    .map((m) => m.candidates[0]?.ingredient)
    .map((i) => (i === undefined ? null : newestPool(kitchen, (p) => p.contents.has(i))));
  if (steeringTechniques.has(technique.id) && named.length === 0 && fresh.length === 0) return [];
  if (finishing.has(technique.id)) return unique([...named.map((n) => n.pool), ...livePools(kitchen)]);
  const target = named.find((n) => isTarget(clause, n.from));
  const vesselPool =
    sameVessel(clause) || /^(the|your|that)$/.test(articleOf(clause)) ? poolInVessel(reader, clause) : null;
  const pronoun = hasPronoun(clause);
  const joining =
    joiningTechniques.has(technique.id) ||
    ((clause.hit?.verb.split(" ").length ?? 1) > 1 &&
      /^(add|fold|mix|stir|whisk|beat|pour)$/.test(technique.id));
  const vessel = asksNewVessel(clause) || heatsEmptyVessel(clause, chosen, fresh, named.length);
  const together =
    clause.tokens.some((t) => t.text === "everything" || t.text === "together") &&
    mixes.has(technique.id) &&
    fresh.length === 0 &&
    again.length === 0 &&
    products.length === 0;
  if (together) {
    const all = livePools(kitchen).filter(
      (p) => place.part === null || p.part === place.part || p.part === null,
    );
    if (all.length > 0) return unique([current, ...all]);
  }
  if (target !== undefined)
    return unique([target.pool, ...named.map((n) => n.pool), pronoun ? current : null]);
  if (joining) {
    if (vessel && fresh.length > 0 && !pronoun) return unique(named.map((n) => n.pool));
    if (clause.meanwhile && fresh.length > 0) return unique(named.map((n) => n.pool));
    if (
      kitchen.emptied !== null &&
      fresh.length > 0 &&
      named.length === 0 &&
      !pronoun &&
      kitchen.emptied.part === place.part
    )
      return unique([kitchen.emptied]);
    const pot =
      current?.raw === true
        ? (newestPool(kitchen, (p) => !p.raw && (place.part === null || p.part === place.part)) ?? current)
        : current;
    const carried =
      fresh.length === 0 &&
      named.length === 0 &&
      (current?.raw === true || (vesselPool !== null && vesselPool !== current && pronoun));
    return unique([vesselPool ?? pot, ...named.map((n) => n.pool), carried ? current : null]);
  }
  if (named.length > 0) {
    const base = named.map((n) => n.pool);
    if (vesselPool !== null && burners.has(chosen.station)) return unique([...base, vesselPool]);
    if (pronoun && current !== null && clause.tokens.some((t) => t.text === "it" || t.text === "them"))
      return unique([current, ...base]);
    return joinsCurrent(clause, chosen, place, current) && burners.has(chosen.station)
      ? unique([current, ...base])
      : unique(base);
  }
  if (fresh.length === 0 && heatsEmptyVessel(clause, chosen, fresh, 0)) return [];
  if (fresh.length === 0)
    return unique(
      hint.some((p) => p !== null) && !pronoun && hint[0] !== current && place.before === null
        ? [hint[0]]
        : [current],
    );
  if (vesselPool !== null && (burners.has(chosen.station) || sameVessel(clause))) return unique([vesselPool]);
  if (vessel || clause.meanwhile) return [];
  if (pronoun && technique.miseEnPlace !== true && !/^(fry|boil|sweat)$/.test(technique.id))
    return unique([current]);
  return joinsCurrent(clause, chosen, place, current) ? unique([current]) : [];
};

/** Whether food named for the first time goes into the vessel in hand. */
const joinsCurrent = (clause: Clause, chosen: Chosen, place: Place, current: Pool | null): boolean => {
  const { technique } = chosen;
  if (
    current === null ||
    clause.meanwhile ||
    technique.miseEnPlace ||
    (place.part !== null && current.part !== place.part)
  )
    return false;
  if (burners.has(chosen.station)) {
    if (current.primed) return true;
    return place.before !== null && burners.has(place.before.station) && !asksNewVessel(clause);
  }
  if (mixes.has(technique.id))
    return (
      place.before !== null &&
      /^(add|put|sift|mix|whisk|beat|cream|stir|weigh|blend|melt|make-well)$/.test(
        place.before.technique ?? "",
      )
    );
  if (chosen.station === "oven") return place.before !== null;
  return false;
};

const articleOf = (clause: Clause): string => {
  const at = clause.tokens.findIndex((t) =>
    /^(pan|pot|saucepan|skillet|wok|casserole|bowl|tin|dish)$/.test(t.text),
  );
  if (at < 0) return "";
  for (let i = at - 1; i >= Math.max(0, at - 4); i -= 1) {
    const here = word(clause, i);
    if (/^(the|a|an|your|that|another)$/.test(here)) return here;
    if (/^(in|into|to|from)$/.test(here)) return "";
  }
  return "";
};

const poolInVessel = (reader: StepReader, clause: Clause): Pool | null => {
  const { kitchen } = reader;
  const noun = stem(
    clause.tokens.find((t) => /^(pan|pot|saucepan|skillet|wok|casserole|bowl|tin|dish)s?$/.test(t.text))
      ?.text ?? "",
  );
  const pans = /^(pan|pot|saucepan|skillet|wok|casserole)$/;
  const fits = (vessel: string | null): boolean =>
    vessel !== null && (vessel === noun || (pans.test(vessel) && (pans.test(noun) || noun === "")));
  if (kitchen.emptied !== null && (fits(kitchen.emptied.vessel) || kitchen.emptied.vessel === null))
    return kitchen.emptied;
  if (kitchen.current !== null && fits(kitchen.current.vessel)) return kitchen.current;
  return newestPool(kitchen, (p) => fits(p.vessel)) ?? kitchen.current;
};

const usesEmptied = (
  reader: StepReader,
  clause: Clause,
  fresh: readonly Fresh[],
  main: Pool | null,
): boolean =>
  reader.kitchen.emptied !== null &&
  (sameVessel(clause) || main === reader.kitchen.emptied) &&
  (fresh.length > 0 || main !== null);

/** Moves food between vessels after an action. */
const settle = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  action: Action,
  place: Place,
  fresh: readonly Fresh[],
  joined: readonly Pool[],
  again: readonly Again[],
  products: readonly Product[],
): void => {
  const { kitchen } = reader;
  const { technique } = chosen;
  const named = again.filter((a) => joined.includes(a.pool)).map((a) => a.ingredient);
  // "Lift out the chicken": what is named leaves, the rest stays in the pan.
  const [only] = joined;
  if (
    lifting.has(technique.id) &&
    fresh.length === 0 &&
    only !== undefined &&
    joined.length === 1 &&
    named.length > 0 &&
    only.contents.size > named.length &&
    !products.some((p) => p.pool === only)
  ) {
    const out = addPool(reader, place.part);
    for (const i of named) {
      out.contents.add(i);
      only.contents.delete(i);
    }
    out.last = action.id;
    only.last = action.id;
    if (technique.id === "discard" || technique.id === "skim") out.left = 0;
    kitchen.current = only;
    kitchen.emptied = null;
    return;
  }
  // "Set aside", "lift them out of the pan": all leaves, and the pan can be used again.
  const leaves =
    (technique.id === "set-aside" ||
      (technique.id === "take-out" && !/^(oven|fridge|freezer)$/.test(place.before?.station ?? "oven"))) &&
    fresh.length === 0;
  if (leaves && only !== undefined && joined.length === 1 && only.vessel !== null && isPan(only.vessel)) {
    const emptied = addPool(reader, place.part);
    emptied.vessel = only.vessel;
    emptied.last = action.id;
    emptied.primed = true;
    emptied.left = 1;
    only.last = action.id;
    only.vessel = null;
    kitchen.emptied = emptied;
    kitchen.current = only;
    return;
  }
  let main = only ?? addPool(reader, place.part);
  const partly = products.find((p) => p.pool === main && p.share < main.left - 0.001);
  if (partly !== undefined && joined.length === 1) {
    main.left -= partly.share;
    const piece = addPool(reader, place.part);
    for (const i of main.contents) piece.contents.add(i);
    main = piece;
  }
  for (const other of joined.slice(1)) {
    const taken = products.find((p) => p.pool === other)?.share ?? other.left;
    for (const i of other.contents) main.contents.add(i);
    if (other.names.size > 0 && main.names.size === 0 && other.contents.size > 1)
      for (const n of other.names) main.names.add(n);
    other.left = Math.max(0, other.left - taken);
    if (other.left <= 0.001) other.left = 0;
    if (other.vessel !== null && main.vessel === null) main.vessel = other.vessel;
  }
  for (const f of fresh) main.contents.add(f.ingredient);
  main.last = action.id;
  main.part ??= place.part;
  if (action.makes !== null) main.names.add(stem(action.makes));
  if (place.part !== null && joined.length === 0)
    for (const w of place.part.toLowerCase().split(/[^\p{L}]+/u)) if (w.length > 2) main.names.add(stem(w));
  const vessel = clause.vessel?.split(" ").at(-1);
  if (vessel !== undefined) main.vessel = stem(vessel);
  else if (main.vessel === null && burners.has(chosen.station)) main.vessel = "pan";
  if (!technique.miseEnPlace) main.raw = false;
  main.primed =
    (primers.has(technique.id) || technique.id === "preheat") &&
    [...main.contents].every((i) => isFatOrWater(reader, i));
  if (kitchen.emptied === main || burners.has(chosen.station)) kitchen.emptied = null;
  kitchen.current = main;
};

const isPan = (vessel: string): boolean => /^(pan|pot|saucepan|skillet|wok|casserole)$/.test(vessel);

const isFatOrWater = (reader: StepReader, index: number): boolean =>
  /\b(oil|butter|lard|dripping|ghee|fat|water|margarine|salt|suet|duck fat|stock)\b/.test(
    reader.ingredients[index]?.name.toLowerCase() ?? "",
  );

const addPool = (reader: StepReader, part: string | null): Pool => {
  const pool = newPool(part);
  reader.kitchen.pools.push(pool);
  return pool;
};

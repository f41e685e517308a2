import { techniqueById } from "../../larder/techniques.ts";
import { celsius, count, minutes, share as shareOf } from "../../measure/units.ts";
import type { Action, Use } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";
import type { Chosen } from "./choose-technique.ts";
import { takeIngredients } from "./choose-uses.ts";
import type { Clause } from "./clauses.ts";
import { isOnHeat } from "./find-details.ts";
import { findMakes, findProducts } from "./find-products.ts";
import { ovenHeat } from "./find-temperatures.ts";
import { onJars } from "./heat-words.ts";
import { inTheCold } from "./in-the-cold.ts";
import { asMinutes, type Load, statedLength, usualLength } from "./length-of.ts";
import { notSaid } from "./not-said.ts";
import { livePools, type Pool } from "./pools.ts";
import { liftedOut, settle } from "./settle.ts";
import type { StepReader } from "./step-reader.ts";
import { takeImplied } from "./take-classes.ts";
import type { Again, Fresh } from "./taken.ts";
import { sameVessel } from "./vessel-words.ts";
import { finishing, type Place, poolsOf } from "./which-pools.ts";
import { pans, seasoning, steeringTechniques } from "./word-sets.ts";

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** Reads one clause as an action, and moves food between the vessels as it says. */
export const act = (reader: StepReader, clause: Clause, said: Chosen, place: Place): Action => {
  const { technique } = said;
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
  const setting = clause.settings[0]?.celsius ?? null;
  if (setting !== null && setsOven(clause, said)) reader.ovenCelsius = setting;
  const jars = onJars(clause, technique.id);
  const taken =
    isOven || clause.again || jars ? { fresh: [], again: [] } : takeIngredients(reader, clause, place.part);
  const fresh: Fresh[] = [...taken.fresh];
  const again: readonly Again[] = taken.again;
  const inMention = (i: number): boolean =>
    clause.mentions.some((m) => i >= m.from && i < m.to) || clause.hints.some((m) => i >= m.from && i < m.to);
  const products =
    isOven || clause.again
      ? []
      : findProducts(
          reader,
          clause,
          inMention,
          again.map((a) => a.pool),
        );
  for (const p of products)
    if (p.pool === null)
      fresh.push(...takeImplied(reader, p.members, p.from, p.to).map((f) => ({ ...f, implied: false })));
  const everything = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbAt &&
      (t.text === "everything" || (t.text === "all" && /^(together|in|into)$/.test(word(clause, i + 1)))),
  );
  if (
    everything > 0 &&
    !isOven &&
    fresh.length === 0 &&
    again.length === 0 &&
    livePools(kitchen).every((p) => place.part !== null && p.part !== place.part)
  ) {
    // "Cut everything small": what a knife cuts.
    const { wet, dry } = reader.classes;
    const cut = technique.miseEnPlace && clause.hit?.technique.id !== "weigh";
    const members = reader.ingredients
      .filter((i) => !i.equipment && i.purpose === null && (place.part === null || i.part === place.part))
      .map((i) => i.index)
      .filter((i) => !cut || !(wet.includes(i) || dry.includes(i)));
    fresh.push(
      ...takeImplied(reader, members, everything, everything + 1).map((f) => ({ ...f, implied: false })),
    );
  }
  // "Half the cheese between, rest on top": what is left of that which was shared out.
  if (technique.id === "top" && fresh.length === 0 && word(clause, clause.verbAt - 1) === "rest") {
    const begun = reader.ingredients
      .filter((i) => (reader.remaining[i.index] ?? 0) > 0.001 && (reader.remaining[i.index] ?? 0) < 0.999)
      .map((i) => i.index);
    fresh.push(
      ...takeImplied(reader, begun, clause.verbAt, clause.verbTo).map((f) => ({ ...f, implied: false })),
    );
  }
  // "For the rhubarb, heat the oven. Cut into lengths": what the part is named after.
  if (
    technique.miseEnPlace &&
    !isOven &&
    fresh.length === 0 &&
    again.length === 0 &&
    products.length === 0 &&
    clause.partHint
  ) {
    const members = reader.ingredients.filter((i) => i.part === clause.partHint);
    const own = members.filter((i) => i.name.toLowerCase() === i.part?.toLowerCase());
    if (members.every((i) => (reader.remaining[i.index] ?? 0) > 0.99))
      fresh.push(
        ...takeImplied(
          reader,
          own.map((i) => i.index),
          clause.verbAt,
          clause.verbTo,
        ),
      );
  }
  if (technique.id === "season") fresh.push(...seasonedWith(reader, clause, fresh, again));

  const unsaid =
    isOven || jars || clause.again
      ? []
      : notSaid(reader, clause, technique.id, fresh, again.length + products.length);
  if (unsaid.length > 0) {
    fresh.push(...takeImplied(reader, unsaid, clause.verbAt, clause.verbTo));
  }
  const joined = isOven || jars ? [] : [...poolsOf(reader, clause, said, place, fresh, again, products)];
  // What no word names goes to what is in hand: the joint to its salt, the fat to the chips.
  if (unsaid.length > 0 && joined.length === 0 && kitchen.current !== null) joined.push(kitchen.current);
  const main = joined[0] ?? null;
  const atWork = onTheFire(reader, clause, inMachine(clause, said, main), main);
  const cold = inTheCold(reader, clause, atWork, fresh, joined);
  if (cold !== null) reader.heldCold.push(id);
  const chosen = cold ?? atWork;
  const lifted = liftedOut(reader, clause, chosen, fresh, joined, again, products);
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
      ...(lifted !== null && pool === main
        ? { only: lifted }
        : pool.partial
          ? { only: [...pool.contents] }
          : {}),
      span: from === undefined || to === undefined ? verbSpan : spanAt(from, to),
    });
  }

  const after = new Set<string>();
  for (const pool of joined) {
    if (pool.last !== null) after.add(pool.last);
    for (const id of pool.waits) after.add(id);
  }
  if (chosen.station === "oven" && !isOven && reader.preheat !== null && technique.id !== "warm-plates")
    after.add(reader.preheat);
  if (steeringTechniques.has(technique.id) && !isOven && kitchen.current?.last != null)
    after.add(kitchen.current.last);
  if (usesEmptied(reader, clause, fresh, main)) for (const id of kitchen.emptied?.waits ?? []) after.add(id);
  if (finishing.has(technique.id))
    for (const pool of livePools(kitchen)) if (pool.last !== null) after.add(pool.last);
  after.delete(id);

  const load = loadOf(reader, fresh, joined);
  const stated = statedLength(clause, chosen.technique, load);
  const wait = clause.times.find((t) => t.kind === "wait");
  const makes = findMakes(clause);
  const action: Action = {
    id,
    span: { start: place.offset + clause.span.start, end: place.offset + clause.span.end },
    technique: chosen.technique.id,
    verb: chosen.verb,
    uses,
    minutes: asMinutes(stated ?? usualLength(chosen.technique, load, clause.batches), stated === null),
    station: chosen.station,
    // "Fold every 30 minutes for 2 hours": the hands come back now and then.
    attention:
      clause.every !== null && stated !== null && chosen.attention === "hands" ? "mind" : chosen.attention,
    celsius: settingOf(reader, clause, chosen, main) ?? heldThere(clause, place.before),
    heat: clause.heat,
    core: clause.core,
    vessel: clause.vessel ?? potInOven(chosen, main),
    cue: clause.cue,
    makes,
    after: [...after],
    alongside: clause.meanwhile || clause.times.some((t) => t.kind === "last"),
    batches: clause.batches === null ? null : count(clause.batches),
    every: clause.every,
    leastWait: wait === undefined ? null : minutes(wait.long ? wait.minutes.low : wait.minutes.likely),
  };
  if (
    !isOven &&
    !jars &&
    !(steeringTechniques.has(technique.id) && fresh.length === 0 && joined.length === 0)
  )
    settle(reader, clause, chosen, action, place, { fresh, again, joined, lifted, products });
  return action;
};

// What goes on in the bowl of a mixer is mixed there, though the words name the machine only once.
const byMachine = new Set("knead mix whisk beat cream blend chop rub-in whip-cream whisk-whites".split(" "));

const inMachine = (clause: Clause, said: Chosen, main: Pool | null): Chosen => {
  if (main === null || main.machine === null || clause.station !== null || !byMachine.has(said.technique.id))
    return said;
  return { ...said, station: "machine", attention: main.machine === "mixer" ? "mind" : "hands" };
};

// Work of the hands that, when a length is stated and the pan is on the fire, is cooking.
const stirred = new Set("toss stir turn add whisk beat mix fold put cover".split(" "));

const wet = /\b(stock|broth|water|milk|wine|cream|tomato(es)?|passata|beer|cider|juice|ale|coconut milk)\b/;

/** "Toss for 2 minutes" in a hot wok is done at the burner; "cook gently" in stock is a simmer. */
const onTheFire = (reader: StepReader, clause: Clause, said: Chosen, main: Pool | null): Chosen => {
  if (main === null) return said;
  const length = clause.times.find((t) => t.kind === "length" || t.kind === "more" || t.kind === "last");
  // "Slide the fish in and hold it at 50": in its pan.
  if (
    said.technique.id === "keep-warm" &&
    said.station === "oven" &&
    clause.station === null &&
    main.onHeat &&
    length !== undefined
  )
    return { ...said, station: "burner", attention: "mind" };
  if (
    (main.onHeat || isOnHeat(clause.tokens)) &&
    said.station === "hands" &&
    said.technique.id !== "cover" &&
    stirred.has(said.technique.id) &&
    length !== undefined &&
    length.minutes.likely < 60
  )
    return {
      ...said,
      station: "burner",
      attention: /^(add|put)$/.test(said.technique.id) && length.minutes.likely >= 5 ? "mind" : "hands",
    };
  // "Stir over a low flame to 82": it cooks while it is stirred.
  if (
    said.station === "hands" &&
    /^(stir|whisk|beat|toss)$/.test(said.technique.id) &&
    isOnHeat(clause.tokens) &&
    (clause.settings.length > 0 || clause.core !== null || clause.cue !== null)
  )
    return { ...said, station: "burner", attention: "hands" };
  if (
    main.onHeat &&
    /^(bench|hands)$/.test(said.station) &&
    stirred.has(said.technique.id) &&
    length !== undefined
  )
    return { ...said, station: "burner", attention: clause.minding ?? "mind" };
  // Fat that was heated to a figure fries deep.
  const deep = techniqueById("deep-fry");
  if (/^(fry|cook)$/.test(said.technique.id) && (main.fatCelsius ?? 0) >= 150 && deep !== null)
    return { ...said, technique: deep, station: "fryer", attention: "hands" };
  const simmer = techniqueById("simmer");
  if (
    said.technique.id === "sweat" &&
    /^cook/.test(said.verb) &&
    simmer !== null &&
    [...main.contents].some((i) => wet.test(reader.ingredients[i]?.name.toLowerCase() ?? ""))
  )
    return { ...said, technique: simmer };
  return said;
};

/** "Lid on, oven 150": what was browned in a casserole stands in it there. Null where no pot was spoken of. */
const potInOven = (chosen: Chosen, main: Pool | null): string | null =>
  chosen.station === "oven" &&
  /^(bake|braise|roast|stew)$/.test(chosen.technique.id) &&
  main?.called != null &&
  main.vessel !== null &&
  pans.has(main.vessel) &&
  (/\b(?:casserole|skillet|pot)$/.test(main.called) || main.did.has("cover"))
    ? main.called
    : null;

// "Transfer to a 200 °C oven", "turn down to 150 °C": what is baked next has that heat.
const setsOven = (clause: Clause, said: Chosen): boolean =>
  (said.station === "oven" &&
    (said.technique.id !== "keep-warm" || clause.tokens.some((t) => t.text === "oven"))) ||
  said.technique.id === "adjust-heat" ||
  clause.tokens.some((t) => t.text === "oven");

/** "Take it up to 85 and hold it there for half an hour." */
const heldThere = (clause: Clause, before: Action | null): Action["celsius"] =>
  /^(hold|keep)/.test(clause.hit?.verb ?? "") &&
  clause.tokens.some((t, i) => i > clause.verbAt && i <= clause.verbAt + 4 && t.text === "there")
    ? (before?.celsius ?? null)
    : null;

const settingOf = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  main: Pool | null,
): Action["celsius"] => {
  const stated = clause.settings[0];
  if (stated !== undefined) return stated.celsius;
  // "Reduce the heat to moderate": of what stands in the oven, it is the oven's.
  if (chosen.technique.id === "adjust-heat" && main?.inOven === true) {
    const to = clause.tokens.findIndex((t) => t.text === "to");
    const heat = to < 0 ? null : ovenHeat(clause.tokens[to + 1]?.text ?? "");
    if (heat !== null) {
      reader.ovenCelsius = heat;
      return celsius(heat);
    }
  }
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

/** "Season", "season the beef well": with the salt and the pepper that are listed, where no word says with what. */
const seasonedWith = (
  reader: StepReader,
  clause: Clause,
  fresh: readonly Fresh[],
  again: readonly Again[],
): readonly Fresh[] => {
  const bare = fresh.length === 0 && again.length === 0;
  const salts = seasonings(reader);
  const says =
    clause.tokens.some((t) => t.text === "with") ||
    fresh.some((f) => seasoning.test(reader.ingredients[f.ingredient]?.name.toLowerCase() ?? ""));
  if (!bare && says) return [];
  const members = bare ? salts : salts.filter((i) => (reader.toCome[i] ?? 0) <= 0);
  return takeImplied(reader, members, clause.verbAt, clause.verbTo);
};

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

const usesEmptied = (
  reader: StepReader,
  clause: Clause,
  fresh: readonly Fresh[],
  main: Pool | null,
): boolean =>
  reader.kitchen.emptied !== null &&
  (sameVessel(clause) || main === reader.kitchen.emptied) &&
  (fresh.length > 0 || main !== null);

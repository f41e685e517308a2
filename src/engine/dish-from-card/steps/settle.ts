import type { Action } from "../../model/dish.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import { isOnHeat } from "./find-details.ts";
import { callPool, newPool, type Pool } from "./pools.ts";
import { stem } from "./stem.ts";
import type { StepReader } from "./step-reader.ts";
import type { Again, Fresh, Product } from "./taken.ts";
import { isTarget } from "./where-it-goes.ts";
import type { Place } from "./which-pools.ts";
import { burners, pans } from "./word-sets.ts";

const primers = new Set("heat melt bring-to-boil bring-to-simmer warm boil".split(" "));
const leavesMachine = new Set(
  "take-out unmould roll-out shape prove pour chill bake divide layer spread fill rest".split(" "),
);
// Aromatics that are taken out to be thrown away.
const thrown =
  /\b(bay|cinnamon|star anise|vanilla|sprigs?|thyme|rosemary|bouquet|rind|peel|cloves?|cardamom|lemongrass|lemon grass|stalks?|herbs?|string)\b/;

const coatings =
  /\b(dill|parsley|thyme|rosemary|herbs?|salt|pepper|peppercorns?|sugar|mustard|paprika|cumin|oil|spices?|seeds?|sage|mint|chives|honey|glaze)\b/;

const underMeat =
  /\b(onions?|carrots?|celery|leeks?|potato(es)?|wine|stock|cider|vegetables?|veg|parsnips?)\b/;

const aromatics = /\b(onions?|shallots?|garlic|celery|leeks?|ginger)\b/;

const lifting = new Set("take-out set-aside remove-from-heat drain discard skim sieve".split(" "));

// Short work on what stands in the oven, or on the fire, after which it goes on there.
const staysThere = new Set(
  "pour cover uncover baste press grate squeeze crumble turn toss fold whisk beat mix put taste deglaze adjust-heat add top sprinkle drizzle brush season".split(
    " ",
  ),
);

/** What an action takes in hand: from the list, from pools, and which foods it lifts out of its pool. */
type Hands = {
  readonly fresh: readonly Fresh[];
  readonly again: readonly Again[];
  readonly joined: readonly Pool[];
  readonly lifted: readonly number[] | null;
  readonly products: readonly Product[];
};

/** The foods that leave a pool in which others stay ("lift out the chicken"); null when all goes, or nothing. */
export const liftedOut = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  fresh: readonly Fresh[],
  joined: readonly Pool[],
  again: readonly Again[],
  products: readonly Product[],
): readonly number[] | null => {
  const [only] = joined;
  if (only === undefined || joined.length !== 1 || fresh.length > 0) return null;
  const id = chosen.technique.id;
  // "Rinse off the salt": what is named goes, and the work is on the rest.
  if (/^(wash|wipe|brush|pat-dry|turn)$/.test(id) && clause.tokens[clause.verbTo]?.text === "off")
    return null;
  const keptAt = clause.tokens.findIndex((t) => /^(reserving|keeping|saving|leaving)$/.test(t.text));
  const goes = again.filter((a) => (keptAt < 0 || a.from < keptAt) && !isLeft(clause, id, a.from));
  // "Lift them out": what is solid goes, the liquor and what flavours it stay.
  if (
    (id === "take-out" &&
      only.onHeat &&
      /^(lift|fish|scoop|spoon|pull|remove|take out|pick)/.test(clause.hit?.verb ?? "") &&
      !clause.tokens.some((t) => /^(heat|oven|stove|hob|fridge)$/.test(t.text)) &&
      (clause.tokens.some((t) => /^(them|it|these|everything)$/.test(t.text)) ||
        /^(|on|onto|and|then|to|with|,|when|once)$/.test(clause.tokens[clause.verbTo]?.text ?? ""))) ||
    (id === "drain" && keptAt >= 0)
  ) {
    const stays = (i: number): boolean => {
      const name = reader.ingredients[i]?.name.toLowerCase() ?? "";
      return isFatOrWater(reader, i) || wetNames.test(name) || thrown.test(name);
    };
    const all = [...only.contents].filter((i) => !stays(i));
    // "Lift out the mussels": what the broth was begun with stays in it.
    const main = all.filter((i) => !aromatics.test(reader.ingredients[i]?.name.toLowerCase() ?? ""));
    const solid = main.length > 0 ? main : all;
    const wet = [...only.contents].some(
      (i) =>
        /\b(water|stock|broth|milk|wine|cider|beer)\b/i.test(reader.ingredients[i]?.name ?? "") ||
        // Fat in which food swims stays behind; what it was fried in goes with it.
        (isFatOrWater(reader, i) && (reader.ingredients[i]?.grams?.likely ?? 0) >= deepFat),
    );
    if (wet && goes.length === 0 && solid.length > 0 && solid.length < only.contents.size) return solid;
  }
  // "Strain the tray juices" while the meat rests: all but the meat.
  if (only.baked && products.some((p) => p.pool === only && clause.tokens[p.from]?.stem === "juice")) {
    const meats = reader.classes.membersOf("meat");
    const others = [...only.contents].filter((i) => !meats.includes(i));
    return others.length > 0 && others.length < only.contents.size ? others : null;
  }
  // "Lift it on to a board": the meat of the tin, and what it lay on stays.
  if (only.baked && again.length === 0 && /^(take-out|put|rest)$/.test(id) && onBoard(clause)) {
    const meats = reader.classes.membersOf("meat");
    const meat = [...only.contents].filter((i) => meats.includes(i));
    const under = [...only.contents].some((i) =>
      underMeat.test(reader.ingredients[i]?.name.toLowerCase() ?? ""),
    );
    if (meat.length > 0 && under) return meat;
  }
  // "Shred the chicken", "skin the ham": work of the hands on one thing of several parts it from the others.
  const byHand = chosen.technique.miseEnPlace && chosen.station === "hands" && only.contents.size > 1;
  const moved =
    /^(put|plate|arrange|rest|drain)$/.test(id) &&
    clause.tokens.some((t) => /^(plate|plates|board|rack|paper|towel|platter)$/.test(t.text));
  // "Peel the potatoes and the carrots. Boil the potatoes": what only was got ready together goes its own way.
  if (!lifting.has(id) && !moved && !byHand && !only.raw) return null;
  if (products.some((p) => p.pool === only) || again.some((a) => a.whole === true)) return null;
  // "Drain the beans": what flavoured their water goes with them.
  if (id === "drain" && keptAt < 0 && only.onHeat && goes.length === 1 && wetIn(reader, only)) return null;
  const named = goes
    .filter((a) => a.pool === only && only.contents.has(a.ingredient))
    .map((a) => a.ingredient);
  if (named.length === 0) return null;
  const others = [...only.contents].filter((i) => !named.includes(i));
  // "Slice the salmon" that was pressed with dill: the herbs go with it.
  if (byHand && others.every((i) => coatings.test(reader.ingredients[i]?.name.toLowerCase() ?? "")))
    return null;
  return others.length > 0 ? named : null;
};

/** "Take the moulds out of the water", "strain, pressing on the vegetables": what is named does not leave. */
const isLeft = (clause: Clause, id: string, from: number): boolean => {
  const lead = clause.tokens.slice(clause.verbAt, from).map((t) => t.text);
  if (id === "take-out") return /\b(out of|from)( the| its| their)?$/.test(lead.join(" "));
  return id === "sieve" && lead.some((w) => /^(pressing|pushing|squeezing|rubbing|discarding)$/.test(w));
};

/** Water, stock or milk stands in it. */
const wetIn = (reader: StepReader, pool: Pool): boolean =>
  [...pool.contents].some((i) =>
    /\b(water|stock|broth|milk)\b/.test(reader.ingredients[i]?.name.toLowerCase() ?? ""),
  );

/** Roast meat goes on a plate to rest. */
const isMeatOnPlate = (reader: StepReader, clause: Clause, id: string, pool: Pool): boolean =>
  /^(rest|put|take-out|set-aside|stand)$/.test(id) &&
  clause.tokens.some((t) => /^(plate|board|platter)$/.test(t.text)) &&
  reader.classes.membersOf("meat").some((m) => pool.contents.has(m));

/** "Lift it on to a board." */
const onBoard = (clause: Clause): boolean =>
  clause.tokens.some((t) => t.text === "it") &&
  clause.tokens.some((t) => /^(plate|board|platter|dish)$/.test(t.text));

/** "Divide between 8 moulds": where it stands then. */
const sharedOut = (clause: Clause, id: string): string | undefined =>
  /^(divide|pour)$/.test(id)
    ? clause.tokens.find((t) => /^(mould|mold|ramekin|glass|jar|cup)(s|es)$/.test(t.text))?.text
    : undefined;

/** Moves food between vessels after an action. */
export const settle = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  action: Action,
  place: Place,
  { fresh, again, joined, lifted, products }: Hands,
): void => {
  const { kitchen } = reader;
  const { technique } = chosen;
  const [only] = joined;
  kitchen.turn += 1;
  // "Lift out the chicken": what is named leaves, the rest stays in the pan.
  if (lifted !== null && only !== undefined) {
    const out = addPool(reader, place.part);
    for (const i of lifted) {
      out.contents.add(i);
      only.contents.delete(i);
      for (const portion of [...only.portions].filter((p) => p.startsWith(`${i}:`))) {
        out.portions.add(portion);
        only.portions.delete(portion);
      }
    }
    out.last = action.id;
    out.aside = true;
    out.from = only;
    only.partial = true;
    only.waits.add(action.id);
    // "Skim the fat", "discard the bay leaf": the work goes on with the pot. What is lifted out is in hand.
    const gone =
      technique.id === "discard" ||
      technique.id === "skim" ||
      (technique.id === "take-out" &&
        lifted.every((i) => thrown.test(reader.ingredients[i]?.name.toLowerCase() ?? "")));
    out.sentence = place.sentence;
    out.turn = kitchen.turn;
    out.did.add(technique.id);
    if (gone) out.left = 0;
    // "Pat it dry and keep the wine": what stands by is not in hand.
    const kept = technique.id === "set-aside" && /^(keep|reserve|save)/.test(clause.hit?.verb ?? "");
    if (!kept) kitchen.current = gone ? only : out;
    if (!kept) kitchen.emptied = [...only.contents].every((i) => isFatOrWater(reader, i)) ? only : null;
    return;
  }
  // "Set aside", "lift them out of the pan": all leaves, and the pan can be used again.
  const leaves =
    (technique.id === "set-aside" ||
      // "Fry the beef, then tip it out"
      (technique.id === "unmould" && only?.onHeat === true) ||
      (technique.id === "take-out" &&
        // "Take it off" means off the heat, pan and all.
        !/ off$/.test(clause.hit?.verb ?? "") &&
        (only?.onHeat === true || !/^(oven|fridge|freezer)$/.test(place.before?.station ?? "oven")))) &&
    fresh.length === 0;
  // "Rest the bird on a warm plate": its tin stands by, with the juices.
  const toPlate = only?.baked === true && isMeatOnPlate(reader, clause, technique.id, only);
  const share = products.find((p) => p.pool === only && p.share < p.pool.left - 0.001);
  const fromPan = leaves && share === undefined && only?.vessel != null && pans.has(only.vessel);
  if ((fromPan || toPlate) && only !== undefined && joined.length === 1 && fresh.length === 0) {
    const emptied = addPool(reader, place.part);
    emptied.vessel = toPlate && (only.vessel === null || !pans.has(only.vessel)) ? "tin" : only.vessel;
    emptied.called = toPlate ? null : only.called;
    emptied.waits.add(action.id);
    emptied.primed = true;
    emptied.left = 1;
    only.last = action.id;
    only.partial = false;
    only.aside = true;
    only.did.add(technique.id);
    only.turn = kitchen.turn;
    only.inOven = false;
    only.onHeat = false;
    only.vessel = null;
    kitchen.emptied = emptied;
    kitchen.current = only;
    return;
  }
  let main = only ?? addPool(reader, place.part);
  const partly =
    products.find((p) => p.pool === main && p.share < main.left - 0.001) ??
    again.find((a) => a.pool === main && main.contents.size === 1 && a.share < main.left - 0.001);
  // "Spoon most of the fat out of the tin": the work goes on with what is left there.
  const skimmed =
    partly !== undefined &&
    /^(take-out|skim|pour|drain|discard|set-aside)$/.test(technique.id) &&
    /^(fat|grease|scum)$/.test(clause.tokens[partly.from]?.text ?? "") &&
    main.contents.size > 1;
  if (partly !== undefined && joined.length === 1 && !skimmed) {
    main.left -= partly.share;
    kitchen.split = main;
    reader.lastPart = null;
    const piece = addPool(reader, place.part);
    for (const i of main.contents) piece.contents.add(i);
    for (const t of main.did) piece.did.add(t);
    for (const n of main.names) piece.names.add(n);
    piece.left = 1;
    main = piece;
  }
  for (const other of joined.slice(1)) {
    const portion = again.find(
      (a) => a.pool === other && other.contents.size === 1 && (a.portion != null || a.share < 1),
    );
    const taken = products.find((p) => p.pool === other)?.share ?? portion?.share ?? other.left;
    for (const i of other.contents) main.contents.add(i);
    for (const p of other.portions) main.portions.add(p);
    if (other.names.size > 0 && main.names.size === 0 && other.contents.size > 1)
      for (const n of other.names) main.names.add(n);
    other.left = Math.max(0, other.left - taken);
    if (other.left <= 0.001) other.left = 0;
    else {
      kitchen.split = other;
      reader.lastPart = null;
    }
    if (other.vessel !== null && main.vessel === null) main.vessel = other.vessel;
  }
  for (const f of fresh) main.contents.add(f.ingredient);
  for (const { ingredient, portion } of [...fresh, ...again])
    if (portion != null) main.portions.add(`${ingredient}:${portion}`);
  // What was left of it is all that this action made.
  if (main.last !== null && partly === undefined) main.left = 1;
  main.last = action.id;
  main.sentence = place.sentence;
  main.turn = kitchen.turn;
  main.did.add(technique.id);
  main.baked ||= chosen.station === "oven" && /^(bake|roast|blind-bake)$/.test(technique.id);
  if (action.celsius !== null && burners.has(chosen.station) && primers.has(technique.id))
    main.fatCelsius = action.celsius;
  main.waits.clear();
  main.partial = false;
  main.aside = (technique.id === "set-aside" || technique.id === "take-out") && !skimmed;
  const goesOn =
    staysThere.has(technique.id) ||
    (technique.id === "remove-from-heat" &&
      (clause.tokens.some((t) => t.text === "oven") || /^(turn|switch)/.test(clause.hit?.verb ?? ""))) ||
    (technique.id === "stir" && chosen.station === "hands") ||
    (/^(take-out|discard)$/.test(technique.id) &&
      clause.tokens.some((t) => /^(beans|paper|foil|parchment|weights)$/.test(t.text)));
  // "Put the tin on the hob": out of the oven, and on the fire.
  const onHob =
    (technique.id === "put" && isOnHeat(clause.tokens)) ||
    clause.tokens.some(
      (t, i) =>
        /^(hob|stove|stovetop|burners?)$/.test(t.text) &&
        clause.tokens.slice(Math.max(0, i - 3), i).some((w) => /^(on|over)$/.test(w.text)),
    );
  main.inOven =
    chosen.station === "oven" || clause.station?.station === "oven" || (main.inOven && goesOn && !onHob);
  const wasOnHeat = main.onHeat;
  main.onHeat = burners.has(chosen.station) || onHob || (main.onHeat && goesOn);
  if (technique.id === "blind-bake" || (technique.id === "line" && main.contents.size > 0))
    callPool(kitchen, main, "case");
  main.part ??= place.part;
  if (technique.id === "mash") callPool(kitchen, main, "mash");
  if (action.makes !== null) callPool(kitchen, main, stem(action.makes));
  if (place.part !== null && joined.length === 0)
    for (const w of place.part.toLowerCase().split(/[^\p{L}]+/u))
      if (w.length > 2) callPool(kitchen, main, stem(w));
  if (clause.station?.station === "machine") main.machine = clause.station.mixer ? "mixer" : "processor";
  else if (
    (clause.vessel !== null || clause.station !== null || leavesMachine.has(technique.id)) &&
    // A minute's rest is taken in the bowl.
    !(technique.id === "rest" && clause.vessel === null && (action.minutes?.high ?? 60) <= 15)
  )
    main.machine = null;
  const vessel = clause.vessel?.split(" ").at(-1) ?? sharedOut(clause, technique.id);
  // "Brown it and put it in the casserole": the pan stands by.
  if (
    technique.id === "put" &&
    wasOnHeat &&
    vessel !== undefined &&
    main.vessel !== null &&
    pans.has(main.vessel) &&
    main.vessel !== stem(vessel) &&
    fresh.length === 0
  ) {
    const vacated = addPool(reader, place.part);
    vacated.vessel = main.vessel;
    vacated.called = main.called;
    vacated.waits.add(action.id);
    vacated.primed = true;
    kitchen.vacated = vacated;
  } else if (burners.has(chosen.station) || main === kitchen.vacated) kitchen.vacated = null;
  if (vessel !== undefined) {
    main.vessel = stem(vessel);
    main.called = clause.vessel ?? main.called;
  } else if (main.vessel === null && burners.has(chosen.station)) main.vessel = "pan";
  // "Crack an egg into a bowl, add the milk": what stands in a bowl of its own waits there.
  const bowl = fresh.length > 0 && vessel !== undefined && /^(bowl|jug|basin)s?$/.test(vessel);
  // "Grate the zest into the butter": what is mixed is no longer only got ready.
  const mixed =
    fresh.length > 1 &&
    fresh.some((f) => isTarget(clause, f.from)) &&
    fresh.some((f) => !isTarget(clause, f.from));
  if (!technique.miseEnPlace || bowl || mixed) main.raw = false;
  const wasPrimed = main.primed;
  main.primed =
    (primers.has(technique.id) ||
      technique.id === "preheat" ||
      (wasPrimed && /^(add|put|pour)$/.test(technique.id)) ||
      (technique.id === "put" && clause.heat !== null && main.contents.size > 0)) &&
    [...main.contents].every((i) => isFatOrWater(reader, i));
  if (kitchen.emptied === main || burners.has(chosen.station)) kitchen.emptied = null;
  // "Keep a spoonful back": the pot stays in hand.
  if (
    partly !== undefined &&
    technique.id === "set-aside" &&
    kitchen.split !== null &&
    main !== kitchen.split
  ) {
    kitchen.current = kitchen.split;
    return;
  }
  // "Fry off a little bit and taste it": the bowl stays in hand.
  if (partly !== undefined && partly.share < 0.05 && kitchen.split !== null) {
    kitchen.current = kitchen.split;
    main.left = 0;
    return;
  }
  // "Grease a tin": it stands by, and what is in hand stays in hand.
  if (joined.length === 0 && (technique.id === "grease" || (technique.id === "line" && fresh.length === 0)))
    return;
  kitchen.current = main;
};

const wetNames = /\b(stock|broth|wine|cider|beer|ale|milk|cream|juice|vinegar|tomatoes|passata|sauce)\b/;

// From so many grams on, fat is a bath. Common practice, no source.
const deepFat = 250;

const isFatOrWater = (reader: StepReader, index: number): boolean =>
  /\b(oil|butter|lard|dripping|ghee|fat|water|margarine|salt|suet|duck fat|stock)\b/.test(
    reader.ingredients[index]?.name.toLowerCase() ?? "",
  );

const addPool = (reader: StepReader, part: string | null): Pool => {
  const pool = newPool(part);
  reader.kitchen.pools.push(pool);
  return pool;
};

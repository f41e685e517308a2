import type { Action } from "../../model/dish.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import { comesBack, potFor } from "./comes-back.ts";
import { intoTheFat } from "./into-the-fat.ts";
import { joinedPools } from "./joined-pools.ts";
import { joinsCurrent } from "./joins-current.ts";
import { gotReadyFor, hasPronoun, inMarinade, isOvenPlace, laidUnder, onTheFire } from "./pool-words.ts";
import { livePools, newestPool, type Pool } from "./pools.ts";
import { besideHand, inHand, potMeant, rubbedIn, stirredInto } from "./pot-meant.ts";
import type { StepReader } from "./step-reader.ts";
import type { Again, Fresh, Product } from "./taken.ts";
import {
  articleOf,
  asksBestVessel,
  asksCleanVessel,
  asksNewVessel,
  heatsEmptyVessel,
  poolInVessel,
  sameVessel,
} from "./vessel-words.ts";
import { behindWith, goesIn, isTarget } from "./where-it-goes.ts";
import {
  allOfThem,
  burners,
  joiningTechniques,
  mixes,
  onObject,
  pans,
  seasoning,
  several,
  steeringTechniques,
} from "./word-sets.ts";

/** Where in the method an action stands. */
export type Place = {
  readonly id: string;
  readonly part: string | null;
  readonly offset: number;
  /** The sentence it stands in, to tell what was got ready in the same one. */
  readonly sentence: string;
  /** The action before in the same sentence; null for the first. */
  readonly before: Action | null;
};

const word = (clause: Clause, i: number): string => clause.tokens[i]?.text ?? "";

/** Techniques that bring all that is ready together on the plate. */
export const finishing: ReadonlySet<string> = new Set(["serve", "plate"]);

const unique = (pools: readonly (Pool | null | undefined)[]): readonly Pool[] =>
  [...new Set(pools)].filter((p): p is Pool => p != null && p.left > 0.001);

/** "Take the chicken out an hour before": nothing else was done to it. */
const onlyOut = (pool: Pool): boolean => [...pool.did].every((id) => /^(take-out|stand)$/.test(id));

/** The pools that an action works on; the one it goes on in comes first. */
export const poolsOf = (
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
  const current = inHand(reader, technique.id);
  // A further stretch of the same work; "hot pan, oil, 3 minutes": what is in hand goes in.
  if (clause.again || (clause.hit?.verb === "fry" && pans.has(word(clause, clause.verbAt))))
    return unique([current]);
  const named = [
    ...products.filter((p) => p.pool !== null).map((p) => ({ pool: p.pool, from: p.from })),
    ...again.map((a) => ({ pool: a.pool, from: a.from })),
  ];
  const base = named.map((n) => n.pool);
  const hint = clause.hints
    .map((m) => m.candidates[0]?.ingredient)
    .map((i) => (i === undefined ? null : newestPool(kitchen, (p) => p.contents.has(i))));
  if (technique.id === "adjust-heat") return unique([named[0]?.pool ?? current]);
  if (steeringTechniques.has(technique.id) && named.length === 0 && fresh.length === 0) return [];
  if (finishing.has(technique.id)) return unique([...base, ...livePools(kitchen)]);
  const meant = named.length === 0 && fresh.length === 0 ? potMeant(reader, clause, technique.id) : null;
  if (meant !== null) return unique([meant]);
  const over = named.length === 0 && fresh.length === 0 ? laidUnder(reader, clause, chosen, current) : null;
  if (over !== null) return unique([over, current]);
  const beside = besideHand(reader, clause, technique.id, current, base);
  if (beside !== null) return unique(beside);
  const target = named.find((n) => isTarget(clause, n.from));
  const vesselPool =
    asksCleanVessel(clause) || asksBestVessel(reader, clause)
      ? null
      : sameVessel(clause) || /^(the|your|that)$/.test(articleOf(clause))
        ? poolInVessel(reader, clause)
        : null;
  // "Mash with the butter": what is in hand is mashed.
  const pronoun =
    hasPronoun(clause, fresh) ||
    (clause.hit !== null &&
      (word(clause, clause.verbTo) === "with" || word(clause, clause.verbTo - 1) === "with") &&
      // "Bring the water to the boil with the peel": the water is named, and nothing in hand is meant.
      (clause.verbTo - clause.verbAt < 3 || fresh.every((f) => behindWith(clause, f.from))));
  if (comesBack(clause)) {
    const back =
      named.length > 0
        ? base
        : [current?.sentence === place.sentence ? current : (newestPool(kitchen, (p) => p.aside) ?? current)];
    const known = back.filter((p): p is Pool => p !== null);
    const into = isOvenPlace(clause) ? null : potFor(reader, clause, known, place.part);
    return unique([into, ...known]);
  }
  // "Peel the carrots, slice the onions and fry them": all that was got ready in this sentence.
  const ready =
    place.before !== null &&
    clause.tokens.some((t, i) => i >= clause.verbAt && (several.has(t.text) || t.text === "both"))
      ? kitchen.pools.filter(
          (p) => p.sentence === place.sentence && p.raw && p.left > 0.001 && p.last !== null,
        )
      : [];
  const joining =
    joiningTechniques.has(technique.id) ||
    goesIn(clause) ||
    (/ (in|into|through|over|on)$/.test(clause.hit?.verb ?? "") &&
      /^(add|fold|mix|stir|whisk|beat|pour)$/.test(technique.id));
  const vessel = asksNewVessel(reader, clause) || heatsEmptyVessel(clause, chosen, fresh, named.length);
  const together =
    fresh.length === 0 &&
    again.length === 0 &&
    clause.tokens.some(
      (t, i) =>
        (allOfThem.has(t.text) && mixes.has(technique.id)) ||
        (t.text === "above" && /^(the|all)$/.test(word(clause, i - 1))),
    ) &&
    (products.length === 0 || clause.tokens.some((t) => /^(mixtures|both)$/.test(t.text)));
  if (together) {
    const all = livePools(kitchen).filter(
      (p) =>
        p.contents.size > 0 &&
        (place.part === null || p.part === place.part || p.part === null) &&
        !(onlyOut(p) && clause.tokens.some((t) => t.text === "together")),
    );
    if (all.length > 0) return unique([current, ...all]);
  }
  const layered = named.length === 0 ? gotReadyFor(reader, clause, chosen, fresh, place.part) : [];
  if (layered.length > 0) return unique([current, ...layered]);
  if (target !== undefined) {
    // "Pour over the shrimps", "pour on the milk": what is in hand is poured, for nothing else is named.
    const others =
      named.some((n) => !isTarget(clause, n.from)) ||
      fresh.some(
        (f) =>
          !isTarget(clause, f.from) &&
          word(clause, f.from - 1) !== "with" &&
          word(clause, f.from - 2) !== "with",
      );
    return unique([
      target.pool,
      ...base,
      pronoun || (joining && !others) ? current : null,
      ...(ready.length > 1 ? ready : []),
    ]);
  }
  // "Stir the oyster sauce, the stock and the soy together": a bowl of their own.
  if (
    /^(stir|toss)$/.test(technique.id) &&
    place.before === null &&
    named.length === 0 &&
    !pronoun &&
    fresh.filter((f) => f.from > clause.verbAt).length > 1 &&
    clause.tokens.some((t, i) => t.text === "together" && i >= clause.verbTo)
  )
    return [];
  const stood = named.length === 0 ? stirredInto(reader, clause, current, place.sentence) : null;
  if (stood !== null) return unique([stood, current]);
  // "Wash the rice, add to water with salt": what is in hand goes in.
  const objects = fresh.filter((f) => !isTarget(clause, f.from) && !behindWith(clause, f.from));
  const meat =
    fresh.length === 0 && named.length === 0 && pronoun ? rubbedIn(reader, technique.id, current) : null;
  if (meat !== null) return unique([meat, current]);
  // "Rub all over the pork": what is in hand goes on.
  const onto =
    fresh.length > 0 &&
    named.length === 0 &&
    /^(rub|spread|brush|press|fill|wrap)$/.test(technique.id) &&
    fresh.every((f) => isTarget(clause, f.from));
  if (onto) return unique([current]);
  const behind = fresh.length > 0 && fresh.every((f) => behindWith(clause, f.from));
  const pan = (): Pool | null => {
    if (vesselPool !== null && vesselPool !== current) return vesselPool;
    // "Add them along with the cabbage": to the pot, what was got ready goes in too.
    return joining &&
      /^(add|put|pour)$/.test(technique.id) &&
      current?.raw === true &&
      !asksNewVessel(reader, clause)
      ? newestPool(kitchen, (p) => !p.raw && !p.aside && (place.part === null || p.part === place.part))
      : null;
  };
  if (
    named.length === 0 &&
    objects.length === 0 &&
    ((joining && fresh.length > 0 && place.before !== null) ||
      (behind &&
        (technique.id === "put" ||
          technique.id === "rub" ||
          (!asksNewVessel(reader, clause) && !technique.miseEnPlace))))
  )
    return unique([pan(), current, ...ready]);
  // "Stir the sugar into the vinegar": both from the list, so a vessel of their own.
  if (
    joining &&
    !pronoun &&
    named.length === 0 &&
    fresh.some((f) => isTarget(clause, f.from)) &&
    fresh.some((f) => !isTarget(clause, f.from))
  )
    return [];
  // "Fold the rest of the dill through the oil": what was got ready goes into what is new.
  if (
    joining &&
    !pronoun &&
    named.length > 0 &&
    fresh.length > 0 &&
    fresh.every((f) => isTarget(clause, f.from)) &&
    named.every((n) => !isTarget(clause, n.from))
  )
    return unique(base);
  // "Season the steak", "brush the loaves with egg": done to what is named, beside the pot in hand.
  if (onObject.has(technique.id) && !pronoun && named.length === 0) {
    if (objects.some((f) => !seasoning.test(reader.ingredients[f.ingredient]?.name.toLowerCase() ?? "")))
      return [];
  }
  // "Spoon the filling into a dish": it goes alone.
  if (
    /^(put|add|pour|fill|spread|layer|arrange)$/.test(technique.id) &&
    vessel &&
    !pronoun &&
    fresh.length === 0 &&
    named.length > 0
  )
    return unique(base);
  // "Set the tart case on the middle shelf": it stands there alone.
  if (
    /^(put|arrange)$/.test(technique.id) &&
    place.before === null &&
    !pronoun &&
    fresh.length === 0 &&
    named.length > 0 &&
    clause.tokens.some((t) => /^(shelf|rack|worktop)$/.test(t.text))
  )
    return unique(base);
  // "Put them in a food processor": what is in hand goes there alone.
  if (/^(put|add|pour)$/.test(technique.id) && vessel && pronoun && fresh.length === 0 && current !== null)
    return unique([current, ...base, ...ready]);
  // "Cut the beef and dust with flour": done to what is in hand.
  if (
    /^(sprinkle|season|brush|drizzle|salt|rub)$/.test(technique.id) &&
    place.before !== null &&
    named.length === 0 &&
    current?.sentence === place.sentence &&
    behind &&
    !clause.tokens.some((t) => /^(over|top)$/.test(t.text))
  )
    return unique([current]);
  if (joining)
    return unique(
      joinedPools(reader, clause, technique.id, place, {
        fresh,
        named,
        current,
        vesselPool,
        pronoun,
        vessel,
        ready,
      }),
    );
  // "Dice the chicken and fry along with the onions": what was got ready, and what is named beside it.
  if (
    named.length > 0 &&
    fresh.length === 0 &&
    place.before !== null &&
    current?.sentence === place.sentence &&
    current.raw &&
    named.every((n) => n.pool !== current && behindWith(clause, n.from))
  )
    return unique([...base, current]);
  // "Fry 3 at a time, letting the oil come back to 180": its fat alone is named.
  const onlyFat =
    named.length > 0 &&
    current?.primed === true &&
    named.every((n) => n.pool === current) &&
    fresh.length === 0;
  if (named.length > 0 && !(onlyFat && /^(fry|deep-fry)$/.test(technique.id))) {
    if (vesselPool !== null && burners.has(chosen.station)) return unique([...base, vesselPool]);
    // "Heat the fat. Salt the mutton. Brown the mutton": into the fat that waits.
    const waits =
      /^(fry|deep-fry|stir-fry|brown|sear)$/.test(technique.id) &&
      fresh.length === 0 &&
      current?.primed !== true &&
      base.every((p) => p !== null && !p.onHeat)
        ? newestPool(kitchen, (p) => p.primed && p.contents.size > 0)
        : null;
    if (waits !== null) return unique([...base, waits]);
    // "Beat the lentils to break them up": the pronoun means what was just named.
    const aim = clause.tokens.findIndex((t, i) => t.text === "to" && /^(it|them)$/.test(word(clause, i + 2)));
    const meansNamed = aim > 0 && named.every((n) => n.from > clause.verbAt && n.from < aim);
    if (
      pronoun &&
      !meansNamed &&
      current !== null &&
      clause.tokens.some((t) => t.text === "it" || t.text === "them")
    )
      return unique([current, ...base]);
    return joinsCurrent(reader, clause, chosen, place, current, fresh) && burners.has(chosen.station)
      ? unique([current, ...base])
      : unique(base);
  }
  const bathed = technique.id === "marinate" && fresh.length === 0 ? inMarinade(reader, base, current) : null;
  if (bathed !== null) return unique(bathed);
  const drained =
    technique.id === "drain" && fresh.length === 0 && !pronoun ? onTheFire(reader, current) : null;
  if (drained !== null && place.before === null) return unique([drained]);
  // "Carve and serve" after the sauce was made: the meat that rests.
  if (technique.id === "carve" && fresh.length === 0 && !pronoun) {
    const rested = newestPool(kitchen, (p) => p.contents.size > 0 && (p.did.has("rest") || p.aside));
    if (rested !== null) return unique([rested]);
  }
  if (technique.id === "line" && fresh.length === 0 && pronoun) return unique([current]);
  if (fresh.length === 0 && heatsEmptyVessel(clause, chosen, fresh, 0)) return [];
  const fried = fresh.length === 0 ? intoTheFat(reader, clause, chosen, current, pronoun && !onlyFat) : null;
  if (fried !== null) return unique([...fried, ...ready]);
  // "Then the tomatoes, and cook it down": into what is on the fire.
  if (
    fresh.length > 0 &&
    /^(then|next|now)$/.test(clause.tokens[0]?.text ?? "") &&
    fresh.every((f) => f.from < clause.verbAt) &&
    current?.onHeat === true &&
    burners.has(chosen.station)
  )
    return unique([current]);
  // "Slice the onions and fry them in the ghee": what the pronoun means goes where the new food is.
  if (
    fresh.length > 0 &&
    pronoun &&
    current !== null &&
    !technique.miseEnPlace &&
    burners.has(chosen.station)
  )
    return unique([kitchen.emptied, current, ...ready]);
  // "When the pasta has cooked, drain it": the pronoun means what the sentence opened with.
  const opening = clause.hints.findIndex((m) => m.from < clause.verbAt);
  if (fresh.length === 0 && opening >= 0 && hint[opening] != null && place.before === null)
    return unique([hint[opening]]);
  if (fresh.length === 0)
    return unique([hint[0] != null && !pronoun && place.before === null ? hint[0] : current]);
  if (
    kitchen.emptied !== null &&
    burners.has(chosen.station) &&
    !vessel &&
    !clause.meanwhile &&
    kitchen.emptied.part === place.part
  )
    return unique([kitchen.emptied]);
  if (vesselPool !== null && (burners.has(chosen.station) || sameVessel(clause))) return unique([vesselPool]);
  if (vessel || clause.meanwhile) return [];
  // "Cut it in matchsticks, straight into the lemon juice": what is cut goes there.
  if (pronoun && (!technique.miseEnPlace || fresh.every((f) => isTarget(clause, f.from))))
    return unique([current]);
  return joinsCurrent(reader, clause, chosen, place, current, fresh) ? unique([current]) : [];
};

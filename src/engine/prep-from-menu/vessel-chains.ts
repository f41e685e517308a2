import type { TaskId } from "../model/prep.ts";
import type { Draft } from "./drafts.ts";
import { asLarge, needOf, type VesselNeed } from "./vessel-need.ts";
import type { VesselKind, Vessels } from "./vessels.ts";
import type { Unit, Work } from "./work.ts";

/** Food in one vessel: from the task that fills it until it has been moved or plated. */
export type VesselChain = {
  readonly kind: VesselKind;
  /** Place in the kind's sizes. */
  readonly size: number;
  readonly amount: number;
  readonly from: TaskId;
  /** It is empty once all of these are over (`end`) or under way (`start`). */
  readonly frees: readonly { readonly task: TaskId; readonly edge: "start" | "end" }[];
  /** Emptied at the pass. */
  readonly plated: boolean;
  readonly work: Work;
  /** The unit that fills it. */
  readonly unit: Unit;
};

/** What the tasks of a dish are, for whoever follows its vessels. */
export type LaidOut = {
  readonly drafts: readonly Draft[];
  /** Tasks of each draft; none for what became no task. */
  readonly ids: ReadonlyMap<number, readonly TaskId[]>;
  readonly plate: TaskId | null;
  /** Drafts whose food waits hot, where it was cooked, until it is plated. */
  readonly plated: ReadonlySet<number>;
  /** "3 5": between these two drafts the food waits cold, and so in other vessels. */
  readonly cold: ReadonlySet<string>;
};

/** Techniques after which the food is no longer in the vessel that it was in. */
const moves = new Set(
  (
    "sieve push-through take-out unmould divide fill shape roll-out stamp pipe plate serve spread wrap layer arrange " +
    "slice shred dice chop cut halve joint fillet ice crumble"
  ).split(" "),
);

/** Words for what stands on a stove. */
const panWords = /\b(?:pans?|saucepans?|pots?|stockpots?|casseroles?|skillets?|woks?|kettles?)\b/;
const notOnStove = /\b(?:roasting|baking|loaf|cake|sheet|pie)\b/;
/** Words that say no more than that it is a pan. */
const anyPan = /^(?:pan|pot|saucepan|same pan|same pot)$/;
/** Food that stands longer than this is taken out of what it was cooked in. Minutes. Common practice, no source. */
const longStand = 60;

type Growing = {
  kind: VesselKind;
  size: number;
  amounts: readonly number[];
  word: string | null;
  readonly first: Unit;
  readonly units: Set<Unit>;
  readonly frees: { unit: Unit; edge: "start" | "end" }[];
};

/** Follows the food of a dish from vessel to vessel. */
export const vesselChains = (
  work: Work,
  units: readonly Unit[],
  vessels: Vessels,
  laid: LaidOut,
): readonly VesselChain[] => {
  const draftsOf = new Map<Unit, number[]>();
  laid.drafts.forEach((draft, d) => {
    for (const unit of draft.units) draftsOf.set(unit, [...(draftsOf.get(unit) ?? []), d]);
  });
  const homes = (unit: Unit): readonly number[] => draftsOf.get(unit) ?? [];
  const isCold = (a: Unit, b: Unit): boolean =>
    homes(a).some((x) => homes(b).some((y) => laid.cold.has(`${x} ${y}`)));
  const chains: Growing[] = [];
  const inside = new Map<Unit, Growing>();
  const goesOnIn = new Set<Unit>();

  for (const unit of units) {
    const from = unit.takes.flatMap((t) => {
      const before = units[t];
      const chain = before === undefined ? undefined : inside.get(before);
      return before === undefined || chain === undefined || isCold(before, unit) ? [] : [{ before, chain }];
    });
    const need = needOf(unit, work, vessels);
    const own = need === null ? carried(unit, from) : cookedIn(unit, need, from, vessels, goesOnIn);
    const chain = own ?? (need === null ? null : opened(unit, need));
    if (chain !== null && own === null) chains.push(chain);
    for (const { before, chain: other } of from) {
      if (other === chain) goesOnIn.add(before);
      else if (!standsApart(unit, before)) other.frees.push({ unit, edge: byHand(unit) ? "end" : "start" });
    }
    if (chain === null) continue;
    chain.units.add(unit);
    chain.word = chain.word ?? unit.action.vessel;
    chain.frees.push({ unit, edge: "end" });
    inside.set(unit, chain);
  }
  return chains.flatMap((chain) => closed(chain, work, units, laid, homes));
};

type From = readonly { readonly before: Unit; readonly chain: Growing }[];

/** Some guests' part, made from the common pot, that takes nothing away from when the pot is empty. */
const standsApart = (unit: Unit, before: Unit): boolean =>
  unit.segments.length === 0 && before.key !== unit.key;

const byHand = (unit: Unit): boolean => unit.action.station === "hands" || unit.action.station === "machine";

const opened = (unit: Unit, need: VesselNeed): Growing => ({
  ...need,
  word: unit.action.vessel,
  first: unit,
  units: new Set(),
  frees: [],
});

/** The vessel that the food goes on in on the stove or in the oven; null when it goes into another. */
const cookedIn = (
  unit: Unit,
  need: VesselNeed,
  from: From,
  vessels: Vessels,
  taken: ReadonlySet<Unit>,
): Growing | null => {
  const able = from.filter(
    ({ before, chain }) =>
      !taken.has(before) &&
      before.key === unit.key &&
      sameWord(chain.word, unit.action.vessel) &&
      chain.amounts.length === 1 &&
      need.amounts.length === 1 &&
      joins(chain, need),
  );
  const [best] = able.toSorted((a, b) => b.chain.size - a.chain.size);
  if (best === undefined) return null;
  const { chain } = best;
  if (need.kind === "frying" && chain.kind === "pots") {
    chain.kind = need.kind;
    chain.size = need.size;
  } else if (chain.kind !== need.kind) {
    // Browned in the pot that it is then stewed in: the pot is taken from the beginning.
    const litres = vessels[chain.kind][chain.size]?.litres ?? 0;
    chain.size = asLarge(vessels[need.kind], litres);
    chain.kind = need.kind;
  }
  chain.size = Math.max(chain.size, need.size);
  chain.amounts = [Math.max(chain.amounts[0] ?? 0, need.amounts[0] ?? 0)];
  return chain;
};

const joins = (chain: Growing, need: VesselNeed): boolean =>
  chain.kind === need.kind ||
  // Fat is heated in the pan that is then fried in.
  (chain.kind === "pots" && need.kind === "frying" && [...chain.units].every(isOnlyHeated)) ||
  (chain.kind === "frying" && need.kind === "pots" && chain.amounts[0] === need.amounts[0]);

const isOnlyHeated = (unit: Unit): boolean => heated.has(unit.action.technique ?? "");
const heated = new Set(["heat", "melt", "warm"]);

const sameWord = (a: string | null, b: string | null): boolean =>
  a === null || b === null || a === b || anyPan.test(a) || anyPan.test(b);

/** The vessel that food stays in while it is worked on, or stands; null when it is moved. */
const carried = (unit: Unit, from: From): Growing | null => {
  const { station, vessel, technique } = unit.action;
  if (technique !== null && moves.has(technique)) return null;
  if (vessel !== null && (!panWords.test(vessel) || notOnStove.test(vessel))) return null;
  const [main] = from.toSorted((a, b) => b.chain.size - a.chain.size);
  if (main === undefined) return null;
  const stands = unit.segments.reduce((sum, s) => sum + (s.attention === "none" ? s.minutes.likely : 0), 0);
  switch (station) {
    case "hands":
      return main.chain;
    case "machine":
      // A stick blender goes into the pot; for other machines the food goes into theirs.
      return unit.segments.some((s) => s.uses.some((u) => /stick|hand|immersion/.test(u.resource)))
        ? main.chain
        : null;
    case "bench":
      return (main.chain.kind === "pots" || main.chain.kind === "tins") && stands <= longStand
        ? main.chain
        : null;
    default:
      return null;
  }
};

const closed = (
  chain: Growing,
  work: Work,
  units: readonly Unit[],
  laid: LaidOut,
  homes: (unit: Unit) => readonly number[],
): readonly VesselChain[] => {
  const tasksOf = (unit: Unit): readonly TaskId[] => homes(unit).flatMap((d) => laid.ids.get(d) ?? []);
  const starts = [...chain.units].find((unit) => tasksOf(unit).length > 0);
  if (starts === undefined) return [];
  const used = new Set(units.flatMap((unit) => unit.takes.flatMap((t) => units[t] ?? [])));
  const atPass = [...chain.units].some(
    (unit) => !used.has(unit) && (homes(unit).some((d) => laid.plated.has(d)) || tasksOf(unit).length === 0),
  );
  const emptiedThere = chain.frees.some(
    ({ unit }) => tasksOf(unit).length === 0 && unit.step.phase === "to-serve",
  );
  const plated = laid.plate !== null && (atPass || emptiedThere);
  return chain.amounts.map((amount, turn): VesselChain => {
    const turns = chain.amounts.length > 1;
    const own = (unit: Unit): readonly TaskId[] => {
      const all = tasksOf(unit);
      return turns && chain.units.has(unit) ? all.slice(turn, turn + 1) : all;
    };
    const frees = chain.frees.flatMap(({ unit, edge }) => own(unit).map((task) => ({ task, edge })));
    const last = plated && laid.plate !== null ? [{ task: laid.plate, edge: "end" as const }] : [];
    return {
      kind: chain.kind,
      size: chain.size,
      amount,
      from: own(starts)[0] ?? tasksOf(starts)[0] ?? "",
      frees: onceEach([...frees, ...last]),
      plated,
      work,
      unit: starts,
    };
  });
};

const onceEach = (frees: VesselChain["frees"]): VesselChain["frees"] => {
  const ends = new Set(frees.filter((free) => free.edge === "end").map((free) => free.task));
  const seen = new Set<string>();
  return frees.filter(({ task, edge }) => {
    const key = `${task} ${edge}`;
    if (seen.has(key) || (edge === "start" && ends.has(task))) return false;
    seen.add(key);
    return true;
  });
};

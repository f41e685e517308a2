import type { Content } from "../heat/composition.ts";
import { foodById } from "../larder/foods.ts";
import { isLiquid } from "../larder/liquids.ts";
import type { Keeping } from "../model/dish.ts";
import type { LagReason } from "../model/prep.ts";
import type { Draft } from "./drafts.ts";
import { waits } from "./kitchen-rates.ts";
import type { Unit, Warmth, Work } from "./work.ts";

/** How long a thing may wait before what follows, and why. */
export type Limit = {
  readonly most: number;
  readonly reason: LagReason;
  /** Stated on the card; what is not stated may be let out when the method itself takes longer. */
  readonly stated: boolean;
  readonly where: Keeping["where"];
};

export const warmthOf = (draft: Draft): Warmth => draft.units.at(-1)?.warmth ?? "raw";

const reasonFor = (where: Keeping["where"]): LagReason =>
  where === "fridge" || where === "freezer" ? "fridge-limit" : "hold-limit";

const fromKeeping = (keeping: Keeping): Limit => ({
  most: keeping.minutes.likely,
  reason: reasonFor(keeping.where),
  stated: true,
  where: keeping.where,
});

/** Between two tasks of one method. */
export const limitBetween = (work: Work, before: Draft, after: Draft): Limit => {
  const last = before.units.at(-1);
  const first = after.units[0];
  const stated = work.dish.keeping.filter(
    (k) =>
      k.where !== "freezer" &&
      ((k.afterStep !== null && k.afterStep === last?.step.index && first?.step.index !== k.afterStep) ||
        (k.part !== null && k.part === last?.step.part && first?.step.part !== k.part)),
  );
  const longest = stated.reduce<Keeping | null>(
    (a, b) => (a && a.minutes.likely >= b.minutes.likely ? a : b),
    null,
  );
  if (longest) return fromKeeping(longest);
  // A dish that keeps as a whole and is reheated keeps before it is reheated.
  if (after.toServe && !before.toServe) return limitToPlate(work, before, warmthOf(before), true);
  const limit = afterLongRest(before, inItsPot(before, assumed(warmthOf(before), false)));
  // What is frozen through stays so until it is wanted.
  if (last?.warmth === "frozen") return limit;
  // What is to be chilled, or is cooling and being stirred, goes straight on.
  if (standsAlone(after) && after.before.size === 1 && before.loads.length === 1) {
    return { ...limit, most: Math.min(limit.most, waits.toStand) };
  }
  const cooling =
    after.wait &&
    (first?.warmth === "cold" ||
      first?.warmth === "frozen" ||
      before.wait ||
      first?.action.attention === "hands");
  if (cooling) return { ...limit, most: Math.min(limit.most, waits.toCooling) };
  // Where some guests' part leaves the common pot, there are more pots than hands.
  return before.key === after.key ? limit : { ...limit, most: Math.max(limit.most, waits.fork) };
};

/**
 * What soaks for hours by itself is as good some hours later, and nobody comes for it at four in the morning: it may
 * stand for a day in all.
 */
const afterLongRest = (before: Draft, limit: Limit): Limit => {
  const last = before.units.at(-1);
  const rests = last?.wait === true && (last.warmth === "raw" || last.warmth === "room");
  const length = rests ? aloneFor(last) : 0;
  return length < waits.longRest ? limit : { ...limit, most: Math.max(limit.most, waits.restInAll - length) };
};

/** A stew, a slow-cooked joint and a sauce wait longer in their own pot than a steak: they keep hot under the lid. */
const inItsPot = (before: Draft, limit: Limit): Limit => {
  const cooked = before.units.findLast((u) => u.action.station === "burner" || u.action.station === "oven");
  return limit.where === "hot" && cooked !== undefined && keepsHot(cooked)
    ? { ...limit, most: Math.max(limit.most, waits.inItsPot) }
    : limit;
};

const keepsHot = ({ action, technique, lot }: Unit): boolean => {
  const length = action.minutes?.likely ?? 0;
  const id = technique?.id ?? "";
  if (action.station === "oven") return slowInOven.has(id) && length >= waits.slowCooking;
  return (longSimmered.has(id) && length >= waits.longCooking) || pours(lot.contents);
};

const longSimmered: ReadonlySet<string> = new Set(["simmer", "stew", "braise"]);
const slowInOven: ReadonlySet<string> = new Set(["bake", "roast", "braise", "stew"]);

/** Most of what is in the pot is liquid: a sauce, a soup. */
const pours = (contents: readonly Content[]): boolean => {
  let [liquid, all] = [0, 0];
  for (const { food, grams } of contents) {
    const row = food === null ? null : foodById(food);
    all += grams;
    if (row !== null && isLiquid(row)) liquid += grams;
  }
  return all > 0 && liquid >= all * mostlyLiquid;
};

const mostlyLiquid = 0.6;

const aloneFor = (unit: Unit): number =>
  unit.segments.reduce((sum, s) => sum + (s.attention === "none" ? s.minutes.likely : 0), 0);

/** What cools or rests on the bench by itself starts as soon as it is put down. */
const standsAlone = (draft: Draft): boolean =>
  draft.wait &&
  draft.units.every(
    (u) => u.action.station === "bench" && u.segments.every((segment) => segment.attention === "none"),
  );

/** Between the last task of a dish and its plate (or its reheating). */
export const limitToPlate = (work: Work, last: Draft, warmth: Warmth, reheated = false): Limit => {
  const part = last.units.at(-1)?.step.part ?? null;
  const speaks = work.dish.keeping.filter(
    (k) => (k.part === null ? k.afterStep === null : k.part === part) || endsAt(work, last, k),
  );
  const hot = (warmth === "hot" || warmth === "fried") && !reheated;
  // What is frozen has to thaw first, so the freezer is not counted on.
  const fits = speaks.filter((k) => (hot ? k.where === "hot" : k.where === "fridge" || k.where === "room"));
  // A dish that is served hot and keeps a day in the fridge is still served hot: without reheating, the fridge is no help.
  const best = fits.reduce<Keeping | null>(
    (a, b) => (a && a.minutes.likely >= b.minutes.likely ? a : b),
    null,
  );
  if (best) return fromKeeping(best);
  return reheated ? assumed(warmth, true) : inItsPot(last, assumed(warmth, true));
};

/** True when a keeping after some step speaks of the end of the method. */
const endsAt = (work: Work, last: Draft, keeping: Keeping): boolean => {
  const method = work.dish.steps.filter((step) => step.phase === "method");
  return (
    keeping.afterStep !== null &&
    keeping.afterStep === method.at(-1)?.index &&
    keeping.afterStep === last.units.at(-1)?.step.index
  );
};

const assumed = (warmth: Warmth, atPlate: boolean): Limit => {
  const limit = (most: number, where: Keeping["where"], reason: LagReason = reasonFor(where)): Limit => ({
    most,
    reason,
    stated: false,
    where,
  });
  switch (warmth) {
    case "fried":
      return atPlate ? limit(waits.fried, "hot", "serve-soon") : limit(waits.inTheFlow, "hot");
    case "hot":
      return atPlate ? limit(waits.hot, "hot") : limit(waits.inTheFlow, "hot");
    case "softening":
      return limit(waits.softened, "room", "serve-soon");
    case "cold":
    case "frozen":
      return limit(waits.fridge, "fridge");
    case "room":
      return limit(waits.room, "room");
    case "dough":
      return limit(waits.dough, "room");
    case "raw":
      return limit(atPlate ? waits.assembled : waits.bench, "room");
  }
};

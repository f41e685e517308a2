import type { Finding } from "../findings/finding.ts";
import { type Estimate, exactly } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { Hold, Segment, Task, TaskKind } from "../model/prep.ts";
import type { Kitchen } from "../model/sitting.ts";
import { withoutPass } from "./at-the-pass.ts";
import { potsFor } from "./burner-time.ts";
import { soils, thenCleaned } from "./clean-down.ts";
import { icedTime } from "./cold-time.ts";
import {
  assumedFindings,
  keepingFindings,
  missingFindings,
  timedFindings,
  tinFindings,
  turnFindings,
} from "./dish-findings.ts";
import type { DraftLag } from "./draft-lag.ts";
import { type Draft, draftsOf, segmentsOf, totalMinutes } from "./drafts.ts";
import { waits } from "./kitchen-rates.ts";
import { type Limit, limitBetween, limitToPlate, warmthOf } from "./limits.ts";
import { miseTasks } from "./mise-tasks.ts";
import { nameOf } from "./names.ts";
import { inTurns, turnsOf } from "./oven-turns.ts";
import { plateSegments, plateTouches } from "./plating.ts";
import type { Cut } from "./share-mise.ts";
import { spanOf } from "./span-of.ts";
import { unitsOf } from "./units.ts";
import { type VesselChain, vesselChains } from "./vessel-chains.ts";
import type { Vessels } from "./vessels.ts";
import { asWritten, type Portioned, type Work } from "./work.ts";

/** The work of one dish. */
export type DishTasks = {
  readonly tasks: readonly Task[];
  readonly lags: readonly DraftLag[];
  readonly holds: readonly Hold[];
  readonly plate: string | null;
  /** Tasks that take a line of the card, by its place: where a component, or cut food, goes in. */
  readonly takers: ReadonlyMap<number, readonly string[]>;
  /** Last tasks: what is finished when they end. */
  readonly lasts: readonly { readonly task: string; readonly limit: Limit }[];
  /** Jobs of cutting that stand alone, which other dishes may share. */
  readonly cuts: readonly Cut[];
  /** What stands in which vessel, and for how long. */
  readonly chains: readonly VesselChain[];
  readonly findings: readonly Finding[];
};

/**
 * Lays out one dish: its tasks, what must follow what, and how long each thing may wait. `carry`: its plates are carried
 * to the table, and the course with them; absent: they are taken at the pass, or go with another dish.
 */
export const dishTasks = (
  work: Work,
  kitchen: Kitchen,
  vessels: Vessels,
  carry: Kitchen["carry"],
): DishTasks => {
  const { dish } = work;
  const { units, missing } = unitsOf(work, kitchen);
  const laid = withoutPass(units, work.plated);
  const drafts = draftsOf(laid);
  const kept = keptDrafts(drafts);
  const tasks: Task[] = [];
  const lags: DraftLag[] = [];
  const ids = new Map<number, readonly string[]>();
  const id = (name: string): string => `${work.key}/${name}`;

  drafts.forEach((draft, d) => {
    if (!kept.has(d)) return;
    const made = tasksOfDraft(draft, work, (turn) => id(turn === 0 ? `${d + 1}` : `${d + 1}.${turn + 1}`));
    tasks.push(...made);
    ids.set(
      d,
      made.map((task) => task.id),
    );
  });
  const coolings = new Map<number, string>();
  const cold = new Set<string>();
  drafts.forEach((draft, d) => {
    for (const [b, link] of throughDropped(drafts, kept, d)) {
      const before = drafts[b];
      if (!before || !kept.has(d)) continue;
      const limit = inTurns(limitBetween(work, before, draft), before, draft, kitchen);
      if (limit.where === "fridge") cold.add(`${b} ${d}`);
      const from = coolFirst(before, limit)
        ? cooling(work, kitchen, before, b, ids.get(b) ?? [], coolings, tasks, lags, id)
        : (ids.get(b) ?? []);
      for (const x of from) {
        for (const y of ids.get(d) ?? []) lags.push(lagOf(x, y, waitedOut(link, before), limit));
      }
    }
  });

  const plate = work.plated && work.versions.length > 0 ? id("plate") : null;
  const lasts = [...kept]
    .filter(
      (d) =>
        !drafts.some((draft, o) => o !== d && kept.has(o) && throughDropped(drafts, kept, o).has(d) && draft),
    )
    .flatMap((d) => {
      const draft = drafts[d];
      if (!draft) return [];
      const stays = limitToPlate(work, draft, warmthOf(draft));
      const turns = (turnsOf(draft, kitchen) - 1) * (totalMinutes(segmentsOf(draft)) + 10);
      const limit = lastMinute(draft, { ...stays, most: stays.most + turns });
      return (ids.get(d) ?? []).map((task) => ({ task, limit, draft, place: d }));
    });
  const holds: Hold[] = [];
  if (plate !== null) {
    const portions = work.versions.reduce((sum, v) => sum + v.portions, 0);
    tasks.push({
      ...blankTask(work, plate, "plate"),
      verb: "plate",
      objects: [dish.title],
      amount: { value: portions, unit: "portion" },
      segments: plateSegments(portions, plateTouches(units), carry),
      finishing: true,
    });
    for (const last of lasts) {
      lags.push(lagOf(last.task, plate, { takes: true, wait: 0 }, last.limit));
      const hot = last.limit.where === "hot";
      const weight = last.limit.reason === "serve-soon" ? 3 : hot ? 2 : 0;
      if (weight > 0) holds.push({ task: last.task, plate, weight, hot });
    }
  }

  const takers = takersOf(drafts, ids);
  const mise = miseTasks(work, kitchen, takers, tasks[0]?.id ?? plate, id);
  return {
    tasks: [...mise.tasks, ...tasks],
    lags: [...mise.lags, ...lags],
    holds,
    plate,
    takers,
    lasts: lasts.map(({ task, limit }) => ({ task, limit })),
    cuts: mise.cuts,
    chains: vesselChains(work, laid, vessels, { drafts, ids, plate, plated: platedHot(lasts), cold }),
    findings: [
      ...turnFindings(work, drafts, kitchen),
      ...missingFindings(work, missing),
      ...keepingFindings(work, lasts),
      ...assumedFindings(work, units),
      ...timedFindings(work, units),
      ...tinFindings(work, units),
    ],
  };
};

/** Drafts whose food is plated from what it was cooked in. */
const platedHot = (
  lasts: readonly { readonly limit: Limit; readonly place: number }[],
): ReadonlySet<number> =>
  new Set(lasts.filter(({ limit }) => limit.where === "hot").map(({ place }) => place));

/** Drafts that become tasks: those with work in them. */
const keptDrafts = (drafts: readonly Draft[]): ReadonlySet<number> =>
  new Set(drafts.flatMap((draft, d) => (totalMinutes(segmentsOf(draft)) > 0 ? [d] : [])));

/**
 * "To serve" words belong to the last stretch before the course, unless what they say goes by itself; so does what is
 * turned out of its mould cold, wherever it is told.
 */
const lastMinute = (draft: Draft, limit: Limit): Limit => {
  const unmoulded = limit.where === "fridge" && draft.units.some((u) => u.technique?.id === "unmould");
  const late = (draft.toServe || unmoulded) && !draft.wait;
  return late && limit.most > waits.toServe ? { ...limit, most: waits.toServe, stated: false } : limit;
};

/** What must be done before a draft, seen through drafts that became no task. */
const throughDropped = (drafts: readonly Draft[], kept: ReadonlySet<number>, d: number) => {
  const found = new Map<number, { takes: boolean; wait: number }>();
  const stack = [...(drafts[d]?.before ?? [])];
  const seen = new Set<number>();
  while (stack.length > 0) {
    const next = stack.pop();
    if (!next || seen.has(next[0])) continue;
    const [b, link] = next;
    seen.add(b);
    if (kept.has(b)) found.set(b, link);
    else stack.push(...(drafts[b]?.before ?? []));
  }
  return found;
};

const blankTask = (work: Work, id: string, kind: TaskKind): Task => ({
  id,
  kind,
  dish: work.dish.source,
  version: asWritten,
  course: work.course,
  verb: "",
  objects: [],
  amount: null,
  segments: [],
  finishing: false,
  span: null,
});

const tasksOfDraft = (draft: Draft, work: Work, id: (turn: number) => string): readonly Task[] => {
  const soiled = soils(handled(draft, work));
  const segments = soiled ? thenCleaned(segmentsOf(draft)) : segmentsOf(draft);
  const first = draft.units[0];
  const reheat = draft.units.some((u) => u.technique?.id === "reheat");
  const kind: TaskKind = draft.wait ? "wait" : reheat ? "reheat" : "method";
  const versions = first?.versions ?? [];
  const whole = versions.some((v) => v.id === asWritten) || versions.length === work.versions.length;
  return draft.loads.map(
    (shelves, turn): Task => ({
      ...blankTask(work, id(turn), kind),
      ...nameOf(draft, work),
      version: whole ? asWritten : versions.map((v) => v.id).join(", "),
      amount: draft.loads.length > 1 ? { value: turn + 1, unit: "batch" } : amountOf(draft),
      segments: draft.loads.length > 1 ? segments.map((segment) => onShelves(segment, shelves)) : segments,
      ...(soiled ? { thenClean: true } : {}),
      finishing: draft.toServe,
      span: spanOf(draft.units),
    }),
  );
};

const isSwappedOut = (ingredient: number | null, version: Portioned, work: Work): boolean =>
  ingredient !== null && version.swaps.some((s) => work.dish.swaps[s]?.out.includes(ingredient) ?? false);

/** Foods that go in straight from the list, as some version has them. */
const handled = (draft: Draft, work: Work): readonly (string | null)[] =>
  draft.units.flatMap((unit) =>
    unit.action.uses.flatMap((use) =>
      use.ingredient === null ||
      use.implied ||
      use.named !== undefined ||
      unit.versions.every((version) => isSwappedOut(use.ingredient, version, work))
        ? []
        : [work.dish.ingredients[use.ingredient]?.food ?? null],
    ),
  );

const onShelves = (segment: Segment, shelves: number): Segment => ({
  ...segment,
  uses: segment.uses.map((use) => (use.resource === "oven" ? { ...use, amount: shelves } : use)),
});

const amountOf = (draft: Draft): Task["amount"] => {
  const kilos = Math.max(0, ...draft.units.map((u) => u.kilos));
  return kilos > 0 ? { value: Math.round(kilos * 1000), unit: "g" } : null;
};

type Link = { readonly takes: boolean; readonly wait: number };

const lagOf = (before: string, after: string, link: Link, limit: Limit): DraftLag => ({
  before,
  beforeEdge: "end",
  after,
  afterEdge: "start",
  least: minutes(link.wait),
  // What is only done in order, and not taken further, does not wait on anything.
  most: link.takes ? minutes(Math.max(limit.most, link.wait)) : null,
  reason: link.takes ? limit.reason : link.wait > 0 ? "stated-wait" : "method-order",
  soft: !limit.stated,
});

/** A gap that the words state ("next day") is passed by the wait before it, as far as that goes. */
const waitedOut = (link: Link, before: Draft): Link => {
  const segments = before.units.at(-1)?.segments ?? [];
  const alone = segments.reduce((sum, s) => sum + (s.attention === "none" ? s.minutes.likely : 0), 0);
  return { ...link, wait: Math.max(0, link.wait - alone) };
};

const coolFirst = (before: Draft, limit: Limit): boolean => {
  const warmth = warmthOf(before);
  return (warmth === "hot" || warmth === "fried") && limit.where === "fridge" && !before.wait;
};

/** Hot food that is to wait in the fridge is cooled first; one cooling for all that follows. */
const cooling = (
  work: Work,
  kitchen: Kitchen,
  before: Draft,
  b: number,
  from: readonly string[],
  coolings: Map<number, string>,
  tasks: Task[],
  lags: DraftLag[],
  id: (name: string) => string,
): readonly string[] => {
  const known = coolings.get(b);
  if (known !== undefined) return [known];
  const own = id(`${b + 1}.cool`);
  coolings.set(b, own);
  const byHand = (n: number): Segment => ({
    minutes: exactly(minutes(n)),
    attention: "hands",
    station: "ice-bath",
    uses: [],
  });
  tasks.push({
    ...blankTask(work, own, "wait"),
    ...nameOf(before, work),
    verb: "cool quickly",
    segments: [
      byHand(3),
      { ...byHand(0), minutes: coolingTime(before, kitchen), attention: "none" },
      byHand(2),
    ],
  });
  const limit: Limit = { most: waits.toCooling, reason: "hold-limit", stated: false, where: "hot" };
  for (const task of from) lags.push(lagOf(task, own, { takes: true, wait: 0 }, limit));
  return [own];
};

/** Minutes to be cold, by the size of its pots when it is in pots; else an hour. Common practice, no source. */
const coolingTime = (before: Draft, kitchen: Kitchen): Estimate<Minutes> => {
  const last = before.units.findLast((unit) => unit.kilos > 0);
  const inPots = before.units.some((unit) => unit.action.station === "burner") || last?.lot.wet === true;
  const iced = last && inPots ? icedTime({ ...last.lot, coldKilos: 0 }, potsFor(last.lot, kitchen)) : null;
  return iced?.minutes ?? exactly(minutes(60));
};

const takersOf = (
  drafts: readonly Draft[],
  ids: ReadonlyMap<number, readonly string[]>,
): ReadonlyMap<number, readonly string[]> => {
  const takers = new Map<number, string[]>();
  drafts.forEach((draft, d) => {
    for (const unit of draft.units) {
      for (const use of unit.action.uses) {
        if (use.ingredient === null) continue;
        const list = takers.get(use.ingredient) ?? [];
        takers.set(use.ingredient, [...new Set([...list, ...(ids.get(d) ?? [])])]);
      }
    }
  });
  return takers;
};

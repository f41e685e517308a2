import type { Segment } from "../model/prep.ts";
import { leastTask, longestTask, mostTask, shortWait } from "./kitchen-rates.ts";
import { joinSegments } from "./segments.ts";
import type { Unit } from "./work.ts";

/** Units that one cook does in one go: a task in the making. */
export type Draft = {
  readonly key: string;
  readonly units: readonly Unit[];
  readonly wait: boolean;
  readonly toServe: boolean;
  readonly loads: readonly number[];
  /** Places of the drafts that must be done before, and whether their product is taken. */
  readonly before: ReadonlyMap<number, { readonly takes: boolean; readonly wait: number }>;
};

/** The segments of a draft, joined where they are alike. */
export const segmentsOf = (draft: Draft): readonly Segment[] =>
  joinSegments(draft.units.flatMap((unit) => unit.segments));

export const attendedMinutes = (segments: readonly Segment[]): number =>
  segments.reduce((sum, s) => sum + (s.attention === "none" ? 0 : s.minutes.likely), 0);

export const totalMinutes = (segments: readonly Segment[]): number =>
  segments.reduce((sum, s) => sum + s.minutes.likely, 0);

type Open = {
  key: string;
  units: number[];
  wait: boolean;
  toServe: boolean;
  loads: readonly number[];
  alive: boolean;
};

/** Gathers the units of a dish into drafts: a step of the method is one task, unless it waits, forks or joins on the way. */
export const draftsOf = (units: readonly Unit[]): readonly Draft[] => {
  const open: Open[] = [];
  const home: number[] = [];
  units.forEach((unit, u) => {
    const at = joinable(units, open, home, unit);
    if (at !== null) {
      open[at]?.units.push(u);
      home.push(at);
    } else {
      home.push(open.length);
      const toServe = unit.step.phase === "to-serve";
      open.push({ key: unit.key, units: [u], wait: unit.wait, toServe, loads: unit.loads, alive: true });
    }
  });
  mergeShort(units, open, home);
  return closed(units, open, home);
};

/** The draft that a unit goes on with: the one its last step stands in, when nothing else has to be waited for. */
const joinable = (
  units: readonly Unit[],
  open: readonly Open[],
  home: readonly number[],
  unit: Unit,
): number | null => {
  if (unit.wait || unit.loads.length > 1 || unit.action.alongside || unit.before.length === 0) return null;
  if (unit.action.leastWait !== null && unit.action.leastWait > shortWait) return null;
  const homes = [...new Set(unit.before.map((b) => home[b] ?? -1))].sort((a, b) => b - a);
  for (const at of homes) {
    const draft = open[at];
    const last = draft?.units.at(-1);
    const lastUnit = last === undefined ? undefined : units[last];
    if (!draft || last === undefined || !lastUnit || !unit.before.includes(last)) continue;
    if (draft.wait || draft.loads.length > 1 || draft.key !== unit.key) continue;
    if (draft.toServe !== (unit.step.phase === "to-serve")) continue;
    const soFar = attendedMinutes(draft.units.flatMap((u) => units[u]?.segments ?? []));
    const own = attendedMinutes(unit.segments);
    const sameStep = lastUnit.step.index === unit.step.index;
    if (!sameStep && soFar >= leastTask && own >= leastTask) continue;
    if (soFar + own > mostTask && soFar >= leastTask) continue;
    // A long stretch on one cook's list is hard to place; it is cut where something goes in or comes out.
    const whole = totalMinutes([...draft.units.flatMap((u) => units[u]?.segments ?? []), ...unit.segments]);
    if (whole > longestTask && soFar + own >= leastTask) continue;
    const others = homes.filter((h) => h !== at);
    const known = new Set(draft.units.flatMap((u) => units[u]?.before.map((b) => home[b] ?? -1) ?? []));
    if (others.some((h) => !known.has(h))) continue;
    return at;
  }
  return null;
};

/** Joins tasks too short for a list to the one they lead to, or the one they follow. */
const mergeShort = (units: readonly Unit[], open: readonly Open[], home: number[]): void => {
  for (let changed = true; changed; ) {
    changed = false;
    for (const [at, draft] of open.entries()) {
      if (!draft.alive || draft.wait || draft.loads.length > 1) continue;
      if (totalMinutes(draft.units.flatMap((u) => units[u]?.segments ?? [])) >= leastTask) continue;
      const before = neighbours(units, home, draft);
      const after = open.flatMap((other, o) =>
        other.alive && o !== at && neighbours(units, home, other).has(at) ? [o] : [],
      );
      const next = after[0];
      const fits = (o: number | undefined): o is number => {
        const other = o === undefined ? undefined : open[o];
        return (
          other?.alive === true &&
          !other.wait &&
          other.loads.length === 1 &&
          other.key === draft.key &&
          other.toServe === draft.toServe
        );
      };
      const waits = draft.units.some((u) => (units[u]?.action.leastWait ?? 0) > shortWait);
      if (after.length === 1 && fits(next) && !waits && !leadsRound(units, open, home, at, next)) {
        move(open, home, at, next, "front");
        changed = true;
      } else if (totalMinutes(draft.units.flatMap((u) => units[u]?.segments ?? [])) <= tiny && !waits) {
        changed = copyToAll(open, at, after, draft) || changed;
      } else if (before.size === 1 && !waits) {
        const only = [...before][0];
        if (fits(only) && after.every((o) => o !== only)) {
          move(open, home, at, only, "back");
          changed = true;
        }
      }
    }
  }
};

/** A minute or two that several pots begin with ("heat the oil") is done once in each. */
const tiny = 2;

const copyToAll = (open: readonly Open[], at: number, after: readonly number[], draft: Open): boolean => {
  const targets = after.flatMap((o) => open[o] ?? []);
  if (
    targets.length < 2 ||
    targets.some((t) => t.wait || t.loads.length > 1 || t.toServe !== draft.toServe)
  ) {
    return false;
  }
  for (const target of targets) target.units = [...draft.units, ...target.units];
  const source = open[at];
  if (source) {
    source.alive = false;
    source.units = [];
  }
  return true;
};

const neighbours = (units: readonly Unit[], home: readonly number[], draft: Open): ReadonlySet<number> => {
  const own = new Set(draft.units);
  const found = new Set<number>();
  for (const u of draft.units) {
    for (const b of units[u]?.before ?? []) if (!own.has(b)) found.add(home[b] ?? -1);
  }
  return found;
};

/** True when a third task lies between two, so that joining them would close a ring. */
const leadsRound = (
  units: readonly Unit[],
  open: readonly Open[],
  home: readonly number[],
  from: number,
  to: number,
): boolean => {
  const goal = open[to];
  if (!goal) return true;
  const stack = [...neighbours(units, home, goal)].filter((n) => n !== from);
  const seen = new Set<number>();
  while (stack.length > 0) {
    const at = stack.pop();
    const draft = at === undefined ? undefined : open[at];
    if (at === undefined || !draft || seen.has(at)) continue;
    if (at === from) return true;
    seen.add(at);
    stack.push(...neighbours(units, home, draft));
  }
  return false;
};

const move = (
  open: readonly Open[],
  home: number[],
  from: number,
  to: number,
  where: "front" | "back",
): void => {
  const source = open[from];
  const target = open[to];
  if (!source || !target) return;
  target.units = where === "front" ? [...source.units, ...target.units] : [...target.units, ...source.units];
  for (const u of source.units) home[u] = to;
  source.units = [];
  source.alive = false;
};

const closed = (units: readonly Unit[], open: readonly Open[], home: readonly number[]): readonly Draft[] => {
  const place = new Map<number, number>();
  open.forEach((draft, at) => {
    if (draft.alive) place.set(at, place.size);
  });
  return open
    .filter((draft) => draft.alive)
    .map((draft): Draft => {
      const before = new Map<number, { takes: boolean; wait: number }>();
      const own = new Set(draft.units);
      for (const u of draft.units) {
        const unit = units[u];
        for (const b of unit?.before ?? []) {
          const at = own.has(b) ? undefined : place.get(home[b] ?? -1);
          if (at === undefined) continue;
          const known = before.get(at);
          before.set(at, {
            takes: (known?.takes ?? false) || (unit?.takes.includes(b) ?? false),
            wait: Math.max(known?.wait ?? 0, unit?.action.leastWait ?? 0),
          });
        }
      }
      return {
        key: draft.key,
        units: draft.units.flatMap((u) => units[u] ?? []),
        wait: draft.wait,
        toServe: draft.toServe,
        loads: draft.loads,
        before,
      };
    });
};

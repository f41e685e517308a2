import { freshState, mostSlip, settle, tasksOf, tryAt } from "./build.ts";
import type { Chance } from "./chance.ts";
import { byLatest, insertAll } from "./insert.ts";
import { remember, restore } from "./memory.ts";
import { type Cost, compareCosts, costOf } from "./objective.ts";
import { calmEnd } from "./place.ts";
import { type Schedule, take } from "./schedule.ts";
import { windowOf } from "./windows.ts";

/** Takes some tasks out and puts them back in another order, again and again; keeps what is no worse. One try is one such repair. */
export const improve = (schedule: Schedule, tries: number, chance: Chance): void => {
  let best = costOf(schedule);
  for (let i = 0; i < tries; i++) {
    if (best.every((part) => part === 0)) return;
    const before = remember(schedule);
    const late = schedule.slip.flatMap((slip, g) => (slip > 0 ? [g] : []));
    if (best[0] > 0 && chance(2) === 0) bringIn(schedule, chance);
    else if (late.length > 0 && chance(2) === 0) pullForward(schedule, late, chance);
    else shake(schedule, chance);
    const cost = costOf(schedule);
    if (compareCosts(cost, best) <= 0) best = cost;
    else restore(schedule, before);
  }
  quieten(schedule, best);
  settle(schedule);
};

/** Gives each dish that is at work in the quiet hours, and need not be, one more chance to be done before them. */
const quieten = (schedule: Schedule, found: Cost): void => {
  let best = found;
  for (const node of unquietTasks(schedule)) {
    const before = remember(schedule);
    const nodes = patientKin(schedule, node);
    for (const n of nodes) take(schedule, n);
    insertAll(
      schedule,
      nodes,
      byLatest(schedule, () => 0),
      freshState(schedule, nodes.length, null),
    );
    const cost = costOf(schedule);
    if (compareCosts(cost, best) <= 0) best = cost;
    else restore(schedule, before);
  }
};

/** Takes out what lags tie to a task without a place, and what stands where it could, and puts all of it in again. */
const bringIn = (schedule: Schedule, chance: Chance): void => {
  const { model, spots, paths } = schedule;
  const missing: number[] = [];
  for (let node = 0; node < model.taskCount; node++)
    if (!spots[node] && model.nodes[node]?.anyStarts.length !== 0) missing.push(node);
  const node = missing[chance(missing.length)];
  if (node === undefined) {
    shake(schedule, chance);
    return;
  }
  const kin = paths
    .kin(node)
    .filter((n) => n < model.taskCount && model.nodes[n]?.dish === model.nodes[node]?.dish);
  const window = windowOf(schedule, node);
  const around =
    chance(2) === 0 ? between(schedule, Math.max(window.from, window.to - 240), window.to + 60) : [];
  const nodes = [...new Set([...missing, ...kin, ...around])];
  const goal = model.nodes[node]?.course ?? 0;
  if (model.goals.length > 0 && chance(3) === 0) {
    // Better late than not at all: its course may land later when that gives it a place.
    const later = Math.min(mostSlip, (schedule.slip[goal] ?? 0) + 1 + chance(90));
    tryAt(schedule, goal, [...new Set([...nodes, ...tasksOf(schedule, goal)])], later, null);
    return;
  }
  for (const n of nodes) take(schedule, n);
  const noise = model.nodes.map(() => chance(30));
  insertAll(
    schedule,
    nodes,
    byLatest(schedule, (n) => noise[n] ?? 0),
    freshState(schedule, nodes.length * 3, chance(2) === 0 ? chance : null),
  );
};

/** Asks a late course to land earlier, with whatever stood around it taken out as well. */
const pullForward = (schedule: Schedule, late: readonly number[], chance: Chance): void => {
  const goal = late[chance(late.length)] ?? 0;
  const now = schedule.slip[goal] ?? 0;
  const slip = chance(2) === 0 ? Math.max(0, now - 1) : chance(now);
  const landing = (schedule.model.due[goal] ?? 0) + slip;
  const around = chance(2) === 0 ? between(schedule, landing - 60 - chance(120), landing) : [];
  const nodes = [...new Set([...tasksOf(schedule, goal), ...around])];
  const spread = 1 + chance(60);
  const noise = schedule.model.nodes.map(() => chance(spread));
  tryAt(schedule, goal, nodes, slip, chance(2) === 0 ? chance : null, (n) => noise[n] ?? 0);
};

const shake = (schedule: Schedule, chance: Chance): void => {
  const nodes = neighbourhood(schedule, chance);
  for (const node of nodes) take(schedule, node);
  const spread = 1 + chance(60);
  const noise = schedule.model.nodes.map(() => chance(spread));
  const order = byLatest(schedule, (n) => noise[n] ?? 0);
  const restless = chance(2) === 0 ? (n: number): number => noise[n] ?? 0 : null;
  const state = { ...freshState(schedule, nodes.length, chance(2) === 0 ? chance : null), restless };
  insertAll(schedule, nodes, order, state);
};

const neighbourhood = (schedule: Schedule, chance: Chance): readonly number[] => {
  const { model, spots } = schedule;
  const kind = chance(6);
  if (kind === 0) return tasksOf(schedule, chance(model.goals.length));
  if (kind === 1) {
    const from = model.due[chance(model.due.length)] ?? 0;
    const to = from + 30 - chance(240);
    return between(schedule, to - 60 - chance(90), to);
  }
  if (kind === 5) return unquiet(schedule, chance);
  if (kind === 2) return worstHold(schedule, chance);
  if (kind === 3) {
    const cook = chance(model.cooks.length);
    const at = model.due[chance(model.due.length)] ?? 0;
    return between(schedule, at - 180, at).filter((n) => spots[n]?.cook === cook);
  }
  const some: number[] = [];
  for (let i = 0; i < 6; i++) some.push(chance(model.taskCount));
  return [...new Set(some)];
};

/** The whole dish of a task that stands in the last hour or the service and need not. */
const unquiet = (schedule: Schedule, chance: Chance): readonly number[] => {
  const found = unquietTasks(schedule);
  const node = found[chance(found.length)];
  return node === undefined ? [] : patientKin(schedule, node);
};

const unquietTasks = (schedule: Schedule): readonly number[] => {
  const { model, spots } = schedule;
  const found: number[] = [];
  for (let node = 0; node < model.taskCount; node++) {
    const task = model.nodes[node];
    const spot = spots[node];
    if (task && spot && task.weight === 0 && calmEnd(model, task, spot.start) < spot.start) found.push(node);
  }
  return found;
};

/** What lags bind to a task in its own dish, finishing aside. */
const patientKin = (schedule: Schedule, node: number): readonly number[] => {
  const { model, paths } = schedule;
  const dish = model.nodes[node]?.dish;
  return paths
    .kin(node)
    .filter((n) => n < model.taskCount && model.nodes[n]?.dish === dish && !model.nodes[n]?.finishing);
};

/** A task that waits long before its plate, with all that runs between its start and the plate. */
const worstHold = (schedule: Schedule, chance: Chance): readonly number[] => {
  const { model, spots } = schedule;
  const terms = model.holds
    .map((h) => {
      const end = (spots[h.task]?.start ?? 0) + (model.nodes[h.task]?.length ?? 0);
      const plate = spots[h.plate]?.start ?? 0;
      return { from: spots[h.task]?.start ?? 0, plate, wait: h.weight * (plate - end) };
    })
    .sort((a, b) => b.wait - a.wait);
  const term = terms[chance(Math.min(4, terms.length))];
  return term ? between(schedule, term.from, term.plate + 15) : [];
};

const between = (schedule: Schedule, from: number, to: number): readonly number[] => {
  const found: number[] = [];
  for (let node = 0; node < schedule.model.taskCount; node++) {
    const spot = schedule.spots[node];
    const length = schedule.model.nodes[node]?.length ?? 0;
    if (spot && spot.start < to && spot.start + length > from) found.push(node);
  }
  return found;
};

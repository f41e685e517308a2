import type { Chance } from "../search/chance.ts";
import { mostSlip, tasksOf, tryAt } from "./build.ts";
import { insertAll, openAround, takeOut } from "./insert.ts";
import { freshInsertion } from "./insertion.ts";
import { remember, rememberIn, restore } from "./memory.ts";
import * as near from "./neighbourhoods.ts";
import { type Cost, compareCosts, costOf, emptyCost, placesOf } from "./objective.ts";
import { nowhere, type Schedule } from "./schedule.ts";

/** Most tasks taken out at once; of a larger neighbourhood, some stay. */
const mostOut = 45;

/** Throws allowed in one repair. */
const mostThrows = 12;
/** The share of repairs in which work that nothing hurries makes room for itself before the quiet hours. */
const quietShare = 0.1;
/** Tries from one heating to the next; each begins with the best there is. */
const cycle = 15_000;
/** Heat at the beginning and the end of a cycle, in units of the first level after lateness. */
const hottest = 2;
const coolest = 0.03;

const heatAt = (i: number): number => hottest * (coolest / hottest) ** ((i % cycle) / cycle);

type Kind = { readonly name: string; readonly pick: near.Neighbourhood; weight: number };

/**
 * Takes some tasks out and puts them back in another order, again and again; keeps what is no worse, and the best.
 * One try is one such repair. `found` hears of each better schedule; it ends when `keepGoing` says so.
 */
export const improve = (
  schedule: Schedule,
  tries: number,
  chance: Chance,
  keepGoing: () => boolean,
  found: () => void,
): void => {
  const { model } = schedule;
  const kinds: Kind[] = [
    { name: "course", pick: near.course, weight: 1 },
    { name: "finish", pick: near.finish, weight: 2 },
    { name: "hours", pick: near.hours, weight: 2 },
    { name: "oneCook", pick: near.oneCook, weight: 1 },
    { name: "hotWait", pick: near.hotWait, weight: 2 },
    { name: "coldWait", pick: near.coldWait, weight: 2 },
    { name: "unquiet", pick: near.unquiet, weight: 1 },
    { name: "ovenRuns", pick: near.ovenRuns, weight: 1 },
    { name: "some", pick: near.some, weight: 1 },
  ];
  const lateAt = placesOf(model)("late");
  const now = remember(schedule);
  const best = remember(schedule);
  const nowCost = costOf(schedule);
  const bestCost = nowCost.slice();
  const cost = emptyCost(model);
  const noise = new Int32Array(model.nodes.length);
  for (let i = 0; i < tries; i++) {
    if (bestCost.every((part) => part === 0)) break;
    if ((i & 7) === 7 && !keepGoing()) break;
    if (i % cycle === 0) {
      restore(schedule, best);
      rememberIn(schedule, now);
      nowCost.set(bestCost);
    }
    let kind: Kind | null = null;
    if ((nowCost[0] as number) > 0 && chance.below(2) === 0) bringIn(schedule, chance, noise);
    else if ((nowCost[lateAt] as number) > 0 && chance.below(2) === 0) pullForward(schedule, chance, noise);
    else {
      kind = draw(kinds, chance);
      shake(schedule, kind.pick(schedule, chance), chance, noise);
    }
    costOf(schedule, cost);
    const worse = compareCosts(cost, nowCost);
    if (worse > 0 && !tolerable(cost, nowCost, lateAt, chance, heatAt(i))) {
      restore(schedule, now);
      if (kind) kind.weight = Math.max(0.3, kind.weight * 0.998);
    } else {
      rememberIn(schedule, now);
      nowCost.set(cost);
      if (compareCosts(cost, bestCost) < 0) {
        rememberIn(schedule, best);
        bestCost.set(cost);
        if (kind) kind.weight = Math.min(6, kind.weight + 0.3);
        found();
      }
    }
  }
  restore(schedule, best);
};

const draw = (kinds: readonly Kind[], chance: Chance): Kind => {
  let left = chance.share() * kinds.reduce((sum, k) => sum + k.weight, 0);
  for (const kind of kinds) {
    left -= kind.weight;
    if (left < 0) return kind;
  }
  return kinds[0] as Kind;
};

/**
 * A schedule that is a little worse is gone on from now and then, less and less as the heat falls
 * (Kirkpatrick, Gelatt, Vecchi 1983); never one that is later or leaves more out.
 */
const tolerable = (cost: Cost, now: Cost, lateAt: number, chance: Chance, heat: number): boolean => {
  for (let l = 0; l <= lateAt; l++) if ((cost[l] as number) > (now[l] as number)) return false;
  let rise = 0;
  let factor = 1;
  for (let l = lateAt + 1; l < cost.length - 1; l++) {
    rise += factor * ((cost[l] as number) - (now[l] as number));
    factor *= 0.1;
  }
  return rise <= 0 || chance.share() < Math.exp(-rise / heat) * 0.5;
};

const shake = (schedule: Schedule, nodes: readonly number[], chance: Chance, noise: Int32Array): void => {
  const out = [...nodes];
  while (out.length > mostOut) {
    out[chance.below(out.length)] = out[out.length - 1] as number;
    out.pop();
  }
  const able = out.filter((n) => schedule.model.nodes[n]?.anyStarts.length !== 0);
  makeNoise(schedule, chance, noise);
  takeOut(schedule, able);
  insertAll(
    schedule,
    able,
    freshInsertion(
      schedule,
      Math.min(able.length, mostThrows),
      chance.below(4) > 0 ? chance : null,
      noise,
      true,
      chance.share() < quietShare,
    ),
  );
};

/** Shuffles the order of insertion a little or much, and often lets go first what loses most by waiting. */
const makeNoise = (schedule: Schedule, chance: Chance, noise: Int32Array): void => {
  const spread = [1, 5, 15, 40, 120][chance.below(5)] as number;
  const ahead = chance.below(2) === 0 ? chance.below(90) : 0;
  for (let n = 0; n < noise.length; n++) {
    const task = schedule.model.nodes[n];
    const weighty = task !== undefined && task.weight + task.coldWeight > 0;
    noise[n] = chance.below(spread) + (weighty ? ahead : 0);
  }
};

/** Takes out what lags tie to a task without a place, and what stands where it could, and puts all of it in again. */
const bringIn = (schedule: Schedule, chance: Chance, noise: Int32Array): void => {
  const { model, start, paths } = schedule;
  const missing: number[] = [];
  for (let n = 0; n < model.taskCount; n++)
    if (start[n] === nowhere && model.nodes[n]?.anyStarts.length !== 0) missing.push(n);
  const node = missing[chance.below(missing.length)];
  if (node === undefined) {
    shake(schedule, near.some(schedule, chance), chance, noise);
    return;
  }
  const dish = model.nodes[node]?.dish;
  const kin = paths.kin(node).filter((n) => n < model.taskCount && model.nodes[n]?.dish === dish);
  openAround(schedule, missing);
  const to = schedule.latest[node] as number;
  const around =
    chance.below(2) === 0
      ? near.between(schedule, Math.max(schedule.earliest[node] as number, to - 240), to + 60)
      : [];
  const nodes = [...new Set([...missing, ...kin, ...around])].filter(
    (n) => model.nodes[n]?.anyStarts.length !== 0,
  );
  makeNoise(schedule, chance, noise);
  const goal = model.nodes[node]?.course ?? 0;
  if (model.goals.length > 0 && chance.below(3) === 0) {
    // Better late than not at all: its course may land later when that gives it a place.
    const later = Math.min(mostSlip, (schedule.slip[goal] ?? 0) + 1 + chance.below(90));
    tryAt(schedule, goal, [...new Set([...nodes, ...tasksOf(schedule, goal)])], later, null, noise);
    return;
  }
  takeOut(schedule, nodes);
  insertAll(
    schedule,
    nodes,
    freshInsertion(schedule, nodes.length * 3, chance.below(2) === 0 ? chance : null, noise, false),
  );
};

/** Asks a late course to land earlier, with whatever stood around it taken out as well. */
const pullForward = (schedule: Schedule, chance: Chance, noise: Int32Array): void => {
  const late: number[] = [];
  schedule.slip.forEach((slip, g) => {
    if (slip > 0) late.push(g);
  });
  const goal = late[chance.below(late.length)] ?? 0;
  const now = schedule.slip[goal] ?? 0;
  const slip = chance.below(2) === 0 ? Math.max(0, now - 1) : chance.below(now);
  const landing = (schedule.model.due[goal] ?? 0) + slip;
  const around =
    chance.below(2) === 0 ? near.between(schedule, landing - 60 - chance.below(120), landing) : [];
  const nodes = [...new Set([...tasksOf(schedule, goal), ...around])];
  makeNoise(schedule, chance, noise);
  tryAt(schedule, goal, nodes, slip, chance.below(2) === 0 ? chance : null, noise);
};

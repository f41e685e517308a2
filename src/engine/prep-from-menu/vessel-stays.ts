import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { exactly } from "../measure/estimate.ts";
import { minutes } from "../measure/units.ts";
import type { Lag, Resource, Task, TaskId, VesselStay } from "../model/prep.ts";
import type { Sitting } from "../model/sitting.ts";
import type { LatestTimes } from "./latest-times.ts";
import type { VesselChain } from "./vessel-chains.ts";
import { type VesselKind, type VesselPool, type Vessels, vesselResource } from "./vessels.ts";
import { neededAgain } from "./vessels-again.ts";
import { asWritten } from "./work.ts";

/** What the vessels of all dishes come to. */
export type Stays = {
  readonly stays: readonly VesselStay[];
  readonly resources: readonly Resource[];
  /** Washing-up of vessels that are needed again, and what it waits for. */
  readonly tasks: readonly Task[];
  readonly lags: readonly Lag[];
  readonly findings: readonly Finding[];
};

const kinds: readonly VesselKind[] = ["pots", "frying", "trays", "containers"];

/** Who holds which vessel, and what must be washed up in between because there are not enough for everything. */
export const staysOf = (
  chains: readonly VesselChain[],
  vessels: Vessels,
  sitting: Sitting,
  times: LatestTimes,
): Stays => {
  const inTins = vessels.tins.map((size, s) =>
    staysIn(
      chains
        .filter((chain) => chain.kind === "tins" && chain.size === s)
        .map((chain) => ({ ...chain, size: 0 })),
      [size],
      times,
    ),
  );
  const parts = kinds
    .map((kind) =>
      staysIn(
        chains.filter((chain) => chain.kind === kind),
        vessels[kind],
        times,
      ),
    )
    .concat(inTins);
  const after = parts.reduce((sum, part) => sum + part.afterService, 0);
  const left = parts.reduce((sum, part) => sum + part.left, 0);
  return {
    stays: parts.flatMap((part) => part.stays),
    resources: parts.flatMap((part) => part.resources),
    tasks: parts.flatMap((part) => part.tasks),
    lags: parts.flatMap((part) => part.lags),
    findings: [
      ...parts.flatMap((part) => part.findings),
      ...(left > 0 && sitting.crew.length > 0
        ? [
            makeFinding(
              "washing-up-after",
              sitting.source,
              { start: 0, end: 0 },
              { vessels: left, minutes: Math.ceil(after) },
            ),
          ]
        : []),
    ],
  };
};

type Part = Stays & { readonly afterService: number; readonly left: number };

const staysIn = (asked: readonly VesselChain[], pool: VesselPool, times: LatestTimes): Part => {
  const findings: Finding[] = [];
  const chains = asked.map((chain): VesselChain => {
    const has = pool[chain.size]?.orLarger ?? 0;
    if (chain.amount <= has) return chain;
    const facts = {
      title: chain.work.dish.title,
      vessel: pool[chain.size]?.id ?? "",
      wanted: chain.amount,
      has,
    };
    findings.push(makeFinding("vessels-short", chain.work.dish.source, chain.unit.action.span, facts));
    return { ...chain, amount: has };
  });
  const scarce = pool.map((size, s) => sum(chains.filter((chain) => chain.size >= s)) > size.orLarger);
  const contended = chains.filter((chain) => scarce.some((isScarce, s) => isScarce && s <= chain.size));
  const again = neededAgain(contended, pool, times);
  const tasks: Task[] = [];
  const lags: Lag[] = [];
  const washed = new Map<VesselChain, TaskId>();
  for (const together of emptiedTogether(contended.filter((chain) => again.has(chain)))) {
    const [chain] = together;
    if (chain === undefined) continue;
    const wash = washingOf(together, pool, tasks.length + 1);
    tasks.push(wash);
    for (const one of together) washed.set(one, wash.id);
    for (const { task, edge } of chain.frees)
      lags.push({
        before: task,
        beforeEdge: edge,
        after: wash.id,
        afterEdge: "start",
        least: minutes(0),
        most: null,
        reason: "wash-before",
      });
  }
  const stays = chains.flatMap((chain) =>
    pool.slice(0, chain.size + 1).flatMap((size, s): readonly VesselStay[] =>
      // Of smaller sizes that there are enough of for everything, nothing need be said.
      s === chain.size || scarce[s] === true
        ? [{ resource: size.id, amount: chain.amount, from: chain.from, to: washed.get(chain) ?? null }]
        : [],
    ),
  );
  const named = new Set(stays.map((stay) => stay.resource));
  const left = chains.filter((chain) => !washed.has(chain));
  return {
    stays,
    resources: pool.flatMap((size, s) => (named.has(size.id) ? [vesselResource(pool, s)] : [])),
    tasks,
    lags,
    findings,
    afterService: left.reduce((all, chain) => all + chain.amount * (pool[chain.size]?.wash ?? 0), 0),
    left: sum(left),
  };
};

const sum = (chains: readonly VesselChain[]): number => chains.reduce((all, chain) => all + chain.amount, 0);

/** What the same tasks empty is washed up in one go. */
const emptiedTogether = (chains: readonly VesselChain[]): readonly (readonly VesselChain[])[] => {
  const found = new Map<string, VesselChain[]>();
  for (const chain of chains) {
    const key = chain.frees
      .map(({ task, edge }) => `${task} ${edge}`)
      .toSorted()
      .join("\n");
    found.set(key, [...(found.get(key) ?? []), chain]);
  }
  return [...found.values()];
};

const washingOf = (chains: readonly VesselChain[], pool: VesselPool, place: number): Task => {
  const first = chains[0] as VesselChain;
  const long = chains.reduce((all, chain) => all + chain.amount * (pool[chain.size]?.wash ?? 0), 0);
  const amount = sum(chains);
  return {
    id: `${first.work.key}/wash ${first.kind} ${place}`,
    kind: "wash",
    dish: first.work.dish.source,
    version: asWritten,
    course: first.work.course,
    verb: "wash up",
    objects: [...new Set(chains.map((chain) => pool[chain.size]?.id ?? ""))],
    amount: amount > 1 ? { value: amount, unit: "piece" } : null,
    segments: [
      { minutes: exactly(minutes(Math.ceil(long))), attention: "hands", station: "hands", uses: [] },
    ],
    finishing: false,
    span: null,
  };
};

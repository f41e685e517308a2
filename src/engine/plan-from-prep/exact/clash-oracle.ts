import { learningSolver } from "../../search/learn/learning-solver.ts";
import type { Literal } from "../../search/learn/solver.ts";
import { ringAboveNothing } from "../../search/ring-above-nothing.ts";
import type { Arc, Model } from "../model.ts";
import type { Answer } from "./clash-smallest.ts";
import { type Encoded, encode } from "./encode.ts";
import type { Choice } from "./encode-calendar.ts";
import { type Group, isOrder, keyOf } from "./encode-groups.ts";

/** What may be spent: conflicts for one question, and for all; the second is used up in place. */
export type Purse = { readonly each: number; left: number; readonly keepGoing: () => boolean };

/** What a question costs even when it is answered at once, in conflicts: setting it up. Measured roughly. */
const setUp = 20;

/** A part of the model that questions can be asked of: can these demands be met together? */
export type Oracle = {
  readonly groups: readonly Group[];
  readonly ask: (groups: readonly Group[]) => Answer;
  /** After `clash`: demands of those asked that clash already; often far fewer. */
  readonly core: () => readonly Group[];
  /** After `fits`: where each task that was left in can stand. */
  readonly spots: () => readonly ({
    readonly start: number;
    readonly cook: number;
    readonly oven: number;
  } | null)[];
};

/** What of the model is asked about: these tasks (null: all), and how late each goal may be. */
export type Asked = {
  readonly tasks: ReadonlySet<number> | null;
  readonly mostLate: readonly (number | null)[];
  /** As in the encoding; absent: any plate may be the last. */
  readonly anchored?: boolean;
};

/** Rings of lags are looked for first, since that costs next to nothing; then the learning solver decides, or gives up. */
export const oracleFor = (model: Model, asked: Asked, purse: Purse): Oracle => {
  if (purse.left <= 0 || !purse.keepGoing()) return mute;
  const solver = learningSolver(1);
  const encoded: Encoded = encode(model, solver, { anchored: false, ...asked, always: false });
  const literalOf = new Map(encoded.groups.map(({ group, literal }) => [keyOf(group), literal]));
  const groupOf = new Map<Literal, Group>(encoded.groups.map(({ group, literal }) => [literal, group]));
  const arcs = model.arcs.filter(
    (arc) => encoded.starts[arc.from] !== null && encoded.starts[arc.to] !== null && arc.lag >= 0,
  );
  let core: readonly Group[] = [];
  let spots: ReturnType<Oracle["spots"]> = [];
  const chosenOf = (choices: readonly Choice[]): number =>
    choices.find(({ chosen }) => chosen === null || solver.holds(chosen))?.index ?? -1;
  return {
    groups: encoded.groups.map(({ group }) => group),
    core: () => core,
    spots: () => spots,
    ask: (groups) => {
      const on = new Set(groups.map(keyOf));
      const held = arcs.filter((arc) => isOrder(model, arc) || on.has(keyOf(groupOfArc(arc))));
      const ring = ringAboveNothing(model.nodes.length, held);
      if (ring) {
        core = ring.filter((arc) => !isOrder(model, arc)).map(groupOfArc);
        return "clash";
      }
      const literals = groups.flatMap((group) => literalOf.get(keyOf(group)) ?? []);
      if (purse.left <= 0 || !purse.keepGoing()) return "unknown";
      const before = solver.conflicts();
      const conflicts = Math.min(purse.each, purse.left);
      const verdict = solver.solve(literals, { conflicts, keepGoing: purse.keepGoing });
      purse.left -= solver.conflicts() - before + setUp;
      if (verdict === "unknown") return "unknown";
      if (verdict === "yes") {
        spots = encoded.starts.map((x, n) =>
          x === null
            ? null
            : {
                start: solver.value(x),
                cook: chosenOf(encoded.cooks[n] ?? []),
                oven: chosenOf(encoded.ovens[n] ?? []),
              },
        );
        return "fits";
      }
      core = solver.core().flatMap((literal) => groupOf.get(literal) ?? []);
      return "clash";
    },
  };
};

/** The questions asked of several models at once, which differ in how some tasks are done: what clashes clashes in each. */
export const oracleForAll = (models: readonly Model[], asked: Asked, purse: Purse): Oracle => {
  const oracles = models.map((model) => oracleFor(model, asked, purse));
  const [one = mute] = oracles;
  if (oracles.length <= 1) return one;
  let fitting: Oracle | null = null;
  return {
    groups: onceEach(oracles.flatMap(({ groups }) => groups)),
    core: () => onceEach(oracles.flatMap((oracle) => oracle.core())),
    spots: () => fitting?.spots() ?? [],
    ask: (groups) => {
      fitting = null;
      let sure = true;
      for (const oracle of oracles) {
        const answer = oracle.ask(groups);
        if (answer === "unknown") sure = false;
        if (answer !== "fits") continue;
        fitting = oracle;
        return "fits";
      }
      return sure ? "clash" : "unknown";
    },
  };
};

const onceEach = (groups: readonly Group[]): readonly Group[] => [
  ...new Map(groups.map((group) => [keyOf(group), group])).values(),
];

/** What is left to ask when nothing may be spent any more: setting a question up takes time too. */
const mute: Oracle = { groups: [], core: () => [], spots: () => [], ask: () => "unknown" };

const groupOfArc = (arc: Arc): Group => ({ kind: "lag", lag: arc.lag, most: arc.most });

import type { Analyser } from "./analyse.ts";
import { storeClause, tidyClauses } from "./clauses.ts";
import { byClause, type Core, choice } from "./core.ts";
import type { Order } from "./order.ts";
import { propagate } from "./propagate.ts";
import type { Literal, SearchLimit, Unknown, Verdict } from "./solver.ts";
import { chooseAtom, raise, undoTo } from "./trail.ts";

export type Search = {
  readonly solve: (assumptions: readonly Literal[], limit: SearchLimit) => Verdict;
  readonly value: (x: Unknown) => number;
  readonly core: () => readonly Literal[];
  readonly branchOn: (unknowns: readonly Unknown[], conflicts: number) => void;
};

type Face = {
  readonly before: () => void;
  readonly literalSide: (literal: Literal) => number;
  readonly literalBound: (literal: Literal) => number;
};

/** Conflicts of the shortest run between two restarts. */
const restartUnit = 100;
/** Learned clauses kept at the first tidying, and how many more at each later one. */
const mostLearned = 4000;
const moreLearned = 300;
/** How many rounds pass between two questions whether to go on. */
const askEvery = 16;

/** Restarts, choices, and the way from a conflict to a lesson (MiniSat's loop: Eén and Sörensson 2003). */
export const searchFor = (core: Core, order: Order, analyser: Analyser, face: Face): Search => {
  let values = new Int32Array(0);
  let clashing: readonly Literal[] = [];
  let first: readonly Unknown[] = [];
  let firstConflicts = 0;
  let tidied = 0;

  const settleRoot = (): boolean => {
    if (!core.possible || !propagate(core)) {
      core.possible = false;
      return false;
    }
    for (let i = 0; i < core.length; i++) core.last[core.side[i] as number] = -1;
    core.length = 0;
    core.head = 0;
    core.reasonsLength = 0;
    return true;
  };

  /** Goes back as the lesson of the last conflict says, and adds it. */
  const takeLesson = (): boolean => {
    const lesson = analyser.learn();
    if (lesson === null) return false;
    undoTo(core, lesson.level);
    order.decay();
    const side = lesson.atoms[0] as number;
    const bound = lesson.atoms[1] as number;
    if (lesson.ints === 2) return raise(core, side, bound, choice);
    const at = storeClause(core, lesson.atoms, lesson.ints, Math.max(1, lesson.levels));
    return raise(core, side, bound, (at << 2) | byClause);
  };

  /** Chooses smallest starts first: of the unknowns given, the one with the least value, at that value. */
  const chooseSmallest = (): boolean => {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    let width = 0;
    for (const x of first) {
      const low = core.val[x * 2] as number;
      const slack = -(core.val[x * 2 + 1] as number) - low;
      if (slack > 0 && (low < least || (low === least && slack < width))) {
        best = x;
        least = low;
        width = slack;
      }
    }
    return best >= 0 && chooseAtom(core, best * 2 + 1, -least, choice);
  };

  const chooseLively = (): boolean => {
    const atom = order.next();
    if (atom < 0) return false;
    const x = order.unknownOf(atom);
    const v = order.valueOf(atom);
    return (core.saved[x] as number) >= v
      ? chooseAtom(core, x * 2, v, choice)
      : chooseAtom(core, x * 2 + 1, 1 - v, choice);
  };

  const chooseAny = (): boolean => {
    for (let x = 0; x < core.unknowns; x++) {
      const low = core.val[x * 2] as number;
      const high = -(core.val[x * 2 + 1] as number);
      if (low === high) continue;
      const wish = Math.max(low, Math.min(high, core.saved[x] as number));
      if (wish > low) return chooseAtom(core, x * 2, wish, choice);
      return chooseAtom(core, x * 2 + 1, -low, choice);
    }
    return false;
  };

  const solve = (assumptions: readonly Literal[], limit: SearchLimit): Verdict => {
    clashing = [];
    face.before();
    if (!settleRoot()) return "no";
    const started = core.conflicts;
    let restarts = 0;
    let nextRestart = core.conflicts + luby(1) * restartUnit;
    let rounds = 0;
    const stop = (verdict: Verdict): Verdict => {
      undoTo(core, 0);
      return verdict;
    };
    for (;;) {
      if (++rounds % askEvery === 0 && !limit.keepGoing()) return stop("unknown");
      if (!propagate(core)) {
        core.conflicts++;
        if (core.level === 0 || !takeLesson()) {
          undoTo(core, 0);
          core.possible = false;
          return "no";
        }
        if (limit.conflicts !== null && core.conflicts - started >= limit.conflicts) return stop("unknown");
        continue;
      }
      if (core.level === 0) {
        if (!settleRoot()) return "no";
      }
      if (core.conflicts >= nextRestart && core.level > assumptions.length) {
        restarts++;
        nextRestart = core.conflicts + luby(restarts + 1) * restartUnit;
        undoTo(core, 0);
        if (core.conflicts > mostLearned * 2 * (tidied + 1)) {
          tidied++;
          tidyClauses(core, mostLearned + tidied * moreLearned);
        }
        continue;
      }
      if (core.level < assumptions.length) {
        const literal = assumptions[core.level] as Literal;
        const side = face.literalSide(literal);
        const bound = face.literalBound(literal);
        if (-(core.val[side ^ 1] as number) < bound) {
          const levels = analyser.choicesBehind(side ^ 1, 1 - bound);
          clashing = [...new Set([literal, ...levels.map((level) => assumptions[level - 1] as Literal)])];
          return stop("no");
        }
        chooseAtom(core, side, bound, choice);
        continue;
      }
      const early = core.conflicts < firstConflicts && chooseSmallest();
      if (early || chooseLively() || chooseSmallest() || chooseAny()) continue;
      if (values.length < core.unknowns) values = new Int32Array(core.val.length);
      for (let x = 0; x < core.unknowns; x++) values[x] = core.val[x * 2] as number;
      return stop("yes");
    }
  };

  return {
    solve,
    value: (x) => values[x] as number,
    core: () => clashing,
    branchOn: (unknowns, conflicts) => {
      first = [...unknowns];
      firstConflicts = core.conflicts + conflicts;
    },
  };
};

/** The sequence 1 1 2 1 1 2 4 … of Luby, Sinclair and Zuckerman (1993). */
const luby = (i: number): number => {
  let k = 1;
  while (2 ** k - 1 < i) k++;
  return 2 ** k - 1 === i ? 2 ** (k - 1) : luby(i - 2 ** (k - 1) + 1);
};

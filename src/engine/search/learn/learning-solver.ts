import { analyserFor } from "./analyse.ts";
import { addClause } from "./clauses.ts";
import { addUnknown, emptyCore } from "./core.ts";
import { addCumulative } from "./cumulative.ts";
import { addDifference, refuse } from "./differences.ts";
import { addLinear } from "./linear.ts";
import { orderFor } from "./order.ts";
import { pairsFor } from "./pairs.ts";
import { searchFor } from "./search.ts";
import type { LearningSolver, Literal } from "./solver.ts";
import type { Use } from "./use.ts";

/** A solver with nothing in it yet; the same calls with the same seed give the same answers on every machine. */
export const learningSolver = (seed: number): LearningSolver => {
  const core = emptyCore();
  const order = orderFor(core, seed);
  core.undone = order.undone;
  const analyser = analyserFor(core, order.bump);
  const pairs = pairsFor(core);
  const sideOf = (literal: Literal): number => order.unknownOf(literal >> 1) * 2 + (literal & 1);
  const boundOf = (literal: Literal): number => {
    const v = order.valueOf(literal >> 1);
    return (literal & 1) === 0 ? v : 1 - v;
  };
  const whenSide = (when: Literal | null): number => (when === null ? -1 : sideOf(when));
  const whenBound = (when: Literal | null): number => (when === null ? 0 : boundOf(when));
  const atLeast = (x: number, value: number): Literal => order.atom(x, value) * 2;
  const search = searchFor(core, order, analyser, {
    before: pairs.post,
    literalSide: sideOf,
    literalBound: boundOf,
  });

  return {
    integer: (least, greatest) => addUnknown(core, least, greatest),
    literal: () => atLeast(addUnknown(core, 0, 1), 1),
    negate: (literal) => literal ^ 1,
    atLeast,
    clause: (literals) =>
      addClause(
        core,
        literals.flatMap((l) => [sideOf(l), boundOf(l)]),
      ),
    difference: (x, y, weight, when) => {
      if (x !== y) addDifference(core, x, y, weight, whenSide(when), whenBound(when));
      else if (weight > 0) refuse(core, whenSide(when), whenBound(when));
    },
    linear: (terms, most, when) => addLinear(core, terms, most, whenSide(when), whenBound(when)),
    cumulative: (given, capacity, when) => {
      const uses = given
        .filter((use) => use.length > 0 && use.amount > 0)
        .map(
          (use): Use => ({
            x: use.start,
            offset: use.offset,
            length: use.length,
            amount: use.amount,
            presentSide: whenSide(use.present),
            presentBound: whenBound(use.present),
          }),
        );
      addCumulative(core, uses, capacity, whenSide(when), whenBound(when));
      if (when === null) pairs.gather(uses, capacity);
    },
    solve: search.solve,
    value: search.value,
    holds: (literal) => {
      const side = sideOf(literal);
      const value = search.value(side >> 1);
      return ((side & 1) === 0 ? value : -value) >= boundOf(literal);
    },
    core: search.core,
    branchOn: search.branchOn,
    prefer: (x, value) => {
      core.saved[x] = value;
    },
    preferLiteral: (literal, holds) => {
      const v = boundOf(literal);
      const side = sideOf(literal);
      core.saved[side >> 1] = ((side & 1) === 0) === holds ? v : v - 1;
    },
    least: (x) => core.val[x * 2] as number,
    greatest: (x) => -(core.val[x * 2 + 1] as number),
    conflicts: () => core.conflicts,
  };
};

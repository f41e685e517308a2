import type { LearningSolver, Literal, Unknown } from "../../search/learn/solver.ts";
import type { Model, OvenStretch } from "../model.ts";
import { changeBetween, mayShare } from "../oven-clash.ts";
import type { Choice } from "./encode-calendar.ts";
import type { Switches } from "./encode-groups.ts";

/** A task in an oven, with the ovens it may go in. */
export type Baker = {
  readonly node: number;
  readonly start: Unknown;
  readonly oven: readonly OvenStretch[];
  readonly ovens: readonly Choice[];
};

/** Two uses of one oven at different heats follow each other, with the time the oven takes to change between them. */
export const encodeHeat = (
  solver: LearningSolver,
  on: Switches,
  model: Model,
  bakers: readonly Baker[],
): void => {
  bakers.forEach((a, i) => {
    for (const b of bakers.slice(i + 1)) {
      const both = sharedOvens(solver, a, b);
      if (both.length === 0) continue;
      for (const x of a.oven) {
        for (const y of b.oven) {
          if (mayShare(model, x.celsius, y.celsius)) continue;
          const forth = changeBetween(model, x.celsius, y.celsius);
          const back = changeBetween(model, y.celsius, x.celsius);
          const first = solver.literal();
          const second = solver.literal();
          solver.difference(a.start, b.start, x.offset + x.length + forth - y.offset, first);
          solver.difference(b.start, a.start, y.offset + y.length + back - x.offset, second);
          for (const chosen of both) on.clause({ kind: "heat" }, [...chosen, first, second]);
        }
      }
    }
  });
};

/** For each oven that both may use, the literals that say that one of them is elsewhere. */
const sharedOvens = (solver: LearningSolver, a: Baker, b: Baker): readonly (readonly Literal[])[] =>
  a.ovens.flatMap((x) =>
    b.ovens.flatMap((y) =>
      x.index === y.index
        ? [[x, y].flatMap(({ chosen }) => (chosen === null ? [] : [solver.negate(chosen)]))]
        : [],
    ),
  );

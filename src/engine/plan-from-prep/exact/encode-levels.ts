import type { GoalLevel } from "../../model/prep.ts";
import type { LearningSolver, Unknown } from "../../search/learn/solver.ts";
import type { Model } from "../model.ts";
import type { Encoded } from "./encode.ts";

/** Σ coefficient · x + constant, which is what a level counts. */
export type Sum = {
  readonly terms: readonly { readonly coefficient: number; readonly x: Unknown }[];
  readonly constant: number;
};

/** What each level counts, as a sum of unknowns of the solver; what was left out of the encoding counts nothing. */
export const encodeLevel = (
  level: GoalLevel,
  model: Model,
  solver: LearningSolver,
  encoded: Encoded,
): Sum => {
  switch (level) {
    case "late":
      return lateSum(model, encoded);
    case "hold":
    case "freshness":
      return waitSum(model, solver, encoded, level === "hold");
    case "free-from":
      return orderSum(model, solver, encoded);
    case "calm":
      return handsSum(
        model,
        solver,
        encoded,
        model.calm.map((c) => ({ from: c.from, to: c.due })),
      );
    case "service":
      return handsSum(
        model,
        solver,
        encoded,
        model.calm.map((c) => ({ from: c.due, to: c.to })),
      );
  }
};

const lateSum = (model: Model, { starts }: Encoded): Sum => {
  const landings = model.landing.flatMap((node, goal) => {
    const x = starts[node] ?? null;
    return x === null ? [] : [{ x, due: model.due[goal] ?? 0 }];
  });
  return {
    terms: landings.map(({ x }) => ({ coefficient: 1, x })),
    constant: -landings.reduce((sum, l) => sum + l.due, 0),
  };
};

const waitSum = (model: Model, solver: LearningSolver, { starts }: Encoded, hot: boolean): Sum => {
  const coefficients = new Map<Unknown, number>();
  let constant = 0;
  const add = (x: Unknown, by: number): void => {
    coefficients.set(x, (coefficients.get(x) ?? 0) + by);
  };
  for (const hold of model.holds) {
    const task = starts[hold.task] ?? null;
    const plate = starts[hold.plate] ?? null;
    if (hold.hot !== hot || task === null || plate === null || hold.weight <= 0) continue;
    const length = model.nodes[hold.task]?.length ?? 0;
    const follows = (model.out[hold.task] ?? []).some((arc) => arc.to === hold.plate && arc.weight >= length);
    if (follows) {
      add(plate, hold.weight);
      add(task, -hold.weight);
      constant -= hold.weight * length;
    } else {
      // Without a lag the task may end after its plate, and then nothing waits.
      const wait = solver.integer(0, model.horizon);
      solver.linear(
        [
          { coefficient: 1, x: plate },
          { coefficient: -1, x: task },
          { coefficient: -1, x: wait },
        ],
        length,
        null,
      );
      add(wait, hold.weight);
    }
  }
  return {
    terms: [...coefficients].flatMap(([x, coefficient]) => (coefficient === 0 ? [] : [{ coefficient, x }])),
    constant,
  };
};

const orderSum = (model: Model, solver: LearningSolver, { starts }: Encoded): Sum => {
  const terms = model.freeFrom.flatMap((pair) => {
    const before = starts[pair.before] ?? null;
    const after = starts[pair.after] ?? null;
    if (before === null || after === null) return [];
    const wrong = solver.integer(0, 1);
    const right = solver.negate(solver.atLeast(wrong, 1));
    solver.difference(before, after, model.nodes[pair.before]?.length ?? 0, right);
    return [{ coefficient: 1, x: wrong }];
  });
  return { terms, constant: 0 };
};

/** Hands-on minutes of work that is not finishing in some hours, one unknown for each stretch that can reach into them. */
const handsSum = (
  model: Model,
  solver: LearningSolver,
  { starts }: Encoded,
  hours: readonly { readonly from: number; readonly to: number }[],
): Sum => {
  const terms: { coefficient: number; x: Unknown }[] = [];
  model.nodes.forEach((node, n) => {
    const start = starts[n] ?? null;
    if (start === null || node.finishing) return;
    for (const a of node.attended) {
      if (!a.hands) continue;
      for (const hour of hours) {
        const most = Math.min(a.length, hour.to - hour.from);
        const latest = hour.to - a.offset;
        const earliest = hour.from - a.offset - a.length;
        if (most <= 0 || latest <= 0 || earliest > model.horizon) continue;
        const inside = solver.integer(0, most);
        // At least v minutes lie inside from the start earliest + v on, up to the start latest - v.
        for (let v = 1; v <= most; v++) {
          solver.clause([
            solver.negate(solver.atLeast(start, earliest + v)),
            solver.atLeast(start, latest - v + 1),
            solver.atLeast(inside, v),
          ]);
        }
        terms.push({ coefficient: 1, x: inside });
      }
    }
  });
  return { terms, constant: 0 };
};

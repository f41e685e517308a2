import type { LearningSolver, Literal, ResourceUse, Unknown } from "../../search/learn/solver.ts";
import { type Model, type Node, passed } from "../model.ts";
import { type Choice, encodeCalendar } from "./encode-calendar.ts";
import { type Group, isOrder, type Switches, switches } from "./encode-groups.ts";
import { type Baker, encodeHeat } from "./encode-ovens.ts";
import { encodeStays } from "./encode-stays.ts";

/** What of the model goes into the solver. */
export type Scope = {
  /** Tasks left in; null for all. */
  readonly tasks: ReadonlySet<number> | null;
  /** Minutes each goal may land after it is due; null for as late as the horizon lets it. */
  readonly mostLate: readonly (number | null)[];
  /** True when every demand simply holds; false when each is switched on by the literal of its group. */
  readonly always: boolean;
  /** True when a course's longest plate is its last, as the planner has it; false when any may be. */
  readonly anchored: boolean;
};

/** The unknowns of a model in the solver, and the switches of its demands. */
export type Encoded = {
  /** Start of each node, landings included; null for what was left out. */
  readonly starts: readonly (Unknown | null)[];
  /** Who may do each task, and in which oven; nothing for what needs none. */
  readonly cooks: readonly (readonly Choice[])[];
  readonly ovens: readonly (readonly Choice[])[];
  readonly groups: readonly { readonly group: Group; readonly literal: Literal }[];
};

/** Parts of a unit that amounts are counted in: litres to the thousandth. */
const fine = 1000;

/**
 * Puts the planner's model into a solver that learns: a start for each task, one cook for all its attended stretches,
 * one oven, calendars, hands, equipment, ovens as a heat that takes time to change, and both sides of every lag.
 * A least lag that only states the order of the work always holds; every other demand has its group.
 */
export const encode = (model: Model, solver: LearningSolver, scope: Scope): Encoded => {
  const on = switches(solver, scope.always);
  const kept = (n: number): boolean => n >= model.taskCount || scope.tasks === null || scope.tasks.has(n);
  const starts = model.nodes.map((node, n) =>
    kept(n) ? solver.integer(node.hours.from, node.hours.to) : null,
  );
  const cooks = model.nodes.map((node, n) =>
    kept(n) && node.attended.length > 0 ? oneOf(solver, node.cooks) : [],
  );
  const ovens = model.nodes.map((node, n) => (kept(n) ? oneOf(solver, ovensOf(model, node)) : []));

  model.nodes.forEach((node, n) => {
    const start = starts[n] ?? null;
    if (start === null) return;
    const nowhere = scope.always && n < model.taskCount && node.anyStarts.length === 0;
    if (node.length > model.horizon || nowhere) solver.clause([]);
    encodeCalendar(solver, on, model, node, start, cooks[n] ?? []);
  });
  encodeSameCook(solver, model, cooks);
  encodeLags(solver, on, model, starts);
  encodeLandings(solver, on, model, starts, scope);
  encodeLoads(solver, on, model, starts, cooks, ovens);
  encodeStays(solver, on, model, starts);
  const bakers = model.nodes.flatMap((node, n): Baker[] => {
    const start = starts[n] ?? null;
    if (start === null || node.oven.length === 0) return [];
    return [{ node: n, start, oven: node.oven, ovens: ovens[n] ?? [] }];
  });
  encodeHeat(solver, on, model, bakers);
  for (const { node, start, ovens: choices } of bakers) {
    for (const { index, chosen } of choices) {
      const ready = model.nodes[node]?.ovenReady[index] ?? 0;
      if (ready <= 0) continue;
      const elsewhere = chosen === null ? [] : [solver.negate(chosen)];
      on.clause({ kind: "heat" }, [...elsewhere, solver.atLeast(start, ready)]);
    }
  }
  return { starts, cooks, ovens, groups: on.all() };
};

/** Ovens a task may go in. One that asks for more shelves than any has may go in all, and is then too much for each. */
const ovensOf = (model: Model, node: Node): readonly number[] => {
  if (node.oven.length === 0) return [];
  return node.ovens.length > 0 ? node.ovens : model.ovenIds.map((_, o) => o);
};

/** Exactly one of several; no literal is needed when there is only one. */
const oneOf = (solver: LearningSolver, among: readonly number[]): readonly Choice[] => {
  if (among.length <= 1) return among.map((index) => ({ index, chosen: null }));
  const choices = among.map((index) => ({ index, chosen: solver.literal() }));
  solver.clause(choices.map((c) => c.chosen));
  choices.forEach((a, i) => {
    for (const b of choices.slice(i + 1)) solver.clause([solver.negate(a.chosen), solver.negate(b.chosen)]);
  });
  return choices;
};

/** Tasks of one group have one cook: who cannot do one of them does none. */
const encodeSameCook = (
  solver: LearningSolver,
  model: Model,
  cooks: readonly (readonly Choice[])[],
): void => {
  for (const group of model.sameCook) {
    const within = group.map((n) => cooks[n] ?? []).filter((choices) => choices.length > 0);
    for (const [i, a] of within.entries()) {
      const b = within[i + 1] ?? [];
      if (i + 1 >= within.length) break;
      for (const [one, other] of [
        [a, b],
        [b, a],
      ] as const) {
        for (const choice of one) {
          const same = other.find((o) => o.index === choice.index);
          if (same && same.chosen === null) continue;
          solver.clause([
            ...(choice.chosen === null ? [] : [solver.negate(choice.chosen)]),
            ...(same && same.chosen !== null ? [same.chosen] : []),
          ]);
        }
      }
    }
  }
};

const encodeLags = (
  solver: LearningSolver,
  on: Switches,
  model: Model,
  starts: readonly (Unknown | null)[],
): void => {
  for (const arc of model.arcs) {
    const from = starts[arc.from] ?? null;
    const to = starts[arc.to] ?? null;
    if (from === null || to === null || (arc.lag < 0 && arc.lag !== passed)) continue;
    const group: Group = { kind: "lag", lag: arc.lag, most: arc.most };
    solver.difference(from, to, arc.weight, isOrder(model, arc) ? null : on.of(group));
  }
};

/**
 * A course lands when its last plate ends, not before it is due. The planner takes its longest plate for the last, and so
 * does a proof of its plan; to say that nothing can be done, any plate may be the last.
 */
const encodeLandings = (
  solver: LearningSolver,
  on: Switches,
  model: Model,
  starts: readonly (Unknown | null)[],
  { mostLate, anchored }: Scope,
): void => {
  model.landing.forEach((node, goal) => {
    const landing = starts[node] ?? null;
    if (landing === null) return;
    const due = model.due[goal] ?? 0;
    const plates = (model.into[node] ?? []).flatMap((arc) => {
      const start = starts[arc.from] ?? null;
      return start === null || arc.lag >= 0 || arc.lag === passed || arc.most
        ? []
        : [{ start, length: arc.weight }];
    });
    for (const plate of plates) solver.difference(plate.start, landing, plate.length, null);
    const anchor = anchored ? (model.out[node] ?? []).find((arc) => arc.lag < 0 && arc.most) : undefined;
    const at = anchor === undefined ? null : (starts[anchor.to] ?? null);
    if (anchor !== undefined && at !== null) {
      solver.difference(landing, at, anchor.weight, null);
    } else {
      const lasts = plates.map((plate) => {
        const last = plates.length === 1 ? null : solver.literal();
        solver.difference(landing, plate.start, -plate.length, last);
        return last;
      });
      if (plates.length > 1) solver.clause(lasts.filter((last) => last !== null));
    }
    on.clause({ kind: "due", goal, most: false }, [solver.atLeast(landing, due)]);
    const late = mostLate[goal] ?? null;
    if (late !== null) {
      on.clause({ kind: "due", goal, most: true }, [solver.negate(solver.atLeast(landing, due + late + 1))]);
    }
  });
};

/** Hands, equipment and shelves are never in use beyond what there is. */
const encodeLoads = (
  solver: LearningSolver,
  on: Switches,
  model: Model,
  starts: readonly (Unknown | null)[],
  cooks: readonly (readonly Choice[])[],
  ovens: readonly (readonly Choice[])[],
): void => {
  const limit = (uses: readonly ResourceUse[], capacity: number, group: Group): void => {
    const some = uses.filter((use) => use.length > 0 && use.amount > 0);
    if (some.length === 0) return;
    const scale = [...some.map((use) => use.amount), capacity].every(Number.isInteger) ? 1 : fine;
    const whole = some.map((use) => ({ ...use, amount: Math.ceil(use.amount * scale - 1e-6) }));
    const most = Math.floor(capacity * scale + 1e-6);
    for (const use of whole) {
      if (use.amount > most) on.clause(group, use.present === null ? [] : [solver.negate(use.present)]);
    }
    if (whole.length > 1)
      solver.cumulative(
        whole.filter((use) => use.amount <= most),
        most,
        on.of(group),
      );
  };
  const usesOf = (
    pick: (
      node: Node,
      n: number,
    ) => readonly { offset: number; length: number; amount: number; present: Literal | null }[],
  ): ResourceUse[] =>
    model.nodes.flatMap((node, n) => {
      const start = starts[n] ?? null;
      return start === null ? [] : pick(node, n).map((use) => ({ start, ...use }));
    });

  model.cooks.forEach((_, cook) => {
    const uses = usesOf((node, n) => {
      const choice = cooks[n]?.find((c) => c.index === cook);
      if (!choice) return [];
      return node.attended.map(({ offset, length, units }) => ({
        offset,
        length,
        amount: units,
        present: choice.chosen,
      }));
    });
    limit(uses, model.capacity.cook, { kind: "hands", cook });
  });
  model.capacity.resources.forEach((capacity, resource) => {
    const uses = usesOf((node) =>
      node.resources
        .filter((r) => r.resource === resource)
        .map(({ offset, length, amount }) => ({ offset, length, amount, present: null })),
    );
    limit(uses, capacity, { kind: "resource", resource });
  });
  model.capacity.shelves.forEach((shelves, oven) => {
    const uses = usesOf((node, n) => {
      const choice = ovens[n]?.find((o) => o.index === oven);
      if (!choice) return [];
      return node.oven.map(({ offset, length, amount }) => ({
        offset,
        length,
        amount,
        present: choice.chosen,
      }));
    });
    limit(uses, shelves, { kind: "shelves", oven });
  });
};

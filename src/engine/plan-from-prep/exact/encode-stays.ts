import type { LearningSolver, Literal, Unknown } from "../../search/learn/solver.ts";
import type { Model, Stay } from "../model.ts";
import type { Switches } from "./encode-groups.ts";

/** So many minutes after the start of a task. */
type Moment = { readonly start: Unknown; readonly after: number };

type Held = {
  readonly amount: number;
  /** Null: since the beginning. */
  readonly begin: Moment | null;
  /** Null: it never ends. */
  readonly end: Moment | null;
};

/** Parts of a unit that amounts are counted in. */
const fine = 1000;

/**
 * Vessels in use from the start of one task to the end of another. Use only rises where a stay (or a segment that takes
 * the same thing) begins, so it is looked at there: of any two, one ends before the other begins, or begins after it, or
 * is counted; and what is counted has to fit. A stay of which a task is left out is let go, which only allows more.
 */
export const encodeStays = (
  solver: LearningSolver,
  on: Switches,
  model: Model,
  starts: readonly (Unknown | null)[],
): void => {
  for (const resource of new Set(model.stays.map((stay) => stay.resource))) {
    const held = [
      ...model.stays
        .filter((stay) => stay.resource === resource)
        .flatMap((stay) => heldOf(model, starts, stay)),
      ...segmentsOn(model, starts, resource),
    ];
    const capacity = model.capacity.resources[resource] ?? 0;
    const whole = [...held.map((h) => h.amount), capacity].every(Number.isInteger);
    const units = (amount: number): number => (whole ? amount : Math.ceil(amount * fine - 1e-6));
    const most = whole ? capacity : Math.floor(capacity * fine + 1e-6);
    const when = on.of({ kind: "resource", resource });
    encodeLeast(solver, model, starts, resource, { units, most, when });
    const order = held.map((one, i) =>
      held.map((other, o) => (o > i ? comesBy(solver, one.begin, other.begin, 0) : false)),
    );
    held.forEach((one, i) => {
      const terms = held.flatMap((other, o) => {
        if (o === i) return [];
        // Of two that begin together the one that stands later in the list looks at the other.
        const isLater =
          o > i ? (order[i]?.[o] ?? false) : opposite(solver, order[o]?.[i] ?? false, one, other);
        const counted = countedAt(solver, other, one, isLater);
        return counted === null ? [] : [{ coefficient: units(other.amount), x: counted }];
      });
      const room = most - units(one.amount);
      if (room < 0) solver.clause(when === null ? [] : [solver.negate(when)]);
      else if (terms.length > 0) solver.linear(terms, room, when);
    });
  }
};

/** A vessel is in use at least while it is filled, and for good where it is never washed: that is found out sooner. */
const encodeLeast = (
  solver: LearningSolver,
  model: Model,
  starts: readonly (Unknown | null)[],
  resource: number,
  { units, most, when }: { units: (amount: number) => number; most: number; when: Literal | null },
): void => {
  const uses = model.stays.flatMap((stay) => {
    const start = stay.from < 0 || stay.resource !== resource ? null : (starts[stay.from] ?? null);
    const length = stay.to < 0 ? model.horizon + 1 : (model.nodes[stay.from]?.length ?? 0);
    if (start === null || length <= 0 || (stay.to >= 0 && (starts[stay.to] ?? null) === null)) return [];
    return [{ start, offset: 0, length, amount: units(stay.amount), present: null }];
  });
  if (uses.length > 1 && uses.every((use) => use.amount <= most)) solver.cumulative(uses, most, when);
};

const heldOf = (model: Model, starts: readonly (Unknown | null)[], stay: Stay): readonly Held[] => {
  const first = stay.from < 0 ? null : (starts[stay.from] ?? null);
  const last = stay.to < 0 ? null : (starts[stay.to] ?? null);
  if ((stay.from >= 0 && first === null) || (stay.to >= 0 && last === null)) return [];
  return [
    {
      amount: stay.amount,
      begin: first === null ? null : { start: first, after: 0 },
      end: last === null ? null : { start: last, after: model.nodes[stay.to]?.length ?? 0 },
    },
  ];
};

/** Segments that take the same resource, as stays of their own. */
const segmentsOn = (model: Model, starts: readonly (Unknown | null)[], resource: number): readonly Held[] =>
  model.nodes.flatMap((node, n) => {
    const start = starts[n] ?? null;
    if (start === null) return [];
    return node.resources
      .filter((use) => use.resource === resource)
      .map(({ amount, offset, length }) => ({
        amount,
        begin: { start, after: offset },
        end: { start, after: offset + length },
      }));
  });

/** An unknown that is 1 when `other` is in use at the moment at which `one` begins; null when it cannot be. */
const countedAt = (
  solver: LearningSolver,
  other: Held,
  one: Held,
  isLater: Literal | boolean,
): Unknown | null => {
  const isOver = other.end === null ? false : comesBy(solver, other.end, one.begin, 0);
  if (isLater === true || isOver === true) return null;
  const counted = solver.integer(0, 1);
  const ways = [isLater, isOver].filter((way) => way !== false);
  solver.clause([solver.atLeast(counted, 1), ...ways]);
  return counted;
};

/** When the first does not begin by the second, it begins after it. */
const opposite = (
  solver: LearningSolver,
  byThen: Literal | boolean,
  later: Held,
  first: Held,
): Literal | boolean => {
  if (typeof byThen === "boolean") return !byThen && comesBy(solver, later.begin, first.begin, 1);
  const literal = solver.negate(byThen);
  if (first.begin !== null && later.begin !== null)
    solver.difference(
      later.begin.start,
      first.begin.start,
      later.begin.after + 1 - first.begin.after,
      literal,
    );
  return literal;
};

/** A literal under which the second moment is at least so many minutes after the first; or whether it always or never is. */
const comesBy = (
  solver: LearningSolver,
  first: Moment | null,
  second: Moment | null,
  by: number,
): Literal | boolean => {
  // The beginning, minute 0, is before everything else.
  if (second === null) return false;
  if (first === null) return solver.atLeast(second.start, by - second.after);
  const weight = first.after + by - second.after;
  if (first.start === second.start) return weight <= 0;
  const literal = solver.literal();
  solver.difference(first.start, second.start, weight, literal);
  return literal;
};

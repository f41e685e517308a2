import type { LearningSolver, Literal, Unknown } from "#engine/search/learn/solver.ts";

/** A small problem as data, so that it can be given to the solver and also tried value by value. */
export type Small = {
  readonly greatest: readonly number[];
  readonly literals: number;
  readonly rules: readonly Rule[];
};

/** A literal of the problem: one of its own (at: null), or [x ≥ at]. */
export type SmallLiteral = { readonly of: number; readonly at: number | null; readonly holds: boolean };

export type Rule =
  | { readonly is: "clause"; readonly literals: readonly SmallLiteral[] }
  | {
      readonly is: "difference";
      readonly x: number;
      readonly y: number;
      readonly weight: number;
      readonly when: SmallLiteral | null;
    }
  | {
      readonly is: "linear";
      readonly coefficients: readonly number[];
      readonly most: number;
      readonly when: SmallLiteral | null;
    }
  | {
      readonly is: "cumulative";
      readonly uses: readonly {
        readonly x: number;
        readonly offset: number;
        readonly length: number;
        readonly amount: number;
        readonly present: SmallLiteral | null;
      }[];
      readonly capacity: number;
      readonly when: SmallLiteral | null;
    };

/** Posts the problem, and tells how its literals are written in the solver. */
export const post = (
  solver: LearningSolver,
  small: Small,
): { readonly unknowns: readonly Unknown[]; readonly literal: (l: SmallLiteral) => Literal } => {
  const unknowns = small.greatest.map((most) => solver.integer(0, most));
  const own = Array.from({ length: small.literals }, () => solver.literal());
  const literal = ({ of, at, holds }: SmallLiteral): Literal => {
    const plain = at === null ? own[of % own.length]! : solver.atLeast(unknowns[of % unknowns.length]!, at);
    return holds ? plain : solver.negate(plain);
  };
  const maybe = (l: SmallLiteral | null): Literal | null => (l === null ? null : literal(l));
  const unknown = (x: number): Unknown => unknowns[x % unknowns.length]!;
  for (const rule of small.rules) {
    if (rule.is === "clause") solver.clause(rule.literals.map(literal));
    else if (rule.is === "difference")
      solver.difference(unknown(rule.x), unknown(rule.y), rule.weight, maybe(rule.when));
    else if (rule.is === "linear")
      solver.linear(
        rule.coefficients.map((coefficient, i) => ({ coefficient, x: unknown(i) })),
        rule.most,
        maybe(rule.when),
      );
    else
      solver.cumulative(
        rule.uses.map((use) => ({ ...use, start: unknown(use.x), present: maybe(use.present) })),
        rule.capacity,
        maybe(rule.when),
      );
  }
  return { unknowns, literal };
};

/** True when the values keep every rule; written from the words of the rules, with no part of the solver. */
export const keeps = (small: Small, xs: readonly number[], bs: readonly boolean[]): boolean =>
  small.rules.every((rule) => {
    const x = (i: number): number => xs[i % xs.length]!;
    if (rule.is === "clause") return rule.literals.some((l) => isTrue(l, xs, bs));
    if (rule.when !== null && !isTrue(rule.when, xs, bs)) return true;
    if (rule.is === "difference") return x(rule.y) >= x(rule.x) + rule.weight;
    if (rule.is === "linear") return rule.coefficients.reduce((sum, c, i) => sum + c * x(i), 0) <= rule.most;
    for (let t = -10; t < 30; t++) {
      let taken = 0;
      for (const use of rule.uses) {
        const start = x(use.x) + use.offset;
        if (use.present !== null && !isTrue(use.present, xs, bs)) continue;
        if (start <= t && t < start + use.length) taken += use.amount;
      }
      if (taken > rule.capacity) return false;
    }
    return true;
  });

export const isTrue = (
  { of, at, holds }: SmallLiteral,
  xs: readonly number[],
  bs: readonly boolean[],
): boolean => (at === null ? bs[of % bs.length]! : xs[of % xs.length]! >= at) === holds;

/** Every way to give the problem values that keep its rules and the assumptions. */
export function* solutions(
  small: Small,
  assumed: readonly SmallLiteral[],
): Generator<{ readonly xs: readonly number[]; readonly bs: readonly boolean[] }> {
  const sizes = [
    ...small.greatest.map((most) => most + 1),
    ...Array.from({ length: small.literals }, () => 2),
  ];
  const total = sizes.reduce((a, b) => a * b, 1);
  for (let code = 0; code < total; code++) {
    let rest = code;
    const digits = sizes.map((size) => {
      const digit = rest % size;
      rest = Math.floor(rest / size);
      return digit;
    });
    const xs = digits.slice(0, small.greatest.length);
    const bs = digits.slice(small.greatest.length).map((digit) => digit === 1);
    if (assumed.every((l) => isTrue(l, xs, bs)) && keeps(small, xs, bs)) yield { xs, bs };
  }
}

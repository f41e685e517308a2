import type { LearningSolver, Literal } from "../../search/learn/solver.ts";
import type { Model } from "../model.ts";

/** A demand of the planner's model that can be let go by itself. Places are those of the model (and of prep.lags). */
export type Group =
  /** One side of a lag: at least so long, or at most. */
  | { readonly kind: "lag"; readonly lag: number; readonly most: boolean }
  /** A cook's hours. */
  | { readonly kind: "shift"; readonly cook: number }
  /** What a cook's one pair of hands and one head can do at once. */
  | { readonly kind: "hands"; readonly cook: number }
  /** Somebody is there while heat is on, and while hands are needed. */
  | { readonly kind: "open" }
  | { readonly kind: "resource"; readonly resource: number }
  | { readonly kind: "shelves"; readonly oven: number }
  /** An oven has one temperature at a time, and takes time to change it. */
  | { readonly kind: "heat" }
  /** A course lands no later (`most`) or no earlier than it should. */
  | { readonly kind: "due"; readonly goal: number; readonly most: boolean };

/** A name for a group; the same group has the same name. */
export const keyOf = (group: Group): string => {
  switch (group.kind) {
    case "lag":
      return `lag ${group.lag} ${group.most ? "most" : "least"}`;
    case "shift":
    case "hands":
      return `${group.kind} ${group.cook}`;
    case "resource":
      return `resource ${group.resource}`;
    case "shelves":
      return `shelves ${group.oven}`;
    case "due":
      return `due ${group.goal} ${group.most ? "most" : "least"}`;
    case "open":
    case "heat":
      return group.kind;
  }
};

/**
 * The literals that switch groups on. With `always`, every demand simply holds and there is nothing to switch:
 * that is what a proof of the best plan wants.
 */
export type Switches = {
  /** Null: the demand holds without condition. */
  readonly of: (group: Group) => Literal | null;
  /** A clause that matters only while the group is on. */
  readonly clause: (group: Group, literals: readonly Literal[]) => void;
  readonly all: () => readonly { readonly group: Group; readonly literal: Literal }[];
};

export const switches = (solver: LearningSolver, always: boolean): Switches => {
  const made = new Map<string, { readonly group: Group; readonly literal: Literal }>();
  const of = (group: Group): Literal | null => {
    if (always) return null;
    const key = keyOf(group);
    const known = made.get(key);
    if (known) return known.literal;
    const literal = solver.literal();
    made.set(key, { group, literal });
    return literal;
  };
  return {
    of,
    clause: (group, literals) => {
      const on = of(group);
      solver.clause(on === null ? literals : [solver.negate(on), ...literals]);
    },
    all: () => [...made.values()],
  };
};

/** True for the side of a lag that is only the order of the work: not before what comes first has ended. */
export const isOrder = (
  model: Model,
  arc: {
    readonly lag: number;
    readonly most: boolean;
    readonly from: number;
    readonly to: number;
    readonly weight: number;
  },
): boolean =>
  arc.lag < 0 || (!arc.most && arc.weight >= 0 && arc.weight <= (model.nodes[arc.from]?.length ?? 0));

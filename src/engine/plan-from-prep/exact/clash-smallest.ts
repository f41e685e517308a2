/** What an oracle says of a set of demands: they clash, they do not, or it gave up. */
export type Answer = "clash" | "fits" | "unknown";

/** A set that clashes, of which no member can be left out; `sure` is false when the oracle gave up on some test. */
export type Smallest<T> = { readonly members: readonly T[]; readonly sure: boolean };

/**
 * A smallest clashing set, by halves (Junker, QuickXplain, AAAI 2004; from memory). The first of the list stay
 * in it more readily than the last. What the oracle gives up on counts as fitting, so the set returned does clash.
 * The list itself must clash with what always holds.
 */
export const smallestClash = <T>(
  members: readonly T[],
  ask: (members: readonly T[]) => Answer,
): Smallest<T> => {
  let sure = true;
  const clashes = (set: readonly T[]): boolean => {
    const answer = ask(set);
    if (answer === "unknown") sure = false;
    return answer === "clash";
  };
  const explain = (base: readonly T[], grown: boolean, rest: readonly T[]): readonly T[] => {
    if (grown && clashes(base)) return [];
    if (rest.length <= 1) return rest;
    const half = Math.ceil(rest.length / 2);
    const [head, tail] = [rest.slice(0, half), rest.slice(half)];
    const inTail = explain([...base, ...head], true, tail);
    const inHead = explain([...base, ...inTail], inTail.length > 0, head);
    return [...inHead, ...inTail];
  };
  return { members: explain([], true, members), sure };
};

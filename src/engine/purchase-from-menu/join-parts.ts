/** A use of one or more parts of a food, counted in wholes: 5 yolks are 5 wholes, of which the yolk is taken. */
type PartUse = { readonly parts: readonly string[]; readonly wholes: number };

/** Wholes bought together for all uses. */
type Joined = {
  /** The most that any one part asks for. */
  readonly wholes: number;
  /** Each use's part of them, in the order of the uses; they add up to `wholes`. */
  readonly shares: readonly number[];
  /** Wholes of which nobody uses the part, for every part that a whole gives. */
  readonly over: ReadonlyMap<string, number>;
};

/**
 * Wholes that give every part at once: as many as the part that is asked for most. They are shared out so that a whole
 * from which several parts are taken is paid for by each in the ratio of the parts' weights, and the rest by those who
 * alone need it.
 */
export const joinParts = (
  uses: readonly PartUse[],
  gives: readonly string[],
  weightOf: (part: string) => number,
): Joined => {
  const asked = new Map<string, number>(gives.map((part) => [part, 0]));
  for (const use of uses) for (const part of use.parts) asked.set(part, (asked.get(part) ?? 0) + use.wholes);
  const wholes = Math.max(0, ...asked.values());

  // What each part pays: level by level, among the parts that reach the level.
  const pays = new Map<string, number>();
  let level = 0;
  for (const next of [...new Set(asked.values())].sort((a, b) => a - b)) {
    const active = [...asked].filter(([, amount]) => amount >= next).map(([part]) => part);
    const weight = active.reduce((sum, part) => sum + weightOf(part), 0);
    for (const part of active)
      pays.set(part, (pays.get(part) ?? 0) + ((next - level) * weightOf(part)) / (weight > 0 ? weight : 1));
    level = next;
  }
  const shares = uses.map((use) =>
    use.parts.reduce((sum, part) => {
      const all = asked.get(part) ?? 0;
      return sum + (all > 0 ? ((pays.get(part) ?? 0) * use.wholes) / all : 0);
    }, 0),
  );
  return { wholes, shares, over: new Map([...asked].map(([part, amount]) => [part, wholes - amount])) };
};

import type { LatestTimes } from "./latest-times.ts";
import type { VesselChain } from "./vessel-chains.ts";
import type { VesselPool } from "./vessels.ts";

/**
 * Work may be done so much before it must, minutes: what is emptied in the meantime counts as needed again by what begins
 * within this time before. What is plated is emptied when its course goes.
 */
const sooner = 120;

type Timed = { readonly chain: VesselChain; readonly start: number; readonly end: number };

/**
 * What has to be washed up because something later may need the vessel: not the last ones in use, and not where there are
 * enough for all that comes after. Told by the latest times of the work, for the plan is not made yet.
 */
export const neededAgain = (
  chains: readonly VesselChain[],
  pool: VesselPool,
  times: LatestTimes,
): ReadonlySet<VesselChain> => {
  const all = chains.map(
    (chain): Timed => ({
      chain,
      start: times(chain.from).start,
      end: Math.max(...chain.frees.map(({ task, edge }) => times(task)[edge])),
    }),
  );
  const again = new Set(all.filter((own) => isNeeded(own, all, pool)).map(({ chain }) => chain));
  pool.forEach((size, s) => {
    addForRoom(
      all.filter(({ chain }) => chain.size >= s),
      size.orLarger,
      again,
    );
  });
  return again;
};

/**
 * Where several are emptied at the same time each of them may count on the others, and none is washed up: then the one that
 * is empty first is, until all that begins finds room among what is dirty.
 */
const addForRoom = (all: readonly Timed[], room: number, again: Set<VesselChain>): void => {
  const order = all.toSorted((a, b) => a.start - b.start || a.end - b.end);
  order.forEach((own, i) => {
    const before = order.slice(0, i);
    const taken = (): readonly Timed[] =>
      before.filter(({ chain, end }) => !again.has(chain) || end > own.start);
    while (taken().reduce((sum, o) => sum + o.chain.amount, own.chain.amount) > room) {
      const [dirty] = before.filter((o) => !again.has(o.chain)).toSorted((a, b) => a.end - b.end);
      if (dirty === undefined) return;
      again.add(dirty.chain);
    }
  });
};

const isNeeded = ({ chain, end }: Timed, all: readonly Timed[], pool: VesselPool): boolean => {
  const empty = chain.plated ? end : end - sooner;
  const others = all.filter((other) => other.chain !== chain);
  const begins = others.some((other) => other.chain.size <= chain.size && other.start >= empty);
  if (!begins) return false;
  const after = others.filter((other) => other.end > empty);
  return pool.some((size, s) => {
    const asked = after.reduce((sum, o) => sum + (o.chain.size >= s ? o.chain.amount : 0), 0);
    return s <= chain.size && asked + chain.amount > size.orLarger;
  });
};

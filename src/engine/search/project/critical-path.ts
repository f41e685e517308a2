import type { Arcs, Layout } from "./layout.ts";

/** The longest way from the source to each activity's start, and from its start to the end of the project. */
export type CriticalPath = {
  readonly heads: Int32Array;
  readonly tails: Int32Array;
  readonly length: number;
};

/** Longest paths without resources; `length` is the oldest bound on the makespan (Kelley and Walker 1959). */
export const criticalPath = (layout: Layout): CriticalPath => {
  const { count, lengths } = layout;
  const heads = longest(layout.forward, count, false);
  const mirrored = longest(layout.backward, count, true);
  let length = 0;
  for (let a = 0; a < count; a++) length = Math.max(length, (heads[a] as number) + (lengths[a] as number));
  const tails = Int32Array.from(mirrored, (behind, a) => behind + (lengths[a] as number));
  for (let a = 0; a < count; a++) length = Math.max(length, tails[a] as number);
  return { heads, tails, length };
};

const longest = ({ first, from, weight }: Arcs, count: number, falling: boolean): Int32Array => {
  const far = new Int32Array(count);
  for (let i = 0; i < count; i++) {
    const a = falling ? count - 1 - i : i;
    const end = first[a + 1] as number;
    for (let k = first[a] as number; k < end; k++)
      far[a] = Math.max(far[a] as number, (far[from[k] as number] as number) + (weight[k] as number));
  }
  return far;
};

import type { Project } from "./project.ts";

/** Longest ways between the starts of all activities, row by row; −∞ where none leads. */
export type Ways = { readonly count: number; readonly far: Float64Array };

/**
 * Longest ways over the lags (Floyd and Warshall), with every activity after the source and its end before the sink.
 * Null when lags go round with a sum above nothing: then no schedule exists, whatever the resources.
 */
export const waysOf = ({ lengths, lags }: Project): Ways | null => {
  const count = lengths.length;
  const far = new Float64Array(count * count).fill(Number.NEGATIVE_INFINITY);
  for (let i = 0; i < count; i++) {
    far[i] = 0;
    far[i * count + i] = 0;
    far[i * count + count - 1] = lengths[i] ?? 0;
  }
  for (const { from, to, weight } of lags) {
    const k = from * count + to;
    if (from === to && weight > 0) return null;
    far[k] = Math.max(far[k] as number, weight);
  }
  far[count * count - 1] = Math.max(0, far[count * count - 1] as number);
  for (let k = 0; k < count; k++)
    for (let i = 0; i < count; i++) {
      const first = far[i * count + k] as number;
      if (first === Number.NEGATIVE_INFINITY) continue;
      for (let j = 0; j < count; j++) {
        const way = first + (far[k * count + j] as number);
        if (way > (far[i * count + j] as number)) far[i * count + j] = way;
      }
    }
  for (let i = 0; i < count; i++) if ((far[i * count + i] as number) > 0) return null;
  return { count, far };
};

/**
 * A makespan that is enough if any is: each activity or lag in turn gets all its time (Bartusch, Möhring, Radermacher
 * 1988 use the same sum).
 */
export const enoughTime = ({ lengths, lags }: Project): number => {
  const most = [...lengths];
  for (const { from, weight } of lags) most[from] = Math.max(most[from] ?? 0, weight);
  return most.reduce((a, b) => a + b, 0);
};

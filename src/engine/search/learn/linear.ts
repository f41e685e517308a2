import { addPropagator, type Core } from "./core.ts";
import { clashExplained, explain, explained, raise, startReason } from "./trail.ts";

export type Term = { readonly coefficient: number; readonly x: number };

/** Σ coefficient · x ≤ most, when the atom (whenSide, whenBound) holds; whenSide −1: always. */
export const addLinear = (
  core: Core,
  terms: readonly Term[],
  most: number,
  whenSide: number,
  whenBound: number,
): void => {
  const joined = new Map<number, number>();
  for (const { coefficient, x } of terms) joined.set(x, (joined.get(x) ?? 0) + coefficient);
  const used = [...joined].filter(([, c]) => c !== 0);
  const n = used.length;
  const sides = Int32Array.from(used, ([x, c]) => x * 2 + (c > 0 ? 0 : 1));
  const sizes = Float64Array.from(used, ([, c]) => Math.abs(c));
  const roots = Float64Array.from(sides, (s) => core.val[s] as number);

  /** Explains by the least values of all but one, asking for as much less as `spare` allows. */
  const because = (except: number, spareAtFirst: number): void => {
    let spare = spareAtFirst;
    startReason(core);
    if (whenSide >= 0 && except !== -2) explain(core, whenSide, whenBound);
    for (let i = 0; i < n; i++) {
      if (i === except) continue;
      const size = sizes[i] as number;
      const now = core.val[sides[i] as number] as number;
      const less = Math.min(Math.floor(spare / size), now - (roots[i] as number));
      spare -= less * size;
      if (now - less > (roots[i] as number)) explain(core, sides[i] as number, now - less);
    }
  };

  const run = (): boolean => {
    const active = whenSide < 0 || (core.val[whenSide] as number) >= whenBound;
    if (!active && (core.val[whenSide ^ 1] as number) >= 1 - whenBound) return true;
    let least = 0;
    for (let i = 0; i < n; i++) least += (sizes[i] as number) * (core.val[sides[i] as number] as number);
    const slack = most - least;
    if (slack < 0) {
      if (active) {
        because(-1, -slack - 1);
        return clashExplained(core);
      }
      because(-2, -slack - 1);
      return raise(core, whenSide ^ 1, 1 - whenBound, explained(core));
    }
    if (!active) return true;
    for (let i = 0; i < n; i++) {
      const side = sides[i] as number;
      const size = sizes[i] as number;
      const now = core.val[side] as number;
      const most = now + Math.floor(slack / size);
      if (-(core.val[side ^ 1] as number) <= most) continue;
      because(i, (most + 1 - now) * size - slack - 1);
      if (!raise(core, side ^ 1, -most, explained(core))) return false;
    }
    return true;
  };

  addPropagator(core, { run, slow: false }, whenSide < 0 ? sides : [...sides, whenSide]);
};

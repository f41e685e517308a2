import { type PlanProgress, solvePrep, whyPlan } from "#engine/index.ts";
import type { Problem } from "#wire/problem.ts";
import { readProblem } from "#wire/read-problem.ts";
import { solutionJson } from "#wire/solution-json.ts";

/** How long a kitchen is worked on, and from which seed; `now` gives seconds, of any clock that only goes forward. */
export type KitchenEffort = {
  readonly seconds: number;
  readonly seed: number;
  readonly now: () => number;
  /** Asked often: true when the best so far is wanted at once. */
  readonly endAsked?: () => boolean;
  /** Hears of each better plan, with the seconds it took. */
  readonly tell?: (seconds: number, progress: PlanProgress) => void;
};

/** More tries and conflicts than any clock leaves time for. */
const endless = 1e12;

/** Solves a kitchen given as a problem file: the shape that `--json` prints, or what is wrong with the file. */
export const solveKitchen = (
  name: string,
  text: string,
  { seconds, seed, now, endAsked, tell }: KitchenEffort,
): { readonly solution: ReturnType<typeof solutionJson> | null; readonly problems: readonly Problem[] } => {
  const from = now();
  const taken = (): number => Math.round((now() - from) * 1000) / 1000;
  const { prep, problems } = readProblem(name, text);
  if (prep === null) return { solution: null, problems };
  let firstAt: number | null = null;
  let bestAt: number | null = null;
  const keepGoing = (): boolean => taken() < seconds && endAsked?.() !== true;
  const { value } = solvePrep(prep, {
    tries: endless,
    proof: endless,
    seed,
    keepGoing,
    tell: (progress) => {
      tell?.(taken(), progress);
      if (progress.unplaced > 0) return;
      firstAt ??= taken();
      bestAt = taken();
    },
  });
  const plan =
    value.unplaced.length > 0
      ? whyPlan({ prep, plan: value }, { conflicts: 40_000, tries: 0, seed, keepGoing })
      : value;
  return { solution: solutionJson(prep, plan, { firstAt, bestAt, seconds: taken() }), problems };
};

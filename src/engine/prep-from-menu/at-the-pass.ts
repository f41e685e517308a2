import { totalMinutes } from "./drafts.ts";
import type { Unit } from "./work.ts";

const passVerbs = new Set(["plate", "serve", "garnish"]);

// "Scoop and serve", "spoon onto plates": with nothing but the plate behind it.
const passWords = /^(?:scoop|spoon)\b/;

const isPass = ({ action, step, technique }: Unit): boolean =>
  action.station === "hands" &&
  (step.phase === "to-serve" || passVerbs.has(technique?.id ?? "") || passWords.test(action.verb));

/**
 * What hands do at the pass to a dish that is plated is counted with its plates and takes no time of its own, unless
 * more work comes after it. Told by the action alone, so that it is the same at every size.
 */
export const withoutPass = (units: readonly Unit[], plated: boolean): readonly Unit[] => {
  if (!plated) return units;
  const leadsOn = new Set<number>();
  const left = [...units];
  for (let u = units.length - 1; u >= 0; u--) {
    const unit = units[u];
    if (unit === undefined) continue;
    const works = totalMinutes(unit.segments) > 0;
    if (isPass(unit) && !leadsOn.has(u)) left[u] = { ...unit, segments: [] };
    else if (works || leadsOn.has(u)) for (const before of unit.before) leadsOn.add(before);
  }
  return left;
};

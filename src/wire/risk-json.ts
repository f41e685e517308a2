import type { Load, Risk } from "#engine/index.ts";

/** How sure a plan is and how it is loaded, as it goes out. Moments and minutes as in the plan; shares from 0 to 1. */
export const riskJson = ({ risk, load }: { readonly risk: Risk; readonly load: Load }) => ({
  runs: risk.runs,
  courses: risk.courses,
  watch: risk.watch,
  spare: risk.spare,
  load,
});

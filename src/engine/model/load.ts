import type { Minutes, Moment } from "../measure/units.ts";

/** How the hands of a plan are loaded. */
export type Load = {
  /** Hands-on minutes of all cooks together. */
  readonly handsMinutes: Minutes;
  /** The sixty minutes with the most hands-on work in them; the earliest of equals. Null when there is none. */
  readonly busiest: { readonly from: Moment; readonly handsMinutes: Minutes } | null;
};

import type { Estimate } from "../measure/estimate.ts";
import type { Minutes } from "../measure/units.ts";
import type { TimeReason } from "../model/time-reason.ts";

/** The length of an action and, where it is neither the card's nor the technique's usual one, how it was found. */
export type Timed = {
  readonly minutes: Estimate<Minutes>;
  readonly because: TimeReason | null;
  /** Kilos in the vessel, water included that no line lists; 0 when they play no part. */
  readonly kilos: number;
  /** Of the burners or the oven; 0 when they play no part. */
  readonly kilowatts: number;
  /** Of the piece or the layer; 0 when it plays no part. */
  readonly millimetres: number;
};

/** A length that follows from the words or the technique alone. */
export const usually = (minutes: Estimate<Minutes>): Timed => ({
  minutes,
  because: null,
  kilos: 0,
  kilowatts: 0,
  millimetres: 0,
});

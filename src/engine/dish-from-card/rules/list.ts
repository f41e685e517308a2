import { coolingMissing } from "./cooling-missing.ts";
import { coreTemperatureMissing } from "./core-temperature-missing.ts";
import { cueOnlyTime } from "./cue-only-time.ts";
import { listedNotUsed } from "./listed-not-used.ts";
import { moreUsedThanListed } from "./more-used-than-listed.ts";
import { ratioBroken } from "./ratio-broken.ts";
import { rawEgg } from "./raw-egg.ts";
import type { Rule } from "./rule.ts";
import { techniqueUnknown } from "./technique-unknown.ts";
import { temperatureDoubtful } from "./temperature-doubtful.ts";
import { temperatureMissing } from "./temperature-missing.ts";
import { timeMissing } from "./time-missing.ts";
import { usedNotListed } from "./used-not-listed.ts";

/** Every rule, in the order in which they are checked. */
export const rules: readonly Rule[] = [
  usedNotListed,
  listedNotUsed,
  moreUsedThanListed,
  timeMissing,
  cueOnlyTime,
  temperatureMissing,
  temperatureDoubtful,
  ratioBroken,
  techniqueUnknown,
  rawEgg,
  coreTemperatureMissing,
  coolingMissing,
];

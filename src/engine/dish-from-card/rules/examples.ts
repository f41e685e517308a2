import type { Code } from "../../findings/codes.ts";
import { coolingMissingExamples } from "./cooling-missing.examples.ts";
import { coreTemperatureMissingExamples } from "./core-temperature-missing.examples.ts";
import { cueOnlyTimeExamples } from "./cue-only-time.examples.ts";
import { listedNotUsedExamples } from "./listed-not-used.examples.ts";
import { moreUsedThanListedExamples } from "./more-used-than-listed.examples.ts";
import { ratioBrokenExamples } from "./ratio-broken.examples.ts";
import { rawEggExamples } from "./raw-egg.examples.ts";
import { readingExamples } from "./reading.examples.ts";
import type { Example } from "./rule.ts";
import { techniqueUnknownExamples } from "./technique-unknown.examples.ts";
import { temperatureDoubtfulExamples } from "./temperature-doubtful.examples.ts";
import { temperatureMissingExamples } from "./temperature-missing.examples.ts";
import { timeMissingExamples } from "./time-missing.examples.ts";
import { usedNotListedExamples } from "./used-not-listed.examples.ts";

/** The examples of every rule, and of what is said while a card is read, by code. */
export const examplesOf: ReadonlyMap<Code, readonly Example[]> = new Map<Code, readonly Example[]>([
  ...readingExamples,
  ["used-not-listed", usedNotListedExamples],
  ["listed-not-used", listedNotUsedExamples],
  ["more-used-than-listed", moreUsedThanListedExamples],
  ["time-missing", timeMissingExamples],
  ["cue-only-time", cueOnlyTimeExamples],
  ["temperature-missing", temperatureMissingExamples],
  ["temperature-doubtful", temperatureDoubtfulExamples],
  ["ratio-broken", ratioBrokenExamples],
  ["technique-unknown", techniqueUnknownExamples],
  ["raw-egg", rawEggExamples],
  ["core-temperature-missing", coreTemperatureMissingExamples],
  ["cooling-missing", coolingMissingExamples],
]);

import type { Code } from "../../findings/codes.ts";
import { amountBeyondListExamples } from "./amount-beyond-list.examples.ts";
import { amountUnlikelyExamples } from "./amount-unlikely.examples.ts";
import { beansNotBoiledExamples } from "./beans-not-boiled.examples.ts";
import { componentNotMadeExamples } from "./component-not-made.examples.ts";
import { coolingMissingExamples } from "./cooling-missing.examples.ts";
import { coreTemperatureMissingExamples } from "./core-temperature-missing.examples.ts";
import { coreTooLowExamples } from "./core-too-low.examples.ts";
import { cueOnlyTimeExamples } from "./cue-only-time.examples.ts";
import { garlicInOilKeptExamples } from "./garlic-in-oil-kept.examples.ts";
import { gelatineDoubtfulExamples } from "./gelatine-doubtful.examples.ts";
import { hotInFridgeExamples } from "./hot-in-fridge.examples.ts";
import { intervalUnlikelyExamples } from "./interval-unlikely.examples.ts";
import { keptTooLongExamples } from "./kept-too-long.examples.ts";
import { leftOutExamples } from "./left-out.examples.ts";
import { listedNotUsedExamples } from "./listed-not-used.examples.ts";
import { listedTwiceExamples } from "./listed-twice.examples.ts";
import { marinadeReusedExamples } from "./marinade-reused.examples.ts";
import { meanwhileAloneExamples } from "./meanwhile-alone.examples.ts";
import { moreUsedThanListedExamples } from "./more-used-than-listed.examples.ts";
import { orderDoubtfulExamples } from "./order-doubtful.examples.ts";
import { ovenNotPreheatedExamples } from "./oven-not-preheated.examples.ts";
import { partUnusedExamples } from "./part-unused.examples.ts";
import { portionUnlikelyExamples } from "./portion-unlikely.examples.ts";
import { poultryWashedExamples } from "./poultry-washed.examples.ts";
import { raisingAgentDoubtfulExamples } from "./raising-agent-doubtful.examples.ts";
import { ratioBrokenExamples } from "./ratio-broken.examples.ts";
import { rawEggExamples } from "./raw-egg.examples.ts";
import { rawFlourEatenExamples } from "./raw-flour-eaten.examples.ts";
import { rawMilkUsedExamples } from "./raw-milk-used.examples.ts";
import { rawSproutsExamples } from "./raw-sprouts.examples.ts";
import { readingExamples } from "./reading.examples.ts";
import { reheatedTwiceExamples } from "./reheated-twice.examples.ts";
import { restMissingExamples } from "./rest-missing.examples.ts";
import type { Example } from "./rule.ts";
import { saltDoubtfulExamples } from "./salt-doubtful.examples.ts";
import { settingsDisagreeExamples } from "./settings-disagree.examples.ts";
import { shellfishUncheckedExamples } from "./shellfish-unchecked.examples.ts";
import { stepRepeatedExamples } from "./step-repeated.examples.ts";
import { stuffingUncheckedExamples } from "./stuffing-unchecked.examples.ts";
import { techniqueUnknownExamples } from "./technique-unknown.examples.ts";
import { temperatureDoubtfulExamples } from "./temperature-doubtful.examples.ts";
import { temperatureMissingExamples } from "./temperature-missing.examples.ts";
import { thawedWarmExamples } from "./thawed-warm.examples.ts";
import { timeMissingExamples } from "./time-missing.examples.ts";
import { timeUnlikelyExamples } from "./time-unlikely.examples.ts";
import { usedNotListedExamples } from "./used-not-listed.examples.ts";
import { yeastDoubtfulExamples } from "./yeast-doubtful.examples.ts";

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
  ["oven-not-preheated", ovenNotPreheatedExamples],
  ["rest-missing", restMissingExamples],
  ["order-doubtful", orderDoubtfulExamples],
  ["beans-not-boiled", beansNotBoiledExamples],
  ["raw-flour-eaten", rawFlourEatenExamples],
  ["thawed-warm", thawedWarmExamples],
  ["poultry-washed", poultryWashedExamples],
  ["marinade-reused", marinadeReusedExamples],
  ["garlic-in-oil-kept", garlicInOilKeptExamples],
  ["salt-doubtful", saltDoubtfulExamples],
  ["raising-agent-doubtful", raisingAgentDoubtfulExamples],
  ["yeast-doubtful", yeastDoubtfulExamples],
  ["gelatine-doubtful", gelatineDoubtfulExamples],
  ["portion-unlikely", portionUnlikelyExamples],
  ["part-unused", partUnusedExamples],
  ["time-unlikely", timeUnlikelyExamples],
  ["interval-unlikely", intervalUnlikelyExamples],
  ["meanwhile-alone", meanwhileAloneExamples],
  ["shellfish-unchecked", shellfishUncheckedExamples],
  ["raw-sprouts", rawSproutsExamples],
  ["raw-milk-used", rawMilkUsedExamples],
  ["core-too-low", coreTooLowExamples],
  ["listed-twice", listedTwiceExamples],
  ["step-repeated", stepRepeatedExamples],
  ["settings-disagree", settingsDisagreeExamples],
  ["amount-beyond-list", amountBeyondListExamples],
  ["amount-unlikely", amountUnlikelyExamples],
  ["component-not-made", componentNotMadeExamples],
  ["kept-too-long", keptTooLongExamples],
  ["reheated-twice", reheatedTwiceExamples],
  ["hot-in-fridge", hotInFridgeExamples],
  ["left-out", leftOutExamples],
  ["stuffing-unchecked", stuffingUncheckedExamples],
]);

import { amountBeyondList } from "./amount-beyond-list.ts";
import { amountUnlikely } from "./amount-unlikely.ts";
import { beansNotBoiled } from "./beans-not-boiled.ts";
import { componentNotMade } from "./component-not-made.ts";
import { coolingMissing } from "./cooling-missing.ts";
import { coreTemperatureMissing } from "./core-temperature-missing.ts";
import { coreTooLow } from "./core-too-low.ts";
import { cueOnlyTime } from "./cue-only-time.ts";
import { garlicInOilKept } from "./garlic-in-oil-kept.ts";
import { gelatineDoubtful } from "./gelatine-doubtful.ts";
import { hotInFridge } from "./hot-in-fridge.ts";
import { intervalUnlikely } from "./interval-unlikely.ts";
import { keptTooLong } from "./kept-too-long.ts";
import { leftOut } from "./left-out.ts";
import { listedNotUsed } from "./listed-not-used.ts";
import { listedTwice } from "./listed-twice.ts";
import { marinadeReused } from "./marinade-reused.ts";
import { meanwhileAlone } from "./meanwhile-alone.ts";
import { moreUsedThanListed } from "./more-used-than-listed.ts";
import { orderDoubtful } from "./order-doubtful.ts";
import { ovenNotPreheated } from "./oven-not-preheated.ts";
import { partUnused } from "./part-unused.ts";
import { portionUnlikely } from "./portion-unlikely.ts";
import { poultryWashed } from "./poultry-washed.ts";
import { raisingAgentDoubtful } from "./raising-agent-doubtful.ts";
import { ratioBroken } from "./ratio-broken.ts";
import { rawEgg } from "./raw-egg.ts";
import { rawFlourEaten } from "./raw-flour-eaten.ts";
import { rawMilkUsed } from "./raw-milk-used.ts";
import { rawSprouts } from "./raw-sprouts.ts";
import { reheatedTwice } from "./reheated-twice.ts";
import { restMissing } from "./rest-missing.ts";
import type { Rule } from "./rule.ts";
import { saltDoubtful } from "./salt-doubtful.ts";
import { settingsDisagree } from "./settings-disagree.ts";
import { shellfishUnchecked } from "./shellfish-unchecked.ts";
import { stepRepeated } from "./step-repeated.ts";
import { stuffingUnchecked } from "./stuffing-unchecked.ts";
import { techniqueUnknown } from "./technique-unknown.ts";
import { temperatureDoubtful } from "./temperature-doubtful.ts";
import { temperatureMissing } from "./temperature-missing.ts";
import { thawedWarm } from "./thawed-warm.ts";
import { timeMissing } from "./time-missing.ts";
import { timeUnlikely } from "./time-unlikely.ts";
import { usedNotListed } from "./used-not-listed.ts";
import { yeastDoubtful } from "./yeast-doubtful.ts";

/** Every rule, in the order in which they are checked. */
export const rules: readonly Rule[] = [
  usedNotListed,
  listedNotUsed,
  moreUsedThanListed,
  partUnused,
  timeMissing,
  cueOnlyTime,
  temperatureMissing,
  temperatureDoubtful,
  ratioBroken,
  techniqueUnknown,
  rawEgg,
  coreTemperatureMissing,
  coolingMissing,
  ovenNotPreheated,
  restMissing,
  orderDoubtful,
  beansNotBoiled,
  rawFlourEaten,
  thawedWarm,
  poultryWashed,
  marinadeReused,
  garlicInOilKept,
  saltDoubtful,
  raisingAgentDoubtful,
  yeastDoubtful,
  gelatineDoubtful,
  portionUnlikely,
  timeUnlikely,
  intervalUnlikely,
  meanwhileAlone,
  shellfishUnchecked,
  rawSprouts,
  rawMilkUsed,
  coreTooLow,
  listedTwice,
  stepRepeated,
  settingsDisagree,
  amountBeyondList,
  amountUnlikely,
  componentNotMade,
  keptTooLong,
  reheatedTwice,
  hotInFridge,
  leftOut,
  stuffingUnchecked,
];

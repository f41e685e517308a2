import type { CardTins } from "../heat/card-tins.ts";
import { mixtureOf } from "../heat/composition.ts";
import { thermalProperties } from "../heat/thermal-properties.ts";
import { deeperTimes, depthIn } from "../heat/tins.ts";
import { metres } from "../measure/heat-units.ts";
import { type Celsius, celsius } from "../measure/units.ts";
import type { Lot } from "./lot.ts";

/** What the time in the oven is multiplied by, and how deep it stands, in millimetres. One at the card's depth. */
export const tinTimes = (
  lot: Lot,
  setting: Celsius,
  fan: boolean,
): { readonly ratio: number; readonly millimetres: number } => {
  const same = { ratio: 1, millimetres: 0 };
  if (lot.tins === null || lot.taken === null || !(lot.kilos > 0)) return same;
  const { deeper } = lot.taken;
  if (Math.abs(deeper - 1) < 1e-9) return same;
  const { composition } = mixtureOf(lot.contents);
  const heavy = thermalProperties(composition, celsius(60)).density;
  const depth = depthIn(kilosATin(lot, lot.tins) / heavy, lot.tins.tin);
  const ratio = deeperTimes(depth, metres(depth * deeper), composition, setting, fan);
  return ratio === null ? same : { ratio, millimetres: depth * deeper * 1000 };
};

const kilosATin = (lot: Lot, tins: CardTins): number => lot.kilos / lot.factor / tins.count;

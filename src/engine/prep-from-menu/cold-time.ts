import { type Body, jointOf } from "../heat/bodies.ts";
import { mixtureOf } from "../heat/composition.ts";
import { minutesToMiddle } from "../heat/conduction.ts";
import { freezingMinutes, thawingMinutes } from "../heat/freezing.ts";
import { type Medium, transferOf } from "../heat/media.ts";
import { rateOf, stirredMinutes } from "../heat/stirred.ts";
import { type ThermalProperties, thermalProperties } from "../heat/thermal-properties.ts";
import type { Estimate } from "../measure/estimate.ts";
import { metres, type Transfer } from "../measure/heat-units.ts";
import { celsius, type Minutes, minutes } from "../measure/units.ts";
import type { Technique } from "../model/food.ts";
import type { TimeReason } from "../model/time-reason.ts";
import type { Lot } from "./lot.ts";
import type { Timed } from "./timed.ts";

/** Temperatures of places and foods, °C. Common practice, no source, but for the 5 °C of the US Food Code. */
const temperatures = {
  hot: celsius(90),
  warm: celsius(20),
  room: celsius(20),
  /** No longer warm to the hand. */
  cool: celsius(35),
  fridge: celsius(3),
  chilled: celsius(8),
  cold: celsius(5),
  iced: celsius(1),
  freezer: celsius(-22),
  frozen: celsius(-15),
  stored: celsius(-18),
};
/** What is put out to cool or to chill is spread no deeper, mm: shallow pans are the codes' own advice. */
const deepest = { cool: 20, chill: 40, freeze: 30, defrost: 40 } as const;
/** Time beyond being cold that a gel takes to set, minutes. McGee: full strength after 5 to 8 hours at 5 °C. */
const setting = 180;

type Cold = keyof typeof deepest;

const isHot = (lot: Lot): boolean => lot.coldKilos < lot.kilos - 1e-9;

/** As it stands in a dish of its own, half as deep as wide, or spread out so far. */
const layer = (lot: Lot, properties: ThermalProperties, most: number): Body & { readonly kind: "slab" } => ({
  kind: "slab",
  thickness: metres(Math.min(most / 1000, Math.cbrt(lot.kilos / properties.density) / 2)),
});

/** Low from the high coefficient and the other way round; null when any of them never gets there. */
const over = (medium: Medium, at: (h: Transfer) => Minutes | null): Estimate<Minutes> | null => {
  const { low, likely, high } = transferOf(medium);
  const slow = at(low);
  const usual = at(likely);
  const quick = at(high);
  return slow === null || usual === null || quick === null ? null : { low: quick, likely: usual, high: slow };
};

const within = (e: Estimate<Minutes>, least: number, most: number): Estimate<Minutes> => {
  const bound = (n: number): Minutes => minutes(Math.min(most, Math.max(least, n)));
  return { low: bound(e.low), likely: bound(e.likely), high: bound(e.high) };
};

const timed = (length: Estimate<Minutes>, because: TimeReason, lot: Lot, thick: number): Timed => ({
  minutes: length,
  because,
  kilos: lot.kilos,
  kilowatts: 0,
  millimetres: thick * 1000,
});

/**
 * Minutes to cool a pot that stands in iced water and is stirred, so many pots sharing the kilos: as deep as it is wide,
 * losing heat through side and bottom, down to 5 °C.
 */
export const icedTime = (lot: Lot, pots: number): Timed | null => {
  if (!(lot.kilos > 0)) return null;
  const properties = thermalProperties(mixtureOf(lot.contents).composition, celsius(40));
  const volume = lot.kilos / Math.max(1, pots) / properties.density;
  const length = metres(Math.cbrt((4 * volume) / Math.PI) / 5);
  const from = isHot(lot) ? temperatures.hot : temperatures.warm;
  const found = over("ice-bath", (h) =>
    stirredMinutes(rateOf(h, length, properties), from, temperatures.cold, temperatures.iced),
  );
  return found === null ? null : timed(found, "ice-bath", lot, 0);
};

/**
 * Minutes of what goes alone in the cold, from what it is and how thick it lies: in shallow layers, or the joint itself
 * when one thaws. Kept within the technique's own range, which knows what a cook means by "cool" or "chill"; a thawing
 * joint may take longer. Null for other techniques and when nothing is known of what is there.
 */
export const coldTime = (technique: Technique, lot: Lot): Timed | null => {
  if (!(lot.kilos > 0)) return null;
  const { composition } = mixtureOf(lot.contents);
  const properties = thermalProperties(composition, celsius(20));
  const { low, high } = technique.minutes;
  const from = isHot(lot) ? temperatures.hot : temperatures.warm;
  const spread = (kind: Cold) => layer(lot, properties, deepest[kind]);
  switch (technique.id) {
    case "cool": {
      if (!isHot(lot)) return null;
      const body = spread("cool");
      const found = over("still-air", (transfer) =>
        minutesToMiddle(
          { body, ...properties, transfer, start: from, medium: temperatures.room },
          temperatures.cool,
        ),
      );
      return found === null ? null : timed(within(found, low, high), "layer", lot, body.thickness);
    }
    case "chill":
    case "set-gel": {
      const body = spread("chill");
      const found = over("fridge", (transfer) =>
        minutesToMiddle(
          { body, ...properties, transfer, start: from, medium: temperatures.fridge },
          temperatures.chilled,
        ),
      );
      if (found === null) return null;
      const sets = technique.id === "set-gel" ? setting : 0;
      const whole = {
        low: minutes(found.low + sets),
        likely: minutes(found.likely + sets),
        high: minutes(found.high + sets),
      };
      return timed(within(whole, low, high), "layer", lot, body.thickness);
    }
    case "freeze": {
      const body = spread("freeze");
      const found = over("freezer", (transfer) =>
        freezingMinutes(
          body,
          composition,
          transfer,
          temperatures.warm,
          temperatures.freezer,
          temperatures.frozen,
        ),
      );
      return found === null ? null : timed(within(found, low, high), "layer", lot, body.thickness);
    }
    case "defrost": {
      const body = lot.pieces === null ? spread("defrost") : jointOf(lot.pieces.grams, properties.density);
      const found = over("walk-in", (transfer) =>
        thawingMinutes(body, composition, transfer, temperatures.stored, temperatures.fridge),
      );
      if (found === null) return null;
      const thick = body.kind === "slab" ? body.thickness : body.kind === "cylinder" ? body.diameter : 0;
      const most = lot.pieces === null ? high : Number.POSITIVE_INFINITY;
      return timed(within(found, low, most), "thickness", lot, thick);
    }
    default:
      return null;
  }
};

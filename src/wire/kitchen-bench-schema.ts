import { z } from "zod";
import type { Wanted } from "./problem.ts";
import {
  fromOne,
  fromZero,
  integer,
  listOf,
  looseMap,
  nameText,
  oneOf,
  wholeNumber,
  yesOrNo,
} from "./schema-parts.ts";

/** The levels of the format, in its own names. */
export const benchLevels = [
  "courseLatenessMinutes",
  "hotHoldWeightedMinutes",
  "freshnessWeightedMinutes",
  "calmHandsOnMinutes",
] as const;

const because = (wanted: Wanted) => ({ error: () => wanted });
const edge = oneOf(["start", "end"], "edge");
const span = z.tuple([wholeNumber, wholeNumber], because("list")).refine(([a, b]) => a < b, because("list"));
const waiting = listOf(looseMap({ task: nameText, plate: nameText, weight: fromZero }));

/** kitchen-bench/1. The format lets files carry more than it names, so further keys are let go. */
export const kitchenBenchSchema = looseMap({
  format: z.literal("kitchen-bench/1", because("format")),
  name: nameText,
  horizon: wholeNumber.max(20_160, because("whole-number")),
  attention: looseMap({ capacityPerCook: wholeNumber, handsOn: wholeNumber, minded: wholeNumber }),
  cooks: listOf(looseMap({ id: nameText, shifts: listOf(span) })),
  ovens: listOf(looseMap({ id: nameText, shelves: wholeNumber, startTempC: integer })),
  ovenRamp: looseMap({ heatMinutesPer10C: fromZero, coolMinutesPer10C: fromZero }),
  equipment: listOf(looseMap({ id: nameText, capacity: wholeNumber })),
  tasks: listOf(
    looseMap({
      id: nameText,
      name: nameText,
      dish: nameText,
      finishing: yesOrNo,
      segments: listOf(
        looseMap({
          minutes: fromOne,
          attention: oneOf(["handsOn", "minded", "unattended"], "bench-attention"),
          uses: listOf(
            looseMap({ resource: nameText, amount: wholeNumber, tempC: integer.optional() }),
          ).optional(),
          needsSomeoneInKitchen: yesOrNo.optional(),
        }),
      ),
    }),
  ),
  lags: listOf(
    looseMap({
      before: nameText,
      beforeEdge: edge,
      after: nameText,
      afterEdge: edge,
      minMinutes: integer,
      maxMinutes: integer.optional(),
      why: nameText.optional(),
    }),
  ),
  courses: listOf(looseMap({ id: nameText, dueMinute: wholeNumber, plateTasks: listOf(nameText) })),
  hotHold: waiting,
  freshness: waiting,
  calm: listOf(looseMap({ fromMinute: wholeNumber, toMinute: wholeNumber })),
  objective: looseMap({ order: listOf(oneOf(benchLevels, "level")) }),
});

/** A file of the format, as checked. */
export type KitchenBench = z.output<typeof kitchenBenchSchema>;

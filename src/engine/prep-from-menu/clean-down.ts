import { foodById } from "../larder/foods.ts";
import { addEstimates, type Estimate } from "../measure/estimate.ts";
import { type Minutes, minutes } from "../measure/units.ts";
import type { HazardKind } from "../model/food.ts";
import type { Segment } from "../model/prep.ts";

/** Raw foods after which board, knife and hands are cleaned before anything else is touched (FDA Food Code 4-602.11). */
const rawKinds: readonly HazardKind[] = [
  "raw-poultry",
  "raw-meat",
  "raw-mince",
  "raw-fish",
  "raw-shellfish",
  "raw-egg",
];

/** Wash, rinse, disinfect a board and hands. Common practice, no source. */
const cleaning: Estimate<Minutes> = { low: minutes(1.5), likely: minutes(2), high: minutes(4) };

/** True when one of these foods is raw in a way that soils the board. Eggs count only when they are opened by hand. */
export const soils = (foods: readonly (string | null)[]): boolean =>
  foods.some((id) => {
    const hazards = id === null ? [] : (foodById(id)?.hazards ?? []);
    return rawKinds.some((kind) => hazards.includes(kind));
  });

/** The same work with the cleaning down after its first stretch by hand, while what is cooking goes on alone. */
export const thenCleaned = (segments: readonly Segment[]): readonly Segment[] => {
  const first = segments.findIndex((segment) => segment.attention === "hands");
  if (first < 0) return [...segments, { minutes: cleaning, attention: "hands", station: "hands", uses: [] }];
  return segments.map((segment, k) =>
    k === first ? { ...segment, minutes: addEstimates(segment.minutes, cleaning) } : segment,
  );
};

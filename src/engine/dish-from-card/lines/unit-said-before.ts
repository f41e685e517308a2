import { measureKind } from "../../larder/measures.ts";
import type { Ingredient } from "../../model/dish.ts";
import type { Words } from "../../model/span.ts";
import type { Reading } from "./reading.ts";

const bareOf =
  /^(?:and |another )?(?:\d+|one|two|three|four|five|six|seven|eight|half a dozen) of (?!the\b)/i;

/** "A tablespoon of mustard, two of vinegar": the number counts the spoon that was said just before. */
export const withUnitBefore = (
  readings: readonly Reading[],
  line: Words,
  before: Ingredient | undefined,
  text: string,
): readonly Reading[] => {
  const [first, ...others] = readings;
  const [amount] = first?.amounts ?? [];
  const unit = before?.amounts[0]?.unit ?? null;
  if (first === undefined || amount?.unit !== "piece" || before === undefined || unit === null)
    return readings;
  const joint = text.slice(before.span.end, line.span.start);
  if (!/^[\s,;.]*(?:and\s+)?$/.test(joint) || !bareOf.test(line.text)) return readings;
  const kind = measureKind(unit);
  if (kind !== "volume" && kind !== "mass" && unit !== "handful") return readings;
  return [{ ...first, amounts: [{ ...amount, unit }, ...first.amounts.slice(1)] }, ...others];
};

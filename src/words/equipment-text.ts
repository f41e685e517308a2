import { regularPlural } from "#engine/index.ts";
import { countText, numberText } from "./number-text.ts";

/** Pans as the work asks for them: of a size or larger. */
const panId = /^([\d.]+) l (pan|frying pan)$/;
/** Trays of the gastronorm sizes of EN 631, by their own names. */
const gastronorm = /^GN /;
/** Of these the plan counts litres. */
const byLitres: ReadonlySet<string> = new Set(["fridge", "freezer"]);

/** What a piece of equipment is called: "pan of 8 l or more". */
export const equipmentName = (id: string, many: boolean): string => {
  const [, litres, noun = ""] = panId.exec(id) ?? [];
  if (litres !== undefined) return `${many ? regularPlural(noun) : noun} of ${litres} l or more`;
  if (gastronorm.test(id)) return `${many ? "containers" : "container"} ${id} or larger`;
  if (/ tin$/.test(id)) return many ? regularPlural(id) : id;
  return many && /^[a-z][a-z -]*[a-z]$/.test(id) ? regularPlural(id) : id;
};

/** "there are 5 pans of 8 l or more"; "the fridge has room for 400 l". */
export const thereIsText = (id: string, capacity: number): string => {
  if (byLitres.has(id)) return `the ${id} has room for ${numberText(capacity, 1)} l`;
  if (capacity === 0) return `there is no ${equipmentName(id, false)}`;
  return `there ${capacity === 1 ? "is" : "are"} ${countText(capacity, equipmentName(id, false), equipmentName(id, true))}`;
};

/** "2 more pans of 8 l or more"; "40 l more room in the fridge". */
export const moreText = (id: string, more: number): string =>
  byLitres.has(id)
    ? `${numberText(more, 1)} l more room in the ${id}`
    : `${numberText(more, 2)} more ${equipmentName(id, more !== 1)}`;

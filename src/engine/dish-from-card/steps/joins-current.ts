import type { Action } from "../../model/dish.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import type { Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import type { Fresh } from "./taken.ts";
import { asksNewVessel } from "./vessel-words.ts";
import { burners, mixes } from "./word-sets.ts";

const boiled =
  /\b(pasta|spaghetti|macaroni|penne|noodles?|linguine|tagliatelle|rice|potato(es)?|lentils|quinoa)\b/;

/** Whether food named for the first time goes into the vessel in hand. */
export const joinsCurrent = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen,
  place: { readonly part: string | null; readonly before: Action | null },
  current: Pool | null,
  fresh: readonly Fresh[],
): boolean => {
  const { technique } = chosen;
  if (
    current === null ||
    clause.meanwhile ||
    technique.miseEnPlace ||
    (place.part !== null && current.part !== place.part)
  )
    return false;
  if (burners.has(chosen.station)) {
    // "Heat a skillet, start cooking the pasta": what is boiled does not go into the hot fat.
    if (/^(cook|boil|simmer)$/.test(technique.id) && fresh.length > 0 && current.contents.size === 0) {
      if (fresh.every((f) => boiled.test(reader.ingredients[f.ingredient]?.name.toLowerCase() ?? "")))
        return false;
    }
    if (current.primed) return true;
    return place.before !== null && burners.has(place.before.station) && !asksNewVessel(reader, clause);
  }
  if (mixes.has(technique.id))
    return (
      place.before !== null &&
      /^(add|put|sift|mix|whisk|beat|cream|stir|weigh|blend|melt|make-well)$/.test(
        place.before.technique ?? "",
      )
    );
  if (chosen.station === "oven") return place.before !== null;
  return false;
};

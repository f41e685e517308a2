import type { Attention, Station, Technique } from "../../model/food.ts";
import type { Clause } from "./clauses.ts";
import { isOnHeat } from "./find-details.ts";
import { keptWrapped } from "./heat-words.ts";

const mixing = new Set(
  "mix whisk beat cream knead blend stir fold whip-cream whisk-whites run-machine make add use".split(" "),
);

// Short work of the hands that, when a length is stated, means that the food is left alone so long.
const leaving = new Set(
  "put cover arrange wrap press set-aside remove-from-heat take-out store fill uncover turn unmould layer spread pour drain top make add season sprinkle salt sieve squeeze".split(
    " ",
  ),
);

/** Where a technique is done and who must stand by, as the words of its clause say. */
export const stationOf = (
  clause: Clause,
  technique: Technique,
): { station: Station; attention: Attention } => {
  const words = clause.station;
  let station = technique.station;
  let attention = technique.attention;
  if (words !== null && words.station !== station) {
    if (words.mixer && mixing.has(technique.id)) {
      station = "machine";
      attention =
        technique.id === "add" || technique.id === "stir" || technique.id === "fold" ? "hands" : "mind";
    } else if (words.station === "machine" && !words.mixer) {
      if (
        mixing.has(technique.id) ||
        /^(chop|grate|crush|grind|mince|slice|shred|rub-in|melt|microwave|cook|heat|warm|reheat|simmer|stew|steam)$/.test(
          technique.id,
        )
      ) {
        station = "machine";
        attention = /^(cook|simmer|stew|steam|melt|heat|warm|reheat|microwave)$/.test(technique.id)
          ? "none"
          : "hands";
      }
    } else if (
      words.station === "oven" &&
      (technique.station === "burner" || /^(stand|cool|rest|prove|keep-warm|set-gel)$/.test(technique.id))
    ) {
      station = "oven";
      attention = "none";
    } else if (
      (words.station === "fridge" || words.station === "freezer") &&
      technique.attention === "none"
    ) {
      station = words.station;
    } else if (words.station === "grill" && technique.station !== "hands") {
      station = "grill";
    } else if (words.station === "burner" && /^(oven|grill)$/.test(technique.station)) {
      station = "burner";
      attention = "mind";
    }
  }
  // "Reheat at 180 for 20 minutes."
  if (technique.id === "reheat" && words === null && clause.settings.some((t) => t.celsius >= 110))
    return { station: "oven", attention: "none" };
  if (
    technique.id === "preheat" &&
    clause.tokens.some((t) => /^(grill|broiler)$/.test(t.text)) &&
    !clause.tokens.some((t) => t.text === "oven")
  )
    station = "grill";
  if (
    technique.id === "keep-warm" &&
    words === null &&
    clause.tokens.some((t) => /^(simmer|simmering|boiling)$/.test(t.text))
  )
    return { station: "burner", attention: "mind" };
  if (technique.id === "keep-warm" && words === null) {
    if (isOnHeat(clause.tokens)) station = "burner";
    else if (keptWrapped(clause)) station = "bench";
  }
  const longest = Math.max(
    0,
    ...clause.times.filter((t) => t.kind === "length" || t.kind === "more").map((t) => t.minutes.likely),
  );
  if (station === "hands" && longest >= 3 && leaving.has(technique.id)) {
    station = words?.station ?? "bench";
    attention = "none";
  }
  if (station === "hands" && clause.hit?.letting === true && !/^(pour|add|put)$/.test(technique.id))
    attention = "none";
  if (station === "burner" || station === "grill" || station === "fryer") {
    if (clause.minding !== null) attention = clause.minding;
    else if (clause.hit?.letting === true && attention === "hands") attention = "mind";
  }
  if (longest >= 480) attention = "none";
  return { station, attention };
};

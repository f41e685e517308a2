import { techniqueById } from "../../larder/techniques.ts";
import type { Action } from "../../model/dish.ts";
import type { Chosen } from "./choose-technique.ts";
import type { Clause } from "./clauses.ts";
import type { StepReader } from "./step-reader.ts";

// Words that may mean work in the oven, by what was said before.
const ovenWork = new Set("cook put add stand cool rest top cover".split(" "));

/**
 * "Turn down to 150 °C, pour the stock around and cook for 4 hours", "turn the oven off and leave it inside": what stands
 * in the oven goes on there.
 */
export const inOven = (
  reader: StepReader,
  clause: Clause,
  chosen: Chosen | null,
  before: Action | null,
): Chosen | null => {
  // "Drop the oven to 180 and give it another 50 minutes": the bird roasts on.
  const roasts = clause.hit?.verb === "give" && reader.kitchen.current?.did.has("roast") === true;
  const bake = techniqueById(roasts ? "roast" : "bake");
  if (chosen === null || bake === null) return chosen;
  const id = chosen.technique.id;
  if (!ovenWork.has(id)) return chosen;
  const standing = reader.kitchen.current?.inOven === true;
  // "Let it go for another three hours", "leave it be for ten": what cooks goes on cooking.
  const on = reader.kitchen.current?.onHeat === true;
  const cook = techniqueById("cook");
  if (
    id === "stand" &&
    clause.hit?.letting === true &&
    (standing || on) &&
    clause.station === null &&
    clause.times.some((t) => t.kind === "length" || t.kind === "more") &&
    clause.tokens.some(
      (t, i) => i > clause.verbAt && i < clause.verbTo + 1 && /^(go|do|carry)$/.test(t.text),
    ) &&
    cook !== null
  )
    return standing
      ? { ...chosen, technique: bake, station: "oven", attention: "none" }
      : { ...chosen, technique: cook, station: "burner", attention: "mind" };
  const turned = before?.technique === "adjust-heat" && before.celsius !== null;
  // "Down to 170 and leave it another hour."
  if (id === "stand" && turned && standing && clause.station === null && clause.times.length > 0)
    return { ...chosen, technique: bake, station: "oven", attention: "none" };
  // "Lower to 190 °C and finish in 45 minutes."
  if (id === "top")
    return clause.hit?.verb === "finish" && (turned || standing) && clause.times.length > 0
      ? { ...chosen, technique: bake, station: "oven", attention: "none" }
      : chosen;
  if (
    id === "cook" &&
    (turned ||
      (standing &&
        clause.heat === null &&
        clause.station === null &&
        (clause.times.length > 0 || clause.cue !== null || clause.core !== null)))
  )
    return { ...chosen, technique: bake, station: "oven", attention: "none" };
  // "Lid on, 25 minutes", with the oven hot and no fire beneath.
  if (id === "cover")
    return clause.times.some((t) => t.kind === "length" && t.minutes.likely >= 10) &&
      clause.station === null &&
      (standing || reader.preheat !== null) &&
      !on &&
      /\b(pot|casserole|tin|dish|tray|roaster)$/.test(reader.kitchen.current?.called ?? "")
      ? { ...chosen, technique: bake, station: "oven", attention: "none" }
      : chosen;
  // "In with the loaves, ten minutes": into the oven that was made hot, when nothing stands on the fire.
  if (
    id === "cook" &&
    clause.again &&
    clause.hit?.verb === "cook" &&
    clause.tokens[clause.verbAt]?.text === "in" &&
    clause.tokens[clause.verbAt + 1]?.text === "with" &&
    reader.preheat !== null &&
    reader.kitchen.current?.onHeat !== true &&
    clause.times.some((t) => t.minutes.likely >= 3)
  )
    return { ...chosen, technique: bake, station: "oven", attention: "none" };
  // "Into the fridge, and give it an hour": what goes on there goes on.
  if (
    clause.hit?.verb === "give" &&
    id === "cook" &&
    before !== null &&
    /^(bench|fridge|freezer)$/.test(before.station)
  ) {
    const same = techniqueById(before.technique ?? "");
    if (same !== null)
      return { ...chosen, technique: same, station: before.station, attention: before.attention };
  }
  // "In it goes for 12 minutes", "slide it in for 20": into the oven that was made hot.
  if (
    /^(put|add)$/.test(id) &&
    / in$|^(put|slide|pop|go|shove|bung|chuck|whack|stick|get)$/.test(clause.hit?.verb ?? "") &&
    clause.times.some((t) => t.kind === "length" && t.minutes.likely >= 3) &&
    clause.station === null &&
    clause.vessel === null &&
    clause.heat === null &&
    clause.mentions.length === 0 &&
    reader.preheat !== null &&
    reader.kitchen.current?.onHeat !== true &&
    clause.tokens.some(
      (t, i) =>
        (t.text === "in" && /^(|for|at|,|and|until|till)$/.test(clause.tokens[i + 1]?.text ?? "")) ||
        (i === clause.verbAt && t.text === "in"),
    )
  )
    return { ...chosen, technique: bake, station: "oven", attention: "none" };
  // "Put them in for the last 30 minutes" while something else roasts: beside it in the oven.
  if (
    /^(put|add)$/.test(id) &&
    clause.times.some((t) => t.kind === "last") &&
    clause.mentions.length === 0 &&
    /^put/.test(clause.hit?.verb ?? "")
  ) {
    if (reader.kitchen.pools.some((p) => p.inOven && p.left > 0.001))
      return { ...chosen, technique: bake, station: "oven", attention: "none" };
  }
  const inside = clause.tokens.some(
    (t, i) =>
      i > clause.verbAt &&
      (t.text === "inside" ||
        (t.text === "it" && clause.tokens[i - 1]?.text === "in") ||
        (t.text === "there" && clause.tokens[i - 1]?.text === "in")),
  );
  if (standing && inside && /^(stand|cool|rest)$/.test(id))
    return { ...chosen, station: "oven", attention: "none" };
  return chosen;
};

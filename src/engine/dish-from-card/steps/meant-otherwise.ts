import { techniqueById } from "../../larder/techniques.ts";
import type { Technique } from "../../model/food.ts";
import type { Clause } from "./clauses.ts";
import { isOnHeat } from "./find-details.ts";
import { has, hasLength, inBoilingWater, isWaterBath } from "./heat-words.ts";

const named = (id: string, otherwise: Technique): Technique => techniqueById(id) ?? otherwise;

/** What a verb means by the words around it, where that is not its usual meaning ("pull it at 52 °C" takes it out); null where it is. */
export const meantOtherwise = (clause: Clause, base: Technique): Technique | null => {
  const id = base.id;
  // "Get the grill on high."
  if (
    /^(use|put|run-machine|cook|make)$/.test(id) &&
    has(clause, /^(grill|broiler|barbecue)$/) &&
    has(clause, /^on$/) &&
    clause.mentions.length === 0 &&
    !has(clause, /^(under|it|them|pan|tray|rack)$/)
  )
    return named("preheat", base);
  // "Pat it all over the fat", "pat the crumbs on to the fish"
  if (
    id === "pat-dry" &&
    clause.hit?.verb === "pat" &&
    has(clause, /^(over|onto|on)$/) &&
    !has(clause, /^dry$/)
  )
    return named("press", base);
  // "Toss in the cinnamon sugar while warm"
  if (
    id === "add" &&
    clause.hit?.verb === "toss in" &&
    clause.tokens
      .slice(clause.verbTo, clause.verbTo + 4)
      .some((t) => /^(sugar|flour|crumbs|breadcrumbs|seasoning|dressing|marinade|cornflour)$/.test(t.text))
  )
    return named("toss", base);
  const verb = clause.hit?.verb ?? "";
  const behind = clause.tokens.slice(clause.verbTo, clause.verbTo + 4).map((t) => t.text);
  const lid = /^(lids?|foil|cling|clingfilm)$/;
  // "Take off the lid", "put on the lid", "put the lids on"
  if (id === "take-out" && behind.slice(0, 2).some((w) => lid.test(w))) return named("uncover", base);
  if (id === "put" && has(clause, /^lids?$/) && has(clause, /^on$/) && clause.mentions.length === 0)
    return named("cover", base);
  // "Turn the heat to low"
  if (id === "turn" && behind.slice(0, 2).some((w) => /^(heat|gas|flame|oven)$/.test(w)))
    return named("adjust-heat", base);
  // "Scrape out the seeds"
  if (id === "put" && verb === "scrape" && behind[0] === "out") return named("take-out", base);
  // "Scale it at 950": dough
  if (id === "fillet" && verb === "scale" && has(clause, /^(at|into|dough)$/)) return named("divide", base);
  // "Bind with an egg yolk"
  if (id === "truss" && verb === "bind" && has(clause, /^with$/) && !has(clause, /^string$/))
    return named("mix", base);
  // "Chuck the nuts."
  if (id === "add" && verb === "chuck" && !has(clause, /^(in|into|on|over|onto|to|with)$/))
    return named("discard", base);
  // "Take it off, lid on."
  if (id === "take-out" && verb === "take off" && /^(|,|and|then)$/.test(behind[0] ?? ""))
    return named("remove-from-heat", base);
  // "Keep it just under boiling point"
  if (id === "set-aside" && /^(keep|hold)/.test(verb) && has(clause, /^(simmer|simmering|boiling)$/))
    return named("keep-warm", base);
  // "Leave somewhere warm until doubled"
  if (id === "stand" && /\b(doubl|ris(e|en)|puffy|puffed)/.test(clause.cue ?? ""))
    return named("prove", base);
  // "Do the onions on a medium heat for 20 minutes"
  if (
    id === "make" &&
    /^do\b/.test(clause.hit?.verb ?? "") &&
    (clause.heat !== null || isOnHeat(clause.tokens))
  )
    return named("cook", base);
  // "Lid on, gentle heat, 12 minutes"
  if (id === "cover" && hasLength(clause) && (clause.heat !== null || isOnHeat(clause.tokens)))
    return named("cook", base);
  // "Rub the salt all in": no flour and no fat, so no pastry.
  if (
    id === "rub-in" &&
    clause.hit?.verb === "rub in" &&
    clause.mentions.length === 0 &&
    !has(clause, /^(flour|butter|lard|fat|margarine|fingertips|crumbs|breadcrumbs)$/)
  )
    return named("rub", base);
  // "Season the beef and flour it": no tin is greased.
  if (id === "grease" && clause.hit?.verb === "flour" && has(clause, /^(it|them|meat|pieces)$/))
    return named("sprinkle", base);
  // "Cover the mushrooms with boiling water"
  if (id === "top" && clause.hit?.verb === "cover with" && has(clause, /^water$/))
    return named("cover", base);
  // "Keep it just under a simmer, 90 or so", "keep it warm at 55"
  if (
    id === "set-aside" &&
    /^(keep|hold)/.test(clause.hit?.verb ?? "") &&
    clause.settings.some((t) => t.celsius >= 45 && t.celsius <= 98)
  )
    return named("keep-warm", base);
  // "Pull it off", "pull the pan off the heat"
  if (
    id === "shred" &&
    /^pull/.test(clause.hit?.verb ?? "") &&
    has(clause, /^off$/) &&
    !has(clause, /^bones?$/)
  )
    return named("remove-from-heat", base);
  // "Brush the tins with the rest of the butter"
  if (
    /^(brush|rub)$/.test(id) &&
    /^(tins?|tray|trays|moulds?|basins?|dish|dishes|ramekins|griddle|pan)$/.test(
      clause.tokens[clause.verbTo + 1]?.text ?? "",
    ) &&
    /^(the|your|a)$/.test(clause.tokens[clause.verbTo]?.text ?? "")
  )
    return named("grease", base);
  // "Pull it at 52 °C."
  if (
    id === "shred" &&
    clause.hit?.verb === "pull" &&
    (has(clause, /^(from|out)$/) ||
      (has(clause, /^(it|them|that)$/) &&
        (clause.core !== null || clause.settings.length > 0 || has(clause, /^when$/))))
  )
    return named("take-out", base);
  // "Have the chicken out of the fridge an hour before."
  if (
    /^(use|put)$/.test(id) &&
    /^(have|get)$/.test(clause.hit?.verb ?? "") &&
    has(clause, /^(fridge|refrigerator)$/)
  )
    if (has(clause, /^out$/)) return named("take-out", base);
  // "Seal the other side": on the fire.
  if (clause.hit?.verb === "seal" && id !== "sear" && has(clause, /^(sides?|meat|breasts?|steaks?|chops?)$/))
    return named("sear", base);
  if (id === "brown" && has(clause, /^(blowtorch|torch)$/)) return named("blowtorch", base);
  if (/^(put|cook|add|stand)$/.test(id) && isWaterBath(clause)) return named("sous-vide", base);
  if (/^(put|add|dip|blanch)$/.test(id) && inBoilingWater(clause)) {
    const most = Math.max(0, ...clause.times.filter((t) => t.kind === "length").map((t) => t.minutes.likely));
    if (most > 0 || /^(plunge|drop|dunk)/.test(clause.hit?.verb ?? ""))
      return named(most > 6 ? "boil" : "blanch", base);
  }
  if (id === "pat-dry" && clause.times.some((t) => t.kind === "length" && t.minutes.likely >= 60))
    return named("dehydrate", base);
  if (id === "dip" && clause.hit?.verb === "dredge" && clause.tokens[clause.verbTo]?.text === "in")
    return named("sprinkle", base);
  // "Turn to coat" turns the food.
  if (
    id === "adjust-heat" &&
    clause.hit?.verb === "turn to" &&
    !has(clause, /^(heat|oven|gas|low|medium|high|mark)$/) &&
    clause.settings.length === 0
  )
    return named("turn", base);
  // "Cover with fresh water"
  if (
    id === "top" &&
    clause.hit?.verb === "cover with" &&
    clause.mentions.length === 0 &&
    has(clause, /^water$/)
  )
    return named("cover", base);
  // "Cover with pleated foil"
  if (
    id === "top" &&
    clause.hit?.verb === "cover with" &&
    has(clause, /^(foil|lid|paper|film|clingfilm|cloth|towel|plate|parchment)$/)
  )
    return named("cover", base);
  return null;
};

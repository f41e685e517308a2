import { techniqueById } from "../../larder/techniques.ts";
import type { Attention, Station, Technique } from "../../model/food.ts";
import type { Clause } from "./clauses.ts";
import { isOnHeat } from "./find-details.ts";
import {
  has,
  hasLength,
  inColdWater,
  isWaterBath,
  keepsWarm,
  takenTo,
  toFigure,
  toSimmer,
} from "./heat-words.ts";
import { isPreheat } from "./is-preheat.ts";
import { meantOtherwise } from "./meant-otherwise.ts";
import { stationOf } from "./station-of.ts";

/** A technique with the station and attention that the words give it. */
export type Chosen = {
  readonly technique: Technique;
  readonly verb: string;
  readonly station: Station;
  readonly attention: Attention;
};

const placing = new Set(
  "put stand set-aside arrange cook heat warm return add pour turn store cover use layer top fill cool rest make spread set-gel brown melt grill discard toss repeat wrap press season sprinkle dehydrate take-out".split(
    " ",
  ),
);

const named = (id: string, otherwise: Technique): Technique => techniqueById(id) ?? otherwise;

/** What a clause means in a kitchen, its place words taken into account ("cook under the grill" is grilling). Null when it has no verb and no place. */
export const chooseTechnique = (clause: Clause, following: Clause | null): Chosen | null => {
  const base = clause.hit?.technique ?? placeTechnique(clause);
  if (base === null) return null;
  const technique = byPlace(clause, base, following);
  const usual = technique.verbs[0] ?? technique.id;
  // "And into the oven": no word says what is done there.
  const verb = clause.hit?.unsaid === true && technique !== base ? usual : (clause.hit?.verb ?? usual);
  const place = stationOf(clause, technique);
  return { technique, verb, station: place.station, attention: place.attention };
};

const placeTechnique = (clause: Clause): Technique | null => {
  switch (clause.station?.station) {
    case "oven":
      return hasLength(clause) || clause.cue !== null
        ? techniqueById("bake")
        : clause.settings.length > 0
          ? techniqueById("preheat")
          : null;
    case "fridge":
      return techniqueById("chill");
    case "freezer":
      return techniqueById("freeze");
    case "grill":
      return techniqueById("grill");
    default:
      // "It'll need 25 minutes at 180 °C." with nothing before it in the step.
      if (
        hasLength(clause) &&
        clause.settings.some((t) => t.celsius >= 110) &&
        !has(clause, /^(oil|thermometer|sugar|syrup)$/)
      )
        return techniqueById("bake");
      // "Ice bath, down to 5 inside the hour."
      if (/^(ice|iced)$/.test(clause.tokens[0]?.text ?? "") && has(clause, /^(bath|water)$/))
        return techniqueById("cool-quickly");
      // "Water bath at 52 for 25 minutes."
      if (isWaterBath(clause)) return techniqueById("sous-vide");
      // "1 cm oil, 175 °C."
      if (has(clause, /^(oil|fat|lard|dripping)$/) && clause.settings.some((t) => t.celsius >= 110))
        return techniqueById("heat");
      // "Oven at 220 °C", "you want the oven at 200".
      return clause.settings.some((t) => t.celsius >= 80) && has(clause, /^(oven|ovens|oven's)$/)
        ? techniqueById("preheat")
        : null;
  }
};

/** "In a hot pan", "dry in a skillet": and no pan that is only turned in the oven. */
const inDryPan = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      t.text === "dry" ||
      (/^(pan|skillet)$/.test(t.text) &&
        clause.tokens.slice(Math.max(0, i - 4), i).some((w) => /^(in|a)$/.test(w.text))),
  );

const fireWords = new Set("temperature heat oven flame".split(" "));

const byPlace = (clause: Clause, base: Technique, following: Clause | null): Technique => {
  const place = clause.station;
  const id = base.id;
  // "Reduce the heat to a simmer for 5 minutes" is simmering.
  if (clause.hit?.verb === "bring") {
    if (has(clause, /^boil(ing)?$/)) return named("bring-to-boil", base);
    if (has(clause, /^simmer(ing)?$/)) return named("bring-to-simmer", base);
    if (has(clause, /^(dough|ball)$/)) return named("mix", base);
  }
  const lower = toSimmer(clause);
  if (lower !== null) return named(lower, base);
  if (/^(put|add|cover|stand)$/.test(id) && inColdWater(clause)) return named("soak", base);
  const taken = takenTo(clause);
  if (taken !== null && id !== "adjust-heat") return named(taken, base);
  if (has(clause, /^(sterilise|sterilize)$/) && /^(put|stand|bake|warm|heat|arrange)$/.test(id))
    return named("sterilise", base);
  const steered = toFigure(clause, id);
  if (steered !== null) return named(steered, base);
  const other = meantOtherwise(clause, base);
  if (other !== null) return other;
  // "Put the chicken on a board to rest", "on a rack to cool".
  if (/^(put|take-out|arrange|spread|unmould|set-aside|stand)$/.test(id) && place === null) {
    const purpose = clause.tokens.findIndex(
      (t, i) =>
        i > clause.verbAt &&
        t.text === "to" &&
        /^(rest|cool|drain|dry|soak|prove|rise|marinate|infuse)$/.test(clause.tokens[i + 1]?.text ?? ""),
    );
    const then = clause.tokens[purpose + 1]?.text ?? "";
    if (purpose > 0 && (hasLength(clause) || then === "cool"))
      return named(then === "rise" ? "prove" : then === "dry" ? "pat-dry" : then, base);
  }
  // "Soften the gelatine in cold water" soaks it.
  if (
    id === "sweat" &&
    clause.hit?.verb === "soften" &&
    (has(clause, /^gelatine?$/) || (has(clause, /^water$/) && has(clause, /^(cold|warm|boiling|hot|iced)$/)))
  )
    return named("soak", base);
  // "Sit the lamb on top" puts it there; "let it sit" waits.
  if (
    id === "stand" &&
    clause.hit?.letting === false &&
    /^(sit|stand|lie)$/.test(clause.hit.verb) &&
    place === null &&
    !hasLength(clause) &&
    /^(the|your|a|each|it|them|this)$/.test(clause.tokens[clause.verbTo]?.text ?? "")
  )
    return named(has(clause, /^(plate|plates)$/) ? "plate" : "put", base);
  // "Reduce to 90 °C."
  if (
    id === "reduce" &&
    clause.settings.length > 0 &&
    clause.mentions.length === 0 &&
    !has(clause, /^(glaze|syrup|sauce|nothing|jam)$/)
  )
    return named("adjust-heat", base);
  // "Reduce the heat", "drop the temperature": the fire is what is turned down, not the sauce.
  const fire =
    clause.mentions.length > 0
      ? -1
      : clause.tokens.findIndex(
          (t, i) => i > clause.verbAt && i <= clause.verbAt + 3 && fireWords.has(t.text),
        );
  if (fire > 0) {
    if (id === "reduce") return named("adjust-heat", base);
    if (
      /^(drop|bring|take|put)/.test(clause.hit?.verb ?? "") &&
      clause.settings.length > 0 &&
      has(clause, /^(down|up|to)$/) &&
      !has(clause, /^(in|into)$/)
    )
      return hasLength(clause) ? named("bake", base) : named("adjust-heat", base);
  }
  // "Set a wok over a medium heat": it is made hot.
  if (
    id === "put" &&
    clause.mentions.length === 0 &&
    clause.vessel !== null &&
    isOnHeat(clause.tokens) &&
    !has(clause, /^(it|them|everything)$/) &&
    !hasLength(clause)
  )
    return named("heat", base);
  if (id === "adjust-heat" && hasLength(clause))
    return named(clause.settings.some((t) => t.celsius >= 110) ? "bake" : "simmer", base);
  if (
    /^(preheat|heat|put|adjust-heat|use|run-machine|warm|remove-from-heat|make)$/.test(id) &&
    isPreheat(clause, id)
  ) {
    if (has(clause, /^(oven|ovens)$/)) return named("preheat", base);
    if (id === "preheat")
      return has(clause, /^(grill|broiler|barbecue|griddle|iron|fryer)$/) ||
        (clause.settings.length > 0 && !has(clause, /^(oil|pan|fat|water)$/))
        ? base
        : named("heat", base);
  }
  if (place?.station === "oven" && placing.has(id) && keepsWarm(clause)) return named("keep-warm", base);
  // "That goes in at 190 for 20 minutes."
  if (
    place === null &&
    (/^(put|add|stand|start|cook|arrange)$/.test(id) ||
      (id === "cover" && has(clause, /^(oven|bain-marie|bain)$/))) &&
    hasLength(clause) &&
    clause.settings.some((t) => t.celsius >= 110) &&
    clause.heat === null &&
    (id === "cover" || !has(clause, /^(oil|fat|pan|fryer|deep|sugar|syrup|grill)$/))
  )
    return named("bake", base);
  if (place === null) {
    // "Leave it on the lowest heat for an hour": what stands on a flame cooks.
    if (
      /^(stand|put|set-aside|rest|return|cool|add)$/.test(id) &&
      (hasLength(clause) || (clause.cue !== null && id === "stand")) &&
      isOnHeat(clause.tokens)
    )
      return named("cook", base);
    if (
      /^(cook|brown)$/.test(id) &&
      clause.settings.some((t) => t.celsius >= 110) &&
      clause.heat === null &&
      !has(clause, /^(oil|fat|pan|fryer|deep)$/)
    )
      return named("bake", base);
    if (
      id === "fry" &&
      (clause.settings.some((t) => t.celsius >= 150) ||
        clause.tokens.some(
          (t, i) =>
            /^deep(ly)?$/.test(t.text) &&
            !/^(brown|golden|gold|colour|color|caramel|bronze|red)$/.test(clause.tokens[i + 1]?.text ?? ""),
        )) &&
      has(clause, /^(oil|fat|fryer|deep|lard)$/)
    )
      return named("deep-fry", base);
    if (
      id === "roast" &&
      inDryPan(clause) &&
      !has(clause, /^(roasting|oven)$/) &&
      clause.settings.length === 0
    )
      return named("toast", base);
    return base;
  }
  const repeats = following !== null && sameKind(following, place.station);
  switch (place.station) {
    case "oven":
      if (id === "toast") return named("toast-in-oven", base);
      if (id === "keep-warm" || id === "preheat") return base;
      if (clause.hit?.verb.startsWith("keep") === true) return named("keep-warm", base);
      if (/^(stand|cool|rest|prove)$/.test(id))
        return clause.settings.length > 0 && id === "stand" ? named("bake", base) : base;
      if (id === "pat-dry") return named("dehydrate", base);
      if (
        /^(cook|brown|heat|melt|return|simmer|fry)$/.test(id) ||
        (placing.has(id) && id !== "take-out" && !repeats)
      )
        return named("bake", base);
      return base;
    case "fridge":
      // "Soften 10 min in the fridge before service": an ice.
      if (
        /^(cool|put|store|use|cook|sweat)$/.test(id) ||
        (id !== "prove" &&
          id !== "rest" &&
          placing.has(id) &&
          (hasLength(clause) || clause.cue !== null || id === "stand" || id === "set-aside") &&
          !repeats)
      )
        return named("chill", base);
      return base;
    case "freezer":
      return placing.has(id) && !repeats ? named("freeze", base) : base;
    case "grill":
      return /^(cook|brown|put|heat|arrange|toast|return|finish|top|fry|stand|roast)$/.test(id) && !repeats
        ? named("grill", base)
        : id === "brush" && hasLength(clause)
          ? named("grill", base)
          : base;
    case "machine":
      return has(clause, /^microwave$/) && /^(cook|heat|put|warm|stand|reheat)$/.test(id)
        ? named("microwave", base)
        : base;
    case "ice-bath":
      return /^(put|add|drain|cool|stand|take-out|chill|press)$/.test(id)
        ? named("cool-quickly", base)
        : base;
    case "fryer":
      return /^(fry|cook|add|put)$/.test(id) ? named("deep-fry", base) : base;
    default:
      return base;
  }
};

const sameKind = (clause: Clause, station: Station): boolean => {
  const next = clause.hit?.technique;
  return (
    next !== undefined &&
    (next.station === station ||
      (station === "oven" && next.id === "cook") ||
      (station === "fridge" && /^(stand|rest|prove|marinate|set-gel|cool)$/.test(next.id)))
  );
};

import { techniqueById } from "../../larder/techniques.ts";
import { figureAt } from "./figure-at.ts";
import { numberAt } from "./number-at.ts";
import { isTimeWord } from "./read-length.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { word } from "./verb-reading.ts";
import { beings, joints, modals, prepositions } from "./word-sets.ts";

/** A place in a sentence at which talk may order something without a verb. */
type Place = {
  readonly tokens: readonly Token[];
  readonly i: number;
  readonly hits: readonly VerbHit[];
  readonly isFood: (i: number) => boolean;
};

const make = ({ i }: Place, id: string, verb: string, to: number): VerbHit | null => {
  const technique = techniqueById(id);
  return technique === null
    ? null
    : { at: i, to, technique, verb, letting: false, passive: false, unsaid: true };
};

const opened = ({ tokens, i }: Place): boolean =>
  i === 0 || joints.has(word(tokens, i - 1)) || word(tokens, i - 1) === "then";

const measures =
  /^(squeeze|pinch|splash|knob|grating|handful|drizzle|glug|slosh|dash|grind|scatter|spoonful|scraping)$/;

/** "…, squeeze of lemon, check the salt": what is measured by hand goes in. */
const handful = (place: Place): VerbHit | null => {
  const { tokens, i, hits, isFood } = place;
  return hits.length > 0 &&
    word(tokens, i - 1) === "," &&
    measures.test(word(tokens, i)) &&
    word(tokens, i + 1) === "of" &&
    (isFood(i + 2) || isFood(i + 3))
    ? make(place, "add", "add", i + 1)
    : null;
};

/** "…, then the ale": nothing but a food behind the joint, and the sentence or its clause ends there. */
const thenFood = (place: Place): VerbHit | null => {
  const { tokens, i, hits, isFood } = place;
  if (word(tokens, i) !== "then" || hits.length === 0 || !/^(the|your|some|half)$/.test(word(tokens, i + 1)))
    return null;
  for (let at = i + 2; at < i + 6; at += 1) {
    const here = word(tokens, at);
    if (beings.has(here) || modals.has(here) || prepositions.has(here) || isTimeWord(here)) return null;
    if (isFood(at) && /^(|,|and|[.;])$/.test(word(tokens, at + 1))) return make(place, "add", "add", i + 1);
  }
  return null;
};

/** "Back up to 85", "back up to a simmer on top": what stands on the fire is brought there. */
const backUp = (place: Place): VerbHit | null => {
  const { tokens, i } = place;
  if (
    word(tokens, i) !== "back" ||
    word(tokens, i + 1) !== "up" ||
    word(tokens, i + 2) !== "to" ||
    !opened(place)
  )
    return null;
  const to = tokens.slice(i + 3, i + 6).map((t) => t.text);
  if (to.some((w) => /^simmer(ing)?$/.test(w))) return make(place, "bring-to-simmer", "bring back up", i + 2);
  if (to.some((w) => /^boil(ing)?$/.test(w))) return make(place, "bring-to-boil", "bring back up", i + 2);
  const figure = figureAt(tokens, i + 3);
  return figure !== null && figure.value >= 30 && figure.value <= 105
    ? make(place, "heat", "heat", i + 2)
    : null;
};

/** "Down to 170 and leave it another hour": the oven is turned down, and the order that follows says the rest. */
const downTo = (place: Place): VerbHit | null => {
  const { tokens, i } = place;
  if (word(tokens, i + 1) !== "to" || !opened(place)) return null;
  const figure = figureAt(tokens, i + 2);
  return figure !== null && figure.value >= 100 && /^(and|,|then)$/.test(word(tokens, figure.next))
    ? make(place, "adjust-heat", "turn down", figure.next)
    : null;
};

/** "Cumin seeds in with the onions", "lime juice in at the end": a food, and that it goes in. */
const foodIn = (place: Place): VerbHit | null => {
  const { tokens, i, hits, isFood } = place;
  if (word(tokens, i) !== "in" || i === 0 || i > 6 || hits.length > 0) return null;
  const next = word(tokens, i + 1);
  const last =
    (next === "at" && word(tokens, i + 2) === "the" && word(tokens, i + 3) === "end") ||
    (/^(one|two|a|by)$/.test(next) &&
      tokens.slice(i + 2, i + 6).some((t) => /^(time|one|bit)$/.test(t.text)));
  if (!last && !(next === "with" && /^(the|your|it|them)$/.test(word(tokens, i + 2)))) return null;
  let food = false;
  for (let at = i - 1; at >= 0; at -= 1) {
    const here = word(tokens, at);
    if (prepositions.has(here) || beings.has(here) || modals.has(here)) return null;
    food ||= isFood(at);
  }
  return food ? make(place, "add", "add", i + 1) : null;
};

/** Nothing but foods and their articles stands before, and no order: "lamb out two hours before". */
const onlyFoodsBefore = ({ tokens, i, hits, isFood }: Place): boolean => {
  let food = false;
  for (let at = i - 1; at >= 0; at -= 1) {
    const here = word(tokens, at);
    if (here === "," && hits.length > 0) break;
    if (prepositions.has(here) || beings.has(here) || modals.has(here)) return false;
    food ||= isFood(at) || /^(both|all|everything)$/.test(here);
  }
  return food && i - (hits.at(-1)?.to ?? 0) <= 5;
};

const ends = /^(|,|[.;])$/;

/** "Pork back", "spring onions over", "lamb out two hours before", "both in": a food, and where it goes. */
const foodAndWhere = (place: Place): VerbHit | null => {
  const { tokens, i, hits } = place;
  const next = word(tokens, i + 1);
  switch (word(tokens, i)) {
    case "back":
      return ends.test(next) && hits.length === 0 && i <= 3 && onlyFoodsBefore(place)
        ? make(place, "put", "put back", i + 1)
        : null;
    case "over":
      return ends.test(next) && hits.length === 0 && i <= 4 && onlyFoodsBefore(place)
        ? make(place, "sprinkle", "sprinkle", i + 1)
        : null;
    case "in":
      return ends.test(next) && /^(both|all|everything)$/.test(word(tokens, i - 1)) && hits.length > 0
        ? make(place, "add", "add", i + 1)
        : null;
    default: {
      // "Out 10 minutes before you scoop it", "lamb out two hours before".
      const timed = numberAt(tokens, i + 1) !== null || /^(an?|of|onto)$/.test(next);
      const first = i === 0 || (hits.length === 0 && i <= 3 && onlyFoodsBefore(place));
      return timed && first ? make(place, "take-out", "take out", i + 1) : null;
    }
  }
};

/** "Get it back up to about 90." */
const getUpTo = (place: Place): VerbHit | null => {
  const { tokens, i } = place;
  if (!/^(it|them|that|everything)$/.test(word(tokens, i + 1))) return null;
  for (let at = i + 2; at < i + 7; at += 1) {
    const figure = figureAt(tokens, at);
    if (figure !== null)
      return figure.value >= 30 && figure.value <= 105 && word(tokens, i + 2) !== "in"
        ? make(place, "heat", "heat", i + 2)
        : null;
    if (!/^(back|up|down|to|about|around|roughly)$/.test(word(tokens, at))) return null;
  }
  return null;
};

/** "Get the oil good and hot", "get the stock hot in a pan". */
const getHot = (place: Place): VerbHit | null => {
  const { tokens, i, isFood } = place;
  if (word(tokens, i) !== "get") return null;
  let food = false;
  for (let at = i + 1; at < i + 12; at += 1) {
    const here = word(tokens, at);
    if (here === "" || /^[,;:]$/.test(here)) return null;
    food ||= isFood(at);
    if (here === "good" && word(tokens, at + 1) === "and" && word(tokens, at + 2) === "hot")
      return food ? make(place, "heat", "get hot", at + 3) : null;
  }
  return null;
};

/** "Off heat", "lids on": short for "off the heat" and "put the lids on". */
const shortened = (place: Place): VerbHit | null => {
  const { tokens, i } = place;
  if (!opened(place)) return null;
  const next = word(tokens, i + 1);
  if (word(tokens, i) === "off" && next === "heat")
    return make(place, "remove-from-heat", "take off the heat", i + 2);
  return word(tokens, i) === "lids" && next === "on" ? make(place, "cover", "cover", i + 2) : null;
};

const ovenIs =
  /^(on|at|to|up|wants|needs|be|is|set|low|hot|really|very|nice|and|,|about|around|say|as|it'll|will|go|goes|call|it|flat|out)$/;

/** "Oven on at 170, and line the trays": it is made hot; where a length stands too, something bakes in it. */
const ovenOn = (place: Place): VerbHit | null => {
  const { tokens, i, hits } = place;
  if (i > 2 || hits.length > 0 || tokens.some((t) => isTimeWord(t.text))) return null;
  if (!tokens.slice(0, i).every((t) => /^(now|the|your|so|right|first|meanwhile)$/.test(t.text))) return null;
  for (let at = i + 1; at < i + 9; at += 1) {
    if (figureAt(tokens, at) !== null) return make(place, "preheat", "preheat", i + 1);
    if (!ovenIs.test(word(tokens, at))) return null;
  }
  return null;
};

/** Orders of talk that have no verb, or only "get": a food and where it goes, the heat and where it goes. */
export const talkAt = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  isFood: (i: number) => boolean,
): VerbHit | null => {
  const place: Place = { tokens, i, hits, isFood };
  switch (word(tokens, i)) {
    case "then":
      return thenFood(place);
    case "back":
      return backUp(place) ?? foodAndWhere(place);
    case "down":
      return downTo(place);
    case "in":
      return foodIn(place) ?? foodAndWhere(place);
    case "over":
    case "out":
      return foodAndWhere(place);
    case "get":
      return getHot(place) ?? getUpTo(place);
    case "oven":
      return ovenOn(place);
    case "off":
    case "lids":
      return shortened(place);
    default:
      return handful(place);
  }
};

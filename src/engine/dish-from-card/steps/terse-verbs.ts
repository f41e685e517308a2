import { techniqueById, verbReadings } from "../../larder/techniques.ts";
import { numberAt } from "./number-at.ts";
import { isTimeWord } from "./read-length.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { word } from "./verb-reading.ts";
import { verblessAt } from "./verbless.ts";
import { beings, joints, nounVerbs, prepositions } from "./word-sets.ts";

const covers = new Set("lid foil cartouche film clingfilm paper beans".split(" "));

/** Orders of kitchen talk that have no verb in its usual place: "the tomatoes go in", "flour in", "hot pan, …", "give it a stir". */
export const terseAt = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  isFood: (i: number) => boolean,
): VerbHit | null => {
  const here = word(tokens, i);
  const make = (id: string, verb: string, to: number, letting: boolean): VerbHit | null => {
    const technique = techniqueById(id);
    return technique === null ? null : { at: i, to, technique, verb, letting, passive: false };
  };
  const foodBefore = (): boolean => {
    const from = hits.at(-1)?.to ?? 0;
    for (let at = i - 1; at >= Math.max(from, i - 4); at -= 1) {
      if (/^[,;:]$/.test(word(tokens, at)) || prepositions.has(word(tokens, at))) return false;
      if (isFood(at)) return true;
    }
    return false;
  };
  if (here === "go" && /^(in|into)$/.test(word(tokens, i + 1)) && foodBefore())
    return make("add", "go in", i + 2, false);
  // "Chips go back in for 3 minutes": in where they were, and cook there.
  if (
    /^(go|goes)$/.test(here) &&
    hits.length === 0 &&
    i >= 1 &&
    i <= 3 &&
    word(tokens, i + 1) === "back" &&
    /^(in|into)$/.test(word(tokens, i + 2)) &&
    tokens.some((t, k) => k > i && isTimeWord(t.text))
  )
    return make("cook", "go back in", i + 3, false);
  // "In go the lentils and the stock."
  if (
    here === "in" &&
    /^(go|goes)$/.test(word(tokens, i + 1)) &&
    ((i <= 2 && hits.length === 0) || word(tokens, i - 1) === "then")
  )
    if (isFood(i + 2) || isFood(i + 3) || isFood(i + 4)) return make("add", "go in", i + 2, false);
  // "…, then the garlic for another minute"
  if (here === "then" && hits.length > 0 && /^(the|your|half|some)$/.test(word(tokens, i + 1))) {
    let to = i + 2;
    while (to < i + 5 && !isFood(to) && tokens[to]?.kind === "word" && !prepositions.has(word(tokens, to)))
      to += 1;
    const until = tokens.slice(to, to + 14).findIndex((t) => /^[;:]$/.test(t.text) || isTimeWord(t.text));
    const clause = tokens.slice(to, until < 0 ? to : to + until);
    const ordered = clause.some(
      (t) => !nounVerbs.has(t.text) && verbReadings(t.text).some((r) => r.form === "base"),
    );
    if (until > 0 && isTimeWord(word(tokens, to + until)) && isFood(to) && !ordered)
      return make("cook", "add", i + 1, false);
  }
  // "Lid on, …", "foil off", "beans out"
  const opened = (): boolean => i === 0 || joints.has(word(tokens, i - 1));
  const closed = (): boolean =>
    tokens[i + 2] === undefined || joints.has(word(tokens, i + 2)) || word(tokens, i + 2) === "for";
  if (covers.has(here) && opened() && closed()) {
    const next = word(tokens, i + 1);
    if ((next === "on" || next === "over") && here !== "beans") return make("cover", "cover", i + 2, false);
    if (next === "off") return make("uncover", "uncover", i + 2, false);
    if (next === "out" && here === "beans") return make("take-out", "take out", i + 2, false);
  }
  // "Out." after the pan; "boil, skim, lid."
  if (here === "out" && i === 0 && /^(|,|then|and)$/.test(word(tokens, 1)))
    return make("take-out", "take out", 1, false);
  if (here === "lid" && hits.length > 0 && word(tokens, i - 1) === "," && word(tokens, i + 1) === "")
    return make("cover", "cover", i + 1, false);
  // "Lid on, oven 150 °C, 2 1/2 hours."
  if (
    here === "oven" &&
    hits.length > 0 &&
    joints.has(word(tokens, i - 1)) &&
    tokens[i + 1]?.kind === "number"
  )
    return make("bake", "bake", i + 1, false);
  // "In it goes for half an hour."
  if (here === "in" && i === 0 && /^(it|they|that|them|this|those)$/.test(word(tokens, 1)))
    if (/^(go|goes)$/.test(word(tokens, 2))) return make("put", "go in", 3, false);
  if (here === "in") {
    const next = word(tokens, i + 1);
    const last = hits.at(-1)?.to ?? 0;
    const comma = tokens.findLastIndex((t, k) => k < i && k >= last && t.text === ",");
    const opens =
      hits.length === 0
        ? startsTersely(tokens, i)
        : comma >= 0 && !tokens.slice(comma, i).some((t) => prepositions.has(t.text));
    if ((next === "" || next === "," || next === "then") && opens && foodBefore())
      return make("add", "add", i + 1, false);
  }
  if (
    i <= 3 &&
    hits.length === 0 &&
    /^(pan|wok|griddle|skillet)$/.test(here) &&
    tokens.slice(0, i).some((t) => t.text === "hot") &&
    /^[,:]$/.test(word(tokens, i + 1))
  )
    return make("fry", "fry", i + 1, false);
  // "Spring onions on top" behind a comma.
  if (
    here === "on" &&
    word(tokens, i + 1) === "top" &&
    word(tokens, i + 2) !== "of" &&
    (foodBefore() || /^(rest|mash|sauce|crumble|pastry|topping|lid)$/.test(word(tokens, i - 1)))
  ) {
    let at = i - 1;
    while (at > 0 && !/^[,;:]$/.test(word(tokens, at))) at -= 1;
    const last = hits.at(-1);
    // "Onions in the bottom of the tin, pork on top": put there with the others.
    if (last?.unsaid === true && last.verb === "put") return null;
    if (last === undefined ? startsTersely(tokens, i) : at >= last.to)
      return make("top", "top", i + 2, false);
  }
  const verbless = verblessAt(tokens, i, hits, isFood);
  if (verbless !== null) return verbless;
  const object = here === "give" ? objectOf(tokens, i + 1) : null;
  if (object !== null) {
    for (let at = object; at < object + 4; at += 1) {
      if (isTimeWord(word(tokens, at))) return make("cook", "give", i + 1, false);
      const noun = verbReadings(word(tokens, at)).find((r) => r.form === "base" && r.tail.length === 0);
      if (noun !== undefined && !/^(go|quarter|half)$/.test(word(tokens, at)))
        return make(noun.technique.id, noun.verb, at + 1, false);
    }
    const time = numberAt(tokens, object);
    if (time !== null || /^(another|a)$/.test(word(tokens, object)))
      return make("cook", "give", i + 1, false);
  }
  return null;
};

/** Behind the object of "give": "it", "the onions"; null when none stands there. */
const objectOf = (tokens: readonly Token[], i: number): number | null => {
  if (/^(it|them|that|this|everything|those|these)$/.test(word(tokens, i)))
    return tokens[i + 1]?.kind === "word" && /^(lot|all)$/.test(word(tokens, i + 1)) ? i + 2 : i + 1;
  if (!/^(the|your|each|both)$/.test(word(tokens, i))) return null;
  for (let at = i + 2; at < i + 6 && tokens[at] !== undefined; at += 1) {
    if (joints.has(word(tokens, at)) || prepositions.has(word(tokens, at))) return null;
    if (numberAt(tokens, at) !== null || /^(another|an?|about)$/.test(word(tokens, at))) return at;
  }
  return null;
};

/** No verb stands before in the sentence: "flour + yolk in". */
const startsTersely = (tokens: readonly Token[], i: number): boolean =>
  !tokens
    .slice(0, i)
    .some((t) => beings.has(t.text) || t.text === "put" || prepositions.has(t.text) || t.text === "with");

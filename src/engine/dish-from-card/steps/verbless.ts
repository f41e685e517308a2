import { techniqueById, verbReadings } from "../../larder/techniques.ts";
import { numberAt } from "./number-at.ts";
import { isTimeWord } from "./read-length.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { placeFollows, word } from "./verb-reading.ts";
import { beings, joints, modals, nounVerbs, prepositions } from "./word-sets.ts";

const joint = /^(,|and|then|;|:|but|)$/;
const places = /^(oven|fridge|refrigerator|freezer|bain|bain-marie|bath)$/;
const baths = /^(pan|pot|saucepan|casserole|tin|dish|tray|bowl|roaster)$/;
const pans = /^(pan|pot|saucepan|skillet|wok|casserole)$/;
const shapes = /^(terrine|basin|moulds?|ramekins|ring|rings|glasses|jars?|tins?)$/;

/** What is asked of a place in a sentence: its tokens, what was ordered before, and which words are foods. */
type Asked = {
  readonly tokens: readonly Token[];
  readonly i: number;
  readonly hits: readonly VerbHit[];
  readonly isFood: (i: number) => boolean;
};

const make = ({ i }: Asked, id: string, verb: string, to: number): VerbHit | null => {
  const technique = techniqueById(id);
  return technique === null
    ? null
    : { at: i, to, technique, verb, letting: false, passive: false, unsaid: true };
};

/** Foods and nothing else stand between the last joint of the sentence and a place: "onions and carrots (into …)". */
const foodsBefore = ({ tokens, i, hits, isFood }: Asked): boolean => {
  const from = hits.at(-1)?.to ?? 0;
  let seen = false;
  for (let at = i - 1; at >= from; at -= 1) {
    const here = word(tokens, at);
    // "The rest of the garlic", "half of the onions".
    const share =
      here === "of" && /^(rest|half|most|some|all|quarter|third|remainder)$/.test(word(tokens, at - 1));
    if (beings.has(here) || modals.has(here) || (prepositions.has(here) && !share)) return false;
    if (/^[;:]$/.test(here) || (here === "," && hits.length > 0)) break;
    if (isFood(at) || (/^(yolks?|whites?|rest|meat|mixture|sauce|reduction|lot)$/.test(here) && at < i))
      seen = true;
  }
  return seen;
};

const stated = (tokens: readonly Token[], from: number, words: RegExp, within: number): boolean => {
  for (let at = from; at < from + within; at += 1) {
    const here = word(tokens, at);
    if (here === "" || /^[;:]$/.test(here)) return false;
    if (words.test(here)) return true;
  }
  return false;
};

const hasLength = (tokens: readonly Token[], from: number): boolean => {
  for (let at = from; at < from + 18 && tokens[at] !== undefined; at += 1) {
    if (/^(then|;)$/.test(word(tokens, at))) return false;
    if (isTimeWord(word(tokens, at))) return true;
  }
  return false;
};

/** A sentence of foods alone: "lemon, salt, a touch of cayenne". */
const onlyFoods = ({ tokens, isFood }: Asked): boolean => {
  // "Cream butter and sugar 5 min": with a length it is an order.
  if (word(tokens, 0) === "cream" && hasLength(tokens, 0)) return false;
  const ordered = tokens.some(
    (t, k) => !isFood(k) && !nounVerbs.has(t.text) && verbReadings(t.text).some((r) => r.form === "base"),
  );
  if (ordered || !(isFood(0) || /^(an?|some|the)$/.test(word(tokens, 0)))) return false;
  let foods = 0;
  let open = false;
  let length = 0;
  for (let at = 0; at <= tokens.length; at += 1) {
    const here = word(tokens, at);
    if (here === "" || here === "," || here === "and" || here === ".") {
      if (length > 0 && !open) return false;
      if (open) foods += 1;
      [open, length] = [false, 0];
      continue;
    }
    length += 1;
    if (length > 5 || (prepositions.has(here) && here !== "of") || beings.has(here) || here === "for")
      return false;
    if (isFood(at)) open = true;
  }
  return foods >= 2;
};

const coats = /^(flour|eggs?|crumbs?|breadcrumbs|panko|then|and|,|\.|seasoned|beaten|the|in)$/;

const isCoating = (tokens: readonly Token[]): boolean =>
  tokens.every((t) => coats.test(t.text)) &&
  tokens.some((t) => /^(crumbs?|breadcrumbs|panko)$/.test(t.text)) &&
  tokens.some((t) => /^(eggs?|flour)$/.test(t.text));

const atStart = (asked: Asked): VerbHit | null => {
  const { tokens, i } = asked;
  const here = word(tokens, 0);
  // "Flour, egg, crumb."
  if (isCoating(tokens)) return make(asked, "bread", "bread", tokens.length);
  // "Ice bath, then fridge."
  if (here === "ice" && word(tokens, 1) === "bath") return make(asked, "cool-quickly", "cool quickly", 2);
  // "Oil to 180."
  if (
    /^(oil|fat|lard|dripping|water|syrup|sugar|milk|ghee)$/.test(here) &&
    /^(to|at|up)$/.test(word(tokens, 1)) &&
    (numberAt(tokens, 2) !== null || numberAt(tokens, 3) !== null) &&
    tokens.length <= 8
  )
    return make(asked, "heat", "heat", i);
  // "Milk, cream and vanilla to 85, off the heat."
  const to = tokens.findIndex((t) => t.text === "to");
  if (
    to > 0 &&
    to <= 10 &&
    (numberAt(tokens, to + 1)?.value ?? 0) >= 30 &&
    /^(|[°º,.;]|c|f|degrees?|and|then|off)$/.test(word(tokens, numberAt(tokens, to + 1)?.next ?? 0)) &&
    onlyFoods({ ...asked, tokens: tokens.slice(0, to) })
  )
    return make(asked, "heat", "heat", i);
  if (tokens.length <= 16 && onlyFoods(asked)) return make(asked, "add", "add", tokens.length);
  return null;
};

const throughSieve = (asked: Asked): VerbHit | null => {
  const { tokens, i, hits } = asked;
  const open = hits.length === 0 ? i <= 3 : /^(,|then|and|straight)$/.test(word(tokens, i - 1));
  return open && stated(tokens, i + 1, /^(sieve|chinois|strainer|tamis|muslin|mouli)$/, 4)
    ? make(asked, "sieve", "pass", i + 1)
    : null;
};

const into = (asked: Asked): VerbHit | null => {
  const { tokens, i, hits } = asked;
  const opened = i === 0 || (hits.length > 0 || i <= 2 ? joint.test(word(tokens, i - 1)) : false);
  const oven = stated(tokens, i + 1, places, 5);
  const vessel =
    placeFollows(tokens, i + 1) || stated(tokens, i + 1, pans, 4) || stated(tokens, i + 1, shapes, 3);
  if (!oven && !vessel) return null;
  // "Put the legs back and into the oven for an hour": the verb before says it.
  if (hits.length > 0 && /^(put|arrange|layer|pour|fill|stand)$/.test(hits.at(-1)?.technique.id ?? ""))
    return null;
  if (opened && (oven || i === 0)) return make(asked, oven ? "put" : "add", "go in", i + 1);
  if (hits.length > 0 ? !/^(,|;|then)$/.test(word(tokens, hits.at(-1)?.to ?? 0)) : false) return null;
  if (!foodsBefore(asked)) return null;
  const cooks = stated(tokens, i + 1, pans, 5) && hasLength(tokens, i + 1);
  return make(asked, cooks ? "fry" : "put", cooks ? "fry" : "put", i + 1);
};

const back = (asked: Asked): VerbHit | null => {
  const { tokens, i, hits } = asked;
  const next = word(tokens, i + 1);
  if (!/^(in|into|on|onto|to)$/.test(next)) return null;
  const opened = i === 0 || joint.test(word(tokens, i - 1));
  // "Back to the heat, bring to 90": the order behind says what is done there.
  if (
    next === "to" &&
    /^(heat|hob|stove|fire|flame)$/.test(word(tokens, i + 3)) &&
    /^(,|and)$/.test(word(tokens, i + 4)) &&
    verbReadings(word(tokens, i + 5)).some(
      (r) => r.form === "base" && /^(heat|bring|boil|simmer|cook|warm)/.test(r.verb),
    )
  )
    return null;
  const foods = !opened && hits.length === 0 && foodsBefore(asked);
  if (!opened && !foods) return null;
  const warms = stated(tokens, i + 1, /^(warm|heat|reheat)$/, 4) && stated(tokens, i + 2, /^through$/, 4);
  if (warms)
    return make(asked, "reheat", "reheat", tokens.findIndex((t, k) => k > i && t.text === "through") + 1);
  if (next === "to" && !stated(tokens, i + 2, /^(pan|pot|heat|oven|stove|hob|boil|simmer)$/, 3)) return null;
  if (stated(tokens, i + 2, /^boil$/, 2)) return make(asked, "bring-to-boil", "bring", i + 1);
  if (stated(tokens, i + 2, /^simmer$/, 2)) return make(asked, "bring-to-simmer", "bring", i + 1);
  return make(asked, "put", "put back", next === "in" && word(tokens, i + 2) !== "the" ? i + 2 : i + 1);
};

/** Orders that have no verb at all: "onions into the same pan", "garlic in for the last minute", "straight through a sieve". */
export const verblessAt = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  isFood: (i: number) => boolean,
): VerbHit | null => {
  const asked: Asked = { tokens, i, hits, isFood };
  const here = word(tokens, i);
  const next = word(tokens, i + 1);
  if (i === 0 && hits.length === 0) {
    const found = atStart(asked);
    if (found !== null) return found;
  }
  switch (here) {
    case "through":
      return throughSieve(asked);
    case "into":
      return into(asked);
    case "back":
      return back(asked);
    case "low":
    case "slow":
    case "cool":
    case "moderate":
    case "medium":
    case "hot":
      return hotOven(asked);
    case "in": {
      // "Cube it and in it goes with the stock."
      if (
        /^(it|they|that|those)$/.test(next) &&
        /^(go|goes)$/.test(word(tokens, i + 2)) &&
        (i === 0 || joints.has(word(tokens, i - 1)))
      )
        return make(asked, "add", "go in", i + 3);
      // "In with the potatoes", "and in with the rest".
      if (
        next === "with" &&
        (i === 0 || joints.has(word(tokens, i - 1))) &&
        /^(the|your|half|all|some)$/.test(word(tokens, i + 2))
      )
        return make(asked, "add", "go in", i + 2);
      // "Garlic in for the last minute", "cherries in for two minutes".
      if (
        next === "for" &&
        hits.length === 0 &&
        foodsBefore(asked) &&
        (numberAt(tokens, i + 2) !== null || /^(the|an?|another)$/.test(word(tokens, i + 2)))
      )
        return make(asked, "add", "add", i + 1);
      // "Yolks and the reduction in a bowl over barely simmering water."
      if (
        hits.length === 0 &&
        /^(an?|the|your)$/.test(next) &&
        (placeFollows(tokens, i + 2) ||
          (/^(bottom|base)$/.test(word(tokens, i + 2)) && stated(tokens, i + 3, baths, 5))) &&
        !stated(tokens, i + 2, /^(oven|fridge|freezer|batches)$/, 4) &&
        foodsBefore(asked) &&
        !tokens.some((t) => beings.has(t.text) || modals.has(t.text)) &&
        (/^(bottom|base)$/.test(word(tokens, i + 2)) || !laterOrder(asked))
      )
        return make(asked, "put", "put", i + 1);
      return null;
    }
    case "at":
      // "Parsley at the last minute."
      return next === "the" &&
        /^(last|end|very|finish)$/.test(word(tokens, i + 2)) &&
        hits.length === 0 &&
        foodsBefore(asked)
        ? make(asked, "add", "add", i + 1)
        : null;
    case "over":
      return next === "the" && word(tokens, i + 2) === "top" && hits.length === 0 && foodsBefore(asked)
        ? make(asked, "sprinkle", "sprinkle", i + 3)
        : null;
    case "up":
      if (next !== "to" || hits.length > 0 || !foodsBefore(asked)) return null;
      if (stated(tokens, i + 2, /^(simmer|simmering|under|below|scald|scalding)$/, 4))
        return make(asked, "bring-to-simmer", "bring up", i + 1);
      if (numberAt(tokens, i + 2) !== null && tokens.length <= i + 6)
        return make(asked, "heat", "bring up", i + 1);
      return stated(tokens, i + 2, /^(boil|boiling)$/, 4)
        ? make(asked, "bring-to-boil", "bring", i + 1)
        : null;
    case "off": {
      // "Off the heat, lid on, ten minutes."
      const lidded =
        /^(lid|foil|covered|film)$/.test(word(tokens, i + 4)) || numberAt(tokens, i + 4) !== null;
      return next === "the" &&
        word(tokens, i + 2) === "heat" &&
        word(tokens, i + 3) === "," &&
        lidded &&
        i === 0
        ? make(asked, "remove-from-heat", "take off the heat", i + 3)
        : null;
    }
    case "lid":
    case "foil":
      return next === "or" && word(tokens, i + 3) === "on" && (i === 0 || joints.has(word(tokens, i - 1)))
        ? make(asked, "cover", "cover", i + 4)
        : null;
    case "then":
      return thenOven(asked);
    case "start":
      return startIn(asked);
    default:
      return null;
  }
};

/** "Hot oven, 220, half an hour", "lid on, low oven at 150 for two hours": it bakes as long as is said there. */
const hotOven = (asked: Asked): VerbHit | null => {
  const { tokens, i } = asked;
  if (word(tokens, i + 1) !== "oven" || !(i === 0 || /^[,;]$/.test(word(tokens, i - 1)))) return null;
  for (let at = i + 2; at < i + 12; at += 1) {
    const here = word(tokens, at);
    if (here === "" || here === "then" || here === ";" || modals.has(here) || beings.has(here)) return null;
    if (isTimeWord(here)) return make(asked, "bake", "bake", i + 2);
    // What is ordered first has the length: "hot oven, roast for an hour".
    if (at > i + 2 && !nounVerbs.has(here) && verbReadings(here).some((r) => r.form === "base")) return null;
  }
  return null;
};

/** A base form that is no noun here stands behind a place. */
const laterOrder = ({ tokens, i }: Asked): boolean =>
  tokens.some(
    (t, k) =>
      k > i + 2 &&
      /^(and|then|,)$/.test(word(tokens, k - 1)) &&
      verbReadings(t.text).some((r) => r.form === "base"),
  );

/** "…, then 5 minutes in the oven at 200". */
const thenOven = (asked: Asked): VerbHit | null => {
  const { tokens, i, hits } = asked;
  if (hits.length === 0) return null;
  if (/^(fridge|freezer)$/.test(word(tokens, i + 1)))
    return make(
      asked,
      word(tokens, i + 1) === "fridge" ? "chill" : "freeze",
      word(tokens, i + 1) === "fridge" ? "chill" : "freeze",
      i + 2,
    );
  const figure = numberAt(tokens, i + 1);
  if (figure === null) return null;
  let at = figure.next;
  while (at < i + 7 && !isTimeWord(word(tokens, at))) at += 1;
  if (!isTimeWord(word(tokens, at)) || word(tokens, at + 1) !== "in") return null;
  return stated(tokens, at + 2, /^(oven|fridge|freezer)$/, 4) ? make(asked, "put", "put", i + 1) : null;
};

/** "Start the duck skin side down in a cold pan, 12 minutes": it fries from there on. */
const startIn = (asked: Asked): VerbHit | null => {
  const { tokens, i, hits } = asked;
  if (i !== 0 || hits.length > 0 || !hasLength(tokens, i)) return null;
  return stated(tokens, i + 1, pans, 14) && stated(tokens, i + 1, /^(side|skin|fat|cold)$/, 6)
    ? make(asked, "fry", "fry", i + 1)
    : null;
};

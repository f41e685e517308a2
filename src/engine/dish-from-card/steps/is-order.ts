import { verbReadings } from "../../larder/techniques.ts";
import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { before, isAdverb, negations, takesObject, word } from "./verb-reading.ts";
import {
  determiners,
  joints,
  modals,
  nounVerbs,
  planners,
  prepositions,
  subordinators,
  usuallyVerbs,
} from "./word-sets.ts";

/** Whether a base form at this place is an order. */
export const isOrder = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  cueFrom: number,
  isFood: (i: number) => boolean,
): boolean => {
  const at = before(tokens, i);
  const prev = word(tokens, at);
  const here = word(tokens, i);
  const noun = nounVerbs.has(here);
  const next = word(tokens, i + 1);
  if (prev === ")" && noun && !takesObject(tokens, i + 1, isFood)) return false;
  // "Second fry at 180 until golden": once more.
  if (
    /^(second|third|final)$/.test(prev) &&
    at === 0 &&
    /^(fry|prove|proof|rise|bake|fold|boil|cook|cooking)$/.test(here)
  )
    return true;
  if (here === "rest" && prev === "bench") return true;
  // ", roll in the sugar".
  if (here === "roll" && prev === "," && next === "in" && /^(the|your|a)$/.test(word(tokens, i + 2)))
    return true;
  // "Ice while still warm."
  if (at < 0 && /^(ice|glaze|salt|dress|oil|dust)$/.test(here) && /^(while|when|once)$/.test(next))
    return true;
  // "Roll into balls and chill."
  if (at < 0 && /^(roll|shape|form|press|cut)$/.test(here) && next === "into") return true;
  // "Mince back in", "mince into the dish, mash on top": the food, and no order.
  if (noun && at < 0 && /^(back|in|into)$/.test(next) && isFood(i)) return false;
  if (here === "mash" && /^(on|over)$/.test(next) && /^(top|the|it)$/.test(word(tokens, i + 2))) return false;
  if (here === "top" && /^(oven|shelf|rack|heat|element|half|deck)$/.test(next)) return false;
  if (here === "rest" && (next === "of" || (next === "on" && word(tokens, i + 2) === "top"))) return false;
  // "Season, grate of nutmeg": an amount, and no order.
  if (next === "of" && /^(grate|squeeze|grind|twist|scrape|shake|splash|dust|drizzle)$/.test(here))
    return false;
  // "Dough rest 30 min.", "final proof 60 min".
  if (
    /^(rest|proof|prove|bake|chill|cool)$/.test(here) &&
    i <= 2 &&
    hits.length === 0 &&
    isFigure(tokens, i + 1) &&
    !/^(to|the|a|an|after|before|for|until)$/.test(prev)
  )
    return true;
  if (prev === "handle" && !noun && cueFrom < 0) return true;
  if (here === "shape" && prev === "and" && /^(size|colour|color)$/.test(word(tokens, at - 1))) return false;
  if (here === "dry" && /^(ingredients?|goods|mix|mixture|ones|items|pan|frying|spices?|bits)$/.test(next))
    return false;
  if (here === "do" && /^(not|n't)$/.test(next)) return false;
  // "You should have about 2 litres" tells and orders nothing.
  if (here === "have" && /^(should|will|'ll|you'll|now|would|may|might)$/.test(prev)) return false;
  if (negations.has(word(tokens, i - 1)) || negations.has(prev)) return false;
  if (prev === "do" && word(tokens, at - 1) === "") return true;
  // "Plate: beets, fish", "mackerel: salt, 10 min, pat dry": a label before or behind the order.
  if (at < 0 && next === ":" && /^(plate|dress|garnish|finish|top|fill)$/.test(here)) return true;
  // "Bake the potatoes for an hour, skin, rice while hot": orders of one word, where nothing is being added.
  if (
    noun &&
    prev === "," &&
    /^(,|while|)$/.test(next) &&
    hits.length > 0 &&
    cueFrom < 0 &&
    !/^(add|put|mix|whisk|beat|stir|pour|season|serve|combine|cream|blend|toss|top|sprinkle|fold)$/.test(
      hits.at(-1)?.technique.id ?? "",
    ) &&
    !tokens.slice(hits.at(-1)?.to ?? 0, i).some((t) => /^(with|and|or|of)$/.test(t.text)) &&
    /^(skin|rice|roll|chop|slice|dice|mash|peel|core|seed|halve|quarter|season|cube|trim|toast|grill|roast|steam)$/.test(
      here,
    )
  )
    return true;
  // "and roast skin side up at 220 °C for 15 minutes": with a figure behind it, it is work.
  if (
    noun &&
    /^(and|then|,)$/.test(prev) &&
    cueFrom < 0 &&
    /^(roast|grill|boil|steam|toast|griddle|barbecue|stew|smoke|cook)$/.test(here) &&
    hasFigure(tokens, i)
  )
    return true;
  // "Butter to nut brown": the food, and no order.
  if (
    at < 0 &&
    /^(butter|oil|flour|cream|salt|pepper|water|juice|bread|sugar)$/.test(here) &&
    prepositions.has(next)
  )
    return false;
  // "Shred the cabbage, salt, squeeze over a lime": an order of one word.
  if (
    here === "salt" &&
    prev === "," &&
    next === "," &&
    hits.length > 0 &&
    !tokens.slice(0, i).some((t) => /^(with|add)$/.test(t.text))
  )
    return true;
  if (prev === ":" && (next === "," || next === "") && at <= 4) return true;
  // "Plate up", "crisp up the bacon": with its particle it is a verb.
  if (at < 0 && noun && /^(up|off|down|out)$/.test(next) && withParticle(here, next)) return true;
  if (at < 0 || (/^[:•)]$/.test(prev) && !noun)) {
    if (!noun || usuallyVerbs.has(here)) return !(noun && /^(is|are|should|will|with a lid|mix)$/.test(next));
    return takesObject(tokens, i + 1, isFood) || next === "and" || prepositions.has(next);
  }
  // "then griddle for 3 minutes": with a length, it is work and no tool.
  // ", turn down to 150 °C": with its particle it is a verb.
  if (
    joints.has(prev) &&
    cueFrom < 0 &&
    /^(down|up|off|out|aside|back|together|over|through)$/.test(next) &&
    withParticle(here, next)
  )
    return true;
  // "Beat the sugar and oil for 2 minutes": the food, and no tin that is oiled.
  const onlyFood = /^(oil|butter|flour|salt|bread|water|sugar|juice|ice|spice|pepper)$/.test(here);
  if (joints.has(prev) && next === "for" && cueFrom < 0 && !onlyFood && numberAt(tokens, i + 2) !== null)
    return true;
  const then = tokens.slice(at + 1, i).some((t) => t.text === "then");
  if (joints.has(prev) || (then && cueFrom < 0 && !determiners.has(prev))) {
    if (!noun) return true;
    // "butter, oil and salt": a noun in a list. "wash, peel and slice": verbs in a row.
    const last = hits.at(-1);
    const inRow =
      last !== undefined &&
      last.to >= before(tokens, at) + 1 &&
      (usuallyVerbs.has(here) || last.technique.miseEnPlace);
    if (inRow && cueFrom < 0) return true;
    const food = isFood(i);
    if (food && !determiners.has(next) && !/^(into|out|up|around)$/.test(next)) return false;
    const object = takesObject(tokens, i + 1, isFood);
    if (object && !(cueFrom >= 0 && !determiners.has(next))) return true;
    if (!usuallyVerbs.has(here) || cueFrom >= 0) return false;
    return (
      next === "" ||
      joints.has(next) ||
      prepositions.has(next) ||
      next === "until" ||
      next === "till" ||
      isAdverb(next)
    );
  }
  if (modals.has(prev) && (cueFrom < 0 || hits.length === 0)) {
    // "It should barely blip" says what is seen, and orders nothing.
    const subjectAt = before(tokens, at);
    const subject = word(tokens, subjectAt);
    // "The tins you bake them in": what is told of a noun.
    if (
      /^(we|you|i|they)$/.test(prev) &&
      subjectAt >= 0 &&
      !joints.has(subject) &&
      !modals.has(subject) &&
      !isAdverb(subject) &&
      hits.length === 0 &&
      determiners.has(word(tokens, 0))
    )
      return false;
    // "The dough will prove for 4 hours."
    if (cueFrom < 0 && /^(will|should)$/.test(prev) && goesOn.test(here) && hasFigure(tokens, i)) return true;
    if (
      cueFrom >= 0 ||
      (/^(should|will|may|might|can|could|would)$/.test(prev) && !/^(you|we|i|cooks?|)$/.test(subject))
    )
      return false;
    if (/^(we|you|i)$/.test(prev) && noun && !usuallyVerbs.has(here))
      return takesObject(tokens, i + 1, isFood);
    return true;
  }
  if (prev === "to") {
    const b = before(tokens, at);
    const planner = word(tokens, b);
    // "An hour before you want to cook it" says when.
    if (cueFrom >= 0 && /^(before|when|after|until|till)$/.test(word(tokens, cueFrom))) return false;
    // "Press it overnight if you want to cut it neat": a condition.
    if (hits.length > 0 && cueFrom >= 0 && word(tokens, cueFrom) === "if" && planner === "want") return false;
    // "Use a fork to crush them": the second verb is the work.
    if (hits.at(-1)?.verb === "use" || word(tokens, 0) === "use" || word(tokens, 0) === "using") return true;
    if (
      /^(able|need|have|want|try|needs|has)$/.test(planner) &&
      tokens.slice(Math.max(0, b - 4), b).some((t) => negations.has(t.text) || t.text.endsWith("n't"))
    )
      return false;
    return planners.has(planner) || planner === "is" || /^(it's|best|time|possible|able)$/.test(planner);
  }
  if (/^(start|go|help|come|let's|continue|either)$/.test(prev) && at === 0) return true;
  if (prev === "continue" && cueFrom < 0) return true;
  // "After that put the plums into a blender."
  if (prev === "that" && word(tokens, at - 1) === "after" && at <= 2 && (!noun || usuallyVerbs.has(here)))
    return true;
  // "Next day tip it out": a time of day opened the sentence.
  if (
    (!noun || usuallyVerbs.has(here)) &&
    hits.length === 0 &&
    i <= 5 &&
    /^(day|morning|evening|afternoon|night|serving|finish)$/.test(prev)
  )
    return true;
  // "In a large bowl combine …", "Once soft add …": the clause opened with something else.
  const start = clauseStart(tokens, i);
  const opening = word(tokens, start);
  // "After an hour and a half stir the barley in."
  if (
    /^(after|for)$/.test(opening) &&
    /^(half|quarter)$/.test(prev) &&
    hits.length === 0 &&
    takesObject(tokens, i + 1, isFood)
  )
    return true;
  if (prepositions.has(opening) || subordinators.has(opening)) {
    if (hits.some((h) => h.at >= start)) return false;
    // "For three and a half hours till they'll take a spoon": a cue, and no order.
    if (cueFrom > start && /^(till|until|'til|til)$/.test(word(tokens, cueFrom))) return false;
    if (
      determiners.has(prev) ||
      prepositions.has(prev) ||
      subordinators.has(prev) ||
      numberAt(tokens, at) !== null
    )
      return false;
    if (
      noun &&
      !/^(dressing|sauce|filling|batter|glaze|marinade|crumble|topping|pastry|icing|base|custard|syrup|salsa|bowl|pan|pot|saucepan|skillet|minutes|mins|hours|heat|dish|processor|mixer|blender|fork|whisk|tin|oven|fat|oil|butter|water|day|time)$/.test(
        prev,
      )
    )
      return false;
    if (noun && !takesObject(tokens, i + 1, isFood)) return false;
    return (
      (!noun && cueFrom < 0) ||
      takesObject(tokens, i + 1, isFood) ||
      joints.has(next) ||
      prepositions.has(next) ||
      next === "until" ||
      next === "together"
    );
  }
  return false;
};

// Work that food does by itself.
const goesOn =
  /^(prove|proof|rise|rest|cook|simmer|bake|chill|stand|sit|cool|marinate|ferment|braise|roast|steam|poach|soak|infuse|reduce)$/;

/** A length or a temperature stands within some words, before the next order. */
const hasFigure = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i + 1; at < i + 11; at += 1) {
    if (/^(and|then|;)$/.test(word(tokens, at))) return false;
    if (
      /^(mins?|minutes?|hours?|hrs?|°|c|degrees)$/.test(word(tokens, at)) &&
      numberAt(tokens, at - 1) !== null
    )
      return true;
  }
  return false;
};

/** A count of minutes or hours stands here. */
const isFigure = (tokens: readonly Token[], i: number): boolean => {
  const figure = numberAt(tokens, i);
  return figure !== null && /^(mins?|minutes?|hours?|hrs?|h|-|–|to)$/.test(word(tokens, figure.next));
};

const withParticle = (here: string, particle: string): boolean =>
  verbReadings(here).some((r) => r.form === "base" && r.tail[0] === particle);

const clauseStart = (tokens: readonly Token[], i: number): number => {
  let at = i;
  const halves = (k: number): boolean =>
    word(tokens, k) === "a" && /^(half|quarter)$/.test(word(tokens, k + 1));
  while (
    at > 0 &&
    !/^[,:()]$/.test(word(tokens, at - 1)) &&
    (!/^(and|then|but)$/.test(word(tokens, at - 1)) || halves(at))
  )
    at -= 1;
  while (at < i && isAdverb(word(tokens, at))) at += 1;
  return at;
};

import { worksOn } from "./dish-graph.ts";
import type { OrderCase } from "./order-case.ts";
import { moreOrderCases } from "./order-cases-more.ts";
import {
  cooks,
  hasMeat,
  heats,
  is,
  isLastOfSentence,
  namesFood,
  sentenceOf,
  wettingWork,
} from "./order-words.ts";

const meatWords = /\b(?:meat|chicken|bird|turkey|duck|beef|pork|lamb|joint|steak|roast|chops?|goose)\b/i;

const carves = is("carve");
const rests = is("rest");
const cooksMeat = is("roast bake grill fry sear barbecue braise");
const onlyBegins = is("toast boil simmer sweat");
const coolsOrTurnsOut = is("cool unmould");
const bakesOrRoasts = is("bake roast");
const drains = is("drain");
const boils = is("boil parboil blanch bring-to-boil");
const wetsOrHeats = is(wettingWork);
const proves = is("prove");
const kneads = is("knead mix");
const mixes = is("knead mix stir beat run-machine whisk add rub-in dissolve melt cream");
const bakes = is("bake");
const provesOrShapes = is("prove shape");
const shapes = is("shape");
const blends = is("blend");
const softens = is("simmer boil cook");
const cooksSoft = is("simmer boil cook roast steam poach bake");
const churns = is("churn");
const chills = is("chill cool cool-quickly");
const serves = is("serve");

const fries = is("fry deep-fry");
const freezes = is("freeze");
const blindBakes = is("blind-bake");
const heatsOven = is("preheat");
const coats = /\b(?:coat|dip|roll|dredge|bread|pan[eé])\w*\b.*\b(?:bread ?crumbs|crumbs|panko|batter)\b/i;
const soaksGelatine = /\b(?:soak|soften|bloom)\w*\b.*\bgelatine?\b|\bgelatine?\b.*\b(?:soak|soften|bloom)/i;

// A freeze that ends a dish, minutes. Common practice, no source.
const freezesHard = 60;

/** Every kind of work that is told by its order alone. */
export const orderCases: readonly OrderCase[] = [
  // Rested or carved before anything is cooked.
  {
    late: (p, dish) =>
      (carves(p) || (rests(p) && meatWords.test(p.step.text))) &&
      !/room temperature|marinat/i.test(p.step.text) &&
      hasMeat(dish),
    early: (p) => cooksMeat(p) && cooks(p),
    enough: (p) => cooks(p) && !onlyBegins(p),
  },
  // Cooled, turned out or iced before anything was hot.
  {
    late: (p) =>
      coolsOrTurnsOut(p) &&
      /\b(?:cool|turn (?:it |them )?out)\b/i.test(p.step.text) &&
      !/room temperature|board|surface|bench|worktop|fridge|water|cold place/i.test(p.step.text),
    early: (p) => bakesOrRoasts(p) && p.action.station === "oven",
    enough: heats,
  },
  // Drained before it was in any water.
  {
    late: (p) => drains(p) && !/rinse|\btins?\b|\bcan\b|soak|jar/i.test(p.step.text),
    early: (p) => boils(p),
    enough: (p) => wetsOrHeats(p) || /tin|can\b|jar|soak|rinse|wash|salt/i.test(p.step.text),
  },
  // The gelatine squeezed or dissolved before it was soaked.
  {
    where: /gelatin/i,
    sameStep: true,
    late: (p) => {
      const told = sentenceOf(p);
      return (
        /\b(?:squeez\w*|dissolv\w*|melt\w*|stir\w*|add)\b.*\bgelatine?\b/i.test(told) &&
        !soaksGelatine.test(told)
      );
    },
    early: (p) => soaksGelatine.test(sentenceOf(p)),
    enough: (p) => soaksGelatine.test(sentenceOf(p)),
  },
  // Carved, and only then rested.
  {
    sameStep: true,
    late: (p, dish) => carves(p) && hasMeat(dish),
    early: (p) => rests(p),
    enough: (p) => rests(p) || /\brest/i.test(sentenceOf(p)),
  },
  // Frozen hard, and only then churned.
  {
    sameStep: true,
    late: (p) =>
      freezes(p) &&
      (p.action.minutes?.likely ?? 0) >= freezesHard &&
      !/\b(?:bowl|canister|drum|tub of the)\b/i.test(sentenceOf(p)),
    early: (p) => churns(p),
    enough: (p) => churns(p),
  },
  // The oven is lit when the bake is over.
  {
    once: true,
    sameStep: true,
    late: (p) => bakesOrRoasts(p) && p.action.station === "oven",
    early: (p, late) =>
      heatsOven(p) &&
      (late.action.celsius === null || late.action.celsius === p.action.celsius) &&
      !/\b(?:grill|up|back|again|raise|increase)\b/i.test(sentenceOf(p)),
    enough: (p) => heatsOven(p) || (p.action.station === "oven" && p.action.celsius !== null),
  },
  // Baked before anything is made that could be baked.
  {
    late: (p, dish) =>
      bakes(p) && !namesFood(dish, sentenceOf(p)) && !dish.ingredients.some((i) => worksOn(dish, p, i.index)),
    early: (p, _, dish) => mixes(p) && dish.ingredients.filter((i) => worksOn(dish, p, i.index)).length >= 2,
    enough: (p, dish) => dish.ingredients.some((i) => worksOn(dish, p, i.index)),
  },
  // Fried before it is coated in crumbs.
  {
    where: /crumb|panko|batter/i,
    once: true,
    sameStep: true,
    late: (p) => fries(p),
    early: (p, late, dish) =>
      coats.test(sentenceOf(p)) &&
      // "Roll in the flour, dip and coat": what is coated has no name there, and is what was fried.
      (dish.ingredients.some((i) => worksOn(dish, p, i.index) && worksOn(dish, late, i.index)) ||
        /^(?:\d+\W+)?(?:then )?(?:coat|dip|roll|dredge)\b/i.test(sentenceOf(p).trim())),
    enough: (p) => coats.test(sentenceOf(p)),
  },
  // The case is filled before it is baked blind.
  {
    where: /\bblind\b/i,
    late: (p) =>
      /\b(?:in(?:to)?|fill) the (?:\w+ )?(?:case|shell|tart)\b/i.test(sentenceOf(p)) &&
      !blindBakes(p) &&
      !/\b(?:beans?|weights?|rice|paper|line)\b/i.test(sentenceOf(p)),
    early: (p) => blindBakes(p),
    enough: (p) => blindBakes(p),
  },
  // Left to rise before there was a dough; baked before it was shaped and proved.
  {
    late: (p) => proves(p) && !/\byeast\b/i.test(p.step.text),
    early: (p) => kneads(p),
    enough: (p) => mixes(p),
  },
  {
    late: (p, dish) => bakes(p) && dish.steps.some((s) => s.actions.some((a) => a.technique === "prove")),
    early: (p, late) => provesOrShapes(p) && p.step.part === late.step.part,
    enough: (p) => shapes(p) || (proves(p) && /tin|tray|loaf|rolls?|shape/i.test(p.step.text)),
  },
  // Blended before it was soft.
  {
    late: (p, dish) => blends(p) && /soup|pur[eé]e|velout[eé]|mash/i.test(dish.title),
    early: (p) => softens(p) && /soft|tender|until|till/i.test(p.step.text),
    enough: (p) => cooksSoft(p),
  },
  // Churned before it was cold.
  {
    late: (p) => churns(p),
    early: (p) => chills(p),
    enough: (p) => chills(p),
  },
  // Served, and only then cooked.
  {
    once: true,
    sameStep: true,
    late: (p) =>
      serves(p) &&
      !p.action.alongside &&
      isLastOfSentence(p) &&
      /\bserve\b/i.test(p.step.text) &&
      !/\bto serve\b|\bif\b|\boptional|leftover|\bcan be\b|\bplates?\b.*\bready\b/i.test(p.step.text),
    early: (p, late) =>
      cooks(p) &&
      p.step.part === late.step.part &&
      !/leftover|reheat|next day|freez|optional|\bif\b|alternativ|variation|meanwhile|another way|\bor\b/i.test(
        p.step.text,
      ),
    enough: () => false,
  },
  ...moreOrderCases,
];

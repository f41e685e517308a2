import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Dish } from "../../model/dish.ts";
import { stem } from "../steps/stem.ts";
import { type Placed, placedActions, worksOn } from "./dish-graph.ts";

/** Something that is done too early, and what must come before it. */
export type OutOfOrder = { readonly late: Placed; readonly early: Placed };

const is = (techniques: string): ((p: Placed) => boolean) => {
  const known = new Set(techniques.split(" "));
  return ({ action }) => known.has(action.technique ?? action.verb);
};

const heats = ({ action }: Placed): boolean =>
  action.technique !== "preheat" &&
  ((action.technique !== null && techniqueById(action.technique)?.kills === true) ||
    /^(?:burner|oven|grill|fryer)$/.test(action.station));

const cooks = (p: Placed): boolean =>
  heats(p) &&
  (p.action.minutes?.likely ?? 0) >= 3 &&
  !/^(?:keep-warm|warm|reheat|melt)$/.test(p.action.technique ?? "");

/** The sentence in which an action stands. */
const sentenceOf = ({ action, step }: Placed): string => {
  const at = Math.max(0, action.span.start - step.span.start);
  const from = Math.max(0, step.text.slice(0, at).search(/[^.!?]*$/));
  const length = step.text.slice(at).search(/[.!?](?:\s|$)/);
  return step.text.slice(from, length < 0 ? undefined : at + length);
};

const namesFood = (dish: Dish, sentence: string): boolean => {
  const words = new Set(
    sentence
      .toLowerCase()
      .split(/[^\p{L}]+/u)
      .map(stem),
  );
  return dish.ingredients.some((i) =>
    words.has(
      stem(
        i.name
          .toLowerCase()
          .split(/[^\p{L}]+/u)
          .at(-1) ?? "",
      ),
    ),
  );
};

const hasMeat = (dish: Dish): boolean =>
  dish.ingredients.some((i) =>
    (i.food === null ? [] : (foodById(i.food)?.hazards ?? [])).some((h) =>
      /^raw-(?:meat|poultry|mince)$/.test(h),
    ),
  );

const meatWords = /\b(?:meat|chicken|bird|turkey|duck|beef|pork|lamb|joint|steak|roast|chops?|goose)\b/i;

const carves = is("carve");
const rests = is("rest");
const cooksMeat = is("roast bake grill fry sear barbecue braise");
const onlyBegins = is("toast boil simmer sweat");
const coolsOrTurnsOut = is("cool unmould");
const bakesOrRoasts = is("bake roast");
const drains = is("drain");
const boils = is("boil parboil blanch bring-to-boil");
const wetsOrHeats = is(
  "boil parboil blanch simmer cook soak rinse wash fry deep-fry sear brown salt sprinkle stand marinate toss steam poach wilt defrost",
);
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

const isLastOfSentence = (p: Placed): boolean => {
  const next = p.step.actions[p.step.actions.indexOf(p.action) + 1];
  return (
    next === undefined ||
    /[.!?]\s/.test(
      p.step.text.slice(p.action.span.start - p.step.span.start, next.span.start - p.step.span.start),
    )
  );
};

type Case = {
  /** Only where it is done once; a card of several dishes serves each. */
  readonly once?: true;
  /** The two may stand in one step, in this order. */
  readonly sameStep?: true;
  /** What is done too early. */
  readonly late: (p: Placed, dish: Dish) => boolean;
  /** What must stand before it. */
  readonly early: (p: Placed, late: Placed, dish: Dish) => boolean;
  /** True when something before it is enough after all. */
  readonly enough: (p: Placed, dish: Dish) => boolean;
};

const cases: readonly Case[] = [
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
    once: true,
    sameStep: true,
    late: (p) => fries(p),
    early: (p, late, dish) =>
      coats.test(sentenceOf(p)) &&
      dish.ingredients.some((i) => worksOn(dish, p, i.index) && worksOn(dish, late, i.index)),
    enough: (p) => coats.test(sentenceOf(p)),
  },
  // The case is filled before it is baked blind.
  {
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
];

/** Everything that is done before what it needs, one a kind: told by the order of the steps alone. */
export const outOfOrder = (dish: Dish): readonly OutOfOrder[] => {
  const all = placedActions(dish);
  return cases.flatMap(({ late, early, enough, once, sameStep }) => {
    const at = all.findIndex((p) => p.step.phase === "method" && late(p, dish));
    const found = all[at];
    if (once && all.slice(at + 1).some((p) => p.action.technique === found?.action.technique)) return [];
    if (found === undefined || all.slice(0, at).some((p) => enough(p, dish))) return [];
    const must = all
      .slice(at + 1)
      .find((p) => p.step.phase === "method" && (sameStep || p.step !== found.step) && early(p, found, dish));
    return must === undefined ? [] : [{ late: found, early: must }];
  });
};

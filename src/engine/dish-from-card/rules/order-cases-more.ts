import type { Dish } from "../../model/dish.ts";
import { type Placed, placedActions, worksOn } from "./dish-graph.ts";
import type { OrderCase } from "./order-case.ts";
import { cooks, hasMeat, is, isLastOfSentence, sentenceOf, wettingWork } from "./order-words.ts";

const drains = is("drain mash");
const boils = is("boil parboil blanch bring-to-boil simmer cook");
const strains = is("sieve strain");
const simmers = is("simmer boil make-stock stew");
const wets = is(
  `${wettingWork} bring-to-boil bring-to-simmer infuse heat warm melt make-stock stew braise roast bake`,
);
const serves = is("serve");
const finishes = is("whip-cream whip whisk drain mash blend fold knead fill glaze coat");
const chills = is("chill cool freeze set");
const pours = is("pour fill sieve strain divide tip ladle put add spoon line press layer");
const bakesCake = is("bake cook roast");
const marinates = is("marinate");
const soaks = is("soak");
const shapes = is("roll-out roll shape");
const makesDough = is("rub-in knead");
const mixes = is("knead mix stir beat run-machine whisk add rub-in cream");
const cooksMeat = is("roast bake grill fry barbecue griddle stew braise simmer");

/** The lines of the list on which both work. */
const shared = (dish: Dish, a: Placed, b: Placed) =>
  dish.ingredients.filter((i) => worksOn(dish, a, i.index) && worksOn(dish, b, i.index));

/** True when something was done before to what this works on. */
const wasBefore = (dish: Dish, p: Placed, did: (q: Placed) => boolean): boolean =>
  placedActions(dish)
    .slice(0, p.at)
    .some((q) => did(q) && shared(dish, q, p).length > 0);

const inLiquor =
  /\b(?:tins?|tinned|cans?|canned|jars?|tofu|mozzarella|capers?|olives?|feta|cheese|yogh?urt|ricotta|gherkins?|pickled|brine|soaked|frozen|salted)\b/i;
// What is boiled in water to be drained; tomatoes and cucumbers are drained raw.
const boiledInWater =
  /potato|pasta|spaghetti|macaroni|penne|noodle|lasagn|tagliatelle|gnocchi|rice|bean|lentil|chickpea|pea\b|pea-|barley|quinoa|bulgur|carrot|cauliflower|broccoli|cabbage|kale|greens|parsnip|swede|turnip|sprout|egg\b|leek|squash|pumpkin|sweetcorn/i;
const icing = /\b(?:icing|frosting|buttercream|whipped cream|ganache)\b/i;
const icesIt =
  /\b(?:ice|frost|fill|sandwich|spread|decorate|pipe|pile)\b[^.]*\b(?:the icing|frosting|buttercream|whipped cream|ganache)\b|\bwhip\w*\b[^.]*\bcream\b[^.]*\b(?:fill|sandwich|pile)\b/i;
const setsIn = /\b(?:set|firm)\b/i;
const intoGlasses = /\b(?:glass(?:es)?|moulds?|ramekins?|jug|cups|pots|bowls|dishes|tins?|sieve|strain)\b/i;
const setIn =
  /\b(?:glass(?:es)?|moulds?|ramekins?|cups|pots|bowls?|dish(?:es)?|tins?|cases?|base|tub|tray)\b/i;
const besides = /\b(?:sauce|coulis|syrup|caramel|serve|serving|over|decorate|unmould)\b/i;
// A set that takes so long is the dish itself, minutes. Common practice, no source.
const longSet = 60;
// What is boiled for less gives up nothing to strain off, minutes. Common practice, no source.
const longSimmer = 10;
// A soak that is no rinse, minutes. Common practice, no source.
const longSoak = 120;
const otherwise =
  /leftover|reheat|next day|freez|optional|\bif\b|alternativ|variation|meanwhile|another way|\bor\b/i;

/** What its sentence tells before it. */
const beforeIt = (p: Placed): string => sentenceOf(p).split(/\b(?:drain|mash)/i)[0] ?? "";

/** The words of an action up to the next order behind a comma. */
const pouring = (dish: Dish, p: Placed): string =>
  dish.text.slice(p.action.span.start, p.action.span.end).split(/,|\band\b/)[0] ?? "";

/** A long rest in the cold that makes a dish firm. */
const setsCold = (p: Placed): boolean =>
  chills(p) && setsIn.test(sentenceOf(p)) && (p.action.minutes?.likely ?? 0) >= longSet;

const dissolvesGelatine = (p: Placed): boolean =>
  /\b(?:squeez\w*|dissolv\w*|melt\w*|stir\w*|whisk\w*|add)\b.*\bgelatine?\b/i.test(sentenceOf(p));

/** Kinds of work in the wrong order that are told by the food they are done to. */
export const moreOrderCases: readonly OrderCase[] = [
  // Drained or mashed, and only then boiled.
  {
    sameStep: true,
    late: (p, dish) =>
      drains(p) && !/rinse|soak|press|salt|\bwater\b/i.test(beforeIt(p)) && !wasBefore(dish, p, wets),
    early: (p, late, dish) => {
      const both = shared(dish, p, late);
      return (
        boils(p) &&
        both.some((i) => boiledInWater.test(`${i.name} ${i.food ?? ""}`)) &&
        !both.some((i) => inLiquor.test(i.text))
      );
    },
    enough: () => false,
  },
  // Strained, and only then simmered.
  {
    sameStep: true,
    late: (p, dish) =>
      strains(p) &&
      /^strain/.test(p.action.verb) &&
      !wasBefore(dish, p, (q) => wets(q) || q.action.minutes?.assumed === false),
    early: (p, late, dish) =>
      simmers(p) &&
      (p.action.minutes?.likely ?? 0) >= longSimmer &&
      shared(dish, p, late).filter((i) => !inLiquor.test(i.text)).length >= 2,
    enough: () => false,
  },
  // Set, and only then poured into what it sets in.
  {
    sameStep: true,
    late: setsCold,
    early: (p, late, dish) =>
      /^(?:fill|sieve|pour|strain|divide)$/.test(p.action.technique ?? p.action.verb) &&
      intoGlasses.test(sentenceOf(p)) &&
      !besides.test(pouring(dish, p)) &&
      shared(dish, p, late).length >= 2,
    enough: (p) => pours(p) && setIn.test(sentenceOf(p)),
  },
  // Set before the gelatine is in it.
  {
    where: /gelatin/i,
    sameStep: true,
    late: setsCold,
    early: dissolvesGelatine,
    enough: dissolvesGelatine,
  },
  // Iced or filled with cream before it is baked.
  {
    where: /\b(?:icing|frosting|buttercream|ganache|cream)\b/i,
    late: (p) => icesIt.test(sentenceOf(p)) && !/\b(?:later|ready to|aside|chill)\b/i.test(sentenceOf(p)),
    early: (p) => bakesCake(p) && p.action.station === "oven" && !icing.test(sentenceOf(p)),
    enough: (p) => bakesCake(p) && p.action.station === "oven",
  },
  // Cooked, and only then marinated.
  {
    where: /marinat/i,
    sameStep: true,
    late: (p, dish) => hasMeat(dish) && cooksMeat(p) && cooks(p),
    early: (p, late, dish) =>
      marinates(p) &&
      shared(dish, p, late).some(
        (i) => i.food !== null && /chicken|beef|pork|lamb|turkey|duck|steak/.test(i.food),
      ),
    enough: marinates,
  },
  // Boiled, and only then left to soak.
  {
    where: /\bsoak/i,
    sameStep: true,
    late: (p) => simmers(p),
    early: (p, late, dish) =>
      soaks(p) &&
      (p.action.minutes?.likely ?? 0) >= longSoak &&
      shared(dish, p, late).some((i) => /bean|chickpea|pea\b|lentil/i.test(i.name)),
    enough: soaks,
  },
  // Rolled out before there is a dough.
  {
    where: /flour/i,
    sameStep: true,
    late: (p, dish) =>
      shapes(p) &&
      /\b(?:dough|pastry)\b/i.test(sentenceOf(p)) &&
      !dish.ingredients.some((i) => /dough|pastry/i.test(i.name)) &&
      !/\bpuff|\bsheets?\b|ready|bought/i.test(sentenceOf(p)),
    early: (p, late, dish) =>
      makesDough(p) &&
      p.step.part === late.step.part &&
      dish.ingredients.filter((i) => worksOn(dish, p, i.index)).length >= 2,
    enough: mixes,
  },
  // Baked blind before the case is lined.
  {
    where: /\bblind\b/i,
    sameStep: true,
    late: is("blind-bake"),
    early: is("roll-out line"),
    enough: is("roll-out line press"),
  },
  // Baked, and only then rolled out and cut.
  {
    where: /flour/i,
    once: true,
    sameStep: true,
    late: (p) => bakesCake(p) && p.action.station === "oven",
    early: (p, late, dish) =>
      is("roll-out shape stamp")(p) &&
      p.step.part === late.step.part &&
      !/leftover|remain|trimmings|scraps|rest\b|icing|marzipan|fondant|while|warm|hot/i.test(sentenceOf(p)) &&
      shared(dish, p, late).some((i) => /flour/.test(i.food ?? "")),
    enough: (p) => is("roll-out shape stamp press line fill spoon divide")(p),
  },
  // Served, and only then finished: cream whipped, pasta drained, potatoes mashed.
  {
    once: true,
    sameStep: true,
    late: (p) =>
      serves(p) &&
      !p.action.alongside &&
      isLastOfSentence(p) &&
      /\bserve\b/i.test(sentenceOf(p)) &&
      !/\bto serve\b|\bif\b|\boptional|leftover|\bcan be\b|\bbefore\b|\bready\b/i.test(sentenceOf(p)),
    early: (p, late, dish) =>
      finishes(p) &&
      p.step.part === late.step.part &&
      !otherwise.test(sentenceOf(p)) &&
      shared(dish, p, p).length > 0,
    enough: () => false,
  },
];

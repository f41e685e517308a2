import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Dish } from "../../model/dish.ts";
import { type Placed, placedActions } from "./dish-graph.ts";

/** Something that is done too early, and what must come before it. */
export type OutOfOrder = { readonly late: Placed; readonly early: Placed };

const is =
  (pattern: RegExp) =>
  ({ action }: Placed): boolean =>
    pattern.test(action.technique ?? action.verb);

const heats = ({ action }: Placed): boolean =>
  action.technique !== "preheat" &&
  ((action.technique !== null && techniqueById(action.technique)?.kills === true) ||
    /^(?:burner|oven|grill|fryer)$/.test(action.station));

const cooks = (p: Placed): boolean =>
  heats(p) &&
  (p.action.minutes?.likely ?? 0) >= 3 &&
  !/^(?:keep-warm|warm|reheat|melt)$/.test(p.action.technique ?? "");

const hasMeat = (dish: Dish): boolean =>
  dish.ingredients.some((i) =>
    (i.food === null ? [] : (foodById(i.food)?.hazards ?? [])).some((h) =>
      /^raw-(?:meat|poultry|mince)$/.test(h),
    ),
  );

const meatWords = /\b(?:meat|chicken|bird|turkey|duck|beef|pork|lamb|joint|steak|roast|chops?|goose)\b/i;

type Case = {
  /** Only where it is done once; a card of several dishes serves each. */
  readonly once?: true;
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
      hasMeat(dish) &&
      (is(/^carve$/)(p) || (is(/^rest$/)(p) && meatWords.test(p.step.text))) &&
      !/room temperature|marinat/i.test(p.step.text),
    early: (p) => is(/^(?:roast|bake|grill|fry|sear|barbecue|braise)$/)(p) && cooks(p),
    enough: (p) => cooks(p) && !is(/^(?:toast|boil|simmer|sweat)$/)(p),
  },
  // Cooled, turned out or iced before anything was hot.
  {
    late: (p) =>
      is(/^(?:cool|unmould)$/)(p) &&
      /\b(?:cool|turn (?:it |them )?out)\b/i.test(p.step.text) &&
      !/room temperature|board|surface|bench|worktop|fridge|water|cold place/i.test(p.step.text),
    early: (p) => is(/^(?:bake|roast)$/)(p) && p.action.station === "oven",
    enough: heats,
  },
  // Drained before it was in any water.
  {
    late: (p) => is(/^drain$/)(p) && !/rinse|\btins?\b|\bcan\b|soak|jar/i.test(p.step.text),
    early: (p) => is(/^(?:boil|parboil|blanch|bring-to-boil)$/)(p),
    enough: (p) =>
      is(
        /^(?:boil|parboil|blanch|simmer|cook|soak|rinse|wash|fry|deep-fry|sear|brown|salt|sprinkle|stand|marinate|toss|steam|poach|wilt|defrost)$/,
      )(p) || /tin|can\b|jar|soak|rinse|wash|salt/i.test(p.step.text),
  },
  // The gelatine squeezed before it was soaked.
  {
    late: (p) => /squeez\w*[^.]*gelatine?/i.test(p.step.text),
    early: (p) =>
      /(?:soak|soften|bloom)\w*[^.]*gelatine?|gelatine?[^.]*(?:soak|soften|bloom)/i.test(p.step.text),
    enough: (p) =>
      /(?:soak|soften|bloom)\w*[^.]*gelatine?|gelatine?[^.]*(?:soak|soften|bloom)/i.test(p.step.text),
  },
  // Left to rise before there was a dough; baked before it was shaped and proved.
  {
    late: (p) => is(/^prove$/)(p) && !/\byeast\b/i.test(p.step.text),
    early: (p) => is(/^(?:knead|mix)$/)(p),
    enough: (p) => is(/^(?:knead|mix|stir|beat|run-machine|whisk|add|rub-in|dissolve)$/)(p),
  },
  {
    late: (p, dish) =>
      is(/^bake$/)(p) && dish.steps.some((s) => s.actions.some((a) => a.technique === "prove")),
    early: (p, late) => is(/^(?:prove|shape)$/)(p) && p.step.part === late.step.part,
    enough: (p) => is(/^shape$/)(p) || (is(/^prove$/)(p) && /tin|tray|loaf|rolls?|shape/i.test(p.step.text)),
  },
  // Blended before it was soft.
  {
    late: (p, dish) => is(/^blend$/)(p) && /soup|pur[eé]e|velout[eé]|mash/i.test(dish.title),
    early: (p) => is(/^(?:simmer|boil|cook)$/)(p) && /soft|tender|until|till/i.test(p.step.text),
    enough: (p) => is(/^(?:simmer|boil|cook|roast|steam|poach|bake)$/)(p),
  },
  // Churned before it was cold.
  {
    late: (p) => is(/^churn$/)(p),
    early: (p) => is(/^(?:chill|cool|cool-quickly)$/)(p),
    enough: (p) => is(/^(?:chill|cool|cool-quickly)$/)(p),
  },
  // Served, and only then cooked.
  {
    once: true,
    late: (p) =>
      is(/^serve$/)(p) &&
      !p.action.alongside &&
      p.step.actions.at(-1) === p.action &&
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
  return cases.flatMap(({ late, early, enough, once }) => {
    const at = all.findIndex((p) => p.step.phase === "method" && late(p, dish));
    const found = all[at];
    if (once && all.slice(at + 1).some((p) => p.action.technique === found?.action.technique)) return [];
    if (found === undefined || all.slice(0, at).some((p) => enough(p, dish))) return [];
    const must = all
      .slice(at + 1)
      .find((p) => p.step.phase === "method" && p.step !== found.step && early(p, found, dish));
    return must === undefined ? [] : [{ late: found, early: must }];
  });
};

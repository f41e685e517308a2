import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Dish } from "../../model/dish.ts";
import { stem } from "../steps/stem.ts";
import type { Placed } from "./dish-graph.ts";

/** Work that wets food, or makes it give water: what is drained was in one of these. */
export const wettingWork =
  "boil parboil blanch simmer cook soak rinse wash fry deep-fry sear brown salt sprinkle stand marinate toss steam poach wilt defrost";

/** True for the techniques of a list, spaces between. */
export const is = (techniques: string): ((p: Placed) => boolean) => {
  const known = new Set(techniques.split(" "));
  return ({ action }) => known.has(action.technique ?? action.verb);
};

/** Cooks, or works on a hot place. */
export const heats = ({ action }: Placed): boolean =>
  action.technique !== "preheat" &&
  ((action.technique !== null && techniqueById(action.technique)?.kills === true) ||
    /^(?:burner|oven|grill|fryer)$/.test(action.station));

/** Heats for long enough to cook something. */
export const cooks = (p: Placed): boolean =>
  heats(p) &&
  (p.action.minutes?.likely ?? 0) >= 3 &&
  !/^(?:keep-warm|warm|reheat|melt)$/.test(p.action.technique ?? "");

/** The sentence in which an action stands. */
export const sentenceOf = ({ action, step }: Placed): string => {
  const at = Math.max(0, action.span.start - step.span.start);
  const from = Math.max(0, step.text.slice(0, at).search(/[^.!?]*$/));
  const length = step.text.slice(at).search(/[.!?](?:\s|$)/);
  return step.text.slice(from, length < 0 ? undefined : at + length);
};

/** True when a sentence names a line of the list by its last word. */
export const namesFood = (dish: Dish, sentence: string): boolean => {
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

/** Raw meat, poultry or mince is on the list. */
export const hasMeat = (dish: Dish): boolean =>
  dish.ingredients.some((i) =>
    (i.food === null ? [] : (foodById(i.food)?.hazards ?? [])).some((h) =>
      /^raw-(?:meat|poultry|mince)$/.test(h),
    ),
  );

/** Nothing else is ordered behind it in its sentence. */
export const isLastOfSentence = (p: Placed): boolean => {
  const next = p.step.actions[p.step.actions.indexOf(p.action) + 1];
  return (
    next === undefined ||
    /[.!?]\s/.test(
      p.step.text.slice(p.action.span.start - p.step.span.start, next.span.start - p.step.span.start),
    )
  );
};

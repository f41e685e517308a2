import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish, Step } from "../../model/dish.ts";
import { type Placed, placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayBefore } from "./sentence-edits.ts";

/** Baking that is over in this time is much changed by an oven that is still warming, minutes. Common practice, no source. */
const shortBake = 60;

/** The oven is used for a short bake at a stated heat, and no words have it heated first. */
export const ovenNotPreheated: Rule = {
  code: "oven-not-preheated",
  check: (dish) => {
    const all = placedActions(dish);
    const heats = all.some(({ action }) => action.technique === "preheat");
    const first = dish.steps[0];
    const turned = heats ? undefined : turnedFirst(all);
    if (turned !== undefined && first !== undefined) return [say(dish, turned, first)];
    if (
      heats ||
      /pre-?heat|heat (?:the|your|an) oven|oven (?:on|to|at)\b|\b(?:hot|moderate|slow) oven/i.test(dish.text)
    )
      return [];
    const bake = all.find(
      ({ action }) =>
        action.station === "oven" &&
        action.celsius !== null &&
        action.minutes !== null &&
        action.minutes.likely <= shortBake,
    );
    return bake === undefined || bake.action.celsius === null ? [] : [say(dish, bake, first ?? bake.step)];
  },
};

const say = (dish: Dish, { action }: Placed, first: Step): Finding => {
  const celsius = Math.round(action.celsius ?? 0);
  return makeFinding(
    "oven-not-preheated",
    dish.source,
    action.span,
    { celsius },
    { fixes: [{ kind: "add-step", edits: [sayBefore(first, `Heat the oven to ${celsius}°C.`)] }] },
  );
};

/** An oven that is turned down before anything has set it. */
const turnedFirst = (all: readonly Placed[]): Placed | undefined => {
  const set = all.find(
    ({ action }) =>
      action.celsius !== null && (action.station === "oven" || action.technique === "adjust-heat"),
  );
  return set?.action.technique === "adjust-heat" &&
    /\boven\b.*\bdown\b|\bdown\b.*\boven\b/i.test(set.step.text)
    ? set
    : undefined;
};

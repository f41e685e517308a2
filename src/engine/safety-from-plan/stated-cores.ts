import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { coreHold } from "../larder/limits.ts";
import { minutes } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";
import type { HazardKind } from "../model/food.ts";
import type { LimitCase } from "../model/limit.ts";
import type { Region } from "../model/sitting.ts";

// A card that gives a core temperature says that it is reached, not how long it stays; so long is taken as given.
const reachedFor = minutes(2);

/** Core temperatures on the card, for an ingredient and what is made of it, that the region's limits do not list or hold for long. */
export const coreFindings = (
  dish: Dish,
  ingredient: number,
  hazard: HazardKind,
  region: Region,
): readonly Finding[] => {
  return statedCores(dish, ingredient).flatMap((action) => {
    if (action.core === null || !isCoreHazard(hazard)) return [];
    const core = action.core;
    const held = casesOf(hazard, action).map((c) => coreHold(region, c, core));
    const most = held.reduce(
      (best, hold) => (best === null || (hold !== null && hold < best) ? hold : best),
      null,
    );
    if (most !== null && most <= reachedFor) return [];
    return [
      makeFinding("limit-broken", dish.source, action.span, {
        title: dish.title,
        quantity: "core",
        celsius: core,
        most,
        minutes: null,
      }),
    ];
  });
};

/** The actions that say how hot the middle gets of an ingredient, or of what is made of it. */
export const statedCores = (dish: Dish, ingredient: number): readonly Action[] => {
  const actions = dish.steps.flatMap((step) => step.actions);
  return actions.filter((action) => action.core !== null && takes(action, ingredient, actions, new Set()));
};

const isCoreHazard = (hazard: HazardKind): boolean =>
  ["raw-poultry", "raw-mince", "raw-meat", "raw-egg", "raw-fish", "raw-shellfish", "liver"].includes(hazard);

// A whole joint in the oven has a table of its own in the US.
const casesOf = (hazard: HazardKind, action: Action): readonly LimitCase[] =>
  hazard === "raw-meat" && action.station === "oven" ? [hazard, "whole-roast"] : [hazard];

const takes = (
  action: Action,
  ingredient: number,
  actions: readonly Action[],
  seen: Set<string>,
): boolean => {
  if (seen.has(action.id)) return false;
  seen.add(action.id);
  return action.uses.some((use) => {
    if (use.ingredient === ingredient) return true;
    const maker = use.product === null ? undefined : actions.find((a) => a.id === use.product);
    return maker !== undefined && takes(maker, ingredient, actions, seen);
  });
};

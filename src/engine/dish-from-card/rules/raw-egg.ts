import { makeFinding } from "../../findings/make-finding.ts";
import { isCookedThrough } from "../../larder/cooked-through.ts";
import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Action, Dish } from "../../model/dish.ts";
import type { HazardKind } from "../../model/food.ts";
import { actionsOn, isBase, type Placed, placedActions, toldFrom } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const readyMade =
  /pasteuri[sz]ed|\bbought|shop|\bready[- ]made|\bfrom a jar\b|(?:hard|soft)?-?boiled|poached|cooked/i;

// Heat told in the sentence that takes the egg up, as a state of the pot and not as an action of its own.
const inHeat =
  /\b(?:boil(?:s|ing)|simmer(?:s|ing)|bubbling|hot (?:pan|oil|soup|broth|stock|fat)|over (?:hot|simmering) water|coagulate|start cooking|(?:whites?|tops?) (?:of the eggs )?(?:are|is|start to|starts to)? ?set)\b/i;

const isToldCooked = (dish: Dish, first: Placed): boolean => {
  const told = toldFrom(dish, first);
  return inHeat.test(/^[^.!?]*/.exec(told)?.[0] ?? "");
};

// Steps within which flour is still meant for the egg before it.
const near = 2;

/** Egg that meets flour or mince before some heat: batters, doughs and mixtures are cooked, whatever the words call them. */
const isInDough = (dish: Dish, touched: readonly Placed[]): boolean => {
  const all = placedActions(dish);
  const hazardsOf = (k: number | null): readonly HazardKind[] => {
    const food = k === null ? null : (dish.ingredients[k]?.food ?? null);
    return food === null ? [] : (foodById(food)?.hazards ?? []);
  };
  const binders = dish.ingredients.filter((o) =>
    hazardsOf(o.index).some((h) => h === "raw-flour" || h === "raw-mince"),
  );
  const first = touched[0]?.step.index ?? 0;
  const joined = touched.find((p) => binders.some((o) => actionsOn(dish, o.index).includes(p)));
  // "Beat in the eggs. Sift the flour over and fold it in": the next steps, with nothing in them that is fried by itself.
  const follows = all.find(
    ({ action, step }) =>
      step.index >= first &&
      step.index <= first + near &&
      action.uses.some((u) => binders.some((o) => o.index === u.ingredient)) &&
      !action.uses.some((u) =>
        hazardsOf(u.ingredient).some((h) => /^raw-(?:fish|meat|poultry|shellfish)$/.test(h)),
      ),
  );
  const met = follows ?? joined;
  if (met === undefined) return false;
  return (
    /\bbrown(?:s|ed|ing)?\b|\bgolden\b/i.test(toldFrom(dish, met)) ||
    all.slice(all.indexOf(met)).some(({ action }) => heats(action))
  );
};

const heats = (action: Action): boolean =>
  action.technique !== "preheat" &&
  ((action.technique !== null && techniqueById(action.technique)?.kills === true) ||
    /^(?:oven|grill|fryer)$/.test(action.station));

/**
 * Egg, yolk or white that no step cooks through. Eggs carry Salmonella; who may be served them raw depends on the eggs
 * and the guests, and local codes decide. Source: FSA advice of 11 October 2017 on Lion eggs; FDA Food Code 3-401.11.
 */
export const rawEgg: Rule = {
  code: "raw-egg",
  check: (dish) =>
    dish.ingredients.flatMap((i) => {
      const food = i.food === null ? null : foodById(i.food);
      if (food === null || !food.hazards.includes("raw-egg") || i.optional) return [];
      const touched = actionsOn(dish, i.index);
      const first = touched[0];
      if (first === undefined || readyMade.test(i.text) || isCookedThrough(dish, i.index)) return [];
      if (isBase(dish) || isToldCooked(dish, first) || isInDough(dish, touched)) return [];
      return [
        makeFinding(
          "raw-egg",
          dish.source,
          i.span,
          { name: i.name },
          {
            related: [{ source: dish.source, span: first.action.span }],
            fixes: [
              {
                kind: "add-caution",
                edits: [replaceWords({ start: i.nameSpan.start, end: i.nameSpan.start }, "pasteurised ")],
              },
            ],
          },
        ),
      ];
    }),
};

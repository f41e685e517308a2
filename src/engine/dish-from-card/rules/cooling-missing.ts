import { makeFinding } from "../../findings/make-finding.ts";
import { foodById } from "../../larder/foods.ts";
import { techniqueById } from "../../larder/techniques.ts";
import type { Dish, Ingredient } from "../../model/dish.ts";
import { actionsOn, type Placed } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { sayBefore } from "./sentence-edits.ts";

const kept = new Set(["chill", "store", "freeze"]);
const quick =
  /\b(quick(ly)?|fast|rapid(ly)?|shallow|iced?|cold (water|running)|within|as soon as|at once|straight away|blast|spread (it|them)? ?out|under cold)\b/i;

// "Serve at once" speaks of no cooling.
const served = /\bserve[^.;]*/gi;

// FSA: into the fridge within one to two hours; 90 minutes is widely advised.
const soon = 90;

/**
 * Cooked rice, stock or meat that goes into the cold, or stands, with no word on how fast it is cooled. Source: FSA
 * cooling advice; FDA Food Code 3-501.14 (57 to 21 °C in 2 hours, to 5 °C in 6).
 */
export const coolingMissing: Rule = {
  code: "cooling-missing",
  check: (dish) => {
    const said = new Set<string>();
    return dish.ingredients.flatMap((i) => {
      if (!growsBack(i)) return [];
      const found = slowCooling(dish, i);
      if (found === null || said.has(found.action.id)) return [];
      said.add(found.action.id);
      return [
        makeFinding(
          "cooling-missing",
          dish.source,
          found.action.span,
          { name: i.name },
          {
            related: [{ source: dish.source, span: i.span }],
            fixes: [
              {
                kind: "add-caution",
                edits: [sayBefore(found.step, "Spread it out and cool it within 90 minutes.")],
              },
            ],
          },
        ),
      ];
    });
  },
};

const growsBack = (i: Ingredient): boolean => {
  const food = i.food === null ? null : foodById(i.food);
  if (food === null) return false;
  return (
    food.hazards.some((h) =>
      /^(cooked-rice|raw-poultry|raw-meat|raw-mince|raw-fish|raw-shellfish)$/.test(h),
    ) ||
    /\b(stock|broth|bones?)\b/.test(food.name) ||
    (food.shelf === "dry" &&
      /\brice\b/.test(food.name) &&
      !/\b(flour|vinegar|noodles?|paper|wine)\b/.test(food.name))
  );
};

/** The first action that keeps the cooked food without its having been cooled fast; null when there is none. */
const slowCooling = (dish: Dish, i: Ingredient): Placed | null => {
  let hot = false;
  let heated = -1;
  let cooledWell = false;
  for (const placed of actionsOn(dish, i.index)) {
    const { action, step } = placed;
    const technique = action.technique === null ? null : techniqueById(action.technique);
    if (technique === null) continue;
    // "Meanwhile, wrap and chill": another line of work; the food that is hot from an earlier step is not meant.
    if (hot && step.index > heated && isAside(placed) && action.uses.every((u) => u.implied)) continue;
    if (technique.kills || (action.station === "oven" && technique.id !== "keep-warm")) {
      hot = true;
      heated = step.index;
      cooledWell = false;
      continue;
    }
    if (!hot) continue;
    const length = action.minutes !== null && !action.minutes.assumed ? action.minutes.likely : null;
    if (technique.id === "cool-quickly" || quick.test(step.text.replace(served, ""))) cooledWell = true;
    if (technique.id === "cool" && length !== null && length <= soon) cooledWell = true;
    if (
      !cooledWell &&
      (kept.has(technique.id) ||
        action.station === "fridge" ||
        (technique.station === "bench" && (length ?? 0) > 2 * 60))
    )
      return placed;
  }
  return null;
};

const isAside = ({ action, step }: Placed): boolean =>
  step.actions.slice(0, step.actions.indexOf(action) + 1).some((a) => a.alongside);

import type { Action, Dish, Step } from "../../model/dish.ts";

/** An action, the step it stands in, and its place among all actions of the method. */
export type Placed = { readonly action: Action; readonly step: Step; readonly at: number };

type Graph = {
  readonly placed: readonly Placed[];
  /** Which ingredients each action works on, one bit a line of the list, thirty-two a number. */
  readonly touched: readonly Uint32Array[];
};

const graphs = new WeakMap<Dish, Graph>();

// Rules ask for it once an ingredient.
const graphOf = (dish: Dish): Graph => {
  const known = graphs.get(dish);
  if (known !== undefined) return known;
  const placed: Placed[] = [];
  const touched: Uint32Array[] = [];
  const size = Math.ceil(dish.ingredients.length / 32);
  const byId = new Map<string, Uint32Array>();
  for (const step of dish.steps)
    for (const action of step.actions) {
      const bits = new Uint32Array(size);
      for (const { ingredient, product } of action.uses) {
        if (ingredient !== null) {
          const at = ingredient >> 5;
          bits[at] = (bits[at] ?? 0) | (1 << (ingredient & 31));
        }
        // What an earlier action made carries all that it was made of.
        const made = product === null ? undefined : byId.get(product);
        if (made !== undefined) for (let k = 0; k < size; k += 1) bits[k] = (bits[k] ?? 0) | (made[k] ?? 0);
      }
      placed.push({ action, step, at: placed.length });
      touched.push(bits);
      byId.set(action.id, bits);
    }
  const graph = { placed, touched };
  graphs.set(dish, graph);
  return graph;
};

/** Every action of a dish, in the order of the method. */
export const placedActions = (dish: Dish): readonly Placed[] => graphOf(dish).placed;

const touches = ({ touched }: Graph, at: number, ingredient: number): boolean =>
  (((touched[at]?.[ingredient >> 5] ?? 0) >>> (ingredient & 31)) & 1) === 1;

/** True when an action works on an ingredient, at once or as a part of what an earlier one made. */
export const worksOn = (dish: Dish, { at }: Placed, ingredient: number): boolean =>
  touches(graphOf(dish), at, ingredient);

const followed = new WeakMap<Dish, Map<number, readonly Placed[]>>();

/** The actions that work on an ingredient, at once or as a part of what an earlier one made; in the order of the method. */
export const actionsOn = (dish: Dish, ingredient: number): readonly Placed[] => {
  const own = followed.get(dish) ?? new Map<number, readonly Placed[]>();
  followed.set(dish, own);
  const known = own.get(ingredient);
  if (known !== undefined) return known;
  const graph = graphOf(dish);
  const found = graph.placed.filter(({ at }) => touches(graph, at, ingredient));
  own.set(ingredient, found);
  return found;
};

// Steps that are searched behind an action; more are no single dish.
const reach = 40;

/** What the method tells from the sentence of an action on, some forty steps far. */
export const toldFrom = (dish: Dish, { action, step }: Placed): string => {
  const at = Math.max(0, action.span.start - step.span.start);
  const from = Math.max(0, step.text.slice(0, at).search(/[^.!?]*$/));
  const next = dish.steps.indexOf(step) + 1;
  return [step.text.slice(from), ...dish.steps.slice(next, next + reach).map((s) => s.text)].join("\n");
};

const base = /\b(?:dough|pastry|batter|pasta|starter|leaven|levain)\b/i;
const eaten = /\b(?:serve|eat|eaten|spoons?|bowls? to|glasses)\b/i;

/** A card that makes what is baked on another: a dough, a pastry, a batter, and nothing is said of eating it. */
export const isBase = (dish: Dish): boolean =>
  base.test(dish.title) && !dish.steps.some((step) => step.phase === "to-serve" || eaten.test(step.text));

import { readSteps } from "../../src/engine/dish-from-card/steps/read-steps.ts";
import { findFood } from "../../src/engine/larder/foods.ts";
import { exactly } from "../../src/engine/measure/estimate.ts";
import type { Block, Card } from "../../src/engine/model/card.ts";
import type { Action, Ingredient, Step } from "../../src/engine/model/dish.ts";
import { bareIngredient, nowhere } from "./bare.ts";

/** "flour", "butter: 200 g", "filling/sugar": a listed ingredient, with its grams and its part. */
export const ingredientFrom = (words: string, index: number): Ingredient => {
  const [left = "", amount] = words.split(": ");
  const [part, name = left] = left.includes("/") ? left.split("/") : [null, left];
  const size = amount === undefined ? null : Number.parseFloat(amount);
  const unit = amount?.split(" ")[1] ?? "piece";
  return bareIngredient(index, name, size, {
    text: words,
    part: part ?? null,
    amounts:
      size === null ? [] : [{ ...exactly(size), unit, approximate: false, vague: false, span: nowhere }],
    food: findFood(name)?.id ?? null,
  });
};

/** A card of these method lines alone. */
export const cardOf = (method: readonly string[], part: string | null = null): Card => {
  let text = "";
  const lines = method.map((line) => {
    const start = text.length;
    text += `${line}\n`;
    return { text: line, span: { start, end: start + line.length } };
  });
  const block: Block = { role: "method", heading: null, part, lines };
  return { source: "card", text, title: null, yields: [], times: [], blocks: [block] };
};

/** The steps of a method, with this list of ingredients. */
export const steps = (ingredients: string, ...method: string[]): readonly Step[] =>
  readSteps(cardOf(method), ingredients === "" ? [] : ingredients.split(", ").map(ingredientFrom), "uk")
    .steps;

/** The actions of a method, with this list of ingredients. */
export const actions = (ingredients: string, ...method: string[]): readonly Action[] =>
  steps(ingredients, ...method).flatMap((s) => s.actions);

/** "s1a2: flour ½, s1a1": what each action uses. */
export const uses = (ingredients: string, ...method: string[]): readonly string[] => {
  const names = ingredients.split(", ").map((w) => ingredientFrom(w, 0).name);
  return actions(ingredients, ...method).map((a) =>
    a.uses
      .map(
        (u) =>
          `${u.product ?? names[u.ingredient ?? 0]}${u.share < 1 ? `×${Math.round(u.share * 100) / 100}` : ""}`,
      )
      .join(", "),
  );
};

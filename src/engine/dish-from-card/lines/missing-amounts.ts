import type { Finding } from "../../findings/finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import type { Ingredient } from "../../model/dish.ts";

const asNote = (finding: Finding): Finding => ({ ...finding, severity: "note" });

const garnish = /\b(?:garnish|to serve|serving|topping|for (?:frying|greasing|dusting|brushing))\b/i;

/** Foods that usually have no figure: what is in every kitchen, what may be left out, what has a purpose of its own. */
const isUsual = (line: Ingredient | undefined): boolean =>
  line === undefined ||
  line.optional ||
  line.purpose !== null ||
  isEveryday(line.food) ||
  garnish.test(line.text);

/**
 * Says once that amounts are missing when most of a list has none, which is how some cooks write all their lists; and
 * only as a note of foods that usually have no figure. The rest of the findings are as they were.
 */
export const toneMissing = (
  findings: readonly Finding[],
  ingredients: readonly Ingredient[],
): readonly Finding[] => {
  const byPlace = new Map(ingredients.map((i) => [i.nameSpan.start, i]));
  const foods = ingredients.filter((i) => !i.equipment);
  const bare = foods.filter((i) => i.amounts.length === 0).length;
  const once = bare > 2 && bare * 2 > foods.length;
  let said = false;
  return findings.map((finding) => {
    if (finding.code !== "amount-missing") return finding;
    if (isUsual(byPlace.get(finding.span.start)) || (once && said)) return asNote(finding);
    said = true;
    return finding;
  });
};

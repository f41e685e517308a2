import type { Amount, Dish, Estimate, Finding } from "#engine/index.ts";
import { fixTitles, messageOf, sentenceOf } from "#words/en.ts";
import { placesIn } from "./place.ts";

/** The fixed shape of `read --json`: a dish as it was read, and what there is to say about it. */
export const readJson = (dish: Dish, findings: readonly Finding[], file: string) => {
  const place = placesIn(file, dish.text);
  return {
    file,
    title: dish.title,
    portions: range(dish.portions),
    yield:
      dish.yield === null
        ? null
        : {
            kind: dish.yield.kind,
            ...range(dish.yield.amount),
            noun: dish.yield.noun,
            text: dish.yield.words.text,
          },
    ingredients: dish.ingredients.map((ingredient) => ({
      index: ingredient.index,
      text: ingredient.text,
      part: ingredient.part,
      amounts: ingredient.amounts.map(amountJson),
      grams: range(ingredient.grams),
      gramsBasis: ingredient.gramsBasis,
      weightBasis: ingredient.weightBasis,
      food: ingredient.food,
      name: ingredient.name,
      card: ingredient.card,
      state: ingredient.state,
      preparation: ingredient.preparation,
      purpose: ingredient.purpose,
      optional: ingredient.optional,
      size: ingredient.size,
      container: ingredient.container,
      portion: ingredient.portion,
      equipment: ingredient.equipment,
      alternatives: ingredient.alternatives.map((other) => ({
        text: other.text,
        food: other.food,
        name: other.name,
        amounts: other.amounts.map(amountJson),
        grams: range(other.grams),
      })),
      span: ingredient.span,
    })),
    steps: dish.steps.map((step) => ({
      index: step.index,
      text: step.text,
      part: step.part,
      phase: step.phase,
      span: step.span,
      actions: step.actions.map((action) => ({
        id: action.id,
        technique: action.technique,
        verb: action.verb,
        uses: action.uses.map((use) => ({
          // Of a product that the words call by a listed food ("put the thighs back"), that food.
          ingredient: use.ingredient ?? use.named ?? null,
          product: use.product,
          name: dish.ingredients[use.ingredient ?? use.named ?? -1]?.name ?? null,
          share: use.share,
          implied: use.implied,
        })),
        minutes:
          action.minutes === null ? null : { ...range(action.minutes), assumed: action.minutes.assumed },
        celsius: action.celsius,
        core: action.core,
        heat: action.heat,
        station: action.station,
        attention: action.attention,
        vessel: action.vessel,
        cue: action.cue,
        makes: action.makes,
        after: action.after,
        alongside: action.alongside,
        batches: action.batches,
        every: action.every,
        leastWait: action.leastWait,
        span: action.span,
      })),
    })),
    swaps: dish.swaps.map((swap) => ({
      text: swap.text,
      needs: swap.needs,
      out: swap.out,
      comes: swap.comes.map((c) => ({ food: c.food, name: c.name, grams: range(c.grams) })),
    })),
    keeping: dish.keeping.map((keeping) => ({
      text: keeping.text,
      where: keeping.where,
      minutes: range(keeping.minutes),
      afterStep: keeping.afterStep,
      part: keeping.part,
    })),
    findings: findings.map((finding) => {
      const { line, column } = place(finding.span.start, finding.span.end);
      return { ...findingJson(finding), line, column };
    }),
  };
};

/** A finding as JSON, without its line: words beside the data. */
export const findingJson = (finding: Finding) => ({
  code: finding.code,
  severity: finding.severity,
  source: finding.source,
  span: { start: finding.span.start, end: finding.span.end },
  path: finding.path,
  message: messageOf(finding),
  ...sentenceOf(finding),
  facts: finding.facts,
  related: finding.related,
  fixes: finding.fixes.map((fix) => ({ kind: fix.kind, title: fixTitles[fix.kind], edits: fix.edits })),
});

/** A bare count ("2 onions") has no unit: null, where the model has the row "piece". */
const amountJson = ({ low, likely, high, unit, approximate, vague }: Amount) => ({
  low,
  likely,
  high,
  unit: unit === "piece" ? null : unit,
  approximate,
  vague,
});

const range = <E extends Estimate<number> | null>(e: E) =>
  (e === null ? null : { low: e.low, likely: e.likely, high: e.high }) as E extends null
    ? null
    : { readonly low: number; readonly likely: number; readonly high: number };

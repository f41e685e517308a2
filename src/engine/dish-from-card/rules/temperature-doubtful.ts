import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { type Celsius, celsius } from "../../measure/units.ts";
import type { Dish, Step } from "../../model/dish.ts";
import type { Span } from "../../model/span.ts";
import { type Placed, placedActions, worksOn } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { findIn, replaceWords } from "./sentence-edits.ts";
import { toldCore } from "./told-core.ts";
import { contradicts, type HeatRange, usualHeat } from "./usual-heat.ts";

/** A setting that is not usual for what is done: a scale mixed up, a figure mistyped, an oven turned down to more. */
export const temperatureDoubtful: Rule = {
  code: "temperature-doubtful",
  check: (dish) => {
    const said = placedActions(dish).flatMap((placed) => {
      const { action, step } = placed;
      const core = action.core;
      if (
        core !== null &&
        core > hottestCore &&
        (!sweet.test(`${dish.title} ${step.text}`) || hasEgg(dish, placed))
      )
        return [finding(dish, step, action.span, action.verb, core, { low: 50, high: 100 })];
      const stated = action.celsius;
      // "Until the filling is at 75C" is no setting.
      if (stated === null || (stated < hottestCore && toldCore(placed) === stated)) return [];
      const was = contradicts(dish, placed);
      const usual = usualHeat(dish, placed);
      const range =
        was === null
          ? usual
          : stated >= was
            ? { low: usual?.low ?? 40, high: was - 10 }
            : { low: was + 10, high: usual?.high ?? 300 };
      if (range === null || (stated >= range.low && stated <= range.high)) return [];
      return [finding(dish, step, action.span, action.verb, stated, range)];
    });
    const steps = new Set(
      said.map((f) => dish.steps.find((s) => s.span.start <= f.span.start && s.span.end >= f.span.end)),
    );
    return [
      ...said,
      ...dish.steps.filter((step) => !steps.has(step)).flatMap((step) => beyondAny(dish, step)),
    ];
  },
};

/** The middle of what holds water comes to no more than the boil, °C; sugar alone is hotter. */
const hottestCore = 103;
const sweet =
  /sugar|syrup|caramel|jam|marmalade|toffee|honey|praline|brittle|fudge|jelly|nougat|glaze|oil\b/i;

/** Egg sets well below the boil, whatever sugar is with it. */
const hasEgg = (dish: Dish, placed: Placed): boolean =>
  placed.action.station !== "oven" &&
  !/caramel|syrup/i.test(placed.step.text) &&
  dish.ingredients.some((i) => /^(?:egg|egg-yolk)$/.test(i.food ?? "") && worksOn(dish, placed, i.index));

const finding = (
  dish: Dish,
  step: Step,
  span: Span,
  verb: string,
  stated: Celsius,
  range: HeatRange,
): Finding => {
  const nearest = stated > range.high ? range.high : range.low;
  const figure = findIn(step, new RegExp(`\\b${Math.round(stated)}(?=\\s*(?:°|º|˚|degrees?)?\\s*C\\b)`));
  return makeFinding(
    "temperature-doubtful",
    dish.source,
    span,
    { verb, celsius: stated, low: range.low, high: range.high },
    figure === null
      ? {}
      : { fixes: [{ kind: "write-temperature", edits: [replaceWords(figure, String(nearest))] }] },
  );
};

// No oven, pan or fryer of a kitchen comes to this, °C; above it a figure is not taken for a setting at all.
const hottest = 320;
// A wood oven or a blowtorch's work, °C; a pizza bakes at 450.
const hottestStone = 550;
const hotOven = /\b(?:pizza|tandoor|stone|wood|blowtorch|kamado)\b/i;

/** An oven set to what no oven is set to. */
const barelyWarm =
  /\boven (?:on )?(?:at|to|up to|down to) ([1-3]\d)\b(?!\s*(?:min|cm|hour|sec|%|or|to|-|–|\d))/i;

/** Figures in °C that nothing in a kitchen comes to. */
const beyondAny = (dish: Dish, step: Step): readonly Finding[] => {
  const inside =
    /\b(?:core|middle|cent(?:re|er)|internal(?:ly)?|inside)\b(?! (?:of|rack|shelf|the oven))[^.\d]{0,20}(\d{3})\s*(?:°|º|˚|degrees?)?\s*C\b/i.exec(
      step.text,
    );
  if (inside !== null && Number(inside[1]) > hottestCore && !sweet.test(`${dish.title} ${step.text}`)) {
    const start = step.span.start + inside.index;
    const span = { start, end: start + inside[0].length };
    return [finding(dish, step, span, "heat", celsius(Number(inside[1])), { low: 50, high: 100 })];
  }
  const cold = barelyWarm.exec(step.text);
  if (cold !== null && !/dry|dried|dehydrat|proof|prove|rise|gas/i.test(step.text)) {
    const start = step.span.start + cold.index;
    const span = { start, end: start + cold[0].length };
    return [finding(dish, step, span, "heat", celsius(Number(cold[1])), { low: 40, high: 280 })];
  }
  const found = /\b(\d{3,4})\s*(?:°|º|˚|degrees?)?\s*C\b/.exec(step.text);
  const stated = Number(found?.[1] ?? 0);
  if (found === null || stated <= (hotOven.test(dish.text) ? hottestStone : hottest)) return [];
  const start = step.span.start + found.index;
  const action = step.actions.find((a) => a.span.start <= start && a.span.end >= start) ?? step.actions[0];
  const span = action?.span ?? { start, end: start + found[0].length };
  return [finding(dish, step, span, action?.verb ?? "heat", celsius(stated), { low: 40, high: 280 })];
};

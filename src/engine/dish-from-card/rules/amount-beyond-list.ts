import { makeFinding } from "../../findings/make-finding.ts";
import { placedActions } from "./dish-graph.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const toGrams: Readonly<Record<string, number>> = { g: 1, kg: 1000, ml: 1, l: 1000 };
const amount = /(\d+(?:[.,]\d+)?)\s*(kg|g|ml|l|litres?)\b(?:\s+(?:of\s+)?(?:the\s+)?([\p{L} -]{0,40}))?/giu;

/** More than this above the list is no rounding. Common practice, no source. */
const tolerance = 1.05;

/** The method takes more of something, in figures, than the list holds of it. Less is a part, and is fine. */
export const amountBeyondList: Rule = {
  code: "amount-beyond-list",
  check: (dish) =>
    dish.steps.flatMap((step) => {
      const named = new Set(
        placedActions(dish)
          .filter((p) => p.step === step)
          .flatMap(({ action }) => action.uses.flatMap((u) => u.ingredient ?? [])),
      );
      return [...step.text.matchAll(amount)].flatMap((found) => {
        const unit = (found[2] ?? "").toLowerCase().replace(/^lit.*/, "l");
        const words = (found[3] ?? "").toLowerCase();
        const line = dish.ingredients.find((i) => {
          const head = i.name.toLowerCase().split(" ").at(-1) ?? "";
          return (
            named.has(i.index) &&
            head.length > 2 &&
            new RegExp(`\\b${head.replace(/[^\p{L}]/gu, "")}`, "u").test(words)
          );
        });
        const own = line?.amounts.find((a) => a.unit !== null && a.unit in toGrams);
        if (line === undefined || own === undefined || own.unit === null || own.approximate) return [];
        const same = /^(?:ml|l)$/.test(unit) === /^(?:ml|l)$/.test(own.unit);
        const stated = Number((found[1] ?? "").replace(",", ".")) * (toGrams[unit] ?? 1);
        const listed = own.high * (toGrams[own.unit] ?? 1);
        const all = dish.ingredients.filter((i) => i.food === line.food && i.food !== null).length;
        if (!same || all > 1 || stated <= listed * tolerance) return [];
        const start = step.span.start + found.index;
        const figure = found[0].slice(
          0,
          found[0].toLowerCase().indexOf(found[2]?.toLowerCase() ?? "") + (found[2]?.length ?? 0),
        );
        return [
          makeFinding(
            "amount-beyond-list",
            dish.source,
            { start, end: start + figure.length },
            { name: line.name, stated: figure, listed: `${own.likely} ${own.unit}` },
            {
              related: [{ source: dish.source, span: line.span }],
              fixes: [
                {
                  kind: "correct-amount",
                  edits: [replaceWords({ start, end: start + figure.length }, `${own.likely} ${own.unit}`)],
                },
              ],
            },
          ),
        ];
      });
    }),
};

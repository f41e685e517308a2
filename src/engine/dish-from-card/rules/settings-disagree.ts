import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish, Step } from "../../model/dish.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

const celsiusWords = /(\d{2,3})\s*(?:°|º|˚|degrees?)?\s*C\b/;
const fahrenheitWords = /(\d{3})\s*(?:°|º|˚|degrees?)?\s*F\b/;
const gasWords = /\bgas(?:\s+mark)?\s*(\d{1,2})\b/i;

/** Books round to the next ten, and gas marks are 14 °C apart; more than this is a slip, °C. Common practice, no source. */
const tolerance = 16;

/** What a fan oven is set lower by, at the most, °C; books have 20. Healthy Kids NSW; the rest is room for rounding. */
const mostBelow = 40;

const fanBehind =
  /(\d{2,3})\s*(?:°|º|˚|degrees?)?\s*C?\s*[(/,]?\s*(?:or )?(\d{2,3})\s*(?:°|º|˚|degrees?)?\s*C?\s*\(?fan\b/i;
const fanBefore = /(\d{2,3})\s*(?:°|º|˚|degrees?)?\s*C?\s*[(/,]?\s*(?:or )?fan(?: oven)?:?\s*(\d{2,3})/i;

/** A fan oven's figure that is not a little below the other. */
const fanDisagrees = (dish: Dish, step: Step): readonly Finding[] => {
  const found = fanBehind.exec(step.text) ?? fanBefore.exec(step.text);
  if (found === null) return [];
  const [whole, other = "", fan = ""] = found;
  const below = Number(other) - Number(fan);
  // A fan's figure told first ("160 fan/180") stands in the place of the other, and then it is the lower one as well.
  if (below >= 0 && below <= mostBelow) return [];
  if (below < 0 && -below <= mostBelow && /fan\s*[/(,]/i.test(step.text)) return [];
  const start = step.span.start + found.index;
  const at = start + whole.lastIndexOf(fan);
  return [
    makeFinding(
      "settings-disagree",
      dish.source,
      { start, end: start + whole.length },
      { first: other, second: `${fan} fan` },
      {
        fixes: [
          {
            kind: "write-temperature",
            edits: [replaceWords({ start: at, end: at + fan.length }, String(Number(other) - 20))],
          },
        ],
      },
    ),
  ];
};

/**
 * One setting in two scales that do not mean the same: °C with °F, °C with a gas mark (gas mark 4 is 180 °C, 14 °C a
 * mark), or a fan oven's figure that is not a little lower.
 */
export const settingsDisagree: Rule = {
  code: "settings-disagree",
  check: (dish) =>
    dish.steps.flatMap((step) => {
      const ofFan = fanDisagrees(dish, step);
      if (ofFan.length > 0) return ofFan;
      const c = celsiusWords.exec(step.text);
      if (c === null || (step.text.match(/\d{2,3}\s*(?:°|º|˚|degrees?)?\s*C\b/g) ?? []).length > 2) return [];
      const celsius = Number(c[1]);
      const f = fahrenheitWords.exec(step.text);
      const gas = gasWords.exec(step.text);
      const other =
        f !== null
          ? {
              found: f,
              means: ((Number(f[1]) - 32) * 5) / 9,
              right: String(Math.round(((celsius * 9) / 5 + 32) / 5) * 5),
            }
          : gas !== null
            ? {
                found: gas,
                means: 180 + 14 * (Number(gas[1]) - 4),
                right: String(Math.max(1, Math.min(9, Math.round((celsius - 180) / 14) + 4))),
              }
            : null;
      if (other === null) return [];
      // The fan's figure stands first or second, twenty below the other: either may be the one that is meant.
      const fan = [...step.text.matchAll(/(\d{2,3})\s*(?:°|º|˚|degrees?)?\s*C?\s*(?=fan)/gi)].map((m) =>
        Number(m[1]),
      );
      const near = [celsius, ...fan, ...fan.map((t) => t + 20)].some(
        (t) => Math.abs(t - other.means) <= tolerance,
      );
      const figure = other.found[1] ?? "";
      if (near || figure === other.right) return [];
      const at = step.span.start + other.found.index + other.found[0].indexOf(figure);
      const span = {
        start: step.span.start + other.found.index,
        end: step.span.start + other.found.index + other.found[0].length,
      };
      return [
        makeFinding(
          "settings-disagree",
          dish.source,
          span,
          { first: c[0], second: other.found[0] },
          {
            fixes: [
              {
                kind: "write-temperature",
                edits: [replaceWords({ start: at, end: at + figure.length }, other.right)],
              },
            ],
          },
        ),
      ];
    }),
};

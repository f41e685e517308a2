import { verbReadings } from "../../larder/techniques.ts";
import type { Step } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { nameAt } from "../steps/find-mentions.ts";
import type { NameIndex } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import type { Token } from "../steps/tokens.ts";
import { foodAt, foodsIn } from "./food-names.ts";
import type { MadeHere } from "./made-here.ts";
import { ends, excused, isNamed } from "./meant-otherwise.ts";
import { stepTokens } from "./step-tokens.ts";

/** A food that the method takes up and no line lists, and where its name stands. */
export type Unlisted = {
  readonly name: string;
  readonly food: Food;
  readonly start: number;
  readonly end: number;
};

// What is done to the dish in hand; "serve with rice" names company, not an ingredient.
const takesNothing: ReadonlySet<string> = new Set(
  "serve plate repeat preheat adjust-heat bring-to-simmer cool cool-quickly chill rest prove stand set-aside take-out remove-from-heat keep-warm warm-plates reheat store freeze drain turn".split(
    " ",
  ),
);

/** Foods within the orders of a step that no line lists. */
export const unlistedIn = (
  step: Step,
  names: NameIndex,
  listed: ReadonlySet<string | null>,
  made: MadeHere,
): readonly Unlisted[] => {
  const tokens = stepTokens(step);
  const foods = foodsIn(tokens);
  const found: Unlisted[] = [];
  for (const action of step.actions) {
    if (action.technique === null || takesNothing.has(action.technique)) continue;
    const from = action.span.start - step.span.start;
    const to = action.span.end - step.span.start;
    let next = 0;
    for (const hit of foods) {
      const token = tokens[hit.from];
      const last = tokens[hit.to - 1];
      // A name within the name before it ("cream" of "sour cream") is none of its own.
      if (token === undefined || last === undefined || token.at < from || hit.from < next) continue;
      if (token.end > to) break;
      next = hit.to;
      const start = step.span.start + token.at;
      if (!excused(tokens, hit, action, names, listed, made, start) && !isAside(tokens, hit.from, hit.to))
        found.push({
          name: step.text.slice(token.at, last.end),
          food: hit.food,
          start,
          end: step.span.start + last.end,
        });
    }
  }
  return found;
};

const placed = /^(?:a|an|the|this|that|your|it|their|water|oil|season|small|large|half|two|three|\d+)$/;
const leadsIn = /^(?:to|into|in|on|over)$/;

/** Foods that open a sentence without any verb: "Port to a pan", "Fish, prawns and parsley into the sauce". */
export const unlistedFirst = (
  step: Step,
  names: NameIndex,
  listed: ReadonlySet<string | null>,
  made: MadeHere,
): readonly Unlisted[] => {
  const tokens = stepTokens(step);
  return tokens.flatMap((_, start) => {
    const before = tokens[start - 1]?.text ?? "";
    if (start > 0 && before !== "," && !ends.test(before)) return [];
    const found: Unlisted[] = [];
    let at = start;
    for (;;) {
      while (/^(?:,|and|the|some|then)$/.test(tokens[at]?.text ?? "")) at += 1;
      const token = tokens[at];
      const own = nameAt(tokens, at, names);
      // "Cream in, then the rice": a food, though creaming is an order too.
      const isIn = tokens[at + 1]?.text === "in" && /^[,.;]?$/.test(tokens[at + 2]?.text ?? "");
      const isVerb = !isIn && verbReadings(token?.text ?? "").some((r) => r.form === "base");
      const hit = own === null && !isVerb ? foodAt(tokens, at) : null;
      const last = tokens[(hit?.to ?? 1) - 1];
      if (token === undefined || (own === null && hit === null)) break;
      if (hit !== null && last !== undefined) {
        const words = tokens.slice(at, hit.to).map((t) => t.text);
        const place = step.span.start + token.at;
        if (!listed.has(hit.food.id) && !isNamed(words, hit.food, names, made, place))
          found.push({
            name: step.text.slice(token.at, last.end),
            food: hit.food,
            start: place,
            end: step.span.start + last.end,
          });
      }
      at = own?.to ?? hit?.to ?? at + 1;
    }
    const timed = tokens[at - 1]?.text === "," && /^\d/.test(tokens[at]?.text ?? "");
    // Within a sentence the foods of an order before it stand behind commas too: only "in" makes them an order.
    const isTold =
      before === ","
        ? tokens[at]?.text === "in" && !placed.test(tokens[at + 1]?.text ?? "")
        : timed || leadsIn.test(tokens[at]?.text ?? "");
    return at > start && isTold ? found : [];
  });
};

const asideWords =
  /^(optional|optionally|e\.g|eg|example|alternatively|instead|customi[sz]e|omit|improved|variation|variations|desired|choose|whatever|prefer|preferred|substitute|leftovers?)$/;

/** In a sentence that speaks of other ways to make the dish, or the first word of a name that goes on ("chocolate frosting"). */
const isAside = (tokens: readonly Token[], from: number, to: number): boolean => {
  let start = from;
  while (start > 0 && tokens[start - 1]?.text !== "." && tokens[start - 1]?.text !== "!") start -= 1;
  let end = to;
  while (end < tokens.length && tokens[end]?.text !== "." && tokens[end]?.text !== "!") end += 1;
  if (tokens.slice(start, end).some((t) => asideWords.test(t.text))) return true;
  return /^(sauce|frosting|ice|icing|ganache|custard|glaze|mousse|jelly|gravy|dressing|vinaigrette|compote|curd|mixture|batter|dough|spread)$/.test(
    stem(tokens[to]?.text ?? ""),
  );
};

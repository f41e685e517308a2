import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import { foodById, foodByName } from "../../larder/foods.ts";
import { verbReadings } from "../../larder/techniques.ts";
import type { Action, Dish, Step } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { isTool } from "../steps/find-details.ts";
import { type NameIndex, nameIndexOf } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import type { Token } from "../steps/tokens.ts";
import { listedWords, nearlyListed } from "./listed-words.ts";
import { madeHere } from "./made-here.ts";
import type { Rule } from "./rule.ts";
import { stepTokens } from "./step-tokens.ts";

type Unlisted = { readonly name: string; readonly food: Food; readonly start: number; readonly end: number };

// Techniques that take food up; "serve with rice" names company, not an ingredient.
const takes = new Set(
  "add pour mix stir whisk beat cream melt heat fry saute sprinkle season brush drizzle grease fold top toss layer spread rub rub-in put deglaze dress fill blend dissolve soak marinate dip bread sweat brown sear boil simmer cook poach roast bake chop slice dice grate cut peel crush squeeze zest mince deep-fry stir-fry sift line dust fill-glass braise stew infuse knead bring-to-boil garnish".split(
    " ",
  ),
);

/** Foods that the method takes up and that stand on no line of the list. */
export const usedNotListed: Rule = {
  code: "used-not-listed",
  check: (dish) => {
    if (dish.ingredients.length === 0) return [];
    const names = nameIndexOf(dish.ingredients);
    const listed = new Set(dish.ingredients.flatMap((i) => [i.food, ...i.alternatives.map((a) => a.food)]));
    const made = madeHere(dish);
    const found = new Map<string, Unlisted>();
    for (const step of dish.steps) {
      if (step.phase === "to-serve") continue;
      for (const one of unlistedIn(step, names, listed, made))
        if (!found.has(one.food.id) && !isOnList(dish, one)) found.set(one.food.id, one);
    }
    const all = [...found.values()];
    // What is in every kitchen is often left off a list: one note for all of it.
    const small = all.filter((u) => isEveryday(u.food.id));
    return [
      ...all.filter((u) => !isEveryday(u.food.id)).map((u) => say(dish, u, u.name, u.food.name)),
      ...small.slice(0, 1).map(
        (u): Finding => ({
          ...say(dish, u, small.map((s) => s.name).join(", "), u.food.name),
          severity: "note",
        }),
      ),
    ];
  },
};

const say = (dish: Dish, unlisted: Unlisted, name: string, food: string): Finding => {
  const last = dish.ingredients.at(-1);
  const at = last?.span.end ?? 0;
  return makeFinding(
    "used-not-listed",
    dish.source,
    { start: unlisted.start, end: unlisted.end },
    { name, food },
    { fixes: [{ kind: "add-ingredient", edits: [{ span: { start: at, end: at }, text: `\n${name}` }] }] },
  );
};

const unlistedIn = (
  step: Step,
  names: NameIndex,
  listed: ReadonlySet<string | null>,
  made: ReadonlySet<string>,
): readonly Unlisted[] => {
  const tokens = stepTokens(step);
  const found: Unlisted[] = [];
  for (const action of step.actions) {
    if (action.technique === null || !takes.has(action.technique)) continue;
    const from = action.span.start - step.span.start;
    const to = action.span.end - step.span.start;
    for (let i = 0; i < tokens.length; i += 1) {
      const token = tokens[i];
      if (token === undefined || token.at < from || token.end > to) continue;
      const hit = foodAt(tokens, i);
      if (hit === null) continue;
      const last = tokens[hit.to - 1];
      if (
        last !== undefined &&
        !excused(tokens, i, hit, action, names, listed, made) &&
        !isAside(tokens, i, hit.to)
      )
        found.push({
          name: step.text.slice(token.at, last.end),
          food: hit.food,
          start: step.span.start + token.at,
          end: step.span.start + last.end,
        });
      i = hit.to - 1;
    }
  }
  return found;
};

/** On the list after all: in a line that was read otherwise, misspelt, or by the name of its kind ("the pork" of "pork loin"). */
const isOnList = (dish: Dish, { name, food }: Unlisted): boolean => {
  const words = listedWords(dish);
  if (nearlyListed(dish).has(food.id)) return true;
  const stems = name
    .toLowerCase()
    .split(/[\s-]+/)
    .map(stem);
  if (stems.every((w) => words.has(w))) return true;
  const only = stems.length === 1 ? (stems[0] ?? "") : "";
  if (!/^(?:pork|chicken|beef|lamb|fish)$/.test(only)) return false;
  return dish.ingredients.some(
    (i) =>
      new RegExp(`${only}\\w`, "i").test(i.text) ||
      (i.food !== null && foodById(i.food)?.diet.some((fact) => fact === only) === true),
  );
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

type Hit = { readonly food: Food; readonly to: number };

// Most words of a method begin no food's name, and need no search.
const firstWords: ReadonlySet<string> = new Set(
  [...foodByName.keys()].map((name) => name.split(" ")[0] ?? ""),
);

const foodAt = (tokens: readonly Token[], i: number): Hit | null => {
  const first = tokens[i]?.text ?? "";
  if (!firstWords.has(first) && !first.includes("-")) return null;
  let key = "";
  let best: Hit | null = null;
  for (let n = 0; n < 4; n += 1) {
    const token = tokens[i + n];
    if (token === undefined || token.kind !== "word") break;
    key = n === 0 ? token.text.replaceAll("-", " ") : `${key} ${token.text.replaceAll("-", " ")}`;
    const id = foodByName.get(key);
    const food = id === undefined ? null : foodById(id);
    if (food !== null) best = { food, to: i + n + 1 };
  }
  return best;
};

const excused = (
  tokens: readonly Token[],
  from: number,
  hit: Hit,
  action: Action,
  names: NameIndex,
  listed: ReadonlySet<string | null>,
  made: ReadonlySet<string>,
): boolean => {
  if (listed.has(hit.food.id)) return true;
  const words = tokens.slice(from, hit.to).map((t) => t.text);
  if (words.some((w) => names.has(stem(w)) || made.has(stem(w)))) return true;
  if (hit.food.name.split(" ").some((w) => names.has(stem(w)) && w.length > 3)) return true;
  const prev = tokens[from - 1]?.text ?? "";
  const prev2 = tokens[from - 2]?.text ?? "";
  const next = tokens[hit.to]?.text ?? "";
  if (isTool(next) || words.some((w) => isTool(w))) return true;
  if (
    /^(like|as|or|resembles?|no|without|not|if|of)$/.test(prev) &&
    (prev !== "of" ||
      /^(size|colour|color|consistency|consistence|thickness|instead|shape|texture)$/.test(prev2))
  )
    return true;
  // "Stir the butter and sugar to a cream".
  if (/^creams?$/.test(words.at(-1) ?? "") && prev === "a" && /^(to|into|form)$/.test(prev2)) return true;
  // "Three cloves of garlic": a clove of something.
  if (next === "of" && /^cloves?$/.test(words.at(-1) ?? "")) return true;
  if (/^(or|instead|optional|if)$/.test(next) || /^(or|instead)$/.test(prev2)) return true;
  if (
    tokens
      .slice(Math.max(0, from - 6), from)
      .some((t) =>
        /^(until|till|if|like|or|for|optionally|prefer|resemble|resembles|resembling|serve|alternatively|when|using|depending|whatever|such|e\.g|eg)$/.test(
          t.text,
        ),
      )
  )
    return true;
  if (tokens.slice(hit.to, hit.to + 5).some((t) => /^(if|optional|works|also|too)$/.test(t.text)))
    return true;
  // The verb itself ("cream the butter", "ice the cake", "seed the melon").
  if (from === 0 || words[0] === action.verb.split(" ")[0]) return true;
  if (
    hit.to === from + 1 &&
    verbReadings(words[0] ?? "").some((r) => r.form === "base" && r.tail.length === 0) &&
    !/^(butter|oil|flour|salt|cream|bread|ice)$/.test(words[0] ?? "")
  )
    return true;
  if (hit.food.shelf === "eggs" && names.has("egg")) return true;
  return /^(to|is|are|be)$/.test(prev);
};

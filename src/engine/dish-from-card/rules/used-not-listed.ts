import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import { isEveryday } from "../../larder/everyday.ts";
import { firstOfFoodNames, foodById, foodByName } from "../../larder/foods.ts";
import { verbReadings } from "../../larder/techniques.ts";
import type { Action, Dish, Step } from "../../model/dish.ts";
import type { Food, FoodId } from "../../model/food.ts";
import { isTool } from "../steps/find-details.ts";
import { nameAt } from "../steps/find-mentions.ts";
import { type NameIndex, nameIndexOf } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import type { Token } from "../steps/tokens.ts";
import { listedWords, nearlyListed } from "./listed-words.ts";
import { type MadeHere, madeHere } from "./made-here.ts";
import type { Rule } from "./rule.ts";
import { stepTokens } from "./step-tokens.ts";

type Unlisted = { readonly name: string; readonly food: Food; readonly start: number; readonly end: number };

// What is done to the dish in hand; "serve with rice" names company, not an ingredient.
const takesNothing: ReadonlySet<string> = new Set(
  "serve plate repeat preheat adjust-heat bring-to-simmer cool cool-quickly chill rest prove stand set-aside take-out remove-from-heat keep-warm warm-plates reheat store freeze drain turn".split(
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
      for (const one of [
        ...unlistedIn(step, names, listed, made),
        ...unlistedFirst(step, names, listed, made),
      ])
        if (!found.has(one.food.id) && !isOnList(dish, one, made)) found.set(one.food.id, one);
    }
    const all = [...found.values()];
    // What is in every kitchen is often left off a list: one note for all of it.
    const small = all.filter((u) => isEveryday(u.food.id));
    return [
      ...all.filter((u) => !isEveryday(u.food.id)).map((u) => say(dish, u, [u])),
      ...small.slice(0, 1).map(
        (u): Finding => ({
          ...say(dish, u, small),
          severity: "note",
        }),
      ),
    ];
  },
};

const say = (dish: Dish, unlisted: Unlisted, all: readonly Unlisted[]): Finding => {
  const at = dish.ingredients.at(-1)?.span.end ?? 0;
  const lines = all.map((u) => `\n${toldAmount(dish, u) ?? "some"} ${u.name}`).join("");
  return makeFinding(
    "used-not-listed",
    dish.source,
    { start: unlisted.start, end: unlisted.end },
    { name: all.map((u) => u.name).join(", "), food: unlisted.food.name },
    { fixes: [{ kind: "add-ingredient", edits: [{ span: { start: at, end: at }, text: lines }] }] },
  );
};

const stated =
  /(?:(?:\d+\s+)?\d+[/\u2044]\d+|\d*\s*[½¼¾⅓⅔]|\d+(?:[.,]\d+)?)\s*(?:kg|g|ml|l|litres?|tbsps?|tsps?|tablespoons?|teaspoons?|cups?|oz|ounces?|lbs?|pounds?|cloves?|sprigs?|slices?)?(?=\s+(?:of\s+)?(?:the\s+)?$)/iu;

/**
 * The amount that the method gives with the food; null when it gives none. The line then says "some", which is read as
 * an amount that nobody told, and is said so.
 */
const toldAmount = (dish: Dish, unlisted: Unlisted): string | null =>
  stated.exec(dish.text.slice(Math.max(0, unlisted.start - 40), unlisted.start))?.[0].trim() ?? null;

const unlistedIn = (
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

const leadsIn = /^(?:to|into|in|on|over)$/;

/** Foods that open a sentence without any verb: "Port to a pan", "Fish, prawns and parsley into the sauce". */
const unlistedFirst = (
  step: Step,
  names: NameIndex,
  listed: ReadonlySet<string | null>,
  made: MadeHere,
): readonly Unlisted[] => {
  const tokens = stepTokens(step);
  return tokens.flatMap((_, start) => {
    if (start > 0 && !ends.test(tokens[start - 1]?.text ?? "")) return [];
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
    return at > start && (timed || leadsIn.test(tokens[at]?.text ?? "")) ? found : [];
  });
};

/** On the list after all: in a line that was read otherwise, misspelt, or by the name of its kind ("the pork" of "pork loin"). */
const isOnList = (dish: Dish, { name, food }: Unlisted, { title }: MadeHere): boolean => {
  const stems = name
    .toLowerCase()
    .split(/[\s-]+/)
    .map(stem);
  if (isWholeTitle(title, stems, food)) return true;
  const words = listedWords(dish);
  if (stems.every((w) => words.has(w)) || nearlyListed(dish).has(food.id)) return true;
  const only = stems.length === 1 ? (stems[0] ?? "") : "";
  if (!/^(?:pork|chicken|beef|lamb|fish)$/.test(only)) return false;
  return dish.ingredients.some(
    (i) =>
      new RegExp(`${only}\\w`, "i").test(i.text) ||
      (i.food !== null && foodById(i.food)?.diet.some((fact) => fact === only) === true),
  );
};

/** "The gnocchi" of a card for gnocchi. Mussels in cider are on the list all the same, and so is couscous with lamb. */
const isWholeTitle = (title: readonly string[], stems: readonly string[], food: Food): boolean => {
  if (stems.length > 1) return stems.every((w) => title.includes(w));
  if (title.at(-1) !== stems[0]) return false;
  return (!grown.has(food.shelf) && !neverMade.has(food.id)) || /^chill?i$/.test(stems[0] ?? "");
};

// Dry goods that no kitchen makes: where the title names them, they must be bought.
const neverMade: ReadonlySet<string> = new Set(
  "couscous bulgur-wheat quinoa pearl-barley lentil red-lentil green-lentil puy-lentil".split(" "),
);

const grown: ReadonlySet<string> = new Set("vegetables fruit herbs meat poultry fish eggs".split(" "));

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

type Hit = { readonly food: Food; readonly from: number; readonly to: number };

/** Every name of a food that begins somewhere in a step. */
const foodsIn = (tokens: readonly Token[]): readonly Hit[] => {
  const found: Hit[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    const hit = foodAt(tokens, i);
    if (hit !== null) found.push(hit);
  }
  return found;
};

const mostWords = 4;

const foodAt = (tokens: readonly Token[], i: number): Hit | null => {
  const first = tokens[i]?.text ?? "";
  // Most words of a method begin no food's name, and need no search.
  const most = first.includes("-") ? mostWords : Math.min(mostWords, firstOfFoodNames.get(first) ?? 0);
  let key = "";
  let id: FoodId | null = null;
  let to = i;
  for (let n = 0; n < most; n += 1) {
    const token = tokens[i + n];
    if (token === undefined || token.kind !== "word") break;
    const said = token.text.includes("-") ? token.text.replaceAll("-", " ") : token.text;
    key = n === 0 ? said : `${key} ${said}`;
    const named = foodByName.get(key);
    if (named !== undefined) [id, to] = [named, i + n + 1];
  }
  const food = id === null ? null : foodById(id);
  return food === null ? null : { food, from: i, to };
};

const excused = (
  tokens: readonly Token[],
  hit: Hit,
  action: Action,
  names: NameIndex,
  listed: ReadonlySet<string | null>,
  made: MadeHere,
  place: number,
): boolean => {
  if (listed.has(hit.food.id)) return true;
  const { from } = hit;
  const words = tokens.slice(from, hit.to).map((t) => t.text);
  if (isNamed(words, hit.food, names, made, place)) return true;
  const before = sentenceBefore(tokens, from);
  const behind = sentenceBehind(tokens, hit.to);
  const prev = before.at(-1) ?? "";
  const prev2 = before.at(-2) ?? "";
  const next = behind[0] ?? "";
  if (isTool(next) || words.some((w) => isTool(w)) || vesselHeads.test(stem(next))) return true;
  if (
    /^(like|as|or|resembles?|no|without|not|if|of)$/.test(prev) &&
    (prev !== "of" ||
      /^(size|colour|color|consistency|consistence|thickness|instead|shape|texture)$/.test(prev2))
  )
    return true;
  if (before.slice(-3).includes("size") || /^(plastic|cling|baking)$/.test(prev)) return true;
  // "Shape into 8 sausages", "a sausage shape"; baking beans, once named, are called beans.
  if (prev === "into" || (prev2 === "into" && /^\d/.test(prev))) return true;
  if (
    /^beans?$/.test(words.at(-1) ?? "") &&
    (action.technique === "blind-bake" ||
      tokens.some(
        (t, k) =>
          (t.text === "baking" && /^beans?$/.test(tokens[k + 1]?.text ?? "")) ||
          (t.text === "blind" && /^bak(?:e|ed|ing)$/.test(tokens[k - 1]?.text ?? "")) ||
          (t.text === "blind" && /^bak(?:e|ed|ing)$/.test(tokens[k + 1]?.text ?? "")),
      ))
  )
    return true;
  // "Stir the butter and sugar to a cream".
  if (/^creams?$/.test(words.at(-1) ?? "") && prev === "a" && /^(to|into|form)$/.test(prev2)) return true;
  // "Three cloves of garlic": a clove of something.
  if (next === "of" && /^cloves?$/.test(words.at(-1) ?? "")) return true;
  if (/^(or|instead|optional|if)$/.test(next) || /^(or|instead)$/.test(prev2)) return true;
  if (before.slice(Math.max(before.lastIndexOf(",") + 1, before.length - 6)).some((w) => cueWords.test(w)))
    return true;
  if (behind.slice(0, 5).some((w) => /^(if|optional|works|also|too)$/.test(w))) return true;
  // The verb itself ("cream the butter", "ice the cake", "seed the melon").
  const asNoun =
    /^(the|a|an|some|with|of|more|little|your)$/.test(prev) ||
    /^\d/.test(prev) ||
    (/^(and|,)$/.test(prev) && !oftenVerbs.test(words[0] ?? ""));
  if (!asNoun && (before.length === 0 || words[0] === action.verb.split(" ")[0])) return true;
  if (
    !asNoun &&
    hit.to === from + 1 &&
    verbReadings(words[0] ?? "").some((r) => r.form === "base" && r.tail.length === 0) &&
    !/^(butter|oil|flour|salt|cream|bread|ice)$/.test(words[0] ?? "")
  )
    return true;
  if (hit.food.shelf === "eggs" && names.has("egg")) return true;
  return /^(to|is|are|be)$/.test(prev);
};

const oftenVerbs =
  /^(mince|toast|wrap|pickle|grill|roast|juice|zest|dice|slice|stew|shell|mash|ice|cream|butter|oil|flour|salt|bread|season|pepper|sugar)$/;

// "Muffin cases", "a salad bowl", "a pastry brush".
const vesselHeads =
  /^(case|bowl|brush|tin|dish|tray|board|knife|spoon|plate|glass|jar|pot|pan|mould|ring|paper|bag|rack|shell|baller|cutter|grain|formation|shape)$/;

const cueWords =
  /^(until|till|like|optionally|prefer|resemble|resembles|resembling|serve|alternatively|using|depending|whatever|such|e\.g|eg)$/;

const ends = /^[.!?;:]$/;

const sentenceBefore = (tokens: readonly Token[], from: number): readonly string[] => {
  let start = from;
  while (start > 0 && !ends.test(tokens[start - 1]?.text ?? "")) start -= 1;
  return tokens.slice(start, from).map((t) => t.text);
};

const sentenceBehind = (tokens: readonly Token[], to: number): readonly string[] => {
  let end = to;
  while (end < tokens.length && !ends.test(tokens[end]?.text ?? "")) end += 1;
  return tokens.slice(to, end).map((t) => t.text);
};

// A raw food has its own line even when the dish or a part is called by it.
const raw: ReadonlySet<string> = new Set(
  "vegetables fruit herbs meat poultry fish eggs dry spices tins oils".split(" "),
);

/** The words mean a line of the list by another of its names, or something that was made. */
const isNamed = (
  words: readonly string[],
  food: Food,
  names: NameIndex,
  made: MadeHere,
  place: number,
): boolean => {
  const stems = words.flatMap((w) => w.split("-")).map(stem);
  const head = stems.at(-1) ?? "";
  const told = stems.slice(0, -1).filter((w) => !plainKinds.has(w));
  const isOwn = told.every((w) => names.has(w) || made.names.has(w));
  if (onlyOther(head, told, made)) return false;
  if ((head === "stock" || head === "broth" || head === "syrup") && place >= made.liquors[head] && isOwn)
    return true;
  if ((made.isKind(head) || (forms.has(head) && told.length > 0)) && isOwn) return true;
  if (made.names.has(head) && isOwn && !raw.has(food.shelf)) return true;
  if (stems.length === 1) return names.has(head) || nameWords(food).some((w) => names.has(w));
  if (names.has(stems.join(" "))) return true;
  // "Olive oil" where the list has sesame oil: another food of the same head. Plain words ("the warm milk") tell no kind.
  return names.has(head) && told.every((w) => names.has(w));
};

/** "Lime juice" where the list has the zest of limes alone, and the other way round. */
const onlyOther = (head: string, told: readonly string[], made: MadeHere): boolean =>
  (head === "juice" || head === "zest") &&
  told.some((w) => made.portions.get(w) === (head === "juice" ? "zest" : "juice"));

// What a food is cut into or gives: "bread slices" where bread is listed.
const forms: ReadonlySet<string> = new Set(
  "slice cube leaf clove juice grease piece zest rind peel stick skin fat dripping chunk crumb syrup flavouring".split(
    " ",
  ),
);

const plainKinds: ReadonlySet<string> = new Set(
  "white red green yellow brown black dark light fresh dried hot cold warm soft large small whole plain double single heavy full fat extra virgin fine ground chopped sliced grated crushed mixed unsalted salted caster granulated strong self raising all purpose icing rolled cooked smoked sweet vegetable cooking minced diced canned tinned shredded peeled cubed entire boiled melted whipped beaten stewed".split(
    " ",
  ),
);

const nameWords = (food: Food): readonly string[] =>
  food.name.split(" ").length > 1
    ? []
    : food.name
        .split(" ")
        .filter((w) => w.length > 3)
        .map(stem);

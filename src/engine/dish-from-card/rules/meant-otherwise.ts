import { verbReadings } from "../../larder/techniques.ts";
import type { Action } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { isTool } from "../steps/find-details.ts";
import type { NameIndex } from "../steps/name-index.ts";
import { stem } from "../steps/stem.ts";
import type { Token } from "../steps/tokens.ts";
import type { Hit } from "./food-names.ts";
import type { MadeHere } from "./made-here.ts";

/** A food in the words that is meant otherwise: another line by another name, a tool, a cue, the verb itself. */
export const excused = (
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

/** Ends a sentence. */
export const ends = /^[.!?;:]$/;

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
export const isNamed = (
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

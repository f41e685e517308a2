import { findFood } from "../../larder/foods.ts";
import { findSize, measureKind } from "../../larder/measures.ts";
import { normaliseName } from "../../larder/normalise-name.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import { type FoodMatch, findFoodIn, findTurned } from "./find-food.ts";
import { stateWords } from "./line-words.ts";
import { isAdverb, isParticiple, readModifiers, slice } from "./modifiers.ts";

/** The food's own words may begin with what was done to it ("beaten egg"): taken off when the food stays the same. */
export const ownModifiers = (
  line: string,
  tokens: readonly Token[],
  match: { food: Food; from: number; to: number },
): { start: number; size: string | null; state: string[]; preparation: string[] } => {
  const read = readModifiers(line, tokens, match.from, match.to);
  const { name, plural, nameUs } = match.food;
  const written = normaliseName(slice(line, tokens, match.from, match.to));
  const proper = [name, plural, nameUs ?? name].some((n) => normaliseName(n) === written);
  if (!proper)
    for (let start = read.start; start > match.from; start -= 1)
      if (
        tokens
          .slice(match.from, start)
          .every((t) => t.kind !== "word" || isParticiple(t) || isAdverb(t) || findSize(t.lower) !== null) &&
        findFood(slice(line, tokens, start, match.to))?.id === match.food.id
      )
        return { ...readModifiers(line, tokens, match.from, start + 1), start };
  // "frozen peas" keep their name, and are still frozen.
  return {
    start: match.from,
    size: null,
    state: read.state.filter((s) => s === "frozen" || s === "cooked"),
    preparation: [],
  };
};

/** "2 leaves of gelatine" are leaf gelatine, "1 stick of cinnamon" is a cinnamon stick; "1 chopped tomato" is in no tin. */
export const asCounted = (
  line: string,
  tokens: readonly Token[],
  match: FoodMatch | null,
  amounts: readonly Amount[],
): FoodMatch | null => {
  const unit = amounts[0]?.unit ?? null;
  if (match === null) return match;
  // "minced lamb" is lamb mince, wherever the table keeps it.
  const before = tokens[match.from - 1]?.lower ?? "";
  if (before === "minced" || before === "ground") {
    const mince = findFood(`${slice(line, tokens, match.from, match.to)} mince`);
    if (mince !== null) return { food: mince, from: match.from - 1, to: match.to };
  }
  if (unit === null) return match;
  const name = slice(line, tokens, match.from, match.to);
  if (unit === "piece" && match.food.id.startsWith("tinned-") && amounts.length === 1) {
    const { start } = readModifiers(line, tokens, match.from, match.to);
    const fresh = start > match.from ? findFood(slice(line, tokens, start, match.to)) : null;
    return fresh === null ? match : { food: fresh, from: start, to: match.to };
  }
  if (measureKind(unit) === "container") {
    const packed = findFood(`${unit} ${name}`);
    return packed === null ? match : { ...match, food: packed };
  }
  if (unit === "piece" || measureKind(unit) !== "piece") return match;
  const food = findFood(`${unit} ${name}`) ?? findFood(`${name} ${unit}`);
  return food === null ? match : { ...match, food };
};

/** "fresh or frozen raspberries": the food is the one that both words may stand before. */
export const withoutChoice = (
  line: string,
  tokens: readonly Token[],
  from: number,
  match: FoodMatch | null,
): FoodMatch | null => {
  if (match === null || match.from <= from || tokens[match.from - 1]?.lower !== "or") return match;
  if (!stateWords.has(tokens[match.from]?.lower ?? "")) return match;
  const food = findFood(slice(line, tokens, match.from + 1, match.to));
  return food === null ? match : { ...match, food, from: match.from + 1 };
};

/** A name across "of" ("cream of tartar") before one turned round ("lamb leg"), before the food after it. */
export const chooseMatch = (tokens: readonly Token[], from: number, to: number): FoodMatch | null => {
  const plain = findFoodIn(tokens, from, to);
  if (plain !== null && tokens.slice(plain.from, plain.to).some((t) => t.lower === "of")) return plain;
  return findTurned(tokens, from, to) ?? plain;
};

import { broughtWords } from "#words/brought-text.ts";
import { durationText } from "#words/quantity-text.ts";
import { stepLines } from "./instructions.ts";
import { minutesOfDuration } from "./iso-duration.ts";
import { plainLine, plainLines } from "./plain-lines.ts";
import { isObject, type JsonObject } from "./recipe-nodes.ts";

/**
 * A schema.org/Recipe as the plain text of a card, in the words it came in: title, yield, times, ingredients, method,
 * keeping nothing that is not the dish (pictures, ratings, nutrition). `known` has the nodes that others only point to.
 * Accepts what pages really hold: strings or lists or objects for nearly every property, HTML inside strings.
 */
export const textFromRecipe = (recipe: JsonObject, known: ReadonlyMap<string, JsonObject>): string => {
  const title = textsOf(recipe["name"] ?? recipe["headline"], known)[0] ?? "";
  const facts = [...yieldLines(recipe, known), ...timeLines(recipe)];
  const ingredients = textsOf(
    recipe["recipeIngredient"] ?? recipe["ingredients"] ?? recipe["supply"],
    known,
  ).flatMap(plainLines);
  const steps = stepLines(recipe["recipeInstructions"] ?? recipe["step"], known);
  const tools = textsOf(recipe["tool"], known).map(plainLine);
  const section = (heading: string, lines: readonly string[]): readonly string[] =>
    lines.length === 0 ? [] : ["", heading, ...lines];
  return `${[
    plainLine(title),
    ...(facts.length === 0 ? [] : ["", ...facts]),
    ...section(broughtWords.equipment, tools),
    ...section(broughtWords.ingredients, ingredients),
    ...section(broughtWords.method, steps),
  ].join("\n")}\n`;
};

/** How many it is for, in the page's words; of several the one with most to say. */
const yieldLines = (recipe: JsonObject, known: ReadonlyMap<string, JsonObject>): readonly string[] => {
  const given = textsOf(recipe["recipeYield"] ?? recipe["yield"], known)
    .map(plainLine)
    .filter((text) => text !== "");
  const best = given.reduce<string | null>((a, b) => (a !== null && a.length >= b.length ? a : b), null);
  if (best === null) return [];
  // A bare number is a count of servings; a count of things says that it is made.
  if (/^\d+(?:\s*(?:-|–|to)\s*\d+)?$/.test(best)) return [broughtWords.serves(best)];
  return [/^\d/.test(best) && !/serv|portion|people|person/i.test(best) ? broughtWords.makes(best) : best];
};

const timeLines = (recipe: JsonObject): readonly string[] =>
  (["prepTime", "cookTime", "totalTime"] as const).flatMap((key) => {
    const given = recipe[key];
    const minutes = typeof given === "string" ? minutesOfDuration(given) : null;
    return minutes === null || minutes <= 0 ? [] : [broughtWords.time[key](durationText(minutes))];
  });

/** The words of a value: of a string, a number, a language string, a node with a name, or a list of these. */
export const textsOf = (
  value: unknown,
  known: ReadonlyMap<string, JsonObject>,
  depth = 0,
): readonly string[] => {
  if (depth > 20 || value === null || value === undefined) return [];
  if (typeof value === "string") return [value];
  if (typeof value === "number") return [String(value)];
  if (Array.isArray(value)) return value.flatMap((item) => textsOf(item, known, depth + 1));
  if (!isObject(value)) return [];
  const id = value["@id"];
  if (typeof id === "string" && Object.keys(value).length === 1) {
    const other = known.get(id);
    return other === undefined ? [] : textsOf(other, known, depth + 1);
  }
  if (value["@value"] !== undefined) return textsOf(value["@value"], known, depth + 1);
  if (value["@list"] !== undefined) return textsOf(value["@list"], known, depth + 1);
  if (value["itemListElement"] !== undefined) return textsOf(value["itemListElement"], known, depth + 1);
  if (value["item"] !== undefined) return textsOf(value["item"], known, depth + 1);
  const words = [amountOf(value, known), textsOf(value["name"] ?? value["text"], known, depth + 1)[0]];
  const line = words.filter((word) => word !== undefined && word !== "").join(" ");
  return line === "" ? [] : [line];
};

/** The amount of a HowToSupply or QuantitativeValue, as it would be written before the food. */
const amountOf = (node: JsonObject, known: ReadonlyMap<string, JsonObject>): string => {
  const required = node["requiredQuantity"] ?? node["amount"];
  if (required !== undefined && required !== null)
    return isObject(required) ? amountOf(required, known) : (textsOf(required, known)[0] ?? "");
  const figure = node["value"] ?? node["minValue"];
  if (typeof figure !== "string" && typeof figure !== "number") return "";
  const most = node["value"] === undefined ? node["maxValue"] : undefined;
  const unit = node["unitText"] ?? node["unitCode"];
  return `${figure}${typeof most === "string" || typeof most === "number" ? `-${most}` : ""}${
    typeof unit === "string" ? ` ${unit}` : ""
  }`;
};

/** A JSON object, as it came. */
export type JsonObject = { readonly [key: string]: unknown };

export const isObject = (value: unknown): value is JsonObject =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Deeper than any page nests what it describes. */
const deepest = 40;

/** True for a node whose `@type` is, or has among others, the schema.org type of this name, however it is spelt out. */
export const isType = (node: JsonObject, name: string): boolean => {
  const is = (type: unknown): boolean =>
    typeof type === "string" && type.replace(/^(?:https?:\/\/schema\.org\/|schema:)/, "") === name;
  const type = node["@type"];
  return Array.isArray(type) ? type.some(is) : is(type);
};

/**
 * The nodes of type schema.org/Recipe in any JSON: by itself, in a list, in an `@graph`, or as what a page is about.
 * Where a node only points to another by `@id`, the one with the words is taken.
 */
export const recipeNodes = (json: unknown): readonly JsonObject[] => {
  const found: JsonObject[] = [];
  const walk = (value: unknown, depth: number): void => {
    if (depth > deepest) return;
    if (Array.isArray(value)) for (const item of value) walk(item, depth + 1);
    else if (isObject(value)) {
      if (isType(value, "Recipe") && Object.keys(value).some((key) => !key.startsWith("@")))
        found.push(value);
      else for (const item of Object.values(value)) walk(item, depth + 1);
    }
  };
  walk(json, 0);
  return found;
};

/** Every node of the JSON that has an `@id` and words, so that what is only pointed to can be looked up. */
export const nodesById = (json: unknown): ReadonlyMap<string, JsonObject> => {
  const found = new Map<string, JsonObject>();
  const walk = (value: unknown, depth: number): void => {
    if (depth > deepest) return;
    if (Array.isArray(value)) for (const item of value) walk(item, depth + 1);
    else if (isObject(value)) {
      const id = value["@id"];
      if (typeof id === "string" && Object.keys(value).length > 1 && !found.has(id)) found.set(id, value);
      for (const item of Object.values(value)) walk(item, depth + 1);
    }
  };
  walk(json, 0);
  return found;
};

import { type Action, exactly, grams, type Ingredient } from "#engine/index.ts";

/** A place for what was not read from a text. */
export const nowhere = { start: 0, end: 0 };

/** An ingredient of which only the name and the weight in grams are known; `more` adds what a test is about. */
export const bareIngredient = (
  index: number,
  name: string,
  weight: number | null,
  more: Partial<Ingredient> = {},
): Ingredient => ({
  index,
  text: name,
  span: nowhere,
  part: null,
  amounts: [],
  grams: weight === null ? null : exactly(grams(weight)),
  gramsBasis: weight === null ? "none" : "weighed",
  weightBasis: "as-purchased",
  food: null,
  name,
  nameSpan: nowhere,
  card: null,
  state: [],
  preparation: [],
  purpose: null,
  optional: false,
  alternatives: [],
  size: null,
  container: null,
  portion: null,
  equipment: false,
  ...more,
});

/** An action of the hands that uses nothing and says nothing; `more` adds what a test is about. */
export const bareAction = (id: string, technique: string, more: Partial<Action> = {}): Action => ({
  id,
  span: nowhere,
  technique,
  verb: technique,
  uses: [],
  minutes: null,
  station: "hands",
  attention: "hands",
  celsius: null,
  heat: null,
  core: null,
  vessel: null,
  cue: null,
  makes: null,
  after: [],
  alongside: false,
  batches: null,
  every: null,
  leastWait: null,
  ...more,
});

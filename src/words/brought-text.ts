/** The words that stand in a card where data gave only a figure. */
export const broughtWords = {
  equipment: "Equipment",
  ingredients: "Ingredients",
  method: "Method",
  serves: (count: string): string => `Serves ${count}`,
  makes: (what: string): string => `Makes ${what}`,
  time: {
    prepTime: (time: string): string => `Preparation time: ${time}`,
    cookTime: (time: string): string => `Cooking time: ${time}`,
    totalTime: (time: string): string => `Total time: ${time}`,
  },
  timed: (step: string, time: string): string => `${step} (${time}).`,
} as const;

/** Why something of a file did not come over, or came over in another way than looked for. */
export const bringTroubleText: Readonly<
  Record<"json-broken" | "no-dish" | "page-as-text" | "binary" | "empty", string>
> = {
  "json-broken": "the JSON cannot be read from here on; it is passed over",
  "no-dish": "no schema.org Recipe is in it; nothing was taken",
  "page-as-text": "the page carries no schema.org Recipe; its plain words were taken, look them over",
  binary: "this is not text; it is passed over",
  empty: "this is empty; it is passed over",
};

/** Headings over what was not understood in many cards, by the code of the finding. */
export const missedHeadings: Readonly<Record<string, string>> = {
  "food-unknown": "Foods not known",
  "unit-doubtful": "Measures in doubt",
  "line-not-understood": "Lines not understood",
  "technique-unknown": "Verbs not known",
  "swap-not-understood": "Swaps not understood",
  "keeping-not-understood": "Keeping not understood",
};

const lines = [
  "250 g plain flour, sifted",
  "2 large onions, finely chopped",
  "3 cloves of garlic, crushed",
  "1/2 tsp ground cumin",
  "a good slosh of white wine, about 150 ml",
  "2 x 400 g tins of chickpeas, drained",
  "juice and zest of 1 lemon",
  "salt and black pepper",
  "400 ml whole milk",
  "3 egg yolks",
];

const steps = [
  "Heat the oil in a wide pan and sweat the onions over a low heat for 12 minutes, till they're soft.",
  "Add the garlic and cumin and cook for a minute, then pour in the wine and let it bubble away.",
  "Meanwhile, whisk the yolks with half the milk and set aside.",
  "Stir in the chickpeas and the rest of the milk, bring to the boil and simmer for 20 to 25 minutes.",
  "Bake at 180°C for 30 minutes, until golden, then rest for 10 minutes.",
];

/** An invented card of about so many lines: a third ingredients, the rest steps. */
export const cardOf = (count: number): string => {
  const inList = Math.max(1, Math.floor(count / 3));
  const inMethod = Math.max(1, count - inList - 4);
  return [
    "A long supper dish",
    "Serves 8",
    "Ingredients",
    ...Array.from({ length: inList }, (_, i) => lines[i % lines.length]),
    "Method",
    ...Array.from({ length: inMethod }, (_, i) => `${i + 1}. ${steps[i % steps.length]}`),
  ].join("\n");
};

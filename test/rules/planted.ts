import type { Code } from "#engine/index.ts";

/** A slip put into a clean card: these words are replaced, and this is what should be said. */
export type Planted = {
  readonly card: string;
  readonly from: string;
  readonly to: string;
  readonly code: Code;
};

/** One slip: the card, the words, what they become, the code that should be said. */
export const slip = (card: string, from: string, to: string, code: Code): Planted => ({
  card,
  from,
  to,
  code,
});

/** Slips as cooks make them: a figure mistyped, a line forgotten, a step out of order, a hazard overlooked. */
export const planted: readonly Planted[] = [
  slip("custard-tart", "180 °C", "180 °C (450 °F)", "settings-disagree"),
  slip("custard-tart", "Serves 8\n", "", "yield-missing"),
  slip("custard-tart", "nutmeg, for grating", "nutmeg, for grating\n200 g raspberries", "listed-not-used"),
  slip("white-loaf", "7 g instant yeast", "70 g instant yeast", "yeast-doubtful"),
  slip("white-loaf", "10 g salt", "100 g salt", "salt-doubtful"),
  slip("white-loaf", "220 °C", "520 °C", "temperature-doubtful"),
  slip("white-loaf", "1 tbsp olive oil\n", "", "used-not-listed"),
  slip(
    "white-loaf",
    "Bake for 35 minutes, until the loaf sounds hollow when tapped.",
    "Bake the loaf.",
    "time-missing",
  ),
  slip("white-loaf", "Heat the oven to 220 °C.\n6. Bake", "Bake at 220 °C", "oven-not-preheated"),
  slip("roast-pork", "4. Rest the pork for 20 minutes on a warm plate.\n", "", "rest-missing"),
  slip("roast-pork", ", until the middle of the joint reads 72 °C", "", "core-temperature-missing"),
  slip("roast-pork", "2 tsp salt", "200 g salt", "salt-doubtful"),
  slip("roast-pork", "2 onions, sliced", "2 onions, sliced\n2 onions, sliced", "listed-twice"),
  slip("roast-pork", "300 ml dry cider\n", "", "used-not-listed"),
  slip("mussels", "Serves 2", "Serves 200", "portion-unlikely"),
  slip("mussels", "1 kg mussels", "1 kg mussels\n1 kg mussels", "listed-twice"),
  slip(
    "kidney-bean-chilli",
    ", bring to the boil and boil hard for 10 minutes. Turn down and simmer",
    " and simmer",
    "beans-not-boiled",
  ),
  slip(
    "kidney-bean-chilli",
    "fry the onions and peppers for 10 minutes",
    "fry the onions and peppers for 10 hours",
    "time-unlikely",
  ),
  slip("panna-cotta", "4 leaves of gelatine (about 8 g)", "90 g powdered gelatine", "gelatine-doubtful"),
  slip("panna-cotta", "300 ml buttermilk", "300 ml buttermilk\n100 g flaked almonds", "listed-not-used"),
  slip("vanilla-ice-cream", "Makes 1 litre\n", "", "yield-missing"),
  slip("vanilla-ice-cream", "130 g caster sugar", "130 g (10 oz) caster sugar", "amounts-disagree"),
  slip("victoria-sponge", "1 tsp baking powder", "60 g baking powder", "raising-agent-doubtful"),
  slip("burgers-us", ", until the middle reads 160°F", "", "core-temperature-missing"),
  slip("burgers-us", "160°F", "120°F", "core-too-low"),
  slip("chicken-traybake", "2. Toss", "2. Rinse the chicken thighs. Toss", "poultry-washed"),
  slip(
    "chicken-traybake",
    "Preheat the oven to 200 °C",
    "Preheat the oven to 200 °C (gas 9)",
    "settings-disagree",
  ),
  slip("chicken-traybake", "1 lemon\n", "1 lemon\n400 g courgettes, sliced\n", "listed-not-used"),
  slip("naan", "1. Stir", "1. Meanwhile, stir", "meanwhile-alone"),
  slip("naan", "1 1/2 tsp baking powder", "50 g baking powder", "raising-agent-doubtful"),
  slip(
    "pilaf",
    "Fluff with a fork and serve at once.",
    "Leave it to stand for 4 hours and chill overnight.",
    "cooling-missing",
  ),
  slip("pilaf", "pour in the stock", "pour in 900 ml stock", "amount-beyond-list"),
  slip("tomato-salad", "1/2 tsp flaky salt", "60 g flaky salt", "salt-doubtful"),
  slip("tomato-salad", "3 tbsp extra virgin olive oil\n", "", "used-not-listed"),
  slip("leek-potato-soup", "stir in the cream", "stir in 300 ml of the cream", "amount-beyond-list"),
  slip(
    "leek-potato-soup",
    "3. Blend until smooth",
    "3. Blend until smooth, stir in the cream and season.\n4. Blend until smooth",
    "step-repeated",
  ),
  slip("leek-potato-soup", "Serves 6\n", "", "yield-missing"),
  slip(
    "beef-stew",
    "1 kg stewing beef, in 3 cm cubes",
    "1 kg (1 lb) stewing beef, in 3 cm cubes",
    "amounts-disagree",
  ),
  slip("beef-stew", "160 °C (140 °C fan)", "160 °C (gas mark 8)", "settings-disagree"),
  slip("beef-stew", "500 ml brown ale\n", "", "used-not-listed"),
  slip("pancakes-us", "1/2 teaspoon baking soda", "3 tablespoons baking soda", "raising-agent-doubtful"),
  slip("pancakes-us", "2 cups buttermilk", "2 cups raw buttermilk", "raw-milk-used"),
  slip(
    "braised-lamb",
    "cook in the oven for 2 hours 45 minutes, until the meat comes off the bone",
    "cook in the oven",
    "time-missing",
  ),
  slip("braised-lamb", "Serves 4", "Serves 400", "portion-unlikely"),
  slip(
    "oat-cookies-vegan",
    "5. Bake for 12 to 14 minutes, until the edges are golden. Cool on the trays for 10 minutes.",
    "5. Chill for 1 hour and serve.",
    "raw-flour-eaten",
  ),
  slip("victoria-sponge", "2 tbsp milk\n", "", "used-not-listed"),
  slip("naan", "Knead for 2 minutes", "Knead for 2 hours", "time-unlikely"),
  slip(
    "chicken-traybake",
    ", until the rice is tender and the juices of the chicken run clear",
    "",
    "core-temperature-missing",
  ),
  slip("oat-cookies-vegan", "60 ml oat milk\n", "", "used-not-listed"),
  slip("beef-stew", "Heat the rest of the oil", "Heat three quarters of the oil", "more-used-than-listed"),
  slip("kidney-bean-chilli", "1 tbsp ground cumin\n", "", "used-not-listed"),
  slip("chickpea-curry", "1 x 400 ml tin coconut milk\n", "", "used-not-listed"),
  slip(
    "salmon-potatoes",
    "2. Boil the potatoes in salted water for 18 minutes, until tender.",
    "2. Mash the potatoes.\n3. Boil the potatoes in salted water for 18 minutes, until tender.",
    "order-doubtful",
  ),
];

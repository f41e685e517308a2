import { type Planted, slip } from "./planted.ts";

/** Slips in cards that no rule was worked on, written after the last change to the rules of order, ratio and heat. */
export const plantedHeldOutTwo: readonly Planted[] = [
  slip(
    "beef-stroganoff",
    "boil the tagliatelle for 10 minutes and drain. Serve with the stroganoff.",
    "drain the tagliatelle and boil for 10 minutes. Serve with the stroganoff.",
    "order-doubtful",
  ),
  slip("beef-stroganoff", "150ml soured cream\n", "", "used-not-listed"),
  slip("beef-stroganoff", "pour in the stock", "pour in 500ml of the stock", "amount-beyond-list"),
  slip(
    "chicken-leek-pie",
    "Poach the chicken in the stock for 25 minutes till it's cooked through, 75 in the middle.",
    "Poach the chicken in the stock for 8 minutes, 48 in the middle.",
    "core-too-low",
  ),
  slip("chicken-leek-pie", "Oven at 200. Filling", "Filling", "temperature-missing"),
  slip("chicken-leek-pie", "Tarragon, small bunch, chopped\n", "", "used-not-listed"),
  slip("jollof-rice", "Chicken stock 3 litres", "Chicken stock 6 litres", "ratio-broken"),
  slip(
    "jollof-rice",
    "Straight to the hot cupboard above 63 and gone within two hours.",
    "Leave it on the side all afternoon till the guests are in.",
    "left-out",
  ),
  slip("baked-cheesecake", "160C/140C fan/gas 3", "160C/140C fan/gas 8", "settings-disagree"),
  slip(
    "baked-cheesecake",
    "2 tsp vanilla extract",
    "2 tsp vanilla extract\n50g ground almonds",
    "listed-not-used",
  ),
  slip(
    "baked-cheesecake",
    "2. Beat the cream cheese and sugar for 2 minutes. Beat in the eggs, soured cream and vanilla.\n3. Pour over the base and bake for 50 minutes, until set with a slight wobble.",
    "2. Pour the filling over the base and bake for 50 minutes, until set with a slight wobble.\n3. For the filling, beat the cream cheese and sugar for 2 minutes. Beat in the eggs, soured cream and vanilla.",
    "order-doubtful",
  ),
  slip("oven-ribs-us", "Preheat the oven to 300°F.", "Preheat the oven to 300°C.", "temperature-doubtful"),
  slip("oven-ribs-us", "2 teaspoons salt", "2 cups salt", "salt-doubtful"),
  slip("oven-ribs-us", "Serves 6\n\n", "", "yield-missing"),
  slip("garlic-mayonnaise", "4 egg yolks, pasteurised", "4 egg yolks", "raw-egg"),
  slip("garlic-mayonnaise", "Sunflower oil 500ml", "Sunflower oil 500ml (2 fl oz)", "amounts-disagree"),
  slip(
    "lamb-koftas",
    "grill for 12 minutes, turning, until browned and cooked through",
    "grill for 3 minutes, turning, until browned outside",
    "core-temperature-missing",
  ),
  slip(
    "lamb-koftas",
    "1. Mix the mince, onion, cumin and half the mint. Shape into 12 koftas on skewers and chill for 20 minutes.\n2. Mix the yogurt with the rest of the mint.\n3. Brush the koftas with the oil and grill for 12 minutes, turning, until browned and cooked through.\n4. Serve with the yogurt in the flatbreads.",
    "1. Mix the mince, onion, cumin and half the mint. Shape into 12 koftas on skewers and chill for 20 minutes.\n2. Serve with the yogurt in the flatbreads.\n3. Brush the koftas with the oil and grill for 12 minutes, turning, until browned and cooked through. Mix the yogurt with the rest of the mint.",
    "order-doubtful",
  ),
  slip("rhubarb-fool", "Whipping cream 400ml", "Whipping cream 800ml", "ratio-broken"),
  slip(
    "rhubarb-fool",
    "Whip the cream to soft peaks, fold in the custard and then the rhubarb, leave it streaky.",
    "Fold the custard and then the rhubarb into the whipped cream, leave it streaky. Whip the cream to soft peaks.",
    "order-doubtful",
  ),
];

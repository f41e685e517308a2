/** What the cards of the timed runs are made of. */
export type Foods = readonly string[];

export const foods: Foods =
  "plain flour|unsalted butter|caster sugar|whole milk|double cream|large eggs|brown onions|leeks|carrots|celery sticks|garlic cloves|floury potatoes|cherry tomatoes|red peppers|chestnut mushrooms|baby spinach|savoy cabbage|smoked haddock|salmon fillets|chicken thighs|lamb shoulder|pork belly|beef shin|smoked bacon|green lentils|pearl barley|basmati rice|penne|dried apricots|hazelnuts|flaked almonds|mature cheddar|parmesan|goat's cheese|natural yogurt|lemons|oranges|cooking apples|raspberries|rhubarb|dark chocolate|cocoa powder|runny honey|olive oil|cider vinegar|wholegrain mustard|capers|anchovy fillets|flat-leaf parsley|thyme|bay leaves|ground cumin|smoked paprika|cayenne pepper|sea salt|black pepper|vegetable stock|dry cider|white wine|tinned chickpeas|grandmother's relish|pickled samphire".split(
    "|",
  );

/** How much; # stands for a number. */
export const measures: readonly string[] =
  "# g|# g|# g|# ml|# ml|#|2 tbsp|1/2 tsp|1 1/2 cups|a handful of|a good knob of|a slosh of, about # ml,|2 x 400 g tins|a small bunch of|about # g|2-3|the juice of 1 lemon and # g|1 heaped tbsp|a pinch of".split(
    "|",
  );

export const preparations: readonly string[] =
  "finely chopped|sliced|peeled and diced|at room temperature|toasted and roughly chopped|drained|trimmed and halved|grated|rinsed|cut into 2 cm cubes|plus extra to serve|softened|torn|beaten".split(
    "|",
  );

/** What is done; @ stands for a food of the list, # for minutes, ° for the heat of an oven. */
export const steps: readonly string[] =
  "Heat the oil in a wide pan and sweat the @ over a low heat for # minutes, till soft but not coloured.|Add the @ and cook for a minute, then pour in half the @ and let it bubble away.|Meanwhile, whisk the @ with the @ and set aside.|Stir in the @ and the rest of the @, bring to the boil and simmer gently for # minutes.|Bake at ° for # minutes, until golden, then rest for 10 minutes.|Drain the @, return it to the pan and shake it dry over the heat.|Fold the @ through the mixture, season well and leave to cool.|Toss the @ in the @, spread them over a tray and roast at ° for # minutes, turning once.|Rub the @ into the @ till it looks like crumbs, bring together with a splash of water and chill for # minutes.|Blend until smooth, pass through a sieve and taste for salt.|Brown the @ on all sides in batches and lift out on to a plate; soften the @ in the same pan.|Cover with a lid and cook in the oven at ° for # minutes, until it falls apart at the touch of a fork.|Whip the @ to soft peaks, then fold in the @ in two goes.|Strain the stock, skim it and reduce by a third over a high heat, about # minutes.|Serve with the @ and a spoonful of @ on top.|Peel and slice the @.|Leave to stand for # minutes.|Season the @ and keep it warm.|Add the @ and stir.|Chill for # minutes.|Grate the @ over and serve.|Rinse the @ under cold water.|Whisk in the @, a little at a time.|Take off the heat and stir in the @.|Line a tin with paper.".split(
    "|",
  );

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Card } from "../model/card.ts";
import { cardFromText, mostCharacters } from "./card-from-text.ts";

/** Title | yields | times | roles with their parts and how many lines each has. */
const outline = (card: Card): string =>
  [
    card.title?.text ?? "–",
    card.yields.map((y) => y.text).join(" + ") || "–",
    card.times.map((t) => t.text).join(" + ") || "–",
    card.blocks.map((b) => `${b.role}${b.part === null ? "" : ` (${b.part})`} ${b.lines.length}`).join(", "),
  ].join(" | ");

const cards: readonly { readonly is: string; readonly text: string; readonly outline: string }[] = [
  {
    is: "md",
    text: "# Leek and mussel broth\n\nServes 4 | Prep 15 min | Cook 25 min\n\n## Ingredients\n\n- 1 kg mussels, scrubbed\n- 2 leeks, sliced\n- 200 ml dry cider\n\n## Method\n\n1. Sweat the leeks in butter for 8 minutes.\n2. Add the mussels and the cider, cover and steam for 4 minutes.\n\n## Notes\n\nThrow away any mussel that stays shut.\n",
    outline:
      "Leek and mussel broth | Serves 4 | Prep 15 min + Cook 25 min | ingredients 3, method 2, notes 1",
  },
  {
    is: "caps",
    text: "PLUM CRUMBLE\nSERVES 6\n\nINGREDIENTS\n800 g plums\n100 g sugar\nFOR THE CRUMBLE\n200 g flour\n100 g butter\n\nMETHOD\nHalve the plums and lay them in a dish with the sugar.\nRub the butter into the flour and scatter over.\nBake at 180C for 40 minutes.\n",
    outline: "PLUM CRUMBLE | SERVES 6 | – | ingredients 2, ingredients (crumble) 2, method 3",
  },
  {
    is: "none",
    text: "Barley salad\nfor 8 people\n\n400 g pearl barley\n2 cucumbers\na bunch of mint\njuice of 2 lemons\n\nBoil the barley for 30 minutes, then drain and cool it.\nDice the cucumbers, chop the mint and mix everything with the lemon juice.\n",
    outline: "Barley salad | for 8 people | – | ingredients 4, method 2",
  },
  {
    is: "article",
    text: "Glazed gammon\nDoes 8\n\na 2.5kg piece of gammon, boned\n2 tbsp mustard\na good handful of cloves\n\nBoil the gammon for 2 hours, then drain it.\nSpread it with the mustard, stud it with the cloves and bake for half an hour.\n",
    outline: "Glazed gammon | Does 8 | – | ingredients 3, method 2",
  },
  {
    is: "para",
    text: "Quick pickled onions\n\nSlice 2 red onions thinly. Warm 200 ml cider vinegar with 50 g sugar and 1 tsp salt until it dissolves, about 3 minutes. Pour over the onions and leave for 1 hour. They keep for 2 weeks in the fridge.\n",
    outline: "Quick pickled onions | – | – | method 3, keeping 1",
  },
  {
    is: "spoken",
    text: "right, so you want two onions, chopped, and a good slosh of cider, about a hundred and fifty ml. Sweat the onions in forty grams of butter till they're soft, ten minutes or so, then in goes the cider and six hundred grams of mussels. Lid on, four minutes, done. That'll feed four easily.\n",
    outline: "– | feed four easily | – | method 4",
  },
  {
    is: "colon",
    text: "Walnut tart\nMakes one 23 cm tart\nPastry:\n200g flour\n100g butter\n1 egg\nFilling:\n200g walnuts\n150ml cream\nMethod:\n1) Make the pastry and chill for 30 minutes.\n2) Mix the filling and pour it in.\n3) Bake at 170C for 35 minutes.\nTo serve: crème fraîche.\n",
    outline:
      "Walnut tart | Makes one 23 cm tart | – | ingredients (pastry) 3, ingredients (filling) 2, method 3, to-serve 1",
  },
  {
    is: "clutter",
    text: "Jump to Recipe\nPrint\nPumpkin soup\nby Hattie Marlow\n4.8 from 112 votes\nPrep Time: 10 mins\nCook Time: 30 mins\nServings: 4\nCourse: Soup\nCalories: 210\nINGREDIENTS\n1x 2x 3x\n□ 1 pumpkin\n□ 1 onion\n□ 1 litre stock\nINSTRUCTIONS\nChop the pumpkin and onion.\nSimmer in the stock for 25 minutes.\nBlend until smooth.\nShare this\n",
    outline: "Pumpkin soup | Servings: 4 | Prep Time: 10 mins + Cook Time: 30 mins | ingredients 3, method 3",
  },
  {
    is: "stepword",
    text: "Dal\n\nIngredients:\n250 g red lentils\n1 tsp turmeric\n\nStep 1: Rinse the lentils.\nStep 2: Simmer with the turmeric for 20 minutes.\n",
    outline: "Dal | – | – | ingredients 2, method 2",
  },
  {
    is: "crlf",
    text: "Flatbreads\r\n\r\nMakes 8\r\n\r\nIngredients\r\n300g flour\r\n200g yogurt\r\n\r\nMethod\r\nMix to a dough.\r\nFry for 2 minutes a side.\r\n",
    outline: "Flatbreads | Makes 8 | – | ingredients 2, method 2",
  },
  {
    is: "bom tabs",
    text: "﻿Mint sauce\n\tServes 6\n\n\t1 bunch\tmint\n\t2 tbsp\tsugar\n\t100 ml\tvinegar\n\n\tChop the mint and stir everything together.",
    outline: "Mint sauce | Serves 6 | – | ingredients 3, method 1",
  },
  {
    is: "table",
    text: "Shortbread\n\n| Amount | Food |\n| --- | --- |\n| 250 g | butter |\n| 120 g | sugar |\n| 350 g | flour |\n\n1. Cream the butter and sugar.\n2. Work in the flour. Bake at 160C for 20 minutes.\n",
    outline: "Shortbread | – | – | ingredients 3, method 2",
  },
  {
    is: "inline list",
    text: "Chimichurri\nServes 6\n\nIngredients: 1 bunch parsley, finely chopped, 3 cloves garlic, crushed, 100 ml olive oil, 2 tbsp red wine vinegar, salt\n\nMethod: Stir everything together. Leave for an hour before serving.\n",
    outline: "Chimichurri | Serves 6 | – | ingredients 5, method 1",
  },
  {
    is: "old",
    text: "TO MAKE A PLAIN PEA SOUP.\n\nINGREDIENTS.—1 pint of split peas, 2 onions, 1 head of celery, 3 quarts of water, pepper and salt to taste.\n\nMode.—Soak the peas overnight. Boil all gently for 3 hours, then rub through a sieve and season.\n\nSufficient for 8 persons.\n",
    outline: "TO MAKE A PLAIN PEA SOUP | Sufficient for 8 persons | – | ingredients 5, method 1",
  },
  {
    is: "wrapped",
    text: "Beef in stout\n\nServes 6\n\n1.2 kg beef shin, cut into large\n  chunks\n2 onions, sliced\n500 ml stout\n\nBrown the beef in batches in a hot pan with a little oil and then lift it\nout on to a plate. Soften the onions in the same pan for ten minutes.\n\nPour in the stout, bring it to the boil and cook in the oven at 150C for\nthree hours until it falls apart.\n",
    outline: "Beef in stout | Serves 6 | – | ingredients 3, method 2",
  },
  {
    is: "paras keeping",
    text: "Roast peppers\n\n6 red peppers\n60 ml olive oil\n\nRoast the peppers at 220C for 25 minutes, until black in places.\n\nPeel them and dress with the oil.\n\nKeeps 4 days in the fridge.\n",
    outline: "Roast peppers | – | – | ingredients 2, method 2, keeping 1",
  },
  {
    is: "emoji",
    text: "Charred corn\n\n🍽️ Servings: 4\n⏲️ Prep time: 10 min\n🍳 Cook time: 15 min\n\nIngredients\n• 4 ears of corn\n• 50 g butter\nDirections\n1 Grill the corn for 12 minutes, turning.\n2 Roll in the butter.\n",
    outline: "Charred corn | Servings: 4 | Prep time: 10 min + Cook time: 15 min | ingredients 2, method 2",
  },
  {
    is: "numalone",
    text: "Poached pears\nServes 4\nIngredients\n4 pears\n500 ml red wine\nMethod\n1\nPeel the pears.\n2\nSimmer in the wine for 30 minutes.\n",
    outline: "Poached pears | Serves 4 | – | ingredients 2, method 2",
  },
  {
    is: "bold",
    text: "**Tomato relish**\n\n*Makes 3 jars*\n\n**You will need**\n1 kg tomatoes\n300 g sugar\n200 ml vinegar\n\n**What to do**\nBoil everything for 1 hour till thick.\n",
    outline: "Tomato relish | Makes 3 jars | – | ingredients 3, method 1",
  },
  {
    is: "underline",
    text: "Kedgeree\n========\n\nServes 4\n\nIngredients\n-----------\n400 g smoked haddock\n300 g rice\n\nMethod\n------\nPoach the fish for 8 minutes. Cook the rice and fold together.\n",
    outline: "Kedgeree | Serves 4 | – | ingredients 2, method 1",
  },
  {
    is: "no title",
    text: "500 g potatoes\n100 g butter\nBoil the potatoes for 20 minutes and mash with the butter.\n",
    outline: "– | – | – | ingredients 2, method 1",
  },
  {
    is: "serve list",
    text: "Lamb skewers\n\n800 g lamb, diced\n2 tbsp oil\n\nTo serve:\nflatbreads\nlemon wedges\n\nGrill the lamb for 8 minutes. Serve with the flatbreads and lemon.\n",
    outline: "Lamb skewers | – | – | ingredients 2, ingredients (to serve) 2, method 1",
  },
  {
    is: "parts method",
    text: "Layer cake\n\nFor the sponge\n200 g butter\n200 g sugar\n4 eggs\n200 g self-raising flour\n\nFor the icing\n100 g butter\n200 g icing sugar\n\nFor the sponge\n1. Cream the butter and sugar, beat in the eggs, fold in the flour.\n2. Bake at 180C for 25 minutes.\n\nFor the icing\n3. Beat the butter and sugar together. Spread over the cold cake.\n",
    outline:
      "Layer cake | – | – | ingredients (sponge) 4, ingredients (icing) 2, method (sponge) 2, method (icing) 1",
  },
  {
    is: "inline num",
    text: "Omelette\nServes 1\n3 eggs\n10 g butter\nMethod: 1. Beat the eggs. 2. Melt the butter in a pan. 3. Pour in the eggs and cook for 2 minutes.\n",
    outline: "Omelette | Serves 1 | – | ingredients 2, method 3",
  },
  {
    is: "serves time",
    text: "Braised chicory\nServes 4 - 45 mins\n\n4 heads chicory\n30 g butter\n200 ml stock\n\nBrown the chicory in the butter, then braise in the stock for 35 minutes.\n",
    outline: "Braised chicory | Serves 4 | 45 mins | ingredients 3, method 1",
  },
  {
    is: "yield100",
    text: "Baked beans for a crowd\nYield 100 Portion 1/2 Cup\n\nBeans, haricot, dry 5 kg\nOnions, chopped 1 kg\nWater 12 l\n\nSoak the beans overnight.\nSimmer with the onions for 2 hours.\n",
    outline: "Baked beans for a crowd | Yield 100 Portion 1/2 Cup | – | ingredients 3, method 2",
  },
  {
    is: "fills",
    text: "Lemon curd tart\nFills a 23 cm tin\n\n4 lemons\n200 g sugar\n5 eggs\n\nWhisk and bake at 150C for 30 minutes.\n",
    outline: "Lemon curd tart | Fills a 23 cm tin | – | ingredients 3, method 1",
  },
  {
    is: "family",
    text: "Baked rice\n\nUsually enough for a family of five.\n\n300 g pudding rice\n1.2 litres milk\n\nBake at 150C for 2 hours.\n",
    outline: "Baked rice | Usually enough for a family of five | – | ingredients 2, method 1",
  },
  {
    is: "swaps",
    text: "Nut roast\nServes 8\nIngredients\n300 g mixed nuts\n200 g breadcrumbs\nMethod\nChop the nuts and mix with the breadcrumbs. Bake at 180C for 45 minutes.\nKeeping\n3 days in the fridge.\nSwaps\nCoeliac: replace the breadcrumbs with the same weight of gluten-free breadcrumbs.\n",
    outline: "Nut roast | Serves 8 | – | ingredients 2, method 1, keeping 1, swaps 1",
  },
  {
    is: "question",
    text: "Would you like the recipe?\n\nYou need 200 g of flour and 3 eggs. Whisk them with 500 ml milk and fry thin pancakes, a minute each side. It makes about 12.\n",
    outline: "Would you like the recipe? | makes about 12 | – | method 1",
  },
  {
    is: "lead",
    text: "Fennel slaw\n\nThis one is for hot days. It wants to be sharp, and it wants eating at once.\n\n2 fennel bulbs\n1 lemon\n3 tbsp olive oil\n\nShave the fennel and dress it with the lemon and the oil.\n",
    outline: "Fennel slaw | – | – | notes 1, ingredients 3, method 1",
  },
  {
    is: "semicolon",
    text: "Green sauce\nServes 10\nIngredients: a large bunch of parsley; 2 tbsp capers; 4 anchovy fillets; 200 ml olive oil\nChop it all and loosen with the oil.\n",
    outline: "Green sauce | Serves 10 | – | ingredients 4, method 1",
  },
  {
    is: "title serves",
    text: "Fish pie (serves 6)\n\n900 g fish\n1 kg potatoes\n600 ml milk\n\nPoach the fish in the milk for 10 minutes. Mash the potatoes and bake on top at 200C for 30 minutes.\n",
    outline: "Fish pie | serves 6 | – | ingredients 3, method 1",
  },
  {
    is: "tosser",
    text: "Tray of roots\n\n2 kg mixed roots: carrots, parsnips, beetroot\n4 tbsp oil\nSalt\n\nRoast at 200C for 50 minutes.\n\nTip: turn them once.\n",
    outline: "Tray of roots | – | – | ingredients 3, method 1, notes 1",
  },
  {
    is: "two cols",
    text: "Ragu\n\nBeef mince – 500 g\nPork mince – 250 g\nPassata – 700 ml\nRed wine – 1 glass\n\nBrown the meat. Add the rest and simmer for 2 hours.\n",
    outline: "Ragu | – | – | ingredients 4, method 1",
  },
  {
    is: "long para",
    text: "Stew\n\nServes 4\n\n600 g lamb\n2 onions\n1 tin tomatoes\n\nBrown the lamb in a little oil over a high heat for 8 minutes. Take it out and soften the onions in the same pan for 10 minutes. Put the lamb back, add the tomatoes and half a tin of water. Simmer for 1 hour 30 minutes with the lid on, until the meat is tender. Season and serve with bread.\n",
    outline: "Stew | Serves 4 | – | ingredients 3, method 5",
  },
  {
    is: "makes",
    text: "Ginger biscuits\nmakes 24\n\n100 g butter\n1 tbsp ground ginger\n100 g golden syrup\n350 g self-raising flour\n\nmelt the butter and syrup. stir in the flour and ginger. roll into balls and bake at 180C for 12 minutes.\n",
    outline: "Ginger biscuits | makes 24 | – | ingredients 4, method 1",
  },
  {
    is: "a page with its buttons and its readers",
    text: "Home > Suppers\nBean pot\n\u2605\u2605\u2605\u2605\u2606 4.3 (128 ratings)\nJump to Recipe\nPrint\nPrep: 10 mins\nCook: 40 mins\nServes 4 - 6\nIngredients\n\u25a2 2 tbsp oil\n\u25a2 1 onion\n\u25a2 2 tins beans\nMethod\nSTEP 1\nFry the onion in the oil for 8 mins.\nSTEP 2\nAdd the beans and simmer for 25 mins.\nRecipe tip\nServe with bread.\nDid you make this recipe?\nLeave a comment\nComments (3)\nGail says:\nI used 200g butter and cooked it for 2 hours!\nYou might also like\nLentil pie\n",
    outline: "Bean pot | Serves 4 - 6 | Prep: 10 mins + Cook: 40 mins | ingredients 3, method 2, notes 1",
  },
  {
    is: "a list that talks, between its headings",
    text: "Damson ice\nServes 6\n\nIngredients\n700 g damsons, the riper the better. Sloes do as well, though you will want more sugar.\nA pint of cream, whipped until it only just holds.\nSugar (150 g)\nsalt\nIf you can't get damsons, plums are fine but duller.\nBrandy (to soak the sponge, 2 spoons for 6 glasses)\n3 - inch piece of cinnamon stick\n\nMethod\n1. Stew the damsons for 20 minutes.\n2. Fold in the cream and freeze.\n",
    outline: "Damson ice | Serves 6 | – | ingredients 4, notes 1, ingredients 2, method 2",
  },
  {
    is: "parts named once over their foods and once over their work",
    text: "Gooseberry boats\nfor 8\n\nPastry\n200 g flour\n100 g butter\n\nIce cream\n300 ml cream\n4 egg yolks\n\nPastry\nRub the butter into the flour and chill it for 1 hour.\nBake at 180C for 15 minutes.\n\nIce cream\nHeat the cream with the yolks and churn it.\n",
    outline:
      "Gooseberry boats | for 8 | – | ingredients (pastry) 2, ingredients (ice cream) 2, method (pastry) 2, method (ice cream) 1",
  },
  {
    is: "work of one short sentence",
    text: "Sea kale\nFills a pudding basin\n\n500 g sea kale\n\nSteam for 9 minutes.\n",
    outline: "Sea kale | Fills a pudding basin | – | ingredients 1, method 1",
  },
  {
    is: "buttons with pictures, stars and a table of nutrients",
    text: "Quince jelly\n4.7 \u2605\u2605\u2605\u2605\u2605 (88)\n\u2193 Jump to Recipe\n\ud83d\udda8 Print Recipe\nServes 6\nCalories 140 kcal\nIngredients\n1 kg quinces\n400 g sugar\nMethod\nSimmer the quinces for 50 minutes and strain.\nNutrition per serving\nFat 0.2 g\nSalt 0.1 g\n",
    outline: "Quince jelly | Serves 6 | – | ingredients 2, method 1, notes 2",
  },
  {
    is: "an amount behind its food is no cut",
    text: "Leek dish\nServes 2\nIngredients: Leeks, 3 large, washed and finely sliced\nMethod: Sweat them for 12 minutes.\n",
    outline: "Leek dish | Serves 2 | – | ingredients 1, method 1",
  },
  {
    is: "a list with its heading and work that begins before its own",
    text: "Beetroot cure\nIngredients\n1 kg salmon\n200 g salt\n\nRub the salt into the salmon and chill it for 24 hours, turning it once.\nRinse, dry and slice it until nothing is left.\n\nMethod for the sauce\nStir mustard into cream for 2 minutes.\n",
    outline: "Beetroot cure | – | – | ingredients 2, method 2, method (sauce) 1",
  },
  {
    is: "told in one breath",
    text: "Nan's cheese scones. Makes a dozen. Rub 100g butter into 450g self-raising flour, then stir in 200g cheddar. Add 280ml milk and bring it together. Cut into rounds and bake at 220C for 12 minutes. They'll keep two days in a tin.",
    outline: "Nan's cheese scones | Makes a dozen | \u2013 | method 4, keeping 1",
  },
  {
    is: "short lines without stops",
    text: "Stroganoff\n\n400g mushrooms\n1 onion\n150ml cream\n\nfry the onion until soft, about 8 mins\nadd the mushrooms and cook hard for 5 mins\nstir in the cream\n",
    outline: "Stroganoff | \u2013 | \u2013 | ingredients 3, method 3",
  },
  {
    is: "the method straight behind the last part of the list",
    text: "Pie\nServes 6\n\nFor the filling\n1 onion\n200 g mince\n\nFor the mash\n1kg potatoes\n50g butter\n\n1. Fry the onion and the mince for 10 minutes.\n2. Boil the potatoes for 20 minutes.\n3. Mash with the butter.\n4. Bake for 30 minutes.\n",
    outline: "Pie | Serves 6 | \u2013 | ingredients (filling) 2, ingredients (mash) 2, method 4",
  },
  {
    is: "equipment",
    text: "Gravlax\nServes 12\nYou will also need\na deep tray\ncling film\nIngredients\n1 side of salmon, about 1.2 kg\n100 g salt\n100 g sugar\n1 bunch of dill\nMethod\nCover the salmon with the rest and chill for 48 hours.\n",
    outline: "Gravlax | Serves 12 | – | notes 1, ingredients 4, method 1",
  },
  {
    is: "french",
    text: "Crème caramel\nServes 6\n\n½ litre milk\n4 œufs\n120 g sugar\n\nBake in a water bath at 150 °C for 40 minutes.\n",
    outline: "Crème caramel | Serves 6 | – | ingredients 3, method 1",
  },
  {
    is: "onlylist",
    text: "Shopping for the picnic\n\n2 baguettes\n200 g ham\n1 lettuce\n",
    outline: "Shopping for the picnic | – | – | ingredients 3",
  },
  {
    is: "letter",
    text: "Rhubarb fool\nHi Dot,\nhere is the fool you asked for, it serves about six.\n600 g rhubarb\n120 g sugar\n300 ml double cream\nStew the rhubarb with the sugar for 10 minutes and let it go cold. Whip the cream and fold together.\nLove, Bea\n",
    outline: "Rhubarb fool | serves about six | – | notes 1, ingredients 3, method 2",
  },
  {
    is: "letterlike",
    text: "Gran's lamb stew (for 6)\n\nGet yourself:\n- about 1.2 kilos of lamb neck, cut in chunks\n- 3 or 4 onions\n- a couple of carrots\n- a good glug of oil\n- a litre of lamb or chicken stock\n- handful of pearl barley\n- salt & pepper\n\nHow I do it:\nFry the lamb in the oil, in batches, till it's well browned - 10 mins each. Take it out.\nSoften onions and carrots, 10 mins.\nEverything back in with the stock and barley. 2 hrs on a low heat.\n\nBetter the next day. Keeps 3 days in the fridge.\n",
    outline: "Gran's lamb stew | for 6 | – | ingredients 7, method 4",
  },
  {
    is: "bold facts",
    text: "# Brown butter tart\n**Yield:** 1 × 25 cm tart · **Time:** 1 h 20\n\n### Pastry\n* 250 g plain flour\n* 125 g unsalted butter (cold, diced)\n* 80 g icing sugar\n* 1 egg + 1 yolk\n\n### Filling\n* 150 g butter\n* 200 g light muscovado sugar\n* 3 eggs\n* 60 ml double cream\n* ½ tsp salt\n\n### Method\n1. **Pastry:** rub the butter into the flour and sugar. Add the egg and yolk, bring together and chill 1 hour.\n2. Roll out, line the tin and bake blind at 180 °C (160 °C fan) for 20 minutes.\n3. **Filling:** brown the butter, about 6 minutes, whisk in the sugar, eggs and cream.\n4. Bake at 160°C for 30 minutes.\n",
    outline:
      "Brown butter tart | **Yield:** 1 × 25 cm tart | **Time:** 1 h 20 | ingredients (pastry) 4, ingredients (filling) 5, method 4",
  },
  {
    is: "kitchen shorthand",
    text: "BEEF CHEEKS, RED WINE\nx12 covers\n\nbeef cheeks x 12\nred wine 2 btl\nveal stock 3L\nmirepoix 1kg\ntom paste 100g\nbay 3, thyme small bunch\n\n-trim, season, sear hard\n-sweat mirepoix, tom paste, 10min\n-deglaze w/ wine, reduce by half\n-stock in, cheeks in, lid, 150c 4hr\n-cool in liquor. hold 3 days fridge\n-pass + reduce liquor to glaze\n",
    outline: "BEEF CHEEKS, RED WINE | x12 covers | – | ingredients 6, method 6",
  },
  {
    is: "yield before the title",
    text: "Makes 20\n\nCheese straws\n\nIngredients:\n320g sheet puff pastry\n100g mature Cheddar, finely grated\n1 tsp English mustard powder\nPinch cayenne\n1 egg, beaten\n\nDirections\nPreheat the oven to 200C/180C fan/gas 6.\n\nUnroll the pastry. Sprinkle over three-quarters of the cheese, the mustard and the cayenne. Fold in half and roll out again.\n\nCut into 20 strips, twist, brush with egg and sprinkle with the rest of the cheese.\n\nBake for 15 mins until golden.\n",
    outline: "Cheese straws | Makes 20 | – | ingredients 5, method 4",
  },
  {
    is: "talk without stops",
    text: "today im going to show you how to make my garlic mushrooms so first of all you need about five hundred grams of mushrooms and three cloves of garlic and fifty grams of butter okay so slice the mushrooms and chop the garlic then melt the butter in a pan and fry the mushrooms for about eight minutes until they're golden add the garlic for the last minute and finish with a handful of parsley and that serves four as a starter",
    outline: "– | serves four as a starter | – | method 1",
  },
  {
    is: "list on one line",
    text: "Apple chutney\n\n2kg apples, peeled, cored and chopped; 500g onions; 500g sultanas; 1 litre malt vinegar; 750g brown sugar; 1 tbsp ginger; 2 tsp salt\n\nPut the lot in a pan and boil gently for 2 hours. Pot while hot. Makes about 8 jars. Store for 2 months before eating.\n",
    outline: "Apple chutney | Makes about 8 jars | – | ingredients 7, method 1",
  },
  {
    is: "steps counted without a mark",
    text: "Meringue\n\nServes 8\n\n5 egg whites\n280 g sugar\n300 ml cream\n1 Heat the oven to 140C.\n2 Whisk the whites, then the sugar.\n3 Bake for an hour.\n",
    outline: "Meringue | Serves 8 | – | ingredients 3, method 3",
  },
  {
    is: "usual parts named without a blank line",
    text: "Loaf\n\nDough\n400 g flour\n280 g water\nGlaze\n1 egg\n1 tbsp milk\n\nMix the flour and water and bake at 220C for 40 minutes.\n",
    outline: "Loaf | – | – | ingredients (dough) 2, ingredients (glaze) 2, method 1",
  },
  {
    is: "a bare number in brackets behind the title",
    text: "Rhubarb fool (5)\n\n400 g rhubarb\n300 ml cream\n\nStew the rhubarb for 10 minutes and fold in the whipped cream.\n",
    outline: "Rhubarb fool | 5 | – | ingredients 2, method 1",
  },
  {
    is: "of you and open boxes",
    text: "Barley broth\nFor five or six of you\n\n\u25a2 200 g barley\n\u25a2 2 leeks\n\u25a2 1 litre stock\n\nSimmer everything for 50 minutes.\n",
    outline: "Barley broth | For five or six of you | – | ingredients 3, method 1",
  },
  {
    is: "people and time in the title",
    text: "Nettle broth (3 people, 35 min)\n\n200 g nettle tops\n1 potato\n700 ml stock\n\nBoil the potato in the stock for 20 minutes. Add the nettles and blend.\n",
    outline: "Nettle broth | 3 people | 35 min | ingredients 3, method 1",
  },
  {
    is: "how many it does, in the last words",
    text: "Tray of roots\n\n1 kg carrots\n3 tbsp oil\n\nRoast the carrots in the oil at 200C for 40 minutes. That'll do seven of us, easily.\n",
    outline: "Tray of roots | That'll do seven of us | – | ingredients 2, method 1",
  },
  {
    is: "what is made, alone below the title",
    text: "Pork balls\n40 small ones, 8 people\n\n1 kg pork mince\n100 g breadcrumbs\n\nMix and roll into balls.\nFry for 10 minutes.\n",
    outline: "Pork balls | 40 small ones, 8 people | – | ingredients 2, method 2",
  },
  {
    is: "loaves at the head of a list are bought",
    text: "Bread pudding\n2 loaves\n500 ml milk\n3 eggs\n\nSoak the bread in the milk and eggs.\nBake for 40 minutes.\n",
    outline: "Bread pudding | – | – | ingredients 3, method 2",
  },
  {
    is: "freezing for hours is an order, for months it is keeping",
    text: "Plum parfait\nServes 6\n\n400 g plums\n300 ml cream\n\nWhip the cream and fold in the plums.\nFreeze for 3 hours.\nFreeze for up to 3 months.\n",
    outline: "Plum parfait | Serves 6 | – | ingredients 2, method 2, keeping 1",
  },
  {
    is: "yield and time in the title",
    text: "Pasta e ceci (serves 4, 40 minutes)\n\nolive oil\n1 onion, 1 stick celery, 1 carrot – finely chopped\n2 garlic cloves\n1 sprig rosemary\n2 x 400g tins chickpeas\n1 tbsp tomato purée\n150g small pasta\nparmesan\n\nCook the onion, celery and carrot in the oil for 10 minutes. Add the garlic and rosemary, 1 minute.\nAdd the purée, the chickpeas with their water and 500ml water. Simmer 15 minutes, blend half.\nAdd the pasta and cook until done. Serve with parmesan and oil.\n",
    outline: "Pasta e ceci | serves 4 | 40 minutes | ingredients 8, method 3",
  },
];

const wordsOf = (card: Card) => [
  ...(card.title === null ? [] : [card.title]),
  ...card.yields,
  ...card.times,
  ...card.blocks.flatMap((b) => [...(b.heading === null ? [] : [b.heading]), ...b.lines]),
];

describe("laying out a text", () => {
  it.each(cards)("$is", ({ text, outline: expected }) => {
    const { value } = cardFromText(text, "card");
    expect(outline(value)).toBe(expected);
    for (const words of wordsOf(value)) expect(text.slice(words.span.start, words.span.end)).toBe(words.text);
  });

  it.each([
    ["control characters", "\u0001\u0007 5 onions ".repeat(9000)],
    ["letters without a space", "QmFyZQ+x/".repeat(900)],
    ["marks everywhere", "a#% 3{}x;~ ^q&".repeat(400)],
  ])("stops once at noise: %s", (_, text) => {
    const { findings } = cardFromText(text, "card");
    expect(findings.map((f) => [f.code, f.severity])).toEqual([["text-not-readable", "stop"]]);
  });

  it("leaves list marks and numbers out of the lines", () => {
    const text =
      "Soup\n\n- 2 onions\n* 1 leek\n[ ] salt\n\n1. Chop.\n2) Boil for 10 minutes.\nStep 3: Blend it well.";
    const { blocks } = cardFromText(text, "card").value;
    expect(blocks.flatMap((b) => b.lines.map((l) => l.text))).toEqual([
      "2 onions",
      "1 leek",
      "salt",
      "Chop.",
      "Boil for 10 minutes.",
      "Blend it well.",
    ]);
  });

  it("says what it could not lay out", () => {
    const codes = (text: string) => cardFromText(text, "card").findings.map((f) => f.code);
    expect(codes("")).toEqual(["text-empty"]);
    expect(codes(" \n\t\n")).toEqual(["text-empty"]);
    expect(codes("\u0000\u0001\u0002\u0003PK\u0004\u0005")).toEqual(["text-not-readable"]);
    expect(codes("Plums\n\n6 plums")).toEqual(["method-missing", "yield-missing"]);
    expect(codes("6 plums\nBake the plums at 180C for 20 minutes.")).toContain("title-missing");
  });

  it("reads the first part of a text that is too long, and says how much", () => {
    const text = `Soup\nServes 4\n${"2 onions\n".repeat(10_000)}`;
    const { value, findings } = cardFromText(text, "card");
    const found = findings.find((f) => f.code === "text-not-readable");
    expect(found?.facts).toEqual({ reason: "too-long", kept: mostCharacters });
    expect(value.text).toBe(text);
    for (const words of wordsOf(value)) expect(words.span.end).toBeLessThanOrEqual(mostCharacters);
  });

  it("takes time in line with the length of the text, whatever it holds", () => {
    // A tenth of the longest text must not take more than a small share of a second for any of these.
    for (const piece of [
      "a",
      " ",
      "1 ",
      "(",
      "- ",
      "1. ",
      "a, ",
      "serves ",
      "**",
      "for the ",
      ". A",
      "\n\n",
      "1/2",
      "½ x ",
      "it serves 4 ",
    ]) {
      const started = performance.now();
      cardFromText(piece.repeat(Math.ceil(mostCharacters / piece.length)), "card");
      expect(performance.now() - started, JSON.stringify(piece)).toBeLessThan(3000);
    }
  });

  it("shows the text's own words at every span, for any text", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.constantFrom(...cards.flatMap((c) => c.text.split("\n"))),
            fc.string({ unit: "binary", maxLength: 30 }),
          ),
          {
            maxLength: 40,
          },
        ),
        fc.constantFrom("\n", "\r\n", "\n\n", " "),
        (parts, glue) => {
          const text = parts.join(glue);
          for (const words of wordsOf(cardFromText(text, "card").value))
            expect(text.slice(words.span.start, words.span.end)).toBe(words.text);
        },
      ),
    );
  });
});

import { describe, expect, it } from "vitest";
import { actions, uses } from "../../../../test/help/read-method.ts";

describe("what lies in which pot", () => {
  it.each<[ingredients: string, method: string, expected: readonly string[]]>([
    [
      "mussels, butter, shallots",
      "Scrub and debeard the mussels. Melt the butter in your biggest pan. Sweat the shallots. Add the mussels to the pan.",
      ["mussels", "s1a1", "butter", "shallots, s1a3", "s1a4, s1a2"],
    ],
    [
      "lamb shanks, red wine, onions",
      "Marinate the lamb shanks in the wine. Lift the meat out, pat it dry and keep the wine. Brown the lamb.",
      ["lamb shanks, red wine", "s1a1", "s1a2", "s1a1", "s1a3"],
    ],
    [
      "prunes, white wine, onions",
      "Put the prunes in the wine. Drain them, reserving the wine. Sweat the onions, then pour in the reserved wine.",
      ["prunes, white wine", "s1a1", "onions", "s1a3, s1a1"],
    ],
    [
      "butter, eggs, sugar, flour",
      "Melt the butter. Whisk the eggs and sugar. Fold in the flour and two thirds of the butter. Brush the tins with the remaining butter. Spoon in the batter.",
      ["butter", "eggs, sugar", "flour, s1a2, s1a1×0.67", "s1a1×0.33", "s1a3, s1a4"],
    ],
    [
      "pheasant, chicken stock, butter",
      "Take the legs off the pheasant and take the breasts off the bone. Simmer the legs in the stock. Fry the breasts in the butter.",
      ["pheasant×0.3", "pheasant×0.38", "chicken stock, s1a1", "butter, s1a2"],
    ],
    [
      "chicken, butter",
      "Tie the legs of the chicken. Rub the breast with the butter. Roast it.",
      ["chicken", "butter, s1a1", "s1a2"],
    ],
    [
      "chicken, chicken stock",
      "Roast the chicken in a tin. Rest it on a warm plate. Tip the juices back into the tin, add the stock and boil. Carve the bird.",
      ["chicken", "s1a1", "", "chicken stock, s1a3", "s1a4", "s1a2"],
    ],
    [
      "pork belly, sea salt",
      "Work the salt into the cuts. Roast at 240 for 25 minutes.",
      ["sea salt", "pork belly, s1a1"],
    ],
    [
      "milk, egg yolks",
      "Bring the milk to the boil. Whisk the yolks. Back to the heat, bring to 90.",
      ["milk", "egg yolks", "s1a1"],
    ],
    [
      "butter, semolina, lemon",
      "Beat the butter. Mix the semolina and stir in together with the lemon.",
      ["butter", "semolina", "lemon, s1a1, s1a2"],
    ],
    [
      "minced pork, salt",
      "Mix the pork and the salt, fry off a little bit and taste it. Pack the mixture in.",
      ["minced pork, salt", "s1a1×0.02", "", "s1a1×0.98"],
    ],
    [
      "celeriac, lemon",
      "Peel the celeriac and cut it in strips, straight into the lemon juice.",
      ["celeriac", "lemon×0.94, s1a1"],
    ],
    ["pears, sugar", "Cook the pears. Cut a circle of paper and lay it on top.", ["pears", "", "s1a1"]],
    [
      "yolks, sugar",
      "Brush with a little of the yolks. Whisk the yolks and the sugar.",
      ["yolks×0.1", "yolks×0.9, sugar"],
    ],
    ["potatoes, nutmeg", "Bake the potatoes. Grate the nutmeg over the top.", ["potatoes", "nutmeg, s1a1"]],
    [
      "flour, oil: 2000 ml",
      "Roll out the flour and cut into rings. Heat the oil. Fry 3 at a time, letting the oil come back to 180.",
      ["flour", "s1a1", "oil", "s1a3, s1a2"],
    ],
    [
      "vinegar, shallots, butter",
      "Boil the vinegar and the shallots. Clarify the butter, twenty minutes, and have it at 60.",
      ["vinegar, shallots", "butter"],
    ],
    [
      "beef, salt, pepper, flour",
      "Season the beef well and flour it.",
      ["beef, salt, pepper", "flour, s1a1"],
    ],
    [
      "mutton, lard, salt",
      "Heat the lard. Salt the mutton. Brown the mutton in two lots.",
      ["lard", "salt, mutton", "s1a2, s1a1"],
    ],
    [
      "quail, lime, butter, sage",
      "Take the quail out of the fridge. Grate the zest of the lime into the butter, strip in the sage, season and mash together with a fork.",
      ["quail", "lime×0.06, butter", "sage, s1a2", "s1a3", "s1a4"],
    ],
    [
      "veal, oil, mangetout, soy sauce, chicken stock, ginger",
      "Blanch the mangetout. Stir the soy sauce and the stock together. Get a wok hot, add the oil and fry the veal, then tip it out. Fry the ginger. Return the veal, pour in the sauce.",
      [
        "mangetout",
        "soy sauce, chicken stock",
        "",
        "oil, s1a3",
        "veal, s1a4",
        "s1a5",
        "ginger",
        "s1a7, s1a6",
        "s1a8, s1a2",
      ],
    ],
    [
      "turnips, green beans, salt, vinegar",
      "Cut everything small. Toss the veg with the salt.",
      ["turnips, green beans", "salt, s1a1"],
    ],
    [
      "oil, ceps, butter",
      "Slice the ceps. Get the oil hot in a big pan and fry them.",
      ["ceps", "oil", "s1a2, s1a1"],
    ],
    [
      "red peppers, black pepper, courgettes",
      "Lay the courgettes and peppers on a tray. Sprinkle with the black pepper.",
      ["courgettes, red peppers", "black pepper, s1a1"],
    ],
    [
      "sponge/eggs, sponge/muscovado sugar, icing/butter, icing/icing sugar",
      "Whisk the eggs and sugar. Beat the butter, then sift in the icing sugar.",
      ["eggs, muscovado sugar", "butter", "icing sugar, s1a2"],
    ],
    [
      "cod, water, salt, yolks, lemon",
      "Boil the water with the salt. Poach the cod in the water. Whisk the yolks. Add the lemon, salt.",
      ["water, salt", "cod, s1a1", "yolks", "lemon, salt×0.1, s1a3"],
    ],
    [
      "parsley, tuna, beans",
      "Drain the beans. Chop the parsley, flake the tuna, fold both through the beans.",
      ["beans", "parsley", "tuna", "s1a1, s1a3, s1a2"],
    ],
    [
      "ghee, leeks, nigella seeds, passata, chickpeas",
      "Cook the chickpeas. Melt the ghee in a frying pan and fry the leeks. Keep a spoonful back. Add the nigella seeds. Then the passata, and cook it down. Beat the chickpeas to break them up.",
      ["chickpeas", "ghee", "leeks, s1a2", "s1a3×0.1", "nigella seeds, s1a3×0.9", "passata, s1a5", "s1a1"],
    ],
    [
      "venison, lard, onions",
      "Heat the lard in a frying pan. Brown the venison in it and put it in the casserole. Drop the onions in the same pan.",
      ["lard", "venison, s1a1", "s1a2", "onions"],
    ],
    [
      "beans, water, bay leaf, olive oil",
      "Simmer the beans in the water with the bay leaf. Drain the beans, take out the bay leaf and dress them with the olive oil.",
      ["beans, water, bay leaf", "s1a1", "s1a2", "olive oil, s1a2"],
    ],
    [
      "hake, honey, cream, eggs",
      "Boil the honey. Divide between 6 moulds. Whisk the cream and the eggs. Fill the moulds.",
      ["honey", "s1a1", "cream, eggs", "s1a2, s1a3"],
    ],
    [
      "veal, rosemary, salt",
      "Dry the skin off with paper. Pound the rosemary with the salt and rub it all in.",
      ["veal", "rosemary, salt", "s1a1, s1a2"],
    ],
    [
      "veal, shallots, flour",
      "Roast the veal with the shallots. Lift the veal on to a board. Spoon most of the fat out of the tin. Stir in the flour. Carve the veal.",
      ["veal, shallots", "s1a1", "s1a1×0.75", "flour, s1a3", "s1a2"],
    ],
    [
      "rabbit, cream, pastry, egg",
      "Simmer the rabbit in the cream. Spoon into a dish. Roll out the pastry. Brush the rim of the dish with the egg. Lay the pastry over the top.",
      ["rabbit, cream", "s1a1", "pastry", "egg, s1a2", "s1a4, s1a3"],
    ],
    [
      "butter, treacle, flour",
      "Melt the butter and the treacle. Sift the flour into a bowl. Pour the melted stuff in.",
      ["butter, treacle", "flour", "s1a2, s1a1"],
    ],
    [
      "pork belly, cider, sage",
      "Roast the pork with the sage and the cider for an hour. Take it out and rest it. Strain the tray juices into a pan. Slice the pork.",
      ["pork belly, sage, cider", "s1a1", "s1a2", "s1a3", "s1a3"],
    ],
    [
      "rye flour, salt, buttermilk, egg",
      "Sift the flour and the salt into a bowl. Beat the egg and put that in as well.",
      ["rye flour, salt", "egg", "s1a1, s1a2"],
    ],
    [
      "barley, water, lard, onions, salt",
      "Simmer the barley in the water. Melt the lard in a frying pan and fry the onions. Stir the barley. Tip the soffritto in.",
      ["barley, water", "lard", "onions, s1a2", "s1a1", "s1a4, s1a3"],
    ],
    [
      "turkey, mustard, wine",
      "Roast the turkey. Mix the mustard with the wine and set it over a medium heat.",
      ["turkey", "mustard, wine", "s1a2"],
    ],
    [
      "cake/eggs, cake/flour, glaze/powdered sugar, glaze/milk",
      "Whisk the eggs and the flour. Bake for an hour. Whisk everything for the glaze.",
      ["eggs, flour", "s1a1", "powdered sugar, milk"],
    ],
    ["lamb neck, rapeseed oil", "Colour hard in the oil. Out.", ["rapeseed oil, lamb neck", "s1a1"]],
    [
      "potatoes, lettuce, vinaigrette",
      "Fry the potatoes. Dress the lettuce with the vinaigrette.",
      ["potatoes", "lettuce, vinaigrette"],
    ],
    ["beetroot, vinegar", "Roast the beetroot. Wash the jars. Slice it.", ["beetroot", "", "s1a1"]],
  ])("%s | %s", (ingredients, method, expected) => {
    expect(uses(ingredients, method)).toEqual(expected);
  });
});

describe("a pot that goes into the oven", () => {
  it.each([
    [
      "Brown the lamb in a big casserole, take it out. Add the onions, lamb back in, lid on, oven 150, 3 hours.",
      "big casserole",
    ],
    ["Brown the lamb in a frying pan. Put it in a dish, add the onions and bake for an hour.", null],
    ["Roast the lamb for an hour.", null],
  ])("%s", (method, expected) => {
    const baked = actions("lamb, onions", method).findLast((a) => a.station === "oven");
    expect(baked?.vessel ?? null).toBe(expected);
  });
});

import { describe, expect, it } from "vitest";
import { actions, cardOf, ingredientFrom, steps, uses } from "../../../../test/help/read-method.ts";
import type { Action } from "../../model/dish.ts";
import { readSteps } from "./read-steps.ts";

const techniques = (text: string): string =>
  actions("", text)
    .map((a) => a.technique)
    .join(" ");

const one = (text: string, ingredients = ""): Action => {
  const [first, ...others] = actions(ingredients, text).filter((a) => a.technique !== "preheat");
  expect(others.map((a) => a.technique)).toEqual([]);
  if (first === undefined) throw new Error(`no action in "${text}"`);
  return first;
};

describe("what is done", () => {
  it.each([
    ["Sweat the onions.", "sweat"],
    ["Gently sweat the onions in the butter.", "sweat"],
    ["In a wide pan sweat the onions.", "sweat"],
    ["I'm going to sweat the onions now.", "sweat"],
    ["So you want to let that bubble for 5 minutes.", "simmer"],
    ["The onions are then fried in the oil.", "fry"],
    ["Start by frying the onions.", "fry"],
    ["Peel, core and slice the apples.", "peel core slice"],
    ["Bring the stock and the wine to the boil, then simmer.", "bring-to-boil simmer"],
    ["Cover and leave to rest.", "cover rest"],
    ["Leave to cool.", "cool"],
    ["Let the dough rise for an hour.", "prove"],
    ["Set aside.", "set-aside"],
    ["Take it off the heat.", "remove-from-heat"],
    ["Turn the heat down.", "adjust-heat"],
    ["Heat the oven to 200°C.", "preheat"],
    ["Preheat the oven to 200°C.", "preheat"],
    ["Cook under the grill for 5 minutes.", "grill"],
    ["Cook in the oven for 20 minutes.", "bake"],
    ["It goes in the oven for 40 minutes.", "bake"],
    ["Put it in the fridge for 2 hours.", "chill"],
    ["Pop it in the freezer for an hour.", "freeze"],
    ["Put it in the oven and bake for 20 minutes.", "put bake"],
    ["Fry the fritters in deep oil at 180°C for 4 minutes.", "deep-fry"],
    ["Fold in the whites.", "fold"],
    ["Don't stir the rice.", ""],
    ["Simmer until the onions soften and brown.", "simmer"],
    ["Cook until soft, then add the stock.", "cook add"],
    ["This should take about 20 minutes.", ""],
  ])("%s → %s", (text, expected) => {
    expect(techniques(text)).toBe(expected);
  });
});

describe("where, and who stands by", () => {
  it.each([
    ["Bake for 20 minutes.", "oven", "none"],
    ["Simmer for 20 minutes.", "burner", "mind"],
    ["Simmer for 20 minutes, stirring all the time.", "burner", "hands"],
    ["Fry for 5 minutes, stirring now and then.", "burner", "mind"],
    ["Knead for 8 minutes.", "hands", "hands"],
    ["Knead in the mixer for 8 minutes.", "machine", "mind"],
    ["Prove for an hour.", "bench", "none"],
    ["Prove in the fridge overnight.", "fridge", "none"],
    ["Chop the parsley.", "hands", "hands"],
    ["Cover and set aside for 20 minutes.", "bench", "none"],
    ["Cool quickly in a sink of iced water.", "ice-bath", "mind"],
  ])("%s", (text, station, attention) => {
    const last = actions("", text).at(-1);
    expect([last?.station, last?.attention]).toEqual([station, attention]);
  });
});

describe("how long", () => {
  it.each([
    ["Simmer for 25 to 30 minutes.", 25, 27.5, 30, false],
    ["Fry for 3 minutes a side.", 6, 6, 6, false],
    ["Fry for 3 minutes on one side and 2 minutes on the other side.", 5, 5, 5, false],
    ["Brown in two batches, 8 minutes a batch.", 16, 16, 16, false],
    ["Simmer for 10 minutes, then another 5 minutes.", 15, 15, 15, false],
    ["Bake for 10 minutes or until golden.", 10, 10, 10, false],
    ["Chill for 2 hours, or overnight.", 120, 480, 720, false],
    ["Roast for 40 minutes, turning every 10 minutes.", 40, 40, 40, false],
    ["Boil until tender.", 8, 12, 20, true],
    ["Bake.", 20, 35, 60, true],
  ])("%s", (text, low, likely, high, assumed) => {
    expect(one(text).minutes).toEqual({ low, likely, high, assumed });
  });

  it("keeps the interval apart from the length", () => {
    expect(one("Roast for 40 minutes, turning every 10 minutes.").every).toBe(10);
  });

  it("lends a sentence without a verb to the action before it", () => {
    expect(one("Simmer gently. About 20 minutes.").minutes?.likely).toBe(20);
  });

  it("takes a wait as the length of what went on before it", () => {
    const [simmer, add] = actions("peas", "Simmer. After 10 minutes add the peas.");
    expect([simmer?.minutes?.likely, simmer?.minutes?.assumed, add?.leastWait]).toEqual([10, false, null]);
  });

  it("keeps the night before the next day", () => {
    expect(actions("dough", "Shape the dough.", "Next day bake it for 30 minutes.").at(-1)?.leastWait).toBe(
      480,
    );
  });
});

describe("how hot, in what, until when", () => {
  it("reads setting, core and cue", () => {
    const bake = one(
      "Roast the chicken at 200°C for 50 minutes, until the thickest part reads 75°C.",
      "chicken",
    );
    expect([bake.celsius, bake.core, bake.cue]).toEqual([200, 75, "until the thickest part reads 75°C"]);
  });

  it("bakes at the setting of the oven that was heated before", () => {
    expect(one("Heat the oven to 190°C. Bake the rolls for 15 minutes.").celsius).toBe(190);
  });

  it.each([
    ["Fry over a medium heat.", "medium"],
    ["Fry on high.", "high"],
    ["Simmer over a low heat.", "low"],
  ])("%s", (text, heat) => {
    expect(one(text).heat).toBe(heat);
  });

  it("names the vessel as the cook does", () => {
    expect(one("Fry the onion in a large frying pan.", "onion").vessel).toBe("large frying pan");
  });
});

describe("what it uses", () => {
  it.each<[string, string[], string[]]>([
    ["onion, butter", ["Melt the butter and sweat the onion."], ["butter", "onion, s1a1"]],
    [
      "butter: 100 g, sugar: 50 g",
      ["Melt half the butter.", "Stir in the rest of the butter and the sugar."],
      ["butter×0.5", "butter×0.5, sugar, s1a1"],
    ],
    [
      "stock: 500 ml",
      ["Add 100 ml of the stock.", "Add the remaining stock."],
      ["stock×0.2", "stock×0.8, s1a1"],
    ],
    ["oil: 4 tbsp, onion", ["Heat the oil.", "Fry the onion for 5 minutes."], ["oil", "onion, s1a1"]],
    [
      "flour, butter, water",
      ["Rub the butter into the flour.", "Add the water and knead it."],
      ["butter, flour", "water, s1a1", "s2a1"],
    ],
    [
      "milk, egg yolks, sugar",
      ["Warm the milk.", "Whisk the yolks and the sugar, then pour on the warm milk."],
      ["milk", "egg yolks, sugar", "s1a1, s2a1"],
    ],
    [
      "carrots, celery, onion, beef",
      ["Brown the beef.", "Add the vegetables."],
      ["beef", "carrots, celery, onion, s1a1"],
    ],
    [
      "flour, sugar, salt, milk, egg",
      ["Mix the dry ingredients.", "Whisk the milk and egg, then stir into the dry ingredients."],
      ["flour, sugar, salt", "milk, egg", "s1a1, s2a1"],
    ],
    [
      "flour, sugar, egg",
      ["Put everything in a bowl and beat for 3 minutes."],
      ["flour, sugar, egg", "s1a1"],
    ],
    [
      "chicken thighs, leeks",
      ["Brown the thighs.", "Add the leeks and simmer for 30 minutes.", "Lift out the chicken."],
      ["chicken thighs", "leeks, s1a1", "s2a1", "s2a2"],
    ],
    [
      "parsley, butter",
      ["Chop the parsley.", "Melt the butter and stir in the parsley."],
      ["parsley", "butter", "s2a1, s1a1"],
    ],
    ["salt, pepper, steak", ["Fry the steak for 3 minutes.", "Season."], ["steak", "salt, pepper, s1a1"]],
    [
      "egg whites, sugar",
      ["Whisk the whites to stiff peaks.", "Fold in the sugar."],
      ["egg whites", "sugar, s1a1"],
    ],
    [
      "eggs, chocolate",
      ["Beat the yolks into the chocolate.", "Whisk the whites.", "Fold the whites into the chocolate."],
      ["eggs×0.34, chocolate", "eggs×0.66", "s1a1, s2a1"],
    ],
    ["beef, mustard", ["Take the beef from the fridge. Rub with mustard."], ["beef", "mustard, s1a1"]],
    ["plain flour, rye flour, salt", ["Mix the flours and the salt."], ["plain flour, rye flour, salt"]],
    [
      "chicken, stock, cream",
      [
        "Simmer the chicken in the stock.",
        "Lift out the chicken and let it rest.",
        "Stir the cream into the juices.",
      ],
      ["chicken, stock", "s1a1", "s2a1", "cream, s1a1"],
    ],
    ["carrots", ["Grate half the carrots and chop the rest."], ["carrots×0.5", "carrots×0.5"]],
    [
      "almonds, rice",
      ["Boil the rice.", "Toast the almonds and stir them in."],
      ["rice", "almonds", "s1a1, s2a1"],
    ],
    [
      "rice, water",
      ["Boil the rice in the water.", "Drain, reserving a cup of the cooking water."],
      ["rice, water", "s1a1"],
    ],
  ])("%s: %j", (ingredients, method, expected) => {
    expect(uses(ingredients, ...method)).toEqual(expected);
  });

  it("remembers by what name an ingredient in a product is called", () => {
    const last = actions(
      "chicken thighs, leeks",
      "Brown the thighs.",
      "Add the leeks.",
      "Lift out the chicken.",
    ).at(-1);
    expect(last?.uses[0]).toMatchObject({ product: "s2a1", named: 0, implied: false });
  });

  it("takes a line whose name ends like a tool, and not the tool", () => {
    expect(uses("lasagne sheets, butter", "Layer the lasagne sheets.", "Put it in the butter dish.")).toEqual(
      ["lasagne sheets", "s1a1"],
    );
  });

  it("leaves out an order that only announces the others", () => {
    const all = actions("butter, flour", "Meanwhile, make the sauce: melt the butter and stir in the flour.");
    expect(all.map((a) => [a.technique, a.makes, a.alongside])).toEqual([
      ["melt", "sauce", true],
      ["add", null, false],
    ]);
  });

  it("takes no ingredient from a comparison, a cue or a tool", () => {
    expect(
      uses(
        "butter, walnuts, breadcrumbs, flour",
        "Cut the butter to the size of walnuts and rub into the flour until it looks like breadcrumbs.",
      ),
    ).toEqual(["butter", "flour, s1a1"]);
  });

  it("points at the words it was read from", () => {
    const [step] = steps("onion, butter", "Sweat the onion in the butter.");
    expect(step?.actions[0]?.uses.map((u) => step.text.slice(u.span.start, u.span.end))).toEqual([
      "onion",
      "butter",
    ]);
  });
});

describe("what is left behind", () => {
  it("keeps what is lifted out apart from what stays", () => {
    const all = actions(
      "chicken, stock, leeks",
      "Simmer the chicken and leeks in the stock.",
      "Lift out the chicken and rest it for 5 minutes.",
      "Boil the juices down.",
    );
    expect(all.map((a) => a.uses.map((u) => u.only ?? null))).toEqual([
      [null, null, null],
      [[0]],
      [null],
      [[2, 1]],
    ]);
    expect(all.at(-1)?.after).toContain("s2a1");
    expect(all.at(-1)?.after).not.toContain("s2a2");
  });

  it("throws aromatics away and goes on with the pot", () => {
    expect(
      uses("stock, bay leaf", "Simmer the stock with the bay leaf.", "Remove the bay leaf and cool."),
    ).toEqual(["stock, bay leaf", "s1a1", "s1a1"]);
  });
});

describe("two settings in turn", () => {
  it("makes two stretches of one work, cue and core at the last", () => {
    const [first, second] = actions(
      "dough",
      "Bake the dough for 20 minutes at 240 °C, then 30 minutes at 200 °C until golden.",
    );
    expect([first?.celsius, first?.minutes?.likely, first?.cue]).toEqual([240, 20, null]);
    expect([second?.celsius, second?.minutes?.likely, second?.cue]).toEqual([200, 30, "until golden"]);
    expect(second?.uses[0]?.product).toBe("s1a1");
  });

  it("takes two names of one setting for one", () => {
    expect(actions("dough", "Bake the dough at 200C/180C fan/gas 6 for 20 minutes.")).toHaveLength(1);
  });
});

describe("what waits for what", () => {
  it("lets independent work run side by side", () => {
    const all = actions(
      "onion, butter, cream, sugar",
      "Sweat the onion in the butter for 10 minutes.",
      "Meanwhile, whip the cream with the sugar.",
    );
    expect(all.map((a) => [a.after, a.alongside])).toEqual([
      [[], false],
      [[], true],
    ]);
  });

  it("makes baking wait for the oven and for what is baked", () => {
    const bake = actions(
      "flour, butter",
      "Preheat the oven to 180°C.",
      "Rub the butter into the flour.",
      "Bake for 20 minutes.",
    ).at(-1);
    expect(bake?.after).toEqual(["s2a1", "s1a1"]);
  });

  it("uses an emptied pan again only when it is empty", () => {
    const sweat = actions(
      "chicken, leeks",
      "Brown the chicken in a big pan. Lift it out.",
      "In the same pan sweat the leeks.",
    ).at(-1);
    expect(sweat?.after).toEqual(["s1a2"]);
  });

  it("brings all that is ready together when the dish is served", () => {
    const serve = actions(
      "rice, lentils",
      "Boil the rice.",
      "In another pan simmer the lentils.",
      "Serve.",
    ).at(-1);
    expect([...(serve?.after ?? [])].sort()).toEqual(["s1a1", "s2a1"]);
  });
});

describe("what it makes", () => {
  it("names it by the words", () => {
    expect(one("Mix the flour and water to form a dough.", "flour, water").makes).toBe("dough");
  });

  it("names the last action of a part by the part", () => {
    const { steps: read } = readSteps(
      cardOf(["Rub the butter into the flour.", "Chill for 30 minutes."], "pastry"),
      ["pastry/flour", "pastry/butter"].map(ingredientFrom),
      "uk",
    );
    expect(read.flatMap((s) => s.actions).map((a) => a.makes)).toEqual([null, "pastry"]);
  });
});

describe("talk at the stove", () => {
  it.each([
    ["Leave it on the lowest heat for an hour and a half.", "cook", "burner", 90],
    ["Then leave the pot on the heat for 20 minutes.", "cook", "burner", 20],
    ["Put it over a low flame for 10 minutes.", "cook", "burner", 10],
    ["Leave it off the heat for 5 minutes.", "stand", "bench", 5],
  ] as const)("%s", (text, technique, station, length) => {
    const action = one(text);
    expect([action.technique, action.station, action.minutes?.likely]).toEqual([technique, station, length]);
    expect(action.attention).not.toBe("hands");
  });

  it.each([
    ["Let it bubble right down.", "reduce"],
    ["Let it down with a ladle of stock.", "pour"],
    ["Cool it down and stick it in the fridge overnight.", "cool chill"],
    ["Stir the pot and shove it in the oven for an hour.", "stir bake"],
  ] as const)("%s → %s", (text, expected) => {
    expect(techniques(text)).toBe(expected);
  });

  it("takes how many it does for no work", () => {
    expect(techniques("Simmer for 10 minutes. It'll do five of you.")).toBe("simmer");
  });
});

describe("the heat of the oven", () => {
  const told = (...method: string[]) =>
    actions("lamb", ...method).map((a) => `${a.technique} ${a.station} ${a.celsius ?? "–"}`);

  it("stays what a place or a change said last", () => {
    expect(told("Move the lamb to a 200°C oven and roast for 20 minutes.").at(-1)).toBe("roast oven 200");
    expect(
      told("Roast the lamb at 220C for 20 minutes, turn down to 150C and cook for 3 hours.").at(-1),
    ).toBe("bake oven 150");
    expect(
      told("Bake the lamb at 200C for 10 minutes.", "Reduce to 90C and bake for a further hour."),
    ).toEqual(["bake oven 200", "adjust-heat hands 90", "bake oven 90"]);
    expect(told("Take the lamb out. Oven at 210C. Roast for an hour.").at(-1)).toBe("roast oven 210");
  });

  it("leaves each order its own place", () => {
    expect(techniques("Cool, pour over and leave to set in the fridge, about 4 hours.")).toBe(
      "cool pour chill",
    );
    expect(techniques("Oil the steaks, then griddle for 3 minutes.")).toBe("grease griddle");
  });

  it("lets the hands go between folds", () => {
    const action = one("Fold every 30 minutes for 2 hours.");
    expect([action.minutes?.likely, action.every, action.attention]).toEqual([120, 30, "mind"]);
  });

  it("reads a word without end", () => {
    expect(actions("", "\u6f22".repeat(60_000))).toEqual([]);
  });
});

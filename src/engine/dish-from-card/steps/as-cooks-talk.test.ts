import { describe, expect, it } from "vitest";
import { actions, uses } from "../../../../test/help/read-method.ts";

/** "cook 10; adjust-heat c150": techniques with the stated minutes, waits and temperatures. */
const told = (ingredients: string, ...method: string[]): string =>
  actions(ingredients, ...method)
    .map((a) => {
      const m = a.minutes;
      const length = m === null || m.assumed ? "" : m.low === m.high ? ` ${m.likely}` : ` ${m.low}-${m.high}`;
      const wait = a.leastWait === null ? "" : ` after ${a.leastWait}`;
      const heat = `${a.celsius === null ? "" : ` c${a.celsius}`}${a.core === null ? "" : ` core ${a.core}`}`;
      return `${a.technique}${length}${wait}${heat}${a.every === null ? "" : ` every ${a.every}`}`;
    })
    .join("; ");

describe("lengths and heat as cooks say them", () => {
  it.each([
    ["Whack it in the oven at 200 for a good hour.", "bake 60 c200"],
    ["Roast at two hundred for half an hour.", "roast 30 c200"],
    ["Bake at one hundred and eighty for an hour.", "bake 60 c180"],
    ["Fry at 175 in batches.", "fry c175"],
    ["Cook sous vide at 62 for 45 minutes.", "sous-vide 45 c62"],
    ["Crank the oven to 240C.", "preheat c240"],
    ["Fry the onions, then give them ten.", "fry; cook 10"],
    ["Give the onions ten minutes or so.", "cook 9-11.5"],
    ["Stir another minute.", "stir 1"],
    ["Simmer for another hour and a half.", "simmer 90"],
    ["Cook for an hour and twenty.", "cook 80"],
    ["Cook for two to two and a half hours.", "cook 120-150"],
    ["Cook for one and a half to two hours.", "cook 90-120"],
    ["Leave for at least 7 hours, and up to 24 hours.", "stand 420-1440"],
    ["Bake for 25-30.", "bake 25-30"],
    ["Simmer for 20 minutes, stirring every five.", "simmer 20 every 5"],
    ["Bake for 20 minutes, turning after 10.", "bake 20"],
    ["After those two hours, add the peas.", "add after 120"],
    ["Ten minutes later, add the peas.", "add after 10"],
    ["Twenty minutes in, turn it over.", "turn after 20"],
    ["If half an hour has passed, take it out.", "take-out after 30"],
    ["About ten minutes before draining the rice, chop the parsley.", "chop"],
    ["Rest for 10 minutes before carving.", "rest 10"],
    ["Stir it together in a second bowl.", "stir"],
    ["Simmer. Set the timer for 6 minutes.", "simmer 6"],
    ["Roast 20 minutes per 500 g plus 20 minutes over.", "roast 40"],
    ["The dough will prove for 4 hours.", "prove 240"],
    ["After that, start ladling in the stock, for about 20 minutes.", "pour; cook 18-23"],
    ["Leave it ticking away for an hour.", "simmer 60"],
    ["Bring it to the boil, then drop it to a gentle tick.", "bring-to-boil; adjust-heat"],
    ["Bring it to the boil, then drop it to a tick for half an hour.", "bring-to-boil; simmer 30"],
    ["Let that down with a splash of stock.", "pour"],
    ["Turn it down to 150 and cook for 2 hours.", "adjust-heat c150; bake 120 c150"],
    ["Start it at 220 for 20 minutes, then drop to 160 for an hour.", "bake 20 c220; bake 60 c160"],
    ["Roast at 220 for 20 minutes, then 160 for an hour.", "roast 20 c220; roast 60 c160"],
    ["Roast at 190 until the thickest part hits 74.", "roast c190 core 74"],
    ["Cook till it's 63 in the middle.", "cook core 63"],
    ["Roast at 180 to a core of 60.", "roast c180 core 60"],
    ["Pull it at 52C for medium rare.", "take-out core 52"],
    ["Hold at 75.", "keep-warm c75"],
    ["Start it at 230, down to 170 after a quarter of an hour.", "bake 15 c230; adjust-heat c170"],
    ["Bake at 250 with steam, dropping to 220 after ten minutes.", "bake 10 c250; adjust-heat c220"],
    ["Roast at 180 for an hour. Lamb is ready at 60.", "roast 60 c180 core 60"],
    [
      "Roast at 180 for an hour. Rest it for 20 minutes. It should read 63.",
      "roast 60 c180 core 63; rest 20",
    ],
    ["You want the oven at 200.", "preheat c200"],
    ["One oven at 220, the other at 150.", "preheat c220; preheat c150"],
    ["Water bath at 52 for 25 minutes.", "sous-vide 25 c52"],
    ["Bake 25 mins @ 180.", "bake 25 c180"],
    ["Leave it to rest for half an hour under the foil.", "rest 30"],
    [
      "Oven at 240. Slash the tops, load. Ten minutes, then drop it to 200 and give it 25 more.",
      "preheat c240; split; fill; bake 10 c240; adjust-heat c200; bake 25 c200",
    ],
    [
      "Roast at 220 for 20 minutes. Down to 170 and leave it another hour.",
      "roast 20 c220; adjust-heat c170; bake 60 c170",
    ],
    ["Onions out two hours before. Chop them.", "take-out 120; chop"],
    ["Bake at 160, 45 minutes-ish, until wobbly.", "bake 45 c160"],
    ["Tip the onions in and get them back up to about 90, no more.", "add; heat c90"],
    ["Knock it back, scale it at 950, bench rest for 15 minutes.", "knock-back; divide; rest 15"],
    ["1 cm oil, 175°C.", "heat c175"],
    ["Bring the water to the boil and keep it just under boiling point.", "bring-to-boil; keep-warm"],
    ["Preheat the oven to 200 °C (top and bottom heat).", "preheat c200"],
    ["Take off the lid, turn the heat to low. Put on the lid.", "uncover; adjust-heat; cover"],
    ["Glaze the top under a hot grill for 2 minutes.", "grill 2"],
    ["Fry the onions. Take it off, lid on, leave it an hour.", "fry; remove-from-heat; cover; stand 60"],
    ["Sear for a minute and a half on the first side and 30 seconds on the other.", "sear 2"],
    ["Boil the stock and reduce by half. Onions 2 min.", "boil; reduce; cook 2"],
    [
      "Oven 170. Fold in the flour. Lined 2 lb tin, 50-55 min, skewer clean.",
      "preheat c170; fold; bake 50-55 c170",
    ],
    ["Lid on and into a 150 oven for two hours.", "cover; bake 120 c150"],
    ["Leave somewhere warm until doubled, around 1 hr 30 mins.", "prove 81-103.5"],
    ["Cream butter and sugar 5 min. Eggs in one at a time.", "cream 5; add"],
    ["Ice while still slightly warm.", "ice"],
    ["Drain, let steam off for 3 min, peel while hot and slice.", "drain; stand 3; peel; slice"],
    ["Now the oven wants to be low, 100, and I mean 100, so check it with a thermometer.", "preheat c100"],
    ["Take it off the water, let it drop to 58, and trickle in the oil.", "take-out; cool c58; pour"],
    ["Beat the sugar and oil for 2 minutes.", "beat 2"],
    ["Roast for 20 minutes. Put the tin on the hob and cook for a minute.", "roast 20; put; cook 1"],
    ["Oven on at 170, and line a couple of trays.", "preheat c170; line"],
    ["Simmer 15, cool to 80C.", "simmer 15; cool c80"],
    ["Do the onions on a medium heat for a good 20 minutes.", "cook 18-23"],
    ["Back up to 85 and give it two minutes.", "heat c85; cook 2"],
    ["Leave it to cool, then forget about it for six weeks.", "cool; stand 60480"],
    ["Fry it. Lid on, gentle heat, 12 to 15 minutes.", "fry; cook 12-15"],
    ["Roast for 35 minutes, rotating the pan halfway through.", "roast 35"],
    ["Off heat, lid on, infuse 30 min.", "remove-from-heat; cover; infuse 30"],
    ["Soften 10 min in fridge before service.", "chill 10"],
    ["Drop the onions in and give them a quarter of an hour.", "add; cook 15"],
    ["Roll into balls and chill.", "shape; chill"],
    ["Get the oil good and hot. Fry until set, or 70C if you have a probe.", "heat; fry core 70"],
    ["Add the onions, then the oil, and let that disappear.", "add; add; reduce"],
    ["Keep it just under a simmer, 90 or so.", "keep-warm c90"],
    [
      "Oven as hot as it'll go, call it 240. In it goes. Half an hour of that, then down to 160 for two hours.",
      "preheat c240; put; bake 30 c240; bake 120 c160",
    ],
    ["The oven wants to be low, 100. In it goes for thirty-five minutes.", "preheat c100; bake 35 c100"],
    [
      "Bake for 10 minutes; let the steam off, lower to 190 and finish in 45 minutes. Core temperature 98.",
      "bake 10; adjust-heat c190; bake 45 c190 core 98",
    ],
    ["Bake for 30 minutes; it's set at 75 in the middle.", "bake 30 core 75"],
    ["Take the milk up slowly to 85 and hold it there for half an hour.", "heat c85; keep-warm 30 c85"],
    ["Warm the milk to 105 degrees.", "warm c41"],
    ["Cover and let it mature for 14 hours.", "cover; stand 840"],
    ["It all blips away for another 10 to 12.", "simmer 10-12"],
    ["Dough rest 30 min.", "rest 30"],
    ["It sits in the fridge for forty-five minutes, an hour if you like it firm.", "chill 45-60"],
    ["Serve at 70 plus.", "serve c70"],
    ["Reduce to a glaze, 104 on the thermometer.", "reduce c104"],
    ["Get the oven really hot, 220. Roast for an hour.", "preheat c220; roast 60 c220"],
    ["Plunge into boiling salted water for 2 minutes.", "blanch 2"],
    ["Heat the oven to 250. Tip it into the pot, lid on, 25 minutes.", "preheat c250; add; bake 25 c250"],
    ["Lid on, oven at 140, three hours.", "bake 180 c140"],
    ["Heat the oven to 200. Put it in a tin. Forty minutes.", "preheat c200; put; bake 40 c200"],
    ["Fry it. Pour the stock over. Twenty minutes.", "fry; pour; cook 20"],
    [
      "Bake at 200 for 20 minutes. Turn the oven down to 150. An hour.",
      "bake 20 c200; adjust-heat c150; bake 60 c150",
    ],
    ["Cook it low and slow, 120 or so, for six hours.", "bake 360 c120"],
    ["Bake in a fan oven at 160 for 20 minutes.", "bake 20 c180"],
    ["Put it in the water bath at 56 for 90 minutes.", "sous-vide 90 c56"],
    [
      "Heat the oven. Leave it in for an hour, then turn it off and leave it in there overnight.",
      "preheat; stand 60; remove-from-heat; stand 480-720",
    ],
    ["Onions in, low heat, 20 min.", "add; cook 20"],
    ["Lid on, oven 150 °C, 2 hours.", "cover; bake 120 c150"],
    ["Whack the heat up.", "adjust-heat"],
  ])("%s", (text, expected) => {
    expect(told("onions, peas, parsley, stock, rice", text)).toBe(expected);
  });

  it("gives a length told in the next step to the step before", () => {
    expect(told("onions", "Cook the onions gently.", "It'll need about 20 minutes.")).toBe("sweat 18-23");
  });
});

describe("what it is done to, as cooks say it", () => {
  it.each([
    ["flour, butter, jam", "Put everything except the butter and the jam in a bowl.", ["flour"]],
    [
      "butter, onions",
      "Soften the onions in the butter, then press most of it through.",
      ["onions, butter", "s1a1×0.75"],
    ],
    ["cider, onions", "In go the onions and the cider.", ["onions, cider"]],
    [
      "oil, dill, salmon",
      "Chop the dill and press most of it on to the salmon. Fold the rest of the dill through the oil.",
      ["dill", "salmon, s1a1×0.75", "oil, s1a1×0.25"],
    ],
    [
      "water, cornflour",
      "Mix the cornflour with a little of the water. Bring the rest of the water to the boil.",
      ["cornflour, water×0.5", "water×0.5"],
    ],
    ["brown sugar, white sugar", "Beat both sugars together.", ["brown sugar, white sugar"]],
    [
      "pastry/flour, pastry/butter, filling/eggs, filling/cream",
      "Pastry: rub the butter into the flour. Filling: whisk the eggs and the cream.",
      ["pastry/butter, pastry/flour", "filling/eggs, filling/cream"],
    ],
    [
      "flour, sugar, milk, eggs",
      "Mix the flour and sugar. In another bowl whisk the milk and the eggs. Add the wet to the dry.",
      ["flour, sugar", "milk, eggs", "s1a1, s1a2"],
    ],
    ["flour, salt, water", "Mix the flour and salt then add the water.", ["flour, salt", "water, s1a1"]],
    [
      "chocolate, eggs",
      "Separate the eggs. Whisk the yolks. Melt the chocolate. Fold the lot together.",
      ["eggs", "s1a1×0.34", "chocolate", "s1a3, s1a1×0.66, s1a2"],
    ],
    [
      "soy sauce, honey, salmon",
      "Mix the soy sauce and honey. Pour half over the salmon.",
      ["soy sauce, honey", "salmon, s1a1×0.5"],
    ],
    [
      "onions, chicken",
      "Fry the onions. Dice the chicken and fry along with the onions.",
      ["onions", "chicken", "s1a1, s1a2"],
    ],
    [
      "white cabbage, leeks, sugar, malt vinegar",
      "Shred the white cabbage and slice the leeks. Layer up in a deep pot with the sugar and vinegar, lid on.",
      ["white cabbage", "leeks", "sugar, malt vinegar, s1a2, s1a1", "s1a3"],
    ],
    [
      "lamb shoulder, sage, garlic",
      "Crush the sage and garlic and rub it all over, then into the fridge.",
      ["sage, garlic", "lamb shoulder, s1a1", "s1a2"],
    ],
    [
      "lamb shoulder, pork belly, sage",
      "Crush the sage and rub it all over, then into the fridge.",
      ["sage", "s1a1", "s1a2"],
    ],
    ["lamb shoulder, sage", "Crush the sage. Best left for two days in the fridge.", ["sage", "s1a1"]],
    [
      "lamb shoulder, sage",
      "Crush the sage. Better the next day: three days in the fridge no trouble.",
      ["sage"],
    ],
  ])("%s | %s", (ingredients, method, expected) => {
    expect(uses(ingredients, method)).toEqual(
      expected.map((e) => e.replaceAll("pastry/", "").replaceAll("filling/", "")),
    );
  });
});

import { describe, expect, it } from "vitest";
import { actions } from "../../../../test/help/read-method.ts";

const list =
  "leeks, turnips, pork cheeks, sage, tinned tomatoes, plums, flour, eggs, breadcrumbs, rapeseed oil, dill, milk, cream, cinnamon stick, egg yolks, potatoes, lime, salt, nutmeg, cheese";
const names = list.split(", ");

/** "fry 10 burner leeks, turnips": technique, stated minutes, station, the foods that the words name. */
const told = (...method: string[]): string =>
  actions(list, ...method)
    .map((a) => {
      const m = a.minutes;
      const length = m === null || m.assumed ? "" : m.low === m.high ? ` ${m.likely}` : ` ${m.low}-${m.high}`;
      const heat = `${a.celsius === null ? "" : ` c${a.celsius}`}${a.core === null ? "" : ` core ${a.core}`}`;
      const foods = a.uses.flatMap((u) => (u.ingredient === null ? [] : [names[u.ingredient]]));
      return `${a.technique}${length} ${a.station}${heat}${foods.length === 0 ? "" : ` (${foods.join(", ")})`}`;
    })
    .join("; ");

describe("orders without a verb", () => {
  it.each([
    ["Leeks and turnips into the same pan, eight minutes till they colour.", "fry 8 burner (leeks, turnips)"],
    [
      "Sweat the leeks for 10 minutes. Sage in for the last minute.",
      "sweat 10 burner (leeks); add 1 burner (sage)",
    ],
    ["Fry the leeks. Plums in for three minutes.", "fry burner (leeks); add 3 burner (plums)"],
    [
      "Brown the pork cheeks. Add the milk, put the lid on, and into a low oven, 140, for three hours till they'll give to a fork.",
      "brown burner (pork cheeks); add hands (milk); cover hands; bake 180 oven c140",
    ],
    ["Flour, egg, crumb.", "bread hands (flour, eggs, breadcrumbs)"],
    ["Oil to 175.", "heat burner c175 (rapeseed oil)"],
    ["Dill over the top at the last minute.", "sprinkle hands (dill)"],
    [
      "Milk, cream and the cinnamon stick up to just under the boil.",
      "bring-to-simmer burner (milk, cream, cinnamon stick)",
    ],
    [
      "Warm the milk and cream. Straight through a sieve into a jug.",
      "warm burner (milk, cream); sieve hands",
    ],
    [
      "Egg yolks and the lime in a bowl over barely simmering water. Whisk for five minutes.",
      "put hands (egg yolks, lime); whisk 5 hands",
    ],
    [
      "Boil the milk for 10 minutes. Off the heat, lid on, ten minutes.",
      "boil 10 burner (milk); remove-from-heat hands; cover 10 bench",
    ],
    [
      "Warm the milk. In with the potatoes and cook gently for 9 minutes.",
      "warm burner (milk); add hands (potatoes); simmer 9 burner",
    ],
    [
      "Heat the oven to 230. In with the potatoes, ten minutes, then drop it to 190 and give them another 20.",
      "preheat oven c230; add hands (potatoes); bake 10 oven c230; adjust-heat hands c190; bake 20 oven c190",
    ],
    [
      "Sear the pork cheeks for a minute, then 6 minutes in the oven at 190 (fan 170).",
      "sear 1 burner (pork cheeks); bake 6 oven c190",
    ],
    [
      "Layer the potatoes with half the cheese, rest on top.",
      "layer hands (potatoes, cheese); top hands (cheese)",
    ],
    [
      "Mash the potatoes, beat in the milk, season, grate of nutmeg.",
      "mash hands (potatoes); add hands (milk); season hands (nutmeg)",
    ],
    ["Lime, salt, a touch of nutmeg.", "add hands (lime, salt, nutmeg)"],
    ["Layer the potatoes. Lid or foil on.", "layer hands (potatoes); cover hands"],
    [
      "Chop the plums and sit them in a tin. Into a bain marie, oven at 150, an hour and a quarter.",
      "chop hands (plums); put hands; bake 75 oven c150",
    ],
    ["Warm the milk, whisking, then back into a clean pan.", "warm burner (milk); put hands"],
    [
      "Brown the pork cheeks. Lift out. Boil the milk. Pork cheeks back in to warm through.",
      "brown burner (pork cheeks); take-out hands; boil burner (milk); reheat burner",
    ],
    [
      "Start the pork cheeks fat side down in a cold pan, 12 minutes to render.",
      "fry 12 burner (pork cheeks)",
    ],
    [
      "Sweat the leeks. Peel the turnips, cube them and in they go with the milk.",
      "sweat burner (leeks); peel hands (turnips); dice hands; add hands (milk)",
    ],
    [
      "Rub the sage over the pork cheeks. Hot oven, 220, half an hour to get it brown, then pour the milk round, drop it to 150 and give it three hours.",
      "rub hands (sage, pork cheeks); bake 30 oven c220; drizzle hands (milk); adjust-heat hands c150; bake 180 oven c150",
    ],
    [
      "Layer the potatoes with the cheese, lid on, low oven at 150 for two hours.",
      "layer hands (potatoes, cheese); cover hands; bake 120 oven c150",
    ],
  ])("%s", (method, expected) => {
    expect(told(method)).toBe(expected);
  });
  it.each(["The onions in the pan should be soft by now.", "The lot into the bin if it smells."])(
    "orders nothing: %s",
    (method) => {
      expect(told(method)).toBe("");
    },
  );
});

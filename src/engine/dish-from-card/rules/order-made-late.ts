import type { Dish } from "../../model/dish.ts";
import { stem } from "../steps/stem.ts";
import { type Placed, placedActions } from "./dish-graph.ts";
import { sentenceOf } from "./order-words.ts";
import type { OutOfOrder } from "./out-of-order.ts";

/** What is called done, and the work by which it comes to be so. */
const participles: ReadonlyMap<string, RegExp> = new Map([
  ["whisked", /^whisk/],
  ["whipped", /^whi(?:p|sk)/],
  ["beaten", /^(?:beat|whisk)/],
  ["melted", /^melt/],
  ["toasted", /^toast/],
  ["shredded", /^(?:shred|pull)/],
  ["mashed", /^mash/],
  ["browned", /^(?:brown|sear)/],
  ["boiled", /^boil/],
  ["poached", /^poach/],
  ["roasted", /^roast/],
  ["grilled", /^grill/],
  ["fried", /^fry/],
  ["soaked", /^soak/],
  ["drained", /^drain/],
  ["blanched", /^blanch/],
  ["caramelised", /^(?:caramel|fry|sweat)/],
]);
const calledDone = new RegExp(
  `\\b(${[...participles.keys()].join("|")})\\s+((?:[\\p{L}-]+\\s+){0,2}[\\p{L}-]+)`,
  "giu",
);
const anotherLot = /\b(?:rest|remain\w*|more|another|other|again|second|next|each|extra)\b/i;
const elsewhere = /\b(?:below|see|recipe|prepare)\b/i;
const idle: ReadonlySet<string> = new Set(
  "and or with in into to over the a of on until then for".split(" "),
);

const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .filter((word) => word.length > 2);

/** The words of a name, up to the first that joins it to something else. */
const nameOf = (text: string): readonly string[] => {
  const words = text.toLowerCase().split(/\s+/);
  const end = words.findIndex((word) => idle.has(word));
  return words.slice(0, end < 0 ? undefined : end).map(stem);
};

/** "Fold in the whisked eggs", and only then "whisk the eggs". */
const calledDoneTooSoon = (dish: Dish, all: readonly Placed[]): readonly OutOfOrder[] => {
  const listed = dish.ingredients.map((i) => i.text.toLowerCase());
  return all.flatMap((late, at) => {
    if (late.step.phase !== "method" || late.action.technique === "plate" || elsewhere.test(sentenceOf(late)))
      return [];
    const next = all[at + 1];
    const from = late.action.span.start - late.step.span.start;
    const to = next?.step === late.step ? next.action.span.start - late.step.span.start : undefined;
    return [...late.step.text.slice(Math.max(0, from), to).matchAll(calledDone)].flatMap((found) => {
      const done = (found[1] ?? "").toLowerCase();
      const does = participles.get(done);
      const name = nameOf(found[2] ?? "");
      const noun = name.at(-1);
      if (does === undefined || noun === undefined || listed.some((line) => line.includes(done))) return [];
      const isIt = (p: Placed): boolean =>
        (does.test(p.action.technique ?? "") || does.test(p.action.verb)) &&
        wordsOf(sentenceOf(p)).some((word) => stem(word) === noun);
      if (all.slice(0, at + 1).some((p) => p !== late && isIt(p))) return [];
      const early = all.slice(at + 1).find(isIt);
      return early === undefined || early.step.phase !== "method" || anotherLot.test(sentenceOf(early))
        ? []
        : [{ late, early }];
    });
  });
};

const made =
  "icing|frosting|buttercream|filling|topping|dressing|sauce|custard|glaze|syrup|batter|marinade|ganache|gravy|vinaigrette|crumble|pastry|dough";
const putOn = new RegExp(
  `\\b(?:with|spread|pour|drizzle|spoon|brush|add|fold|stir|layer|top|cover|mix|toss|dip|coat|fill|combine|put|tip|sandwich)\\b[^.]{0,40}(?<!for )\\bthe\\s+(?:\\p{L}+\\s+)?(${made})\\b`,
  "iu",
);
const making = new RegExp(
  `(?:^|[.!?]\\s+)(?:\\d+[.)]\\s*)?(?:(?:meanwhile|now|next|then),?\\s+)?(?:for|(?:to )?make) the (?:\\p{L}+\\s+)?(${made})\\b`,
  "iu",
);

/** "Spread with the icing", and only then "for the icing, beat the butter". */
const usedBeforeMade = (dish: Dish, all: readonly Placed[]): readonly OutOfOrder[] =>
  all.flatMap((late, at) => {
    if (late.step.phase !== "method" || late.action.technique === "serve") return [];
    const noun = putOn.exec(sentenceOf(late))?.[1]?.toLowerCase();
    if (noun === undefined || dish.ingredients.some((i) => i.name.toLowerCase().endsWith(noun))) return [];
    if (late.step.part?.toLowerCase().includes(noun) === true) return [];
    const makes = (p: Placed): boolean =>
      making.exec(p.step.text)?.[1]?.toLowerCase() === noun ||
      p.action.makes?.toLowerCase().endsWith(noun) === true;
    if (all.slice(0, at + 1).some(makes)) return [];
    if (all.slice(0, at).some((p) => p.step.part?.toLowerCase().includes(noun) === true)) return [];
    const early = all
      .slice(at + 1)
      .find((p) => p.step !== late.step && making.exec(p.step.text)?.[1]?.toLowerCase() === noun);
    return early === undefined ? [] : [{ late, early }];
  });

const combines =
  /^(?:mix|whisk|beat|stir|melt|blend|cream|rub-in|simmer|cook|heat|add|fold|run-machine|whisk-whites|whip-cream|boil|bring-to-boil|thicken|sweat|fry)$/;

/** "Fill the cases with the custard" where nothing was put together yet, and a later step does. */
const usedBeforeMixed = (dish: Dish, all: readonly Placed[]): readonly OutOfOrder[] => {
  const many = (p: Placed): boolean =>
    new Set(p.action.uses.flatMap((u) => (u.ingredient === null ? [] : [u.ingredient]))).size >= 2;
  const early = all.find(
    (p) => many(p) || (combines.test(p.action.technique ?? "") && p.action.uses.length > 0),
  );
  if (early === undefined || early.step.phase !== "method") return [];
  const late = all.slice(0, early.at).find((p) => {
    const noun = putOn.exec(sentenceOf(p))?.[1]?.toLowerCase();
    return (
      noun !== undefined &&
      p.step !== early.step &&
      p.step.phase === "method" &&
      p.action.technique !== "serve" &&
      !dish.ingredients.some((i) => i.text.toLowerCase().includes(noun) || i.card !== null) &&
      p.step.part?.toLowerCase().includes(noun) !== true
    );
  });
  return late === undefined || !many(early) ? [] : [{ late, early }];
};

/** What a step takes up by a name that only a later step gives cause for; one a late step. */
export const madeTooLate = (dish: Dish): readonly OutOfOrder[] => {
  const all = placedActions(dish);
  const isCalled = calledDone.test(dish.text);
  calledDone.lastIndex = 0;
  return [
    ...(isCalled ? calledDoneTooSoon(dish, all) : []),
    ...usedBeforeMixed(dish, all),
    ...(making.test(dish.text.replaceAll("\n", ". ")) ? usedBeforeMade(dish, all) : []),
  ];
};

import { makeFinding } from "../../findings/make-finding.ts";
import type { Rule } from "./rule.ts";
import { findIn } from "./sentence-edits.ts";

/** Parts of a dish that cooks name, and what must be on the list for it to have been made or bought; any one is enough. */
const parts: readonly (readonly [name: string, madeOf: RegExp])[] = [
  ["custard", /custard|egg|yolk|cornflour|cornstarch/i],
  ["pastry", /pastry|flour|filo|phyllo|dough|shortcrust/i],
  ["dough", /dough|flour|meal\b|oats|almonds|potato|yeast|semolina/i],
  ["batter", /batter|flour|egg|starch|cornflour|\bmix\b/i],
  ["meringue", /meringue|white|egg|aquafaba/i],
  ["caramel", /caramel|sugar|syrup|dulce|toffee|honey/i],
  ["ganache", /ganache|chocolate/i],
  ["icing", /icing|sugar|fondant|chocolate|cream cheese/i],
  ["frosting", /frosting|sugar|cream cheese|chocolate/i],
  ["syrup", /syrup|sugar|honey|treacle|molasses|cordial|agave/i],
  ["crumble", /crumble|flour|oats|crumbs?|biscuit/i],
  ["stuffing", /stuffing|crumb|bread|rice|sausage|mince|oats|couscous|chestnut/i],
  ["breadcrumbs", /crumb|bread|panko|cracker|loaf/i],
  ["mash", /potato|celeriac|swede|parsnip|carrot|cauliflower|bean|pea|squash|mash|turnip/i],
  ["dumplings", /dumpling|flour|suet|potato|semolina|gnocchi|bread|gyoza|wonton/i],
  ["vinaigrette", /vinaigrette|vinegar|lemon|lime|juice|mustard/i],
  ["dressing", /dressing|oil|vinegar|lemon|lime|yogh?urt|mayonnaise|cream|tahini|buttermilk|soy|juice/i],
  ["béchamel", /b[ée]chamel|milk|white sauce/i],
  ["hollandaise", /hollandaise|yolk|egg/i],
  ["mayonnaise", /mayo|yolk|egg|aquafaba/i],
  ["gravy", /gravy|stock|broth|meat|beef|lamb|pork|chicken|turkey|duck|onion|wine|bone|sausage/i],
  [
    "jam",
    /jam|berr|fruit|plum|apricot|fig|sugar|rhubarb|peach|cherr|orange|marmalade|preserve|tomato|onion|chilli/i,
  ],
  ["compote", /compote|berr|fruit|plum|apple|rhubarb|apricot|pear|cherr|peach|fig|quince|currant|mango/i],
  ["pesto", /pesto|basil|herb|parsley|rocket|pine nut|garlic|walnut|kale|coriander|cilantro|mint/i],
  ["croutons", /crouton|bread|baguette|ciabatta|loaf|roll/i],
  ["sponge", /sponge|flour|cake|egg|trifle|almonds|biscuit|ladyfinger|savoiardi/i],
  ["jelly", /jelly|gelatine?|agar|pectin|sugar/i],
  ["praline", /praline|nut|almond|sugar|pecan|sesame/i],
  ["curd", /curd|egg|yolk|milk|tofu|lemon/i],
  ["salsa", /salsa|tomat|herb|parsley|chilli|chile|mango|pepper|onion|coriander|avocado|corn/i],
];

const patterns = parts.map(([name, madeOf]) => ({
  name,
  madeOf,
  taken: new RegExp(
    `\\b(?:the|your) ${name}\\b(?!(?: |-)(?:powder|cups?|dish|tin|brush|brushes|ring|bag|sugar|knife|case))`,
    "i",
  ),
}));

/** A part of the dish that the method takes up and that is neither on the list nor can have been made of it. */
export const componentNotMade: Rule = {
  code: "component-not-made",
  check: (dish) => {
    if (dish.ingredients.length < 2) return [];
    const list = dish.ingredients.map((i) => `${i.text} ${i.card ?? ""}`).join(" ; ");
    const from = Math.min(...dish.ingredients.map((i) => i.span.start));
    const to = Math.min(...dish.steps.map((s) => s.span.start).filter((at) => at > from), dish.text.length);
    const around = dish.text.slice(from, to).toLowerCase();
    const method = dish.steps
      .map((s) => s.text)
      .join("\n")
      .toLowerCase();
    return patterns.flatMap(({ name, madeOf, taken }) => {
      if (!method.includes(name) || around.includes(name) || madeOf.test(list)) return [];
      const step = dish.steps.find(
        (s) => s.phase === "method" && taken.test(s.text) && !/\bif\b|\bor\b|see |page/i.test(s.text),
      );
      const span = step === undefined ? null : findIn(step, taken);
      const last = dish.ingredients.at(-1);
      if (span === null || last === undefined) return [];
      const at = last.span.end;
      return [
        makeFinding(
          "component-not-made",
          dish.source,
          span,
          { name },
          {
            fixes: [
              { kind: "add-ingredient", edits: [{ span: { start: at, end: at }, text: `\nsome ${name}` }] },
            ],
          },
        ),
      ];
    });
  },
};

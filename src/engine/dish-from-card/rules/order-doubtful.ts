import type { Finding } from "../../findings/finding.ts";
import { makeFinding } from "../../findings/make-finding.ts";
import type { Dish } from "../../model/dish.ts";
import { type Placed, placedActions, worksOn } from "./dish-graph.ts";
import { madeTooLate } from "./order-made-late.ts";
import { outOfOrder } from "./out-of-order.ts";
import type { Rule } from "./rule.ts";
import { replaceWords } from "./sentence-edits.ts";

/** What is done to one thing in this order and never in the other. `last` is looked for before any `first`. */
const pairs: readonly {
  readonly first: ReadonlySet<string>;
  readonly last: ReadonlySet<string>;
  readonly unless: RegExp;
}[] = [
  {
    first: new Set(["boil", "blanch", "parboil"]),
    last: new Set(["drain"]),
    unless: /soak|tin|can|jar|rinse|wash|salt|mozzarella|tofu|stand|press/i,
  },
  { first: new Set(["roast"]), last: new Set(["carve"]), unless: /^$/ },
  { first: new Set(["bake"]), last: new Set(["ice", "frost", "dust"]), unless: /tin|flour|board|surface/i },
  { first: new Set(["whisk", "whip"]), last: new Set(["fold", "fold-in"]), unless: /^$/ },
  {
    first: new Set(["boil", "roast", "steam"]),
    last: new Set(["mash"]),
    unless: /banana|avocado|garlic|berr|again/i,
  },
];

/** Something is done to a food before what must come first: drained before it is boiled, iced before it is baked. */
export const orderDoubtful: Rule = {
  code: "order-doubtful",
  check: (dish) => {
    // Most cards have no pair that could stand the wrong way round, and then no food is followed.
    const all = placedActions(dish);
    const open = pairs.flatMap(({ first, last, unless }) => {
      const lasts = all.filter((p) => last.has(verbOf(p)));
      const [late] = lasts;
      if (late === undefined) return [];
      const firsts = all.filter((p) => first.has(verbOf(p)));
      const early = firsts.at(-1);
      return early !== undefined && late.step.index < early.step.index ? [{ firsts, lasts, unless }] : [];
    });
    const told = [...outOfOrder(dish), ...madeTooLate(dish)];
    if (open.length === 0 && told.length === 0) return [];
    const said = new Set<string>(told.map(({ late }) => late.action.id));
    const steps = new Set(told.map(({ late }) => late.step));
    const apart = told.filter(({ late }, k) => told.findIndex((t) => t.late.step === late.step) === k);
    return [
      ...apart.map(({ late, early }) => say(dish, late, early)),
      ...dish.ingredients.flatMap((i) => {
        const on = (p: Placed): boolean => worksOn(dish, p, i.index);
        return open.flatMap(({ firsts, lasts, unless }) => {
          const late = lasts.find(on);
          const early = late === undefined ? undefined : firsts.find(on);
          if (late === undefined || early === undefined || late.step === early.step) return [];
          if (late.at > early.at || unless.test(`${late.step.text} ${i.text}`)) return [];
          if (lasts.filter(on).length > 1 || said.has(late.action.id)) return [];
          said.add(late.action.id);
          return steps.has(late.step) ? [] : [say(dish, late, early)];
        });
      }),
    ];
  },
};

const say = (dish: Dish, late: Placed, early: Placed): Finding =>
  makeFinding(
    "order-doubtful",
    dish.source,
    late.action.span,
    { verb: late.action.verb, before: early.action.verb },
    {
      related: [{ source: dish.source, span: early.action.span }],
      fixes: [{ kind: "add-step", edits: exchanged(dish, late, early) }],
    },
  );

const verbOf = ({ action }: Placed): string => action.technique ?? action.verb;

/** The two steps change places. */
const exchanged = (dish: Dish, a: Placed, b: Placed) => [
  replaceWords(a.step.span, dish.text.slice(b.step.span.start, b.step.span.end)),
  replaceWords(b.step.span, dish.text.slice(a.step.span.start, a.step.span.end)),
];

import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { isFoodCookedThrough, swapOf } from "../larder/cooked-through.ts";
import { limitsFor } from "../larder/limits.ts";
import { needById } from "../larder/needs.ts";
import type { Dish } from "../model/dish.ts";
import type { HazardKind } from "../model/food.ts";
import type { Measured, Menu, Version } from "../model/menu.ts";
import type { Guest, Region } from "../model/sitting.ts";
import type { Span } from "../model/span.ts";
import { criticalLimit, hazardsOf, type Pointed } from "./pointed.ts";
import { coreFindings, statedCores } from "./stated-cores.ts";

type Making = {
  readonly dish: Dish;
  readonly versions: readonly (Pick<Version, "swaps" | "ingredients"> & {
    readonly guests: readonly string[] | null;
  })[];
};

/** What can go wrong with the foods themselves, once for each ingredient and hazard, whatever the plan. */
export const foodPoints = (menu: Menu): readonly Pointed[] => {
  const makings: readonly Making[] = [
    ...menu.components.map((c) => ({
      dish: c.dish,
      // Who eats of a component depends on the dishes that use it; every guest is looked at.
      versions: [{ swaps: [], ingredients: c.ingredients, guests: null }],
    })),
    ...menu.dishes.map(({ dish, versions }) => ({
      dish,
      // The nameless and the guests that no version names get the dish as written.
      versions: versions.map((v) => ({
        ...v,
        guests: [...v.guests, ...(v.swaps.length === 0 ? unnamed(menu, versions) : [])],
        ingredients: v.ingredients.filter((m) => m.card === null),
      })),
    })),
  ];
  return makings.flatMap((making) => pointsOf(menu, making));
};

const unnamed = (menu: Menu, versions: readonly Version[]): readonly string[] =>
  menu.sitting.guests.map((g) => g.name).filter((name) => !versions.some((v) => v.guests.includes(name)));

/** One hazard of one food, and who it is graver for. */
type Seen = {
  readonly measured: Measured;
  readonly hazard: HazardKind;
  readonly span: Span;
  readonly cooked: boolean;
  readonly guests: Set<Guest>;
};

const pointsOf = (menu: Menu, { dish, versions }: Making): readonly Pointed[] => {
  const seen = new Map<string, Seen>();
  for (const version of versions)
    for (const measured of version.ingredients)
      for (const hazard of hazardsOf(measured)) {
        const key = `${measured.ingredient ?? measured.name} ${hazard}`;
        const here = seen.get(key) ?? {
          measured,
          hazard,
          span: spanOf(dish, version, measured),
          cooked: isFoodCookedThrough(dish, version.swaps, measured, null),
          guests: new Set<Guest>(),
        };
        for (const guest of menu.sitting.guests)
          if (
            (version.guests === null || version.guests.includes(guest.name)) &&
            isGraver(guest, hazard, here.cooked)
          )
            here.guests.add(guest);
        seen.set(key, here);
      }
  return [...seen.values()].filter(isWorthSaying).map((one) => pointOf(dish, one, menu.sitting.region));
};

// Said only for a guest whom it can hurt more than others.
const forSome: readonly HazardKind[] = [
  "soft-cheese",
  "raw-milk",
  "smoked-fish",
  "cured-meat",
  "high-mercury-fish",
  "sprouts",
  "choking",
];
// Gone once it is cooked through.
const untilCooked: readonly HazardKind[] = ["raw-flour"];

const isWorthSaying = ({ hazard, guests, cooked }: Seen): boolean =>
  guests.size > 0 || !(forSome.includes(hazard) || (cooked && untilCooked.includes(hazard)));

const pointOf = (dish: Dish, one: Seen, region: Region): Pointed => {
  const { measured, hazard, span, cooked, guests } = one;
  const cores = measured.ingredient === null ? [] : coreFindings(dish, measured.ingredient, hazard, region);
  return {
    point: {
      hazard,
      dish: dish.source,
      ingredient: measured.ingredient,
      task: null,
      span,
      names: [measured.name],
      limits: [
        ...limitsFor(region, "core", [hazard]),
        ...(hazard === "raw-fish" && !cooked ? limitsFor(region, "freeze", [hazard]) : []),
      ].map(criticalLimit),
      guests: [...guests].map((guest) => guest.name),
      broken: cores.length > 0,
    },
    findings: [...cores, ...rawFindings(dish, one), ...pregnancyFindings(dish, one)],
  };
};

const spanOf = (dish: Dish, version: Pick<Version, "swaps">, measured: Measured): Span => {
  const line = measured.ingredient === null ? undefined : dish.ingredients[measured.ingredient];
  return line?.span ?? swapOf(dish, version.swaps, measured)?.span ?? dish.titleSpan;
};

// What need only be asked about is graver for nobody once it is cooked through.
const isGraver = (guest: Guest, hazard: HazardKind, cooked: boolean): boolean =>
  guest.needs.some((id) => {
    const need = needById(id);
    return (
      need !== null && (need.cautions.includes(hazard) || (!cooked && need.asks.cautions.includes(hazard)))
    );
  });

// Raw foods that a card usually cooks; eggs and fish have their own finding where the card is read, or are served raw.
const usuallyCooked: readonly HazardKind[] = [
  "raw-poultry",
  "raw-mince",
  "raw-meat",
  "raw-shellfish",
  "raw-fish",
];

const rawFindings = (dish: Dish, { measured, hazard, span, cooked }: Seen): readonly Finding[] =>
  cooked || !usuallyCooked.includes(hazard) || statesCore(dish, measured)
    ? []
    : [makeFinding("not-cooked-through", dish.source, span, { name: measured.name })];

// A middle that the card means to be pink is measured against the limits instead.
const statesCore = (dish: Dish, { ingredient }: Measured): boolean =>
  ingredient !== null && statedCores(dish, ingredient).length > 0;

const pregnancyFindings = (dish: Dish, { measured, span, guests }: Seen): readonly Finding[] =>
  [...guests]
    .filter((guest) => guest.needs.includes("pregnant"))
    .map((guest) =>
      makeFinding("pregnancy-caution", dish.source, span, { name: measured.name, guest: guest.name }),
    );

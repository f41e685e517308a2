import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { roundUpToPortion } from "../measure/round-up-to-portion.ts";
import { type Count, count } from "../measure/units.ts";
import type { Dish } from "../model/dish.ts";
import type { MenuDish, Version } from "../model/menu.ts";
import type { Sitting } from "../model/sitting.ts";
import { type Adjustments, adjustAmounts } from "./adjust-amounts.ts";
import { adjustedFindings, adjustLines } from "./adjusted-lines.ts";
import { type Choice, chooseSwaps } from "./choose-swaps.ts";
import type { Line, LineBook } from "./dish-lines.ts";
import type { DishFinder } from "./find-dish.ts";
import type { GuestNeeds } from "./guest-needs.ts";
import { scaleAmounts } from "./measure-ingredient.ts";
import { swapLines } from "./swap-lines.ts";
import { wholePieces } from "./whole-pieces.ts";

/** A version with its lines for the card's own yield, which tell what other cards it uses. */
export type VersionLines = { readonly version: Version; readonly lines: readonly Line[] };

type DishVersions = {
  readonly versions: readonly VersionLines[];
  readonly unserved: MenuDish["unserved"];
  /** What does not go in step in it, for all versions alike. */
  readonly adjustments: Adjustments;
  readonly findings: readonly Finding[];
};

type Group = { readonly swaps: readonly number[]; readonly guests: string[]; portions: number };

// Above this the usual advice is to taste rather than trust the arithmetic; common practice, no source.
const farFactor = 4;

/** The needs that a version's swaps were written for, joined; swaps without a named need go by their place. */
const idOf = (dish: Dish, swaps: readonly number[], taken: ReadonlySet<string>): string => {
  const names = swaps.flatMap((s) => {
    const needs = dish.swaps[s]?.needs ?? [];
    return needs.length > 0 ? needs : [`swap-${s + 1}`];
  });
  const id = swaps.length === 0 ? "as-written" : [...new Set(names)].join("+");
  if (!taken.has(id)) return id;
  return `${id}+swap-${swaps.map((s) => s + 1).join("-")}`;
};

/**
 * Splits the covers over the versions of a dish. Guests whose needs stand against the dish get the card's swaps that
 * clear it, or go unserved; everybody else, named or not, gets it as written. Spare is a share of the covers, in whole
 * portions, added to the dish as written, or to the largest version when nobody gets it as written.
 */
export const makeVersions = (
  dish: Dish,
  yields: Count,
  sitting: Sitting,
  guests: readonly GuestNeeds[],
  book: LineBook,
  finder: DishFinder,
): DishVersions => {
  const cache = new Map<string, readonly Line[]>();
  const linesWith = (swaps: readonly number[]): readonly Line[] => {
    const key = swaps.join(",");
    const lines = cache.get(key) ?? swapLines(dish, swaps, book, finder);
    cache.set(key, lines);
    return lines;
  };
  // Guests of the same needs are answered alike.
  const choices = new Map<string, Choice>();
  const choiceFor = ({ needs }: GuestNeeds): Choice => {
    const key = needs.map((need) => need.id).join(",");
    const choice = choices.get(key) ?? chooseSwaps(dish, needs, linesWith);
    choices.set(key, choice);
    return choice;
  };
  const findings: Finding[] = [];
  const unserved: MenuDish["unserved"][number][] = [];
  // One finding a need and ingredient, however many guests have it.
  const missing = new Map<string, { need: string; line: Line; guests: string[] }>();
  const asWritten: Group = { swaps: [], guests: [], portions: 0 };
  const groups = new Map<string, Group>([["", asWritten]]);

  for (const guest of guests) {
    const { swaps, against } = choiceFor(guest);
    for (const need of guest.unknown) unserved.push({ guest: guest.name, need, ingredients: [] });
    for (const need of guest.needs) {
      const lines = against.filter((o) => o.need.id === need.id).map((o) => o.line);
      if (lines.length === 0) continue;
      const ingredients = lines.flatMap((l) => l.ingredient ?? []);
      unserved.push({ guest: guest.name, need: need.id, ingredients });
      for (const line of lines) {
        const key = `${need.id}/${line.name}`;
        const known = missing.get(key);
        if (known !== undefined) known.guests.push(guest.name);
        else missing.set(key, { need: need.id, line, guests: [guest.name] });
      }
    }
    if (guest.unknown.length > 0 || against.length > 0) continue;
    const key = swaps.join(",");
    const group = groups.get(key) ?? { swaps, guests: [], portions: 0 };
    group.guests.push(guest.name);
    group.portions += 1;
    groups.set(key, group);
  }

  for (const { need, line, guests: names } of missing.values()) {
    const span = dish.ingredients.find((i) => i.index === line.ingredient)?.span ?? dish.titleSpan;
    const facts = { guest: names.join(", "), need, title: dish.title, ingredient: line.name };
    findings.push(makeFinding("swap-missing", dish.source, span, facts));
  }

  const withNeeds = new Set(guests.map((g) => g.name));
  const covers = Math.max(sitting.covers, sitting.guests.length);
  asWritten.guests.push(...sitting.guests.map((g) => g.name).filter((name) => !withNeeds.has(name)));
  asWritten.portions += Math.max(0, covers - guests.length);
  const largest = [...groups.values()].reduce((a, b) => (b.portions > a.portions ? b : a), asWritten);
  const host = asWritten.portions > 0 ? asWritten : largest;
  if (host.portions > 0) host.portions += roundUpToPortion(Math.max(0, sitting.spare) * covers);

  // All versions are made of one pot, as far as they are alike, so that all go by the whole of it.
  const whole = [...groups.values()].reduce((sum, g) => sum + g.portions, 0) / yields;
  const adjustments = adjustAmounts(dish, whole, sitting.kitchen);
  findings.push(...adjustedFindings(dish, whole, adjustments));
  const taken = new Set<string>();
  const versions = [...groups.values()]
    .filter((g) => g.portions > 0)
    .map(({ swaps, guests: names, portions }): VersionLines => {
      const id = idOf(dish, swaps, taken);
      taken.add(id);
      const lines = adjustLines(dish, swaps, linesWith(swaps), adjustments);
      const factor = portions / yields;
      const scaled = lines.flatMap((line) =>
        line.foods.map((food) => ({ ...food, ...scaleAmounts(food, factor) })),
      );
      const { ingredients, rebalanced } = wholePieces(dish, factor, scaled);
      for (const { name, pieces, by } of rebalanced)
        findings.push(
          makeFinding("whole-pieces", dish.source, dish.titleSpan, { title: dish.title, name, pieces, by }),
        );
      return { version: { id, swaps, guests: names, portions: count(portions), factor, ingredients }, lines };
    });
  const most = versions.reduce((sum, v) => sum + v.version.factor, 0);
  if (most > farFactor)
    findings.push(
      makeFinding("scaled-far", dish.source, dish.titleSpan, { title: dish.title, factor: most }),
    );
  return { versions, unserved, adjustments, findings };
};

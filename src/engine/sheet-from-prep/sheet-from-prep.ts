import { addEstimates, type Estimate, exactly, meanOf } from "../measure/estimate.ts";
import { count, grams, type Minutes, minutes, share } from "../measure/units.ts";
import type { Dish, Step } from "../model/dish.ts";
import type { Menu, MenuDish, Version } from "../model/menu.ts";
import type { Prep, Task } from "../model/prep.ts";
import type { Sheet, SheetStep } from "../model/sheet.ts";
import { countsOf, ownVesselsHere } from "./counts-of.ts";
import { equipmentOf } from "./equipment-of.ts";
import { lineOf } from "./line-of.ts";
import { waterOf } from "./water-of.ts";

/**
 * The cook's sheets of a menu: for every version of every dish the amounts to weigh, what each step is done in, how often
 * and how long at this size.
 */
export const sheetFromPrep = (menu: Menu, prep: Prep): readonly Sheet[] =>
  menu.dishes.flatMap((onMenu) => onMenu.versions.map((version) => sheetOf(onMenu, version, menu, prep)));

const sheetOf = (onMenu: MenuDish, version: Version, menu: Menu, prep: Prep): Sheet => {
  const { dish } = onMenu;
  const lines = version.ingredients.filter((m) => m.card === null).map((m) => lineOf(m, dish));
  const weights = version.ingredients.map((m) => m.edible?.likely ?? null);
  const water = waterOf(dish, version);
  const own = ownVesselsHere(
    dish,
    onMenu.vessels.filter((use) => use.version === version.id),
  );
  const steps = dish.steps.map((step) => ({
    ...stepOf(step, onMenu, version, tasksOf(prep, dish)),
    counts: countsOf(dish, step, version.factor, own),
    water: water.get(step.index) ?? null,
  }));
  return {
    dish: dish.source,
    title: dish.title,
    version: version.id,
    portions: version.portions,
    cardPortions: version.factor > 0 ? version.portions / version.factor : 0,
    factor: version.factor,
    lines,
    steps,
    equipment: equipmentOf(dish, steps, own, version.factor, menu.sitting.kitchen),
    grams: grams(weights.reduce<number>((sum, weight) => sum + (weight ?? 0), 0)),
    known: share(
      weights.length === 0 ? 1 : weights.filter((weight) => weight !== null).length / weights.length,
    ),
  };
};

/** Plating and mise en place have no step of the method; they stand on the plan. */
const tasksOf = (prep: Prep, dish: Dish): readonly Task[] =>
  prep.tasks.filter((task) => task.dish === dish.source && task.span !== null && task.kind !== "mise");

const stepOf = (
  step: Step,
  onMenu: MenuDish,
  version: Version,
  tasks: readonly Task[],
): Omit<SheetStep, "counts" | "water"> => {
  const verbs = new Map(step.actions.map((action) => [action.id, action.verb]));
  const own = tasks.filter((task) => beginsIn(task, step));
  const batches = onMenu.batches.filter((b) => b.version === version.id && verbs.has(b.action));
  return {
    index: step.index,
    text: step.text,
    phase: step.phase,
    vessels: onMenu.vessels.flatMap((use) => {
      const verb = use.version === version.id ? verbs.get(use.action) : undefined;
      return verb === undefined ? [] : [{ ...use, verb }];
    }),
    batches: count(batches.reduce<number>((most, b) => Math.max(most, b.batches), 1)),
    minutes: lengthOf(own),
    until: onMenu.dish.steps.reduce(
      (last, { index, span }) =>
        own.some((task) => (task.span?.end ?? 0) > span.start) ? Math.max(last, index) : last,
      step.index,
    ),
    cardMinutes: statedIn(step),
    handsMinutes: minutes(
      own
        .flatMap((task) => task.segments)
        .reduce((sum, s) => sum + (s.attention === "hands" ? meanOf(s.minutes) : 0), 0),
    ),
  };
};

/** A task may reach over several steps; it is told with the one that it begins in. */
const beginsIn = (task: Task, step: Step): boolean =>
  task.span !== null && step.span.start <= task.span.start && task.span.start < step.span.end;

/** What the words of a step give as its length, at the card's own size; null when they give none. */
const statedIn = (step: Step): Estimate<Minutes> | null =>
  step.actions
    .flatMap(({ minutes: stated }) => (stated === null || stated.assumed ? [] : [stated]))
    .reduce<Estimate<Minutes> | null>((sum, { low, likely, high }) => {
      const own = { low, likely, high };
      return sum === null ? own : addEstimates(sum, own);
    }, null);

const lengthOf = (tasks: readonly Task[]): Estimate<Minutes> | null =>
  tasks.length === 0
    ? null
    : tasks
        .flatMap((task) => task.segments.map((segment) => segment.minutes))
        .reduce(addEstimates, exactly(minutes(0)));

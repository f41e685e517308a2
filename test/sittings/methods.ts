import { type Action, type Dish, exactly, minutes, type Step } from "#engine/index.ts";
import { techniqueById } from "#engine/larder/techniques.ts";
import { dish, ingredient } from "../help/dishes.ts";

const nowhere = { start: 0, end: 0 };

/** One action by hand: a technique, how long (null for the usual), what it takes (lines by number, actions by id). */
export type Told = {
  readonly id: string;
  readonly technique: string;
  readonly minutes?: number;
  readonly takes?: readonly (number | string)[];
  readonly celsius?: number;
  readonly batches?: number;
  readonly part?: string;
  readonly toServe?: boolean;
  /** The least gap before it that the words state, minutes. */
  readonly gap?: number;
};

const actionOf = (told: Told): Action => {
  const technique = techniqueById(told.technique)!;
  const takes = told.takes ?? [];
  return {
    id: told.id,
    span: nowhere,
    technique: technique.id,
    verb: technique.verbs[0]!,
    uses: takes.map((t) => ({
      ingredient: typeof t === "number" ? t : null,
      product: typeof t === "string" ? t : null,
      share: 1 as Action["uses"][number]["share"],
      implied: false,
      span: nowhere,
    })),
    minutes: told.minutes === undefined ? null : { ...exactly(minutes(told.minutes)), assumed: false },
    station: technique.station,
    attention: technique.attention,
    celsius: (told.celsius ?? null) as Action["celsius"],
    heat: null,
    core: null,
    vessel: null,
    cue: null,
    makes: null,
    after: takes.filter((t): t is string => typeof t === "string"),
    alongside: false,
    batches: (told.batches ?? null) as Action["batches"],
    every: null,
    leastWait: told.gap === undefined ? null : minutes(told.gap),
  };
};

/** A dish with one step an action. */
export const cooked = (
  source: string,
  portions: number,
  grams: readonly number[],
  told: readonly Told[],
  more: Partial<Dish> = {},
): Dish =>
  dish(
    source,
    portions,
    grams.map((g, i) => ingredient(i, i === 0 ? "potato" : "carrot", g)),
    {
      steps: told.map(
        (t, index): Step => ({
          index,
          text: t.technique,
          span: nowhere,
          part: t.part ?? null,
          phase: t.toServe ? "to-serve" : "method",
          actions: [actionOf(t)],
        }),
      ),
      ...more,
    },
  );

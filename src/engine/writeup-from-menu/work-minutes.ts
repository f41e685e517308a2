import { type Minutes, minutes } from "../measure/units.ts";
import type { Action, Dish } from "../model/dish.ts";

const actionsOf = (dish: Dish): readonly Action[] => dish.steps.flatMap((step) => step.actions);

/** Minutes of one pair of hands, by the likely length of each action; null when the card gives no action a length. */
export const handsMinutes = (dish: Dish): Minutes | null => {
  const lengths = actionsOf(dish).flatMap((a) => (a.minutes === null ? [] : [a]));
  if (lengths.length === 0) return null;
  const hands = lengths.filter((a) => a.attention === "hands");
  return minutes(Math.round(hands.reduce((sum, a) => sum + (a.minutes?.likely ?? 0), 0)));
};

/** Minutes from the first action to the last, by the longest chain of what must follow what; null as above. */
export const totalMinutes = (dish: Dish): Minutes | null => {
  const actions = new Map(actionsOf(dish).map((a) => [a.id, a]));
  if (![...actions.values()].some((a) => a.minutes !== null)) return null;
  const ends = new Map<string, number>();
  // A ring in a broken card ends where it is met again.
  const endOf = (id: string, above: readonly string[]): number => {
    const known = ends.get(id);
    const action = actions.get(id);
    if (known !== undefined) return known;
    if (action === undefined || above.includes(id)) return 0;
    const ready = Math.max(0, ...action.after.map((earlier) => endOf(earlier, [...above, id])));
    const end = ready + (action.leastWait ?? 0) + (action.minutes?.likely ?? 0);
    ends.set(id, end);
    return end;
  };
  return minutes(Math.round(Math.max(0, ...[...actions.keys()].map((id) => endOf(id, [])))));
};

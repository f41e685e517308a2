import { techniqueById } from "../larder/techniques.ts";
import type { Action, Dish } from "../model/dish.ts";

/** Words that say no more than that it is a pan. */
const anyPan = /^(?:the )?(?:same )?(?:pan|pot|saucepan)$/i;
/** After these the food is no longer in its pan. */
const leaves: ReadonlySet<string> = new Set(
  "drain sieve push-through take-out unmould divide fill shape pipe plate serve spread layer arrange".split(
    " ",
  ),
);

const sameVessel = (a: string | null, b: string | null): boolean =>
  a === null || b === null || a === b || anyPan.test(a) || anyPan.test(b);

/** True for what is fried batch by batch in one layer, by its technique alone. */
export const fryLayer = ({ technique }: Action): boolean =>
  technique !== null && techniqueById(technique)?.law === "per-batch";

/**
 * Actions on the stove that go on in one pan: a place for each, the same for those of one pan. What is browned in one
 * layer of its own begins a new one; what is toasted among what is in the pan already stays in it.
 */
export const potGroups = (dish: Dish): ReadonlyMap<string, number> => {
  const groups = new Map<string, number>();
  const at = new Map<string, { readonly group: number; readonly vessel: string | null }>();
  let next = 0;
  for (const { actions } of dish.steps)
    for (const action of actions) {
      const from = action.uses.flatMap((use) => (use.product === null ? [] : (at.get(use.product) ?? [])));
      const [main] = from;
      if (action.station !== "burner") {
        const stays = action.station === "hands" && !leaves.has(action.technique ?? "");
        if (stays && main !== undefined && sameVessel(main.vessel, action.vessel)) at.set(action.id, main);
        continue;
      }
      const apart = fryLayer(action) && action.batches !== null;
      const goesOn = main !== undefined && !apart && sameVessel(main.vessel, action.vessel);
      const group = goesOn ? main.group : next++;
      const vessel = goesOn ? (main.vessel ?? action.vessel) : action.vessel;
      groups.set(action.id, group);
      at.set(action.id, { group, vessel });
    }
  return groups;
};

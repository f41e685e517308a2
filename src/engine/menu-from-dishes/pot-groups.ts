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

const underLid = /\b(?:lid|covered|cover)\b/i;
const openTop = /\b(?:foil|uncover|uncovered|without (?:a|the) lid|lid off)\b/i;
const pots = /\b(?:pan|pot|casserole|cocotte|dutch oven)\b/i;

/** True for what goes on in the oven in the pot that it was in on the stove: a braise, and what is under a lid. */
export const staysInPot = ({ station, technique, vessel }: Action, text: string): boolean =>
  station === "oven" &&
  (vessel === null || (pots.test(vessel) && !/roasting/i.test(vessel))) &&
  (technique === "braise" ||
    technique === "stew" ||
    (vessel !== null && pots.test(vessel)) ||
    (underLid.test(text) && !openTop.test(text)));

/**
 * Actions on the stove, and after it in the oven under the lid, that go on in one pan: a place for each, the same for those of one pan. What is browned in one
 * layer of its own begins a new one; what is toasted among what is in the pan already stays in it.
 */
export const potGroups = (dish: Dish): ReadonlyMap<string, number> => {
  const groups = new Map<string, number>();
  const at = new Map<string, { readonly group: number; readonly vessel: string | null }>();
  let next = 0;
  for (const { actions, text } of dish.steps)
    for (const action of actions) {
      const from = action.uses.flatMap((use) => (use.product === null ? [] : (at.get(use.product) ?? [])));
      const [main] = from;
      if (main !== undefined && staysInPot(action, text) && sameVessel(main.vessel, action.vessel)) {
        groups.set(action.id, main.group);
        at.set(action.id, main);
        continue;
      }
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

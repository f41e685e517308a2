import { count } from "../measure/units.ts";
import type { Prep, Resource } from "../model/prep.ts";
import type { Kitchen } from "../model/sitting.ts";

/** What may be in use at once, by the names that tasks use. */
export const resourcesOf = (kitchen: Kitchen): readonly Resource[] =>
  [
    { id: "burner", capacity: kitchen.burners },
    { id: "grill", capacity: kitchen.grills },
    { id: "fryer", capacity: kitchen.fryers },
    { id: "fridge", capacity: kitchen.fridgeLitres },
    { id: "freezer", capacity: kitchen.freezerLitres },
    ...kitchen.machines.map((machine) => ({ id: machine.name, capacity: machine.count as number })),
  ].filter((resource) => resource.capacity > 0);

export const ovensOf = (kitchen: Kitchen): Prep["ovens"] =>
  kitchen.ovens.map((oven) => ({ id: oven.name, shelves: count(oven.shelves) }));

/** What each machine is called for by: words of a verb or a vessel, and the machines that do it, best first. */
const machineWords: readonly { readonly asks: RegExp; readonly machines: readonly string[] }[] = [
  { asks: /knead|mixer|cream|whisk|beat|whip/, machines: ["mixer"] },
  { asks: /processor|pulse|rub|grind|spiral/, machines: ["processor", "blender"] },
  { asks: /blend|blitz|pur[eé]e|liquidi[sz]e|whiz|zap/, machines: ["blender", "processor"] },
  { asks: /churn|freeze/, machines: ["churn", "ice cream"] },
  { asks: /microwave|nuke/, machines: ["microwave"] },
  { asks: /sous|bath/, machines: ["bath", "sous"] },
];

/** The machine of the kitchen that these words ask for; null when it has none. */
export const machineFor = (words: string, kitchen: Kitchen): string | null => {
  const asked = words.toLowerCase();
  const named = kitchen.machines.find((m) => m.count > 0 && asked.includes(m.name.toLowerCase()));
  if (named) return named.name;
  for (const { asks, machines } of machineWords) {
    if (!asks.test(asked)) continue;
    for (const word of machines) {
      const found = kitchen.machines.find((m) => m.count > 0 && m.name.toLowerCase().includes(word));
      if (found) return found.name;
    }
  }
  return null;
};

/** The litres of the largest pan; null when the kitchen lists none. */
export const largestPan = (kitchen: Kitchen): number | null =>
  kitchen.pans.length === 0 ? null : Math.max(...kitchen.pans.map((pan) => pan.litres));

import type { Foods } from "./unseen-words.ts";
import { foods, measures, preparations, steps } from "./unseen-words.ts";

/** A run of whole numbers from a seed; the same seed gives the same run. */
const runFrom = (seed: number): ((below: number) => number) => {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  return (below) => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state % below;
  };
};

const of = <T>(list: readonly T[], next: (below: number) => number): T => {
  const found = list[next(list.length)];
  if (found === undefined) throw new Error("An empty list has nothing to choose from.");
  return found;
};

/**
 * An invented card of so many lines, whose lines the reader has never met: a third ingredients, the rest steps. Each seed
 * gives other foods, other amounts and other orders.
 */
export const unseenCard = (count: number, seed: number): string => {
  const next = runFrom(seed);
  const inList = Math.max(1, Math.floor(count / 3));
  const inMethod = Math.max(1, count - inList - 4);
  const listed: Foods[number][] = [];
  const list = Array.from({ length: inList }, () => {
    const food = of(foods, next);
    listed.push(food);
    const amount = of(measures, next).replace("#", String(3 + next(480)));
    const preparation = next(3) === 0 ? `, ${of(preparations, next)}` : "";
    return `${amount} ${food}${preparation}`;
  });
  const method = Array.from({ length: inMethod }, (_, i) => {
    const words = of(steps, next)
      .replace("@", of(listed, next))
      .replace("@", of(listed, next))
      .replace("#", String(3 + next(77)))
      .replace("°", `${140 + next(90)}°C`);
    return `${i + 1}. ${words}`;
  });
  return [`Supper dish number ${seed}`, "Serves 8", "Ingredients", ...list, "Method", ...method].join("\n");
};

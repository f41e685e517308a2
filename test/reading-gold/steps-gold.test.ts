import { describe, expect, it } from "vitest";
import { goldDishes } from "./steps-gold.ts";
import { kinds, scoreSteps } from "./steps-score.ts";

const folder = new URL(".", import.meta.url).pathname;

/**
 * Sets of dishes, and the least share read right of each kind, in percent: what the reader reached, so that no change
 * makes it worse unseen. For a set that is held out it is what the reader reached when it first saw it, less a point.
 */
const sets: readonly {
  readonly name: string;
  readonly files: readonly string[];
  readonly orders: number;
  readonly floor: Readonly<Record<(typeof kinds)[number], number>>;
}[] = [
  {
    name: "that the reader was tuned on",
    files: ["steps.txt", "steps-more.txt", "steps-third.txt", "steps-fourth.txt"].map((f) => `working/${f}`),
    orders: 150,
    floor: { technique: 99, time: 99, temperature: 99, place: 99, uses: 96, held: 92, details: 98 },
  },
  {
    name: "as cooks of several trades tell them",
    files: ["working/steps-fifth.txt"],
    orders: 200,
    floor: { technique: 98, time: 96, temperature: 96, place: 98, uses: 96, held: 89, details: 99 },
  },
  {
    name: "that the reader was never worked on",
    files: ["held-out/steps-second.txt"],
    orders: 300,
    floor: { technique: 94, time: 91, temperature: 79, place: 93, uses: 85, held: 71, details: 99 },
  },
  {
    name: "told with every kind of temperature",
    files: ["working/steps-seventh.txt"],
    orders: 250,
    floor: { technique: 94, time: 94, temperature: 87, place: 90, uses: 86, held: 73, details: 87 },
  },
  {
    name: "as cooks write, publish and tell them",
    files: ["working/steps-eighth.txt"],
    orders: 400,
    floor: { technique: 95, time: 95, temperature: 94, place: 94, uses: 91, held: 90, details: 98 },
  },
  {
    name: "everyday, told and terse",
    files: ["working/steps-ninth.txt"],
    orders: 450,
    floor: { technique: 93, time: 92, temperature: 89, place: 92, uses: 79, held: 67, details: 94 },
  },
  {
    name: "an ordinary mixture of cards, never worked on",
    files: ["held-out/steps-tenth.txt"],
    orders: 400,
    floor: { technique: 85, time: 81, temperature: 81, place: 85, uses: 73, held: 56, details: 90 },
  },
];

describe.each(sets)("steps of dishes $name", ({ files, orders, floor }) => {
  const dishes = files.flatMap((file) => goldDishes(folder + file));
  const score = scoreSteps(dishes);

  it("holds enough of them to count", () => {
    expect(dishes.reduce((sum, d) => sum + d.actions.length, 0)).toBeGreaterThan(orders);
  });

  it.each(kinds)("reads %s as well as it did", (kind) => {
    expect((100 * score.right[kind]) / score.of[kind]).toBeGreaterThanOrEqual(floor[kind]);
  });
});

import type { Evening } from "#engine/index.ts";
import { dayText } from "#words/clock.ts";
import { countText } from "#words/number-text.ts";
import type { Paint } from "./paint.ts";

/** The first line of every sheet: the sitting, its day, its place, its covers. */
export const heading = ({ menu: { sitting } }: Evening, paint: Paint): string => {
  const facts = [
    `${dayText(sitting.date, 0)} ${sitting.date.slice(0, 4)}`,
    sitting.place,
    countText(sitting.covers, "cover", "covers"),
  ].filter((fact) => fact !== "");
  return `${paint.bold(sitting.title)}: ${facts.join(", ")}\n`;
};

/** The title of a dish by its card's name; the name itself when there is no such dish. */
export const titlesOf = (evening: Evening): ((source: string) => string) => {
  const titles = new Map(evening.dishes.map((dish) => [dish.source, dish.title]));
  return (source) => titles.get(source) ?? source;
};

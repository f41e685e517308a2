import {
  type CardText,
  type Cook,
  type Course,
  count,
  type Food,
  type Kitchen,
  minutes,
  type Pack,
  type Sitting,
  share,
} from "#engine/index.ts";
import { cardNameOf, isCardFile } from "./card-file.ts";
import { checked } from "./checked.ts";
import type { Place } from "./place.ts";
import { makeProblem, type Problem, type Wanted } from "./problem.ts";
import { type ReadFoods, readFoods } from "./read-foods.ts";
import { readKitchen } from "./read-kitchen.ts";
import { readPrices } from "./read-prices.ts";
import { momentFromText, shiftFromText } from "./read-times.ts";
import { type SittingValue, sittingSchema, usualCurrency, usualSpareTime } from "./sitting-schema.ts";
import { type Path, type YamlFile, yamlFile } from "./yaml-file.ts";

/** Files as the caller keeps them: on disk, in the store, or in memory. Names are relative to the sitting's folder. */
export type SittingFiles = {
  readonly sitting: { readonly name: string; readonly text: string };
  /** The text of a file; null when there is none. */
  readonly read: (name: string) => string | null;
  /** The names of the files in a folder, without the folder; null when there is no such folder. */
  readonly list: (folder: string) => readonly string[] | null;
};

/** A card with the file it came from. */
type CardFile = CardText & { readonly file: string };

/** What the files say, as far as they can be used. */
export type SittingRead = {
  /** Null when something stands in the way; the problems say what. */
  readonly sitting: Sitting | null;
  readonly cards: readonly CardFile[];
  readonly problems: readonly Problem[];
  /** Where a finding's path ("courses/1/dishes/0", "kitchen/ovens/0", "packs/3") stands in the files. */
  readonly placeOf: (path: string) => Place;
};

/** Reads a sitting and all it names. Never throws; unknown keys and values that do not fit are refused with their place. */
export const sittingFromFiles = ({ sitting: own, read, list }: SittingFiles): SittingRead => {
  const file = yamlFile(own.name, own.text);
  const { value, problems } = checked(file, sittingSchema);
  if (value === null)
    return { sitting: null, cards: [], problems, placeOf: (path) => file.placeOf(stepsOf(path)) };
  const assumed: Problem[] = [];
  const assume = <V extends string>(given: V | undefined, key: string, taken: V): V => {
    if (given === undefined)
      assumed.push(makeProblem("value-assumed", file.placeOfKey([], "title"), { key, taken }));
    return given ?? taken;
  };
  const region = assume(value.region, "region", "uk");
  const currency = assume(value.currency, "currency", usualCurrency[region]);
  if (value["spare time"] === undefined) assume(undefined, "spare time", `${usualSpareTime} min`);
  if (value["food cost target"] === undefined) assume(undefined, "food cost target", "30 %");
  if (value.tax === undefined) assume(undefined, "tax", "0 %");
  const times = timesOf(file, value);
  const cards = cardsOf(file, value.cards ?? "cards", read, list);
  const kitchenText = read(value.kitchen);
  const kitchen =
    kitchenText === null
      ? { kitchen: null, file: null, problems: [missing(file, ["kitchen"], value.kitchen, "kitchen")] }
      : readKitchen(value.kitchen, kitchenText);
  const prices = pricesOf(file, value.prices ?? [], currency, read);
  const foods = foodsOf(file, value.foods ?? [], read);
  const all = [
    ...assumed,
    ...times.problems,
    ...cards.problems,
    ...kitchen.problems,
    ...prices.problems,
    ...foods.problems,
  ];
  const placeOf = (path: string): Place => {
    const [head, ...rest] = stepsOf(path);
    if (head === "kitchen" && kitchen.file !== null && rest.length > 0) return kitchen.file.placeOf(rest);
    if (head === "packs") return prices.places[Number(rest[0])] ?? file.placeOf(["prices"]);
    return file.placeOf(stepsOf(path));
  };
  const ready = kitchen.kitchen !== null && !all.some((p) => p.severity === "stop");
  return {
    sitting: ready
      ? sittingOf(own.name, value, {
          ...times,
          region,
          currency,
          kitchen: kitchen.kitchen,
          packs: prices.packs,
          foods: foods.foods,
        })
      : null,
    cards: cards.cards,
    problems: all,
    placeOf,
  };
};

/** Steps of a path; numbers are places in lists. */
const stepsOf = (path: string): Path =>
  path.split("/").map((step) => (/^\d+$/.test(step) ? Number(step) : (keyOfModel.get(step) ?? step)));

/** Keys that are written otherwise in the files than in the model. */
const keyOfModel: ReadonlyMap<string, string> = new Map([
  ["foodCostTarget", "food cost target"],
  ["taxRate", "tax"],
  ["fridgeLitres", "fridge litres"],
  ["freezerLitres", "freezer litres"],
  ["burnerKilowatts", "burners"],
  ["ovenMinutesPer10C", "oven minutes per 10 °C"],
  ["ovenTolerance", "oven tolerance"],
]);

const missing = (
  file: YamlFile,
  path: Path,
  name: string,
  use: "kitchen" | "prices" | "foods" | "card" | "cards",
): Problem => makeProblem("file-missing", file.placeOf(path), { name, use });

type Parts = {
  readonly courses: readonly Course[];
  readonly crew: readonly Cook[];
  readonly region: Sitting["region"];
  readonly currency: string;
  readonly kitchen: Kitchen;
  readonly packs: readonly Pack[];
  readonly foods: readonly Food[];
};

const sittingOf = (source: string, value: SittingValue, parts: Parts): Sitting => ({
  source,
  title: value.title,
  date: value.date,
  place: value.place ?? "",
  region: parts.region,
  currency: parts.currency,
  covers: count(value.covers),
  guests: (value.guests ?? []).map((guest) => ({ name: guest.name, needs: guest.needs ?? [] })),
  courses: parts.courses,
  crew: parts.crew,
  kitchen: parts.kitchen,
  packs: parts.packs,
  foods: parts.foods,
  spare: share(value.spare ?? 0),
  spareTime: minutes(value["spare time"] ?? usualSpareTime),
  foodCostTarget: share(value["food cost target"] ?? 0.3),
  taxRate: share(value.tax ?? 0),
});

/** Courses and crew, their times as moments of the sitting; and names that stand twice. */
const timesOf = (
  file: YamlFile,
  value: SittingValue,
): {
  readonly courses: readonly Course[];
  readonly crew: readonly Cook[];
  readonly problems: readonly Problem[];
} => {
  const problems: Problem[] = [];
  const bad = (path: Path, key: string, found: string, wanted: Wanted): void => {
    problems.push(makeProblem("value-bad", file.placeOf(path), { key, found, wanted }));
  };
  const courses = value.courses.flatMap((course, i) => {
    const at = momentFromText(course.at, value.date);
    if (at === null) bad(["courses", i, "at"], "at", course.at, "course-time");
    return at === null ? [] : [{ name: course.name, at, dishes: course.dishes }];
  });
  const crew = (value.crew ?? []).map((cook, i) => ({
    name: cook.name,
    shifts: cook.shifts.flatMap((text, j) => {
      const shift = shiftFromText(text, value.date);
      if (shift === null) bad(["crew", i, "shifts", j], "shifts", text, "shift");
      return shift === null ? [] : [shift];
    }),
  }));
  for (const [key, list] of [
    ["courses", value.courses],
    ["guests", value.guests ?? []],
    ["crew", value.crew ?? []],
  ] as const)
    list.forEach(({ name }, i) => {
      if (list.findIndex((other) => other.name === name) < i)
        problems.push(makeProblem("name-twice", file.placeOf([key, i, "name"]), { name }));
    });
  return { courses, crew, problems };
};

/** Reads the cards of a folder, or those of a list of files. A card goes by its file's name without the ending. */
const cardsOf = (
  file: YamlFile,
  cards: string | readonly string[],
  read: SittingFiles["read"],
  list: SittingFiles["list"],
): { readonly cards: readonly CardFile[]; readonly problems: readonly Problem[] } => {
  const problems: Problem[] = [];
  const found: CardFile[] = [];
  const names =
    typeof cards === "string"
      ? list(cards)
          ?.filter(isCardFile)
          .toSorted()
          .map((name) => `${cards.replace(/\/$/, "")}/${name}`)
      : cards;
  if (names === undefined) return { cards: [], problems: [missing(file, ["cards"], String(cards), "cards")] };
  names.forEach((name, i) => {
    const at: Path = typeof cards === "string" ? ["cards"] : ["cards", i];
    const text = read(name);
    const source = cardNameOf(name);
    if (text === null) problems.push(missing(file, at, name, "card"));
    else if (found.some((card) => card.source === source))
      problems.push(makeProblem("name-twice", file.placeOf(at), { name: source }));
    else found.push({ source, text, file: name });
  });
  return { cards: found, problems };
};

/** Foods of one list are known to the lists after it only by being read with them: a name may stand in one list alone. */
const foodsOf = (
  file: YamlFile,
  names: string | readonly string[],
  read: SittingFiles["read"],
): ReadFoods => {
  const lists = (typeof names === "string" ? [names] : names).map((name, i): ReadFoods => {
    const text = read(name);
    if (text !== null) return readFoods(name, text);
    const at: Path = typeof names === "string" ? ["foods"] : ["foods", i];
    return { foods: [], problems: [missing(file, at, name, "foods")] };
  });
  const foods = lists.flatMap((list) => list.foods);
  const at: Path = typeof names === "string" ? ["foods"] : ["foods", 1];
  const twice = foods.filter((food, i) => foods.findIndex((other) => other.id === food.id) < i);
  return {
    foods,
    problems: [
      ...lists.flatMap((list) => list.problems),
      ...twice.map((food) => makeProblem("name-twice", file.placeOf(at), { name: food.name })),
    ],
  };
};

const pricesOf = (
  file: YamlFile,
  names: string | readonly string[],
  currency: string,
  read: SittingFiles["read"],
): {
  readonly packs: readonly Pack[];
  readonly places: readonly Place[];
  readonly problems: readonly Problem[];
} => {
  const lists = (typeof names === "string" ? [names] : names).map((name, i) => {
    const text = read(name);
    if (text !== null) return readPrices(name, text, currency);
    const at: Path = typeof names === "string" ? ["prices"] : ["prices", i];
    return { packs: [], places: [], problems: [missing(file, at, name, "prices")] };
  });
  return {
    packs: lists.flatMap((list) => list.packs),
    places: lists.flatMap((list) => list.places),
    problems: lists.flatMap((list) => list.problems),
  };
};

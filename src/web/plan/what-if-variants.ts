import { parseDocument } from "yaml";
import type { Variant } from "#wire/variants.ts";
import { countText } from "#words/number-text.ts";
import { durationText } from "#words/quantity-text.ts";

/** What is asked of an evening that would go otherwise; 0 for what stays as it is. */
export type WhatIf = {
  readonly covers: number;
  /** The cook whose hours another one would work; null for no other. */
  readonly cookLike: string | null;
  /** The oven that another one would be like; null for no other. */
  readonly ovenLike: string | null;
  readonly burners: number;
  /** Place in the sitting's list, and minutes that it would be later (or earlier, below 0). */
  readonly course: number;
  readonly later: number;
};

type Keys = Readonly<Record<string, unknown>>;

const keysOf = (text: string): Keys => {
  const file = parseDocument(text);
  const value: unknown = file.errors.length > 0 ? null : file.toJS();
  return typeof value === "object" && value !== null && !Array.isArray(value) ? (value as Keys) : {};
};

const mapsIn = (keys: Keys, key: string): readonly Keys[] => {
  const list = keys[key];
  return Array.isArray(list)
    ? list.filter((item): item is Keys => typeof item === "object" && item !== null)
    : [];
};

/** A name that none of the list has. */
const newName = (wanted: string, list: readonly Keys[]): string => {
  const taken = new Set(list.map((item) => item["name"]));
  let name = wanted;
  for (let k = 2; taken.has(name); k += 1) name = `${wanted} ${k}`;
  return name;
};

/** The hour of a course moved within its day; null when it is none, or would leave the day. */
const moved = (at: unknown, by: number): string | null => {
  const found = /^(.*?)(\d{1,2}):(\d{2})$/.exec(String(at).trim());
  if (found === null) return null;
  const minute = Number(found[2]) * 60 + Number(found[3]) + by;
  if (minute < 0 || minute >= 1440) return null;
  const two = (n: number): string => String(n).padStart(2, "0");
  return `${found[1]}${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
};

/**
 * Each change by itself, and where there are several, all of them together; from the sitting's own
 * words and those of the kitchen file that it names. What cannot be made of them is left out.
 */
export const variantsOf = (
  wish: WhatIf,
  sittingText: string,
  read: (name: string) => string,
): readonly Variant[] => {
  const sitting = keysOf(sittingText);
  const kitchen = keysOf(read(String(sitting["kitchen"])));
  const singles: Variant[] = [];
  if (wish.covers !== 0 && "covers" in sitting && wish.covers !== sitting["covers"])
    singles.push({ name: countText(wish.covers, "cover", "covers"), changes: { covers: wish.covers } });
  const crew = mapsIn(sitting, "crew");
  const cook = crew.find((one) => one["name"] === wish.cookLike);
  if (cook !== undefined)
    singles.push({
      name: `another cook, in ${wish.cookLike}'s hours`,
      changes: { crew: [...crew, { ...cook, name: newName("Another cook", crew) }] },
    });
  const ovens = mapsIn(kitchen, "ovens");
  const oven = ovens.find((one) => one["name"] === wish.ovenLike);
  if (oven !== undefined)
    singles.push({
      name: `another oven like the ${wish.ovenLike}`,
      changes: { kitchen: { ovens: [...ovens, { ...oven, name: newName("another oven", ovens) }] } },
    });
  const burners = kitchen["burners"];
  if (wish.burners > 0 && typeof burners === "object" && burners !== null)
    singles.push({
      name: countText(wish.burners, "more burner", "more burners"),
      changes: {
        kitchen: {
          burners: { ...burners, count: Number((burners as Keys)["count"]) + wish.burners },
        },
      },
    });
  const courses = mapsIn(sitting, "courses");
  const course = courses[wish.course];
  const at = course === undefined || wish.later === 0 ? null : moved(course["at"], wish.later);
  if (course !== undefined && at !== null)
    singles.push({
      name: `${String(course["name"])} ${durationText(Math.abs(wish.later))} ${wish.later > 0 ? "later" : "sooner"}`,
      changes: { courses: courses.map((one) => (one === course ? { ...one, at } : one)) },
    });
  if (singles.length < 2) return singles;
  const kitchens = singles.map(({ changes }) => changes["kitchen"]).filter((keys) => keys !== undefined);
  return [
    ...singles,
    {
      name: "all of these",
      changes: {
        ...Object.assign({}, ...singles.map(({ changes }) => changes)),
        ...(kitchens.length === 0 ? {} : { kitchen: Object.assign({}, ...kitchens) }),
      },
    },
  ];
};

import { z } from "zod";
import { type Region, regions } from "#engine/index.ts";
import { civilDate } from "#words/clock.ts";
import { currencyCodes } from "./currency-codes.ts";
import {
  fileName,
  fromOne,
  listOf,
  nameText,
  shareOfOne,
  strictMap,
  text,
  wholeNumber,
} from "./schema-parts.ts";

/** The currency of a region, taken when a sitting names none. ISO 4217. */
export const usualCurrency: { readonly [R in Region]: string } = {
  uk: "GBP",
  us: "USD",
  eu: "EUR",
  au: "AUD",
};

/** Hot food may be ready so many minutes sooner than it must, when a sitting does not say. Common practice, no source. */
export const usualSpareTime = 10;

/** The keys of a sitting file. */
export const sittingSchema = strictMap({
  title: text,
  date: z.string({ error: () => "date" }).refine((iso) => civilDate(iso) !== null, { error: () => "date" }),
  place: text.optional(),
  region: z.enum(regions, { error: () => "region" }).optional(),
  currency: z
    .string({ error: () => "currency" })
    .refine((code) => currencyCodes.has(code), { error: () => "currency" })
    .optional(),
  covers: fromOne,
  spare: shareOfOne.optional(),
  "spare time": wholeNumber.optional(),
  "food cost target": shareOfOne.refine((s) => s > 0, { error: () => "share" }).optional(),
  tax: shareOfOne.optional(),
  kitchen: fileName,
  prices: z.union([fileName, listOf(fileName)], { error: () => "file-name" }).optional(),
  foods: z.union([fileName, listOf(fileName)], { error: () => "file-name" }).optional(),
  cards: z.union([fileName, listOf(fileName)], { error: () => "cards" }).optional(),
  courses: listOf(
    strictMap({
      name: nameText,
      at: z.string({ error: () => "course-time" }),
      dishes: listOf(nameText),
    }),
  ).min(1, { error: () => "list" }),
  guests: listOf(strictMap({ name: nameText, needs: listOf(text).optional() })).optional(),
  crew: listOf(strictMap({ name: nameText, shifts: listOf(z.string({ error: () => "shift" })) })).optional(),
});

/** A sitting file whose keys and values were checked. */
export type SittingValue = z.output<typeof sittingSchema>;

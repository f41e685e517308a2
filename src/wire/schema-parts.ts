import { z } from "zod";
import type { Wanted } from "./problem.ts";
import { shareFromValue } from "./read-times.ts";

/** The message of a failed check is the word for what was wanted. */
const because = (wanted: Wanted) => ({ error: () => wanted });

/** A line of text that is not empty. */
export const text = z.string(because("text")).trim().min(1, because("text"));

/** A name that may have been written as a number, such as a table's. */
export const nameText = z.union([z.string(), z.number()], because("text")).transform(String).pipe(text);

/** The way to a file, from the sitting's own folder. */
export const fileName = z.string(because("file-name")).trim().min(1, because("file-name"));

/** A whole number from 0. */
export const wholeNumber = z
  .number(because("whole-number"))
  .int(because("whole-number"))
  .min(0, because("whole-number"));

/** A whole number, below 0 too. */
export const integer = z.number(because("integer")).int(because("integer"));

/** A whole number from 1; a hundred thousand covers is more than any kitchen. */
export const fromOne = z
  .number(because("number-from-one"))
  .int(because("number-from-one"))
  .min(1, because("number-from-one"))
  .max(100_000, because("number-from-one"));

/** A number above 0. */
export const positive = z
  .number(because("number"))
  .positive(because("number"))
  .max(1_000_000, because("number"));

/** A number from 0. */
export const fromZero = z
  .number(because("number"))
  .min(0, because("number"))
  .max(1_000_000, because("number"));

/** `true` or `false`. */
export const yesOrNo = z.boolean(because("yes-or-no"));

/** A share of one, from "5 %" or 0.05. */
export const shareOfOne = z.union([z.string(), z.number()], because("share")).transform((value, context) => {
  const share = shareFromValue(value);
  if (share === null) context.addIssue({ code: "custom", message: "share" });
  return share ?? 0;
});

/** A list of one kind. */
export const listOf = <S extends z.ZodType>(item: S) => z.array(item, because("list"));

/** A map whose keys are all known. */
export const strictMap = <S extends z.ZodRawShape>(shape: S) => z.strictObject(shape, because("map"));

/** A map of which only some keys are looked at. */
export const looseMap = <S extends z.ZodRawShape>(shape: S) => z.looseObject(shape, because("map"));

/** One of a few words. */
export const oneOf = <const W extends readonly [string, ...string[]]>(words: W, wanted: Wanted) =>
  z.enum(words, because(wanted));

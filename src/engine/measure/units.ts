/**
 * Base units of the house. Each is a number that remembers what it counts, so that grams cannot be added to minutes.
 * Values are plain numbers at run time and in JSON.
 */
declare const unit: unique symbol;

/** Mass in grams. */
export type Grams = number & { readonly [unit]: "g" };
/** Volume in millilitres. */
export type Millilitres = number & { readonly [unit]: "ml" };
/** A length of time in minutes. */
export type Minutes = number & { readonly [unit]: "min" };
/** A moment: minutes from midnight at the start of the sitting's date, local time. The day before is negative. */
export type Moment = number & { readonly [unit]: "moment" };
/** Temperature in degrees Celsius. */
export type Celsius = number & { readonly [unit]: "°C" };
/** Money in minor units (pence, cents) of the sitting's currency. Always an integer. */
export type Minor = number & { readonly [unit]: "minor" };
/** A count of pieces, portions or packs. */
export type Count = number & { readonly [unit]: "count" };
/** A part of one, 0 to 1. */
export type Share = number & { readonly [unit]: "share" };

/** So many grams. */
export const grams = (n: number): Grams => n as Grams;
/** So many millilitres. */
export const millilitres = (n: number): Millilitres => n as Millilitres;
/** So many minutes. */
export const minutes = (n: number): Minutes => n as Minutes;
/** So many minutes from midnight at the start of the sitting's date. */
export const moment = (n: number): Moment => n as Moment;
/** So many degrees Celsius. */
export const celsius = (n: number): Celsius => n as Celsius;
/** So many pence or cents; the caller gives a whole number. */
export const minor = (n: number): Minor => n as Minor;
/** So many pieces, portions or packs. */
export const count = (n: number): Count => n as Count;
/** So much of one, 0 to 1. */
export const share = (n: number): Share => n as Share;

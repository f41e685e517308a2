import { type Moment, moment, type Shift } from "#engine/index.ts";
import { civilDate, dayNumber } from "#words/clock.ts";

/** Minutes of a time of day, "9:05" or "19:00"; "24:00" ends a day. Null when it is none. */
const minuteOfDay = (text: string): number | null => {
  const found = /^(\d{1,2}):(\d{2})$/.exec(text);
  if (found === null) return null;
  const hours = Number(found[1]);
  const rest = Number(found[2]);
  return rest < 60 && (hours < 24 || (hours === 24 && rest === 0)) ? hours * 60 + rest : null;
};

/** Days from the sitting's date to another; null when either is no date. */
const daysFrom = (sittingDate: string, date: string): number | null => {
  const from = civilDate(sittingDate);
  const to = civilDate(date);
  return from === null || to === null ? null : dayNumber(to) - dayNumber(from);
};

/** A course's time: "19:00" on the sitting's date, or "2026-10-17 19:00" (a T may stand for the space). */
export const momentFromText = (text: string, sittingDate: string): Moment | null => {
  const found = /^(?:(\d{4}-\d{2}-\d{2})[ T]+)?(\d{1,2}:\d{2})$/.exec(text.trim());
  if (found === null) return null;
  const days = daysFrom(sittingDate, found[1] ?? sittingDate);
  const minute = minuteOfDay(found[2] ?? "");
  return days === null || minute === null ? null : moment(days * 1440 + minute);
};

/**
 * A shift: "2026-10-16 14:00-18:00", or "14:00-18:00" on the sitting's date.
 * One that ends at or before its start runs past midnight.
 */
export const shiftFromText = (text: string, sittingDate: string): Shift | null => {
  const found = /^(?:(\d{4}-\d{2}-\d{2})[ T]+)?(\d{1,2}:\d{2})\s*[-–]\s*(\d{1,2}:\d{2})$/.exec(text.trim());
  if (found === null) return null;
  const days = daysFrom(sittingDate, found[1] ?? sittingDate);
  const from = minuteOfDay(found[2] ?? "");
  const to = minuteOfDay(found[3] ?? "");
  if (days === null || from === null || to === null) return null;
  const start = days * 1440 + from;
  return { from: moment(start), to: moment(days * 1440 + (to <= from ? to + 1440 : to)) };
};

/** A share of one: "5 %", "5%" or 0.05. Null when it is none or lies outside 0 to 1. */
export const shareFromValue = (value: string | number): number | null => {
  const text = String(value).trim();
  const found = /^(\d+(?:\.\d+)?)\s*(%)?$/.exec(text);
  if (found === null) return null;
  const number = found[2] === "%" ? Number(found[1]) / 100 : Number(found[1]);
  return number <= 1 ? number : null;
};

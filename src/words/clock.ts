/** Names of days, Sunday first. */
const dayNames = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;
const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** A day of the Gregorian calendar. */
type CivilDate = { readonly year: number; readonly month: number; readonly day: number };

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const monthLength = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

/** Reads an ISO 8601 calendar date, YYYY-MM-DD; null when there is no such day. */
export const civilDate = (iso: string): CivilDate | null => {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso);
  if (found === null) return null;
  const year = Number(found[1]);
  const month = Number(found[2]);
  const day = Number(found[3]);
  if (month < 1 || month > 12 || day < 1 || day > monthLength(year, month)) return null;
  return { year, month, day };
};

/**
 * Days from 1970-01-01 to the date, negative before it.
 * Years begin in March here, so that the leap day is the last of the year and months follow one formula.
 */
export const dayNumber = ({ year, month, day }: CivilDate): number => {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146097 + dayOfEra - 719468;
};

/** The date so many days after 1970-01-01; the inverse of `dayNumber`. */
export const dateOfDay = (days: number): CivilDate => {
  const z = days + 719468;
  const era = Math.floor(z / 146097);
  const dayOfEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36524) - Math.floor(dayOfEra / 146096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted < 10 ? shifted + 3 : shifted - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  };
};

const two = (n: number): string => String(n).padStart(2, "0");

/** The date as ISO 8601. */
export const isoText = ({ year, month, day }: CivilDate): string =>
  `${String(year).padStart(4, "0")}-${two(month)}-${two(day)}`;

/** The date at a moment of a sitting; null when the sitting's date is none. */
const dateAt = (sittingDate: string, moment: number): CivilDate | null => {
  const start = civilDate(sittingDate);
  return start === null ? null : dateOfDay(dayNumber(start) + Math.floor(moment / 1440));
};

/** Time of day on the 24-hour clock, "19:05"; the day is not shown. */
export const clockText = (moment: number): string => {
  const minute = ((Math.round(moment) % 1440) + 1440) % 1440;
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
};

/** The day at a moment: "Friday 16 October". Without a date it is told by its distance: "the day before". */
export const dayText = (sittingDate: string, moment: number): string => {
  const date = dateAt(sittingDate, Math.round(moment));
  if (date === null) return relativeDayText(moment);
  const weekday = dayNames[(((dayNumber(date) + 4) % 7) + 7) % 7] ?? "";
  return `${weekday} ${date.day} ${monthNames[date.month - 1] ?? ""}`;
};

/** The day at a moment in short: "Fri 16 Oct". */
const shortDayText = (sittingDate: string, moment: number): string => {
  const date = dateAt(sittingDate, Math.round(moment));
  if (date === null) return relativeDayText(moment);
  const weekday = dayNames[(((dayNumber(date) + 4) % 7) + 7) % 7] ?? "";
  return `${weekday.slice(0, 3)} ${date.day} ${(monthNames[date.month - 1] ?? "").slice(0, 3)}`;
};

/** Day and time: "Fri 16 Oct 14:05". */
export const momentText = (sittingDate: string, moment: number): string =>
  `${shortDayText(sittingDate, moment)} ${clockText(moment)}`;

/** The end of a stretch of time: the time alone on the day it began, with the day on another ("Sat 12:55"). */
export const endText = (sittingDate: string, from: number, to: number): string => {
  if (to <= from || Math.floor(Math.round(from) / 1440) === Math.floor((Math.round(to) - 1) / 1440))
    return clockText(to);
  const day = shortDayText(sittingDate, to);
  return `${to - from < 6 * 1440 && civilDate(sittingDate) !== null ? day.slice(0, 3) : day} ${clockText(to)}`;
};

/** How far the day of a moment is from the sitting: "on the day", "the day before", "3 days before". */
export const relativeDayText = (moment: number): string => {
  const days = Math.floor(Math.round(moment) / 1440);
  if (days === 0) return "on the day";
  if (days === -1) return "the day before";
  if (days === 1) return "the day after";
  return days < 0 ? `${-days} days before` : `${days} days after`;
};

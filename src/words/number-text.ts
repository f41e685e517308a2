/**
 * A number with at most so many decimals, half away from zero, without trailing zeros and without thousands marks.
 * A value that is no number is shown as a dash.
 */
export const numberText = (value: number, decimals = 0): string => {
  if (!Number.isFinite(value)) return "–";
  const scaled = Math.round(Math.abs(value) * 10 ** decimals + 1e-9) / 10 ** decimals;
  const text = scaled.toFixed(decimals);
  const trimmed = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return value < 0 && trimmed !== "0" ? `-${trimmed}` : trimmed;
};

/** A share as a percentage: 0.285 → "28.5 %". */
export const percentText = (share: number, decimals = 1): string => `${numberText(share * 100, decimals)} %`;

/** "1 dish", "3 dishes". */
export const countText = (n: number, one: string, many: string): string =>
  `${numberText(n, 2)} ${n === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export const listText = (items: readonly string[], joiner = "and"): string => {
  const last = items.at(-1);
  if (last === undefined) return "";
  if (items.length === 1) return last;
  return `${items.slice(0, -1).join(", ")} ${joiner} ${last}`;
};

/** The first letter as a capital. */
export const capital = (text: string): string => {
  const first = text.slice(0, 1);
  return first.toUpperCase() + text.slice(1);
};

/** The words of the cook, in quotation marks; long ones are cut, codes that no one can see become dots. */
export const quoted = (words: string, most = 60): string => {
  const flat = words
    .replace(/\s+/g, " ")
    .replace(/\p{Cc}/gu, "·")
    .trim();
  return `"${flat.length > most ? `${flat.slice(0, most - 1)}…` : flat}"`;
};

/** The fraction signs of Unicode and what they are worth. */
const signs: ReadonlyMap<string, number> = new Map([
  ["½", 1 / 2],
  ["⅓", 1 / 3],
  ["⅔", 2 / 3],
  ["¼", 1 / 4],
  ["¾", 3 / 4],
  ["⅕", 1 / 5],
  ["⅖", 2 / 5],
  ["⅗", 3 / 5],
  ["⅘", 4 / 5],
  ["⅙", 1 / 6],
  ["⅚", 5 / 6],
  ["⅐", 1 / 7],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
  ["⅑", 1 / 9],
  ["⅒", 1 / 10],
]);

/** What one fraction sign is worth ("½" → 0.5); null for any other character. */
export const fractionSign = (character: string): number | null => signs.get(character) ?? null;

const nearest: readonly (readonly [number, string])[] = [
  [1 / 8, "⅛"],
  [1 / 4, "¼"],
  [1 / 3, "⅓"],
  [3 / 8, "⅜"],
  [1 / 2, "½"],
  [5 / 8, "⅝"],
  [2 / 3, "⅔"],
  [3 / 4, "¾"],
  [7 / 8, "⅞"],
];

/** A number as cooks write parts of a cup or spoon, when it is within 2 hundredths of one ("1½"); null when it is not. */
export const fractionText = (value: number): string | null => {
  if (!(value >= 0) || value > 1000) return null;
  const whole = Math.floor(value + 0.02);
  const rest = value - whole;
  if (Math.abs(rest) <= 0.02) return String(whole);
  const found = nearest.find(([part]) => Math.abs(part - rest) <= 0.02);
  return found === undefined ? null : `${whole === 0 ? "" : whole}${found[1]}`;
};

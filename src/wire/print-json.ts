/** To the thousandth: what --json prints of grams, minutes and shares. Adding fractions leaves dust behind that no cook wrote. */
export const roundForPrint = (value: number): number => {
  const thousandths = Math.round(value * 1000);
  // A number too large to be multiplied has no dust; minus nothing is nothing.
  return Number.isFinite(thousandths) ? thousandths / 1000 || 0 : value;
};

/** A value as the command line prints it: JSON with an indent of two, its numbers rounded for print, and a line break. */
export const printJson = (value: unknown): string =>
  `${JSON.stringify(value, (_, inner: unknown) => (typeof inner === "number" ? roundForPrint(inner) : inner), 2)}\n`;

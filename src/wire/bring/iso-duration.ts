const form =
  /^P(?:(\d+(?:[.,]\d+)?)Y)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)W)?(?:(\d+(?:[.,]\d+)?)D)?(?:T(?:(\d+(?:[.,]\d+)?)H)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)S)?)?$/i;

/** Minutes of each part of a duration, in the order of the form; years and months are no lengths of a kitchen. */
const minutesOf = [null, null, 10_080, 1440, 60, 1, 1 / 60] as const;

/** An ISO 8601 duration in minutes: "PT1H30M" → 90, "P1DT2H" → 1560. Null when it is none, or is of years or months. */
export const minutesOfDuration = (text: string): number | null => {
  const found = form.exec(text.trim());
  if (found === null) return null;
  let minutes = 0;
  let any = false;
  for (const [k, unit] of minutesOf.entries()) {
    const part = found[k + 1];
    if (part === undefined) continue;
    if (unit === null) {
      // "P0Y0M0DT0H35M" is how some programs write 35 minutes.
      if (Number(part.replace(",", ".")) !== 0) return null;
    } else {
      any = true;
      minutes += Number(part.replace(",", ".")) * unit;
    }
  }
  return any ? minutes : null;
};

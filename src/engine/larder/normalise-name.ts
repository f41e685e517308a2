/** A name as the tables are searched by: lower case, no accents, plain apostrophes, single spaces, hyphens as spaces. */
export const normaliseName = (words: string): string =>
  words
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/[\u2010-\u2015-]/g, " ")
    .replace(/\s+/g, " ")
    .trim();

const plainWords = /^[a-z0-9']+(?: [a-z0-9']+)*$/;

/** A name as the tables are searched by: lower case, no accents, plain apostrophes, single spaces, hyphens as spaces. */
export const normaliseName = (words: string): string =>
  // Most words are plain already, and this is asked for each of them many times.
  plainWords.test(words)
    ? words
    : words
        .normalize("NFKD")
        .replace(/[\u0300-\u036f]/g, "")
        .toLowerCase()
        .replace(/[\u2018\u2019\u02bc]/g, "'")
        .replace(/[\u2010-\u2015-]/g, " ")
        .replace(/\s+/g, " ")
        .trim();

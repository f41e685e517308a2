import { cardNameOf } from "#wire/card-file.ts";
import { spaced } from "#words/version-text.ts";

/** The title of a card for lists: its first line with words, else its name. */
export const cardTitleOf = (text: string, path: string): string =>
  /\S.*/
    .exec(text)?.[0]
    .replace(/^#+\s*/, "")
    .trim()
    .slice(0, 80) || spaced(cardNameOf(path));

/** A file name for a new card, that no other path has. */
export const newCardPath = (folder: string, title: string, taken: ReadonlySet<string>): string => {
  const base =
    title
      .normalize("NFKD")
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "-")
      .replace(/^-+|-+$/g, "") || "new-card";
  const named = (n: number): string => `${folder}${base}${n === 1 ? "" : `-${n}`}.txt`;
  let n = 1;
  while (taken.has(named(n))) n += 1;
  return named(n);
};

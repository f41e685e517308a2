/** A name of a table as words: "no-nuts" → "no nuts". */
export const spaced = (id: string): string => id.replaceAll("-", " ");

/** What a guest may not have: "no nuts, vegan". */
export const needsText = (needs: readonly string[]): string => needs.map(spaced).join(", ");

/** The needs that a version of a dish is for; empty for the dish as written. */
export const versionText = (version: string): string =>
  version === "as-written" || version === "" ? "" : needsText(version.split("+"));

/** The title of a dish with its version, when it is not the one as written. */
export const versionTitle = (title: string, version: string): string => {
  const needs = versionText(version);
  return needs === "" ? title : `${title} [${needs}]`;
};

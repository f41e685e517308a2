/** A card of ingredient lines and steps, as a cook would type it, with further blocks behind. */
export const cardText = (lines: readonly string[], steps: readonly string[], more = ""): string =>
  [
    "A dish for the test",
    "",
    "Serves 4",
    "",
    ...lines,
    "",
    "Method",
    "",
    ...steps.map((s, k) => `${k + 1}. ${s}`),
    "",
    more,
  ].join("\n");

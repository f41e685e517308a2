import type { Plan } from "#engine/index.ts";
import { afterText, type ClashNames, changeText, clashText, demandTexts } from "#words/clash-text.ts";
import type { Paint } from "./paint.ts";
import { wrap } from "./table.ts";

/** Why something has no place or a course is late, and what was tried and helps; nothing when all is well. */
export const clashesText = (
  { clashes = [], waysOut = [] }: Plan,
  names: ClashNames,
  paint: Paint,
): string => {
  if (clashes.length === 0 && waysOut.length === 0) return "";
  const why = clashes
    .map(
      (clash) =>
        wrap(clashText(clash, names), "  ") +
        demandTexts(clash, names)
          .map((text) => wrap(text, "    - ", "      "))
          .join(""),
    )
    .join("");
  const ways = waysOut
    .map((way) => wrap(`${changeText(way.change, names)}: ${afterText(way, names)}`, "    - ", "      "))
    .join("");
  const help =
    ways === ""
      ? "  No single change that was tried helps.\n"
      : `  Each of these was tried by itself, and helps:\n${ways}`;
  return `\n${paint.bold("What stands in the way")}\n${why}${help}`;
};

import type { CardWriteUp, Region } from "#engine/index.ts";
import { htmlFromWriteUp } from "./html-from-write-up.ts";
import { recipeJsonLd } from "./recipe-json-ld.ts";

/** A card as schema.org Recipe: JSON-LD with an indent of two. */
export const jsonLdOfCard = ({ writeUp, declaration }: CardWriteUp, region: Region): string =>
  JSON.stringify(recipeJsonLd(writeUp, { region, declaration }), null, 2);

/** A card as one HTML page with its nutrition, where that is known, and its JSON-LD. */
export const pageOfCard = (card: CardWriteUp, region: Region): string => {
  const { writeUp, declaration } = card;
  return htmlFromWriteUp(writeUp, {
    region,
    jsonLd: jsonLdOfCard(card, region),
    language: region === "us" ? "en-US" : "en-GB",
    ...(declaration === null
      ? {}
      : { nutrition: { perPortion: declaration.perPortion, per100g: declaration.per100g } }),
  });
};

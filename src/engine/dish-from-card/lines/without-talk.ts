import type { Token } from "../../measure/tokens.ts";
import type { Region } from "../../model/sitting.ts";
import { readAmounts } from "./read-amounts.ts";

const talk = new Set(
  "so and then now okay ok well also you'll you need want will i'll i've i use used take took have got get we we'll just add put in then".split(
    " ",
  ),
);
const mostTalk = 6;

/** "and then you want about two kilos of potatoes": the words before an amount that only lead up to it are left out. */
export const withoutTalk = (tokens: readonly Token[], region: Region): readonly Token[] => {
  for (let at = 0; at < mostTalk && talk.has((tokens[at]?.lower ?? "").replace("\u2019", "'")); at += 1)
    if (readAmounts(tokens, at + 1, region) !== null) return tokens.slice(at + 1);
  return tokens;
};

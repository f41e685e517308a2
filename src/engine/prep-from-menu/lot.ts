import type { CardTins } from "../heat/card-tins.ts";
import type { Content } from "../heat/composition.ts";
import type { TinsTaken } from "../heat/tins-taken.ts";
import type { BigPieces } from "../larder/big-pieces.ts";

/** How much of one action there is. */
export type Lot = {
  /** Times the card's own size. */
  readonly factor: number;
  readonly portions: number;
  readonly kilos: number;
  /** Kilos to be heated from cold; what is hot already counts for a part. */
  readonly coldKilos: number;
  /** It comes out of a pot, with its liquor. */
  readonly wet: boolean;
  /** Batches that the menu asks for; null when it asks for none. */
  readonly batches: number | null;
  /** The foods in the vessel, all versions together. */
  readonly contents: readonly Content[];
  /** Kilos of water that the words ask for and no line lists. */
  readonly water: number;
  /** Meat in the piece among the contents, as the card has it; null when there is none. */
  readonly pieces: BigPieces | null;
  /** Minutes that the same food is in the oven in all, one setting after the other, by the words; 0 where they give none. */
  readonly ovenInAll: number;
  /** The tins it is baked in at the card's size; null when it is not, or they have no size. */
  readonly tins: CardTins | null;
  /** Those that it is baked in here, for all of it; null where `tins` is. */
  readonly taken: TinsTaken | null;
};

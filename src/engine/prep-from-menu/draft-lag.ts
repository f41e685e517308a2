import type { Lag } from "../model/prep.ts";

/** A lag whose most is a habit and not the card's word: it may be let out when the method itself takes longer. */
export type DraftLag = Lag & { readonly soft: boolean };

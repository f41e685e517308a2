import { makeDeskKeeper } from "./desk-keeper.ts";

/** The one desk of this tab. */
export const desk = makeDeskKeeper();

import { keptByText } from "../measure/kept-by-text.ts";
import { hasOwnFoods } from "./foods.ts";

/** Texts kept at once; typing changes one line of a card at a time, and all others are known. */
const most = 1000;

/**
 * The same function, which keeps what it gave for the texts it was handed last. Only for functions of their text and the
 * food table alone; what is read beside a cook's own foods is never kept.
 */
export const remembered = <V>(work: (text: string) => V): ((text: string) => V) => {
  const kept = keptByText(work, most);
  return (text) => (hasOwnFoods() ? work(text) : kept(text));
};

/** A word without its plural ending, the same for both sides of a comparison; not always a real singular. */
export const stem = (word: string): string => {
  if (word.length < 4 || !word.endsWith("s") || word.endsWith("ss") || word.endsWith("us")) return word;
  if (word.endsWith("ies")) return `${word.slice(0, -3)}y`;
  if (word.endsWith("ves"))
    return word === "olives" || word === "chives" || word === "endives"
      ? word.slice(0, -1)
      : `${word.slice(0, -3)}f`;
  if (/(oes|ches|shes|xes|sses)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
};

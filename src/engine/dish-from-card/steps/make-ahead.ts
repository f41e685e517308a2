import type { Token } from "./tokens.ts";

const made =
  "(?:made|prepared|done|assembled|cooked|frozen|chilled|kept|left|stop|pause|make|prepare|do|freeze|keeps?)";
const before = "(?:ahead|in advance|beforehand|the day before|the night before)";
const here = "(?:to|at|up to) (?:this|that) (?:point|stage)";
const patterns = [
  new RegExp(`\\b(?:can|may|could)\\b.*\\b${made}\\b.*\\b(?:${before}|${here})\\b`),
  new RegExp(`\\b${here}\\b.*\\b(?:can|may|could|will)\\b.*\\b${made}\\b`),
];

// "They'll keep two days in a tin", "the sauce freezes for a month".
const keeps =
  /^(?:and |but )?(?:it|they|this|these|(?:the|any) (?:\w+ ){1,3}?)(?:'ll)? ?(?:will |should |can )?(?:also )?(?:keeps?|lasts?|freezes?|stores?)\b.*\b(?:days?|weeks?|months?|hours?|overnight|well)\b/;

// "Can be kept a couple of days in a tin."
const canKeep =
  /^(?:(?:it|they|this|these) )?(?:can|may|will|could) (?:also )?be (?:kept|stored|frozen|refrigerated|made ahead)\b/;

// "Better the next day: three days in the fridge no trouble", "fine for two days in the fridge".
const fineLater =
  /^(?:it's |they're |it is |they are |even )*(?:better|best|fine|good|happy|ok)\b(?: (?:the|next|day|after|for|cold|chilled|if|up|to|even|once|cooked|made|ahead|about|an?|couple|of|another|:|,)){0,9}(?: \S+)?(?: (?:or|to) \S+)? (?:days?|weeks?|months?)\b.* (?:fridge|freezer)\b/;
const praise = new Set("better best fine good happy ok".split(" "));

// Most sentences hold none of these words, and no pattern is tried on them.
const keepingVerbs = new Set("keep keeps last lasts freeze freezes store stores".split(" "));
const mayBe = new Set("can may could will".split(" "));

/**
 * True for a sentence of the method that only says how far the dish can be made before the day ("can be made to this
 * point a day ahead"): it holds no work of its own.
 */
export const isMakeAhead = (all: readonly Token[]): boolean => {
  const start = all.findIndex((t) => t.kind !== "mark");
  // "Cook the sauce for 30 minutes (this can be done ahead)": what stands in brackets is no whole sentence.
  const open = all.findIndex((t, i) => i > start && t.text === "(");
  const tokens = start <= 0 && open < 0 ? all : all.slice(Math.max(0, start), open < 0 ? undefined : open);
  if (tokens.some((t) => keepingVerbs.has(t.text)) && keeps.test(tokens.map((t) => t.text).join(" ")))
    return true;
  if (
    tokens.slice(0, 4).some((t) => praise.has(t.text)) &&
    tokens.some((t) => /^(fridge|freezer)$/.test(t.text)) &&
    fineLater.test(tokens.map((t) => t.text).join(" "))
  )
    return true;
  if (!tokens.some((t) => mayBe.has(t.text))) return false;
  const words = tokens.map((t) => t.text).join(" ");
  if (canKeep.test(words)) return true;
  return patterns.some((p) => p.test(words));
};

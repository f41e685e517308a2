import type { Words } from "../../model/span.ts";

const verbs =
  "replace|swap|exchange|change|switch|trade|substitute|sub|use|try|leave|omit|skip|drop|add|bind|set|glaze|brush|fry|top|finish|make|thicken|do without|take out|take off|buy";
const cut = new RegExp(
  `\\s*[;,]\\s*(?:and\\s+|then\\s+|but\\s+)?(?=(?:${verbs})\\b)|\\s+(?:and|then|but)\\s+(?=(?:${verbs})\\b)`,
  "gi",
);

const piece = (words: Words, from: number, to: number): Words => {
  const text = words.text.slice(from, to);
  const lead = text.length - text.trimStart().length;
  const start = words.span.start + from + lead;
  return { text: text.trim(), span: { start, end: start + text.trim().length } };
};

/** The orders of a sentence about swaps, one a change: cut where a verb of change follows a joint. */
export const splitChanges = (words: Words): readonly Words[] => {
  const pieces: Words[] = [];
  let from = 0;
  for (const found of words.text.matchAll(cut)) {
    if (found.index > from) pieces.push(piece(words, from, found.index));
    from = found.index + found[0].length;
  }
  pieces.push(piece(words, from, words.text.length));
  return pieces.filter((p) => p.text !== "");
};

// "If someone can't eat pork, …", "For a crowd, …", "You can …": said around the change.
const around =
  /^(?:(?:if|when|for|to)\s[^,]{2,60},\s*)?(?:(?:you|we|i|they)(?:'d| would)?\s+(?:can|could|may|might|should|can also|could also)?\s*|(?:just|simply|please|also|instead|alternatively),?\s+)*/i;
// "Bind the pastry with …", "set the filling with …": how the new food is put in.
const how =
  /^(?:bind|set|glaze|brush|fry|top|finish|thicken|make|dust|grease|cook|fill)\b[^,;]*?\b(?:with|in|from)\s+(?=.+\s(?:instead of|in place of|rather than)\s)/i;

/** The words of a change without what is only said around it. */
export const bareChange = (words: Words): Words => {
  const lead = around.exec(words.text)?.[0].length ?? 0;
  const rest = lead < words.text.length ? words.text.slice(lead) : words.text;
  const kept = lead < words.text.length ? lead : 0;
  const skip = how.exec(rest)?.[0].length ?? 0;
  return { text: rest.slice(skip), span: { start: words.span.start + kept + skip, end: words.span.end } };
};

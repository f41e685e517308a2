import type { Line } from "./lines-of-text.ts";

/** "If you can't find it, take …", "I've found that …": a sentence that speaks to the reader and lists nothing. */
export const isTalk = (line: Line): boolean => {
  const first = line.words.text.split(/[.!?](?:\s|$)/)[0] ?? "";
  return (
    line.ingredient <= 2 &&
    first.split(/\s+/).length > 5 &&
    /^(?:if|i|i['\u2019](?:ve|m|d)|you|we|it|this|these|most|any|the|that|don['\u2019]t|make sure|remember|note)\b/i.test(
      first,
    ) &&
    /\b(?:i|you|we|is|are|was|were|can|will|works?|don['\u2019]t|doesn['\u2019]t|be|have|found)\b/i.test(
      first,
    )
  );
};

/** True of a heading over the list when the next heading with another role is that of the method: all between is the list. */
export const isFramed = (lines: readonly Line[], at: number): boolean => {
  for (let i = at + 1; i < lines.length; i += 1) {
    const role = lines[i]?.heading?.role ?? null;
    if (role !== null && role !== "ingredients" && role !== "to-serve") return role === "method";
  }
  return false;
};

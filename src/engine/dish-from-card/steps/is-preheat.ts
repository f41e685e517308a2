import type { Clause } from "./clauses.ts";

/** "Heat the oven to 200 °C", "get the oven on": the oven itself is made hot, and nothing goes in. */
export const isPreheat = (clause: Clause, id: string): boolean => {
  if (id === "preheat") return true;
  // "And into a low oven": the food goes in.
  if (/^(into|in)$/.test(clause.tokens[clause.verbAt]?.text ?? "")) return false;
  // "Prepare an oven tray" makes nothing hot.
  const at = clause.tokens.findIndex(
    (t, i) =>
      /^(oven|ovens)$/.test(t.text) &&
      !/^(tray|trays|dish|gloves?|mitts?|proof)$/.test(clause.tokens[i + 1]?.text ?? ""),
  );
  if (at < 0 || clause.mentions.length > 0 || at - clause.verbAt > 5) return false;
  const prev = clause.tokens[at - 1]?.text ?? "";
  // "Lower the oven to 130 °C": it is on already.
  if (
    /^(lower|reduce|drop|increase|raise|turn (down|up)|turn the oven (down|up))/.test(clause.hit?.verb ?? "")
  )
    return false;
  const direct = !clause.tokens
    .slice(clause.verbAt + 1, at)
    .some((t) => /^(in|into|from|to|under|it|them)$/.test(t.text));
  return (
    direct &&
    prev !== "dutch" &&
    id !== "remove-from-heat" &&
    !clause.tokens.some((t) => /^(off|down)$/.test(t.text))
  );
};

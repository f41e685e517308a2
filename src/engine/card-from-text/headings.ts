import type { BlockRole } from "../model/card.ts";

/** What a heading says: a role, a part of the dish, or both. `rest` is where the words after it on its line begin. */
export type HeadingRead = {
  readonly role: BlockRole | null;
  readonly part: string | null;
  /** Offsets of the heading's own words in the line. */
  readonly start: number;
  readonly end: number;
  readonly rest: number | null;
  /** Marked as a heading (#, bold, colon, capitals), not only by its words. */
  readonly marked: boolean;
};

const roleWords: readonly (readonly [BlockRole, RegExp])[] = [
  [
    "ingredients",
    /^(?:(?:the |main |all )?ingredients?(?: list)?|shopping list|what you(?:'|\u2019)?(?:ll| will)? need|you(?:'|\u2019)?(?:ll| will)? need|needed|components|get yourself|gather|you want|from the (?:shop|market))$/,
  ],
  [
    "method",
    /^(?:(?:the |cooking )?(?:methods?|directions?|instructions?|procedure|process|mode|steps?|preparation|preparations|prep)|how (?:to|i|we) (?:make|cook|do)(?: it| this)?|what i do|what to do|to make|to cook|making it|method of (?:work|preparation)|the work)$/,
  ],
  [
    "to-serve",
    /^(?:to serve|serving|serving suggestions?|to plate(?: up)?|plating(?: up)?|at the pass|on the pass|to finish and serve|to serve up|for service|service|presentation)$/,
  ],
  [
    "keeping",
    /^(?:keeping|storage|storing|to store|to keep|make ahead|making ahead|ahead|do ahead|to make ahead|getting ahead|get ahead|holding|leftovers|keeping and storage|keeps)$/,
  ],
  [
    "swaps",
    /^(?:swaps?|substitut(?:es?|ions?)|replacements?|dietary swaps?|exchanges?|for other diets|alternatives|instead|adaptations?)$/,
  ],
  [
    "notes",
    /^(?:notes?|tips?|hints?|(?:recipe|top|kitchen|serving) tips?|tips? (?:and|&) tricks|cook(?:'|\u2019)?s (?:notes?|tips?)|chef(?:'|\u2019)?s (?:notes?|tips?)|variations?|about(?: this dish)?|introduction|story|background|description|comments?|reviews?|nutrition(?:al)?(?: (?:facts|information|info|values?))?(?: (?:per|for (?:one|each|a)) \S+)?|equipment|utensils|tools|kit|special equipment|you(?:'|\u2019)?(?:ll| will)? also need|source|contributors?|contribution|author|tags|allergens?|credits?|history|to drink|why it works|faqs?|video)$/,
  ],
];

const compoundPattern =
  /^(ingredients?|method|directions?|instructions?|preparation|steps)\s+(?:for|of)\s+(?:the\s+|your\s+)?(.{2,40})$/;
const compoundBack = /^(?:the\s+)?(.{2,40}?)\s+(ingredients?|method|directions?|instructions?|preparation)$/;

const roleOf = (plain: string): { role: BlockRole; part: string | null } | null => {
  for (const [role, pattern] of roleWords) if (pattern.test(plain)) return { role, part: null };
  const front = compoundPattern.exec(plain);
  if (front !== null) {
    const role = front[1]?.startsWith("ingredient") === true ? "ingredients" : "method";
    const people = /\b(people|persons?|servings?|portions?|\d+)\b/.test(front[2] ?? "");
    return { role, part: people ? null : (front[2] ?? null) };
  }
  const back = compoundBack.exec(plain);
  if (back !== null && !/[.,;]|^(?:for|to)\b/.test(back[1] ?? ""))
    return {
      role: back[2]?.startsWith("ingredient") === true ? "ingredients" : "method",
      part: back[1] ?? null,
    };
  return null;
};

const partOf = (plain: string): string =>
  plain
    .replace(/^(?:part|stage)\s*\d+\s*[:.\u2013-]?\s*/, "")
    .replace(/^(?:for|to make|making|make)\s+/, "")
    .replace(/^(?:the|your|a|an)\s+/, "")
    .trim();

// The marks of a heading around its words: hashes, bold, underline, a colon at the end.
const leading = /^(?:#{1,6}\s*|\*{1,3}|_{1,3}|=+\s*)+/;
const trailing = /(?:\s*#{1,6}|\*{1,3}|_{1,3}|\s*=+|\s*[:.\u2013\u2014-]+)+$/;

const inCapitals = (words: string): boolean => {
  if (/[a-z]/.test(words)) return false;
  const letters = words.replace(/[^\p{L}]/gu, "");
  return letters.length >= 4 && letters === letters.toUpperCase() && letters !== letters.toLowerCase();
};

const wordCount = (text: string): number => text.match(/\S+/g)?.length ?? 0;

const inlineSplit = /^(.{2,40}?)(?:\*\*|__)?\s*(?::|\s[-\u2013]\s|\.?\s*[\u2014])\s*(?:\*\*|__)?\s*(?=\S)/;

/** Reads a line as a heading; null when it is none. `underlined` says that the line below is a rule of dashes. */
export const readHeading = (line: string, underlined: boolean): HeadingRead | null => {
  if (line.length > 240 && !inlineSplit.test(line.slice(0, 60))) return null;
  const lead = leading.exec(line)?.[0].length ?? 0;
  const hash = line.startsWith("#") && lead > 0;
  const body = line.slice(lead);
  const tail = body.length <= 120 ? (trailing.exec(body)?.[0] ?? "") : "";
  const words = body.slice(0, body.length - tail.length);
  const bold = lead > 0 && !hash && /[*_]/.test(tail);
  const colon = tail.includes(":");
  const plain = words
    .toLowerCase()
    .replace(/\s*\([^()]*\)\s*$/, "")
    .replace(/\s+/g, " ")
    .trim();
  const span = { start: lead, end: lead + words.length };
  const capitals = inCapitals(words);
  const marked = hash || bold || colon || underlined || (capitals && !/\d/.test(words));
  const few = wordCount(plain) <= 7;
  const named = words.length > 0 && few ? roleOf(plain) : null;
  if (named !== null && !(plain === "preparation" && /\d/.test(body)))
    return { ...named, ...span, rest: null, marked };
  const short = few && words.length <= 60 && words.length > 0;
  const sentence = /[.!?;]$/.test(words) || (/,/.test(words) && !hash);
  if (/^(?:for|to make) (?:the|your) \S/.test(plain) && short && !sentence && !/\d/.test(plain))
    return { role: null, part: partOf(plain), ...span, rest: null, marked };
  const inline = /[:\u2013\u2014-]/.test(line) ? inlineSplit.exec(line) : null;
  if (inline !== null) {
    const name = (inline[1] ?? "").slice(lead).toLowerCase().replace(/\s+/g, " ").trim();
    const role = wordCount(name) <= 5 ? roleOf(name) : null;
    if (role !== null)
      return { ...role, start: lead, end: (inline[1] ?? "").length, rest: inline[0].length, marked: true };
  }
  if (!marked || !short || sentence) return null;
  if (/^\d/.test(words) && !hash) return null;
  return { role: null, part: partOf(plain), ...span, rest: null, marked };
};

/** A rule of dashes, equals signs or stars: no words of its own. */
export const isRule = (line: string): boolean => /^[-=_*~#|:\u2014\u2500.\s]{3,}$/.test(line);

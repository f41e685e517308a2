import { readRange } from "../measure/read-number.ts";
import { tokensOf } from "../measure/tokens.ts";

/** A stretch of a line, by offsets in the line. */
export type Stretch = { readonly start: number; readonly end: number };

const opening =
  /^(?:(?:this|it|the|recipe|usually|probably|quantity|quantities|about|amount|should|will|also|each|batch|number|of|as|a|main|course|starter)\s+){0,4}(?:serves|servings?|serving size|feeds|makes|yields?|yielding|portions?|fills|sufficient|enough|gives|produces|covers|to fill|quantity|serve[sd]?)\b(?!\s+(?:with|it|them|at|hot|cold|warm|over|on|in|immediately|and)\b)\s*[:=\u2013\u2014-]?\s*/i;
const forPeople =
  /^(?:for|per)\s+(?:about\s+)?\S+(?:\s*(?:-|\u2013|to|or)\s*\S+)?\s+(?:people|persons?|guests|servings?|portions?|covers|diners|eaters|adults|heads|of (?:us|you|them))\b/i;
const bareCount =
  /^(?:about\s+)?(?:x\s*)?[\d\u00bc-\u00be\w]+(?:\s*(?:-|\u2013|to|or)\s*\d+)?\+?\s+(?:servings?|portions?|people|persons?|covers|helpings|guests)\b[.!]?$/i;

const figure =
  "(?:\\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen|twenty|thirty|forty|fifty)";
// "It'll do about six of you", "this does eight": doing is feeding when a bare number ends it.
const doing = `(?:it|this|that|which|they)(?:['\u2019]?ll| will| should| would)?\\s+(?:easily |comfortably |happily |just |probably |generously )?do(?:es)?\\s+(?:for )?(?:about |around |roughly |up to |at least )?${figure}(?:\\s*(?:-|\u2013|to|or)\\s*${figure})?`;
const spoken = new RegExp(
  `^${doing}(?:\\s+(?:of (?:us|you|them)|people|persons?|portions?|servings?|comfortably|easily|generously|at a push|with .{3,40}))*[.!]?$`,
  "i",
);
const doingInside = new RegExp(
  `\\b${doing}\\b(?=\\s*(?:[.,;!)]|$|of (?:us|you|them)\\b|people\\b|portions\\b|comfortably\\b|easily\\b|generously\\b))`,
  "i",
);

// "for 6", "for about eight", alone on its line.
const forSome = new RegExp(
  `^for (?:about |around )?${figure}(?:\\s*(?:-|\u2013|to|or)\\s*${figure})?[.!]?$`,
  "i",
);

// "About 30 of them", behind the name of what is made.
const ofThem = new RegExp(
  `^(?:about |around |roughly )?${figure} of (?:them|these)(?:,\\s*(?:${figure}|an?|one) each)?[.!]?$`,
  "i",
);

// "Does four as a starter", "does 12 slices", "cuts into 8", alone on its line.
const doesSome = new RegExp(
  `^(?:will )?(?:do(?:es)?|(?:cuts?|slices?|divides?) into)\\s+(?:about |around |roughly |up to )?${figure}(?:\\s*(?:-|\u2013|to|or)\\s*${figure})?(?:\\s+(?!(?:min|hour|day|thing)\\p{L}*\\b)\\p{L}[\\p{L} -]{1,40})?(?:,\\s*(?:${figure}|an?|one) each)?[.!]?$`,
  "iu",
);

const made =
  "lo(?:af|aves)|(?:bread |sausage )?rolls?|buns?|baps?|baguettes?|biscuits?|cookies|scones|muffins|(?:cup|fish|crab )?cakes?|tarts?|tartlets|pies?|pasties|pizzas?|balls|canap[e\u00e9]s|slices|wedges|squares|bars|pieces|bites|truffles|meringues|pancakes|cr[e\u00ea]pes|waffles|dough?nuts|jars?|pots?|bottles?|trays?|burgers|patties|meatballs|dumplings|skewers|kebabs|samosas|fritters|starters|mains|desserts|(?:small|little|big|large) ones";
// "2 loaves", "40 small ones, 8 people", "6 balls of 260 g": what is made, with nothing said before it.
const bareMade = new RegExp(
  `^(?:about |around |roughly )?(?:${figure}|an?|one)\\s+(?:x\\s+)?(?:\\d{1,2}\\s?-?(?:cm|in|inch)\\s+)?(?:(?!small ones|little ones|big ones|large ones)(?:small|little|mini|big|large|medium|round|thick|thin|good|individual)\\s+){0,2}(?:${made})(?:\\s+of\\s+(?:about\\s+)?\\d+(?:\\.\\d+)?\\s?(?:g|kg|ml))?(?:\\s+each)?(?:,?\\s+(?:(?:about |for |serves )?${figure}\\s+(?:people|guests|portions|covers|servings|slices|helpings)|(?:cuts?|slices?) into ${figure}(?:\\s+\\p{L}+)?))?[.!]?$`,
  "iu",
);

/** True when the words may say what a card makes, right below its title; elsewhere they would list it. */
export const isBareMade = (words: string): boolean => words.length <= 80 && bareMade.test(plain(words));

/** Words without the marks of emphasis that stand in them ("**Yield:** 8"). */
const plain = (words: string): string =>
  words.includes("**") || words.includes("__") ? words.replace(/\*\*|__/g, "") : words;

const hasNumber = (words: string): boolean => {
  const tokens = tokensOf(words.slice(0, 80));
  for (let i = 0; i < tokens.length; i += 1) {
    const read = readRange(tokens, i);
    if (
      read !== null &&
      (!read.article ||
        /\b(?:litre|liter|pint|quart|gallon|kilo|loaf|cake|pie|tart|jar|tin|tray|pot|batch|bowl|terrine|pizza|quiche|crowd|mould|mold|dish|basin|ring)\b/i.test(
          words,
        ))
    )
      return true;
  }
  return false;
};

const countFirst = new RegExp(
  `^(?:(?:about|around|roughly|up to|at least|between|for)\\s+){0,2}(?:${figure}|\\d|an?\\s)`,
  "i",
);

/** True when the whole of these words states a yield. */
export const isYield = (written: string): boolean => {
  if (written.length > 120) return false;
  const words = plain(written);
  if (spoken.test(words) || forSome.test(words) || ofThem.test(words) || doesSome.test(words)) return true;
  if (forPeople.test(words) || bareCount.test(words)) return hasNumber(words);
  const found = opening.exec(words);
  if (found === null) return false;
  const rest = words.slice(found[0].length);
  // "Serve 4", and not "Serve, or hold at 65C".
  if (/\bserve\s*$/i.test(found[0].replace(/[^\p{L}]+$/u, "")) && !countFirst.test(rest)) return false;
  return hasNumber(rest) && rest.split(/\s+/).length <= 12;
};

const unit = "(?:min|mins|minutes?|hour|hours|hr|hrs|h|m|days?)";
const duration = new RegExp(
  `^(?:about |approx\\.? |around |~)?[\\d\\u00bc-\\u00be/.]+(?:\\s*(?:-|\\u2013|to)\\s*[\\d.]+)?\\s*${unit}\\b\\.?(?:\\s*(?:and |, )?\\d*\\s*${unit}?\\b\\.?)?(?:\\s*(?:in total|total|plus .{3,40}|\\+.{3,40}))?$`,
  "i",
);
const timeLabel =
  /^(?:(?:total|prep(?:aration)?|cook(?:ing)?|baking|bake|active|inactive|hands[- ]on|resting|chill(?:ing)?|proving|marinating|overall|setting|working|additional|freezing|soaking)(?: time)?|time(?:s)?(?: taken| needed)?|ready in|takes|done in)\s*[:=\u2013\u2014-]?\s*(?:about|around|approx\.?|roughly|under|at least|~)?\s*(?=\d|[\u00bc-\u00be]|(?:an?|one|two|three|four|five|six|ten|fifteen|twenty|thirty|half|overnight)\b)/i;

/** True when the whole of these words states a time for the dish. */
export const isTime = (written: string): boolean => isTimeOf(plain(written));

const isTimeOf = (words: string): boolean =>
  words.length <= 90 &&
  (duration.test(words) ||
    (timeLabel.test(words) &&
      /\b(?:min|mins|minutes?|hours?|hrs?|h|m|days?|overnight)\b|\d\s?(?:h|m|min)\b/i.test(words)));

// Most lines have no such mark, and are not searched for the space around it.
const row = /[|\u00b7\u2022;\t]|\s[-\u2013\u2014/]\s|\s{3}/;

/** Cuts a line where cards put several facts in a row: bars, dots, dashes with space around, semicolons, tabs. */
const pieces = (line: string): readonly Stretch[] => {
  if (!row.test(line)) return line === "" ? [] : [{ start: 0, end: line.length }];
  const found: Stretch[] = [];
  const cut = /\s*(?:[|\u00b7\u2022;\t]|\s[-\u2013\u2014/]\s|\s{3,})\s*/g;
  let from = 0;
  for (const mark of line.matchAll(cut)) {
    if (mark.index > from) found.push({ start: from, end: mark.index });
    from = mark.index + mark[0].length;
  }
  if (from < line.length) found.push({ start: from, end: line.length });
  return found;
};

const trimEnd = (line: string, piece: Stretch): Stretch => {
  let end = piece.end;
  while (end > piece.start && /[\s.,;)]/.test(line[end - 1] ?? "")) end -= 1;
  return { start: piece.start, end };
};

/** Yields and times when the whole line states nothing else; null otherwise. */
export const readFacts = (
  line: string,
): { readonly yields: readonly Stretch[]; readonly times: readonly Stretch[] } | null => {
  if (line.length > 160) return null;
  const yields: Stretch[] = [];
  const times: Stretch[] = [];
  const all = pieces(line).map((piece) => trimEnd(line, piece));
  const commas: Stretch[] = [];
  if (all.length === 1)
    for (const words of line.split(/,\s*/)) {
      const start = line.indexOf(words, commas.at(-1)?.end ?? 0);
      commas.push({ start, end: start + words.length });
    }
  const known = (piece: Stretch): boolean => {
    const words = line.slice(piece.start, piece.end);
    return isYield(words) || isTime(words);
  };
  const parts = commas.length > 1 && commas.every(known) ? commas : all;
  if (parts.length > 0 && parts.every(known)) {
    for (const piece of parts) (isTime(line.slice(piece.start, piece.end)) ? times : yields).push(piece);
    return { yields, times };
  }
  const whole = trimEnd(line, { start: 0, end: line.length });
  if (isYield(line.slice(0, whole.end))) return { yields: [whole], times: [] };
  return isTime(line.slice(0, whole.end)) ? { yields: [], times: [whole] } : null;
};

const vessel =
  /^(?:an? )?\d{1,2}(?:\.\d)?\s*(?:cm|in|inch|-inch|["\u201d\u2033])\s*(?:[a-z-]+\s+){0,2}(?:tin|pan|dish|mould|mold|ring)$/i;
const cutInto =
  /^(?:about\s+|makes\s+)?\d{1,3}(?:\s*[-\u2013]\s*\d{1,3})?\s+(?:slices|pieces|squares|bars|wedges|biscuits|cookies|muffins|buns|rolls|pots|jars|tarts|tartlets|cakes|scones|balls)$/i;

/** "23cm tin, 12 slices", as cards put it in brackets behind the title: yields when nothing else is said; null otherwise. */
export const sizesIn = (
  words: string,
): { readonly yields: readonly Stretch[]; readonly times: readonly Stretch[] } | null => {
  const yields: Stretch[] = [];
  let from = 0;
  for (const piece of words.split(",")) {
    const start = from + (piece.length - piece.trimStart().length);
    const said = piece.trim();
    if (!(vessel.test(said) || cutInto.test(said) || isYield(said))) return null;
    yields.push({ start, end: start + said.length });
    from += piece.length + 1;
  }
  return yields.length === 0 ? null : { yields, times: [] };
};

const inside =
  /\b(?:serves|feeds|feed|makes(?: enough for)?|enough (?:for|to serve|to feed)|sufficient for|yields|will serve|serve)\s+(?:about |around |up to |at least |roughly |between )?(?:\d|two\b|three\b|four\b|five\b|six\b|seven\b|eight\b|nine\b|ten\b|twelve\b|a dozen\b|twenty\b|a family\b)/i;

/** Words inside a sentence that state a yield ("it serves 4 with rice"); null when there are none. */
export const yieldInside = (line: string): Stretch | null => {
  const said = line.slice(0, 1000);
  const found = inside.exec(said) ?? doingInside.exec(said);
  if (found === null) return null;
  const rest = line.slice(found.index);
  const stop = /[.;:()[\]|!?]|,\s| depending | if | when | because | [-\u2013\u2014] /.exec(
    rest.slice(0, 200),
  );
  const end = found.index + (stop?.index ?? Math.min(rest.length, 200));
  const words = line.slice(found.index, end);
  return isYield(words.replace(/^(serve|feed)\b/i, "$1s")) ? { start: found.index, end } : null;
};

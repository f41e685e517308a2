import { findFood } from "../larder/foods.ts";
import { findUnit } from "../larder/measures.ts";
import { verbReadings } from "../larder/techniques.ts";
import { readRange } from "../measure/read-number.ts";
import { type Token, tokensOf } from "../measure/tokens.ts";

const openers = new Set(
  "in on with when once while meanwhile meantime then next now finally first firstly after before using until if as to put take make get place set let leave keep turn have give use bring start begin transfer return remove repeat allow prepare preheat serve enjoy lay fill cover work finish do go try pull lift wrap reserve discard divide pre-heat gently carefully slowly quickly immediately separately".split(
    " ",
  ),
);

const foodVerbs = /^(?:flour|oil|butter|salt|bread|lard|sugar|pepper|cream|milk|ghee|water|spice)$/;

/** "Oil for deep frying", "flour, 2 beaten eggs and breadcrumbs": a food that is listed, though it may be a verb. */
const namesWhatFor = (tokens: readonly Token[]): boolean => {
  const [first, second, third] = tokens;
  if (first === undefined || second === undefined || !foodVerbs.test(first.lower)) return false;
  if (second.text === ",") return third?.kind === "number";
  return second.lower === "for" && /(?:ing|ed)$/.test(tokens.at(-1)?.lower ?? "") && tokens.length <= 6;
};

/** True when the line's first word orders something to be done. */
export const startsWithVerb = (tokens: readonly Token[]): boolean => {
  const first = tokens.find((t) => t.kind === "word");
  if (first === undefined || tokens.indexOf(first) > 1) return false;
  if (namesWhatFor(tokens)) return false;
  return (
    openers.has(first.lower) ||
    verbReadings(first.lower).some((r) => r.form === "base") ||
    (/ly$/.test(first.lower) && verbReadings(tokens[1]?.lower ?? "").some((r) => r.form === "base"))
  );
};

const amountFirst = /^\s*(?:\d|[\u00bc-\u00be\u2150-\u215e])/;

/** Several amounts in a row on one line, cut by semicolons or commas: a list that was written along. */
const isRunOn = (line: string): boolean =>
  [";", ","].some((mark) => {
    if (line.indexOf(mark, line.indexOf(mark) + 1) < 0) return false;
    const pieces = line.split(mark);
    return (
      pieces.length >= 3 && pieces.filter((piece) => amountFirst.test(piece)).length * 5 >= pieces.length * 3
    );
  });

const endsInAmount = (tokens: readonly Token[]): boolean => {
  const [number, last] = tokens.slice(-2);
  if (last?.kind === "number" && /^[x\u00d7]$/i.test(number?.text ?? "")) return true;
  return number?.kind === "number" && last?.kind === "word" && findUnit(last.text) !== null;
};

const behindName =
  /^(\p{L}[\p{L}' -]{1,40}?)\s+(?:about |approx\.? )?[\d\u00bc-\u00be][\d./\u00bc-\u00be]*(?:\s*(?:x|\u00d7|-|\u2013|to)\s*\d+)?\s?(\p{L}+)?\s*(?:[,(].*)?$/u;

/** "Onions 4, sliced", "cannellini beans 2 tins, drained": a food, how much of it, and what is done to it. */
const hasAmountBehind = (line: string): boolean => {
  const found = behindName.exec(line);
  if (found === null) return false;
  const unit = found[2];
  return (unit === undefined || findUnit(unit) !== null) && findFood((found[1] ?? "").trim()) !== null;
};

const vagueStart =
  /^(?:a |an |some |the )?(?:good |generous |big |small |little |large )?(?:pinch|handful|bunch|knob|dash|splash|slosh|glug|drizzle|dollop|squeeze|sprig|few|couple|clove|slice|tin|can|jar|packet|thumb|bit|little|juice|zest|salt|pepper|oil|butter)\b/i;

/** How much a line looks like one of an ingredient list; above 0 it does. `said` are its tokens. */
export const ingredientLikeness = (line: string, said: readonly Token[], bullet: boolean): number => {
  const tokens = line.length <= 200 ? said : tokensOf(line.slice(0, 200));
  const words = tokens.filter((t) => t.kind === "word").length;
  let score = bullet ? 1 : 0;
  const amount = readRange(tokens, 0);
  if (amount !== null && !amount.article) {
    const unit = tokens[amount.next];
    score += unit !== undefined && findUnit(unit.text) !== null ? 4 : 3;
  } else if (amount?.article === true) {
    // "A 2.5kg piece of pork belly": its weight stands behind the article.
    const size = readRange(tokens, amount.next);
    const unit = tokens[size === null ? amount.next : size.next]?.text ?? "";
    score += findUnit(unit) !== null ? 3 : 1;
  } else if (vagueStart.test(line)) score += 2;
  if (words <= 8) score += 1;
  if (words <= 4) score += 1;
  if (words > 14) score -= 2;
  if (words > 24) score -= 3;
  if (/[.!]$/.test(line) && words > 5) score -= 2;
  if (/[.!?]\s+[A-Z]/.test(line)) score -= 2;
  if (endsInAmount(tokens) && words <= 8) score += 2;
  if (words <= 12 && hasAmountBehind(line)) score += 3;
  if (isRunOn(line)) score += 8;
  if (words <= 4 && findFood(line.replace(/\(.*?\)|,.*$/g, "").trim()) !== null) score += 3;
  if (
    /\b(?:to taste|optional|for (?:greasing|dusting|frying|serving|garnish)|to (?:serve|garnish|finish))\b/i.test(
      line,
    )
  )
    score += words <= 9 ? 2 : 0;
  return score;
};

/** How much a line looks like a step of a method; above 2 it does. `tokens` are its tokens; `verb`: it starts with one. */
export const stepLikeness = (
  line: string,
  tokens: readonly Token[],
  numbered: boolean,
  verb: boolean = startsWithVerb(tokens),
): number => {
  const words = tokens.filter((t) => t.kind === "word").length;
  let score = numbered ? 3 : 0;
  if (verb) score += words >= 4 ? 3 : 1;
  if (words > 9) score += 1;
  if (words > 14) score += 1;
  if (words > 24) score += 1;
  if (/[.!]$/.test(line) && words > 3) score += 1;
  if (/\b\d+\s*(?:-|\u2013|to)?\s*\d*\s*(?:min|mins|minutes?|hours?|hrs?)\b/i.test(line) && words > 4)
    score += 2;
  if (/\b(?:until|till)\b/i.test(line)) score += 2;
  if (words <= 3 && !numbered) score -= 2;
  return score;
};

const keepingPattern =
  /^(?:once \w+,? )?(?:(?:it|they|this|these|the (?:\w+ ){1,3})(?:['\u2019]ll)?\s*)?(?:(?:will |can |should )?(?:keeps?|holds?|lasts?|freezes?)\b|(?:can|may) be (?:made|kept|stored|frozen|held|prepared)\b|best (?:made|eaten)\b|store(?:d)? in (?:the|an?) \b).{0,80}\b(?:hours?|days?|weeks?|months?|minutes?|fridge|freezer|overnight|ahead|hot)\b/i;
const swapPattern =
  /^(?:for |to make (?:it|this) )?(?:without|instead of|vegetarians?|vegans?|coeliacs?|celiacs?|gluten[- ]free|dairy[- ]free|nut[- ]free|egg[- ]free|no \w+|vegan|vegetarian|pregnant|halal|kosher)\b[^.:]{0,40}[:,?]\s*(?:\w+ ){0,3}?(?:replace|swap|use|leave|omit|substitute|change|make)\b/i;

// "Freeze for 3 hours" is an order; what freezes for months is kept.
const freezesNow = /^freeze\b(?!.*\b(?:days?|weeks?|months?)\b).{0,80}\b(?:hours?|minutes?|overnight)\b/i;

/** A line that says how long the dish holds, without any heading. */
export const isKeepingLine = (line: string): boolean =>
  line.length <= 240 && keepingPattern.test(line) && !freezesNow.test(line);

/** A line that says what to change for a need, without any heading. */
export const isSwapLine = (line: string): boolean => line.length <= 300 && swapPattern.test(line);

const clutter =
  /^(?:(?:jump to|go to|skip to) (?:the )?(?:recipe|content|video).*|print(?: recipe| this)?|pin(?: it| recipe| this)?|save(?: recipe| this)?|share(?: this| on .*)?|rate(?: this)?(?: recipe)?|tweet|email|subscribe.*|sign up.*|log ?in.*|advertisement|advert|sponsored|(?:last )?updated(?: on)? .*|(?:did you|have you) (?:make|made|try|tried) (?:this|it).*|tried this.*|leave a (?:comment|reply|review).*|reply|newsletter|follow (?:us|me).*|tag (?:us|me|@).*|skip to .*|menu|search|rate (?:it|this).*|[\u2605\u2606]{2,}.*|recipe (?:card|video)|add to (?:favou?rites|basket|list|shopping list).*|\d+ (?:comments?|reviews?|votes?|ratings?|likes|shares).*|[\u2605\u2606*\s]+|\d(?:\.\d+)?\s*[\u2605\u2606].*|(?:calories|energy)\s+\d+.*|.{0,12}\d(?:\.\d+)? (?:(?:from|out of) \d+.*|\/ ?(?:5|10)\b.*)|(?:course|cuisine|keywords?|calories|author|posted (?:on|by|in)|published|updated|category|categories|tags?|difficulty|level|skill level|print|diet)\s*:.*|by [A-Z]\S*(?: [A-Z]\S*){0,2}|cook mode.*|(?:\d+x\s*)+|us customary.*metric.*|metric.*us customary.*|home\s*[>\u203a/].*|https?:\/\/\S+|www\.\S+|!\[.*\]\(.*\)|\[.*\]\(https?:.*\)|photo(?:graph)?s?(?: by| credit| of|:).*|image(?: credit)?:.*|click .*|read more.*|see also.*|all rights reserved.*|copyright.*|\u00a9.*|<[^>]+>)$/i;

// A picture or an arrow before the words of a button.
const sign = /^(?:\p{Extended_Pictographic}|[\u2190-\u21ff\u25a0-\u25ff]|\ufe0f|\u200d)+\s+/u;

/** What pages put around a dish: buttons, stars, addresses. Nobody cooks it. */
export const isClutter = (line: string): boolean =>
  line.length <= 160 && (clutter.test(line) || (sign.test(line) && clutter.test(line.replace(sign, ""))));

const afterwards =
  /^(?:\d+ )?(?:comments?|reviews?|responses?|replies|ratings? (?:and|&) reviews?|join the (?:conversation|discussion)|leave a (?:comment|reply|review)|you (?:might|may|will|'?ll) also (?:like|love|enjoy)|related(?: (?:recipes|posts|articles))?|more (?:recipes|like this)(?: .*)?|similar recipes|questions? (?:and|&) answers?|q ?& ?a)(?: ?\(\d+\))?\s*:?$/i;

/** What stands behind a dish on a page: what readers say, other dishes. Nothing from there on is the cook's. */
export const opensAfterwards = (line: string): boolean => line.length <= 60 && afterwards.test(line);

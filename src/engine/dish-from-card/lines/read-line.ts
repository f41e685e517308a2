import { partsOf } from "../../larder/food-parts.ts";
import { findFood, foodById } from "../../larder/foods.ts";
import { findLevel } from "../../larder/measures.ts";
import { isDash } from "../../measure/read-number.ts";
import { type Token, tokensOf } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Food } from "../../model/food.ts";
import type { Region } from "../../model/sitting.ts";
import { type Clause, clausesOf } from "./clauses.ts";
import { readEachOf } from "./each-of.ts";
import { driedByTheSpoon, portionWords } from "./line-words.ts";
import { isOnlyModifiers, slice } from "./modifiers.ts";
import { partOfSource, sharedNoun } from "./pairs.ts";
import { readAmounts } from "./read-amounts.ts";
import { type Phrase, readPhrase } from "./read-phrase.ts";
import { readRemark } from "./read-tail.ts";
import { fromPhrase, type Reading, withRemark, withSharedHead } from "./reading.ts";
import { withoutTalk } from "./without-talk.ts";

const bare = (reading: Reading): boolean => reading.amounts.every((a) => a.vague);

/** Reads the tail of a clause: choices, purposes, second foods. Adds to the last of the readings. */
const readTail = (
  line: string,
  tokens: readonly Token[],
  from: number,
  readings: Reading[],
  region: Region,
  each: boolean,
): void => {
  const last = readings.at(-1);
  if (last === undefined || from >= tokens.length) return;
  const word = tokens[from]?.lower ?? "";
  const first = tokens[from]?.text ?? "";
  const either = word === "and" && tokens[from + 1]?.text === "/" && tokens[from + 2]?.lower === "or";
  if ((word === "and" && !either) || first === "&" || (first === "+" && last.food !== null)) {
    const phrase = readPhrase(line, tokens, from + 1, tokens.length, region);
    if (phrase?.food != null && last.name !== "") {
      const own = phrase.amounts.length > 0;
      const spread = each || bare(last);
      const shared = own || spread ? 1 : last.shared + 1;
      // "carrots and parsnips" after one weight share it; with "each", or with no figure, both have it.
      let base: Reading = { ...fromPhrase(phrase), shared };
      if (!own)
        base = {
          ...base,
          amounts: last.amounts,
          pack: last.pack,
          container: last.container,
          size: phrase.size ?? last.size,
        };
      if (shared > 1) readings.splice(0, readings.length, ...readings.map((r) => ({ ...r, shared })));
      const pair = sharedNoun(last, phrase, own);
      const joined = pair ?? (last.food === null ? withSharedHead(last, phrase) : last);
      readings[readings.length - 1] = { ...joined, shared: shared > 1 ? shared : joined.shared };
      readings.push(base);
      readTail(line, tokens, phrase.next, readings, region, each);
      return;
    }
    if (phrase !== null && phrase.portion !== null && phrase.name === "" && last.portion !== null) {
      // "the zest of 1 orange and the juice of 2"
      readings.push({
        ...last,
        amounts: phrase.amounts,
        portion: phrase.portion,
        preparation: phrase.preparation,
      });
      return;
    }
    if (phrase !== null && phrase.food === null && last.food !== null && phrase.name !== "") {
      const done = readRemark(line, tokens, from + 1, tokens.length, region, false);
      readings[readings.length - 1] = withRemark(last, { ...done, food: null, alternatives: [] });
    }
    return;
  }
  if (first === "/" || word === "or" || either) {
    const phrase = readPhrase(line, tokens, from + 1, tokens.length, region);
    const joined = phrase !== null && phrase.name !== "" ? withSharedHead(last, phrase) : last;
    const start = first === "/" ? from + 1 : from;
    if (first === "/" && phrase !== null && phrase.name !== "") {
      const rest = Math.min(phrase.next, tokens.length);
      const same = phrase.food !== null && phrase.food.id === joined.food?.id;
      const alternatives = same ? joined.alternatives : [...joined.alternatives, phrase];
      readings[readings.length - 1] = { ...joined, food: joined.food ?? phrase.food, alternatives };
      readTail(line, tokens, rest, readings, region, each);
      return;
    }
    const remark = readRemark(line, tokens, start, tokens.length, region, false);
    const known = joined.food === null ? (remark.alternatives[0]?.food ?? null) : joined.food;
    readings[readings.length - 1] = withRemark(
      { ...joined, food: joined.food ?? (joined.name === "" ? known : null) },
      remark,
    );
    return;
  }
  // "beef cheeks x 12", "bay 3"
  const times = /^[x\u00d7]$/i.test(first);
  const counted = !times && tokens[from]?.kind === "number" && last.amounts.length === 0;
  if (times || counted) {
    const read = readAmounts(tokens, times ? from + 1 : from, region);
    if (read !== null && (times || read.next >= tokens.length))
      readings[readings.length - 1] = {
        ...last,
        amounts: [...last.amounts, ...read.amounts],
        container: last.container ?? read.container,
      };
    if (times || (read !== null && read.next >= tokens.length)) return;
  }
  if (word === "from") {
    const source = readPhrase(line, tokens, from + 1, tokens.length, region);
    const portion = last.amounts.length === 0 ? partOfSource(last, source) : null;
    if (source !== null && portion !== null) {
      const { food, name, nameSpan, amounts } = source;
      readings[readings.length - 1] = { ...last, food, name, nameSpan, amounts, portion };
      return;
    }
  }
  const remark = readRemark(line, tokens, from, tokens.length, region, false);
  // "3 eggs plus 1 yolk"
  const more = word === "plus" && remark.extra === null ? remark.food : null;
  if (more?.food != null && more.amounts.length > 0) {
    readings.push(fromPhrase(more));
    readTail(line, tokens, more.next, readings, region, each);
    return;
  }
  const named = last.food === null && remark.food?.name === "" ? { ...last, food: remark.food.food } : last;
  readings[readings.length - 1] = withRemark(named, { ...remark, food: null });
  // "salt and pepper to taste" says it of both.
  const { purpose } = remark;
  if (purpose !== null && readings.every((r) => r.amounts.length === 0))
    readings.splice(0, readings.length, ...readings.map((r) => ({ ...r, purpose: r.purpose ?? purpose })));
};

const each = (tokens: readonly Token[]): boolean => tokens.some((t) => t.lower === "each");

/** "pepper, red", "flour, plain": the clause after the comma belongs before the name. */
const turned = (reading: Reading, phrase: Phrase): Food | null =>
  findFood(`${phrase.name} ${reading.name}`) ?? findFood(`${reading.name} ${phrase.name}`);

/** "2 lemons, zest and juice": the parts that are wanted; null when the clause says anything else. */
const portionClause = (tokens: readonly Token[]): string | null => {
  const parts = tokens.flatMap((t) => portionWords.get(t.lower) ?? []);
  const others = tokens.filter((t) => !portionWords.has(t.lower));
  const plain = others.every(
    (t) => t.kind === "mark" || /^(?:and|only|grated|finely|the|of|both)$/.test(t.lower),
  );
  return parts.length > 0 && plain ? parts.join(" and ") : null;
};

/** "1 onion, 2 cloves garlic, crushed": foods with amounts of their own, cut by a comma, are spoken of one at a time. */
const listedApart = (line: string, readings: readonly Reading[]): boolean => {
  const [before, last] = readings.slice(-2);
  if (before === undefined || last === undefined || last.amounts.length === 0) return false;
  if (before.amounts[0]?.span.start === last.amounts[0]?.span.start) return false;
  return /[,;]/.test(line.slice(before.nameSpan.end, last.nameSpan.start));
};

/** The greater number of "(or 2)", where nothing but a number is said; null for any other bracket. */
const inRange = (count: Amount | undefined, tokens: readonly Token[], region: Region): number | null => {
  if (count === undefined || !/^(?:or|to)$/.test(tokens[0]?.lower ?? "")) return null;
  const read = readAmounts(tokens, 1, region);
  const [only] = read?.amounts ?? [];
  const plain = read !== null && read.next >= tokens.length && only?.unit === "piece";
  return plain && only.high > count.high ? only.high : null;
};

const addClause = (
  line: string,
  clause: Clause,
  readings: Reading[],
  region: Region,
  eachLine: boolean,
  first: boolean,
): void => {
  const last = readings.at(-1);
  if (last === undefined) return;
  const { tokens } = clause;
  const portion = last.food === null ? null : portionClause(tokens);
  if (portion !== null && last.food !== null && partsOf(last.food.id, portion).length > 0) {
    readings[readings.length - 1] = { ...last, portion };
    return;
  }
  const count = last.amounts[0];
  const inside =
    clause.kind === "bracket" &&
    last.amounts.length === 1 &&
    count?.unit === "piece" &&
    count.likely > 1 &&
    (tokens[0]?.start ?? 0) < last.nameSpan.start;
  // "1/3 cup butter (scant)"
  const level = clause.kind === "bracket" && tokens.length === 1 ? findLevel(tokens[0]?.lower ?? "") : null;
  if (level !== null) {
    readings[readings.length - 1] = { ...last, level };
    return;
  }
  // "1 (or 2) cloves"
  const upTo = inRange(count, tokens, region);
  if (clause.kind === "bracket" && count !== undefined && upTo !== null) {
    const wider = { ...count, high: upTo, likely: (count.low + upTo) / 2 };
    readings[readings.length - 1] = { ...last, amounts: [wider, ...last.amounts.slice(1)] };
    return;
  }
  const said = readRemark(line, tokens, 0, tokens.length, region, true);
  const remark = inside ? { ...said, each: true, packed: true } : said;
  const { food } = remark;
  const all = (change: (r: Reading) => Reading): void => {
    readings.splice(0, readings.length, ...readings.map(change));
  };
  if (clause.kind === "bracket" || food === null) {
    // "butter (salted)", "peas (frozen)": one word that makes another food of it.
    const [word, ...others] = tokens;
    const kind =
      clause.kind === "bracket" && others.length === 0 && isOnlyModifiers(tokens, 0) && last.food !== null
        ? findFood(`${word?.text ?? ""} ${last.name}`)
        : null;
    const bracketFood = clause.kind === "bracket" && last.food === null && food?.food != null;
    const named = bracketFood ? { ...last, food: food.food } : { ...last, food: kind ?? last.food };
    const amounts = remark.amounts.length > 0 && readings.length > 1 && (remark.each || eachLine);
    if (amounts) all((r) => ({ ...r, amounts: remark.amounts, shared: 1 }));
    else if (
      readings.length > 1 &&
      remark.amounts.length === 0 &&
      !listedApart(line, readings) &&
      (clause.kind === "comma" || tokens[0]?.lower === "all")
    )
      // "Salt and pepper, to taste": what is said after all of them is said of each.
      all((r) => withRemark(r, { ...remark, food: null }));
    else readings[readings.length - 1] = withRemark(named, { ...remark, food: null });
    return;
  }
  const inverted = first && food.amounts.length === 0 ? turned(last, food) : null;
  if (inverted !== null && inverted.id !== food.food?.id) {
    readings[readings.length - 1] = {
      ...last,
      food: inverted,
      amounts: [...last.amounts, ...remark.amounts],
    };
    return;
  }
  if (food.food === null) {
    if (food.amounts.length > 0 && last.amounts.length === 0)
      readings[readings.length - 1] = { ...last, amounts: food.amounts };
    return;
  }
  // "Mace: mace is the dried flower of …" says more of the same food.
  if (food.amounts.length === 0 && last.food?.id === food.food.id) return;
  // "salt, pepper", "2 onions, 1 carrot": a food of its own; "cheddar, grated parmesan" too.
  const own = food.amounts.length > 0;
  const shares = !own && !bare(last) && eachLine;
  if (!own && !bare(last) && !eachLine && last.food !== null && !/^\s*(?:and|&)/.test("")) {
    // After a counted food a bare food is part of a remark ("1 chicken, skin on"), unless nothing else fits.
    if (last.food.id === food.food.id) return;
    if (tokens.length > 2) return;
  }
  readings.push({
    ...fromPhrase(food),
    amounts: own ? food.amounts : shares || bare(last) ? (own ? food.amounts : last.amounts) : [],
    optional: remark.optional,
  });
  readTail(line, tokens, food.next, readings, region, eachLine);
};

const labels =
  /^(?:(?:special )?equipment|you will also need|if you like|if liked|if desired|optional(?:ly)?|garnish|to serve|to garnish|to finish|topping|for .+|plus|and|also)$/;

/** "2 kg mixed roots: carrots, parsnips": the foods after the colon share what stands before it. */
const listed = (readings: readonly Reading[], line: string): readonly Reading[] => {
  const [first, ...others] = readings;
  const colon = line.indexOf(":");
  const together =
    first !== undefined &&
    first.food === null &&
    first.amounts.length > 0 &&
    others.length > 1 &&
    colon > first.nameSpan.start &&
    others.every((o) => o.food !== null && o.amounts.length === 0 && o.nameSpan.start > colon);
  if (!together || first === undefined) return readings;
  return others.map((o) => ({ ...o, amounts: first.amounts, shared: others.length }));
};

/** "1 tsp ginger" is ground, "1 tsp ginger, grated" is not. */
const asDried = (reading: Reading): Reading => {
  const dried = reading.food === null ? undefined : driedByTheSpoon.get(reading.food.id);
  const plain = reading.state.length + reading.preparation.length === 0 && !/\s/.test(reading.name);
  if (dried === undefined || !plain || reading.amounts[0]?.unit !== "tsp") return reading;
  return { ...reading, food: foodById(dried) ?? reading.food };
};

const ignoredMarks = new Set([
  "*",
  "\u2020",
  "\u2021",
  "_",
  "`",
  '"',
  "\u201c",
  "\u201d",
  "\u201e",
  "\u00ab",
  "\u00bb",
]);

/** "8 bone-in, skin-on chicken thighs": a comma between words that stand before the food cuts nothing. */
const withoutInnerCommas = (line: string, clauses: readonly Clause[], region: Region): readonly Clause[] => {
  const [main, ...rest] = clauses;
  const next = rest.findIndex((c) => c.kind === "comma");
  const after = rest[next];
  if (main?.kind !== "main" || after === undefined || main.tokens.length > 8) return clauses;
  if (labels.test(slice(line, main.tokens, 0, main.tokens.length).toLowerCase())) return clauses;
  let from = readAmounts(main.tokens, 0, region)?.next ?? 0;
  while (/^(?:of|an?|the)$/.test(main.tokens[from]?.lower ?? "")) from += 1;
  if (!isOnlyModifiers(main.tokens, from) || from >= main.tokens.length) return clauses;
  if (/^\s*(?:for|to|or)\b/.test(after.tokens[0]?.lower ?? "")) return clauses;
  const joined: Clause = { kind: "main", tokens: [...main.tokens, ...after.tokens] };
  return withoutInnerCommas(line, [joined, ...rest.filter((c) => c !== after)], region);
};

/** "maple syrup, agave, or honey": what stands before the last choice is a choice too. */
const withChoices = (clauses: readonly Clause[]): readonly Clause[] =>
  clauses.map((clause, k) => {
    const or = clauses[k + 1]?.tokens[0];
    const short = clause.tokens.length <= 3 && clause.tokens.every((t) => t.kind === "word");
    if (clause.kind !== "comma" || or?.lower !== "or" || !short || isOnlyModifiers(clause.tokens, 0))
      return clause;
    return clause.tokens[0]?.lower === "or" ? clause : { ...clause, tokens: [or, ...clause.tokens] };
  });

// The longest line counted in four thousand of real cards has 253 characters; what follows is talk.
const longestLine = 400;

/** Reads one ingredient line into its foods. Empty when the line holds no words. */
export const readLine = (line: string, region: Region): readonly Reading[] => {
  const all = tokensOf(line.slice(0, longestLine)).filter(
    (t) => !(t.kind === "mark" && ignoredMarks.has(t.text)),
  );
  const marked = isDash(all[0]) && all[0]?.text !== "~" ? all.slice(1) : all;
  const tokens = withoutTalk(marked, region);
  const clauses = withoutInnerCommas(line, clausesOf(line, tokens), region);
  let at = clauses.findIndex((c) => c.kind === "main");
  if (at < 0) return [];
  const before = clauses.slice(0, at);
  let purpose: string | null = null;
  let equipment = false;
  let optional = before.some((c) => c.tokens.some((t) => t.lower === "optional"));
  // "Optional: basil", "To serve: lemon wedges".
  const label = slice(line, clauses[at]?.tokens ?? [], 0, clauses[at]?.tokens.length ?? 0).toLowerCase();
  if (labels.test(label) && clauses[at + 1] !== undefined) {
    if (/equipment|also need/.test(label)) equipment = true;
    else if (/^(?:optional|if)/.test(label)) optional = true;
    else if (label !== "plus" && label !== "and" && label !== "also") purpose = label;
    at += 1;
  }
  const main = clauses[at];
  if (main === undefined) return [];
  if (main.tokens[0]?.lower === "optional") optional = true;
  const phrase = readPhrase(line, main.tokens, 0, main.tokens.length, region);
  const readings: Reading[] = [];
  const eachLine = each(tokens);
  let rest = clauses.slice(at + 1);
  if (phrase === null) return [];
  const spread = readEachOf(line, main.tokens, region);
  if (spread !== null) {
    readings.push(...spread.readings);
    readTail(line, main.tokens, spread.next, readings, region, true);
  }
  if (spread === null && phrase.name === "" && rest.length > 0) {
    // The amount stands alone before a comma or a bar: "500 g | flour".
    const next = rest.find((c) => c.kind === "comma");
    const food = next === undefined ? null : readPhrase(line, next.tokens, 0, next.tokens.length, region);
    if (next !== undefined && food !== null) {
      // "1 cup | 240 ml milk" says it twice.
      const twice = phrase.amounts.every((a) => a.unit !== "piece");
      const kept =
        food.amounts.length === 0
          ? phrase.amounts
          : twice
            ? [...phrase.amounts, ...food.amounts]
            : food.amounts;
      readings.push({ ...fromPhrase(food), amounts: kept, container: food.container ?? phrase.container });
      readTail(line, next.tokens, food.next, readings, region, eachLine);
      rest = rest.filter((c) => c !== next);
    }
  }
  if (readings.length === 0) {
    readings.push(fromPhrase(phrase));
    readTail(line, main.tokens, phrase.next, readings, region, eachLine || phrase.each);
  }
  const firstComma = rest.find((c) => c.kind === "comma")?.tokens.at(-1);
  for (const clause of withChoices(rest))
    addClause(line, clause, readings, region, eachLine || phrase.each, clause.tokens.at(-1) === firstComma);
  return listed(readings, line).map((r) =>
    asDried({
      ...r,
      purpose: r.purpose ?? purpose,
      optional: r.optional || optional,
      equipment: r.equipment || equipment,
    }),
  );
};

import { findLevel, findSize, measureFor, measureKind } from "../../larder/measures.ts";
import { isDash, type NumberRead, partAfter, readRange } from "../../measure/read-number.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Amount } from "../../model/dish.ts";
import type { Region } from "../../model/sitting.ts";
import { lowerAt } from "./modifiers.ts";
import { afterStop, readAdjectives, readUnit } from "./read-unit.ts";

/** The amounts at the head of some tokens, and what stands with them. Spans count from the line's start. */
export type AmountsRead = {
  readonly amounts: readonly Amount[];
  /** The token after the amounts (and after "of"). */
  readonly next: number;
  /** "large", "5 cm". */
  readonly size: string | null;
  readonly container: string | null;
  /** What one pack holds ("400 g"), when the line says so. */
  readonly pack: Amount | null;
  /** How the spoon is filled ("heaped"), a row of the measure table. */
  readonly level: string | null;
  /** "each" stood with the amount. */
  readonly each: boolean;
};

const approximately = new Set(
  "about approx approximately around roughly circa ca nearly almost say maybe perhaps probably some ~ \u2248 \u00b1".split(
    " ",
  ),
);
const orSo = /^(?:so|more|less|thereabouts)$/;
const approximateNext = new Set(["over", "under", "less", "more"]);

type One = {
  readonly amount: Amount;
  readonly next: number;
  readonly size: string | null;
  readonly container: string | null;
  readonly pack: Amount | null;
  readonly level: string | null;
};

const amountOf = (
  read: Pick<NumberRead, "low" | "likely" | "high" | "vague">,
  unit: string,
  approximate: boolean,
  tokens: readonly Token[],
  from: number,
  to: number,
): Amount => ({
  low: read.low,
  likely: read.likely,
  high: read.high,
  unit,
  approximate,
  vague: read.vague || measureKind(unit) === "vague",
  span: { start: tokens[from]?.start ?? 0, end: tokens[to - 1]?.end ?? tokens[from]?.end ?? 0 },
});

const isPackable = (unit: string): boolean =>
  measureKind(unit) === "container" ||
  ["bar", "block", "ball", "loaf", "piece", "chunk", "sheet", "tube"].includes(unit);

const single = { low: 1, likely: 1, high: 1, vague: false };

/** A second number and unit right after the count: "2 x 400 g tins", "1 14-oz can". */
const readPack = (
  tokens: readonly Token[],
  at: number,
): { pack: Amount; unit: string; next: number } | null => {
  const read = readRange(tokens, at);
  if (read === null || read.article) return null;
  const glued = isDash(tokens[read.next]) ? read.next + 1 : read.next;
  const found = readUnit(tokens, glued);
  const kind = found === null ? null : measureKind(found.unit);
  if (found === null || (kind !== "mass" && kind !== "volume")) return null;
  const after = afterStop(tokens, found.next);
  let glue = isDash(tokens[after]) ? after + 1 : after;
  if (findSize(lowerAt(tokens, glue)) !== null) glue += 1;
  const container = readUnit(tokens, glue);
  const packed = container !== null && isPackable(container.unit);
  return {
    pack: amountOf(read, found.unit, false, tokens, at, found.next),
    unit: packed ? container.unit : "piece",
    next: packed ? afterStop(tokens, container.next) : after,
  };
};

/** "a kilo and a half": the part that follows the unit; nothing when it begins an amount of its own. */
const partBehind = (
  tokens: readonly Token[],
  at: number,
  read: NumberRead | null,
): { value: number; next: number } => {
  const none = { value: 0, next: at };
  if (read === null || !Number.isInteger(read.likely) || read.low !== read.high) return none;
  const part = partAfter(tokens, at);
  if (part.value === 0 || ["a", "an"].includes(lowerAt(tokens, part.next))) return none;
  return readUnit(tokens, part.next) === null ? part : none;
};

/** "the best part of a bottle": nearly all of it. */
const isMost = (tokens: readonly Token[], at: number): boolean =>
  /^(?:best|better|greater)$/.test(lowerAt(tokens, at)) &&
  lowerAt(tokens, at + 1) === "part" &&
  lowerAt(tokens, at + 2) === "of";

// A quantity of another card comes in no pack.
const packless = new Set(["batch", "serving"]);

const readOne = (tokens: readonly Token[], start: number, region: Region): One | null => {
  let at = start;
  let approximate = false;
  for (;;) {
    const word = lowerAt(tokens, at);
    if (approximately.has(word) && (word !== "some" || tokens[at + 1]?.kind === "number")) {
      approximate = true;
      at = afterStop(tokens, at + 1);
    } else if (word === "just" && approximateNext.has(lowerAt(tokens, at + 1))) at += 2;
    else if (
      ((word === "up" || word === "close") && lowerAt(tokens, at + 1) === "to") ||
      (word === "at" && /^(least|most)$/.test(lowerAt(tokens, at + 1)))
    ) {
      approximate = true;
      at += 2;
    } else if (word === "the" && isMost(tokens, at + 1)) {
      approximate = true;
      at += 4;
    } else break;
  }
  const read = readRange(tokens, at);
  if (read?.article === true && tokens[read.next]?.kind === "number") {
    const packed = readPack(tokens, read.next);
    if (packed === null || packed.unit === "piece") {
      const inner = readOne(tokens, read.next, region);
      if (inner !== null) return inner;
    }
  }
  let next = read?.next ?? at;
  // "2 or more cloves"
  if (read !== null && lowerAt(tokens, next) === "or" && orSo.test(lowerAt(tokens, next + 1))) {
    approximate = true;
    next += 2;
  }
  // "70% chocolate", "2% milk": the number belongs to the food.
  if (read !== null && lowerAt(tokens, next) === "%") return null;
  if (
    read === null &&
    findLevel(lowerAt(tokens, at)) === null &&
    !["the", "good", "big", "generous", "small", "large", "heaped"].includes(lowerAt(tokens, at))
  ) {
    const bare = readUnit(tokens, at);
    const kind = bare === null ? null : measureKind(bare.unit);
    if (bare === null || bare.unit === "part") return null;
    const of = lowerAt(tokens, bare.next) === "of";
    const some = ["some", "lots", "plenty", "loads"].includes(lowerAt(tokens, at));
    if (
      !(
        some ||
        (kind === "vague" &&
          bare.unit !== "little" &&
          (of || /^(pinch|handful|dash|splash|knob|drizzle|glug)/.test(lowerAt(tokens, at)))) ||
        (of && (kind === "piece" || kind === "container" || kind === "volume"))
      )
    )
      return null;
  }
  const count = read ?? { ...single, next, article: false };
  const first = tokens[next];
  if (read !== null && !read.article && first !== undefined && /^[x\u00d7*]$/i.test(first.text)) {
    const packed = readPack(tokens, next + 1);
    if (packed !== null)
      return {
        amount: amountOf(read, packed.unit, approximate, tokens, start, packed.next),
        next: packed.next,
        size: null,
        container: measureKind(packed.unit) === "container" ? packed.unit : null,
        pack: packed.pack,
        level: null,
      };
    next += 1;
  }
  const second = tokens[next]?.kind === "number" ? readPack(tokens, next) : null;
  if (read !== null && second !== null)
    return {
      amount: amountOf(read, second.unit, approximate, tokens, start, second.next),
      next: second.next,
      size: null,
      container: measureKind(second.unit) === "container" ? second.unit : null,
      pack: second.pack,
      level: null,
    };
  // "6no. sole", "10 ea. shallots": the trade's ways to write a count.
  if (read !== null && !read.article && /^(?:nos?|ea)$/.test(lowerAt(tokens, next)))
    next = afterStop(tokens, next + 1);
  // "2-inch", "14-ounce": a dash glues the number to its unit.
  const glued = read !== null && !read.article && isDash(tokens[next]) && readUnit(tokens, next + 1) !== null;
  if (glued) next += 1;
  const adjectives = readAdjectives(tokens, next, read?.article === true);
  const { level, size } = adjectives;
  const beforeAdjectives = next;
  next = adjectives.next;
  const found = readUnit(tokens, next);
  const kind = found === null ? null : measureKind(found.unit);
  if (found !== null && kind === "length") {
    const length = tokens
      .slice(at, found.next)
      .map((t) => t.text)
      .join(" ")
      .replace(/ - /g, " ");
    const after = isDash(tokens[afterStop(tokens, found.next)])
      ? afterStop(tokens, found.next) + 1
      : afterStop(tokens, found.next);
    const piece = readUnit(tokens, after);
    const isPiece = piece !== null && (measureKind(piece.unit) === "piece" || piece.unit === "knob");
    return {
      amount: amountOf(
        { ...single },
        isPiece ? piece.unit : "piece",
        approximate,
        tokens,
        start,
        isPiece ? piece.next : after,
      ),
      next: isPiece ? piece.next : after,
      size: length,
      container: null,
      pack: null,
      level: null,
    };
  }
  const usable =
    found !== null && kind !== null && !(found.unit === "little" && read !== null && !read.article);
  if (!usable || found === null) {
    // Only a bare article and an adjective, or a number before the food.
    if (read === null) return null;
    const back = size === null ? beforeAdjectives : adjectives.afterSize;
    return {
      amount: amountOf(read, "piece", approximate, tokens, start, read.next),
      next: back,
      size,
      container: null,
      pack: null,
      level: null,
    };
  }
  const part = partBehind(tokens, afterStop(tokens, found.next), read);
  const end = part.next;
  const glue = isDash(tokens[end]) ? end + 1 : end;
  const container = kind === "mass" || kind === "volume" ? readUnit(tokens, glue) : null;
  if (container !== null && isPackable(container.unit) && (read?.likely ?? 0) > 0) {
    // "400 g tin of tomatoes": one tin that holds 400 g.
    const pack = amountOf(count, found.unit, approximate, tokens, start, found.next);
    return {
      amount: amountOf(single, container.unit, false, tokens, start, container.next),
      next: afterStop(tokens, container.next),
      size,
      container: measureKind(container.unit) === "container" ? container.unit : null,
      pack,
      level: null,
    };
  }
  const whole =
    part.value === 0
      ? count
      : {
          ...count,
          low: count.low + part.value,
          likely: count.likely + part.value,
          high: count.high + part.value,
        };
  return {
    amount: amountOf(whole, found.unit, approximate, tokens, start, part.value === 0 ? found.next : end),
    next: end,
    size: kind === "piece" || kind === "container" || kind === "vague" ? size : null,
    container: kind === "container" && !packless.has(found.unit) ? found.unit : null,
    pack: null,
    level: kind === "volume" || kind === "vague" ? level : null,
  };
};

const isMeasured = (amount: Amount): boolean =>
  ["mass", "volume"].includes(measureKind(amount.unit ?? "") ?? "");

/** The first amount and the second, or (sign -1) the first without the second, in the unit of the first; null when they cannot be so counted. */
const inUnitOf = (first: Amount, second: Amount, region: Region, sign: 1 | -1 = 1): Amount | null => {
  const a = measureFor(first.unit ?? "", region, null);
  const b = measureFor(second.unit ?? "", region, null);
  if (a === null || b === null || a.kind !== b.kind || a.size === null || b.size === null) return null;
  if (a.kind !== "mass" && a.kind !== "volume") return null;
  const factor = (sign * b.size.likely) / a.size.likely;
  if (first.low + second.high * factor <= 0) return null;
  return {
    ...first,
    low: first.low + (sign > 0 ? second.low : second.high) * factor,
    likely: first.likely + second.likely * factor,
    high: first.high + (sign > 0 ? second.high : second.low) * factor,
    span: { start: first.span.start, end: second.span.end },
  };
};

/** Reads the amounts that stand at a token, with sums, ranges and second measures. Null when there is none. */
export const readAmounts = (tokens: readonly Token[], start: number, region: Region): AmountsRead | null => {
  const one = readOne(tokens, start, region);
  if (one === null) return null;
  let { next } = one;
  let amount = one.amount;
  const amounts: Amount[] = [];
  let each = false;
  for (;;) {
    const joint = lowerAt(tokens, next);
    const rangeJoint = joint === "to" || isDash(tokens[next]);
    if (joint === "or" && orSo.test(lowerAt(tokens, next + 1))) {
      amount = { ...amount, approximate: true };
      next += 2;
      continue;
    }
    if (
      joint === "or" &&
      ["two", "three"].includes(lowerAt(tokens, next + 1)) &&
      readUnit(tokens, next + 2) === null
    ) {
      const high = lowerAt(tokens, next + 1) === "two" ? 2 : 3;
      if (amount.high < high)
        amount = {
          ...amount,
          high,
          likely: (amount.low + high) / 2,
          span: { ...amount.span, end: tokens[next + 1]?.end ?? amount.span.end },
        };
      next += 2;
      continue;
    }
    if (joint === "each" || joint === "apiece") {
      each = true;
      next += 1;
      continue;
    }
    const sums = joint === "+" || joint === "plus" || joint === "and" || joint === "&";
    const less = joint === "minus" || joint === "less";
    const second = joint === "/" || joint === "or" || joint === "=";
    const adjacent = tokens[next]?.kind === "number" && measureKind(amount.unit ?? "") === "mass";
    if (!(rangeJoint || sums || less || second || adjacent)) break;
    const other = readOne(tokens, adjacent ? next : next + 1, region);
    if (other === null || other.amount.unit === "piece" || other.pack !== null) break;
    if (second && measureKind(other.amount.unit ?? "") === "vague") break;
    if (rangeJoint && other.amount.unit === amount.unit && other.amount.high > amount.high) {
      amount = {
        ...amount,
        likely: (amount.low + other.amount.high) / 2,
        high: other.amount.high,
        span: { start: amount.span.start, end: other.amount.span.end },
      };
      next = other.next;
      continue;
    }
    // "1 cup minus 1 tbsp"
    if (less) {
      const left = inUnitOf(amount, other.amount, region, -1);
      if (left === null) break;
      amount = left;
      next = other.next;
      continue;
    }
    if (sums || adjacent) {
      const total = inUnitOf(amount, other.amount, region);
      if (total === null) {
        // "225 g plus 2 tbsp" cannot be summed without the food; both stand, and are told to differ.
        if (adjacent || !isMeasured(amount) || !isMeasured(other.amount)) break;
        amounts.push(amount);
        amount = other.amount;
        next = other.next;
        continue;
      }
      amount = total;
      next = other.next;
      continue;
    }
    if (!second && !rangeJoint) break;
    amounts.push(amount);
    amount = other.amount;
    next = other.next;
  }
  amounts.push(amount);
  if (one.pack !== null) {
    const total = { ...one.pack };
    const n = one.amount;
    amounts.push({
      ...total,
      low: total.low * n.low,
      likely: total.likely * n.likely,
      high: total.high * n.high,
    });
  }
  return { amounts, next, size: one.size, container: one.container, pack: one.pack, level: one.level, each };
};

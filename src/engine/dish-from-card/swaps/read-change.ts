import { addEstimates, type Estimate, scaleEstimate } from "../../measure/estimate.ts";
import type { Grams } from "../../measure/units.ts";
import type { Amount, Swap } from "../../model/dish.ts";
import type { Need } from "../../model/need.ts";
import type { Words } from "../../model/span.ts";
import { readLine } from "../lines/read-line.ts";
import { weigh } from "../lines/weigh.ts";
import { stem } from "../steps/stem.ts";
import { linesAgainst, linesMeant, type SwapList } from "./swap-list.ts";

/** What a swap takes out and brings in. */
type Change = Pick<Swap, "out" | "comes">;

type Comes = Swap["comes"][number];

const verb = "(?:replace|swap|exchange|change|switch|trade)(?:\\s+out)?";

/** Reads the change that words ask for: "replace X with Y", "use Y instead of X", "leave out X". Null when none is understood. */
export const readChange = (words: Words, needs: readonly Need[], list: SwapList): Change | null => {
  const text = words.text
    .replace(/[.;!?\s]+$/, "")
    // Where it is done, and what else changes, is no part of the change.
    .replace(
      /\s+(?:in (?:both |all )?the (?:\w+ ){0,2}\w+(?: and the \w+)?|throughout|for the whole dish)$/i,
      "",
    )
    .replace(/,?\s+and\s+(?:skip|reduce|cook|bake|cut|shorten|start|miss)\s.+$/i, "");
  const at = (part: string, from = 0): Words => {
    const start = words.span.start + Math.max(0, text.indexOf(part, from));
    return { text: part, span: { start, end: start + part.length } };
  };
  // "The butter can be replaced with oil", "cheddar can be left out"
  const passive =
    /^(.+?)\s+(?:can|may|could|should)\s+(?:also\s+)?be\s+(?:replaced|swapped|exchanged|substituted|switched)\s+(?:with|for|by)\s+(.+)$/i.exec(
      text,
    );
  if (passive?.[1] !== undefined && passive[2] !== undefined)
    return together([one(list, needs, at(passive[1]), at(passive[2], passive[1].length))]);
  const without =
    /^(.+?)\s+(?:can|may|could|should)\s+(?:also\s+)?be\s+(?:left out|omitted|skipped|dropped|left off)$/i.exec(
      text,
    );
  if (without?.[1] !== undefined) {
    const out = meant(list, needs, without[1]);
    return out.length === 0 ? null : { out, comes: [] };
  }
  // "Substitute Y for X", "use Y instead of X", "Y in place of X"
  const turned =
    /^(?:substitute|sub)\s+(.+?)\s+for\s+(.+)$/i.exec(text) ??
    /^(?:use\s+|try\s+|go for\s+|take\s+)?(.+?)\s+(?:instead of|in place of|in lieu of|rather than)\s+(.+)$/i.exec(
      text,
    );
  if (turned?.[1] !== undefined && turned[2] !== undefined) {
    // "Use a gluten-free flour, and tamari instead of the soy sauce": the first goes in for what bears its name.
    const pieces = turned[1].split(/,\s+and\s+|\s+and\s+|,\s+/i);
    const last = pieces.at(-1) ?? turned[1];
    return together([
      ...pieces.slice(0, -1).map((p) => impliedChange(list, needs, at(p))),
      one(
        list,
        needs,
        at(turned[2], turned[1].length),
        at(last, Math.max(0, text.indexOf(turned[1]) + turned[1].length - last.length)),
      ),
    ]);
  }
  // "Use oil for the butter and oat cream for the soured cream"
  const inPlace = /^(?:use|try|take)\s+(.+?\sfor\s.+)$/i.exec(text);
  if (inPlace?.[1] !== undefined) {
    const changes = inPlace[1].split(/,?\s+and\s+(?=.+\sfor\s)|,\s+(?=.+\sfor\s)/i).map((piece) => {
      const cut = /^(.+?)\s+for\s+(.+)$/i.exec(piece);
      return cut?.[1] === undefined || cut[2] === undefined
        ? null
        : one(list, needs, at(cut[2], text.indexOf(piece)), at(cut[1], text.indexOf(piece)));
    });
    const known = together(changes);
    if (known !== null) return known;
  }
  const instead = /^(?:instead of|in place of|rather than)\s+(.+?),?\s+use\s+(.+)$/i.exec(text);
  if (instead?.[1] !== undefined && instead[2] !== undefined)
    return together([one(list, needs, at(instead[1]), at(instead[2]))]);
  const plain = new RegExp(`(?:^|[\\s,])(?:${verb}|substitute|sub)\\s+(.+)$`, "i").exec(text);
  if (plain?.[1] !== undefined) {
    const pairs = pairsOf(plain[1]);
    if (pairs.length > 0)
      return together(
        pairs.map(([out, comes]) => one(list, needs, at(out), at(comes, text.indexOf(out) + out.length))),
      );
  }
  const left =
    /(?:^|[\s,])(?:leave|omit|skip|drop|miss|hold|without|do without|remove|take)\s+(?:out\s+|off\s+)?(.+?)(?:\s+(?:out|off|away|altogether))?$/i.exec(
      text,
    );
  if (left?.[1] !== undefined) {
    const out = meant(list, needs, left[1]);
    return out.length === 0 ? null : { out, comes: [] };
  }
  const use = /(?:^|[\s,])(?:use|try|make it with|works with|buy)\s+(.+?)(?:\s+instead)?$/i.exec(text);
  if (use?.[1] !== undefined) return impliedChange(list, needs, at(use[1]));
  if (needs.length === 0) return null;
  // "No nuts: pumpkin seeds instead", "Halal: beef bacon": the label says what goes.
  const bare = /^(.+?)\s+instead$/i.exec(text)?.[1];
  if (bare !== undefined) {
    const implied = impliedChange(list, needs, at(bare));
    if (implied !== null) return implied;
    const out = linesAgainst(list, needs);
    const comes = out.length === 1 ? comesFrom(list, at(bare), out) : null;
    return comes === null ? null : { out, comes: [comes] };
  }
  return /^[\p{L}\d' -]+$/u.test(text) && text.split(/\s+/).length <= 4 && !orders.test(text)
    ? impliedChange(list, needs, at(text))
    : null;
};

const orders =
  /\b(?:replace|swap|exchange|change|switch|trade|substitute|sub|see|ask|check|serve|leave|omit|skip|drop|cook|make|do)\b/i;

/** "Use gluten-free flour": the line goes that the new food bears the name of. */
const impliedChange = (list: SwapList, needs: readonly Need[], words: Words): Change | null => {
  const comes = comesFrom(list, words, []);
  const out = comes === null ? [] : impliedOut(list, needs, comes.name);
  return comes === null || out.length === 0 ? null : { out, comes: [scaled(comes, list, out, words.text)] };
};

const together = (changes: readonly (Change | null)[]): Change | null => {
  const known = changes.filter((c): c is Change => c !== null);
  if (known.length === 0 || known.length < changes.length) return null;
  return { out: [...new Set(known.flatMap((c) => c.out))], comes: known.flatMap((c) => c.comes) };
};

const separator = /\s+(?:with|for|by|to)\s+/i;

/** "the thighs with squash, and the stock with water" → two pairs; "the trout and the shrimps with beetroot" → one. */
const pairsOf = (text: string): readonly (readonly [string, string])[] => {
  const pieces: string[] = [];
  for (const piece of text.split(/,?\s+and\s+|,\s+/i)) {
    const last = pieces.at(-1);
    if (last !== undefined && (!separator.test(last) || !separator.test(piece))) {
      const from = text.lastIndexOf(last);
      const to = text.indexOf(piece, from + last.length) + piece.length;
      pieces[pieces.length - 1] = text.slice(from, to);
    } else pieces.push(piece);
  }
  const pairs: (readonly [string, string])[] = [];
  for (const piece of pieces) {
    const found = separator.exec(piece);
    if (found === null) return [];
    pairs.push([piece.slice(0, found.index), piece.slice(found.index + found[0].length)]);
  }
  return pairs;
};

const one = (list: SwapList, needs: readonly Need[], gone: Words, new_: Words): Change | null => {
  // "Swap half the walnuts": a swap takes a line whole.
  if (/^(?:half|some|most|part|(?:a|one) (?:third|quarter|little|few))\b/i.test(gone.text.trim()))
    return null;
  const out = meant(list, needs, gone.text);
  const same = /^(?:an?\s+)?([\p{L}-]+)\s+(?:ones?|versions?|alternatives?|equivalents?)$/iu.exec(
    new_.text.trim(),
  )?.[1];
  if (same !== undefined) {
    const own = out.map((i) =>
      comesFrom(list, { ...new_, text: `${same} ${list.ingredients[i]?.name ?? ""}` }, [i]),
    );
    return out.length === 0 || own.some((c) => c === null)
      ? null
      : { out, comes: own.filter((c): c is Comes => c !== null) };
  }
  // "Each egg with 1 tbsp flaxseed": so many times as there are.
  const pieces =
    list.ingredients[out[0] ?? -1]?.amounts.find((a) => a.unit === "piece" || a.unit === null)?.likely ?? 1;
  if (/^(?:each|every|one|per)\b/i.test(gone.text.trim()) && out.length === 1 && pieces > 1) {
    const each = comesFrom(list, new_, out);
    return each === null ? null : { out, comes: [timesAsMuch(each, pieces)] };
  }
  const comes = comesFrom(list, new_, out);
  return out.length === 0 || comes === null ? null : { out, comes: [comes] };
};

/** The lines meant; "it", "them" and the like mean what stands against the need. */
const meant = (list: SwapList, needs: readonly Need[], words: string): readonly number[] =>
  /^(?:it|them|these|those|that|this)$/i.test(words.trim())
    ? linesAgainst(list, needs)
    : linesMeant(list, words);

/** "use gluten-free flour": what stands against the need and bears the same head word; else the one line that does. */
const impliedOut = (list: SwapList, needs: readonly Need[], name: string): readonly number[] => {
  const against = linesAgainst(list, needs);
  const head = stem(name.toLowerCase().split(/\s+/).at(-1) ?? "");
  const bears = (i: number, word: string): boolean =>
    list.ingredients[i]?.name.toLowerCase().split(/\s+/).map(stem).includes(word) === true;
  const alike = against.filter((i) => bears(i, head));
  if (alike.length > 0) return alike;
  // "a gluten-free flour blend": the food stands before the last word.
  const words = name
    .toLowerCase()
    .split(/[\s-]+/)
    .map(stem);
  const within = against.filter((i) => words.some((w) => w.length > 3 && bears(i, w)));
  if (within.length > 0) return within;
  // "Use pasteurised eggs": no rule is against eggs for this guest, but only one line bears the name.
  const named = needs.length === 0 ? [] : list.ingredients.map((i) => i.index).filter((i) => bears(i, head));
  if (named.length === 1) return named;
  return against.length === 1 ? against : [];
};

const timesAsMuch = (comes: Comes, factor: number): Comes => ({
  ...comes,
  grams: comes.grams === null ? null : scaleEstimate(comes.grams, factor),
  amounts: comes.amounts.map((a) => ({
    ...a,
    low: a.low * factor,
    likely: a.likely * factor,
    high: a.high * factor,
  })),
});

const sameWeight =
  /^(?:the\s+|an?\s+)?(?:same|equal|equivalent)\s+(?:weight|amount|quantity|volume|number)(?:\s+of)?\s+/i;
const part =
  /^(half|twice|double|a third|two thirds|three quarters|a quarter)\s+(?:of\s+)?(?:the|its|their)\s+(?:weight|amount|quantity)(?:\s+of|\s+in)?\s+/i;

const factors: Readonly<Record<string, number>> = {
  half: 1 / 2,
  twice: 2,
  double: 2,
  "a third": 1 / 3,
  "two thirds": 2 / 3,
  "three quarters": 3 / 4,
  "a quarter": 1 / 4,
};

const comesFrom = (list: SwapList, words: Words, out: readonly number[]): Comes | null => {
  const same = sameWeight.exec(words.text);
  const share = part.exec(words.text);
  const skip = (same ?? share)?.[0].length ?? 0;
  const rest = words.text.slice(skip).replace(/\s*,?\s*(?:if you like|instead|and proceed as usual)$/i, "");
  const [reading] = readLine(rest, list.region);
  if (reading === undefined || reading.name.trim() === "") return null;
  const offset = words.span.start + skip;
  const amounts: readonly Amount[] =
    same !== null || share !== null
      ? []
      : reading.amounts.map((a) => ({
          ...a,
          span: { start: a.span.start + offset, end: a.span.end + offset },
        }));
  // "half the weight" of what has no weight says nothing.
  if (share !== null && out.length > 0 && partOf(list, out, share[1] ?? "") === null) return null;
  const grams =
    share !== null
      ? partOf(list, out, share[1] ?? "")
      : amounts.length > 0
        ? (weigh(reading, list.region).best?.grams ?? null)
        : null;
  return { food: reading.food?.id ?? null, name: reading.name, grams, amounts };
};

const scaled = (comes: Comes, list: SwapList, out: readonly number[], words: string): Comes => {
  const share = part.exec(words);
  return share === null ? comes : { ...comes, grams: partOf(list, out, share[1] ?? "") };
};

/** A part of what goes out, by weight; null when its weight is not known. */
const partOf = (list: SwapList, out: readonly number[], word: string): Estimate<Grams> | null => {
  const factor = factors[word.toLowerCase()];
  const weights = out.map((i) => list.ingredients[i]?.grams ?? null);
  if (factor === undefined || weights.length === 0 || weights.some((w) => w === null)) return null;
  return weights
    .filter((w): w is Estimate<Grams> => w !== null)
    .map((w) => scaleEstimate(w, factor))
    .reduce(addEstimates);
};

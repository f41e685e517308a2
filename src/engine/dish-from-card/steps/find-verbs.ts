import { techniqueById, type VerbReading, verbReadings } from "../../larder/techniques.ts";
import { isOrder } from "./is-order.ts";
import { feeds, leavesOn, saysHowItIs, takesTime } from "./no-order.ts";
import { numberAt } from "./number-at.ts";
import { isTimeWord } from "./read-length.ts";
import { terseAt } from "./terse-verbs.ts";
import type { Token } from "./tokens.ts";
import type { VerbHit } from "./verb-hit.ts";
import { before, isBase, negations, placeFollows, readingAt, word } from "./verb-reading.ts";
import { talkAt } from "./verbless-talk.ts";
import { wishedAt } from "./wished-for.ts";
import {
  beings,
  determiners,
  joints,
  nounVerbs,
  prepositions,
  subordinators,
  weakVerbs,
} from "./word-sets.ts";

const lettingVerbs = new Set(["let", "leave", "allow"]);
const lettingForms = new Set([...lettingVerbs, "leaves", "left"]);

/** "let it bubble": the second verb and the place behind it; null when there is none. */
const letWhat = (tokens: readonly Token[], i: number): { reading: VerbReading; to: number } | null => {
  for (let at = i + 1; at < Math.min(tokens.length, i + 9); at += 1) {
    const here = word(tokens, at);
    if (
      (subordinators.has(here) && !(here === "that" && at === i + 1)) ||
      /^[,:()]$/.test(here) ||
      here === "for"
    )
      return null;
    const prev = word(tokens, at - 1);
    if (prev === "the" || prev === "a" || prev === "your" || prepositions.has(prev)) {
      if (prev !== "to") continue;
    }
    // "Leave somewhere warm": a place, and nobody warms it.
    if (here === "warm" && /^(somewhere|place|spot|nice|nicely|it|the)$/.test(prev)) continue;
    const hit = readingAt(tokens, at, isBase);
    if (hit === null) continue;
    if (hit.reading.technique.id === "use" || here === "it" || here === "all") continue;
    if (
      at === i + 1 ||
      prev === "to" ||
      prev === "it" ||
      prev === "them" ||
      !nounVerbs.has(here) ||
      /^(rest|cool|stand|sit|boil|simmer|rise|cook|set|bubble|prove|steam|proof)$/.test(here)
    )
      return hit;
  }
  return null;
};

// "Keep stirring", "start frying": a verb may follow that says the work.
const leadingVerbs = new Set("keep start begin continue try avoid stop".split(" "));

const letMeaning: Readonly<Record<string, string>> = {
  put: "stand",
  set: "set-gel",
  reduce: "reduce",
  go: "stand",
  take: "stand",
  stir: "stand",
  do: "stand",
};

/** Every order of a sentence, in order. `isFood` says whether a listed or known food starts at a place. */
export const findVerbs = (tokens: readonly Token[], isFood: (i: number) => boolean): readonly VerbHit[] => {
  const hits: VerbHit[] = [];
  let cueFrom = -1;
  for (let i = 0; i < tokens.length; i += 1) {
    const here = word(tokens, i);
    // "If desired" and the like close with their own word.
    if (
      here === "if" &&
      /^(desired|liked|needed|necessary|using|wanted|preferred|required|possible)$/.test(word(tokens, i + 1))
    )
      continue;
    // "… while you toast the bread": the second order goes on beside the first.
    if (
      (here === "while" || here === "whilst") &&
      i > 0 &&
      hits.length > 0 &&
      /^(you|we|i)$/.test(word(tokens, i + 1))
    )
      continue;
    // "Peel while hot and slice" closes with its own word.
    if (here === "while" && /^(hot|warm|cold)$/.test(word(tokens, i + 1)) && joints.has(word(tokens, i + 2)))
      continue;
    if (subordinators.has(here) && !(here === "that" && isPronoun(tokens, i))) {
      cueFrom = i;
      continue;
    }
    if (here === "," || here === "(" || here === ")") {
      // "until soft, then …" ends the cue; "until soft, golden and crisp" does not, and holds no orders anyway.
      if (cueFrom >= 0 && word(tokens, cueFrom) !== "until" && word(tokens, cueFrom) !== "till") cueFrom = -1;
    }
    if ((here === "then" || here === "handle") && cueFrom >= 0) cueFrom = -1;
    if (tokens[i]?.kind !== "word") continue;
    const hit = hitAt(tokens, i, hits, cueFrom, isFood);
    if (hit === null) continue;
    hits.push(hit);
    cueFrom = -1;
    i = hit.to - 1;
  }
  const strong = hits.filter((h) => !weakVerbs.has(h.verb) || h.letting);
  // "Usually I use about six": said of habit, and no order.
  return strong.length > 0
    ? strong
    : hits
        .slice(0, 1)
        .filter(
          (h) =>
            !/^(i|we|they|it|people|you|you'll|may|might|well)$/.test(word(tokens, before(tokens, h.at))),
        );
};

/** "After that, …", "give that ten minutes", "that goes in": the word stands for what is in hand. */
const isPronoun = (tokens: readonly Token[], i: number): boolean => {
  const prev = word(tokens, i - 1);
  if (/^(so|sure|check|see|ensure|find|know|feel|is|such)$/.test(prev)) return false;
  return (
    i === 0 ||
    joints.has(prev) ||
    prepositions.has(prev) ||
    /^(after|before|like|all|now|then)$/.test(prev) ||
    (!nounVerbs.has(prev) &&
      !/^(so|too|very|the|an?|your)$/.test(word(tokens, i - 2)) &&
      verbReadings(prev).some((r) => isBase(r) && r.tail.length === 0))
  );
};

const hitAt = (
  tokens: readonly Token[],
  i: number,
  hits: readonly VerbHit[],
  cueFrom: number,
  isFood: (i: number) => boolean,
): VerbHit | null => {
  const here = word(tokens, i);
  const terse = cueFrom < 0 ? terseAt(tokens, i, hits, isFood) : null;
  if (terse !== null) return terse;
  const talk = cueFrom < 0 ? talkAt(tokens, i, hits, isFood) : null;
  if (talk !== null) return talk;
  const readings = verbReadings(here);
  if (readings.length === 0 && !lettingForms.has(here)) return null;
  const wished = cueFrom < 0 ? wishedAt(tokens, i, hits, isFood) : null;
  if (wished !== null) return wished;
  if (saysHowItIs(tokens, i)) return null;
  // "Keep it boiling" tells how it is held; with a length ("leave it ticking away for an hour") it is the work.
  if (here === "keep" || here === "leave") {
    // "Keep it just under boiling point" is a heat, and no going on.
    const point = tokens.slice(i + 1, i + 8).some((t) => t.text === "point");
    const going = point ? null : goingOn(tokens, i);
    if (going !== null && times(tokens, going.to))
      return { ...said(i, going, false), to: going.to, letting: true };
    if (going !== null && here === "keep") return null;
  }
  // "Leave the stalks on", "leave the skin on": nothing stands.
  if (here === "leave" && leavesOn(tokens, i)) return null;
  // "Have everything at room temperature."
  if (
    /^(have|get)$/.test(here) &&
    tokens.slice(i + 1, i + 7).some((t, k) => t.text === "room" && word(tokens, i + 2 + k) === "temperature")
  )
    return null;
  // "Set a timer for 20 minutes" says how long what was begun goes on.
  if (
    (here === "set" || here === "start" || here === "put") &&
    tokens.slice(i + 1, i + 5).some((t) => /^(timer|clock|alarm)$/.test(t.text))
  )
    return null;
  // "keep stirring", "continue cooking": the second verb says what is done.
  if (
    leadingVerbs.has(here) &&
    verbReadings(word(tokens, i + 1)).some(
      (r) => r.form === "ing" || (r.form === "base" && here === "continue"),
    )
  )
    return null;

  if (readings.some(isBase) && isOrder(tokens, i, hits, cueFrom, isFood)) {
    if (lettingVerbs.has(here)) {
      const full = readingAt(tokens, i, (r) => r.form === "base" && r.tail.length > 0);
      // "let it bubble right down" bubbles; "let it down with milk" is one verb.
      const around =
        full !== null &&
        full.reading.tail.length === 1 &&
        // "Leave it to rest": the verb that follows says what it is left for.
        (full.to > i + 2 || (full.reading.tail[0] === "it" && word(tokens, full.to) === "to"));
      const inner = full === null || around ? letWhat(tokens, i) : null;
      const second =
        full === null || (inner !== null && (inner.to <= full.to || full.reading.tail[0] === "it"))
          ? inner
          : null;
      if (second !== null) {
        // "Let it drop to 58."
        const falls = /^(drop|fall)$/.test(second.reading.verb);
        const id = falls ? "cool" : letMeaning[second.reading.technique.id];
        const technique = (id === undefined ? null : techniqueById(id)) ?? second.reading.technique;
        return { at: i, to: second.to, technique, verb: second.reading.verb, letting: true, passive: false };
      }
      const stand = full?.reading.technique ?? techniqueById("stand");
      return stand === null
        ? null
        : {
            at: i,
            to: full?.to ?? i + 1,
            technique: stand,
            verb: full?.reading.verb ?? here,
            letting: true,
            passive: false,
          };
    }
    const found = readingAt(tokens, i, isBase);
    if (
      found === null ||
      (here === "keep" &&
        /^(an|in)$/.test(word(tokens, i + 1)) &&
        /^(eye|mind)$/.test(word(tokens, i + 2))) ||
      (here === "run" &&
        /^(a|an|your)$/.test(word(tokens, i + 1)) &&
        !/^(mixer|machine|blender|processor)$/.test(word(tokens, i + 2))) ||
      (here === "take" && takesTime(tokens, i)) ||
      (here === "do" && feeds(tokens, i)) ||
      (/^(start|begin)$/.test(here) && /^(by|with|the|off|to)$/.test(word(tokens, i + 1)))
    )
      return null;
    // "Get the ribs in a pot" puts them there.
    const put = here === "get" && found.reading.technique.id === "use" ? techniqueById("put") : null;
    const into = tokens.findIndex((t, k) => k > i + 1 && k < i + 8 && /^(in|into|on)$/.test(t.text));
    if (put !== null && into > 0 && placeFollows(tokens, into + 1))
      return { at: i, to: found.to, technique: put, verb: "put", letting: false, passive: false };
    return said(i, found, false);
  }

  const prevAt = before(tokens, i);
  const prev = word(tokens, prevAt);
  // "start frying", "keep stirring", "by simmering"
  if (
    readings.some((r) => r.form === "ing") &&
    /^(keep|start|begin|continue|by|started|starting|on|finish)$/.test(prev) &&
    cueFrom < 0 &&
    (prev !== "on" || /^(keep|carry|go)$/.test(word(tokens, prevAt - 1)))
  ) {
    const found = readingAt(tokens, i, (r) => r.form === "ing");
    if (found !== null && !negations.has(word(tokens, prevAt - 1))) return said(i, found, false);
  }
  // "the onions are then fried"
  if (
    readings.some((r) => r.form === "past") &&
    beings.has(prev) &&
    cueFrom < 0 &&
    !negations.has(word(tokens, i - 1))
  ) {
    if (/^(it's|they're|that's|is|are|was|were)$/.test(prev) && !passiveIsWork(tokens, i)) return null;
    // "It's done at 63" says when.
    if (here === "done") return null;
    const found = readingAt(tokens, i, (r) => r.form === "past");
    if (found !== null) return said(i, found, true);
  }
  // "this goes in the oven", "it simmers for an hour"
  if (
    readings.some((r) => r.form === "third") &&
    cueFrom < 0 &&
    prevAt >= 0 &&
    (hits.length === 0 ||
      (/^(it|this|that|everything|everyone)$/.test(prev) &&
        joints.has(word(tokens, before(tokens, prevAt))))) &&
    !(here === "does" && feeds(tokens, i)) &&
    !(here === "takes" && takesTime(tokens, i)) &&
    spokenSubject(tokens, i)
  ) {
    const found = readingAt(tokens, i, (r) => r.form === "third");
    if (found !== null) return said(i, found, true);
  }
  return null;
};

/** "Keep it boiling", "leave that ticking away": the second verb, a short object between them. */
const goingOn = (
  tokens: readonly Token[],
  i: number,
): { readonly reading: VerbReading; readonly to: number } | null => {
  for (let at = i + 1; at < i + 5; at += 1) {
    if (joints.has(word(tokens, at))) return null;
    if (at === i + 1 || !/ing$/.test(word(tokens, at))) continue;
    if (/^(the|an?|your|any|some)$/.test(word(tokens, at - 1))) continue;
    const reading = readingAt(tokens, at, (r) => r.form === "ing");
    if (reading !== null) return reading;
  }
  return null;
};

/** A unit of time stands behind a place, before the next order. */
const times = (tokens: readonly Token[], from: number): boolean => {
  for (let at = from; at < Math.min(tokens.length, from + 9); at += 1) {
    if (/^([,;:]|and then|then|until|till)$/.test(word(tokens, at))) return false;
    if (isTimeWord(word(tokens, at))) return true;
  }
  return false;
};

/** A verb as it is said, from the place `at` on. */
const said = (
  at: number,
  { reading, to }: { readonly reading: VerbReading; readonly to: number },
  passive: boolean,
): VerbHit => ({ at, to, technique: reading.technique, verb: reading.verb, letting: false, passive });

// "The onions are fried for 10 minutes" is work; "the cake is cooked" is a state.
const passiveIsWork = (tokens: readonly Token[], i: number): boolean =>
  word(tokens, i - 1) === "then" ||
  word(tokens, i - 1) === "now" ||
  tokens
    .slice(i + 1, i + 5)
    .some((t) => prepositions.has(t.text) || t.text === "together" || t.text === "and") ||
  /^(being|be|get|gets)$/.test(word(tokens, i - 1));

const spokenSubject = (tokens: readonly Token[], i: number): boolean => {
  // "It all blips away for another ten."
  const next = word(tokens, /^(away|along|gently|happily|slowly)$/.test(word(tokens, i + 1)) ? i + 2 : i + 1);
  const goes = /^(goes|comes)$/.test(word(tokens, i));
  if (goes) return /^(in|into|on|under|back|to|over)$/.test(next);
  const first = word(tokens, 0) === "and" || word(tokens, 0) === "then" ? word(tokens, 1) : word(tokens, 0);
  return (
    (determiners.has(first) || /^(it|they|that|this|everything)$/.test(first)) &&
    i <= 6 &&
    (next === "for" ||
      next === "in" ||
      next === "until" ||
      next === "till" ||
      next === "at" ||
      next === "overnight" ||
      numberAt(tokens, i + 1) !== null)
  );
};

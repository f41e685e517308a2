import { numberAt } from "./number-at.ts";
import { isDash, isTimeWord, type Length, text } from "./read-length.ts";
import type { Token } from "./tokens.ts";

type Bare = Length & { readonly kind: "more" | "interval" | "last" | "wait" | "side" | null };

/** True for a word behind which cooks leave out "minutes": "give it ten", "for twenty", "every five". */
export const leadsToBare = (word: string): boolean => leads.has(word);

const leads = new Set(
  "for give another further every last final after max tops side rest lid knead prove simmer stand boil soak infuse".split(
    " ",
  ),
);

// Work that takes a length of time: "bake for 25" is minutes, "enough for 25" are people.
const takesTime =
  /^(bake|roast|cook|fry|simmer|boil|poach|steam|grill|rest|leave|let|prove|proof|chill|stand|sit|braise|stew|blanch|sear|brown|sweat|knead|whisk|beat|marinate|soak|infuse|steep|cool|microwave|blitz|reduce|toast|bubble|blip|tick|griddle|saute|soften|oven|grill|fridge|freezer|bakes|roasts|cooks|goes|hob|heat|parboil|barbecue|crisp|melt|confit|smoke|freeze|in|back)$/;

const people = /^(people|of|portions?|servings?|guests|covers|you|us|the|each|a|an)$/;

/** What may stand behind a bare number of minutes. */
const closes = (tokens: readonly Token[], at: number): boolean => {
  const after = tokens[at];
  if (after === undefined) return true;
  if (after.kind === "mark") return !/^[°º˚/%"”″'’]$/.test(after.text);
  return /^(or|until|till|til|and|then|at|in|max|tops|more|if|with|covered|uncovered|on|over|while|turning|stirring|so|to|each|per|a|minimum|tightly|under|before|without|lid)$/.test(
    after.text,
  );
};

/** A number of minutes without its unit ("bake for 25-30", "give it another ten", "every five"); null for none. */
export const bareMinutes = (tokens: readonly Token[], i: number): Bare | null => {
  const figure = numberAt(tokens, i);
  if (figure === null || figure.value < 2 || figure.value > 120) return null;
  const side = sideBehind(tokens, figure.next);
  if (side > 0 && tokens.slice(0, i).some((t) => takesTime.test(t.text)))
    return { low: figure.value, likely: figure.value, high: figure.value, next: figure.next, kind: "side" };
  // Halves and quarters are of something else.
  if (figure.value % 0.5 !== 0 || text(tokens, figure.next + 1) === "a") return null;
  const kind = leadOf(tokens, i);
  if (kind === undefined) return null;
  let { next } = figure;
  let high = figure.value;
  const joined = /^(to|or)$/.test(text(tokens, next)) || isDash(text(tokens, next));
  const second = joined ? numberAt(tokens, next + 1) : null;
  if (second !== null && second.value > figure.value && second.value <= 120) {
    high = second.value;
    next = second.next;
  }
  if (!closes(tokens, next) || isTimeWord(text(tokens, next))) return null;
  if (people.test(text(tokens, next)) && !/^(each|a)$/.test(text(tokens, next))) return null;
  return { low: figure.value, likely: (figure.value + high) / 2, high, next, kind };
};

/** "Ten a side", "four on each side": how many words say so; 0 for none. */
const sideBehind = (tokens: readonly Token[], at: number): number => {
  const start = text(tokens, at) === "on" ? at + 1 : at;
  return /^(a|an|per|each|either)$/.test(text(tokens, start)) && /^sides?$/.test(text(tokens, start + 1))
    ? 2
    : 0;
};

/** What the words before a bare number make of it; undefined when they make it no time, null for a plain length. */
const leadOf = (tokens: readonly Token[], i: number): Bare["kind"] | undefined => {
  let at = i - 1;
  while (
    /^(about|around|only|just|roughly|maybe|say|at|least|good|full|say|max|perhaps)$/.test(text(tokens, at))
  )
    at -= 1;
  const article = /^an?$/.test(text(tokens, at));
  if (article) at -= 1;
  const lead = text(tokens, at);
  const earlier = tokens.slice(0, Math.max(0, at)).map((t) => t.text);
  const working = earlier.some((w) => takesTime.test(w)) || earlier.some((w) => w === "give");
  switch (lead) {
    case "another":
    case "further":
      return /^(for|it|them|a|that|then|and|,)$/.test(text(tokens, at - 1)) ||
        takesTime.test(text(tokens, at - 1)) ||
        given(tokens, at)
        ? "more"
        : undefined;
    case "for":
      return working && !earlier.some((w) => /^(serve|serves|enough|makes|divide|plates?)$/.test(w))
        ? null
        : undefined;
    case "every":
      return tokens[at - 1]?.kind === "number" ? undefined : "interval";
    case "last":
    case "final":
      return text(tokens, at - 1) === "the" && (working || /^(for|in)$/.test(text(tokens, at - 2)))
        ? "last"
        : undefined;
    case "after":
      return /ing$/.test(text(tokens, at - 1)) || at === 0 || text(tokens, at - 1) === "check"
        ? "wait"
        : undefined;
    default:
      return given(tokens, at) || standsAlone(tokens, i, at) || closesCue(tokens, i, at) ? null : undefined;
  }
};

/** "Cook it down till the fat comes out, about ten." */
const closesCue = (tokens: readonly Token[], i: number, at: number): boolean =>
  tokens[i]?.kind === "word" &&
  at < i - 1 &&
  text(tokens, at) === "," &&
  tokens[numberAt(tokens, i)?.next ?? i] === undefined &&
  tokens.slice(0, at).some((t) => /^(till|until|'til|til)$/.test(t.text));

const goesOnAlone = /^(rest|knead|prove|simmer|stand|boil|lid|covered|steep|soak|infuse)$/;

/** "Knead ten minutes, rest five, knead five", "off the heat, lid on, ten": a number in words that closes what goes on by itself. */
const standsAlone = (tokens: readonly Token[], i: number, lead: number): boolean => {
  // "Simmer 15, cool to 80 °C."
  const terse = lead === 0 && goesOnAlone.test(text(tokens, lead)) && text(tokens, lead) !== "boil";
  if ((tokens[i]?.kind !== "word" && !terse) || lead !== i - 1) return false;
  const end = tokens[numberAt(tokens, i)?.next ?? i];
  if (end !== undefined && !/^[,.;]$/.test(end.text)) return false;
  const comma = text(tokens, lead) === "," ? lead - 1 : lead;
  return (
    goesOnAlone.test(text(tokens, comma)) ||
    (text(tokens, comma) === "on" && text(tokens, comma - 1) === "lid")
  );
};

/** "Give it ten", "give the onions a good ten". */
const given = (tokens: readonly Token[], at: number): boolean => {
  for (let k = at; k >= Math.max(0, at - 4); k -= 1) {
    if (tokens[k]?.kind !== "word") return false;
    if (text(tokens, k) === "give") return k < at;
  }
  return false;
};

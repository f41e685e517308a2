import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";
import { word } from "./verb-reading.ts";
import { joints } from "./word-sets.ts";

/** "Core temperature 98 °C", "it's set at 75", "let the steam off", "a quarter of an hour": no work on the food. */
export const saysHowItIs = (tokens: readonly Token[], i: number): boolean => {
  const here = word(tokens, i);
  const next = word(tokens, i + 1);
  if (/^(quarter|half)$/.test(here) && next === "of") return true;
  // "50 minutes, skewer clean", "until a skewer comes out clean".
  if (here === "skewer" && /^(clean|comes?|should|inserted|poked|pushed|out)$/.test(next)) return true;
  // "Top and bottom heat."
  if (here === "top" && next === "and" && word(tokens, i + 2) === "bottom") return true;
  if (here === "hang" && /^(on|onto)$/.test(next)) return true;
  // "It wants to keep its crunch."
  if (/^(keep|lose)$/.test(here) && /^(its|their|the)$/.test(next) && word(tokens, i - 1) === "to")
    return true;
  // "Wet veg makes a runny pickle."
  if (here === "wet" && tokens.slice(i + 2, i + 4).some((t) => /^(makes?|is|are|means)$/.test(t.text)))
    return true;
  // "… while you do the sauce": that is told elsewhere.
  if (
    /^(do|make)$/.test(here) &&
    word(tokens, i - 1) === "you" &&
    /^(while|whilst|as)$/.test(word(tokens, i - 2))
  )
    return true;
  if (here === "core")
    return /^(temperature|temp|at|of|should|reads?|about)$/.test(next) || tokens[i + 1]?.kind === "number";
  if (/^(set|done|cooked)$/.test(here) && /^(it's|they're|is|are)$/.test(word(tokens, i - 1)))
    return /^(at|when|once|by)$/.test(next);
  return (
    here === "let" &&
    word(tokens, i + 1) === "the" &&
    tokens
      .slice(i + 1, i + 4)
      .some((t, k) => t.text === "steam" && /^(off|out)$/.test(word(tokens, i + 2 + k)))
  );
};

/** "Leave the stalks on", "leave a bit of the skin on". */
export const leavesOn = (tokens: readonly Token[], i: number): boolean => {
  for (let at = i + 2; at < i + 7; at += 1) {
    const here = word(tokens, at);
    if (here === "" || joints.has(here)) return false;
    if (/^(on|attached|intact|whole)$/.test(here)) {
      const next = word(tokens, at + 1);
      return next === "" || joints.has(next);
    }
  }
  return false;
};

/** "It will do six of us": for how many. */
export const feeds = (tokens: readonly Token[], i: number): boolean => {
  if (!/^(it|this|that|they|it'll|that'll|this'll|they'll|will|should)$/.test(word(tokens, i - 1)))
    return false;
  const at = /^(about|around|roughly|for)$/.test(word(tokens, i + 1)) ? i + 2 : i + 1;
  const number = numberAt(tokens, at);
  return number !== null && /^(|of|people|or|to|-|[.,;!)])$/.test(word(tokens, number.next));
};

/** "This should take about 20 minutes" says how long and orders nothing. */
export const takesTime = (tokens: readonly Token[], i: number): boolean => {
  const next = word(tokens, i + 1);
  return /^(about|around|longer|some|up|between|a|an|at|approximately|roughly|from|only|quite|time|care)$/.test(
    next,
  )
    ? tokens
        .slice(i + 1, i + 7)
        .some((t) => /^(min|mins|minutes?|hours?|hrs?|seconds?|time|longer|while|days?|care)$/.test(t.text))
    : numberAt(tokens, i + 1) !== null &&
        tokens
          .slice(i + 1, i + 6)
          .some((t) => /^(min|mins|minutes?|hours?|hrs?|seconds?|days?)$/.test(t.text));
};

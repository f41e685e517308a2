import type { Clause } from "./clauses.ts";

/** Some word of a clause fits. */
export const has = (clause: Clause, pattern: RegExp): boolean =>
  clause.tokens.some((t) => pattern.test(t.text));

/** A length of time is stated, and no mere wait. */
export const hasLength = (clause: Clause): boolean => clause.times.some((t) => t.kind !== "wait");

/** "Drop it to a tick", "bring it back to a gentle simmer for an hour": the heat that is left; null for none. */
export const toSimmer = (clause: Clause): string | null => {
  const kept = /^(keep|hold|leave|let)\b/.test(clause.hit?.verb ?? "");
  if (!kept && !/^(drop|knock|take|turn|pull|lower|reduce|bring|put|go|set)/.test(clause.hit?.verb ?? ""))
    return null;
  const to = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbAt &&
      t.text === (kept ? "at" : "to") &&
      /^(an?|the|barely)$/.test(clause.tokens[i + 1]?.text ?? ""),
  );
  if (to < 0 || to > clause.verbAt + 7) return null;
  const heat = clause.tokens
    .slice(to + 2, to + 5)
    .find((t) => /^(simmer|tick|blip|murmur|whisper|putter|bubble)$/.test(t.text));
  if (heat === undefined) return null;
  if (hasLength(clause)) return "simmer";
  return /^bring/.test(clause.hit?.verb ?? "") ? "bring-to-simmer" : "adjust-heat";
};

/** "Drop it to 160 for an hour", "knock the oven down to 150": what stands in the oven goes on at another heat; null for none. */
export const toFigure = (clause: Clause, id: string): string | null => {
  const [setting] = clause.settings;
  const verb = clause.hit?.verb ?? "";
  // "Whack the heat up", "knock the gas down a touch"
  const fire = clause.tokens[clause.verbTo + 1]?.text ?? "";
  if (
    /^(whack|crank|put|bring|take|pull|knock|drop|turn|get)$/.test(verb) &&
    clause.tokens[clause.verbTo]?.text === "the" &&
    /^(heat|gas|flame|fire)$/.test(fire) &&
    has(clause, /^(up|down|right|back)$/) &&
    !hasLength(clause)
  )
    return "adjust-heat";
  if (
    setting === undefined ||
    setting.from < clause.verbTo ||
    setting.celsius < 100 ||
    clause.mentions.length > 0
  )
    return null;
  if (!/^(drop|knock|pull|bring|take|crank|whack|raise|lower|reduce|increase|turn|get|go|put)\b/.test(verb))
    return null;
  if (has(clause, /^(oil|fat|sugar|syrup|caramel|milk|water|fryer|in|into)$/)) return null;
  const between = clause.tokens.slice(clause.verbTo, setting.from).map((t) => t.text);
  const plain = between.every((w) =>
    /^(it|them|that|this|the|oven|heat|temperature|gas|down|up|back|right|to|about|around|a|bit|then)$/.test(
      w,
    ),
  );
  if (!plain || between.length > 6) return null;
  // "Get the oven to 220": it is made hot, and not turned.
  if (
    /^(get|bring|put|take|set|go)$/.test(verb) &&
    between.includes("oven") &&
    !between.some((w) => /^(down|back|right|heat|temperature)$/.test(w))
  )
    return "preheat";
  const on = between.includes("oven") && between.includes("up");
  if (/^(preheat|make)$/.test(id) || (on && id !== "adjust-heat")) return null;
  if (
    /^(get|go|put|take|bring)$/.test(verb) &&
    !between.some((w) => /^(down|up|back|oven|heat)$/.test(w)) &&
    verb !== "take" &&
    verb !== "bring"
  )
    return null;
  return hasLength(clause) ? "bake" : "adjust-heat";
};

/** "In the water bath at 56", "sous vide". */
export const isWaterBath = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      (t.text === "water" && /^(bath|oven)$/.test(clause.tokens[i + 1]?.text ?? "")) ||
      t.text === "sous-vide" ||
      (t.text === "sous" && clause.tokens[i + 1]?.text === "vide"),
  ) && clause.settings.some((t) => t.celsius < 95);

/** "In a low oven to keep them warm." */
export const keepsWarm = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      t.text === "keep" &&
      clause.tokens.slice(i + 1, i + 6).some((w) => /^(warm|hot)$/.test(w.text)) &&
      i > clause.verbAt,
  );

/** "Plunge into boiling salted water": what goes in is blanched, or boiled where it stays longer. */
export const inBoilingWater = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      t.text === "water" &&
      i > clause.verbAt &&
      clause.tokens.slice(Math.max(0, i - 2), i).some((w) => w.text === "boiling") &&
      clause.tokens.slice(Math.max(0, i - 4), i).some((w) => /^(in|into)$/.test(w.text)) &&
      !clause.tokens.slice(Math.max(0, i - 4), i).some((w) => /^(of|bowl|jug|basin)$/.test(w.text)),
  );

/** "Beans go in plenty of cold water the night before": they are left to soak. */
export const inColdWater = (clause: Clause): boolean =>
  clause.times.some((t) => t.kind === "length" && t.minutes.likely >= 60) &&
  clause.tokens.some(
    (t, i) =>
      t.text === "water" &&
      clause.tokens.slice(Math.max(0, i - 4), i).some((w) => /^(cold|plenty|fresh|lots)$/.test(w.text)),
  );

/** "Take the oil up to 55", "bring the milk to 80": it is heated, or left to cool. */
export const takenTo = (clause: Clause): string | null => {
  const [setting] = clause.settings;
  if (setting === undefined || setting.from < clause.verbTo) return null;
  // "Bring it down to 43": what is in hand cools.
  const down = clause.tokens.some((t, i) => i >= clause.verbAt && i < setting.from && t.text === "down");
  if (clause.mentions.length === 0)
    return down && setting.celsius < 70 && /^(take|bring|get|let)\b/.test(clause.hit?.verb ?? "")
      ? "cool"
      : null;
  if (!/^(take|bring|get|carry)\b/.test(clause.hit?.verb ?? "") || clause.station !== null) return null;
  let at = setting.from - 1;
  while (/^(about|around|just|roughly)$/.test(clause.tokens[at]?.text ?? "")) at -= 1;
  if (clause.tokens[at]?.text !== "to") return null;
  return clause.tokens[at - 1]?.text === "down" ? "cool" : "heat";
};

/** "Cut a circle of paper" */
const cutsPaper = (clause: Clause, id: string): boolean =>
  /^(cut|fold)$/.test(id) &&
  clause.tokens
    .slice(clause.verbTo, clause.verbTo + 5)
    .some((t) => /^(paper|parchment|foil|cartouche)$/.test(t.text));

/** "Stand the jars in the oven to sterilise", "wash the jars", "cut a circle of paper": no food is in hand. */
export const onJars = (clause: Clause, id: string): boolean => {
  if (clause.mentions.length > 0) return false;
  if (cutsPaper(clause, id)) return true;
  if (
    !/^(wash|sterilise|pat-dry|warm|heat)$/.test(id) &&
    !(/^(put|bake)$/.test(id) && has(clause, /^oven$/)) &&
    !(/^(chill|freeze)$/.test(id) && has(clause, /^canister$/))
  )
    return false;
  return clause.tokens.some(
    (t, i) =>
      i > clause.verbAt &&
      i <= clause.verbTo + 3 &&
      /^(jars?|bottles?|canister|glasses|lids)$/.test(t.text) &&
      !/^(in|into|from|of)$/.test(clause.tokens[i - 1]?.text ?? "") &&
      !/^(in|into|from|of)$/.test(clause.tokens[i - 2]?.text ?? ""),
  );
};

/** "Keep warm in a cloth", "hold hot under foil": off every fire. */
export const keptWrapped = (clause: Clause): boolean =>
  clause.tokens.some(
    (t, i) =>
      i > clause.verbAt && /^(cloth|towel|tea-towel|blanket|foil|napkin|thermos|flask|cosy)$/.test(t.text),
  );

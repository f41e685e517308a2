import type { Station } from "../../model/food.ts";
import type { TimePhrase } from "./find-times.ts";
import { numberAt } from "./number-at.ts";
import type { Token } from "./tokens.ts";
import { determiners, joints, prepositions, tools } from "./word-sets.ts";

const word = (tokens: readonly Token[], i: number): string => tokens[i]?.text ?? "";

/** The heat word of a clause as a level: "over a medium-high heat", "on low", "gently". Null when none stands there. */
export const findHeat = (tokens: readonly Token[]): "low" | "medium" | "high" | null => {
  for (let i = 0; i < tokens.length; i += 1) {
    const here = word(tokens, i);
    const next = word(tokens, i + 1);
    if (
      /^(heat|flame|fire|burner|setting|power|gas|boil|simmer)$/.test(next) ||
      (/^(heat|flame|fire)$/.test(word(tokens, i + 2)) && !joints.has(next))
    ) {
      if (/^(low|gentle|slow|medium-low|lowest|tiny|small)$/.test(here)) return "low";
      if (/^(medium|moderate|mid)$/.test(here))
        return next === "-" && word(tokens, i + 2) === "high" ? "high" : "medium";
      if (/^medium-high$/.test(here)) return "high";
      if (/^(high|highest|full|fierce|brisk|strong|hot|rolling|maximum)$/.test(here)) return "high";
    }
    if (/^(on|to|at|over|around)$/.test(here)) {
      if (/^(low|medium-low)$/.test(next) && !/^(speed|oven)$/.test(word(tokens, i + 2))) return "low";
      if (next === "medium" && !/^(speed|oven|sized|bowl|size)$/.test(word(tokens, i + 2)))
        return word(tokens, i + 2) === "high" ||
          (word(tokens, i + 2) === "-" && word(tokens, i + 3) === "high")
          ? "high"
          : "medium";
      if (/^(high|medium-high)$/.test(next) && !/^(speed|oven)$/.test(word(tokens, i + 2))) return "high";
    }
    if (
      /^(gently|slowly)$/.test(here) &&
      tokens.slice(Math.max(0, i - 3), i + 3).some((t) => slowCooking.test(t.text))
    )
      return "low";
  }
  return tokens.some((t, i) => t.text === "heat" && /^(down|low)$/.test(word(tokens, i + 1))) ? "low" : null;
};

// "simmer gently", "gently fry": how the heat is, where nothing else is said of it.
const slowCooking =
  /^(heat|simmer|cook|fry|sweat|saute|poach|bubble|soften|melt|warm|stew|simmering|frying|cooking)$/;

/** "on the lowest heat", "over a flame", "on the heat": the food stands on a burner. */
export const isOnHeat = (tokens: readonly Token[]): boolean =>
  tokens.some((token, i) => {
    if (!/^(heat|flame|ring|gas|fire)$/.test(token.text)) return false;
    for (let at = i - 1; at >= Math.max(0, i - 4); at -= 1) {
      const prev = word(tokens, at);
      if (/^(on|over|at)$/.test(prev)) return true;
      if (joints.has(prev) || /^(from|off|of)$/.test(prev)) return false;
    }
    return false;
  });

type Heard = {
  readonly heat: boolean;
  readonly vessel: boolean;
  readonly batches: boolean;
  readonly minding: boolean;
};

const heatWord =
  /^(heat|flame|fire|burner|setting|power|gas|boil|simmer|low|medium|high|medium-low|medium-high|gently|slowly)$/;
const mindingWord =
  /^(stirring|whisking|stir|turning|shaking|tossing|basting|beating|mixing|whisk|moving|swirling)$/;
const batchWord = /^(batches|lots|goes|stages|additions|instalments)$/;
const sounds = new Map<string, Heard>();

const hear = (text: string): Heard => {
  const known = sounds.get(text);
  if (known !== undefined) return known;
  const heard: Heard = {
    heat: heatWord.test(text),
    vessel: vesselNouns.has(text),
    batches: batchWord.test(text),
    minding: mindingWord.test(text),
  };
  // Words of nobody's language are not kept for ever.
  if (sounds.size > 5000) sounds.clear();
  sounds.set(text, heard);
  return heard;
};

/** Which details the words of a clause may hold, so that the others are not looked for. */
export const heardIn = (tokens: readonly Token[]): Heard => {
  let [heat, vessel, batches, minding] = [false, false, false, false];
  for (const { text } of tokens) {
    const word = hear(text);
    heat ||= word.heat;
    vessel ||= word.vessel;
    batches ||= word.batches;
    minding ||= word.minding;
  }
  return { heat, vessel, batches, minding };
};

const vesselNouns = new Set(
  "pan saucepan pot skillet wok casserole bowl dish tin tray sheet jug jar ramekin ramekins basin mould moulds mold griddle frying-pan cauldron steamer board rack platter plate".split(
    " ",
  ),
);

/** The vessel of a clause, in the cook's words, without its article: "large frying pan". Null when none stands there. */
export const findVessel = (
  tokens: readonly Token[],
): { readonly words: string; readonly at: number } | null => {
  for (let i = 1; i < tokens.length; i += 1) {
    if (!vesselNouns.has(word(tokens, i))) continue;
    if (/^(baking|frying|roasting|mixing|serving|pie|cake|loaf|sauce)$/.test(word(tokens, i))) continue;
    let from = i;
    while (from > 0 && i - from < 4) {
      const prev = word(tokens, from - 1);
      if (
        determiners.has(prev) ||
        prepositions.has(prev) ||
        joints.has(prev) ||
        tokens[from - 1]?.kind === "mark"
      )
        break;
      from -= 1;
    }
    const opener = word(tokens, from - 1);
    if (!determiners.has(opener) && !prepositions.has(opener)) continue;
    return {
      words: tokens
        .slice(from, i + 1)
        .map((t) => t.text)
        .join(" "),
      at: i,
    };
  }
  return null;
};

const stationWords = new Set(
  (
    "oven ovens fridge refrigerator larder freezer microwave grill broiler barbecue bbq griddle blender processor " +
    "liquidiser liquidizer nutribullet mixer beaters kitchenaid electric dough fryer airfryer cooker crockpot crock-pot " +
    "instant iced ice hob stove stovetop burner"
  ).split(" "),
);

/** The place of work that the words of a clause name: "in the fridge", "under the grill", "in the mixer". */
export const findStation = (
  tokens: readonly Token[],
): { readonly station: Station; readonly mixer: boolean } | null => {
  for (let i = 0; i < tokens.length; i += 1) {
    const here = word(tokens, i);
    if (!stationWords.has(here)) continue;
    const next = word(tokens, i + 1);
    const inPlace = (): boolean => {
      for (let at = i - 1; at >= 0 && at >= i - 8; at -= 1) {
        const prev = word(tokens, at);
        if (/^(in|into|to|under|on|onto|inside|with|using)$/.test(prev))
          return !/^(from|out)$/.test(word(tokens, at - 1));
        if (/^(from|out|off)$/.test(prev)) return false;
        // "inside the (preheated) oven", "in the pre-heated oven"
        if (joints.has(prev) && !/^[()–-]$/.test(prev)) return false;
      }
      return false;
    };
    if (
      /^(oven|ovens)$/.test(here) &&
      !/^(gloves?|mitts?|proof|dish|tray)$/.test(next) &&
      inPlace() &&
      word(tokens, i - 1) !== "dutch" &&
      word(tokens, i - 1) !== "microwave"
    )
      return { station: "oven", mixer: false };
    if (/^(fridge|refrigerator|larder)$/.test(here) && inPlace()) return { station: "fridge", mixer: false };
    if (/^freezer$/.test(here) && inPlace()) return { station: "freezer", mixer: false };
    if (/^microwave$/.test(here) && inPlace()) return { station: "machine", mixer: false };
    if (/^(grill|broiler|barbecue|bbq)$/.test(here) && next !== "pan" && next !== "rack" && inPlace())
      return { station: "grill", mixer: false };
    if (/^(griddle)$/.test(here) && inPlace()) return { station: "burner", mixer: false };
    if (/^(blender|processor|liquidiser|liquidizer|nutribullet)$/.test(here) && inPlace())
      return { station: "machine", mixer: false };
    if (/^(mixer|beaters|kitchenaid)$/.test(here) && inPlace()) return { station: "machine", mixer: true };
    if (here === "electric" && /^(whisk|beater|hand|mixer)$/.test(next))
      return { station: "machine", mixer: true };
    if (here === "dough" && next === "hook") return { station: "machine", mixer: true };
    if (/^(fryer)$/.test(here) && word(tokens, i - 1) !== "air")
      return inPlace() ? { station: "fryer", mixer: false } : null;
    if (/^(fryer|airfryer)$/.test(here) && inPlace()) return { station: "oven", mixer: false };
    if (
      /^(cooker|crockpot|crock-pot|instant)$/.test(here) &&
      /^(slow|rice|pressure|a|the|your)$/.test(word(tokens, i - 1)) &&
      inPlace()
    )
      return { station: "machine", mixer: false };
    if (/^(iced|ice)$/.test(here) && /^(water|bath|cold)$/.test(next) && inPlace())
      return { station: "ice-bath", mixer: false };
    if (/^(hob|stove|stovetop|burner)$/.test(here) && inPlace()) return { station: "burner", mixer: false };
  }
  return null;
};

const cueOpeners = new Set("until till 'til til when".split(" "));
const wobblers = new Set("they it this that should just".split(" "));

/** The doneness cue of a clause, from its opener to the next joint that ends it; places in the tokens. */
export const findCue = (
  tokens: readonly Token[],
  times: readonly TimePhrase[],
): { readonly from: number; readonly to: number } | null => {
  for (let i = 0; i < tokens.length; i += 1) {
    const here = word(tokens, i);
    const wobble = wobblers.has(here) && /^(should|wants|want)$/.test(word(tokens, i + 1)) ? i : -1;
    const peaks =
      here === "to" &&
      /^(stiff|soft|firm|medium|ribbon)$/.test(word(tokens, i + 1)) &&
      /^(peaks?|stage)$/.test(word(tokens, i + 2));
    if (peaks) return { from: i, to: i + 3 };
    if (!cueOpeners.has(here) && wobble < 0) continue;
    // "That wants to simmer for two hours" is an order.
    if (wobble >= 0 && word(tokens, i + 2) === "to" && times.some((t) => t.from > i)) continue;
    if (here === "when" && i === 0) continue;
    if (
      /^(until|till)$/.test(here) &&
      /^(needed|required|ready|serving|wanted|use|later|you|the)$/.test(word(tokens, i + 1))
    ) {
      const rest = tokens
        .slice(i + 1, i + 6)
        .map((t) => t.text)
        .join(" ");
      if (
        /^(needed|required|ready to (serve|use)|serving|wanted|use|later|you('re| are) ready|you need|the (next|following) day|the day)/.test(
          rest,
        )
      )
        continue;
    }
    let to = i + 1;
    const time = times.find(
      (t) =>
        t.from > i + 1 &&
        (/^[,(]$/.test(word(tokens, t.from - 1)) ||
          /^(about|around|for|approximately)$/.test(word(tokens, t.from - 1))),
    );
    const stopAt = time === undefined ? tokens.length : time.from - 1;
    while (to < Math.min(tokens.length, stopAt) && !/^[:;)(]$/.test(word(tokens, to)) && to - i < 22) {
      if (
        word(tokens, to) === "," &&
        /^(about|around|for|then|approximately|turning|stirring|roughly)$/.test(word(tokens, to + 1))
      )
        break;
      if (word(tokens, to) === "," && tokens[to + 1]?.kind === "number") break;
      if (
        /^(,|and)$/.test(word(tokens, to)) &&
        /^(when|once|then|if)$/.test(word(tokens, to + (word(tokens, to + 1) === "and" ? 2 : 1)))
      )
        break;
      to += 1;
    }
    while (to > i + 1 && joints.has(word(tokens, to - 1))) to -= 1;
    return to > i + 1 ? { from: i, to } : null;
  }
  return null;
};

/** "in three batches", "a few at a time"; null when the clause says none. */
export const findBatches = (tokens: readonly Token[]): number | null => {
  for (let i = 0; i < tokens.length; i += 1) {
    if (!/^(batches|batch|lots|goes|stages|additions|instalments)$/.test(word(tokens, i))) continue;
    if (/^(batch)$/.test(word(tokens, i))) continue;
    if (/^(lots|goes|stages|additions|instalments)$/.test(word(tokens, i)) && word(tokens, i - 2) !== "in")
      continue;
    for (let at = Math.max(0, i - 3); at < i; at += 1) {
      const n = numberAt(tokens, at);
      if (n !== null && n.next >= i - 2 && n.value >= 1 && n.value <= 40) return Math.round(n.value);
    }
    if (word(tokens, i - 1) === "in" || word(tokens, i - 2) === "in" || word(tokens, i - 1) === "of")
      return 2;
  }
  return null;
};

/** Words about stirring that change who must stand by: all the time, or now and then. */
export const findMinding = (tokens: readonly Token[]): "hands" | "mind" | null => {
  for (let i = 0; i < tokens.length; i += 1) {
    if (
      !/^(stirring|whisking|stir|turning|shaking|tossing|basting|beating|mixing|whisk|moving|swirling)$/.test(
        word(tokens, i),
      )
    )
      continue;
    const rest = tokens
      .slice(Math.max(0, i - 2), i + 8)
      .map((t) => t.text)
      .join(" ");
    if (
      /\b(constantly|continuously|continually|all the time|the whole time|all the while|nonstop|non-stop|throughout)\b/.test(
        rest,
      )
    )
      return "hands";
    if (
      /\b(occasionally|now and then|now and again|from time to time|once or twice|often|frequently|regularly|every|once|halfway|half way|twice|sometimes)\b/.test(
        rest,
      )
    )
      return "mind";
  }
  return null;
};

/** Whether a token is a vessel or a tool, so that a food before it is none ("butter dish"). */
export const isTool = (text: string): boolean => tools.has(text) || tools.has(text.replace(/s$/, ""));

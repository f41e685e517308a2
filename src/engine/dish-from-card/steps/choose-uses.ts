import { verbReadings } from "../../larder/techniques.ts";
import { choose } from "./choose-lines.ts";
import type { Clause } from "./clauses.ts";
import { type Mention, shareOfAmount } from "./find-mentions.ts";
import { birdParts, portionsIn } from "./name-index.ts";
import { newestPool, type Pool } from "./pools.ts";
import type { StepReader } from "./step-reader.ts";
import { enough, exceptAt, poolOf, takeClasses, takeImplied } from "./take-classes.ts";
import type { Again, Fresh } from "./taken.ts";
import { determiners } from "./word-sets.ts";

type Taken = { readonly fresh: readonly Fresh[]; readonly again: readonly Again[] };

// What the parts of a whole food weigh of it. USDA SR28: a large egg of 50 g has 33 g white and 17 g yolk; a
// tablespoon of lemon peel is 6 g, and a lemon of about 100 g gives about one (from memory).
const portionShares: Readonly<Record<string, number>> = {
  yolk: 0.34,
  white: 0.66,
  zest: 0.06,
  juice: 0.94,
  leg: 0.3,
  thigh: 0.18,
  breast: 0.38,
  wing: 0.1,
  carcass: 0.3,
};

/** "Take the legs off the birds": from here on they go their own way; "tie the legs" is done to the bird. */
const parts = (clause: Clause): boolean =>
  /^(take|cut|remove|joint|separate|pull|carve|slice|trim)\b/.test(clause.hit?.verb ?? "") &&
  clause.tokens.some((t, i) => i > clause.verbAt && /^(off|from|away)$/.test(t.text));

/** The part of a whole food that a mention names ("the yolks" of a line of eggs); null for all of it. */
const portionOf = (reader: StepReader, mention: Mention, ingredient: number): string | null => {
  const line = reader.ingredients[ingredient];
  if (mention.portion === null || line === undefined) return null;
  return portionsIn(line).includes(mention.portion) ? mention.portion : null;
};

/** "The grated beetroot": the pool to which that was done. */
const preparedPool = (
  reader: StepReader,
  clause: Clause,
  mention: Mention,
  ingredient: number,
): Pool | null => {
  const adjective = clause.tokens[mention.from - 1];
  if (adjective === undefined || adjective.kind !== "word") return null;
  const done = verbReadings(adjective.text).filter((r) => r.form === "past" && r.tail.length === 0);
  if (done.length === 0) return null;
  return newestPool(
    reader.kitchen,
    (p) => p.contents.has(ingredient) && done.some((r) => p.did.has(r.technique.id)),
  );
};

const onlySeasons = /^(?:\w+ )?(salt|pepper|salt and pepper)$/;

/** "The onions you kept": what stands by. */
const keptPool = (reader: StepReader, clause: Clause, mention: Mention, ingredient: number): Pool | null =>
  /^(reserved|kept|saved)$/.test(clause.tokens[mention.from - 1]?.text ?? "") ||
  /^(reserved|kept|saved)$/.test(clause.tokens[mention.to + 1]?.text ?? "")
    ? newestPool(reader.kitchen, (p) => p.aside && p.contents.has(ingredient))
    : null;

/** How much of a line a mention takes; `left` is what is still there. */
const shareTaken = (
  reader: StepReader,
  mention: Mention,
  ingredient: number,
  left: number,
  all: boolean,
): number => {
  const line = reader.ingredients[ingredient];
  const p = mention.portioning;
  switch (p.kind) {
    case "share":
      return p.share;
    case "rest":
      return left;
    case "amount": {
      const share = line === undefined ? null : shareOfAmount(p.value, p.unit, line);
      if (share === null) return unstated(reader, ingredient, left);
      return share > 0.97 && share < 1.03 ? 1 : share;
    }
    case "some":
      if ((reader.restLater[ingredient] ?? 0) > 0) return left / 2;
      // "Brush with a little of the yolk", and later "whisk the yolks".
      return p.little && (reader.toCome[ingredient] ?? 0) > 0 ? Math.min(left, 0.1) : left;
    case "plain":
      return unstated(reader, ingredient, left, all);
  }
};

/** "Chop the dill" and later "the rest of the dill": all of it is chopped. */
const preparesAll = (clause: Clause): boolean =>
  /^(chop|slice|dice|grate|wash|peel|shred|pick|zest|mince|crush|toast|cut)$/.test(
    clause.hit?.technique.id ?? "",
  ) && clause.hit?.verb.includes(" ") === false;

// "the oil" now and "the rest of the oil" later: half now. Common practice, no source.
const unstated = (reader: StepReader, ingredient: number, left: number, all = false): number =>
  !all && (reader.restLater[ingredient] ?? 0) > 0 && left > 0.99 ? left / 2 : left;

/** Takes the ingredients that a clause names, and remembers how much of each is left. */
export const takeIngredients = (reader: StepReader, clause: Clause, part: string | null): Taken => {
  const fresh: Fresh[] = [];
  const again: Again[] = [];
  const seen = new Set<string>();
  const but = exceptAt(clause);
  if (but !== null) {
    for (const mention of clause.mentions)
      if (mention.from > but.at)
        for (const i of choose(reader, clause, mention, part, clause.partHint)) seen.add(`${i}`);
    if (but.everything) {
      const others = reader.ingredients.filter(
        (i) =>
          !i.equipment && i.purpose === null && !seen.has(`${i.index}`) && (part === null || i.part === part),
      );
      const members = others.map((i) => i.index);
      fresh.push(...takeImplied(reader, members, but.at - 1, but.at).map((f) => ({ ...f, implied: false })));
    }
  }
  const open = reader.lastPart;
  for (const mention of clause.mentions) {
    if (but !== null && mention.from > but.at) continue;
    const ofMixture = /^(mixture|mix|batter|dough|puree|paste|sauce)$/.test(
      clause.tokens[mention.to]?.text ?? "",
    );
    for (const ingredient of choose(reader, clause, mention, part, clause.partHint)) {
      reader.toCome[ingredient] = (reader.toCome[ingredient] ?? 0) - 1;
      const said = portionOf(reader, mention, ingredient);
      // "Take the legs off the pheasant": the rest of it stays as it is.
      if (
        said === null &&
        clause.mentions.some((m) => m.portion !== null) &&
        parts(clause) &&
        /^(off|from)$/.test(clause.tokens[mention.from - 2]?.text ?? "")
      ) {
        const line = reader.ingredients[ingredient];
        if (line !== undefined && portionsIn(line) === birdParts) continue;
      }
      // A leg or a breast of a bird that nobody has jointed is the bird.
      const whole =
        said !== null &&
        birdParts.includes(said) &&
        !parts(clause) &&
        newestPool(reader.kitchen, (p) => p.portions.has(`${ingredient}:${said}`)) === null;
      const portion = whole ? null : said;
      const seenAs = portion === null ? `${ingredient}` : `${ingredient}:${portion}`;
      if (seen.has(seenAs)) continue;
      seen.add(seenAs);
      seen.add(`${ingredient}#`);
      const left = reader.remaining[ingredient] ?? 0;
      const place = { from: mention.from, to: mention.to };
      if (portion !== null) {
        const lies = newestPool(reader.kitchen, (p) => p.portions.has(seenAs));
        const split = newestPool(reader.kitchen, (p) => p.contents.size === 1 && p.contents.has(ingredient));
        const share = portionShares[portion] ?? 1;
        if (lies !== null) again.push({ ingredient, pool: lies, share: 1, ...place });
        else if (left > enough) {
          const taken = Math.min(left, share);
          fresh.push({ ingredient, share: taken, implied: false, portion, ...place });
          reader.remaining[ingredient] = left - taken < 0.01 ? 0 : left - taken;
        } else if (split !== null)
          again.push({ ingredient, pool: split, share: Math.min(share, split.left), portion, ...place });
        continue;
      }
      const lying =
        keptPool(reader, clause, mention, ingredient) ??
        preparedPool(reader, clause, mention, ingredient) ??
        poolOf(reader, ingredient, mention.portioning.kind === "rest");
      const explicit = mention.portioning.kind === "share" || mention.portioning.kind === "amount";
      const back =
        /^(cooked|fried|browned|roasted|melted|boiled|soaked|toasted|drained|chilled|cooled|softened|mashed|beaten|whipped|prepared|reserved)$/.test(
          clause.tokens[mention.from - 1]?.text ?? "",
        );
      // "Salt, 10 minutes": the verb is no word for what lies in a pot.
      if (left <= enough && mention.from === clause.verbAt && clause.lent === null) continue;
      // "Grease a dish with butter" after all of it went into the mash: a little more, and not out of the pot.
      if (left <= enough && clause.hit?.technique.id === "grease") continue;
      // "Lemon, cayenne, salt", of salt that went into another pot: a little more of it, and not that pot.
      if (left <= enough && lying !== null && lying !== reader.kitchen.current && lying.contents.size > 1) {
        const name = reader.ingredients[ingredient]?.name.toLowerCase() ?? "";
        if (/^(add|season|salt|sprinkle)$/.test(clause.hit?.technique.id ?? "") && onlySeasons.test(name)) {
          fresh.push({ ingredient, share: 0.1, implied: false, ...place });
          continue;
        }
        // "Pour in water": from the tap, and not the syrup.
        const bare = !determiners.has(clause.tokens[mention.from - 1]?.text ?? "");
        if (clause.hit?.technique.id === "pour" && name === "water" && bare) continue;
      }
      if (lying !== null && (left <= enough || ofMixture || (back && left < 0.6))) {
        const share = mention.portioning.kind === "share" ? mention.portioning.share : 1;
        if (left <= enough && mention.portioning.kind === "amount" && !ofMixture) {
          const more = shareTaken(reader, mention, ingredient, 0, false);
          if (more > 0.02 && takesFromList(clause, mention)) {
            fresh.push({ ingredient, share: Math.min(1, more), implied: false, ...place });
            continue;
          }
        }
        again.push({ ingredient, pool: lying, share, whole: ofMixture, ...place });
        continue;
      }
      let share = shareTaken(reader, mention, ingredient, left, preparesAll(clause));
      // "Butter a basin" takes a little of what the method uses again.
      if (
        clause.hit?.technique.id === "grease" &&
        mention.portioning.kind === "plain" &&
        ((reader.namedAlone[ingredient] ?? 0) > 1 ||
          mention.candidates.filter((c) => c.strength >= 4).length > 1)
      )
        share = Math.min(share, 0.05);
      if (!explicit && share <= enough) share = 1;
      if (mention.portioning.kind === "rest")
        reader.restLater[ingredient] = Math.max(0, (reader.restLater[ingredient] ?? 0) - 1);
      fresh.push({ ingredient, share: Math.max(0, Math.min(1, share)), implied: false, ...place });
      reader.remaining[ingredient] = Math.max(0, left - share);
      if ((reader.remaining[ingredient] ?? 0) > enough) reader.lastPart = ingredient;
    }
  }
  // "Grate half the carrots and chop the rest": what is left of the line just named.
  const rest = clause.tokens.findIndex(
    (t, i) =>
      i > clause.verbAt &&
      (t.text === "rest" || t.text === "remainder" || t.text === "others") &&
      clause.tokens[i - 1]?.text === "the" &&
      clause.tokens[i + 1]?.text !== "of" &&
      clause.hit?.verb !== "rest",
  );
  // "Boil the rest with the zest and the sugar": what is boiled is named first.
  const leads = rest > 0 && rest === clause.verbTo + 1;
  if (rest > 0 && (fresh.length === 0 || leads) && open !== null && (reader.remaining[open] ?? 0) > enough)
    fresh.push(...takeImplied(reader, [open], rest, rest + 1).map((f) => ({ ...f, implied: false })));
  takeClasses(reader, clause, part, seen, fresh, again);
  return { fresh, again };
};

// "add 50 g sugar" when the sugar is used up takes from the list again; "cut 12 scones" does not.
const takesFromList = (clause: Clause, mention: Mention): boolean =>
  mention.portioning.kind === "amount" &&
  mention.portioning.unit !== "piece" &&
  clause.hit?.technique.miseEnPlace !== true;

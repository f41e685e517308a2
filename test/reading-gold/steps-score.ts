import { type Action, type Dish, readCard } from "#engine/index.ts";
import { techniqueById } from "../../src/engine/larder/techniques.ts";
import type { GoldAction, GoldDish } from "./steps-gold.ts";

/**
 * What is counted: right ones of all that a careful reader would say. "uses" judges each order by itself, as if all
 * before it had been read right: the lines it takes and the pots it works on. "held" judges all that has come together
 * in its hands since the first step, so that one slip counts against every order behind it.
 */
export const kinds = ["technique", "time", "temperature", "place", "uses", "held", "details"] as const;
type Kind = (typeof kinds)[number];

export type Miss = {
  readonly dish: string;
  readonly kind: Kind;
  readonly gold: string;
  readonly read: string;
};
export type Score = {
  readonly right: Readonly<Record<Kind, number>>;
  readonly of: Readonly<Record<Kind, number>>;
  readonly misses: readonly Miss[];
};

/** Orders that steer an oven or a tool and hold no food: what they "use" is not judged. */
const steering = new Set(["preheat", "adjust-heat", "line", "taste", "heat-plates"]);

type Held = ReadonlyMap<number, number>;

const ingredientsMeant = (dish: Dish, written: string): readonly number[] => {
  const words = written.replace(/\*.*$/, "").trim().toLowerCase();
  const [part, name = words] = words.includes("/") ? words.split("/") : [null, words];
  const fits = dish.ingredients.filter((i) => part === null || i.part?.toLowerCase().includes(part) === true);
  const byName = fits.filter((i) => i.name.toLowerCase() === name);
  const within = byName.length > 0 ? byName : fits.filter((i) => i.name.toLowerCase().includes(name));
  const found = within.length > 0 ? within : fits.filter((i) => i.text.toLowerCase().includes(name));
  // A line that the reader lost is a miss of every order that takes it.
  if (found.length === 0) return [-1];
  return found
    .slice(0, part === null && found.length > 1 && name !== "egg" ? 1 : found.length)
    .map((i) => i.index);
};

type GoldRead = {
  readonly gold: GoldAction;
  readonly fresh: ReadonlyMap<number, number | null>;
  readonly holds: ReadonlySet<number>;
  readonly skip: ReadonlySet<number>;
};

/** Works out what each order of the gold has in its hands. */
const resolveGold = (dish: Dish, actions: readonly GoldAction[]): readonly GoldRead[] => {
  const done: GoldRead[] = [];
  const find = (written: string): Pick<GoldRead, "holds" | "skip"> => {
    const name = /^@([\w-]*)/.exec(written)?.[1] ?? "";
    for (let i = done.length - 1; i >= 0; i -= 1) {
      const d = done[i];
      if (d === undefined) continue;
      if (
        name === ""
          ? !steering.has(d.gold.techniques[0] ?? "")
          : d.gold.label === name || d.gold.techniques.includes(name)
      )
        return d;
    }
    if (name === "") return { holds: new Set(), skip: new Set() };
    throw new Error(`"${written}" points at nothing in "${dish.title}"`);
  };
  for (const gold of actions) {
    const fresh = new Map<number, number | null>();
    const holds = new Set<number>();
    const skip = new Set<number>(gold.skip.flatMap((s) => ingredientsMeant(dish, s)));
    const uses = gold.uses ?? (done.length === 0 || steering.has(gold.techniques[0] ?? "") ? [] : ["@"]);
    for (const use of uses) {
      if (!use.startsWith("@")) {
        const share = /\*([\d.]+)$/.exec(use)?.[1];
        for (const i of ingredientsMeant(dish, use)) {
          fresh.set(i, share === undefined ? null : Number(share));
          holds.add(i);
        }
        continue;
      }
      const from = find(use);
      const only = /\[(.*)\]/
        .exec(use)?.[1]
        ?.split(",")
        .flatMap((w) => ingredientsMeant(dish, w.trim()));
      for (const i of from.holds) if (only === undefined || only.includes(i)) holds.add(i);
      for (const i of from.skip) skip.add(i);
    }
    done.push({ gold, fresh, holds, skip });
  }
  return done;
};

/** What each action has in its hands as it was read: shares of listed lines. */
export const heldBy = (dish: Dish): ReadonlyMap<string, Held> => {
  const held = new Map<string, Held>();
  for (const action of dish.steps.flatMap((s) => s.actions)) {
    const mine = new Map<number, number>();
    for (const use of action.uses) {
      if (use.ingredient !== null) mine.set(use.ingredient, (mine.get(use.ingredient) ?? 0) + use.share);
      else
        for (const [i, share] of held.get(use.product ?? "") ?? [])
          if (use.only === undefined || use.only.includes(i))
            mine.set(i, Math.min(1, (mine.get(i) ?? 0) + share * use.share));
    }
    held.set(action.id, mine);
  }
  return held;
};

type Pair = { readonly gold: GoldRead | null; readonly read: Action | null };

/** The cheapest way to lay what was read beside the gold, in order. */
const align = (gold: readonly GoldRead[], read: readonly Action[]): readonly Pair[] => {
  const cost = (g: GoldRead, r: Action): number =>
    g.gold.techniques.includes(r.technique ?? "") ? 0 : g.gold.optional ? 1.5 : 1.1;
  const gap = (g: GoldRead): number => (g.gold.optional ? 0.05 : 0.7);
  const rows = gold.length + 1;
  const cols = read.length + 1;
  const best: number[][] = Array.from({ length: rows }, () => new Array<number>(cols).fill(0));
  for (let i = 0; i < rows; i += 1)
    for (let j = 0; j < cols; j += 1) {
      if (i === 0 && j === 0) continue;
      const g = gold[i - 1];
      const r = read[j - 1];
      best[i]![j] = Math.min(
        g === undefined ? 1e9 : best[i - 1]![j]! + gap(g),
        r === undefined ? 1e9 : best[i]![j - 1]! + 0.7,
        g === undefined || r === undefined ? 1e9 : best[i - 1]![j - 1]! + cost(g, r),
      );
    }
  const pairs: Pair[] = [];
  let [i, j] = [gold.length, read.length];
  while (i > 0 || j > 0) {
    const g = gold[i - 1];
    const r = read[j - 1];
    const here = best[i]![j]!;
    if (g !== undefined && r !== undefined && Math.abs(here - best[i - 1]![j - 1]! - cost(g, r)) < 1e-9) {
      pairs.push({ gold: g, read: r });
      i -= 1;
      j -= 1;
    } else if (g !== undefined && Math.abs(here - best[i - 1]![j]! - gap(g)) < 1e-9) {
      pairs.push({ gold: g, read: null });
      i -= 1;
    } else {
      pairs.push({ gold: null, read: r ?? null });
      j -= 1;
    }
  }
  return pairs.reverse();
};

/** What an action has in hand when what went before is taken from the gold, wherever an action stands beside one of it. */
const heldIfRightBefore = (action: Action, pairs: readonly Pair[], held: ReadonlyMap<string, Held>): Held => {
  const mine = new Map<number, number>();
  const byId = new Map(pairs.flatMap((p) => (p.read === null ? [] : [[p.read.id, p] as const])));
  const collect = (of: Action, top: boolean): void => {
    for (const use of of.uses) {
      if (use.ingredient !== null) {
        mine.set(use.ingredient, 1);
        continue;
      }
      const before = byId.get(use.product ?? "");
      if (before === undefined) continue;
      const holds =
        before.gold !== null && !steering.has(before.gold.gold.techniques[0] ?? "")
          ? [...before.gold.holds]
          : [...(held.get(use.product ?? "")?.keys() ?? [])];
      // What was lifted out of a pot is not in it any more; the gold before knows only the whole.
      for (const i of holds) if (!top || use.only === undefined || use.only.includes(i)) mine.set(i, 1);
    }
  };
  collect(action, true);
  return mine;
};

const near = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(0.02 * Math.abs(b), 0.02);

const sameTime = (gold: NonNullable<GoldAction["minutes"]>, read: Action["minutes"]): boolean => {
  const [low, likely, high] = gold;
  if (read === null || read.assumed) return false;
  // A night may be shorter or longer; where the gold says "about", only the middle is judged.
  return (
    near(read.likely, likely) ||
    (low !== null && high !== null && near(read.low, low) && near(read.high, high))
  );
};

const show = (action: Action | null, dish: Dish, held: ReadonlyMap<string, Held>): string => {
  if (action === null) return "(not read)";
  const fresh = action.uses.flatMap((u) =>
    u.ingredient === null
      ? []
      : [`${dish.ingredients[u.ingredient]?.name}${u.share < 1 ? `*${u.share.toFixed(2)}` : ""}`],
  );
  const holds = [...(held.get(action.id) ?? [])].map(([i]) => dish.ingredients[i]?.name ?? "");
  const m = action.minutes;
  return `${action.id} ${action.technique} | ${fresh.join(", ")} | holds ${holds.join(", ")} | ${m === null ? "-" : `${m.low}~${m.likely}~${m.high}${m.assumed ? "?" : ""}`} | ${action.station} ${action.attention} | c ${action.celsius} core ${action.core} ${action.heat ?? ""} | ${action.cue ?? ""} every ${action.every} batches ${action.batches}`;
};

/** Reads each dish and counts what was read right. */
export const scoreSteps = (dishes: readonly GoldDish[]): Score => {
  const right: Record<Kind, number> = {
    technique: 0,
    time: 0,
    temperature: 0,
    place: 0,
    uses: 0,
    held: 0,
    details: 0,
  };
  const of: Record<Kind, number> = { ...right };
  const misses: Miss[] = [];
  for (const one of dishes) {
    const { value: dish } = readCard(one.text, "card", one.region);
    const read = dish.steps.flatMap((s) => s.actions);
    const held = heldBy(dish);
    const pairs = align(resolveGold(dish, one.actions), read);
    for (const { gold, read: action } of pairs) {
      const count = (kind: Kind, ok: boolean): void => {
        of[kind] += 1;
        if (ok) right[kind] += 1;
        else
          misses.push({
            dish: one.name,
            kind,
            gold: gold?.gold.line ?? "(nothing)",
            read: show(action, dish, held),
          });
      };
      if (gold === null) {
        // An order that nobody gave counts against the techniques.
        count("technique", false);
        continue;
      }
      const g = gold.gold;
      if (action === null) {
        if (g.optional) continue;
        count("technique", false);
        if (g.minutes !== null) count("time", false);
        if (g.celsius !== null || g.core !== null || g.to !== null) count("temperature", false);
        count("place", false);
        if (!steering.has(g.techniques[0] ?? "")) {
          count("uses", false);
          count("held", false);
        }
        continue;
      }
      count("technique", g.techniques.includes(action.technique ?? ""));
      if (g.minutes !== null) count("time", sameTime(g.minutes, action.minutes));
      else if (action.minutes?.assumed === false) count("time", false);
      // A setting that is only carried on from the oven's is judged where the gold names it.
      if (g.celsius !== null)
        count("temperature", action.celsius !== null && Math.abs(action.celsius - g.celsius) <= 1);
      if (g.to !== null)
        count(
          "temperature",
          [action.celsius, action.core].some((at) => at !== null && Math.abs(at - (g.to ?? 0)) <= 1),
        );
      else if (g.core !== null || action.core !== null)
        count("temperature", g.core !== null && action.core !== null && Math.abs(action.core - g.core) <= 1);
      const usual = techniqueById(
        g.techniques.includes(action.technique ?? "") ? (action.technique ?? "") : (g.techniques[0] ?? ""),
      );
      const place = g.place ?? { station: usual?.station ?? "", attention: usual?.attention ?? "" };
      count("place", action.station === place.station && action.attention === place.attention);
      if (!steering.has(g.techniques[0] ?? "")) {
        count("uses", sameUses(gold, action, heldIfRightBefore(action, pairs, held)));
        count("held", sameUses(gold, action, held.get(action.id)));
      }
      if (g.heat !== null) count("details", action.heat === g.heat);
      if (g.cue !== null) count("details", action.cue?.toLowerCase().includes(g.cue.toLowerCase()) === true);
      if (g.every !== null) count("details", action.every === g.every);
      if (g.batches !== null) count("details", action.batches === g.batches);
    }
  }
  return { right, of, misses };
};

const sameUses = (gold: GoldRead, action: Action, held: Held | undefined): boolean => {
  const fresh = new Map<number, number>();
  for (const u of action.uses)
    if (u.ingredient !== null) fresh.set(u.ingredient, (fresh.get(u.ingredient) ?? 0) + u.share);
  for (const [i, share] of gold.fresh) {
    if (gold.skip.has(i)) continue;
    const taken = fresh.get(i);
    if (taken === undefined || (share !== null && Math.abs(taken - share) > 0.06)) return false;
  }
  for (const i of fresh.keys()) if (!gold.fresh.has(i) && !gold.skip.has(i)) return false;
  for (const i of gold.holds) if (!gold.skip.has(i) && !((held?.get(i) ?? 0) > 0.01)) return false;
  for (const [i, share] of held ?? [])
    if (share > 0.01 && !gold.holds.has(i) && !gold.skip.has(i)) return false;
  return true;
};

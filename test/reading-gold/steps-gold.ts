import { readFileSync } from "node:fs";
import type { Region } from "#engine/index.ts";

/**
 * What a line of the gold says about one order. "label: ?sweat/fry | use onion, butter*0.5, @, @boil, @boil[thighs] |
 * skip salt | min 8-10 | c 180 | core 75 | to 80 | at burner mind | heat low | cue soft | every 5 | batches 3": "?" is an order
 * that a reader may leave out, slashes part techniques that are as right, "@" is what the order before made, "@boil" the
 * last one of that technique or label, "[thighs]" only that of it. Without "use" it is "@", without "at" the usual place
 * of the technique. What stands behind "skip" is not judged here and in what follows. "to" is what a liquid is brought to,
 * which is as well read as a setting as a core temperature.
 */
export type GoldAction = {
  readonly line: string;
  readonly label: string | null;
  readonly optional: boolean;
  readonly techniques: readonly string[];
  readonly uses: readonly string[] | null;
  readonly skip: readonly string[];
  /** Low, likely and high; the ends are null when only the likely length is stated. */
  readonly minutes: readonly [number | null, number, number | null] | null;
  readonly celsius: number | null;
  readonly core: number | null;
  readonly to: number | null;
  readonly place: { readonly station: string; readonly attention: string } | null;
  readonly heat: string | null;
  readonly cue: string | null;
  readonly every: number | null;
  readonly batches: number | null;
};

export type GoldDish = {
  readonly name: string;
  readonly region: Region;
  readonly text: string;
  readonly actions: readonly GoldAction[];
};

const minutesOf = (words: string): GoldAction["minutes"] => {
  const soft = words.split("~").map(Number);
  if (soft.length === 3) return [soft[0] ?? 0, soft[1] ?? 0, soft[2] ?? 0];
  const ends = words.split("-").map(Number);
  const [low = 0, high] = ends;
  return high === undefined ? [null, low, null] : [low, (low + high) / 2, high];
};

const actionOf = (line: string): GoldAction => {
  const [head = "", ...fields] = line.split("|").map((f) => f.trim());
  const labelled = /^(\w+):\s*(.*)$/.exec(head);
  const rest = labelled?.[2] ?? head;
  const field = (name: string): string | null => {
    const found = fields.filter((f) => f.startsWith(`${name} `));
    if (found.length > 1) throw new Error(`two fields "${name}" in: ${line}`);
    return found[0]?.slice(name.length + 1).trim() ?? null;
  };
  const known = /^(use|skip|min|c|core|to|at|heat|cue|every|batches|makes) /;
  for (const f of fields) if (!known.test(f)) throw new Error(`unknown field "${f}" in: ${line}`);
  const list = (name: string): readonly string[] | null =>
    field(name)
      ?.split(/,\s*(?![^[]*\])/)
      .filter((w) => w !== "-") ?? null;
  const number = (name: string): number | null => {
    const value = field(name);
    return value === null ? null : Number(value);
  };
  const at = field("at")?.split(" ");
  const min = field("min");
  return {
    line,
    label: labelled?.[1] ?? null,
    optional: rest.startsWith("?"),
    techniques: rest.replace(/^\?/, "").split("/"),
    uses: list("use"),
    skip: list("skip") ?? [],
    minutes: min === null ? null : minutesOf(min),
    celsius: number("c"),
    core: number("core"),
    to: number("to"),
    place: at === undefined ? null : { station: at[0] ?? "", attention: at[1] ?? "" },
    heat: field("heat"),
    cue: field("cue"),
    every: number("every"),
    batches: number("batches"),
  };
};

/** The dishes of a file of gold, each a card as it was written and what each of its orders means. */
export const goldDishes = (file: string): readonly GoldDish[] =>
  readFileSync(file, "utf8")
    .split(/^=== /m)
    .slice(1)
    .map((chunk): GoldDish => {
      const [head = "", ...lines] = chunk.split("\n");
      const [name = "", habit = "uk"] = head.split("|").map((w) => w.trim());
      const cut = lines.indexOf("---");
      return {
        name,
        region: habit === "us" ? "us" : habit === "metric" ? "eu" : "uk",
        text: `${lines.slice(0, cut).join("\n").trim()}\n`,
        actions: lines
          .slice(cut + 1)
          .filter((l) => l.trim() !== "" && !l.startsWith("#"))
          .map(actionOf),
      };
    });

import { compareText } from "../measure/compare-text.ts";
import { normaliseName } from "./normalise-name.ts";

const trigramsOf = (key: string): readonly string[] => {
  const padded = ` ${key} `;
  const found = new Set<string>();
  for (let i = 0; i + 3 <= padded.length; i += 1) found.add(padded.slice(i, i + 3));
  return [...found];
};

type Name = { readonly key: string; readonly id: string };

type Index = {
  readonly keys: readonly Name[];
  /** How many trigrams each name has. */
  readonly sizes: Uint16Array;
  readonly byTrigram: ReadonlyMap<string, readonly number[]>;
  /** How many trigrams each name shares with the words asked for; all 0 between two questions. */
  readonly shared: Uint16Array;
};

const buildIndex = (names: ReadonlyMap<string, string>): Index => {
  const keys = [...names].map(([key, id]) => ({ key, id }));
  const sizes = new Uint16Array(keys.length);
  const byTrigram = new Map<string, number[]>();
  keys.forEach(({ key }, position) => {
    const trigrams = trigramsOf(key);
    sizes[position] = trigrams.length;
    for (const trigram of trigrams) {
      const places = byTrigram.get(trigram);
      if (places === undefined) byTrigram.set(trigram, [position]);
      else places.push(position);
    }
  });
  return { keys, sizes, byTrigram, shared: new Uint16Array(keys.length) };
};

const threeRows = (width: number): readonly [Uint16Array, Uint16Array, Uint16Array] => [
  new Uint16Array(width),
  new Uint16Array(width),
  new Uint16Array(width),
];

// Written over at each question, and made anew only for a name that is longer than all before.
let rows = threeRows(64);

/** Least number of letters to add, drop, change or swap with a neighbour to make one word of the other. */
const editDistance = (a: string, b: string): number => {
  const width = b.length + 1;
  if (width > rows[0].length) rows = threeRows(width);
  let [before, above, line] = rows;
  for (let column = 0; column < width; column += 1) above[column] = column;
  for (let row = 1; row <= a.length; row += 1) {
    line[0] = row;
    const here = a.charCodeAt(row - 1);
    for (let column = 1; column < width; column += 1) {
      const there = b.charCodeAt(column - 1);
      let least = Math.min(
        (above[column] ?? 0) + 1,
        (line[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (here === there ? 0 : 1),
      );
      if (row > 1 && column > 1 && here === b.charCodeAt(column - 2) && a.charCodeAt(row - 2) === there)
        least = Math.min(least, (before[column - 2] ?? 0) + 1);
      line[column] = least;
    }
    [before, above, line] = [above, line, before];
  }
  return above[b.length] ?? 0;
};

// A name that shares fewer of its trigrams than this is never half alike by letters either, but for the shortest.
const leastShared = 0.2;
// Names that share this many trigrams best are then measured letter by letter.
const shortlist = 40;

type Alike = { readonly key: string; readonly id: string; readonly dice: number };

const byDice = (a: Alike, b: Alike): number => b.dice - a.dice || compareText(a.key, b.key);

/** Puts a name in its place among the likest so far. Most names are less alike than all of those, and are not sorted. */
const keepLikest = (likest: Alike[], name: Alike): void => {
  const last = likest.at(-1);
  if (likest.length === shortlist && last !== undefined && byDice(last, name) < 0) return;
  let at = likest.length;
  while (at > 0) {
    const before = likest[at - 1];
    if (before === undefined || byDice(before, name) < 0) break;
    at -= 1;
  }
  likest.splice(at, 0, name);
  if (likest.length > shortlist) likest.pop();
};

// The unknown words of a card are asked for at each key that is typed, by its lines and by rules.
const keptAtOnce = 500;

/**
 * Makes a search over names (normalised name to id): ids whose names look like the words, likest first, at most `most`.
 * Likeness is the greater of shared trigrams (which also finds shared words) and edit distance; below half alike,
 * nothing is offered. The index is made at the first search and kept.
 */
export const nearNames = (
  names: ReadonlyMap<string, string>,
): ((words: string, most: number) => readonly string[]) => {
  let made: Index | null = null;
  const kept = new Map<string, readonly string[]>();
  const search = (key: string): readonly string[] => {
    made ??= buildIndex(names);
    const { keys, sizes, byTrigram, shared } = made;
    const trigrams = trigramsOf(key);
    const touched: number[] = [];
    for (const trigram of trigrams)
      for (const position of byTrigram.get(trigram) ?? []) {
        const before = shared[position] ?? 0;
        if (before === 0) touched.push(position);
        shared[position] = before + 1;
      }
    const alike: Alike[] = [];
    let least = leastShared;
    for (const position of touched) {
      const dice = (2 * (shared[position] ?? 0)) / (trigrams.length + (sizes[position] ?? 0));
      shared[position] = 0;
      const name = dice < least ? undefined : keys[position];
      if (name === undefined) continue;
      keepLikest(alike, { key: name.key, id: name.id, dice });
      if (alike.length === shortlist) least = alike.at(-1)?.dice ?? least;
    }
    const likest = alike
      .map(({ key: other, id, dice }) => {
        const longest = Math.max(key.length, other.length);
        // Names whose lengths are far apart are never more alike by letters than they are by trigrams.
        const most = 1 - Math.abs(key.length - other.length) / longest;
        const letters = most <= dice ? 0 : 1 - editDistance(key, other) / longest;
        return { key: other, id, likeness: Math.max(dice, letters) };
      })
      .filter((name) => name.likeness >= 0.5)
      .sort((a, b) => b.likeness - a.likeness || compareText(a.key, b.key));
    return [...new Set(likest.map((name) => name.id))];
  };
  return (words, most) => {
    const key = normaliseName(words);
    if (key === "" || most <= 0) return [];
    const known = kept.get(key);
    if (known !== undefined) return known.slice(0, most);
    if (kept.size >= keptAtOnce) kept.clear();
    const found = search(key);
    kept.set(key, found);
    return found.slice(0, most);
  };
};

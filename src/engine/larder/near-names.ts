import { compareText } from "../measure/compare-text.ts";
import { normaliseName } from "./normalise-name.ts";

const trigramsOf = (key: string): readonly string[] => {
  const padded = ` ${key} `;
  const found = new Set<string>();
  for (let i = 0; i + 3 <= padded.length; i += 1) found.add(padded.slice(i, i + 3));
  return [...found];
};

type Index = {
  readonly keys: readonly { readonly key: string; readonly id: string; readonly size: number }[];
  readonly byTrigram: ReadonlyMap<string, readonly number[]>;
};

const buildIndex = (names: ReadonlyMap<string, string>): Index => {
  const keys = [...names].map(([key, id]) => ({ key, id, size: trigramsOf(key).length }));
  const byTrigram = new Map<string, number[]>();
  keys.forEach(({ key }, position) => {
    for (const trigram of trigramsOf(key)) {
      const places = byTrigram.get(trigram);
      if (places === undefined) byTrigram.set(trigram, [position]);
      else places.push(position);
    }
  });
  return { keys, byTrigram };
};

/** Least number of letters to add, drop, change or swap with a neighbour to make one word of the other. */
const editDistance = (a: string, b: string): number => {
  let before: readonly number[] = [];
  let above: readonly number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const line: number[] = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let least = Math.min(
        (above[column] ?? 0) + 1,
        (line[column - 1] ?? 0) + 1,
        (above[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) least = Math.min(least, (before[column - 2] ?? 0) + 1);
      line.push(least);
    }
    before = above;
    above = line;
  }
  return above[b.length] ?? 0;
};

// A name that shares fewer of its trigrams than this is never half alike by letters either, but for the shortest.
const leastShared = 0.2;
// Names that share this many trigrams best are then measured letter by letter.
const shortlist = 40;

/**
 * Makes a search over names (normalised name to id): ids whose names look like the words, likest first, at most `most`.
 * Likeness is the greater of shared trigrams (which also finds shared words) and edit distance; below half alike,
 * nothing is offered. The index is made at the first search and kept.
 */
export const nearNames = (
  names: ReadonlyMap<string, string>,
): ((words: string, most: number) => readonly string[]) => {
  let made: Index | null = null;
  return (words, most) => {
    const key = normaliseName(words);
    if (key === "" || most <= 0) return [];
    made ??= buildIndex(names);
    const { keys, byTrigram } = made;
    const trigrams = trigramsOf(key);
    const shared = new Uint16Array(keys.length);
    for (const trigram of trigrams)
      for (const position of byTrigram.get(trigram) ?? []) shared[position] = (shared[position] ?? 0) + 1;
    const likest = keys
      .flatMap((name, position) => {
        const both = shared[position] ?? 0;
        if (both === 0) return [];
        const dice = (2 * both) / (trigrams.length + name.size);
        return dice < leastShared ? [] : [{ key: name.key, id: name.id, dice }];
      })
      .sort((a, b) => b.dice - a.dice || compareText(a.key, b.key))
      .slice(0, shortlist)
      .map(({ key: other, id, dice }) => {
        const letters = 1 - editDistance(key, other) / Math.max(key.length, other.length);
        return { key: other, id, likeness: Math.max(dice, letters) };
      })
      .filter((name) => name.likeness >= 0.5)
      .sort((a, b) => b.likeness - a.likeness || compareText(a.key, b.key));
    return [...new Set(likest.map((name) => name.id))].slice(0, most);
  };
};

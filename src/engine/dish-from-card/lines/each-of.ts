import { findFood } from "../../larder/foods.ts";
import type { Token } from "../../measure/tokens.ts";
import type { Region } from "../../model/sitting.ts";
import { isOnlyModifiers, lowerAt, slice } from "./modifiers.ts";
import { readAmounts } from "./read-amounts.ts";
import { readPhrase } from "./read-phrase.ts";
import { fromPhrase, type Reading } from "./reading.ts";

const joints = new Set(["and", "&", "a", "an", "of", "the"]);

/**
 * "½ each green, red and yellow pepper": words that name a kind, each of the head that is told with the last. Null when
 * the line is no such list. `next` is the token after the last name.
 */
export const readEachOf = (
  line: string,
  tokens: readonly Token[],
  region: Region,
): { readonly readings: readonly Reading[]; readonly next: number } | null => {
  const read = readAmounts(tokens, 0, region);
  if (read === null || !read.each) return null;
  const kinds: number[] = [];
  let at = read.next;
  for (; at < tokens.length - 1; at += 1) {
    if (joints.has(lowerAt(tokens, at))) continue;
    if (!isOnlyModifiers(tokens.slice(at, at + 1), 0) || tokens[at]?.kind !== "word") break;
    kinds.push(at);
  }
  const lastKind = kinds.pop();
  if (lastKind === undefined || kinds.length === 0) return null;
  const phrase = readPhrase(line, tokens, lastKind, tokens.length, region);
  if (phrase?.food == null) return null;
  const head = phrase.name.split(/\s+/).at(-1) ?? "";
  const first = fromPhrase(phrase);
  const shared = {
    amounts: read.amounts,
    size: first.size ?? read.size,
    container: read.container,
    pack: read.pack,
  };
  const others: Reading[] = [];
  for (const kind of kinds) {
    const name = slice(line, tokens, kind, kind + 1);
    const food = findFood(`${name} ${head}`);
    if (food === null) return null;
    const token = tokens[kind];
    others.push({
      ...first,
      ...shared,
      food,
      name: `${name} ${head}`,
      nameSpan: { start: token?.start ?? 0, end: token?.end ?? 0 },
    });
  }
  return { readings: [...others, { ...first, ...shared }], next: phrase.next };
};

import type { Finding } from "#engine/index.ts";
import type { Place } from "../place.ts";

/** Words that were not understood, how often they stood, and where first. */
export type Missed = { readonly words: string; readonly times: number; readonly first: Place };

/** The kinds of finding that say that words were not understood, with the fact that holds them. */
const wordsOf: Readonly<Record<string, (facts: Readonly<Record<string, unknown>>) => unknown>> = {
  "food-unknown": (facts) => facts["name"],
  "technique-unknown": (facts) => facts["verb"],
  "line-not-understood": (facts) => facts["words"],
  "unit-doubtful": (facts) => facts["words"],
  "swap-not-understood": (facts) => facts["words"],
  "keeping-not-understood": (facts) => facts["words"],
};

/** Gathers what many cards have in common that was not understood, kind by kind, the most frequent first. */
export const tallyMissed = (): {
  readonly add: (findings: readonly Finding[], placeOf: (start: number, end: number) => Place) => void;
  readonly all: () => Readonly<Record<string, readonly Missed[]>>;
} => {
  const kinds = new Map<string, Map<string, { times: number; first: Place }>>();
  return {
    add: (findings, placeOf) => {
      for (const { code, facts, span } of findings) {
        const words = wordsOf[code]?.(facts);
        if (typeof words !== "string" || words.trim() === "") continue;
        const key = words.trim().toLowerCase();
        const kind = kinds.get(code) ?? new Map<string, { times: number; first: Place }>();
        kinds.set(code, kind);
        const known = kind.get(key);
        if (known === undefined) kind.set(key, { times: 1, first: placeOf(span.start, span.end) });
        else known.times += 1;
      }
    },
    all: () =>
      Object.fromEntries(
        [...kinds].map(([code, kind]) => [
          code,
          [...kind]
            .map(([words, { times, first }]) => ({ words, times, first }))
            .sort((a, b) => b.times - a.times || (a.words < b.words ? -1 : a.words > b.words ? 1 : 0)),
        ]),
      ),
  };
};

import type { Finding } from "../findings/finding.ts";
import { makeFinding } from "../findings/make-finding.ts";
import { nearNames } from "../larder/near-names.ts";
import { needById, needByWords, needs } from "../larder/needs.ts";
import { normaliseName } from "../larder/normalise-name.ts";
import type { Need } from "../model/need.ts";
import type { Outcome } from "../model/outcome.ts";
import type { Sitting } from "../model/sitting.ts";

/** A guest with the needs that the table knows, and the words of those it does not. */
export type GuestNeeds = {
  readonly name: string;
  readonly needs: readonly Need[];
  readonly unknown: readonly string[];
};

const nearNeed = nearNames(
  new Map(
    needs.flatMap((need) => [need.id, need.name, ...need.words].map((w) => [normaliseName(w), need.id])),
  ),
);

/** The guests who have needs; each need that is not known is said with its path. */
export const guestNeeds = (sitting: Sitting): Outcome<readonly GuestNeeds[], Finding> => {
  const findings: Finding[] = [];
  const value = sitting.guests.flatMap((guest, g): readonly GuestNeeds[] => {
    const known: Need[] = [];
    const unknown: string[] = [];
    guest.needs.forEach((words, n) => {
      const need = needOf(words);
      if (need !== null) {
        if (!known.includes(need)) known.push(need);
        return;
      }
      unknown.push(words);
      const near = nearNeed(words.replaceAll("-", " "), 1)[0] ?? "";
      const facts = { need: words, near, guest: guest.name };
      findings.push(
        makeFinding("need-unknown", sitting.source, { start: 0, end: 0 }, facts, {
          path: `guests/${g}/needs/${n}`,
        }),
      );
    });
    return guest.needs.length === 0 ? [] : [{ name: guest.name, needs: known, unknown }];
  });
  return { value, findings };
};

/**
 * The sitting with each need by its id in the table, however it was put, so that all that follows finds it again.
 * Words that the table does not know stay as they are.
 */
export const withKnownNeeds = (sitting: Sitting): Sitting => ({
  ...sitting,
  guests: sitting.guests.map((guest) => ({
    ...guest,
    needs: [...new Set(guest.needs.map((words) => needOf(words)?.id ?? words))],
  })),
});

const needOf = (words: string): Need | null => needById(words) ?? needByWords(words);

import type { Code } from "#engine/index.ts";
import { declarationSentences } from "#words/findings/declaration.ts";
import { planSentences } from "#words/findings/plan.ts";

/** What a sheet is about; remarks that bear on none of it are told by other commands. */
export type Topic = "work" | "prices" | "guests";

const priceCodes: ReadonlySet<string> = new Set<Code>([
  "price-missing",
  "prices-none",
  "pack-unit-unknown",
  "pack-food-unknown",
  "pack-weight-assumed",
]);
const guestCodes: ReadonlySet<string> = new Set<string>([
  ...Object.keys(declarationSentences),
  ...(["swap-missing", "need-unknown"] satisfies Code[]),
]);
const workCodes: ReadonlySet<string> = new Set(
  Object.keys(planSentences).filter((code) => code !== ("sitting-value-bad" satisfies Code)),
);

/** True when a code has to do with one of the topics, or with the words themselves, which bear on everything. */
export const bearsOn = (code: string, topics: readonly Topic[]): boolean =>
  priceCodes.has(code)
    ? topics.includes("prices")
    : guestCodes.has(code)
      ? topics.includes("guests")
      : workCodes.has(code)
        ? topics.includes("work")
        : true;

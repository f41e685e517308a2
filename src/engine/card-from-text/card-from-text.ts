import type { Finding } from "../findings/finding.ts";
import type { Card } from "../model/card.ts";
import type { Outcome } from "../model/outcome.ts";
import type { SourceId } from "../model/span.ts";

/** Lays a text out as a card. Never throws; any text gives a card. */
export const cardFromText = (text: string, source: SourceId): Outcome<Card, Finding> => ({
  value: { source, text, title: null, yields: [], times: [], blocks: [] },
  findings: [],
});

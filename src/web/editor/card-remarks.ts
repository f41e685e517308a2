import { fixTitles, sentenceOf } from "#words/en.ts";
import type { CardAnswer } from "../state/engine-talk.ts";
import type { Remark } from "./remarks.ts";
import { withEdits } from "./shortest-change.ts";

/** What the engine says of a card, with fixes that write the text anew if it is still the one that was read. */
export const remarksOfCard = (
  { dish, findings }: CardAnswer,
  current: () => string,
  write: (text: string) => void,
): readonly Remark[] =>
  findings.map((finding) => ({
    start: finding.span.start,
    end: finding.span.end,
    severity: finding.severity,
    ...sentenceOf(finding),
    unknownFood: finding.code === "food-unknown" ? finding.facts.name : null,
    fixes: finding.fixes.map((fix) => ({
      title: fixTitles[fix.kind],
      apply: () => {
        if (current() === dish.text) write(withEdits(dish.text, fix.edits));
      },
    })),
  }));

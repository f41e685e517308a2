import type { CourseChain, Link } from "#engine/index.ts";
import { momentText } from "./clock.ts";
import { causeText } from "./plan-text.ts";
import { durationText } from "./quantity-text.ts";

/** What a chain's words look up. */
type ChainNames = Parameters<typeof causeText>[1];

/** Links told of a long chain before it is cut short, besides its end. */
const told = 2;

/** The links of a chain, each with when the task that it leads to begins: "it goes into: Roast (16:10)". */
export const linkTexts = (links: readonly Link[], names: ChainNames): readonly string[] =>
  links.map(({ task, cause }) => {
    const start = names.startOf?.(task) ?? null;
    const other = "task" in cause ? (names.startOf?.(cause.task) ?? null) : null;
    return `${causeText(cause, names, start)}${other === null ? "" : ` (${momentText(names.date, other)})`}`;
  });

/** A chain in one line, cut short in the middle; what pins its first task is left out, since that is told beside it. */
export const chainText = (links: readonly Link[], names: ChainNames): string => {
  const texts = linkTexts(links, names).slice(1);
  const more = texts.length - told - 1;
  const shown = more > 1 ? [...texts.slice(0, told), `${more} more`, ...texts.slice(-1)] : texts;
  return shown.join(" ← ");
};

/** The tightest chain of a course, one line a link, and what may overrun before it. */
export const courseChainTexts = (
  { links, slackMinutes }: CourseChain,
  names: ChainNames,
): readonly string[] => {
  const [first] = links;
  if (!first) return [];
  const start = names.startOf?.(first.task) ?? null;
  const begins = `${start === null ? "" : `${momentText(names.date, start)} `}${names.task(first.task)}`;
  const slack =
    slackMinutes === null
      ? []
      : [
          slackMinutes === 0
            ? "nothing may overrun before it"
            : `what comes before it may overrun by ${durationText(slackMinutes)}`,
        ];
  return [begins, ...linkTexts(links, names), ...slack];
};

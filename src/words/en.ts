import type { Code, FactsOf, Finding, FixKind, Severity } from "#engine/index.ts";
import { declarationSentences } from "./findings/declaration.ts";
import { menuSentences } from "./findings/menu.ts";
import { planSentences } from "./findings/plan.ts";
import { readingSentences } from "./findings/reading.ts";
import type { Sentence, SentencesOf } from "./findings/sentence.ts";

/** A sentence for every code of the register; a code without one does not compile. */
const sentences: SentencesOf<FactsOf> = {
  ...readingSentences,
  ...menuSentences,
  ...declarationSentences,
  ...planSentences,
};

/** What a finding says, in English. */
export const sentenceOf = (finding: Finding): Sentence => sentenceFor(finding.code, finding.facts);

/** The sentence of one code with its facts. */
export const sentenceFor = <C extends Code>(code: C, facts: FactsOf[C]): Sentence => sentences[code](facts);

/** Says and write as one line of text. */
export const messageOf = (finding: Finding): string => {
  const { says, write } = sentenceOf(finding);
  return write === null ? says : `${says} ${write}`;
};

/** The name of a fix, on a button or in a list. */
export const fixTitles: { readonly [K in FixKind]: string } = {
  "write-amount": "Write the amount",
  "write-unit": "Write the unit",
  "write-time": "Write the time",
  "write-temperature": "Write the temperature",
  "write-yield": "Write how many it feeds",
  "rename-food": "Write the usual name",
  "add-ingredient": "Add it to the list",
  "remove-ingredient": "Take it off the list",
  "add-step": "Add a step",
  "use-ingredient": "Use it in the method",
  "correct-amount": "Correct the amount",
  "add-caution": "Add the caution",
};

/** The name of a severity. */
export const severityLabels: { readonly [S in Severity]: string } = {
  stop: "stop",
  warn: "warn",
  note: "note",
};

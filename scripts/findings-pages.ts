import { examplesOf } from "../src/engine/dish-from-card/rules/examples.ts";
import { codes, readCard, severityOf } from "../src/engine/index.ts";
import { messageOf } from "../src/words/en.ts";

/** A page of docs/findings/. */
export type Page = { readonly name: string; readonly text: string };

const fence = "```";

const exampleText = (code: string, card: string, fixed: string): readonly string[] => {
  const found = readCard(card, "card").findings.filter((f) => f.code === code);
  return [
    `${fence}text`,
    card.trimEnd(),
    fence,
    "",
    ...found.map((f) => `At “${card.slice(f.span.start, f.span.end)}”: ${messageOf(f)}`),
    "",
    "Put right:",
    "",
    `${fence}text`,
    fixed.trimEnd(),
    fence,
    "",
  ];
};

/** The page of each code that has examples, printed from them, and a list of all codes. */
export const findingsPages = (): readonly Page[] => {
  const pages = codes.flatMap((code): Page[] => {
    const examples = examplesOf.get(code);
    if (examples === undefined) return [];
    const lines = [
      `# ${code}`,
      "",
      `Severity: ${severityOf[code]}.`,
      "",
      ...examples.flatMap((e, k) => [`## Example ${k + 1}`, "", ...exampleText(code, e.card, e.fixed)]),
    ];
    return [{ name: `${code}.md`, text: `${lines.join("\n").trimEnd()}\n` }];
  });
  const index = [
    "# Findings",
    "",
    "Everything that the tool can say, from the register in `src/engine/findings/`.",
    "Pages are printed from the examples of the rules by `npm run docs`.",
    "",
    "| code | severity |",
    "| --- | --- |",
    ...codes.map(
      (code) => `| ${examplesOf.has(code) ? `[${code}](${code}.md)` : code} | ${severityOf[code]} |`,
    ),
    "",
  ];
  return [{ name: "README.md", text: index.join("\n") }, ...pages];
};

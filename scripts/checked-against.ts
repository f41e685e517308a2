import type { Topic } from "../test/published/all-checks.ts";
import type { Check } from "../test/published/check.ts";

const cellOf = (text: string): string => text.replaceAll("|", "\\|").replaceAll(/\s+/g, " ").trim();

const shown = (value: unknown): string =>
  typeof value === "string" ? value : (JSON.stringify(value) ?? "nothing");

const head = ["what", "expected", "within", "source"];

const rowOf = (check: Check): readonly string[] => {
  const [, expected, tolerance = 0] = check.run();
  return [check.what, shown(expected), tolerance === 0 ? "exact" : String(tolerance), check.source].map(
    cellOf,
  );
};

// Columns are padded as the formatter of the house pads them, so that it leaves the file alone.
const tableOf = (rows: readonly (readonly string[])[]): readonly string[] => {
  const widths = head.map((_, column) => Math.max(3, ...rows.map((row) => (row[column] ?? "").length)));
  const line = (cells: readonly string[], fill: string): string =>
    `| ${cells.map((text, column) => text.padEnd(widths[column] ?? 3, fill)).join(" | ")} |`;
  const [first = head, ...others] = rows;
  return [
    line(first, " "),
    line(
      head.map(() => ""),
      "-",
    ),
    ...others.map((row) => line(row, " ")),
  ];
};

/** The text of docs/checked-against.md: every check against something outside the house, and its source. */
export const checkedAgainst = (topics: readonly Topic[]): string =>
  [
    "# Checked against",
    "",
    "Printed from `test/published/*.checks.ts` by `scripts/print-checks.ts`. `npm test` runs every line.",
    ...topics.flatMap(({ topic, checks }) => [
      "",
      `## ${topic.replaceAll("-", " ")}`,
      "",
      ...tableOf([head, ...checks.map(rowOf)]),
    ]),
    "",
  ].join("\n");

/** How a column stands: words to the left, numbers to the right. */
type Align = "left" | "right";

/** Columns a text takes on a terminal: combining marks take none, wide East Asian ones two. */
export const widthOf = (text: string): number => {
  let width = 0;
  for (const character of text.normalize("NFC")) {
    if (/\p{M}/u.test(character) || character === "\u200d" || character === "\ufe0f") continue;
    width +=
      /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]|\p{Emoji_Presentation}/u.test(
        character,
      )
        ? 2
        : 1;
  }
  return width;
};

/** Rows with their columns set under each other, two spaces between, no spaces at line ends. */
export const tableText = (
  rows: readonly (readonly string[])[],
  align: readonly Align[],
  indent = "",
): string => {
  const widths = align.map((_, i) => Math.max(0, ...rows.map((row) => widthOf(row[i] ?? ""))));
  return rows
    .map((row) =>
      `${indent}${align
        .map((side, i) => {
          const cell = row[i] ?? "";
          const pad = " ".repeat(Math.max(0, (widths[i] ?? 0) - widthOf(cell)));
          return side === "right" ? pad + cell : cell + pad;
        })
        .join("  ")}`.trimEnd(),
    )
    .map((line) => `${line}\n`)
    .join("");
};

/** Words broken into lines of at most so many columns; the first begins with the indent, the others with the hang. */
export const wrap = (text: string, indent: string, hang = indent, columns = 96): string => {
  const lines: string[] = [];
  let line = indent;
  let empty = true;
  for (const word of text.split(/\s+/).filter((w) => w !== "")) {
    const next = empty ? line + word : `${line} ${word}`;
    if (!empty && widthOf(next) > columns) {
      lines.push(line);
      line = hang + word;
    } else line = next;
    empty = false;
  }
  lines.push(line);
  return `${lines.join("\n")}\n`;
};

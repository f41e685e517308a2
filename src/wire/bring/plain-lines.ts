import { type DefaultTreeAdapterTypes, parseFragment } from "parse5";

type Node = DefaultTreeAdapterTypes.ChildNode;

/** Elements that stand on lines of their own. */
const blocks = new Set(
  "address article aside blockquote body caption dd details dialog div dl dt fieldset figcaption figure footer form h1 h2 h3 h4 h5 h6 header hgroup hr html legend li main nav ol p pre section summary table tbody td tfoot th thead tr ul".split(
    " ",
  ),
);

/** Elements whose inside is no text of the page. */
const silent = new Set(
  "script style template noscript svg math iframe object video audio canvas head button select option input textarea nav footer form dialog".split(
    " ",
  ),
);

const headings = new Set(["h1", "h2", "h3", "h4", "h5", "h6"]);

/**
 * The lines that a reader of this HTML would see: blocks stand apart, list items keep a dash, headings a hash, white
 * space is what a browser shows. Navigation, forms, buttons and scripts are left out.
 */
export const linesOfHtml = (nodes: readonly Node[]): readonly string[] => {
  const lines: string[] = [];
  let line = "";
  const flush = (): void => {
    const text = line.replace(/[\s\u00a0]+/g, " ").trim();
    if (!/^[-#\s]*$/.test(text)) lines.push(text);
    else if (text === "" && lines.length > 0 && lines.at(-1) !== "") lines.push("");
    line = "";
  };
  // A page may nest deeper than the call stack; what is to be visited is kept in a list of its own.
  const waiting: (Node | { readonly after: string })[] = [...nodes].reverse();
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if ("after" in next) {
      flush();
      continue;
    }
    if (next.nodeName === "#text") line += (next as DefaultTreeAdapterTypes.TextNode).value;
    else if (next.nodeName === "br") flush();
    else if ("childNodes" in next && !silent.has(next.nodeName)) {
      if (blocks.has(next.nodeName)) {
        flush();
        if (next.nodeName === "li") line = "- ";
        if (headings.has(next.nodeName)) line = "# ";
        waiting.push({ after: next.nodeName });
      }
      for (const child of [...next.childNodes].reverse()) waiting.push(child);
    }
  }
  flush();
  while (lines.at(-1) === "") lines.pop();
  return lines;
};

/** A string of structured data as lines of plain text: pages put HTML and its character references in their strings. */
export const plainLines = (text: string): readonly string[] => {
  if (!/[<&]/.test(text))
    return text
      .split(/[\r\n\u2028\u2029]+/)
      .map((line) => line.replace(/[\s\u00a0]+/g, " ").trim())
      .filter((line) => line !== "");
  const broken = text.replace(/\r?\n|\r/g, "<br>");
  return linesOfHtml(parseFragment(broken).childNodes)
    .map((line) => line.replace(/^[-#] /, ""))
    .filter((line) => line !== "");
};

/** The same as one line. */
export const plainLine = (text: string): string => plainLines(text).join(" ");

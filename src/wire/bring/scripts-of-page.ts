import { type DefaultTreeAdapterTypes, parse } from "parse5";
import { linesOfHtml } from "./plain-lines.ts";

type Node = DefaultTreeAdapterTypes.ChildNode;

/** What a page holds for us: its JSON-LD blocks with the offset where each begins, and the lines that people see. */
export type PageParts = {
  readonly data: readonly { readonly text: string; readonly at: number }[];
  readonly lines: () => readonly string[];
};

/** Takes a page apart as a browser would, however broken it is. */
export const partsOfPage = (html: string): PageParts => {
  const page = parse(html, { sourceCodeLocationInfo: true });
  const data: { text: string; at: number }[] = [];
  const waiting: Node[] = [...page.childNodes].reverse();
  let body: readonly Node[] = page.childNodes;
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (!("childNodes" in node)) continue;
    if (node.nodeName === "body") body = node.childNodes;
    if (node.nodeName === "script" && isJsonLd(node)) {
      const [inside] = node.childNodes;
      if (inside !== undefined && inside.nodeName === "#text")
        data.push({
          text: (inside as DefaultTreeAdapterTypes.TextNode).value,
          at: inside.sourceCodeLocation?.startOffset ?? 0,
        });
    }
    for (const child of [...node.childNodes].reverse()) waiting.push(child);
  }
  return { data, lines: () => linesOfHtml(body) };
};

const isJsonLd = (node: DefaultTreeAdapterTypes.Element): boolean =>
  node.attrs.some(
    ({ name, value }) => name === "type" && /^\s*application\/ld\+json\s*(?:;.*)?$/i.test(value),
  );

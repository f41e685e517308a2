import { isNode, isScalar, isSeq, parseDocument, stringify } from "yaml";
import type { Span } from "#engine/index.ts";

/** A value in a YAML text: its place and what it says. */
type YamlValue = { readonly span: Span; readonly text: string };

/** The value at a path; null when there is none or the text cannot be read. */
export const valueAt = (text: string, path: readonly (string | number)[]): YamlValue | null => {
  try {
    const node = parseDocument(text).getIn(path, true);
    if (!isScalar(node) || !node.range) return null;
    return { span: { start: node.range[0], end: node.range[1] }, text: String(node.value) };
  } catch {
    return null;
  }
};

/** The text with one value written anew and every other letter left as it stands; null when there is no such value. */
export const withValue = (text: string, path: readonly (string | number)[], value: string): string | null => {
  const found = valueAt(text, path);
  if (found === null) return null;
  const plain = /^-?\d+(\.\d+)?$/.test(value);
  return (
    text.slice(0, found.span.start) + (plain ? value : JSON.stringify(value)) + text.slice(found.span.end)
  );
};

const indented = (item: unknown, by: number): string =>
  stringify([item])
    .trimEnd()
    .split("\n")
    .map((line) => " ".repeat(by) + line)
    .join("\n");

/**
 * The text with one item more at the end of the list under a key, and every other letter left as it stands; the key is made
 * when there is none. Null when the text cannot be read, or holds something else under that key.
 */
export const withItem = (text: string, key: string, item: unknown): string | null => {
  const file = parseDocument(text);
  if (file.errors.length > 0) return null;
  const list = file.get(key, true);
  if (list === undefined) {
    const gap = text === "" || text.endsWith("\n") ? "" : "\n";
    return `${text}${gap}${key}:\n${indented(item, 2)}\n`;
  }
  if (!isSeq(list) || !list.range) return null;
  const last = list.items.at(-1);
  if (list.flow === true || !isNode(last) || !last.range) {
    const made = list.items.length === 0 ? `\n${indented(item, 2)}` : null;
    if (made !== null) return `${text.slice(0, list.range[0]).trimEnd()}${made}${text.slice(list.range[1])}`;
    list.add(file.createNode(item));
    return file.toString();
  }
  const dash = text.lastIndexOf("\n", list.range[0]) + 1;
  const end = last.range[0] + text.slice(last.range[0], last.range[1]).trimEnd().length;
  const line = text.indexOf("\n", end);
  const at = line < 0 ? text.length : line;
  return `${text.slice(0, at)}\n${indented(item, list.range[0] - dash)}${line < 0 ? "\n" : ""}${text.slice(at)}`;
};

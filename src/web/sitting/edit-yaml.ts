import { isScalar, parseDocument } from "yaml";
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

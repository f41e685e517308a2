import { isAlias, isMap, isNode, isPair, isScalar, LineCounter, parseDocument, type YAMLError } from "yaml";
import { type Place, placesIn } from "./place.ts";
import { makeProblem, type Problem } from "./problem.ts";

/** A way down into a YAML value: keys of maps, places in lists. */
export type Path = readonly (string | number)[];

/** A YAML text as a plain value, with the place of each part of it. */
export type YamlFile = {
  /** Undefined when the marks could not be read. */
  readonly value: unknown;
  /** The place of a value; of the nearest thing around it when the path leads nowhere. */
  readonly placeOf: (path: Path) => Place;
  /** The place of a key of the map at the path. */
  readonly placeOfKey: (path: Path, key: string) => Place;
  readonly problems: readonly Problem[];
};

/** Reads YAML 1.2; texts that are empty, no text, or far too long are refused. */
export const yamlFile = (file: string, text: string): YamlFile => {
  const place = placesIn(file, text);
  const whole = place(0, 0);
  const refused = (problem: Problem): YamlFile => ({
    value: undefined,
    placeOf: () => whole,
    placeOfKey: () => whole,
    problems: [problem],
  });
  const trouble = notText(text);
  if (trouble !== null) return refused(makeProblem("file-not-text", whole, { name: file, reason: trouble }));
  if (text.trim() === "") return refused(makeProblem("file-empty", whole, { name: file }));
  const doc = parseDocument(text, { lineCounter: new LineCounter(), prettyErrors: false });
  const broken = doc.errors[0];
  if (broken !== undefined)
    return refused(
      makeProblem("marks-broken", place(broken.pos[0], broken.pos[1]), { kind: "yaml", why: whyOf(broken) }),
    );
  const nodeAt = (path: Path): unknown => {
    let node: unknown = doc.contents;
    for (const step of path) {
      if (isAlias(node)) node = node.resolve(doc);
      if (node === null || typeof node !== "object" || !("get" in node)) return undefined;
      node = (node as { get: (key: unknown, keep: boolean) => unknown }).get(step, true);
    }
    return node;
  };
  const placeOf = (path: Path): Place => {
    for (let length = path.length; length >= 0; length--) {
      const node = nodeAt(path.slice(0, length));
      if (isNode(node) && node.range) return place(node.range[0], node.range[1]);
    }
    return whole;
  };
  const placeOfKey = (path: Path, key: string): Place => {
    const node = nodeAt(path);
    const pair = isMap(node)
      ? node.items.find((p) => isPair(p) && isScalar(p.key) && String(p.key.value) === key)
      : undefined;
    if (pair !== undefined && isScalar(pair.key) && pair.key.range)
      return place(pair.key.range[0], pair.key.range[1]);
    return placeOf(path);
  };
  try {
    return { value: doc.toJS(), placeOf, placeOfKey, problems: [] };
  } catch {
    return refused(makeProblem("marks-broken", whole, { kind: "yaml", why: "its references lead too far" }));
  }
};

/** Longest file of this kind that is read, in characters: far beyond any real one. */
const longest = 2_000_000;

/** Why a text cannot be one that people write; null when it can. */
export const notText = (text: string): "binary" | "too-long" | null =>
  text.includes("\u0000") ? "binary" : text.length > longest ? "too-long" : null;

/** The reader's reasons that people meet, in kitchen words; the others keep the reader's own words. */
const reasons: ReadonlyMap<string, string> = new Map([
  ["DUPLICATE_KEY", "the same key stands twice"],
  ["TAB_AS_INDENT", "a tab stands where spaces are wanted"],
  ["BAD_INDENT", "it is set in too far or not far enough"],
  ["MISSING_CHAR", "a closing mark or a colon is missing"],
  ["MULTILINE_IMPLICIT_KEY", "a colon or a line break is missing"],
  ["BLOCK_AS_IMPLICIT_KEY", "it stands on one line with what should be on two"],
]);

const whyOf = (error: YAMLError): string =>
  // The reader has no code for this one: each engine says in its own words that it ran out of room.
  /call stack|too much recursion/i.test(error.message)
    ? "things stand in things too many times over"
    : (reasons.get(error.code) ?? (error.message.split("\n")[0] ?? "").replace(/\.$/, ""));

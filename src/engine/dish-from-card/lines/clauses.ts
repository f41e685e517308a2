import { findUnit } from "../../larder/measures.ts";
import type { Token } from "../../measure/tokens.ts";

/** A run of tokens between the marks of a line; a bracket's inside is a clause of its own. */
export type Clause = {
  readonly kind: "main" | "comma" | "bracket";
  readonly tokens: readonly Token[];
};

const closing: Readonly<Record<string, string>> = { "(": ")", "[": "]", "{": "}" };

const spaced = (line: string, token: Token): boolean =>
  /\s/.test(line[token.start - 1] ?? "") && /\s/.test(line[token.end] ?? "");

const isCut = (line: string, tokens: readonly Token[], at: number): boolean => {
  const token = tokens[at];
  if (token?.kind !== "mark") return false;
  if ([",", ";", ":", "|", "\u2022", "\u00b7"].includes(token.text)) return true;
  if (["-", "\u2013", "\u2014"].includes(token.text)) {
    const between = tokens[at - 1]?.kind === "number" && tokens[at + 1]?.kind === "number";
    // "3 - inch piece"
    const glues = tokens[at - 1]?.kind === "number" && findUnit(tokens[at + 1]?.text ?? "") !== null;
    return !between && !glues && (spaced(line, token) || token.text === "\u2014");
  }
  const next = tokens[at + 1];
  return (
    (token.text === "." || token.text === "!") &&
    next !== undefined &&
    next.start > token.end &&
    /^\p{Lu}/u.test(next.text) &&
    (tokens[at - 1]?.text.length ?? 0) > 3
  );
};

/** Cuts a line at its commas, dashes and brackets. The first clause is the main one, unless the line opens with a bracket. */
export const clausesOf = (line: string, tokens: readonly Token[]): readonly Clause[] => {
  const outside: Token[][] = [[]];
  const brackets: { after: number; tokens: Token[] }[] = [];
  let close: string | null = null;
  let depth = 0;
  tokens.forEach((token, at) => {
    const inner = brackets.at(-1);
    if (close !== null && inner !== undefined) {
      if (token.text === close && depth === 0) close = null;
      else {
        if (closing[token.text] === close) depth += 1;
        if (token.text === close) depth -= 1;
        inner.tokens.push(token);
      }
      return;
    }
    const opens = token.kind === "mark" ? closing[token.text] : undefined;
    if (opens !== undefined) {
      // "egg(s)" is a plural, no remark.
      const glued = tokens[at - 1]?.end === token.start && /^(?:s|es|ies)$/.test(tokens[at + 1]?.lower ?? "");
      close = opens;
      depth = 0;
      brackets.push({ after: glued ? -1 : outside.length - 1, tokens: [] });
    } else if (isCut(line, tokens, at)) outside.push([]);
    else outside.at(-1)?.push(token);
  });
  const clauses: Clause[] = [];
  // A line that is all in brackets is read as if it were not.
  if (outside.every((run) => run.length === 0) && brackets.length > 0)
    return [{ kind: "main", tokens: brackets.flatMap((b) => b.tokens) }];
  outside.forEach((run, i) => {
    const first = !clauses.some((c) => c.kind === "main");
    if (run.length > 0) clauses.push({ kind: first ? "main" : "comma", tokens: run });
    for (const bracket of brackets)
      if (bracket.after === i && bracket.tokens.length > 0)
        clauses.push({ kind: "bracket", tokens: bracket.tokens });
  });
  return clauses;
};

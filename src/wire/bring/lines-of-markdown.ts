import { lexer, type Token, type Tokens } from "marked";
import { parseFragment } from "parse5";
import { parse } from "yaml";
import { broughtWords } from "#words/brought-text.ts";
import { linesOfHtml, plainLine } from "./plain-lines.ts";

const frontMatter = /^---[ \t]*\r?\n([\s\S]*?)\r?\n(?:---|\.\.\.)[ \t]*(?:\r?\n|$)/;

/**
 * A CommonMark text (with tables and task lists) as the lines of a card: the marks of emphasis, links and pictures go,
 * headings, list items and numbers stay. Title and servings may stand in YAML front matter.
 */
export const linesOfMarkdown = (text: string): readonly string[] => {
  const front = frontMatter.exec(text);
  const body = front === null ? text : text.slice(front[0].length);
  const tokens = tokensOf(body);
  if (tokens === null) return text.split(/\r?\n/);
  const lines: string[] = [];
  for (const token of tokens) addBlock(token, lines);
  const facts = front === null ? { title: null, servings: null } : factsOf(front[1] ?? "");
  const hasTitle = tokens.some((token) => token.type === "heading" && (token as Tokens.Heading).depth === 1);
  return [
    ...(facts.title === null || hasTitle ? [] : [facts.title, ""]),
    ...(facts.servings === null ? [] : placeAfterTitle(lines, facts.servings, hasTitle)),
    ...lines,
  ].filter((line, k, all) => line !== "" || (k > 0 && all[k - 1] !== ""));
};

/** The marks of a text; null when they nest deeper than they can be followed, and the text is taken as it is. */
const tokensOf = (text: string): readonly Token[] | null => {
  if (nestsTooDeep(text)) return null;
  try {
    return lexer(text);
  } catch {
    return null;
  }
};

/** Columns of margin and marks before the words of a line; a text beyond it takes minutes to follow and is no recipe. */
const deepest = 120;

const margin = /^[ \t]*(?:(?:[-*+>]|\d{1,9}[.)])[ \t]*)*/;

const nestsTooDeep = (text: string): boolean =>
  text
    .split(/\r\n?|\n/)
    .some(
      (line) =>
        line.length > deepest && /[^-*_\s]/.test(line) && (margin.exec(line)?.[0].length ?? 0) > deepest,
    );

/** The servings stand below the title where the body has one, else at the top. */
const placeAfterTitle = (lines: string[], servings: string, hasTitle: boolean): readonly string[] => {
  if (!hasTitle) return [servings, ""];
  const at = lines.findIndex((line) => line.startsWith("# "));
  lines.splice(at + 1, 0, "", servings);
  return [];
};

const factsOf = (yaml: string): { readonly title: string | null; readonly servings: string | null } => {
  let map: unknown;
  try {
    map = parse(yaml, { maxAliasCount: 10 });
  } catch {
    return { title: null, servings: null };
  }
  if (typeof map !== "object" || map === null) return { title: null, servings: null };
  const factOf = (...names: readonly string[]): string | null => {
    for (const [key, value] of Object.entries(map))
      if (names.includes(key.toLowerCase()) && (typeof value === "string" || typeof value === "number"))
        return String(value).trim();
    return null;
  };
  const servings = factOf("servings", "serves", "yield", "portions", "makes");
  return {
    title: factOf("title", "name"),
    servings: servings === null ? null : /^\d/.test(servings) ? broughtWords.serves(servings) : servings,
  };
};

const addBlock = (token: Token, lines: string[]): void => {
  switch (token.type) {
    case "heading": {
      const heading = token as Tokens.Heading;
      lines.push("", `${"#".repeat(heading.depth)} ${inline(heading.tokens)}`, "");
      return;
    }
    case "list": {
      const list = token as Tokens.List;
      const first = typeof list.start === "number" ? list.start : 1;
      for (const [k, item] of list.items.entries())
        addItem(item, list.ordered ? `${first + k}. ` : "- ", lines);
      lines.push("");
      return;
    }
    case "table": {
      // The head of a table names its columns; each row reads as one line.
      for (const row of (token as Tokens.Table).rows)
        lines.push(
          row
            .map((cell) => inline(cell.tokens))
            .filter((words) => words !== "")
            .join(" "),
        );
      lines.push("");
      return;
    }
    case "blockquote":
      for (const inside of (token as Tokens.Blockquote).tokens) addBlock(inside, lines);
      return;
    case "html":
      lines.push(...linesOfHtml(parseFragment(token.raw).childNodes), "");
      return;
    case "code":
      lines.push(...(token as Tokens.Code).text.split("\n"), "");
      return;
    case "hr":
    case "space":
    case "def":
      lines.push("");
      return;
    default:
      lines.push(...inlineLines("tokens" in token ? (token.tokens ?? []) : [token]), "");
  }
};

const addItem = (item: Tokens.ListItem, mark: string, lines: string[]): void => {
  let open = mark;
  for (const inside of item.tokens) {
    if (inside.type === "text" || inside.type === "paragraph") {
      for (const line of inlineLines("tokens" in inside ? (inside.tokens ?? [inside]) : [inside])) {
        lines.push(`${open}${line}`);
        open = "";
      }
    } else if (inside.type !== "checkbox") addBlock(inside, lines);
  }
};

/** Words of a run of marks, each soft break a space. */
const inline = (tokens: readonly Token[]): string => inlineLines(tokens).join(" ");

const inlineLines = (tokens: readonly Token[]): readonly string[] =>
  textOf(tokens)
    .split(/\r?\n/)
    .map((line) => plainLine(line.replace(/</g, "&lt;")))
    .filter((line) => line !== "");

const textOf = (tokens: readonly Token[]): string =>
  tokens
    .map((token): string => {
      if (token.type === "image" || token.type === "html" || token.type === "checkbox") return "";
      if (token.type === "br") return "\n";
      if ("tokens" in token && Array.isArray(token.tokens)) return textOf(token.tokens);
      return "text" in token && typeof token.text === "string" ? token.text : token.raw;
    })
    .join("");

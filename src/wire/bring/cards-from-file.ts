import { cardNameOf } from "../card-file.ts";
import { type Place, placesIn } from "../place.ts";
import { linesOfMarkdown } from "./lines-of-markdown.ts";
import { parseJson } from "./parse-json.ts";
import { nodesById, recipeNodes } from "./recipe-nodes.ts";
import { partsOfPage } from "./scripts-of-page.ts";
import { textFromRecipe } from "./text-from-recipe.ts";

/** A card as plain text, with the name it would go by. */
export type BroughtCard = { readonly name: string; readonly text: string };

/** Why something of a file did not come over. */
export type BringTrouble = {
  readonly code: "json-broken" | "no-dish" | "page-as-text" | "binary" | "empty";
  readonly place: Place;
};

/** The cards that a file holds, and what did not come over. */
export type Brought = { readonly cards: readonly BroughtCard[]; readonly trouble: readonly BringTrouble[] };

const ending = /\.(txt|text|md|markdown|json|jsonld|html?|xhtml)$/i;

/** True for a file that cards can be brought in from, by its ending. */
export const canBring = (path: string): boolean => ending.test(path);

/**
 * Cards out of a file of any kind that people keep them in: schema.org Recipe as JSON-LD, a web page with such a script
 * or with only its text, Markdown, plain text. The kind is told by what stands in it, then by its ending.
 */
export const cardsFromFile = (path: string, text: string): Brought => {
  const { cards, trouble } = cardsAsWritten(path, text);
  return { cards: cards.map((card) => ({ name: card.name, text: printable(card.text) })), trouble };
};

/** Codes that steer a terminal are no words of a card; a page may carry them to trick its reader. */
const printable = (text: string): string => text.replace(/[^\P{Cc}\t\n\r]/gu, "");

const cardsAsWritten = (path: string, text: string): Brought => {
  const placeOf = placesIn(path, text);
  const trouble = (code: BringTrouble["code"], at = 0): BringTrouble => ({ code, place: placeOf(at, at) });
  const baseName = cardNameOf(path).replace(ending, "");
  if (text.includes("\0")) return { cards: [], trouble: [trouble("binary")] };
  if (text.trim() === "") return { cards: [], trouble: [trouble("empty")] };
  const kind = kindOf(path, text);
  if (kind === "json") {
    const read = parseJson(text);
    if ("brokenAt" in read) return { cards: [], trouble: [trouble("json-broken", read.brokenAt)] };
    const cards = named(textsFromJson(read.json), baseName);
    return { cards, trouble: cards.length === 0 ? [trouble("no-dish")] : [] };
  }
  if (kind === "page") {
    const { data, lines } = partsOfPage(text);
    const troubles: BringTrouble[] = [];
    const texts = data.flatMap((block) => {
      const read = parseJson(block.text);
      if (!("brokenAt" in read)) return textsFromJson(read.json);
      troubles.push(trouble("json-broken", block.at + read.brokenAt));
      return [];
    });
    if (texts.length > 0) return { cards: named(texts, baseName), trouble: troubles };
    const seen = lines();
    if (seen.length === 0) return { cards: [], trouble: [...troubles, trouble("no-dish")] };
    return {
      cards: [{ name: baseName, text: `${seen.join("\n")}\n` }],
      trouble: [...troubles, trouble("page-as-text")],
    };
  }
  const card = kind === "markdown" ? `${linesOfMarkdown(text).join("\n").trim()}\n` : text;
  return { cards: [{ name: baseName, text: card }], trouble: [] };
};

const kindOf = (path: string, text: string): "json" | "page" | "markdown" | "plain" => {
  const head = text.slice(0, 2000).trimStart();
  if (/^(?:<!doctype html|<html[\s>]|<head[\s>]|<body[\s>]|<script[\s>])/i.test(head)) return "page";
  if (/^(?:\ufeff)?[[{]/.test(head) && (/\.json(ld)?$/i.test(path) || /"@(?:type|context|graph)"/.test(text)))
    return "json";
  if (/\.json(ld)?$/i.test(path)) return "json";
  if (/\.x?html?$/i.test(path)) return "page";
  return /\.(?:md|markdown)$/i.test(path) ? "markdown" : "plain";
};

const textsFromJson = (json: unknown): readonly string[] => {
  const known = nodesById(json);
  return recipeNodes(json).map((node) => textFromRecipe(node, known));
};

/** One card goes by its file's name, several by their titles; the same words twice are one card. */
const named = (texts: readonly string[], baseName: string): readonly BroughtCard[] => {
  const different = [...new Set(texts)];
  if (different.length === 1) return different.map((text) => ({ name: baseName, text }));
  const taken = new Set<string>();
  return different.map((text) => {
    const title = text
      .slice(0, text.indexOf("\n"))
      .toLowerCase()
      .normalize("NFKD")
      .replace(/\p{M}/gu, "")
      .replace(/[^\p{L}\p{N}]+/gu, "-")
      .replace(/^-+|-+$/g, "")
      .slice(0, 60);
    const wished = title === "" ? baseName : title;
    let name = wished;
    for (let k = 2; taken.has(name); k += 1) name = `${wished}-${k}`;
    taken.add(name);
    return { name, text };
  });
};

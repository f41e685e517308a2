import { broughtWords } from "#words/brought-text.ts";
import { durationText } from "#words/quantity-text.ts";
import { minutesOfDuration } from "./iso-duration.ts";
import { plainLine, plainLines } from "./plain-lines.ts";
import { isObject, isType, type JsonObject } from "./recipe-nodes.ts";

type Known = ReadonlyMap<string, JsonObject>;

/** A step, or a named run of them. */
type Piece = { readonly section: string | null; readonly steps: readonly string[] };

/**
 * `recipeInstructions` as lines: steps numbered, sections under a heading of their own. Takes a string, a list,
 * HowToStep, HowToDirection, HowToTip, HowToSection and ItemList, however they are nested.
 */
export const stepLines = (instructions: unknown, known: Known): readonly string[] => {
  const lines: string[] = [];
  let count = 0;
  for (const { section, steps } of piecesOf(instructions, known, 0)) {
    if (section !== null) {
      count = 0;
      if (lines.length > 0) lines.push("");
      if (section !== "") lines.push(`${section.replace(/:$/, "")}:`);
    }
    for (const step of steps) {
      count += 1;
      lines.push(/^\d+\s*[.)]\s/.test(step) ? step : `${count}. ${step}`);
    }
    if (section !== null) count = 0;
  }
  return lines;
};

const deepest = 20;

const piecesOf = (value: unknown, known: Known, depth: number): readonly Piece[] => {
  if (depth > deepest) return [];
  if (typeof value === "string") return plainLines(value).map((line) => ({ section: null, steps: [line] }));
  if (Array.isArray(value)) return value.flatMap((item) => piecesOf(item, known, depth + 1));
  if (!isObject(value)) return [];
  const id = value["@id"];
  if (typeof id === "string" && Object.keys(value).length === 1)
    return piecesOf(known.get(id), known, depth + 1);
  const wrapped = value["@value"] ?? value["@list"] ?? value["item"];
  if (wrapped !== undefined) return piecesOf(wrapped, known, depth + 1);
  const inside = value["itemListElement"] ?? value["steps"] ?? value["step"];
  if (inside === undefined) return ownWords(value);
  const steps = piecesOf(inside, known, depth + 1).flatMap((piece) => piece.steps);
  if (isType(value, "HowToSection")) return [{ section: nameOf(value), steps }];
  // A step of several directions is one step: its sentences follow each other.
  if (isType(value, "HowToStep"))
    return steps.length === 0 ? ownWords(value) : [{ section: null, steps: [timed(steps.join(" "), value)] }];
  return piecesOf(inside, known, depth + 1);
};

const ownWords = (node: JsonObject): readonly Piece[] => {
  const text = [node["text"], node["description"], node["name"]].find(
    (words): words is string => typeof words === "string" && words.trim() !== "",
  );
  const lines = text === undefined ? [] : plainLines(text);
  return lines.map((line, k) => ({
    section: null,
    steps: [k === lines.length - 1 ? timed(line, node) : line],
  }));
};

const nameOf = (node: JsonObject): string =>
  typeof node["name"] === "string" ? plainLine(node["name"]) : "";

/** A step that carries its time as data and not in its words gets it said. */
const timed = (text: string, node: JsonObject): string => {
  if (/\d\s*(?:-\s*\d+\s*)?(?:s|sec|min|h|hour|day)/i.test(text)) return text;
  const given = node["performTime"] ?? node["totalTime"];
  const minutes = typeof given === "string" ? minutesOfDuration(given) : null;
  return minutes === null || minutes <= 0
    ? text
    : broughtWords.timed(text.replace(/[.!]\s*$/, ""), durationText(minutes));
};

import type { Finding, Severity } from "#engine/index.ts";
import { type Place, placesIn } from "#wire/place.ts";
import type { Problem } from "#wire/problem.ts";
import { messageOf } from "#words/en.ts";
import { countText } from "#words/number-text.ts";
import { problemSentence } from "#words/problems.ts";
import type { Paint } from "./paint.ts";

/** Something to say about a place in a file: a finding of the engine or a problem of a file. */
export type Remark = {
  readonly code: string;
  readonly severity: Severity;
  readonly place: Place;
  readonly message: string;
};

/** A problem of a file as a remark. */
export const remarkOfProblem = (problem: Problem): Remark => {
  const { says, write } = problemSentence(problem);
  return {
    code: problem.code,
    severity: problem.severity,
    place: problem.place,
    message: write === null ? says : `${says} ${write}`,
  };
};

/** A finding as a remark, at a place that the caller has found. */
export const remarkOfFinding = (finding: Finding, place: Place): Remark => ({
  code: finding.code,
  severity: finding.severity,
  place,
  message: messageOf(finding),
});

/** The places of findings of one text. */
export const remarksOfText = (
  findings: readonly Finding[],
  file: string,
  text: string,
): readonly Remark[] => {
  const place = placesIn(file, text);
  return findings.map((finding) => remarkOfFinding(finding, place(finding.span.start, finding.span.end)));
};

/** Remarks as lines "file:line:column: warn: …", the words marked beneath. Notes are counted and shown on demand. */
export const showRemarks = (
  remarks: readonly Remark[],
  textOf: (file: string) => string | null,
  notes: boolean,
  paint: Paint,
): string => {
  const wanted = remarks.filter((remark) => notes || remark.severity !== "note");
  // When there are too many to read, what stops the work is among those that are shown.
  const shown =
    wanted.length <= mostShown
      ? wanted
      : [
          ...wanted.filter((remark) => remark.severity === "stop"),
          ...wanted.filter((remark) => remark.severity !== "stop"),
        ].slice(0, mostShown);
  const lines = shown.map((remark) => showRemark(remark, textOf(remark.place.file), paint));
  const rest =
    wanted.length > shown.length ? `and ${wanted.length - shown.length} more (--json has all)\n` : "";
  return lines.join("") + rest + tally(remarks, notes);
};

/** More remarks than this nobody reads at once. */
const mostShown = 200;

const showRemark = (
  { code, severity, place, message }: Remark,
  text: string | null,
  paint: Paint,
): string => {
  const mark =
    severity === "stop" ? paint.stop(severity) : severity === "warn" ? paint.warn(severity) : severity;
  const head = `${place.file}:${place.line}:${place.column}: ${mark}: ${message} [${code}]\n`;
  return text === null ? head : head + paint.faint(marked(text, place));
};

/** Longest stretch of a line that is shown. */
const widest = 100;

/** The line of a place with its words marked; empty when the place has no words. */
const marked = (text: string, { start, end, line, column }: Place): string => {
  if (end <= start) return "";
  const lineStart = start - (column - 1);
  const lineEnd = text.indexOf("\n", start);
  const whole = text.slice(lineStart, lineEnd < 0 ? text.length : lineEnd).replace(/\r$/, "");
  // A long line is cut so that the words stay in view.
  const from = column - 1 > widest - 20 ? column - 1 - 20 : 0;
  const view = visible(whole.slice(from, from + widest));
  const under = Math.max(1, Math.min(end - start, view.length - (column - 1 - from)));
  if (view.trim() === "") return "";
  const number = String(line).padStart(5);
  const gap = visible(whole.slice(from, column - 1)).replace(/[^ ]/g, " ");
  return `${number} | ${view}\n${" ".repeat(5)} | ${gap}${"^".repeat(under)}\n`;
};

/** Control characters would move the cursor or ring the bell; they are shown as dots, tabs as spaces. */
const visible = (text: string): string => text.replace(/\t/g, " ").replace(/\p{Cc}|\p{Cf}|\ufffd/gu, "·");

const tally = (remarks: readonly Remark[], notes: boolean): string => {
  if (remarks.length === 0) return "";
  const hidden = !notes && remarks.some((remark) => remark.severity === "note");
  return `${tallyOf(remarks)}${hidden ? " (--notes shows them)" : ""}\n`;
};

/** "1 stop, 3 warnings, 12 notes". */
export const tallyOf = (remarks: readonly Remark[]): string => {
  const of = (severity: Severity): number => remarks.filter((remark) => remark.severity === severity).length;
  const parts = [
    of("stop") > 0 ? countText(of("stop"), "stop", "stops") : "",
    of("warn") > 0 ? countText(of("warn"), "warning", "warnings") : "",
    of("note") > 0 ? countText(of("note"), "note", "notes") : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? "nothing" : parts.join(", ");
};

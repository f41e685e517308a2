import type { Project } from "#engine/index.ts";
import { placesIn } from "./place.ts";
import { makeProblem, type Problem } from "./problem.ts";

/** A project as it was read, or what is wrong with the file. */
export type ProjectRead = { readonly project: Project | null; readonly problems: readonly Problem[] };

/** More activities than any file of this kind has; a larger one is refused before anything is built of it. */
const mostActivities = 5000;

type Line = { readonly text: string; readonly at: number; readonly fields: readonly string[] };

/** Thrown inside this file alone, to leave a half-read project at the line that is wrong. */
class Broken extends Error {
  readonly line: Line | null;
  constructor(line: Line | null, why: string) {
    super(why);
    this.line = line;
  }
}

/** True for a text in the form of PSPLIB (`.sm`, Kolisch and Sprecher 1997) or of ProGen/max (`.sch`, Schwindt 1996). */
export const isProjectFile = (name: string, text: string): boolean =>
  /\.(?:sm|sch)$/i.test(name) || /^\s*PRECEDENCE RELATIONS:/m.test(text);

/** Reads a project: by its headings as PSPLIB, otherwise as ProGen/max. */
export const readProject = (name: string, text: string): ProjectRead => {
  const lines = linesOf(text);
  const isSm = lines.some((line) => /^PRECEDENCE RELATIONS/i.test(line.text));
  try {
    return { project: isSm ? readSm(lines) : readSch(lines), problems: [] };
  } catch (error) {
    if (!(error instanceof Broken)) throw error;
    const at = error.line?.at ?? 0;
    const place = placesIn(name, text)(at, at + (error.line?.text.length ?? 0));
    const kind = isSm ? "psplib" : "progen-max";
    return { project: null, problems: [makeProblem("marks-broken", place, { kind, why: error.message })] };
  }
};

const linesOf = (text: string): readonly Line[] => {
  let at = 0;
  return text.split(/\r?\n/).flatMap((line): Line[] => {
    const own = { text: line, at, fields: line.trim().split(/\s+/) };
    at += line.length + 1;
    return line.trim() === "" ? [] : [own];
  });
};

const whole = (line: Line, field: number, what: string, least = 0): number => {
  const found = line.fields[field];
  const value = Number(found);
  if (found === undefined) throw new Broken(line, `${what} is missing`);
  if (!Number.isInteger(value) || value < least || value > 1e9)
    throw new Broken(line, `${what} is "${found}", and a whole number from ${least} was looked for`);
  return value;
};

/** Lines of a PSPLIB section: from the one after its heading to the next row of stars. */
const section = (lines: readonly Line[], heading: RegExp): readonly Line[] => {
  const at = lines.findIndex((line) => heading.test(line.text));
  if (at < 0) throw new Broken(null, `there is no ${heading.source.replace(/[\^\\]/g, "")}`);
  const end = lines.findIndex((line, i) => i > at && /^\*{3}/.test(line.text));
  return lines.slice(at + 1, end < 0 ? lines.length : end);
};

const readSm = (lines: readonly Line[]): Project => {
  const precedence = section(lines, /^PRECEDENCE RELATIONS/i).filter((line) => /^\s*\d/.test(line.text));
  const requests = section(lines, /^REQUESTS\/DURATIONS/i).filter((line) => /^\s*\d/.test(line.text));
  const available = section(lines, /^RESOURCEAVAILABILITIES/i).find((line) => /^\s*\d/.test(line.text));
  if (available === undefined) throw new Broken(null, "no availabilities stand below their heading");
  const capacities = available.fields.map((_, r) => whole(available, r, `availability ${r + 1}`));
  const count = precedence.length;
  if (count < 2 || count > mostActivities)
    throw new Broken(precedence[0] ?? null, `${count} jobs, and 2 to ${mostActivities} are taken`);
  if (requests.length !== count)
    throw new Broken(
      requests.at(-1) ?? null,
      `${requests.length} jobs have durations and ${count} precedences`,
    );
  const lengths: number[] = [];
  const demands: number[][] = [];
  for (const [i, line] of requests.entries()) {
    if (whole(line, 0, "job number", 1) !== i + 1) throw new Broken(line, `job ${i + 1} was looked for`);
    if (whole(line, 1, "mode", 1) !== 1) throw new Broken(line, "only one mode a job is taken");
    lengths.push(whole(line, 2, "duration"));
    demands.push(capacities.map((_, r) => whole(line, 3 + r, `request ${r + 1}`)));
  }
  const lags = precedence.flatMap((line, i) => {
    if (whole(line, 0, "job number", 1) !== i + 1) throw new Broken(line, `job ${i + 1} was looked for`);
    if (whole(line, 1, "number of modes", 1) !== 1) throw new Broken(line, "only one mode a job is taken");
    const successors = whole(line, 2, "number of successors");
    return Array.from({ length: successors }, (_, k) => ({
      from: i,
      to: activity(line, 3 + k, count, 1),
      weight: lengths[i] ?? 0,
    }));
  });
  return { lengths, demands, capacities, lags };
};

const activity = (line: Line, field: number, count: number, first: 0 | 1): number => {
  const number = whole(line, field, "successor", first);
  if (number - first >= count) throw new Broken(line, `successor ${number} is no activity of the ${count}`);
  return number - first;
};

const readSch = (lines: readonly Line[]): Project => {
  const [head, ...rest] = lines;
  if (head === undefined) throw new Broken(null, "it is empty");
  const count = whole(head, 0, "number of activities") + 2;
  const resources = whole(head, 1, "number of resources");
  if (count > mostActivities) throw new Broken(head, `at most ${mostActivities} activities are taken`);
  if (whole(head, 2, "number of nonrenewable resources") > 0)
    throw new Broken(head, "only renewable resources are taken");
  const relations = rest.slice(0, count);
  const figures = rest.slice(count, 2 * count);
  const last = rest[2 * count];
  if (last === undefined)
    throw new Broken(lines.at(-1) ?? null, `${2 * count + 1} lines were looked for after the first`);
  const lags = relations.flatMap((line, i) => {
    if (whole(line, 0, "activity") !== i) throw new Broken(line, `activity ${i} was looked for`);
    if (whole(line, 1, "number of modes", 1) !== 1) throw new Broken(line, "only one mode is taken");
    const successors = whole(line, 2, "number of successors");
    return Array.from({ length: successors }, (_, k) => {
      const lag = /^\[(-?\d{1,9})\]$/.exec(line.fields[3 + successors + k] ?? "");
      if (lag === null) throw new Broken(line, `lag ${k + 1} in brackets is missing`);
      return { from: i, to: activity(line, 3 + k, count, 0), weight: Number(lag[1]) };
    });
  });
  const lengths = figures.map((line, i) => {
    if (whole(line, 0, "activity") !== i) throw new Broken(line, `activity ${i} was looked for`);
    return whole(line, 2, "duration");
  });
  const demands = figures.map((line) =>
    Array.from({ length: resources }, (_, r) => whole(line, 3 + r, `demand ${r + 1}`)),
  );
  const capacities = Array.from({ length: resources }, (_, r) => whole(last, r, `capacity ${r + 1}`));
  return { lengths, demands, capacities, lags };
};

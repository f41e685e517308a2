import { dirname, isAbsolute, join } from "node:path";
import { type Evening, type Finding, firstEffort, type PlanEffort, runEvening } from "#engine/index.ts";
import { type Place, placesIn } from "#wire/place.ts";
import { decode, type ReadText } from "#wire/read-text.ts";
import { type SittingFiles, type SittingRead, sittingFromFiles } from "#wire/sitting-from-files.ts";
import { type Remark, remarkOfFinding, remarkOfProblem } from "./show/remarks.ts";
import type { ReadTrouble, World } from "./world.ts";

/** A sitting file with all that follows from it. */
export type LoadedSitting = {
  readonly read: SittingRead;
  /** Null when the files cannot be used. */
  readonly evening: Evening | null;
  readonly findings: readonly Finding[];
  readonly remarks: readonly Remark[];
  readonly textOf: (file: string) => string | null;
  /** A finding on the sitting or one of its cards, with its place in the file. */
  readonly remarkOf: (finding: Finding) => Remark;
};

/** Why a path cannot be read, in words. */
export const troubleText = (path: string, trouble: ReadTrouble): string => {
  const reasons: { readonly [T in ReadTrouble]: string } = {
    missing: "there is no such file",
    folder: "this is a folder; a file was looked for",
    denied: "the file may not be read by you",
    "too-long": "the file is far longer than any text of this kind",
  };
  return `${path}: ${reasons[trouble]}`;
};

/** The text of a path, or of the standard input for "-". */
export const readInput = async (path: string, world: World): Promise<ReadText | ReadTrouble> =>
  path === "-" ? decode(await world.stdin()) : world.read(path);

/** Reads a sitting and runs the evening. A folder stands for the sitting.yaml in it. `change` may alter the files first. */
export const loadSitting = async (
  path: string,
  world: World,
  effort: PlanEffort = firstEffort,
  change: (files: SittingFiles) => SittingFiles = (files) => files,
): Promise<LoadedSitting | string> => {
  const inFolder = path === "-" ? null : world.list(path);
  const file = inFolder === null ? path : join(path, "sitting.yaml");
  const own = await readInput(file, world);
  if (typeof own === "string") return troubleText(file, own);
  const folder = file === "-" ? "" : dirname(file);
  const resolve = (name: string): string => (isAbsolute(name) || folder === "." ? name : join(folder, name));
  const shownName = file === "-" ? "<stdin>" : file;
  const texts = new Map<string, string>([[shownName, own.text]]);
  const read = sittingFromFiles(
    change({
      sitting: { name: shownName, text: own.text },
      read: (name) => {
        const found = world.read(resolve(name));
        if (typeof found === "string") return null;
        texts.set(resolve(name), found.text);
        return found.text;
      },
      list: (name) => world.list(resolve(name)),
    }),
  );
  const toPath = (place: Place): Place =>
    place.file === shownName ? place : { ...place, file: resolve(place.file) };
  const textOf = (name: string): string | null => texts.get(name) ?? null;
  const problems = read.problems.map((problem) =>
    remarkOfProblem({ ...problem, place: toPath(problem.place) }),
  );
  const files = new Map(
    read.cards.map((card) => [card.source, { file: resolve(card.file), text: card.text }]),
  );
  const remarkOf = (finding: Finding): Remark => {
    const card = files.get(finding.source);
    if (card !== undefined)
      return remarkOfFinding(finding, placesIn(card.file, card.text)(finding.span.start, finding.span.end));
    return remarkOfFinding(finding, toPath(read.placeOf(finding.path ?? "")));
  };
  if (read.sitting === null)
    return { read, evening: null, findings: [], remarks: problems, textOf, remarkOf };
  const { value, findings } = runEvening(read.sitting, read.cards, effort);
  return {
    read,
    evening: value,
    findings,
    remarks: [...problems, ...findings.map(remarkOf)],
    textOf,
    remarkOf,
  };
};

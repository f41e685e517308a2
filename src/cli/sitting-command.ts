import { type Evening, firstEffort } from "#engine/index.ts";
import { printJson } from "#wire/print-json.ts";
import { findingJson } from "#wire/read-json.ts";
import { bearsOn, type Topic } from "./bearing.ts";
import { type Command, commonOptions, type OptionSpec } from "./command.ts";
import { type LoadedSitting, loadSitting } from "./load-sitting.ts";
import type { Paint } from "./show/paint.ts";
import { type Remark, showRemarks } from "./show/remarks.ts";
import { exitCodes } from "./world.ts";

/** What a command on a sitting shows: text for a cook, or the part of the evening that goes out as JSON. */
type View = {
  readonly name: string;
  readonly summary: string;
  readonly about: string;
  readonly examples: readonly string[];
  readonly options?: Readonly<Record<string, OptionSpec>>;
  /** What the sheet is about. */
  readonly topics: readonly Topic[];
  /** True when the text itself tells the findings, in short; then they are not printed beside it. */
  readonly tellsFindings?: boolean;
  readonly text: (
    evening: Evening,
    paint: Paint,
    flag: (name: string) => boolean,
    remarks: readonly Remark[],
    keepGoing: () => boolean,
  ) => string;
  /** Set for a command that may search for long. */
  readonly searches?: true;
  readonly json: (evening: Evening, keepGoing: () => boolean) => Readonly<Record<string, unknown>>;
};

/** A command that reads a sitting, runs the evening and shows one side of it. */
export const sittingCommand = (view: View): Command => ({
  name: view.name,
  summary: view.summary,
  takes: "SITTING",
  least: 1,
  most: 1,
  options: { ...commonOptions, ...view.options },
  about: view.about,
  ...(view.searches === undefined ? {} : { searches: view.searches }),
  examples: view.examples,
  run: async ({ args, flag, world, paint, errPaint }) => {
    const keepGoing = (): boolean => world.endAsked?.() !== true;
    const loaded = await loadSitting(args[0] ?? "", world, { ...firstEffort, keepGoing });
    if (typeof loaded === "string")
      return { stdout: "", stderr: `tamis: ${loaded}\n`, code: exitCodes.unusable };
    const { evening, textOf } = loaded;
    const remarks = loaded.remarks.filter((remark) => bearsOn(remark.code, view.topics));
    const told = view.tellsFindings === true && evening !== null && !flag("json");
    const stderr = told ? "" : showRemarks(remarks, textOf, flag("notes"), errPaint);
    const stopped = remarks.some((remark) => remark.severity === "stop");
    const stdout = flag("json")
      ? printJson({
          ...(evening === null ? { [view.name]: null } : view.json(evening, keepGoing)),
          ...remarksJson(loaded),
        })
      : evening === null
        ? ""
        : view.text(evening, paint, flag, remarks, keepGoing);
    return { stdout, stderr, code: stopped ? exitCodes.stopped : exitCodes.fine };
  },
});

/** Problems of the files, and findings with their places, as JSON. */
const remarksJson = ({ read, findings, remarks }: LoadedSitting) => ({
  problems: remarks.slice(0, read.problems.length).map(({ code, severity, place, message }) => ({
    code,
    severity,
    file: place.file,
    line: place.line,
    column: place.column,
    message,
  })),
  findings: findings.map((finding, i) => {
    const place = remarks[read.problems.length + i]?.place;
    return {
      ...findingJson(finding),
      file: place?.file ?? null,
      line: place?.line ?? null,
      column: place?.column ?? null,
    };
  }),
});

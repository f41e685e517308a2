import type { Paint } from "./show/paint.ts";
import type { Result, World } from "./world.ts";

/** Options that commands take, as `parseArgs` wants them, with the words of the help. */
export type OptionSpec = {
  readonly type: "boolean" | "string";
  readonly help: string;
  /** How the value is called in the help, for options with one. */
  readonly value?: string;
};

/** What a command is given. */
type Call = {
  readonly args: readonly string[];
  readonly flag: (name: string) => boolean;
  readonly value: (name: string) => string | null;
  readonly world: World;
  readonly paint: Paint;
  readonly errPaint: Paint;
};

/** One verb of the command line. */
export type Command = {
  readonly name: string;
  readonly summary: string;
  /** What stands after the verb: "CARD…", "SITTING". */
  readonly takes: string;
  readonly least: number;
  readonly most: number;
  readonly options: Readonly<Record<string, OptionSpec>>;
  readonly about: string;
  readonly examples: readonly string[];
  /** True when it may search for long, and shows the best it has when it is asked to end. */
  readonly searches?: true;
  readonly run: (call: Call) => Promise<Result>;
};

/** Options that nearly every command takes. */
export const commonOptions = {
  json: { type: "boolean", help: "print JSON (docs/formats.md has the shapes)" },
  notes: { type: "boolean", help: "show notes too: what was assumed" },
} as const;

import type { ReadText } from "#wire/read-text.ts";

/** Why a path gave no text. */
export type ReadTrouble = "missing" | "folder" | "denied" | "too-long";

/** All that the command line needs of the machine; a test hands in its own. */
export type World = {
  readonly read: (path: string) => ReadText | ReadTrouble;
  /** Names in a folder; null when there is no such folder. */
  readonly list: (folder: string) => readonly string[] | null;
  /** Paths of all files in a folder and below, in order of name; null when there is no such folder. */
  readonly walk: (folder: string) => readonly string[] | null;
  /** Writes a new file and the folders above it; a file that is there is never written over. */
  readonly write: (path: string, text: string) => "written" | "taken" | "denied";
  /** Seconds of a clock that only goes forward. */
  readonly now: () => number;
  /** Says at once how far long work is, to a person who watches. */
  readonly tell: (text: string) => void;
  readonly stdin: () => Promise<Uint8Array>;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** True once whoever started the command asked it to end; absent: nobody can. */
  readonly endAsked?: () => boolean;
  /** True where a person watches. */
  readonly terminal: { readonly stdout: boolean; readonly stderr: boolean };
};

/** What a run of the command line gives back. */
export type Result = { readonly stdout: string; readonly stderr: string; readonly code: number };

/** Exit codes, as `--help` lists them. */
export const exitCodes = { fine: 0, stopped: 1, unusable: 2, noPlan: 3, noneFound: 4, broken: 70 } as const;

/** Exit codes of a command that was asked to end, by the signal: 128 and its number, as shells have it. */
export const endedBy = { SIGINT: 130, SIGTERM: 143 } as const;

/** Longest file that is opened at all, in bytes; the engine reads less of it and says so. */
export const longestFile = 16_000_000;

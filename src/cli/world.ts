/** Why a path gave no text. */
export type ReadTrouble = "missing" | "folder" | "denied" | "too-long";

/** A text, and whether it had to be read by another encoding than UTF-8. */
export type ReadText = { readonly text: string; readonly encoding: "utf-8" | "utf-16" | "windows-1252" };

/** All that the command line needs of the machine; a test hands in its own. */
export type World = {
  readonly read: (path: string) => ReadText | ReadTrouble;
  /** Names in a folder; null when there is no such folder. */
  readonly list: (folder: string) => readonly string[] | null;
  readonly stdin: () => Promise<Uint8Array>;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** True where a person watches. */
  readonly terminal: { readonly stdout: boolean; readonly stderr: boolean };
};

/** What a run of the command line gives back. */
export type Result = { readonly stdout: string; readonly stderr: string; readonly code: number };

/** Exit codes, as `--help` lists them. */
export const exitCodes = { fine: 0, stopped: 1, unusable: 2, broken: 70 } as const;

/** Longest file that is opened at all, in bytes; the engine reads less of it and says so. */
export const longestFile = 16_000_000;

/** Bytes as text: UTF-8, UTF-16 by its mark, else Windows-1252, which has a character for nearly every byte. */
export const decode = (bytes: Uint8Array): ReadText => {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    const label = bytes[0] === 0xff ? "utf-16le" : "utf-16be";
    return { text: new TextDecoder(label).decode(bytes), encoding: "utf-16" };
  }
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "utf-8" };
  } catch {
    // Bytes with zeros are no text in any encoding that people save cards in; the engine says so.
    return bytes.includes(0)
      ? { text: new TextDecoder("utf-8").decode(bytes), encoding: "utf-8" }
      : { text: new TextDecoder("windows-1252").decode(bytes), encoding: "windows-1252" };
  }
};

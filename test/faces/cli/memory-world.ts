import type { World } from "#cli/world.ts";
import { decode } from "#wire/read-text.ts";
import { listIn, smallSitting } from "../small-sitting.ts";

/** The files of a machine in memory, by their paths. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** A machine in memory. */
export const worldOf = (
  files: Files,
  more: Partial<World> & { readonly input?: Uint8Array } = {},
): World => ({
  read: (path) => {
    const found = files[path];
    if (found === undefined) return listIn(files, path) === null ? "missing" : "folder";
    return typeof found === "string" ? { text: found, encoding: "utf-8" } : decode(found);
  },
  list: (folder) => listIn(files, folder),
  walk: (folder) => {
    const inside = Object.keys(files).filter((path) => path.startsWith(`${folder}/`));
    return inside.length === 0 ? null : inside.sort();
  },
  write: () => "denied",
  now: () => performance.now() / 1000,
  tell: () => undefined,
  stdin: async () => more.input ?? new Uint8Array(),
  env: {},
  terminal: { stdout: false, stderr: false },
  ...more,
});

/** A small sitting in the folder "lunch". */
export const lunch: Files = Object.fromEntries(
  Object.entries(smallSitting).map(([name, text]) => [`lunch/${name}`, text]),
);

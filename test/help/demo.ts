import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type SittingRead, sittingFromFiles } from "#wire/sitting-from-files.ts";

/** The demo's folder; there is one. */
const demoFolder = join(
  import.meta.dirname,
  "../../demo",
  readdirSync(join(import.meta.dirname, "../../demo"))[0]!,
);

const orNull = <V>(read: () => V): V | null => {
  try {
    return read();
  } catch {
    return null;
  }
};

/** Reads the demo as the command line would; `change` may rewrite a file's text first. */
export const readDemo = (change: (name: string, text: string) => string = (_, text) => text): SittingRead =>
  sittingFromFiles({
    sitting: {
      name: "sitting.yaml",
      text: change("sitting.yaml", readFileSync(join(demoFolder, "sitting.yaml"), "utf8")),
    },
    read: (name) => orNull(() => change(name, readFileSync(join(demoFolder, name), "utf8"))),
    list: (folder) => orNull(() => readdirSync(join(demoFolder, folder)).sort()),
  });

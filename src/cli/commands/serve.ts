import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Command } from "../command.ts";
import { makeFolder } from "../make-folder.ts";
import { exitCodes } from "../world.ts";

/** Starts the server. Its code is loaded only now, so that the other commands need no database. */
export const serveCommand: Command = {
  name: "serve",
  summary: "open the app in a browser, on this machine only",
  takes: "[FOLDER]",
  least: 0,
  most: 1,
  options: {
    port: { type: "string", value: "N", help: "the port to try first (4870 when left out)" },
    data: { type: "string", value: "FOLDER", help: "where documents are kept (TAMIS_DATA, or .tamis)" },
  },
  about:
    "Reads a sitting's folder (sitting.yaml, kitchen.yaml, price lists, cards) into the store and serves the app\n" +
    "on 127.0.0.1. What was edited in the app is not overwritten: a file that changed since is kept beside it.",
  examples: ["tamis serve demo/lantern-supper", "tamis serve --port 5000"],
  run: async ({ args, value, world }) => {
    const port = Number(value("port") ?? 4870);
    if (!Number.isInteger(port) || port < 0 || port > 65_000)
      return {
        stdout: "",
        stderr: "tamis serve: --port must be a whole number up to 65000\n",
        code: exitCodes.unusable,
      };
    const folder = args[0] ?? null;
    if (folder !== null && world.list(folder) === null)
      return {
        stdout: "",
        stderr: `tamis serve: ${folder}: there is no such folder\n`,
        code: exitCodes.unusable,
      };
    const { serve } = await import("#server/serve.ts");
    const dataFolder = value("data") ?? world.env["TAMIS_DATA"] ?? ".tamis";
    const webFolder = join(dirname(fileURLToPath(import.meta.url)), "../web");
    const started = async () => {
      makeFolder(dataFolder);
      return serve({ dataFolder, webFolder, folder, port });
    };
    const serving = await started().catch((error: unknown) =>
      error instanceof Error ? error.message : String(error),
    );
    // The folder cannot be written, the store is damaged or newer, every port is taken: all for people to put right.
    if (typeof serving === "string")
      return {
        stdout: "",
        stderr: `tamis serve: it cannot start with the documents in ${dataFolder}: ${serving}\n`,
        code: exitCodes.unusable,
      };
    const stop = (): void => {
      void serving.close().then(() => process.exit(exitCodes.fine));
    };
    process.once("SIGINT", stop);
    process.once("SIGTERM", stop);
    const aside = (serving.load?.aside ?? [])
      .map((path) => `${path}: edited in the app since; the file's text is kept among its revisions\n`)
      .join("");
    const unread = (serving.load?.unread ?? []).map((path) => `${path}: the file may not be read by you\n`);
    return { stdout: `Open ${serving.url}\n`, stderr: aside + unread.join(""), code: exitCodes.fine };
  },
};

import { mkdirSync } from "node:fs";
import type { Server } from "node:http";
import { join } from "node:path";
import { createAdaptorServer } from "@hono/node-server";
import { makeApp } from "./app.ts";
import { type FolderLoad, loadFolder } from "./load-folder.ts";
import { openStore } from "./store/store.ts";
import { titleOf } from "./title-of.ts";

/** Where and what to serve. */
type ServeOptions = {
  /** The folder of the store's file; it is made when it is not there. */
  readonly dataFolder: string;
  readonly webFolder: string;
  /** A sitting's folder to read first; null for none. */
  readonly folder: string | null;
  readonly port: number;
};

/** A server that runs. */
export type Serving = {
  readonly url: string;
  readonly load: FolderLoad | null;
  readonly close: () => Promise<void>;
};

/** This many ports are tried, from the one asked for. */
const portsTried = 20;

/** Starts the server on the loopback interface, on the first free port. */
export const serve = async ({ dataFolder, webFolder, folder, port }: ServeOptions): Promise<Serving> => {
  mkdirSync(dataFolder, { recursive: true });
  const store = openStore(join(dataFolder, "tamis.sqlite"), { now: () => new Date().toISOString(), titleOf });
  const load = folder === null ? null : loadFolder(store, folder);
  const server = createAdaptorServer({ fetch: makeApp(store, webFolder).fetch }) as Server;
  const taken = await listen(server, port);
  return {
    url: `http://127.0.0.1:${taken}`,
    load,
    close: async () => {
      server.closeAllConnections();
      await new Promise<void>((done) => {
        server.close(() => done());
      });
      store.close();
    },
  };
};

/** Listens on the port or one of those after it; 0 lets the system choose. */
const listen = async (server: Server, first: number): Promise<number> => {
  for (let port = first; port < first + portsTried; port++) {
    try {
      return await listenOn(server, port);
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EADDRINUSE") throw error;
    }
  }
  throw new Error(`No port from ${first} to ${first + portsTried - 1} is free.`);
};

const listenOn = (server: Server, port: number): Promise<number> =>
  new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      const address = server.address();
      resolve(typeof address === "object" && address !== null ? address.port : port);
    });
  });

import { readFileSync, statSync } from "node:fs";
import { extname, join, normalize, sep } from "node:path";
import type { MiddlewareHandler } from "hono";

const types: ReadonlyMap<string, string> = new Map([
  [".html", "text/html; charset=utf-8"],
  [".js", "text/javascript; charset=utf-8"],
  [".css", "text/css; charset=utf-8"],
  [".svg", "image/svg+xml"],
  [".json", "application/json"],
  [".webmanifest", "application/manifest+json"],
  [".png", "image/png"],
  [".woff2", "font/woff2"],
]);

/** Serves the built web app; ways that are no file lead to its page, which knows them. */
export const webFiles = (folder: string): MiddlewareHandler => {
  return async (c) => {
    const wanted = namesOf(c.req.path);
    const file = join(folder, ...wanted);
    const found = isFile(file) ? file : extname(file) === "" ? join(folder, "index.html") : null;
    if (found === null || !isFile(found))
      return c.text("The web app is not built here; npm run build makes it.\n", 404);
    c.header("Content-Type", types.get(extname(found)) ?? "application/octet-stream");
    c.header("Cache-Control", "no-cache");
    return c.body(new Uint8Array(readFileSync(found)));
  };
};

/** The names along a way; those that lead upwards are dropped, and so is a way whose escapes cannot be read. */
const namesOf = (path: string): readonly string[] => {
  try {
    return normalize(decodeURIComponent(path))
      .split(sep)
      .filter((name) => name !== "..");
  } catch {
    return [];
  }
};

const isFile = (path: string): boolean => {
  try {
    return statSync(path).isFile();
  } catch {
    return false;
  }
};

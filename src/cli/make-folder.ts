import { existsSync, mkdirSync } from "node:fs";
import { dirname, resolve } from "node:path";

/**
 * Makes a folder and those above it, from the top down. Throws where one cannot be made; Node's own way of making them
 * all goes on for ever in places such as /proc, where what is above is there and yet nothing can be made in it.
 */
export const makeFolder = (path: string): void => {
  const missing: string[] = [];
  for (let at = resolve(path); !existsSync(at); at = dirname(at)) missing.push(at);
  for (const folder of missing.reverse()) mkdirSync(folder);
};

import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Check } from "./check.ts";

/** The checks of one file, by its topic: "densities" for densities.checks.ts. */
export type Topic = { readonly topic: string; readonly checks: readonly Check[] };

const folder = fileURLToPath(new URL(".", import.meta.url));
const ending = ".checks.ts";

/** Every outside check of the house, by topic in the order of their names. */
export const allChecks = async (): Promise<readonly Topic[]> => {
  const files = readdirSync(folder)
    .filter((file) => file.endsWith(ending))
    .sort();
  return Promise.all(
    files.map(async (file) => {
      const module = (await import(`${folder}${file}`)) as { readonly checks: readonly Check[] };
      return { topic: file.slice(0, -ending.length), checks: module.checks };
    }),
  );
};

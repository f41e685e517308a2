import { containerRows } from "./tables/containers.ts";

/** A container of a standard size: litres to the brim, and the area of its rim. */
export type ContainerSize = { readonly size: string; readonly litres: number; readonly areaCm2: number };

const bare = (words: string): string =>
  words
    .toLowerCase()
    .replace(/gastronorm|gn|mm/g, "")
    .replace(/[^0-9/]+/g, " ")
    .trim();

const byName: ReadonlyMap<string, ContainerSize> = new Map(
  containerRows.map(([size, long, wide, , litres]) => [
    bare(size),
    { size, litres, areaCm2: (long * wide) / 100 },
  ]),
);

/** All sizes that are known, as people write them. */
export const containerSizes: readonly string[] = containerRows.map(([size]) => size);

/** The container that these words name ("GN 1/1 65", "1/1 65 mm", "gn1/2-100"); null when none. */
export const containerNamed = (words: string): ContainerSize | null => byName.get(bare(words)) ?? null;

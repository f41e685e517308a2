import type { Region } from "#engine/index.ts";

/** The regions that --region takes. */
export const regionNames: readonly Region[] = ["uk", "us", "eu", "au"];

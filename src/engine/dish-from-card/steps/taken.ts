import type { Pool } from "./pools.ts";

/** A listed ingredient taken from the list. `from` and `to` are places in the clause. */
export type Fresh = {
  readonly ingredient: number;
  readonly share: number;
  readonly implied: boolean;
  /** A part of a food listed whole: "yolk", "zest". */
  readonly portion?: string | null;
  readonly from: number;
  readonly to: number;
};

/** An ingredient named that already lies in a pool. */
export type Again = {
  readonly ingredient: number;
  readonly pool: Pool;
  readonly share: number;
  readonly portion?: string | null;
  /** "The beef mix": all that lies there with it is meant. */
  readonly whole?: boolean;
  readonly from: number;
  readonly to: number;
};

/** A pool that the words name, or a part of the dish whose lines were not used yet. */
export type Product = {
  readonly pool: Pool | null;
  readonly members: readonly number[];
  readonly share: number;
  readonly from: number;
  readonly to: number;
};

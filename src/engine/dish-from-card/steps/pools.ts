/** What lies together in one vessel at a moment of the method, and who made it so. */
export type Pool = {
  /** Places in the ingredient list. */
  readonly contents: Set<number>;
  /** Parts of whole foods that lie in it: "4:yolk" for the yolks of line 4. */
  readonly portions: Set<string>;
  /** Id of the action that left it as it is; null for an empty pan. */
  last: string | null;
  /** Actions that must be done before it is worked on again, though what they made lies elsewhere. */
  readonly waits: Set<string>;
  /** Only these contents of what `last` made are left in it: the others were lifted out. */
  partial: boolean;
  /** It was lifted out or set aside, to come back later. */
  aside: boolean;
  /** The pot that it was lifted out of; null for none. */
  from: Pool | null;
  /** It stands in the oven. */
  inOven: boolean;
  /** It stands on a burner or under the grill. */
  onHeat: boolean;
  /** It came out of the oven done. */
  baked: boolean;
  /** The fat in it was heated to this, in °C; null when not stated. */
  fatCelsius: number | null;
  /** Techniques that were done to it: "the grated beetroot" is found by them. */
  readonly did: Set<string>;
  /** How many actions had been read when it was last worked on. */
  turn: number;
  /** The sentence in which it was last worked on. */
  sentence: string;
  /** What cooks call it: "dough", "sauce", the name of a part. */
  readonly names: Set<string>;
  part: string | null;
  vessel: string | null;
  /** The vessel in the cook's words: "large frying pan". */
  called: string | null;
  /** The part of it that no other pool has taken yet, 0 to 1. */
  left: number;
  /** Only fat, water or an empty pan made hot: what comes next goes in. */
  primed: boolean;
  /** Only peeled, cut, weighed so far. */
  raw: boolean;
  /** It stands in a mixer or a processor. */
  machine: "mixer" | "processor" | null;
};

/** All vessels of a dish while its method is read. */
export type Kitchen = {
  readonly pools: Pool[];
  /** What the cook has in hand. */
  current: Pool | null;
  /** A pan that was emptied and may be used again ("in the same pan"). */
  emptied: Pool | null;
  /** The pan on the fire that food was moved out of into another vessel; only "the same pan" means it. */
  vacated: Pool | null;
  /** Every name that some pool bears or bore, so that most words are passed over at once. */
  readonly names: Set<string>;
  /** How many actions have moved food so far. */
  turn: number;
  /** What a part was taken of last: "chop the rest". */
  split: Pool | null;
};

/** An empty pool of a part of the dish. */
export const newPool = (part: string | null): Pool => ({
  contents: new Set(),
  portions: new Set(),
  last: null,
  waits: new Set(),
  partial: false,
  aside: false,
  from: null,
  inOven: false,
  onHeat: false,
  baked: false,
  fatCelsius: null,
  did: new Set(),
  turn: 0,
  sentence: "",
  names: new Set(),
  part,
  vessel: null,
  called: null,
  left: 1,
  primed: false,
  raw: true,
  machine: null,
});

/** Gives a pool a name by which cooks may call it. */
export const callPool = (kitchen: Kitchen, pool: Pool, name: string): void => {
  pool.names.add(name);
  kitchen.names.add(name);
};

/** Pools that still hold something. */
export const livePools = (kitchen: Kitchen): readonly Pool[] =>
  kitchen.pools.filter((p) => p.left > 0.001 && p.last !== null);

/** The newest live pool that passes a test; null when none does. */
export const newestPool = (kitchen: Kitchen, test: (pool: Pool) => boolean): Pool | null => {
  for (let i = kitchen.pools.length - 1; i >= 0; i -= 1) {
    const pool = kitchen.pools[i];
    if (pool !== undefined && pool.left > 0.001 && pool.last !== null && test(pool)) return pool;
  }
  return null;
};

/** The live pool that passes a test and was worked on last; null when none does. */
export const latestPool = (kitchen: Kitchen, test: (pool: Pool) => boolean): Pool | null => {
  let latest: Pool | null = null;
  for (const pool of kitchen.pools)
    if (pool.left > 0.001 && pool.last !== null && pool.turn >= (latest?.turn ?? 0) && test(pool))
      latest = pool;
  return latest;
};

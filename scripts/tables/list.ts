import { buildContainers } from "./containers.ts";
import type { CsvRow } from "./csv.ts";
import { buildFoods } from "./foods.ts";
import { buildLimits } from "./limits.ts";
import { buildMeasures } from "./measures.ts";
import { buildNeeds } from "./needs.ts";
import { buildTechniques } from "./techniques.ts";
import { buildWorkRates } from "./work-rates.ts";

/** A table of the larder: src/engine/larder/tables/<name>.ts is what `build` makes of the rows of data/<name>.csv. */
export type Table = { readonly name: string; readonly build: (rows: readonly CsvRow[]) => string };

/** Every generated table, one line each. */
export const tables: readonly Table[] = [
  { name: "foods", build: buildFoods },
  { name: "measures", build: buildMeasures },
  { name: "needs", build: buildNeeds },
  { name: "limits", build: buildLimits },
  { name: "techniques", build: buildTechniques },
  { name: "containers", build: buildContainers },
  { name: "work-rates", build: buildWorkRates },
];

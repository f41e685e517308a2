import { writeFileSync } from "node:fs";
import { projectRoot, readTable } from "./tables/csv.ts";
import { tables } from "./tables/list.ts";

for (const { name, build } of tables) {
  writeFileSync(`${projectRoot}src/engine/larder/tables/${name}.ts`, build(readTable(`${name}.csv`)));
  console.log(`wrote src/engine/larder/tables/${name}.ts`);
}

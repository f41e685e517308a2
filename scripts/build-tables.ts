import { writeFileSync } from "node:fs";
import { projectRoot } from "./tables/csv.ts";
import { tables } from "./tables/list.ts";

for (const { name, build } of tables) {
  writeFileSync(`${projectRoot}src/engine/larder/tables/${name}.ts`, build());
  console.log(`wrote src/engine/larder/tables/${name}.ts`);
}

import { mkdirSync, writeFileSync } from "node:fs";
import { findingsPages } from "./findings-pages.ts";
import { projectRoot } from "./tables/csv.ts";

const folder = `${projectRoot}docs/findings/`;
mkdirSync(folder, { recursive: true });
for (const page of findingsPages()) {
  writeFileSync(folder + page.name, page.text);
  console.log(`wrote docs/findings/${page.name}`);
}

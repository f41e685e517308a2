import { writeFileSync } from "node:fs";
import { allChecks } from "../test/published/all-checks.ts";
import { checkedAgainst } from "./checked-against.ts";
import { projectRoot } from "./tables/csv.ts";

const topics = await allChecks();
writeFileSync(`${projectRoot}docs/checked-against.md`, checkedAgainst(topics));
console.log(`wrote docs/checked-against.md: ${topics.reduce((sum, t) => sum + t.checks.length, 0)} checks`);

// Builds the command line, the server and the web app into dist/.
import { existsSync } from "node:fs";
import { join } from "node:path";
import { bundleCli, bundleWeb, root } from "./bundle.mjs";

await bundleCli();
if (existsSync(join(root, "src/web/main.tsx"))) await bundleWeb();

import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** The folder of the project. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** Bundles go in beside what is there and take its place in one move, so that a program that is running meanwhile never reads half a file. */
const bundle = async (options) => {
  const result = await build({
    absWorkingDir: root,
    bundle: true,
    format: "esm",
    target: "es2022",
    sourcemap: false,
    legalComments: "none",
    logLevel: "warning",
    write: false,
    ...options,
  });
  // The entry points come last: when they are there, all that they import is there.
  const files = result.outputFiles.toSorted(
    (a, b) => Number(isEntry(a.path, options)) - Number(isEntry(b.path, options)),
  );
  for (const file of files) put(file.path, file.contents);
};

const isEntry = (path, { entryPoints }) =>
  Object.keys(entryPoints).some((name) => path.endsWith(`/${name}.mjs`) || path.endsWith(`/${name}.js`));

const put = (path, contents) => {
  mkdirSync(dirname(path), { recursive: true });
  const beside = `${path}.${process.pid}`;
  writeFileSync(beside, contents);
  renameSync(beside, path);
};

/** The command line and the server, for Node; the one native package stays outside. */
export const bundleCli = async () => {
  await bundle({
    entryPoints: { beside: "src/cli/beside.ts", main: "src/cli/main.ts" },
    outdir: "dist/cli",
    outExtension: { ".js": ".mjs" },
    platform: "node",
    splitting: true,
    external: ["better-sqlite3"],
    banner: {
      js: 'import { createRequire as tamisRequire } from "node:module"; const require = tamisRequire(import.meta.url);',
    },
  });
  removeOld(join(root, "dist/cli"), statSync(join(root, "dist/cli/main.mjs")).mtimeMs);
};

/** The web app: the page, and its workers, which share nothing that the page would then have to load. */
export const bundleWeb = async () => {
  const sources = join(root, "src/web");
  const workers = readdirSync(sources).filter((name) => /worker\.ts$/.test(name));
  const forBrowsers = {
    outdir: "dist/web",
    platform: "browser",
    minify: true,
    define: { "process.env.NODE_ENV": '"production"' },
  };
  await bundle({
    ...forBrowsers,
    entryPoints: Object.fromEntries(workers.map((name) => [name.replace(/\.ts$/, ""), `src/web/${name}`])),
  });
  await bundle({
    ...forBrowsers,
    entryPoints: {
      main: "src/web/main.tsx",
      style: "src/web/style.css",
      mark: "src/web/mark.svg",
      index: "src/web/index.html",
    },
    loader: { ".html": "copy", ".svg": "copy" },
    // What is seldom wanted comes when it is.
    splitting: true,
    chunkNames: "pieces/[name]-[hash]",
    jsx: "automatic",
    jsxImportSource: "preact",
  });
  removeOld(join(root, "dist/web/pieces"), statSync(join(root, "dist/web/main.js")).mtimeMs);
};

/** Pieces of earlier builds go when nobody can still be loading them: after an hour. */
const removeOld = (folder, newest) => {
  if (!existsSync(folder)) return;
  for (const name of readdirSync(folder)) {
    const path = join(folder, name);
    if (newest - statSync(path).mtimeMs > 3_600_000) rmSync(path, { force: true });
  }
};

// Who may import whom: one rule, one reason.
const shared = "^src/engine/(model|measure|findings|larder|search|heat|sequence)/";
const stage = "^src/engine/[a-z]+-from-[a-z]+/";
const notTest = "[.]test[.]tsx?$";
const rule = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });

export default {
  forbidden: [
    rule("no-cycles", "Data flows one way.", {}, { circular: true }),
    rule("no-unresolved", "Import what exists.", {}, { couldNotResolve: true }),
    rule(
      "engine-is-pure",
      "No Node, no packages: values in, values out.",
      { path: "^src/engine/", pathNot: notTest },
      { dependencyTypes: ["core", "npm", "npm-dev"] },
    ),
    rule(
      "engine-knows-no-face",
      "Faces call the engine, never the reverse.",
      { path: "^src/engine/" },
      { path: "^src/(words|wire|server|web|cli)/" },
    ),
    rule(
      "stages-meet-only-in-the-pipeline",
      "A stage takes the model and hands on the model.",
      { path: "^src/engine/([a-z]+-from-[a-z]+)/" },
      { path: stage, pathNot: "^src/engine/$1/" },
    ),
    rule("shared-knows-no-stage", "Vocabulary sits below the stages.", { path: shared }, { path: stage }),
    rule(
      "model-is-the-floor",
      "The model rests on measure alone.",
      { path: "^src/engine/model/" },
      { pathNot: "^src/engine/(model|measure)/" },
    ),
    rule(
      "faces-use-the-front-door",
      "Outside the engine, import #engine/index.ts.",
      { path: "^src/(words|wire|server|web|cli)/" },
      { path: "^src/engine/", pathNot: "^src/engine/index[.]ts$" },
    ),
    rule(
      "faces-do-not-meet",
      "server, web and cli speak through wire; the command 'serve' starts the server, and that is all.",
      { path: "^src/(server|web|cli)/", pathNot: "^src/cli/commands/serve[.]ts$" },
      { path: "^src/(server|web|cli)/", pathNot: "^src/$1/" },
    ),
    rule(
      "only-the-store-knows-sqlite",
      "SQL stays behind the store.",
      { pathNot: "^src/server/store/" },
      { path: "node_modules/better-sqlite3" },
    ),
    rule(
      "web-has-no-node",
      "It runs in a browser.",
      { path: "^src/(web|wire|words)/", pathNot: notTest },
      { dependencyTypes: ["core"] },
    ),
    rule(
      "no-test-in-source",
      "Shipped code imports no test.",
      { path: "^src/", pathNot: notTest },
      { path: `${notTest}|^test/` },
    ),
    rule(
      "no-orphans",
      "Dead wood.",
      {
        orphan: true,
        path: "^src/",
        pathNot: [
          "[.]d[.]ts$",
          notTest,
          "[.]examples[.]ts$",
          "^src/[a-z]+/main[.]tsx?$",
          "^src/web/[a-z-]+worker[.]ts$",
        ],
      },
      {},
    ),
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.base.json" },
    // Packages name their doors in "exports"; without this the side doors of a package cannot be found.
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "require", "node", "default", "types"],
    },
  },
};

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const apart = new Set(["node_modules", "dist", ".git", ".tamis"]);
const paths: readonly string[] = readdirSync(".", { withFileTypes: true })
  .filter((entry) => !apart.has(entry.name))
  .flatMap((entry) => [
    entry.name,
    ...(entry.isDirectory()
      ? readdirSync(entry.name, { recursive: true, encoding: "utf8" }).map((path) => `${entry.name}/${path}`)
      : []),
  ]);
const known = new Set(paths);

/** True for a path from the root, or for the end of one ("rules/raw-egg.ts"); `*` stands for any name. */
const isThere = (path: string): boolean => {
  const clean = path.replace(/\/$/, "");
  if (known.has(clean)) return true;
  const pattern = clean.replace(/[.+^$()|[\]\\]/g, "\\$&").replaceAll("*", "[^/]+");
  const end = new RegExp(`(^|/)${pattern}$`);
  return paths.some((known) => end.test(known));
};

const quoted = (text: string): readonly string[] =>
  [...text.matchAll(/`([^`\n]+)`/g)].map((found) => found[1] ?? "");

/** What looks like a path: no blank, no placeholder, and a slash or an ending that files here have. */
const looksLikePath = (words: string): boolean =>
  !/[\s<>{}=…]/.test(words) && (/^[^/].*\//.test(words) || /\.(ts|md|csv|json|yaml|grit|css)$/.test(words));

const read = (file: string): string => readFileSync(file, "utf8");

describe("the pages for developers", () => {
  it.each([
    ["docs/architecture.md", 40],
    ["CONTRIBUTING.md", 15],
  ])("%s names files and folders that are there", (file, least) => {
    const named = quoted(read(file)).filter(looksLikePath);
    expect(named.length).toBeGreaterThanOrEqual(least);
    expect(named.filter((path) => !isThere(path))).toEqual([]);
  });

  it("map every stage", () => {
    const stages = readdirSync("src/engine").filter((name) => name.includes("-from-"));
    expect(stages.length).toBeGreaterThanOrEqual(10);
    const named = quoted(read("docs/architecture.md"));
    expect(stages.filter((stage) => !named.includes(`${stage}/`))).toEqual([]);
  });

  it("name commands that package.json has", () => {
    const { scripts } = JSON.parse(read("package.json")) as { scripts: Readonly<Record<string, string>> };
    const named = ["README.md", "CONTRIBUTING.md"].flatMap((file) =>
      [...read(file).matchAll(/npm (?:run )?([a-z]+)/g)].map((found) => found[1] ?? ""),
    );
    expect(named).toContain("tables");
    expect(named.filter((name) => !["ci", ...Object.keys(scripts)].includes(name))).toEqual([]);
  });
});

describe("README.md", () => {
  const text = read("README.md");

  it("shows pictures and pages that are there", () => {
    const named = [...text.matchAll(/\]\((?!http)([^)]+)\)|`(docs\/[^`]+|[A-Z]+\.md)`/g)].map(
      (found) => found[1] ?? found[2] ?? "",
    );
    expect(named.length).toBeGreaterThanOrEqual(10);
    expect(named.filter((path) => !isThere(path))).toEqual([]);
  });

  it("gives commands on files that are there, with commands that the program has", () => {
    const lines = [...text.matchAll(/^npx tamis (.+)$/gm)].map((found) => (found[1] ?? "").split(" "));
    expect(lines.length).toBeGreaterThanOrEqual(8);
    const files = lines.flatMap((words) => words.slice(1).filter((word) => word.startsWith("demo/")));
    expect(files.length).toBeGreaterThanOrEqual(7);
    expect(files.filter((file) => !known.has(file))).toEqual([]);
    expect(lines.map(([command]) => command).filter((name) => !isThere(`cli/commands/${name}.ts`))).toEqual(
      [],
    );
  });
});

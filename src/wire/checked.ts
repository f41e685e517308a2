import { z } from "zod";
import { nearestName } from "./nearest-name.ts";
import { makeProblem, type Problem, type Wanted } from "./problem.ts";
import type { Path, YamlFile } from "./yaml-file.ts";

/** Checks a YAML value against a strict schema whose messages are `Wanted` words; problems carry their places. */
export const checked = <S extends z.ZodType>(
  file: YamlFile,
  schema: S,
): { readonly value: z.output<S> | null; readonly problems: readonly Problem[] } => {
  if (file.problems.length > 0) return { value: null, problems: file.problems };
  const result = schema.safeParse(file.value);
  if (result.success) return { value: result.data, problems: [] };
  return { value: null, problems: result.error.issues.flatMap((issue) => problemsOf(file, schema, issue)) };
};

const problemsOf = (file: YamlFile, schema: z.ZodType, issue: z.core.$ZodIssue): readonly Problem[] => {
  const path = issue.path.filter((step) => typeof step !== "symbol");
  if (issue.code === "unrecognized_keys") {
    const known = keysAt(schema, path);
    const taken = valueAt(file.value, path);
    const free = known.filter((key) => typeof taken !== "object" || taken === null || !(key in taken));
    return issue.keys.map((key) =>
      makeProblem("key-unknown", file.placeOfKey(path, key), { key, near: nearestName(key, free), known }),
    );
  }
  const wanted = issue.message as Wanted;
  const found = valueAt(file.value, path);
  const key = String(path.at(-1) ?? "");
  if (found === undefined && path.length > 0)
    return [makeProblem("key-missing", file.placeOf(path.slice(0, -1)), { key, wanted })];
  return [makeProblem("value-bad", file.placeOf(path), { key: nameOf(path), found: shown(found), wanted })];
};

/** The key that a value stands under; list places are told by the key of the list. */
const nameOf = (path: Path): string => String(path.findLast((step) => typeof step === "string") ?? "file");

/** A value as it stands in the file, in short. */
export const shown = (value: unknown): string =>
  value === null || value === undefined
    ? "nothing"
    : Array.isArray(value)
      ? "a list"
      : typeof value === "object"
        ? "keys with values"
        : String(value);

const valueAt = (value: unknown, path: Path): unknown => {
  let at = value;
  for (const step of path) {
    if (at === null || typeof at !== "object") return undefined;
    at = (at as Record<string | number, unknown>)[step];
  }
  return at;
};

/** The keys that a schema knows at a path. */
const keysAt = (schema: z.ZodType, path: Path): readonly string[] => {
  let at: unknown = schema;
  for (const step of path) {
    at = bare(at);
    if (at instanceof z.ZodObject) at = (at.shape as Record<string, unknown>)[String(step)];
    else if (at instanceof z.ZodArray) at = at.element;
  }
  at = bare(at);
  return at instanceof z.ZodObject ? Object.keys(at.shape) : [];
};

const bare = (schema: unknown): unknown => {
  let at = schema;
  while (at instanceof z.ZodOptional) at = at.unwrap();
  return at;
};

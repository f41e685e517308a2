import { nearestName } from "./nearest-name.ts";
import { makeProblem, type Named, type Problem } from "./problem.ts";
import type { Path, YamlFile } from "./yaml-file.ts";

/** Looks up the names that a problem file uses, and keeps what is wrong with them. */
export type Names = {
  readonly problems: Problem[];
  /** Notes each name that stands twice. */
  readonly once: (names: readonly string[], path: (i: number) => Path) => void;
  /** Notes a name that is not among the known ones. */
  readonly known: (name: string, of: Named, among: ReadonlySet<string>, path: Path) => void;
};

export const namesIn = (file: YamlFile): Names => {
  const problems: Problem[] = [];
  return {
    problems,
    once: (names, path) => {
      const seen = new Set<string>();
      names.forEach((name, i) => {
        if (seen.has(name)) problems.push(makeProblem("name-twice", file.placeOf(path(i)), { name }));
        seen.add(name);
      });
    },
    known: (name, of, among, path) => {
      if (among.has(name)) return;
      const near = nearestName(name, [...among]);
      problems.push(makeProblem("name-unknown", file.placeOf(path), { name, of, near }));
    },
  };
};

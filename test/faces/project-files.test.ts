import { describe, expect, it } from "vitest";
import { solveProject } from "#engine/index.ts";
import { isProjectFile, readProject } from "#wire/read-project.ts";

// Forms as published: PSPLIB (Kolisch and Sprecher 1997) and ProGen/max (Schwindt 1996). The projects are our own.
const sm = `************************************************************************
jobs (incl. supersource/sink ):  5
RESOURCES
  - renewable                 :  1   R
************************************************************************
PRECEDENCE RELATIONS:
jobnr.    #modes  #successors   successors
   1        1          2           2   3
   2        1          1           4
   3        1          1           5
   4        1          1           5
   5        1          0
************************************************************************
REQUESTS/DURATIONS:
jobnr. mode duration  R 1
------------------------------------------------------------------------
  1      1     0       0
  2      1     3       2
  3      1     4       2
  4      1     2       1
  5      1     0       0
************************************************************************
RESOURCEAVAILABILITIES:
  R 1
    3
************************************************************************
`;
const sch =
  "2\t1\t0\t0\n0\t1\t1\t1\t[0]\n1\t1\t2\t2\t3\t[6]\t[4]\n2\t1\t2\t1\t3\t[-8]\t[3]\n3\t1\t0\n0\t1\t0\t0\n1\t1\t4\t1\n2\t1\t3\t1\n3\t1\t0\t0\n1\n";
const effort = { seed: 1, steps: 20_000, keepGoing: () => true, tell: () => undefined };

describe("project files", () => {
  it("are read in the form of PSPLIB", () => {
    const { project, problems } = readProject("a.sm", sm);
    expect(problems).toEqual([]);
    expect(project).toEqual({
      lengths: [0, 3, 4, 2, 0],
      demands: [[0], [2], [2], [1], [0]],
      capacities: [3],
      lags: [
        { from: 0, to: 1, weight: 0 },
        { from: 0, to: 2, weight: 0 },
        { from: 1, to: 3, weight: 3 },
        { from: 2, to: 4, weight: 4 },
        { from: 3, to: 4, weight: 2 },
      ],
    });
    // Jobs 2 and 3 do not go side by side; 4 goes beside 3: 3 + 4.
    expect(solveProject(project!, effort)).toMatchObject({ status: "proved", makespan: 7, bound: 7 });
  });

  it("are read in the form of ProGen/max, greatest lags and all", () => {
    const { project } = readProject("a.sch", sch);
    expect(project?.lags).toContainEqual({ from: 2, to: 1, weight: -8 });
    const answer = solveProject(project!, effort);
    expect(answer).toMatchObject({ status: "proved", makespan: 9 });
    expect((answer.starts?.[2] ?? 0) - (answer.starts?.[1] ?? 0)).toBeGreaterThanOrEqual(6);
  });

  it("whose lags lead round in a circle that grows have no schedule", () => {
    const { project } = readProject("a.sch", sch.replace("[-8]", "[-5]"));
    expect(solveProject(project!, effort).status).toBe("none");
  });

  it("that ask for more than there is have no schedule", () => {
    const { project } = readProject("a.sm", sm.replace("4       2", "4       4"));
    expect(solveProject(project!, effort)).toMatchObject({ status: "none", starts: null });
  });

  it.each([
    ["a.sm", "", 1, "there is no"],
    ["a.sm", sm.replace("  4      1     2       1", "  4      1     x       1"), 20, "duration"],
    ["a.sm", sm.replace("           4\n", "           9\n"), 9, "successor 9"],
    ["a.sm", sm.slice(0, 400), 1, "REQUESTS"],
    ["a.sch", "", 1, "empty"],
    ["a.sch", sch.replace("[3]", "3"), 4, "lag 2"],
    ["a.sch", "2\t1\t0\t0\n0\t1\t1\t1\t[0]\n", 2, "lines"],
    ["a.sch", "99999999\t1\t0\t0\n", 1, "at most"],
    ["a.sch", "\u0000\u0001", 1, "number of activities"],
  ])("%s %j: say the line that is wrong", (name, text, line, why) => {
    const { project, problems } = readProject(
      name,
      text.startsWith("*") ? text : name === "a.sm" ? `PRECEDENCE RELATIONS:\n${text}` : text,
    );
    expect(project).toBeNull();
    expect(problems[0]?.code).toBe("marks-broken");
    expect(JSON.stringify(problems[0]?.facts)).toContain(why);
    if (text.startsWith("*") || name === "a.sch") expect(problems[0]?.place.line).toBe(line);
  });

  it("are told from other texts", () => {
    expect(isProjectFile("a.sch", "")).toBe(true);
    expect(isProjectFile("noname", sm)).toBe(true);
    expect(isProjectFile("k.json", "{}")).toBe(false);
  });
});

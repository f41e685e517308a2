import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import * as engine from "#engine/index.ts";

/** What the faces may call. Whoever adds to it adds here, on purpose. */
const values = Object.keys(engine).toSorted();

it("is a written list of values", () => {
  expect(values).toEqual([
    "addEstimates",
    "allergenGroups",
    "between",
    "celsius",
    "chainOf",
    "checkPlan",
    "codes",
    "combineFindings",
    "compareText",
    "containerNamed",
    "count",
    "courseChains",
    "dietFacts",
    "exactly",
    "firstEffort",
    "goalLevels",
    "grams",
    "hazardKinds",
    "labelRows",
    "makeFinding",
    "meanOf",
    "millilitres",
    "minor",
    "minutes",
    "moment",
    "ownFoods",
    "planTaken",
    "progressAt",
    "rateNamed",
    "readCard",
    "regions",
    "regularPlural",
    "replan",
    "runEvening",
    "scaleCard",
    "scaleEstimate",
    "severityOf",
    "share",
    "sheetsOf",
    "shelves",
    "solvePrep",
    "solveProject",
    "tinForms",
    "usVolume",
    "usWeight",
    "usualNights",
    "usualWhy",
    "weighPlan",
    "whyPlan",
    "writeUpCard",
  ]);
});

it("names each thing it lets out", () => {
  const text = readFileSync("src/engine/index.ts", "utf8");
  expect(text).not.toMatch(/export\s+(type\s+)?\*/);
  expect(text).not.toMatch(/export\s+(const|function|default)/);
});

it("says of each thing what it means", () => {
  const doors = [...readFileSync("src/engine/index.ts", "utf8").matchAll(/\{([^}]+)\} from "\.\/([^"]+)"/g)];
  const silent = doors.flatMap(([, names = "", file = ""]) => {
    const text = readFileSync(`src/engine/${file}`, "utf8");
    return names
      .split(",")
      .map((name) => name.replace("type ", "").trim())
      .filter((name) => name !== "" && !new RegExp(`\\*/\\nexport (const|type) ${name}\\b`).test(text));
  });
  expect(doors.length).toBeGreaterThanOrEqual(20);
  expect(silent).toEqual([]);
});
